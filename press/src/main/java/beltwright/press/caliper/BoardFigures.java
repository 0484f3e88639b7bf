package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import java.util.List;

/// What is around the drive: cover, deck and riser; and what is only used up.
final class BoardFigures {
    private BoardFigures() {}

    // the cover; the motor axis is at 0

    static void cover(Figure figure) {
        coverSection(figure.view().caption("section, the mount's plate on the left"));
        coverWall(figure.view().caption("wall cut, axle to the left"));
    }

    private static void coverSection(Pane pane) {
        pane.rectangle(-9, -44, 0, 48, Fill.PAPER);
        pane.shape(Fill.PLASTIC, "0 33, 5 33, 5 36, 0 36");
        pane.shape(Fill.PLASTIC, "0 28, 27 28, 27 -28, 0 -28, 0 -31, 30 -31, 30 31, 5 31, 5 36.5, 0 36.5");
        pane.shape(Fill.PLASTIC, "0 41.5, 5 41.5, 5 46, 0 46");
        pane.outline(5, 36, 5, 42);
        pane.centre(-3, 39, 9, 39);
        pane.centre(-13, 0, 34, 0);
        pane.level("depthMm", p(0, -31), p(27, -28), -38);
        pane.level("wallMm", p(27, -28), p(30, -31), -45);
        pane.upright("radiusMm", p(13, 0), p(13, 28), 13);
        pane.level("screwGripMm", p(0, 46), p(5, 46), 53);
        pane.upright("screwHoleMm", p(5, 36.5), p(5, 41.5), 24);
    }

    private static void coverWall(Pane pane) {
        double outer = Math.asin(8.0 / 31);
        double inner = Math.asin(8.0 / 28);
        var out = new Segment.Bow(Point.ORIGIN, 31, -Math.PI / 2 + outer, Math.PI - outer);
        var in = new Segment.Bow(Point.ORIGIN, 28, Math.PI / 2, -Math.PI + inner);
        var ends = List.of(out.to(), p(-40, 31), p(-40, 28), in.from());
        for (int degree : new int[] {65, 115, 245, 295}) {
            var hole = Point.polar(40, Math.toRadians(degree));
            pane.disc(hole, 11, Fill.PAPER);
            pane.disc(hole, 5, Fill.PAPER);
        }
        pane.sketch()
                .path(
                        new Contour(List.of(
                                out,
                                new Segment.Straight(ends.get(0), ends.get(1)),
                                new Segment.Straight(ends.get(1), ends.get(2)),
                                new Segment.Straight(ends.get(2), ends.get(3)),
                                in,
                                new Segment.Straight(in.to(), out.from()))),
                        LineClass.OUTLINE,
                        Fill.PLASTIC);
        pane.rectangle(-40, -31, -8, -28, Fill.PLASTIC);
        pane.ring(Point.ORIGIN, 80, LineClass.CENTRE);
        pane.cross(Point.ORIGIN, 34);
        pane.level("reachMm", p(0, 34), p(-40, 31), 48);
        pane.level("stoneOpeningMm", p(-8, -28), p(8, -27), -20);
        pane.along("screwCircleMm", Point.polar(40, Math.toRadians(245)), Point.polar(40, Math.toRadians(65)), -47);
    }

    // the deck, its end on the left

    static void deck(Figure figure) {
        var pane = figure.view().caption("from below, its end on the left");
        pane.shape(Fill.PAPER, "-66 -20, -52 -36, 44 -36, 41 -18, 47 -6, 41 6, 47 18, 44 36, -52 36, -66 20");
        holes(pane);
        pane.centre(-70, 0, 50, 0);
        pane.centre(0, -28, 0, 28);
        pane.level("holesLengthMm", p(-21, 18), p(21, 18), 43);
        pane.level("endMm", p(-66, -20), p(0, -28), -43);
        pane.upright("holesWidthMm", p(26, -13), p(26, 13), 58);
        pane.upright("widthMm", p(-52, -36), p(-52, 36), -78);
        pane.level("holeMm", p(18.5, -13), p(23.5, -13), -43);
        var across = figure.row().view().caption("cut across, over the wheels");
        across.shape(Fill.PLASTIC, "-36 5, -36 12, 36 12, 36 5, 22 5, 22 0, -22 0, -22 5");
        across.upright("thicknessMm", p(22, 0), p(36, 12), 52);
        across.upright("wheelWellMm", p(-22, 0), p(-36, 5), -43);
    }

    private static void holes(Pane pane) {
        for (int x = -1; x <= 1; x += 2) {
            for (int y = -1; y <= 1; y += 2) {
                pane.disc(p(21 * x, 13 * y), 5, Fill.PAPER);
                pane.cross(p(21 * x, 13 * y), 5);
            }
        }
    }

    // the riser

    static void riser(Figure figure) {
        double wedge = Math.toRadians(13);
        var apex = p(-60, 0);
        var side = figure.view().caption("from the side");
        side.sketch()
                .path(
                        Contour.polygon(p(-34, 0), p(34, 0), p(34, 94 * Math.tan(wedge)), p(-34, 26 * Math.tan(wedge))),
                        LineClass.OUTLINE,
                        Fill.PAPER);
        for (double x : new double[] {-23.5, -18.5, 18.5, 23.5}) {
            side.hidden(x, 0, x, (x + 60) * Math.tan(wedge));
        }
        for (double x : new double[] {-21, 0, 21}) {
            side.centre(x, -4, x, (x + 60) * Math.tan(wedge) + 4);
        }
        side.upright("thicknessMm", p(0, 0), p(0, 60 * Math.tan(wedge)), 0);
        side.angle("wedgeDeg", apex, 106, 0, 13, 97);
        var above = figure.view().caption("from above");
        above.rectangle(-34, -22, 34, 22, Fill.PAPER);
        holes(above);
        above.level("holesLengthMm", p(-21, 18), p(21, 18), 29);
        above.upright("holesWidthMm", p(26, -13), p(26, 13), 41);
        above.level("holeMm", p(-18.5, -13), p(-23.5, -13), -29);
    }

    /// A bottle: nothing on it is measured.
    static void consumable(Figure figure) {
        var pane = figure.view().caption("nothing to measure");
        pane.shape(Fill.PAPER, "-12 -20, 12 -20, 12 12, 5 18, 5 22, -5 22, -5 18, -12 12");
        pane.shape(Fill.PAPER, "-6 22, 6 22, 2 34, -2 34");
        pane.edge(-12, -12, 12, -12);
        pane.edge(-12, 6, 12, 6);
    }
}
