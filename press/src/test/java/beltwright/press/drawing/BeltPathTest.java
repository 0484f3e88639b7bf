package beltwright.press.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.belt.PitchLine;
import beltwright.layout.LayoutSolver;
import beltwright.part.BeltProfile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/// The drawn belt against the engine's belt geometry, which is worked out in another way.
class BeltPathTest {
    @ParameterizedTest
    @CsvSource({"63.66, 25.46, 77.6, 0.3", "25, 25, 60, -1", "80, 20, 31, 2", "20, 60, 90, 3.1"})
    void isAsLongAsTheEngineSays(double wheel, double drive, double apart, double angle) {
        var path = new BeltPath(Point.ORIGIN, wheel / 2, Point.polar(apart, angle), drive / 2);
        assertThat(path.length()).isCloseTo(new PitchLine(drive, wheel).lengthMm(apart), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"63.66, 25.46, 77.6, 0.3", "80, 20, 31, 2", "20, 60, 90, 3.1"})
    void itsStretchesJoinAndTouchTheCirclesAtRightAngles(double wheel, double drive, double apart, double angle) {
        var motor = Point.polar(apart, angle);
        var stretches = new BeltPath(Point.ORIGIN, wheel / 2, motor, drive / 2).stretches(0);
        for (int i = 0; i < 4; i++) {
            assertThat(stretches.get(i).to().distance(stretches.get((i + 1) % 4).from()))
                    .isLessThan(1e-9);
        }
        var span = (Segment.Straight) stretches.get(1);
        assertThat(span.to().minus(span.from()).dot(span.from())).isCloseTo(0, within(1e-9));
        assertThat(span.to().minus(span.from()).dot(span.to().minus(motor))).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"H5M, 60", "T5, 60"})
    void hasEveryToothOfTheBelt(BeltProfile profile, int teeth) {
        var path = new BeltPath(Point.ORIGIN, 40 * 5 / Math.PI / 2, new Point(77.64, 0), 16 * 5 / Math.PI / 2);
        var inside = path.belt(profile, teeth).get(1);
        double deep = profile.pitchLineDifferentialMm() + profile.toothHeightMm();
        long tips = inside.segments().stream()
                .filter(s ->
                        Math.abs(inward(path, s.halfway()) - deep) < 0.15) // a chord of the circle lies a little deeper
                .count();
        assertThat(tips).isEqualTo(teeth);
    }

    /// How far inside the pitch line a point lies: on a span from the span's line, on a pulley from its circle.
    private static double inward(BeltPath path, Point p) {
        double best = Double.POSITIVE_INFINITY;
        for (var s : path.stretches(0)) {
            switch (s) {
                case Segment.Straight line -> {
                    var along = line.to().minus(line.from()).unit();
                    double at = p.minus(line.from()).dot(along);
                    if (at > -2 && at < line.from().distance(line.to()) + 2) {
                        best = Math.min(best, Math.abs(along.cross(p.minus(line.from()))));
                    }
                }
                case Segment.Bow bow -> {
                    var out = p.minus(bow.centre());
                    if (bow.halfway().minus(bow.centre()).unit().dot(out.unit()) > Math.cos(bow.sweep() / 2)) {
                        best = Math.min(best, bow.radius() - out.length());
                    }
                }
            }
        }
        return best;
    }

    /// A belt tooth that lies on a pulley fills a groove of it: both are drawn to the same place.
    @ParameterizedTest
    @MethodSource("beltwright.press.drawing.DemoKits#ids")
    void beltTeethLieInTheGrooves(String kit) {
        for (var drive : DemoKits.dossier(kit).kit().drives()) {
            var at = DemoKits.dossier(kit).layout().drives().getFirst();
            var path = new BeltPath(
                    Point.ORIGIN,
                    drive.wheelPulley().rim().pitchDiameterMm() / 2,
                    new Point(at.motorXMm(), at.motorZMm()),
                    drive.drivePulley().rim().pitchDiameterMm() / 2);
            assertThat(path.length())
                    .isCloseTo(
                            LayoutSolver.pitchLine(drive)
                                    .lengthMm(at.centreDistanceMm().nominal()),
                            within(1e-6));
            assertThat(grooveError(
                            path.wheelGroove(drive.belt().teeth()),
                            drive.wheelPulley().rim().teeth(),
                            path,
                            true,
                            drive.belt().teeth()))
                    .isLessThan(0.02);
        }
    }

    private static double grooveError(double groove, int teeth, BeltPath path, boolean wheel, int beltTeeth) {
        var arc = (Segment.Bow) path.stretches(0).get(wheel ? 0 : 2);
        double pitch = path.length() / beltTeeth;
        double worst = 0;
        for (int k = 0; (k + 0.5) * pitch < arc.sweep() * arc.radius(); k++) {
            double tooth = arc.start() + (k + 0.5) * pitch / arc.radius();
            double step = 2 * Math.PI / teeth;
            double off = Math.IEEEremainder(tooth - groove, step);
            worst = Math.max(worst, Math.abs(off) * arc.radius());
        }
        return worst;
    }
}
