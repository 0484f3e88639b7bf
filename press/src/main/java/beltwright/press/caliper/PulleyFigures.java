package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import java.util.ArrayList;
import java.util.List;

/// Both pulleys, the belt and the idler.
final class PulleyFigures {
    private static final Point MIDDLE = Point.ORIGIN;

    private PulleyFigures() {}

    // the drive pulley

    static void drive(Figure figure) {
        driveSection(figure.view().caption("section, hub on the right"));
        setScrews(figure.view().caption("from the hub, two set screws"));
        figure.row();
        flatBore(figure.view().caption("bore form: D or two flats"));
        keyway(figure.view().caption("bore form: keyed"));
        figure.row();
        splitHub(figure.view().caption("from the hub, split and clamped"));
    }

    private static void driveSection(Pane pane) {
        pane.turned(Fill.STEEL, "-3 4.5, -3 19, 0 19, 0 15, 22 15, 22 19, 25 19, 25 12, 39 12, 39 4.5");
        pane.turned(Fill.PAPER, "30 4.5, 30 12, 34 12, 34 4.5");
        for (int side = -1; side <= 1; side += 2) {
            pane.centre(32, side * 3, 32, side * 15);
            pane.edge(0, side * 12.5, 22, side * 12.5);
        }
        pane.outline(-3, -4.5, -3, 4.5);
        pane.outline(39, -4.5, 39, 4.5);
        pane.centre(-7, 0, 43, 0);
        pane.level("rim.faceWidthMm", p(0, 19), p(22, 19), 27);
        pane.level("rim.flangeThicknessMm", p(0, -19), p(-3, -19), -27);
        pane.level("hubLengthMm", p(25, -19), p(39, -12), -27);
        pane.upright("rim.flangeDiameterMm", p(-3, -19), p(-3, 19), -20);
        pane.upright("boreDiameterMm", p(-3, -4.5), p(-3, 4.5), -11);
        pane.upright("hubDiameterMm", p(39, -12), p(39, 12), 48);
    }

    private static void setScrews(Pane pane) {
        pane.disc(MIDDLE, 38, Fill.PAPER);
        pane.disc(MIDDLE, 24, Fill.PAPER);
        pane.disc(MIDDLE, 9, Fill.PAPER);
        for (int side = -1; side <= 1; side += 2) {
            pane.hidden(4, side * 2, 12, side * 2);
            pane.hidden(side * 2, 4, side * 2, 12);
        }
        pane.centre(-22, 0, 28, 0);
        pane.centre(0, -22, 0, 28);
        pane.angle("setScrewsApartDeg", MIDDLE, 25, 0, 90, 25);
    }

    /// The slit runs to the right; a screw passes the upper jaw and the slit, and is threaded in the lower one.
    private static void splitHub(Pane pane) {
        pane.disc(MIDDLE, 44, Fill.PAPER);
        pane.disc(MIDDLE, 16, Fill.PAPER);
        pane.outline(7.8, 1.5, 21.9, 1.5);
        pane.outline(7.8, -1.5, 21.9, -1.5);
        for (int side = -1; side <= 1; side += 2) {
            pane.hidden(14 + side * 2.4, 14, 14 + side * 2.4, -1.5);
            pane.hidden(14 + side * 2, -1.5, 14 + side * 2, -13);
        }
        pane.hidden(11.6, 14, 16.4, 14);
        pane.hidden(12, -13, 16, -13);
        pane.cross(MIDDLE, 25);
        pane.centre(14, 20, 14, -18);
        pane.level("hubScrewArmMm", MIDDLE, p(14, -18), -31);
        pane.upright("hubScrewGripMm", p(14, 14), p(14, -1.5), 31);
        pane.upright("hubThreadDepthMm", p(14, -1.5), p(14, -13), 42);
    }

    private static void flatBore(Pane pane) {
        bored(pane, Contour.flatted(MIDDLE, 20, 16.5, Math.PI / 2));
        pane.upright("boreFlatMm", p(0, -10), p(7, 6.5), 24);
    }

    private static void keyway(Pane pane) {
        double half = Math.asin(0.45);
        var round = new Segment.Bow(MIDDLE, 10, Math.PI / 2 + half, 2 * (Math.PI - half));
        var sides = new ArrayList<Segment>(List.of(round));
        var corners = List.of(round.to(), p(4.5, 13), p(-4.5, 13), round.from());
        for (int i = 0; i < 3; i++) {
            sides.add(new Segment.Straight(corners.get(i), corners.get(i + 1)));
        }
        bored(pane, new Contour(sides));
        pane.level("keywayWidthMm", p(-4.5, 13), p(4.5, 13), 23);
        pane.upright("overKeywayMm", p(0, -10), p(4.5, 13), 24);
    }

    private static void bored(Pane pane, Contour bore) {
        pane.sketch().path(List.of(Contour.circle(MIDDLE, 17), bore), LineClass.OUTLINE, Fill.STEEL, false);
        pane.cross(MIDDLE, 20);
    }

    // the wheel pulley; its seat on the core is at 0, the wheel to the right

    static void wheel(Figure figure) {
        lugs(figure.view().caption("section, seat on the right; holding: lugs"));
        lugFace(figure.view().caption("from the wheel; holding: lugs"));
        figure.row();
        screws(figure.view().caption("holding: screws"));
        pressed(figure.view().caption("holding: press fit"));
    }

    private static void lugs(Pane pane) {
        pane.turned(
                Fill.LIGHT_METAL,
                "0 10, 0 13, 16 13, 16 19, 0 19, 0 23, -10 23, -10 34, -13 34, -13 30, -35 30,"
                        + " -35 34, -38 34, -38 25, -14 25, -14 10");
        rim(pane, 0);
        for (int side = -1; side <= 1; side += 2) {
            pane.centre(-3, side * 16, 19, side * 16);
        }
        pane.level("rimStandoffMm", p(-10, 34), p(0, 23), 42);
        pane.level("rim.faceWidthMm", p(-35, 34), p(-13, 34), 42);
        pane.level("rim.flangeThicknessMm", p(-35, -34), p(-38, -34), -42);
        pane.level("lugLengthMm", p(0, -23), p(16, -19), -42);
        pane.upright("rim.flangeDiameterMm", p(-38, -34), p(-38, 34), -47);
        pane.upright("boreDiameterMm", p(-14, -10), p(-14, 10), -25);
        pane.upright("lugCircleMm", p(19, -16), p(19, 16), 26);
    }

    /// @param end where the bore ends on the wheel's side
    private static void rim(Pane pane, double end) {
        for (int side = -1; side <= 1; side += 2) {
            pane.edge(-35, side * 27.5, -13, side * 27.5);
        }
        pane.outline(-38, -25, -38, 25);
        pane.outline(-14, -10, -14, 10);
        pane.outline(end, -10, end, 10);
        pane.centre(-42, 0, 20, 0);
    }

    private static void lugFace(Pane pane) {
        pane.disc(MIDDLE, 68, Fill.PAPER);
        pane.disc(MIDDLE, 46, Fill.PAPER);
        pane.disc(MIDDLE, 20, Fill.PAPER);
        pane.ring(MIDDLE, 32, LineClass.CENTRE);
        for (int i = 0; i < 6; i++) {
            double angle = Math.PI / 2 + i * Math.PI / 3;
            var out = Point.polar(1, angle);
            var aside = out.left().times(4.75);
            var inner = out.times(13);
            var outer = out.times(19);
            pane.sketch()
                    .path(
                            Contour.polygon(
                                    inner.minus(aside), outer.minus(aside), outer.plus(aside), inner.plus(aside)),
                            LineClass.OUTLINE,
                            Fill.TINT);
        }
        pane.cross(MIDDLE, 37);
        pane.level("lugWidthMm", p(-4.75, 19), p(4.75, 19), 42);
    }

    private static void screws(Pane pane) {
        pane.turned(
                Fill.LIGHT_METAL,
                "0 10, 0 23, -10 23, -10 34, -13 34, -13 30, -35 30, -35 34, -38 34, -38 25, -14 25, -14 10");
        pane.turned(Fill.PAPER, "0 14.3, 0 17.7, -10 17.7, -10 14.3");
        rim(pane, 0);
        for (int side = -1; side <= 1; side += 2) {
            pane.edge(0, side * 13.8, -10, side * 13.8);
            pane.edge(0, side * 18.2, -10, side * 18.2);
            pane.centre(-12, side * 16, 5, side * 16);
        }
        pane.upright("screwCircleMm", p(5, -16), p(5, 16), 13);
        pane.level("threadDepthMm", p(-10, 18), p(0, 23), 42);
    }

    private static void pressed(Pane pane) {
        pane.turned(
                Fill.LIGHT_METAL,
                "16 10, 16 18, 0 18, 0 23, -10 23, -10 34, -13 34, -13 30, -35 30, -35 34, -38 34,"
                        + " -38 25, -14 25, -14 10");
        rim(pane, 16);
        pane.upright("spigotDiameterMm", p(16, -18), p(16, 18), 24);
        pane.level("spigotLengthMm", p(0, 23), p(16, 18), 42);
    }

    // the belt

    static void belt(Figure figure) {
        var side = figure.view().caption("from the side");
        double pitch = 10;
        var back = p(-45, 8);
        var outline = new ArrayList<Segment>();
        outline.add(new Segment.Straight(p(45, 8), back));
        outline.add(new Segment.Straight(back, p(-45, 3)));
        for (double x = -40; x <= 40; x += pitch) {
            var a = p(x - 3, 3);
            var b = p(x + 3, 3);
            outline.add(new Segment.Straight(outline.getLast().to(), a));
            outline.add(Segment.through(a, p(x, -1.5), b));
        }
        outline.add(new Segment.Straight(outline.getLast().to(), p(45, 3)));
        outline.add(new Segment.Straight(p(45, 3), p(45, 8)));
        side.sketch().path(new Contour(outline), LineClass.OUTLINE, Fill.TINT);
        side.centre(-49, 5, 49, 5);
        var across = figure.view().caption("cut across");
        across.rectangle(-15, -1.5, 15, 3, Fill.PAPER);
        across.rectangle(-15, 3, 15, 8, Fill.RUBBER);
        across.level("widthMm", p(-15, -1.5), p(15, -1.5), -9);
    }

    // the idler

    static void idler(Figure figure) {
        idlerSection(figure.view().caption("section; runs: back"));
    }

    private static void idlerSection(Pane pane) {
        pane.turned(Fill.LIGHT_METAL, "-13 10, -13 19, -10 19, -10 15, 10 15, 10 19, 13 19, 13 10");
        pane.turned(Fill.STEEL, "-9 8.5, -9 10, 9 10, 9 8.5");
        pane.turned(Fill.STEEL, "-16 4, -16 6.5, 14 6.5, 14 4");
        for (int side = -1; side <= 1; side += 2) {
            pane.disc(p(-4, side * 7.5), 2.2, Fill.PAPER);
            pane.disc(p(4, side * 7.5), 2.2, Fill.PAPER);
        }
        pane.outline(-16, -4, -16, 4);
        pane.outline(14, -4, 14, 4);
        pane.rectangle(-19, -24, -16, 24, Fill.LIGHT_METAL); // the mount plate
        pane.centre(-22, 0, 18, 0);
        pane.level("faceWidthMm", p(-10, 19), p(10, 19), 27);
        pane.level("flangeThicknessMm", p(10, 19), p(13, 19), 34);
        pane.level("standoffMm", p(-16, 19), p(-13, 19), 34);
        pane.level("screwGripMm", p(-16, -6.5), p(14, -6.5), -27);
        pane.upright("diameterMm", p(10, -15), p(10, 15), 22);
        pane.upright("reachDiameterMm", p(13, -19), p(13, 19), 31);
    }
}
