package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import java.util.List;

/// Bearing, sleeve, screw, nut, washer and dowel pin.
final class HardwareFigures {
    private HardwareFigures() {}

    static void bearing(Figure figure) {
        var pane = figure.view().caption("section");
        pane.turned(Fill.PAPER, "-9 10, -9 27, 9 27, 9 10");
        pane.turned(Fill.STEEL, "-9 10, -9 15.5, 9 15.5, 9 10");
        pane.turned(Fill.STEEL, "-9 21.5, -9 27, 9 27, 9 21.5");
        for (int side = -1; side <= 1; side += 2) {
            pane.disc(p(0, side * 18.5), 10, Fill.PAPER);
        }
        pane.outline(-9, -10, -9, 10);
        pane.outline(9, -10, 9, 10);
        pane.centre(-13, 0, 13, 0);
        pane.level("widthMm", p(-9, 27), p(9, 27), 34);
        pane.upright("boreMm", p(-9, -10), p(-9, 10), -18);
        pane.upright("outsideMm", p(-9, -27), p(-9, 27), -27);
        var face = figure.view().caption("face");
        rings(face, 20, 31, 43, 54);
    }

    static void sleeve(Figure figure) {
        var pane = figure.view().caption("section");
        pane.turned(Fill.STEEL, "-16 9, -16 15, 16 15, 16 9");
        pane.outline(-16, -9, -16, 9);
        pane.outline(16, -9, 16, 9);
        pane.centre(-20, 0, 20, 0);
        pane.level("lengthMm", p(-16, 15), p(16, 15), 22);
        pane.upright("boreMm", p(-16, -9), p(-16, 9), -25);
        pane.upright("outsideMm", p(-16, -15), p(-16, 15), -34);
        rings(figure.view().caption("end"), 18, 30);
    }

    static void washer(Figure figure) {
        var pane = figure.view().caption("section");
        pane.turned(Fill.STEEL, "-3 10, -3 22, 3 22, 3 10");
        pane.outline(-3, -10, -3, 10);
        pane.outline(3, -10, 3, 10);
        pane.centre(-7, 0, 7, 0);
        pane.level("thicknessMm", p(-3, 22), p(3, 22), 29);
        pane.upright("holeMm", p(-3, -10), p(-3, 10), -12);
        pane.upright("outsideMm", p(-3, -22), p(-3, 22), -21);
        rings(figure.view().caption("face"), 20, 44);
    }

    /// One end rounded, the other chamfered: both count.
    static void dowelPin(Figure figure) {
        var pane = figure.view().caption("side; ends rounded or chamfered");
        var outline = new Contour(List.of(
                new Segment.Straight(p(-24, 8), p(22, 8)),
                new Segment.Straight(p(22, 8), p(26, 6)),
                new Segment.Straight(p(26, 6), p(26, -6)),
                new Segment.Straight(p(26, -6), p(22, -8)),
                new Segment.Straight(p(22, -8), p(-24, -8)),
                Segment.through(p(-24, -8), p(-26, 0), p(-24, 8))));
        pane.sketch().path(outline, LineClass.OUTLINE, Fill.PAPER);
        pane.outline(22, -8, 22, 8);
        pane.centre(-30, 0, 30, 0);
        pane.level("lengthMm", p(-26, 0), p(26, 6), 17);
        pane.upright("diameterMm", p(4, -8), p(4, 8), -36);
        rings(figure.view().caption("end"), 12, 16);
    }

    private static void rings(Pane pane, double... diameters) {
        for (int i = diameters.length - 1; i >= 0; i--) {
            pane.disc(Point.ORIGIN, diameters[i], Fill.PAPER);
        }
        pane.cross(Point.ORIGIN, diameters[diameters.length - 1] / 2 + 4);
    }

    /// The heads under one another: a countersunk one counts, the others do not.
    static void screw(Figure figure) {
        var pane = figure.view().caption("cap, button, countersunk and set screw");
        pane.rectangle(-10, 38, 0, 54, Fill.PAPER);
        shank(pane, 46);
        var button = new Contour(
                List.of(Segment.through(p(0, 32), p(-6, 24), p(0, 16)), new Segment.Straight(p(0, 16), p(0, 32))));
        pane.sketch().path(button, LineClass.OUTLINE, Fill.PAPER);
        shank(pane, 24);
        shank(pane, 2);
        pane.shape(Fill.PAPER, "0 -8, 6 -3, 6 7, 0 12");
        shank(pane, -20);
        pane.edge(0, -27, 0, 57);
        pane.edge(46, -27, 46, 57);
        pane.level("lengthMm", p(0, -27), p(46, -27), -32);
        var key = figure.view().caption("head");
        key.disc(p(0, 46), 16, Fill.PAPER);
        key.disc(p(0, 24), 16, Fill.PAPER);
        key.disc(p(0, 2), 20, Fill.PAPER);
        key.disc(p(0, -20), 10, Fill.PAPER);
        for (double y : new double[] {46, 24, 2, -20}) {
            key.sketch().path(Contour.hexagon(p(0, y), 6, 0), LineClass.OUTLINE, Fill.PAPER);
        }
    }

    private static void shank(Pane pane, double y) {
        pane.rectangle(0, y - 5, 46, y + 5, Fill.PAPER);
        pane.edge(14, y - 4, 46, y - 4);
        pane.edge(14, y + 4, 46, y + 4);
        pane.centre(-13, y, 50, y);
    }

    static void nut(Figure figure) {
        var pane = figure.view().caption("side");
        double corner = 32 / Math.sqrt(3);
        pane.rectangle(-7, -corner, 7, corner, Fill.PAPER);
        pane.outline(-7, corner / 2, 7, corner / 2);
        pane.outline(-7, -corner / 2, 7, -corner / 2);
        pane.centre(-11, 0, 11, 0);
        pane.level("heightMm", p(-7, corner), p(7, corner), 26);
        var face = figure.view().caption("face");
        face.sketch().path(Contour.hexagon(Point.ORIGIN, 32, Math.PI / 2), LineClass.OUTLINE, Fill.PAPER);
        face.threaded(Point.ORIGIN, 18);
        face.cross(Point.ORIGIN, 22);
    }
}
