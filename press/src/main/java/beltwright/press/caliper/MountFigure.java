package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import java.util.List;

/// A motor mount: its plate with a clamp, the plate's edge, a flange instead, and the holes for a cover.
final class MountFigure {
    private static final Point AXLE = Point.ORIGIN;
    private static final Point NEAR = p(50, 0); // motor axis at the near end of the slots
    private static final Point FAR = p(63, 0);
    private static final double ROUND = 27; // plate outline around the motor axis
    private static final double FIRST = 32; // the first clocking position (°)

    private MountFigure() {}

    static void draw(Figure figure) {
        clamped(figure.view()
                .caption("fixing: clamp, rectangular; a round one is " + figure.letter("clampHeightMm") + " across"));
        edge(figure.view().caption("on edge"));
        figure.row();
        flange(figure.view().caption("fixing: flange; the first position also: one piece"));
        flangeSection(figure.view().caption("flange, section"));
        figure.row();
        cover(figure.view().caption("holes for a cover"));
        coverSection(figure.view().caption("plate, section"));
        figure.row();
        form(figure.view().caption("dowel pins and a stop against turning"));
        formSection(figure.view().caption("mount on the hanger, section"));
    }

    private static void clamped(Pane pane) {
        plate(pane, 21);
        slots(pane);
        pane.rectangle(-12, -10, 12, 10, Fill.PAPER);
        pane.outline(-7, 10, -7, 21);
        pane.outline(-7, -10, -7, -21);
        for (int side = -1; side <= 1; side += 2) {
            for (double y : new double[] {13.5, 17.5}) {
                pane.hidden(-22, side * y, 11, side * y);
            }
            pane.hidden(11, side * 13.5, 11, side * 17.5);
            pane.centre(-26, side * 15.5, 15, side * 15.5);
        }
        pane.cross(AXLE, 6);
        pane.centre(AXLE.x() + 6, 0, FAR.x() + 31, 0);
        pane.centre(NEAR.x(), -20, NEAR.x(), 20);
        pane.centre(FAR.x(), -20, FAR.x(), 20);
        pane.level("clampGripMm", p(-22, 21), p(-7, 21), 29);
        pane.level("clampThreadDepthMm", p(-7, 21), p(11, 17.5), 29);
        pane.level("clampDepthMm", p(-12, 10), p(12, 10), 37);
        pane.upright("clampHeightMm", p(-12, -10), p(-12, 10), -31);
        pane.level("slotMinMm", AXLE, p(50, -20), -33);
        pane.level("slotMaxMm", AXLE, p(63, -20), -42);
        pane.upright("openingMm", p(56, -6), p(56, 6), 56);
        var slot = Point.polar(14, Math.PI / 4);
        pane.upright("slotWidthMm", p(70, slot.y() - 2.2), p(70, slot.y() + 2.2), 70);
        pane.along("boltCircleMm", FAR.minus(slot), FAR.plus(slot), -34);
        pane.along("plateRadiusMm", FAR, FAR.plus(Point.polar(ROUND, -0.22)), 0);
    }

    /// The plate's outline: a block around the axle, and tangents to the round around the motor axis.
    private static void plate(Pane pane, double half) {
        double lean = Math.asin((ROUND - half) / FAR.x());
        var top = FAR.plus(Point.polar(ROUND, Math.PI / 2 + lean));
        var bottom = p(top.x(), -top.y());
        var round = new Segment.Bow(FAR, ROUND, -Math.PI / 2 - lean, Math.PI + 2 * lean);
        pane.sketch()
                .path(
                        new Contour(List.of(
                                round,
                                new Segment.Straight(top, p(0, half)),
                                new Segment.Straight(p(0, half), p(-22, half)),
                                new Segment.Straight(p(-22, half), p(-22, -half)),
                                new Segment.Straight(p(-22, -half), p(0, -half)),
                                new Segment.Straight(p(0, -half), bottom))),
                        LineClass.OUTLINE,
                        Fill.PAPER);
    }

    private static void slots(Pane pane) {
        pane.sketch().path(Contour.slot(NEAR, FAR, 12), LineClass.OUTLINE, Fill.PAPER);
        for (int i = 0; i < 4; i++) {
            var out = Point.polar(14, Math.PI / 4 + i * Math.PI / 2);
            pane.sketch().path(Contour.slot(NEAR.plus(out), FAR.plus(out), 4.4), LineClass.OUTLINE, Fill.PAPER);
        }
        pane.ring(FAR, 28, LineClass.CENTRE);
    }

    private static void edge(Pane pane) {
        pane.rectangle(0, -27, 7, 27, Fill.PAPER);
        pane.rectangle(-24, -21, 0, 21, Fill.PAPER);
        pane.hidden(-24, -10, 7, -10);
        pane.hidden(-24, 10, 7, 10);
        pane.centre(-28, 0, 11, 0);
        pane.level("plateThicknessMm", p(0, 27), p(7, 27), 33);
        pane.level("clampLengthMm", p(-24, -21), p(0, -27), -33);
    }

    private static void flange(Pane pane) {
        var motor = Point.polar(62, Math.toRadians(FIRST));
        var along = motor.unit();
        var aside = along.left();
        double lean = Math.asin(3.0 / 62);
        var start = aside.times(20);
        var round = new Segment.Bow(motor, 23, Math.toRadians(FIRST) - Math.PI / 2 - lean, Math.PI + 2 * lean);
        var back = new Segment.Bow(AXLE, 20, Math.toRadians(FIRST) + Math.PI / 2, Math.PI);
        pane.sketch()
                .path(
                        new Contour(List.of(
                                round,
                                new Segment.Straight(round.to(), start),
                                back,
                                new Segment.Straight(back.to(), round.from()))),
                        LineClass.OUTLINE,
                        Fill.PAPER);
        pane.sketch()
                .path(
                        Contour.slot(motor.minus(along.times(5)), motor.plus(along.times(5)), 12),
                        LineClass.OUTLINE,
                        Fill.PAPER);
        pane.disc(AXLE, 12, Fill.PAPER);
        pane.ring(AXLE, 26, LineClass.CENTRE);
        for (int i = 0; i < 4; i++) {
            pane.disc(Point.polar(13, Math.toRadians(FIRST + 45 + 90 * i)), 5, Fill.PAPER);
        }
        pane.cross(AXLE, 24);
        pane.centre(0, 0, motor.x() * 1.45, motor.y() * 1.45);
        pane.centre(24, 0, 62, 0);
        pane.cross(motor, 9);
        pane.angle("firstPositionDeg", AXLE, 46, 0, FIRST, 46);
        var hole = Point.polar(13, Math.toRadians(FIRST + 45));
        pane.along("flangeCircleMm", hole.times(-1), hole, 34);
        pane.level(
                "flangeHoleMm",
                p(hole.times(-1).x() + 2.5, -hole.y()),
                p(hole.times(-1).x() - 2.5, -hole.y()),
                -28);
    }

    private static void flangeSection(Pane pane) {
        pane.turned(Fill.LIGHT_METAL, "0 6, 0 20, 10 20, 10 6");
        pane.turned(Fill.PAPER, "0 10.5, 0 15.5, 10 15.5, 10 10.5");
        pane.outline(0, -6, 0, 6);
        pane.outline(10, -6, 10, 6);
        for (int side = -1; side <= 1; side += 2) {
            pane.centre(-3, side * 13, 13, side * 13);
        }
        pane.centre(-5, 0, 15, 0);
        pane.level("flangeGripMm", p(0, 20), p(10, 20), 27);
    }

    private static void cover(Pane pane) {
        var left = p(-44, 20);
        double tangent = left.angle() - Math.acos(30 / left.length());
        var round = new Segment.Bow(AXLE, 30, -tangent, 2 * tangent);
        var below = p(-44, -20);
        pane.sketch()
                .path(
                        new Contour(List.of(
                                round,
                                new Segment.Straight(round.to(), left),
                                new Segment.Straight(left, below),
                                new Segment.Straight(below, round.from()))),
                        LineClass.OUTLINE,
                        Fill.PAPER);
        pane.sketch().path(Contour.slot(p(-8, 0), AXLE, 12), LineClass.OUTLINE, Fill.PAPER);
        for (int i = 0; i < 4; i++) {
            var out = Point.polar(13, Math.PI / 4 + i * Math.PI / 2);
            pane.sketch().path(Contour.slot(p(-8, 0).plus(out), out, 4.4), LineClass.OUTLINE, Fill.PAPER);
        }
        pane.ring(AXLE, 50, LineClass.CENTRE);
        for (double angle : new double[] {0, 90, 270}) {
            pane.threaded(Point.polar(25, Math.toRadians(angle)), 4.5);
        }
        pane.cross(AXLE, 33);
        pane.upright("coverCircleMm", p(0, -25), p(0, 25), 39);
    }

    /// The plate cut through two of the holes and the opening between them; a hole need not go through.
    private static void coverSection(Pane pane) {
        pane.turned(Fill.LIGHT_METAL, "-13 6, -13 30, 0 30, 0 6");
        pane.turned(Fill.PAPER, "-9 23.2, -9 26.8, 0 26.8, 0 23.2");
        for (int side = -1; side <= 1; side += 2) {
            pane.edge(-9, side * 22.7, 0, side * 22.7);
            pane.edge(-9, side * 27.3, 0, side * 27.3);
            pane.centre(-16, side * 25, 3, side * 25);
        }
        pane.outline(-13, -6, -13, 6);
        pane.outline(0, -6, 0, 6);
        pane.centre(-17, 0, 4, 0);
        pane.level("coverThreadDepthMm", p(-9, 27), p(0, 30), 37);
    }

    /// Around the axle: pins into the hanger, and a face that meets a nose of the hanger.
    private static void form(Pane pane) {
        pane.disc(AXLE, 52, Fill.PAPER);
        pane.disc(AXLE, 16, Fill.PAPER);
        for (int side = -1; side <= 1; side += 2) {
            pane.disc(p(side * 16, 0), 6, Fill.PAPER);
        }
        pane.rectangle(-8, 26, 0, 42, Fill.PAPER);
        pane.cross(AXLE, 30);
        pane.centre(0, 30, 0, 48);
        pane.centre(-16, -6, -16, 6);
        pane.centre(16, -6, 16, 6);
        pane.level("dowelArmMm", AXLE, p(16, 0), -34);
        pane.upright("dowelMm", p(-16, -3), p(-16, 3), -34);
        pane.upright("stopHeightMm", p(-8, 26), p(-8, 42), -17);
        pane.upright("stopArmMm", AXLE, p(0, 34), 36);
    }

    /// Cut along the axle: the pin stands in both, the nose reaches over the mount's edge.
    private static void formSection(Pane pane) {
        pane.turned(Fill.LIGHT_METAL, "0 8, 0 26, 12 26, 12 8");
        pane.turned(Fill.LIGHT_METAL, "12 8, 12 26, 40 26, 40 8");
        for (int side = -1; side <= 1; side += 2) {
            pane.rectangle(2, side * 13, 26, side * 19, Fill.PAPER);
            pane.centre(-2, side * 16, 30, side * 16);
        }
        pane.rectangle(3, 26, 12, 42, Fill.PAPER);
        pane.centre(-4, 0, 44, 0);
        pane.level("stopWidthMm", p(3, 42), p(12, 42), 48);
        pane.level("dowelHoleDepthMm", p(0, -19), p(12, -19), -42);
        pane.level("dowelDepthMm", p(2, -19), p(12, -19), -33);
    }
}
