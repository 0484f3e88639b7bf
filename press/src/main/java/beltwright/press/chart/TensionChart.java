package beltwright.press.chart;

import beltwright.check.TensionCard;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity.Text.Anchor;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.quantity.Numbers;
import java.util.List;
import java.util.stream.DoubleStream;

/// The tension of a belt on one scale, newtons below and hertz above: too loose dotted, too tight hatched, the band
/// between them open; where they overlap there is no band.
public final class TensionChart {
    private static final double LEFT = 8;
    private static final double BOTTOM = 13;
    private static final double WIDE = 164;
    private static final double HIGH = 36;
    private static final double RIGHT = 8;
    private static final double ABOVE = 12;
    private static final double BAR = 12; // from the foot of the field
    private static final double BAR_TOP = 22;
    private static final double HEADROOM = 1.25;
    private static final double APART = 11; // least distance between two numbers of the upper scale (mm on the sheet)
    private static final double LETTER_WIDE = 0.55;

    private final TensionCard card;
    private final Sketch sketch = new Sketch();
    private final Plot.Scale x;
    private final Plot plot;

    private TensionChart(TensionCard card) {
        this.card = card;
        double most = DoubleStream.of(
                        card.leastN(),
                        card.mostN(),
                        card.setN(),
                        card.setN() + card.warmerN(),
                        card.setN() + 2 * card.rippleN())
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        x = Plot.Scale.over(0, most * HEADROOM, 8).endingAt(most * HEADROOM);
        plot = new Plot(sketch, LEFT, BOTTOM, WIDE, HIGH, x, new Plot.Scale(0, 1, 2));
    }

    /// {@return the chart of a card that is known}
    public static Drawing of(TensionCard card) {
        return new TensionChart(card).drawing();
    }

    private Drawing drawing() {
        plot.across("tension of each span at rest, N");
        hertz();
        double low = Math.min(card.leastN(), card.mostN());
        double high = Math.max(card.leastN(), card.mostN());
        zone(0, low, Fill.RUBBER, "too loose");
        zone(high, x.to(), Fill.STEEL, "too tight");
        zone(low, high, card.band() ? Fill.PAPER : Fill.PLASTIC, card.band() ? "" : "no band");
        edge(card.leastN(), least(), card.band());
        edge(card.mostN(), most(), !card.band());
        target();
        return new Drawing(
                "tension-" + card.side(),
                "Belt tension, " + card.side(),
                tells(),
                LEFT + WIDE + RIGHT,
                BOTTOM + HIGH + ABOVE,
                1,
                List.of(new View("tension", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    private void hertz() {
        double last = card.frequencyHz(x.to());
        if (Double.isNaN(last)) {
            return;
        }
        var scale = Plot.Scale.over(0, last, 9);
        double y = plot.top();
        double put = Double.NEGATIVE_INFINITY;
        sketch.line(LEFT, y, plot.right(), y, LineClass.EDGE);
        for (double hertz = scale.step(); hertz <= last; hertz += scale.step()) {
            double at = plot.px(card.tensionN(hertz));
            if (at < LEFT) {
                continue;
            }
            sketch.line(at, y, at, y + 1.5, LineClass.DIMENSION);
            if (at - put >= APART) {
                sketch.text(new Point(at, y + 3), Numbers.fixed(hertz, 0), Plot.SMALL, Anchor.MIDDLE);
                put = at;
            }
        }
        sketch.text(new Point(plot.right(), y + 7.5), "pluck of the free span, Hz", Plot.SMALL, Anchor.END);
    }

    /// Named in its middle, or beside the target where that lies in it.
    private void zone(double from, double to, Fill fill, String words) {
        double a = plot.px(from);
        double b = plot.px(to);
        sketch.rectangle(a, BOTTOM + BAR, b, BOTTOM + BAR_TOP, LineClass.OUTLINE, fill);
        double target = Math.clamp(plot.px(card.setN()), a, b);
        double left = target - a > b - target ? a : target;
        double right = target - a > b - target ? target : b;
        double wide = words.length() * Plot.LETTERS * LETTER_WIDE + 2;
        if (words.isEmpty() || right - left < wide + 2) {
            return;
        }
        double middle = (left + right) / 2;
        double y = BOTTOM + (BAR + BAR_TOP) / 2;
        sketch.rectangle(middle - wide / 2, y - 2.3, middle + wide / 2, y + 2.3, LineClass.DIMENSION, Fill.PAPER);
        sketch.text(new Point(middle, y - 1.1), words, Plot.LETTERS, Anchor.MIDDLE);
    }

    /// An end of the band, named below it on the side where the other end is not.
    private void edge(double tensionN, String words, boolean leftOf) {
        double at = plot.px(tensionN);
        double wide = words.length() * Plot.LETTERS * LETTER_WIDE;
        boolean end = leftOf ? at - wide > 1 : at + wide > plot.right();
        sketch.line(at, BOTTOM + 5, at, BOTTOM + BAR_TOP + 1.5, LineClass.OUTLINE);
        sketch.text(
                new Point(at + (end ? -1.5 : 1.5), BOTTOM + 6.5), words, Plot.LETTERS, end ? Anchor.END : Anchor.START);
    }

    private void target() {
        double at = plot.px(card.setN());
        double y = BOTTOM + BAR_TOP;
        sketch.line(at, BOTTOM + BAR - 1.5, at, y + 7, LineClass.GROUND);
        if (Double.isFinite(card.rippleN())) {
            double tightest = card.setN() + 2 * card.rippleN(); // set where it is loosest
            double b = plot.px(tightest);
            sketch.line(at, y + 3, b, y + 3, LineClass.EDGE);
            sketch.line(b, y + 2, b, y + 4, LineClass.EDGE);
            sketch.text(
                    new Point(b + 1.2, y + 2.2),
                    "run-out, to " + Numbers.fixed(tightest, 0) + " N",
                    Plot.SMALL,
                    Anchor.START);
        }
        if (Double.isFinite(card.warmerN())) {
            double warm = plot.px(card.setN() + card.warmerN());
            sketch.line(warm, BOTTOM + BAR, warm, y, LineClass.HIDDEN);
            double most = plot.px(card.mostN());
            boolean before = warm < most && warm + 2.4 + "warm".length() * Plot.SMALL * LETTER_WIDE > most;
            sketch.text(
                    new Point(warm + (before ? -1.2 : 1.2), BOTTOM + BAR + 1.6),
                    "warm",
                    Plot.SMALL,
                    before ? Anchor.END : Anchor.START);
        }
        var words = "target " + said(card.setN());
        boolean end = at + words.length() * Plot.LETTERS * LETTER_WIDE > plot.right();
        sketch.text(new Point(at + (end ? -1.5 : 1.5), y + 6.5), words, Plot.LETTERS, end ? Anchor.END : Anchor.START);
    }

    /// The ends as the card prints them, rounded inward.
    private String least() {
        return "least " + card.newtons().low() + " N" + heard(card.hertz().low());
    }

    private String most() {
        return "most " + card.newtons().high() + " N" + heard(card.hertz().high());
    }

    private String heard(String hertz) {
        return Double.isNaN(card.frequencyHz(card.leastN())) ? "" : ", " + hertz + " Hz";
    }

    private String said(double tensionN) {
        double hertz = card.frequencyHz(tensionN);
        return Numbers.fixed(tensionN, 0) + " N" + (Double.isNaN(hertz) ? "" : ", " + Numbers.fixed(hertz, 0) + " Hz");
    }

    private String tells() {
        return "Target " + said(card.setN()) + ". "
                + (card.band()
                        ? "Band: " + least() + ", " + most() + "."
                        : "No band: at " + least() + ", at " + most() + ".");
    }
}
