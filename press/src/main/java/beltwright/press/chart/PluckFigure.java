package beltwright.press.chart;

import beltwright.check.TensionCard;
import beltwright.kit.Drive;
import beltwright.layout.DriveLayout;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity.Text.Anchor;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.quantity.Numbers;
import java.util.List;

/// Where to pluck: both pulleys, the belt around them and the middle of its free span, seen from outside. Sizes and
/// centre distance are the drive's; which way the motor points is not shown.
public final class PluckFigure {
    private static final double SCALE = 0.5; // mm on the sheet for one real mm
    private static final double WIDE = 112;
    private static final double EDGE = 4;
    private static final double ARROW = 9;

    private PluckFigure() {}

    /// {@return the figure of one drive}
    public static Drawing of(Drive drive, DriveLayout at, TensionCard card) {
        var sketch = new Sketch();
        double wheel = SCALE * drive.wheelPulley().rim().pitchDiameterMm() / 2;
        double motor = SCALE * drive.drivePulley().rim().pitchDiameterMm() / 2;
        double apart = SCALE * at.centreDistanceMm().nominal();
        boolean idler = !drive.idler().blank();
        boolean below = idler && drive.placement().idlerAsideMm().nominal() > 0;
        double way = below ? -1 : 1;
        double high = 2 * (wheel + EDGE) + ARROW;
        var axle = new Point(EDGE + wheel, below ? EDGE + ARROW + wheel : EDGE + wheel);
        var shaft = new Point(axle.x() + apart, axle.y());
        double lean = Math.asin(Math.clamp((wheel - motor) / apart, -1, 1));
        sketch.circle(axle, wheel, LineClass.BELT);
        sketch.circle(shaft, motor, LineClass.BELT);
        for (double side : new double[] {1, -1}) {
            sketch.line(off(axle, wheel, lean, side), off(shaft, motor, lean, side), LineClass.BELT);
        }
        if (idler) {
            double radius = Math.max(2, motor / 2);
            var on = middle(off(axle, wheel, lean, -way), off(shaft, motor, lean, -way));
            sketch.circle(new Point(on.x(), on.y() + way * (radius + 0.8)), radius, LineClass.OUTLINE);
        }
        var pluck = middle(off(axle, wheel, lean, way), off(shaft, motor, lean, way));
        double tail = pluck.y() + way * ARROW;
        sketch.line(pluck.x(), tail, pluck.x(), pluck.y() + way * 0.8, LineClass.OUTLINE);
        sketch.line(pluck.x(), pluck.y() + way * 0.8, pluck.x() - 1, pluck.y() + way * 3, LineClass.OUTLINE);
        sketch.line(pluck.x(), pluck.y() + way * 0.8, pluck.x() + 1, pluck.y() + way * 3, LineClass.OUTLINE);
        sketch.text(
                new Point(pluck.x() + 2, tail - (below ? 0 : 2.4)),
                "pluck here" + (idler ? ", not the span on the idler" : ", or on the other span"),
                Plot.LETTERS,
                Anchor.START);
        sketch.text(new Point(axle.x(), axle.y() - 1), "wheel", Plot.SMALL, Anchor.MIDDLE);
        sketch.text(
                new Point(shaft.x() + motor + 2, shaft.y() - 1),
                "motor; free span " + Numbers.fixed(card.spanMm(), 1) + " mm",
                Plot.SMALL,
                Anchor.START);
        return new Drawing(
                "pluck-" + card.side(),
                "Where to pluck, " + card.side(),
                "A belt around the pulleys of wheel and motor; an arrow marks the middle of "
                        + (idler ? "the span that the idler does not touch." : "one of its two free spans."),
                WIDE,
                high,
                SCALE,
                List.of(new View("pluck", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    /// {@return where a span leaves a pulley}
    ///
    /// @param side above the line of centres, or below it where negative
    private static Point off(Point centre, double radius, double lean, double side) {
        return new Point(
                centre.x() + radius * Math.sin(lean), centre.y() + Math.signum(side) * radius * Math.cos(lean));
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }
}
