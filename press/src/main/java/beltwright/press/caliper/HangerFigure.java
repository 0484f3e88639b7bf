package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;

/// A hanger: from above, its end, from the side under the deck, and its baseplate.
final class HangerFigure {
    private static final Point AXLE = p(-15, -48);
    private static final double STEERING = Math.toRadians(55);
    private static final Point ALONG = Point.polar(1, Math.PI - STEERING); // the steering axis, upwards
    private static final Point ACROSS = Point.polar(1, Math.PI / 2 - STEERING); // from the axis to the axle

    private HangerFigure() {}

    static void draw(Figure figure) {
        above(figure.view().caption("hanger from above"));
        endFace(figure.view().caption("end face; a round one is " + figure.letter("sectionHeightMm") + " across"));
        figure.row();
        side(figure.view().caption("from the side, board's end on the left"));
        doubleKingpin(figure.view().caption("kingpin: double"));
        figure.row();
        lean(figure.view().caption("deck at full lean"));
        base(figure.view().caption("baseplate from above"));
        figure.row();
        step(figure.view().caption("step of the axle at the end face"));
        dowels(figure.view().caption("dowel holes, cut along the axle"));
    }

    private static void above(Pane pane) {
        for (int side = -1; side <= 1; side += 2) {
            pane.rectangle(side * 38, -3.5, side * 58, 3.5, Fill.PAPER);
            pane.edge(side * 50, -2.7, side * 58, -2.7);
            pane.edge(side * 50, 2.7, side * 58, 2.7);
            pane.outline(side * 50, -3.5, side * 50, 3.5);
        }
        pane.shape(
                Fill.PAPER, "-38 8, -11 8, -11 22, 11 22, 11 8, 38 8, 38 -8, 11 -8, 11 -14, -11 -14, -11 -8, -38 -8");
        pane.disc(p(0, 11), 7, Fill.PAPER);
        pane.rectangle(25, -14, 30, 14, Fill.PAPER);
        for (double y : new double[] {9, 11.2, -9, -11.2}) {
            pane.hidden(25, y, 30, y);
        }
        pane.centre(-62, 0, 62, 0);
        pane.level("bodyWidthMm", p(-11, 22), p(11, 22), 26);
        pane.level("flangeThreadDepthMm", p(25, 14), p(30, 14), 26);
        pane.level("flangeInsetMm", p(30, 14), p(38, 8), 20);
        pane.level("axleThreadLengthMm", p(50, -3.5), p(58, -3.5), -14);
        pane.level("axleLengthMm", p(38, -8), p(58, -3.5), -21);
        pane.level("widthMm", p(-38, -8), p(38, -8), -28);
        pane.upright("axleDiameterMm", p(-46, -3.5), p(-46, 3.5), -46);
        pane.upright("bodyReachMm", p(-11, 0), p(-11, 22), -19);
    }

    private static void endFace(Pane pane) {
        pane.rectangle(-15, -12.5, 15, 12.5, Fill.PAPER);
        pane.ring(Point.ORIGIN, 22, LineClass.CENTRE);
        for (int i = 0; i < 4; i++) {
            pane.threaded(Point.polar(11, Math.PI / 4 + i * Math.PI / 2), 3.5);
        }
        pane.disc(Point.ORIGIN, 8, Fill.PAPER);
        pane.cross(Point.ORIGIN, 18);
        pane.level("sectionDepthMm", p(-15, -12.5), p(15, -12.5), -24);
        pane.upright("sectionHeightMm", p(-15, -12.5), p(-15, 12.5), -24);
        pane.along("flangeCircleMm", Point.polar(-11, -Math.PI / 4), Point.polar(11, -Math.PI / 4), 25);
    }

    /// The upper half of the axle where it runs into the end face.
    private static void step(Pane pane) {
        var round = p(11, 15);
        pane.outline(-16, 24, 0, 24);
        pane.outline(0, 24, 0, 15);
        pane.sketch().segment(new Segment.Bow(round, 11, Math.PI, Math.PI / 2), LineClass.OUTLINE);
        pane.outline(11, 4, 34, 4);
        pane.centre(-20, -8, 38, -8);
        pane.cross(round, 3);
        pane.along("axleFilletMm", round, round.plus(Point.polar(11, 1.25 * Math.PI)), 0);
    }

    /// The end of the hanger, or the face of its flange, on the right.
    private static void dowels(Pane pane) {
        pane.turned(Fill.LIGHT_METAL, "-20 5, -20 24, 8 24, 8 5");
        pane.outline(-20, -5, -20, 5);
        pane.outline(8, -5, 8, 5);
        for (int side = -1; side <= 1; side += 2) {
            pane.rectangle(-8, side * 13, 8, side * 19, Fill.PAPER);
            pane.centre(-12, side * 16, 12, side * 16);
        }
        pane.centre(-24, 0, 12, 0);
        pane.level("dowelHoleDepthMm", p(-8, 19), p(8, 19), 32);
        pane.upright("dowelMm", p(8, -19), p(8, -13), 22);
    }

    private static void side(Pane pane) {
        var foot = AXLE.minus(ACROSS.times(9.5));
        var apex = foot.minus(ALONG.times(30));
        deck(pane, -58, 40);
        body(pane, foot, 7, 17, foot.plus(ALONG.times(40)));
        pane.shape(Fill.PAPER, "-40 0, 34 0, 34 -5, 14 -5, 8 -14, -14 -14, -36 -18, -45 -28, -54 -19, -40 -6");
        pane.disc(AXLE, 7, Fill.PAPER);
        for (double x : new double[] {-24, -20, 20, 24}) {
            pane.hidden(x, 0, x, -5);
        }
        var up = AXLE.plus(p(0, 13));
        pane.ring(up, 7, LineClass.PHANTOM);
        pane.centre(AXLE.x(), AXLE.y() - 8, AXLE.x(), 12);
        pane.centre(AXLE.x() - 8, AXLE.y(), AXLE.x() + 14, AXLE.y());
        pane.centre(up.x() - 5, up.y(), up.x() + 14, up.y());
        pane.centre(0, -8, 0, 12);
        line(pane, foot.plus(ALONG.times(58)), apex.minus(ALONG.times(4)));
        pane.angle("steeringAxisDeg", apex, 38, 180, Math.toDegrees(ALONG.angle()), 2);
        pane.along("rakeMm", foot, AXLE, -18);
        pane.level("axleFromBaseMm", p(0, 12), p(AXLE.x(), 12), 17);
        pane.upright("bushingTravelMm", AXLE.plus(p(14, 0)), up.plus(p(14, 0)), 10);
        pane.upright("baseThicknessMm", p(34, 0), p(34, -5), 41);
        pane.upright("axleDropMm", p(34, 0), AXLE.plus(p(14, 0)), 52);
    }

    /// The hanger around its steering axis, from its pivot to below its axle.
    private static void body(Pane pane, Point foot, double near, double far, Point pivot) {
        pane.sketch()
                .path(
                        Contour.polygon(
                                pivot.minus(ACROSS.times(3)),
                                pivot.plus(ACROSS.times(3)),
                                foot.plus(ALONG.times(12)).plus(ACROSS.times(far)),
                                foot.minus(ALONG.times(9)).plus(ACROSS.times(far)),
                                foot.minus(ALONG.times(9)).minus(ACROSS.times(near)),
                                foot.plus(ALONG.times(12)).minus(ACROSS.times(near))),
                        LineClass.OUTLINE,
                        Fill.PAPER);
    }

    private static void line(Pane pane, Point a, Point b) {
        pane.centre(a.x(), a.y(), b.x(), b.y());
    }

    private static void deck(Pane pane, double left, double right) {
        pane.sketch().line(left, 0, right, 0, LineClass.PHANTOM);
        pane.sketch().line(left, 7, right, 7, LineClass.PHANTOM);
        pane.sketch().line(left, 0, left, 7, LineClass.PHANTOM);
    }

    /// The link between baseplate and hanger, with a steering axis at each end.
    private static void doubleKingpin(Pane pane) {
        deck(pane, -34, 30);
        var lower = p(-14, -42);
        var upper = lower.plus(ACROSS.times(24));
        block(pane, lower.minus(ALONG.times(5)), lower.minus(ALONG.times(22)));
        block(pane, upper.plus(ALONG.times(5)), upper.plus(ALONG.times(24)));
        pane.shape(Fill.PAPER, "-28 0, 26 0, 26 -5, -28 -5");
        pane.sketch().path(Contour.slot(upper, lower, 10), LineClass.OUTLINE, Fill.PAPER);
        pane.disc(lower.minus(ALONG.times(13)), 7, Fill.PAPER);
        for (var at : new Point[] {upper, lower}) {
            line(pane, at.plus(ALONG.times(16)), at.minus(ALONG.times(24)));
        }
        pane.along("linkMm", lower.minus(ALONG.times(24)), upper.minus(ALONG.times(24)), -6);
    }

    private static void block(Pane pane, Point from, Point to) {
        var aside = ACROSS.times(8);
        pane.sketch()
                .path(
                        Contour.polygon(from.plus(aside), to.plus(aside), to.minus(aside), from.minus(aside)),
                        LineClass.OUTLINE,
                        Fill.PAPER);
    }

    private static void lean(Pane pane) {
        var tilt = Math.toRadians(18);
        var along = Point.polar(1, tilt);
        var middle = p(0, 16);
        pane.rectangle(-36, -17, 36, -11, Fill.PAPER);
        pane.rectangle(-46, -15.6, -36, -12.4, Fill.PAPER);
        pane.rectangle(36, -15.6, 46, -12.4, Fill.PAPER);
        pane.shape(Fill.PAPER, "-9 -9, 9 -9, 9 -19, -9 -19");
        var up = along.left();
        pane.sketch()
                .path(
                        Contour.polygon(
                                middle.minus(along.times(34)),
                                middle.plus(along.times(34)),
                                middle.plus(along.times(34)).plus(up.times(5)),
                                middle.minus(along.times(34)).plus(up.times(5))),
                        LineClass.OUTLINE,
                        Fill.PAPER);
        line(pane, middle.minus(along.times(10)), p(-6, -9));
        line(pane, middle.plus(along.times(10)), p(6, -9));
        pane.centre(-50, -14, 50, -14);
        var apex = middle.minus(along.times(34));
        pane.edge(apex.x(), apex.y(), apex.x() + 74, apex.y());
        pane.angle("fullLeanDeg", apex, 62, 0, 18, 62);
    }

    private static void base(Pane pane) {
        pane.rectangle(-32, -20, 32, 20, Fill.PAPER);
        for (int x = -1; x <= 1; x += 2) {
            for (int y = -1; y <= 1; y += 2) {
                pane.disc(p(22 * x, 13 * y), 5, Fill.PAPER);
                pane.cross(p(22 * x, 13 * y), 4.5);
            }
        }
        pane.level("baseLengthMm", p(-22, -17.5), p(22, -17.5), -28);
        pane.upright("baseWidthMm", p(-26.5, -13), p(-26.5, 13), -40);
    }
}
