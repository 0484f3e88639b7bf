package beltwright.press.chart;

import beltwright.check.Verdict;
import beltwright.pairs.SlotCover;
import beltwright.part.Part;
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

/// Centre distances over the slot of one mount: a line for every two pulleys, a mark for every belt that comes near,
/// its number of teeth above it. A belt of the shelf has a mark of its verdict, any other length a small ring.
public final class SlotChart {
    private static final double LEFT = 66; // names of the pulleys (mm on the sheet)
    private static final double WIDE = 150; // from the shortest to the longest centre distance (mm on the sheet)
    private static final double ROW = 11;
    private static final double TOP = 17;
    private static final double EDGE = 6;
    private static final double TAKE_UP_MM = 1;
    private static final double SMALL = 2.6;
    private static final double LETTERS = 3;

    private final SlotCover cover;
    private final Sketch sketch = new Sketch();
    private final double from;
    private final double scale;

    private SlotChart(SlotCover cover) {
        this.cover = cover;
        from = cover.slot().low() - SlotCover.BESIDE_MM;
        scale = WIDE / (cover.slot().high() + SlotCover.BESIDE_MM - from);
    }

    public static Drawing of(SlotCover cover) {
        return new SlotChart(cover).drawing();
    }

    private double x(double centreDistance) {
        return LEFT + (centreDistance - from) * scale;
    }

    private Drawing drawing() {
        double height = TOP + ROW * Math.max(1, cover.lines().size()) + EDGE;
        double low = x(cover.slot().low());
        double high = x(cover.slot().high());
        double bottom = EDGE - 2;
        sketch.rectangle(low, bottom, high, height - TOP + 2, LineClass.EDGE, Fill.TINT);
        double takeUp = x(cover.slot().high() - TAKE_UP_MM);
        sketch.line(takeUp, bottom, takeUp, height - TOP + 2, LineClass.HIDDEN);
        axis(height);
        double y = height - TOP - ROW / 2 - 1;
        for (var line : cover.lines()) {
            line(line, y);
            y -= ROW;
        }
        return new Drawing(
                "slots-" + cover.mount().id(),
                "Belts in the slot of " + cover.mount().name(),
                tells(),
                LEFT + WIDE + EDGE,
                height,
                1,
                List.of(new View("slots", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    private void axis(double height) {
        double y = height - TOP + 4;
        sketch.line(LEFT, y, LEFT + WIDE, y, LineClass.DIMENSION);
        for (int mm = (int) Math.ceil(from); x(mm) <= LEFT + WIDE; mm++) {
            boolean named = mm % 5 == 0;
            sketch.line(x(mm), y, x(mm), y + (named ? 2 : 1), LineClass.DIMENSION);
            if (named) {
                sketch.text(new Point(x(mm), y + 3), String.valueOf(mm), SMALL, Anchor.MIDDLE);
            }
        }
        sketch.text(
                new Point(LEFT, height - 4),
                "axle to motor, mm; tinted: the slot; dashed: take-up left",
                SMALL,
                Anchor.START);
    }

    private void line(SlotCover.Line line, double y) {
        sketch.line(2, y + ROW / 2 + 0.5, LEFT + WIDE, y + ROW / 2 + 0.5, LineClass.DIMENSION);
        sketch.text(new Point(2, y + 1), line.teeth(), LETTERS, Anchor.START);
        sketch.text(
                new Point(2, y - 3),
                counted(line.drives(), "drive") + ", " + counted(line.wheels(), "wheel pulley"),
                SMALL,
                Anchor.START);
        sketch.line(LEFT, y - 1, LEFT + WIDE, y - 1, LineClass.CENTRE);
        int drawn = 0;
        for (var mark : line.marks()) {
            if (mark.teeth() != drawn) { // of belts with as many teeth the best comes first; the table tells the rest
                mark(mark, y - 1);
            }
            drawn = mark.teeth();
        }
        if (line.marks().isEmpty()) {
            sketch.text(new Point(LEFT + 2, y + 1), "no belt length comes near", SMALL, Anchor.START);
        }
    }

    private static String counted(List<? extends Part> parts, String what) {
        return parts.size() + " " + what + (parts.size() == 1 || what.equals("drive") ? "" : "s");
    }

    private void mark(SlotCover.Mark mark, double y) {
        double at = x(mark.centreDistanceMm().nominal());
        double low = x(mark.centreDistanceMm().low());
        double high = x(mark.centreDistanceMm().high());
        if (at < LEFT + 3 || at > LEFT + WIDE - 3) {
            return;
        }
        sketch.line(low, y - 1.6, low, y + 1.6, LineClass.EDGE);
        sketch.line(high, y - 1.6, high, y + 1.6, LineClass.EDGE);
        sketch.line(low, y, high, y, LineClass.EDGE);
        if (mark.onShelf()) {
            shape(mark.verdict(), at, y);
            sketch.text(new Point(at, y + 3), String.valueOf(mark.teeth()), LETTERS, Anchor.MIDDLE);
        } else {
            sketch.circle(new Point(at, y), 0.8, LineClass.EDGE, Fill.PAPER);
            sketch.text(new Point(at, y + 3), "(" + mark.teeth() + ")", SMALL, Anchor.MIDDLE);
        }
    }

    /// The marks of the verdicts, as on every other page: filled, half filled, struck, empty where it cannot be told.
    private void shape(Verdict verdict, double x, double y) {
        double w = 2;
        double h = 1.1;
        sketch.rectangle(x - w, y - h, x + w, y + h, LineClass.EDGE, verdict == Verdict.HOLDS ? Fill.INK : Fill.PAPER);
        switch (verdict) {
            case MARGINAL -> sketch.rectangle(x - w, y - h, x + w, y, LineClass.EDGE, Fill.INK);
            case FAILS -> {
                sketch.line(x - w - 0.6, y - h - 0.6, x + w + 0.6, y + h + 0.6, LineClass.OUTLINE);
                sketch.line(x - w - 0.6, y + h + 0.6, x + w + 0.6, y - h - 0.6, LineClass.OUTLINE);
            }
            default -> {}
        }
    }

    private String tells() {
        var text = new StringBuilder("Slot from " + Numbers.fixed(cover.slot().low(), 1) + " to "
                + Numbers.fixed(cover.slot().high(), 1) + " mm.");
        for (var line : cover.lines()) {
            text.append(' ').append(line.teeth()).append(':');
            for (var mark : line.marks()) {
                if (mark.onShelf()) {
                    text.append(' ')
                            .append(mark.teeth())
                            .append(" teeth at ")
                            .append(Numbers.fixed(mark.centreDistanceMm().nominal(), 1))
                            .append(" mm ")
                            .append(mark.verdict())
                            .append(';');
                }
            }
        }
        return text.toString();
    }
}
