package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import java.util.List;

/// A motor: in section, its mounting face, the forms of its shaft end, its wires and plugs.
final class MotorFigure {
    private static final Point MIDDLE = Point.ORIGIN;

    private MotorFigure() {}

    static void draw(Figure figure) {
        section(figure.view().caption("section, mounting face on the right"));
        face(figure.view().caption("mounting face"));
        figure.row();
        flat(figure.view().caption("shaft form: D"));
        twoFlats(figure.view().caption("shaft form: two flats"));
        keyed(figure.view().caption("shaft form: keyed"));
        figure.row();
        wires(figure.view().caption("bundle at its tightest bend"));
        phasePlug(figure.view().caption("plug of a phase wire"));
        ElectricFigures.sensor(figure.view().caption("sensor connector"));
        figure.row();
        bearings(figure.view().caption("bearings of the shaft"));
    }

    private static void section(Pane pane) {
        pane.turned(Fill.STEEL, "-44 22, -44 25, -10 25, -10 22");
        pane.turned(Fill.LIGHT_METAL, "-48 4, -48 14, -46 25, -44 25, -44 4");
        pane.turned(Fill.PAPER, "-40 10, -40 20, -13 20, -13 10");
        for (int side = -1; side <= 1; side += 2) {
            pane.edge(-40, side * 10, -13, side * 20);
            pane.edge(-40, side * 20, -13, side * 10);
        }
        pane.turned(Fill.LIGHT_METAL, "-9 4, -9 22, 0 22, 0 9, 2.5 9, 2.5 4");
        pane.turned(Fill.PAPER, "-9 12.5, -9 15.5, 0 15.5, 0 12.5");
        for (int side = -1; side <= 1; side += 2) {
            pane.edge(-9, side * 12, 0, side * 12);
            pane.edge(-9, side * 16, 0, side * 16);
            pane.centre(-12, side * 14, 4, side * 14);
        }
        pane.rectangle(-48, -4, 30, 4, Fill.PAPER);
        pane.centre(-53, 0, 34, 0);
        pane.level("canLengthMm", p(-48, -14), p(0, -22), -33);
        pane.level("shaftLengthMm", p(0, -22), p(30, -4), -33);
        pane.upright("canDiameterMm", p(-46, -25), p(-46, 25), -58);
        pane.upright("shaftDiameterMm", p(30, -4), p(30, 4), 38);
        pane.level("threadDepthMm", p(-13, 20), p(0, 22), 32);
    }

    private static void face(Pane pane) {
        pane.disc(MIDDLE, 50, Fill.PAPER);
        pane.disc(MIDDLE, 44, Fill.PAPER);
        pane.disc(MIDDLE, 18, Fill.PAPER);
        pane.disc(MIDDLE, 8, Fill.PAPER);
        pane.ring(MIDDLE, 28, LineClass.CENTRE);
        for (int i = 0; i < 4; i++) {
            pane.threaded(Point.polar(14, i * Math.PI / 2), 4);
        }
        pane.cross(MIDDLE, 28);
        pane.level("boltCircleMm", p(-14, 0), p(14, 0), -33);
        pane.upright("bossDiameterMm", p(0, -9), p(0, 9), 33);
    }

    /// Shaft and bearings alone, the mounting face in phantom.
    private static void bearings(Pane pane) {
        for (double x : new double[] {-44, -12}) {
            pane.turned(Fill.STEEL, "%s 4, %s 11, %s 11, %s 4".formatted(x, x, x + 7, x + 7));
            pane.centre(x + 3.5, -14, x + 3.5, 14);
        }
        pane.rectangle(-48, -4, 22, 4, Fill.PAPER);
        pane.centre(-53, 0, 27, 0);
        pane.sketch().line(0, -20, 0, 20, LineClass.PHANTOM);
        pane.level("frontBearingMm", p(-8.5, 14), p(0, 20), 26);
        pane.level("bearingSpanMm", p(-40.5, -14), p(-8.5, -14), -22);
    }

    private static void flat(Pane pane) {
        pane.sketch().path(Contour.flatted(MIDDLE, 20, 16.5, Math.PI / 2), LineClass.OUTLINE, Fill.STEEL);
        pane.cross(MIDDLE, 13);
        pane.upright("shaftFlatMm", p(0, -10), p(7, 6.5), 17);
    }

    private static void twoFlats(Pane pane) {
        double half = Math.acos(0.7);
        var right = new Segment.Bow(MIDDLE, 10, half, Math.PI / 2 - 2 * half);
        var round = new Segment.Bow(MIDDLE, 10, Math.PI / 2 + half, 1.5 * Math.PI - 2 * half);
        var outline = new Contour(List.of(
                right,
                new Segment.Straight(right.to(), round.from()),
                round,
                new Segment.Straight(round.to(), right.from())));
        pane.sketch().path(outline, LineClass.OUTLINE, Fill.STEEL);
        pane.cross(MIDDLE, 13);
        pane.angle("flatsApartDeg", MIDDLE, 17, 0, 90, 12);
    }

    private static void keyed(Pane pane) {
        pane.disc(MIDDLE, 20, Fill.STEEL);
        pane.rectangle(-5, 4.5, 5, 12.5, Fill.PAPER);
        pane.cross(MIDDLE, 14);
        pane.level("keyWidthMm", p(-5, 12.5), p(5, 12.5), 20);
        pane.upright("overKeyMm", p(0, -10), p(5, 12.5), 17);
    }

    /// A bundle of three that leaves the motor and turns a quarter.
    private static void wires(Pane pane) {
        var bend = p(0, -18);
        for (double r : new double[] {14, 22}) {
            pane.outline(-22, r - 18, 0, r - 18);
            pane.sketch().segment(new Segment.Bow(bend, r, 0, Math.PI / 2), LineClass.OUTLINE);
            pane.outline(r, -18, r, -30);
        }
        for (double r : new double[] {16.7, 19.3}) {
            pane.edge(-22, r - 18, 0, r - 18);
            pane.sketch().segment(new Segment.Bow(bend, r, 0, Math.PI / 2), LineClass.EDGE);
            pane.edge(r, -18, r, -30);
        }
        pane.rectangle(-30, -14, -22, 12, Fill.PAPER);
        pane.cross(bend, 3);
        pane.upright("wireDiameterMm", p(-14, -4), p(-14, 4), -14);
        pane.along("wireBendMm", bend, bend.plus(Point.polar(18, Math.PI / 4)), 0);
    }

    private static void phasePlug(Pane pane) {
        pane.rectangle(-30, -2.5, -18, 2.5, Fill.PAPER);
        pane.rectangle(-18, -4.5, -6, 4.5, Fill.PAPER);
        pane.shape(Fill.PAPER, "-6 -5, 8 -5, 12 -3, 12 3, 8 5, -6 5");
        pane.centre(-34, 0, 16, 0);
        pane.upright("phasePlugMm", p(8, -5), p(8, 5), 22);
    }
}
