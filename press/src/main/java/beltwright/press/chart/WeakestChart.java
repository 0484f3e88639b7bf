package beltwright.press.chart;

import beltwright.check.WeakestLink;
import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity.Text.Anchor;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.Lettering;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.press.table.TensionTables;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/// The links of a drive as bars to one scale, the torque at the motor at which each gives: open where it lets no more
/// through, hatched where it slips, filled where it breaks. A cross line marks the end at the worse limits.
public final class WeakestChart {
    private static final double LEFT = 82;
    private static final double WIDE = 104;
    private static final double RIGHT = 24;
    private static final double BOTTOM = 13;
    private static final double ROW = 11;
    private static final double BAR = 3.2;
    private static final double ABOVE = 20;
    private static final double TIMES_WORST = 5; // where the scale ends, as a multiple of the worst torque
    private static final int LONGEST = 40; // letters of a name on one line

    private final WeakestLink.Chain chain;
    private final Sketch sketch = new Sketch();
    private final Plot.Scale x;
    private final double high;
    private final Plot plot;
    private final List<Runnable> words = new ArrayList<>(); // over every line, on paper of their own

    private WeakestChart(WeakestLink.Chain chain) {
        this.chain = chain;
        double worst = Math.max(chain.driveNm(), chain.brakeNm());
        x = Plot.Scale.over(0, TIMES_WORST * (worst > 0 ? worst : 1), 8);
        high = ROW * chain.links().size() + 2;
        plot = new Plot(sketch, LEFT, BOTTOM, WIDE, high, x, new Plot.Scale(0, 1, 2));
    }

    /// {@return the chart of one drive}
    public static Drawing of(WeakestLink.Chain chain) {
        return new WeakestChart(chain).drawing();
    }

    private Drawing drawing() {
        plot.across("torque at the motor, N·m");
        double y = plot.top() - ROW / 2 - 1;
        for (var link : chain.links()) {
            link(link, y);
            y -= ROW;
        }
        worst(chain.driveNm(), "worst torque driving", plot.top() + 7, LineClass.HIDDEN, Anchor.START);
        // The line for driving runs past the lower words: they keep to the side where it is not.
        worst(
                chain.brakeNm(),
                "braking",
                plot.top() + 2.5,
                LineClass.PHANTOM,
                chain.brakeNm() < chain.driveNm() ? Anchor.END : Anchor.START);
        words.forEach(Runnable::run);
        key();
        return new Drawing(
                "weakest-" + chain.side(),
                "Weakest link, " + chain.side(),
                tells(),
                LEFT + WIDE + RIGHT,
                BOTTOM + high + ABOVE,
                1,
                List.of(new View("weakest", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    private void worst(double torqueNm, String words, double y, LineClass line, Anchor anchor) {
        if (Double.isFinite(torqueNm)) {
            double at = plot.px(torqueNm);
            sketch.line(at, BOTTOM, at, y + 3, line);
            double beside = anchor == Anchor.START ? at + 1.2 : at - 1.2;
            sketch.text(new Point(beside, y), words + " " + Numbers.fixed(torqueNm, 1), Plot.SMALL, anchor);
        }
    }

    private void key() {
        double y = plot.top() + 14;
        double at = LEFT;
        for (var kind : WeakestLink.Kind.values()) {
            sketch.rectangle(at, y - 0.4, at + 8, y + BAR - 0.4, LineClass.EDGE, fill(kind));
            sketch.text(new Point(at + 9.5, y), kind.toString(), Plot.SMALL, Anchor.START);
            at += 13 + kind.toString().length() * Plot.SMALL * 0.56;
        }
    }

    private static Fill fill(WeakestLink.Kind kind) {
        return switch (kind) {
            case LIMITS -> Fill.PAPER;
            case SLIPS -> Fill.STEEL;
            case BREAKS -> Fill.INK;
        };
    }

    private void link(WeakestLink.Link link, double y) {
        var lines = broken(link.name());
        var marks = first(link);
        if (!marks.isEmpty()) {
            lines.add(marks);
        }
        double top = y + (lines.size() - 1) * 1.9 - 1.1;
        for (int i = 0; i < lines.size(); i++) {
            boolean mark = !marks.isEmpty() && i == lines.size() - 1;
            sketch.text(
                    new Point(LEFT - 12, top - i * 3.8), lines.get(i), mark ? Plot.SMALL : Plot.LETTERS, Anchor.END);
        }
        boolean alike = same(link.driveNm(), link.brakeNm()) && same(link.driveWorstNm(), link.brakeWorstNm());
        if (alike) {
            bar(link, false, y, "both");
        } else {
            bar(link, false, y + 2.2, "drive");
            bar(link, true, y - 2.2, "brake");
        }
    }

    private static boolean same(double a, double b) {
        return Double.compare(a, b) == 0;
    }

    private void bar(WeakestLink.Link link, boolean braking, double y, String way) {
        double nominal = link.atNm(braking);
        double worst = link.atWorstNm(braking);
        sketch.text(new Point(LEFT - 2, y - 1), way, Plot.SMALL, Anchor.END);
        var words = TensionTables.torque(nominal, worst);
        if (Double.isNaN(nominal)) {
            said(LEFT + 2, y, words);
            return;
        }
        boolean beyond = nominal > x.to();
        double end = beyond ? plot.right() : plot.px(nominal);
        if (beyond) {
            sketch.path(
                    Contour.polygon(
                            new Point(LEFT, y - BAR / 2),
                            new Point(end, y - BAR / 2),
                            new Point(end + BAR / 2, y),
                            new Point(end, y + BAR / 2),
                            new Point(LEFT, y + BAR / 2)),
                    LineClass.EDGE,
                    fill(link.kind()));
        } else {
            sketch.rectangle(LEFT, y - BAR / 2, end, y + BAR / 2, LineClass.EDGE, fill(link.kind()));
        }
        if (!same(nominal, worst) && worst <= x.to()) {
            double at = plot.px(worst);
            sketch.line(at, y - BAR / 2 - 1, at, y + BAR / 2 + 1, LineClass.OUTLINE);
        }
        said(end + (beyond ? 3 : 2), y, words);
    }

    /// Words that no line runs through: written last, each on paper of its own.
    private void said(double at, double y, String text) {
        words.add(() -> {
            double end = at + Lettering.widthMm(text, Plot.SMALL, false);
            sketch.rectangle(at - 0.5, y - 1.9, end + 0.5, y + 1.7, LineClass.DIMENSION, Fill.PAPER);
            sketch.text(new Point(at, y - 1), text, Plot.SMALL, Anchor.START);
        });
    }

    private String first(WeakestLink.Link link) {
        boolean driving = chain.firstToGive(false).filter(link::equals).isPresent();
        boolean braking = chain.firstToGive(true).filter(link::equals).isPresent();
        return driving && braking
                ? "gives first"
                : driving ? "gives first, driving" : braking ? "gives first, braking" : "";
    }

    private static List<String> broken(String name) {
        var lines = new ArrayList<String>();
        int at = name.length() > LONGEST ? name.lastIndexOf(' ', LONGEST) : -1;
        if (at > 0) {
            lines.add(name.substring(0, at));
            lines.add(name.substring(at + 1));
        } else {
            lines.add(name);
        }
        return lines;
    }

    private String tells() {
        var text = new StringBuilder();
        for (var link : chain.links()) {
            text.append(link.name())
                    .append(": driving ")
                    .append(TensionTables.torque(link.driveNm(), link.driveWorstNm()))
                    .append(", braking ")
                    .append(TensionTables.torque(link.brakeNm(), link.brakeWorstNm()))
                    .append(" N·m, ")
                    .append(link.kind())
                    .append(". ");
        }
        return text.toString().strip();
    }
}
