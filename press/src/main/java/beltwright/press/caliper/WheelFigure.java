package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;

/// A wheel: in section with the pulley's side on the left, its face, and how a pulley may be held in it.
final class WheelFigure {
    private static final Point MIDDLE = Point.ORIGIN;

    private WheelFigure() {}

    static void draw(Figure figure) {
        section(figure.view().caption("section, the pulley's side on the left"));
        face(figure.view().caption("core, from the pulley's side"));
        figure.row();
        screws(figure.view().caption("core with holes for screws"));
        recess(figure.view().caption("core with a recess for a pressed pulley"));
    }

    private static void section(Pane pane) {
        pane.turned(Fill.RUBBER, "-25 33, -25 39, -22 42, 40 42, 43 39, 43 33");
        pane.turned(Fill.LIGHT_METAL, "-16 13, -16 33, 34 33, 34 28, 16 28, 16 13, 7 13, 7 9, -7 9, -7 13");
        pane.turned(Fill.PAPER, "-16 19, -16 27, 6 27, 6 19");
        for (double x : new double[] {-25, 43}) {
            pane.edge(x, -33, x, 33);
        }
        for (double x : new double[] {-16, 16}) {
            pane.outline(x, -13, x, 13);
        }
        pane.outline(-7, -9, -7, 9);
        pane.outline(7, -9, 7, 9);
        for (int side = -1; side <= 1; side += 2) {
            pane.sketch().line(-29, side * 37, 47, side * 37, LineClass.PHANTOM);
        }
        pane.centre(-30, 0, 48, 0);
        pane.centre(0, 0, 0, 47);
        pane.centre(9, 28, 9, 47);
        pane.upright("bearingSeatMm", p(-16, -13), p(-16, 13), -33);
        pane.upright("wornDiameterMm", p(-29, -37), p(-29, 37), -42);
        pane.upright("diameterMm", p(-22, -42), p(-22, 42), -51);
        pane.level("coreOffsetMm", p(0, 47), p(9, 47), 51);
        pane.level("widthMm", p(-25, 39), p(43, 39), 59);
        pane.level("coreFaceInsetMm", p(-25, -39), p(-16, -33), -51);
        pane.level("openingDepthMm", p(-16, 23), p(6, 23), 23);
        pane.level("bearingSeatDepthMm", p(-16, 13), p(-7, 13), 5);
        pane.level("coreSpacingMm", p(-7, 9), p(7, 9), 5);
    }

    private static void core(Pane pane) {
        pane.disc(MIDDLE, 66, Fill.PAPER);
        pane.disc(MIDDLE, 26, Fill.PAPER);
        pane.disc(MIDDLE, 18, Fill.PAPER);
    }

    private static void face(Pane pane) {
        core(pane);
        pane.ring(MIDDLE, 46, LineClass.CENTRE);
        for (int i = 0; i < 6; i++) {
            var out = Point.polar(1, Math.PI / 2 + i * Math.PI / 3);
            var aside = out.left().times(5);
            pane.sketch()
                    .path(
                            Contour.polygon(
                                    out.times(19).minus(aside),
                                    out.times(27).minus(aside),
                                    out.times(27).plus(aside),
                                    out.times(19).plus(aside)),
                            LineClass.OUTLINE,
                            Fill.PAPER);
        }
        pane.cross(MIDDLE, 36);
        pane.level("openingWidthMm", p(-5, 27), p(5, 27), 41);
        pane.upright("openingCircleMm", p(0, -23), p(0, 23), 42);
    }

    private static void screws(Pane pane) {
        pane.turned(Fill.LIGHT_METAL, "-16 13, -16 33, 34 33, 34 28, 0 28, 0 16, 16 16, 16 13, 7 13, 7 9, -7 9, -7 13");
        pane.turned(Fill.PAPER, "-16 20, -16 25, 0 25, 0 20");
        for (int side = -1; side <= 1; side += 2) {
            pane.centre(-20, side * 22.5, 6, side * 22.5);
        }
        pane.outline(-16, -13, -16, 13);
        pane.outline(16, -13, 16, 13);
        pane.centre(-22, 0, 40, 0);
        pane.level("screwGripMm", p(-16, 33), p(0, 25), 41);
        pane.upright("screwHoleMm", p(-16, 20), p(-16, 25), -27);
        pane.upright("screwCircleMm", p(-20, -22.5), p(-20, 22.5), -37);
    }

    private static void recess(Pane pane) {
        pane.turned(
                Fill.LIGHT_METAL, "-26 25, -26 33, 34 33, 34 28, 16 28, 16 13, 7 13, 7 9, -7 9, -7 13, -14 13, -14 25");
        pane.outline(-26, -25, -26, 25);
        pane.outline(-14, -13, -14, 13);
        pane.outline(16, -13, 16, 13);
        pane.centre(-30, 0, 40, 0);
        pane.level("recessDepthMm", p(-26, 33), p(-14, 25), 41);
        pane.upright("recessDiameterMm", p(-26, -25), p(-26, 25), -36);
        pane.upright("coreDiameterMm", p(34, -33), p(34, 33), 44);
    }
}
