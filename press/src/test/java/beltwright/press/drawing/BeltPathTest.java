package beltwright.press.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.belt.BeltLoop;
import beltwright.belt.PitchLine;
import beltwright.kit.Drive;
import beltwright.layout.LayoutSolver;
import beltwright.part.BeltProfile;
import beltwright.part.Idler;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    /// Idlers inside and on the back of the belt, above and below the line of centres, motor ahead and behind.
    @ParameterizedTest
    @CsvSource({
        "57.3, 23.87, 0.26, 43, 21, 24.4, true",
        "57.3, 25.46, 0.21, 42, -21, 19.1, false",
        "57.3, 25.46, 2.9, 42, -23, 19.1, false",
        "76.4, 28.65, -2.8, 50, 24, 24.4, true",
        "76.4, 28.65, 1.2, 50, -22, 30, true",
        "30, 30, 0.5, 40, 18, 20, false"
    })
    void anIdlerBendsThePath(
            double wheel, double drive, double angle, double along, double aside, double idler, boolean onBack) {
        double apart = 90;
        var toward = Point.polar(1, angle);
        var wheelRound = new BeltPath.Round(Point.ORIGIN, wheel / 2, false);
        var driveRound = new BeltPath.Round(toward.times(apart), drive / 2, false);
        var idlerRound =
                new BeltPath.Round(toward.times(along).plus(toward.left().times(aside)), idler / 2, onBack);
        var path = new BeltPath(
                aside > 0 ? List.of(wheelRound, driveRound, idlerRound) : List.of(wheelRound, idlerRound, driveRound));
        var loop = new BeltLoop(new PitchLine(drive, wheel), new BeltLoop.Idling(along, aside, idler, onBack));

        assertThat(path.exists()).isTrue();
        assertThat(path.length()).isCloseTo(loop.lengthMm(apart), within(1e-9));
        assertThat(Math.abs(path.bow(idlerRound).sweep())).isCloseTo(loop.idlerWrapRad(apart), within(1e-9));
        touches(path);
    }

    /// Every span leaves one circle and meets the next at a right angle to their radii, and every outline of the belt
    /// stays off what it runs around.
    private static void touches(BeltPath path) {
        for (double inward : new double[] {0, 1.2, -1.5}) {
            var stretches = path.stretches(inward);
            for (int i = 0; i < stretches.size(); i++) {
                var next = stretches.get((i + 1) % stretches.size());
                assertThat(stretches.get(i).to().distance(next.from())).isLessThan(1e-9);
                if (stretches.get(i) instanceof Segment.Straight span) {
                    var before = (Segment.Bow) stretches.get(i - 1);
                    var after = (Segment.Bow) next;
                    var heading = span.to().minus(span.from());
                    assertThat(heading.dot(span.from().minus(before.centre()))).isCloseTo(0, within(1e-9));
                    assertThat(heading.dot(span.to().minus(after.centre()))).isCloseTo(0, within(1e-9));
                    for (var round : path.rounds()) {
                        double clear = round.radius() - round.turn() * inward;
                        double along = round.centre().minus(span.from()).dot(heading) / heading.dot(heading);
                        var nearest = span.from().plus(heading.times(Math.clamp(along, 0, 1)));
                        assertThat(nearest.distance(round.centre())).isGreaterThan(clear - 1e-9);
                    }
                }
            }
        }
    }

    /// Teeth point into the loop and the back lies off the idler, on whichever side that stands.
    @ParameterizedTest
    @ValueSource(strings = {"harbour-mile", "orchard-lane"})
    void theDrawnBeltLiesOnTheIdlerAndNotInIt(String kit) {
        var dossier = DemoKits.dossier(kit);
        var drive = dossier.kit().drives().getFirst();
        var at = dossier.layout().drives().getFirst();
        var path = BeltPath.of(drive, at);
        assertThat(path.rounds()).hasSize(3);
        var idler = new IdlerDrawing(drive, at);
        var profile = drive.belt().profile();
        double off = Double.POSITIVE_INFINITY;
        for (var outline : path.belt(profile, drive.belt().teeth())) {
            for (var piece : outline.segments()) {
                off = Math.min(off, piece.halfway().distance(idler.centre()));
            }
        }
        // a tooth in a groove reaches its root; the back lies on the round
        double least = idler.runsOnMm() - (drive.idler().runs() == Idler.Runs.INSIDE ? profile.toothHeightMm() : 0);
        assertThat(off).isCloseTo(least, within(0.2));
    }

    /// A belt tooth that lies on a pulley fills a groove of it: both are drawn to the same place.
    @ParameterizedTest
    @MethodSource("beltwright.press.drawing.DemoKits#ids")
    void beltTeethLieInTheGrooves(String kit) {
        for (var drive : DemoKits.dossier(kit).kit().drives()) {
            var at = DemoKits.dossier(kit).layout().drives().stream()
                    .filter(d -> d.side() == drive.side())
                    .findFirst()
                    .orElseThrow();
            var path = BeltPath.of(drive, at);
            assertThat(path.length())
                    .isCloseTo(drive.belt().teeth() * drive.belt().profile().pitchMm(), within(1e-6));
            assertThat(path.length())
                    .isCloseTo(
                            LayoutSolver.loop(drive)
                                    .lengthMm(at.centreDistanceMm().nominal()),
                            within(1e-6));
            var motor = new Point(at.motorXMm(), at.motorZMm());
            assertThat(grooveError(Point.ORIGIN, drive.wheelPulley().rim().teeth(), path, drive))
                    .isLessThan(0.02);
            assertThat(grooveError(motor, drive.drivePulley().rim().teeth(), path, drive))
                    .isLessThan(0.02);
            if (drive.idler().runs() == Idler.Runs.INSIDE && !drive.idler().blank()) {
                var idler = new IdlerDrawing(drive, at).centre();
                assertThat(grooveError(idler, drive.idler().teeth(), path, drive))
                        .isLessThan(0.02);
            }
        }
    }

    private static double grooveError(Point centre, int teeth, BeltPath path, Drive drive) {
        int round = path.rounds().stream().map(BeltPath.Round::centre).toList().indexOf(centre);
        var stretches = path.stretches(0);
        var arc = (Segment.Bow) stretches.get(2 * round);
        double pitch = path.length() / drive.belt().teeth();
        double begins = stretches.subList(0, 2 * round).stream()
                .mapToDouble(Segment::length)
                .sum();
        double groove = path.groove(centre, drive.belt().teeth());
        double worst = 0;
        for (int k = 0; (k + 0.5) * pitch < begins + arc.length(); k++) {
            double on = (k + 0.5) * pitch - begins;
            if (on > 0) {
                double off = Math.IEEEremainder(arc.start() + on / arc.radius() - groove, 2 * Math.PI / teeth);
                worst = Math.max(worst, Math.abs(off) * arc.radius());
            }
        }
        return worst;
    }
}
