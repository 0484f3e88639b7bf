package beltwright.press.chart;

import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity.Text.Anchor;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.press.table.SpreadTables;
import beltwright.spread.Odds;
import java.util.List;

/// What is to spare in one finding over all drawn kits: a bar for every step, black where nothing is; under it the
/// root-sum-square and the limits of the worst case.
public final class SpreadChart {
    private static final double LEFT = 34; // words (mm on the sheet)
    private static final double WIDE = 120;
    private static final double EDGE = 8;
    private static final double BARS = 24;
    private static final double ROW = 7;
    private static final double FLOOR = 3 * ROW;
    private static final double HEIGHT = FLOOR + BARS + 9;
    private static final double LETTERS = 3;
    private static final double NEAR = 0.5;

    private final Odds odds;
    private final Odds.Scatter scatter;
    private final Sketch sketch = new Sketch();
    private final double from;
    private final double scale;

    private SpreadChart(Odds odds, Odds.Scatter scatter) {
        this.odds = odds;
        this.scatter = scatter;
        double low = scatter.histogram().low();
        double high = scatter.histogram().high();
        double reach = 3 * (high - low);
        low = Math.min(low, Math.max(Math.min(scatter.worst(), scatter.rssLow()), low - reach));
        high = Math.max(high, Math.min(Math.max(scatter.best(), scatter.rssHigh()), high + reach));
        double wide = high - low;
        if (low > 0 && low < NEAR * wide) {
            low = 0;
        } else if (high < 0 && -high < NEAR * wide) {
            high = 0;
        }
        from = low;
        scale = WIDE / (high - low);
    }

    public static Drawing of(Odds odds, Odds.Scatter scatter) {
        return new SpreadChart(odds, scatter).drawing();
    }

    private double x(double left) {
        return Math.clamp(LEFT + (left - from) * scale, LEFT, LEFT + WIDE);
    }

    private boolean inside(double left) {
        double x = LEFT + (left - from) * scale;
        return x >= LEFT - 1e-6 && x <= LEFT + WIDE + 1e-6;
    }

    private Drawing drawing() {
        bars();
        row("root-sum-square", 2 * ROW, scatter.rssLow(), scatter.rssHigh(), scatter.middle());
        row(
                "worst case",
                ROW,
                scatter.worst(),
                scatter.best(),
                odds.finding().capacity() - odds.finding().demand());
        ends();
        if (inside(0)) {
            sketch.line(x(0), ROW - 2, x(0), FLOOR + BARS + 2, LineClass.HIDDEN);
            sketch.text(new Point(x(0), FLOOR + BARS + 4), "0", LETTERS, Anchor.MIDDLE);
        }
        return new Drawing(
                "spread-" + odds.finding().key(),
                "To spare: " + SpreadTables.name(odds),
                tells(),
                LEFT + WIDE + EDGE,
                HEIGHT,
                1,
                List.of(new View("spread", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    private void bars() {
        var histogram = scatter.histogram();
        int most = histogram.counts().stream().mapToInt(n -> n).max().orElse(1);
        double step = (histogram.high() - histogram.low()) / histogram.counts().size();
        sketch.line(LEFT, FLOOR, LEFT + WIDE, FLOOR, LineClass.DIMENSION);
        for (int i = 0; i < histogram.counts().size(); i++) {
            double low = histogram.low() + i * step;
            double top = FLOOR + BARS * histogram.counts().get(i) / most;
            if (low < 0 && low + step > 0) { // one step across zero, in its two parts
                bar(low, 0, top);
                bar(0, low + step, top);
            } else {
                bar(low, low + step, top);
            }
        }
        sketch.text(new Point(2, FLOOR + BARS / 2), "kits drawn", LETTERS, Anchor.START);
    }

    private void bar(double low, double high, double top) {
        if (top > FLOOR) {
            boolean fails = high <= 1e-12;
            sketch.rectangle(x(low), FLOOR, x(high), top, LineClass.EDGE, fails ? Fill.INK : Fill.TINT);
        }
    }

    private void row(String words, double y, double low, double high, double middle) {
        sketch.text(new Point(2, y - 1), words, LETTERS, Anchor.START);
        sketch.line(x(low), y, x(high), y, LineClass.OUTLINE);
        if (inside(low)) {
            sketch.line(x(low), y - 1.6, x(low), y + 1.6, LineClass.OUTLINE);
        }
        if (inside(high)) {
            sketch.line(x(high), y - 1.6, x(high), y + 1.6, LineClass.OUTLINE);
        }
        if (inside(middle)) {
            sketch.circle(new Point(x(middle), y), 0.9, LineClass.EDGE, Fill.PAPER);
        }
    }

    private void ends() {
        var unit = odds.finding().unit();
        sketch.text(new Point(LEFT, 1), SpreadTables.number(from, scatter), LETTERS, Anchor.START);
        sketch.text(
                new Point(LEFT + WIDE, 1),
                SpreadTables.number(from + WIDE / scale, scatter) + " " + unit,
                LETTERS,
                Anchor.END);
    }

    private String tells() {
        return "To spare, capacity less demand, over " + odds.kits() + " kits drawn, from "
                + SpreadTables.number(scatter.histogram().low(), scatter) + " to "
                + SpreadTables.number(scatter.histogram().high(), scatter) + " "
                + odds.finding().unit() + ", half of them below "
                + SpreadTables.number(scatter.percentiles().get(2), scatter) + "; black bars: nothing to spare. "
                + "Root-sum-square from " + SpreadTables.number(scatter.rssLow(), scatter) + " to "
                + SpreadTables.number(scatter.rssHigh(), scatter) + ", worst case from "
                + SpreadTables.number(scatter.worst(), scatter) + " to " + SpreadTables.number(scatter.best(), scatter)
                + ".";
    }
}
