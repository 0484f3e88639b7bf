package beltwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/// A hanger that turns under a leaning deck, against the rotations of a general-purpose library.
@Tag("law")
class SteeringTest {
    static Stream<Draw> twenty() {
        return LongStream.rangeClosed(1, 20).mapToObj(seed -> new Draw(seed, new SplittableRandom(seed)));
    }

    private static Steering steering(Draw draw) {
        return new Steering(
                Math.toRadians(draw.between(15, 65)), draw.between(-15, 15), draw.whole(0, 1) * draw.between(15, 40));
    }

    private static double lean(Draw draw) {
        return Math.toRadians(draw.between(2, 40));
    }

    private static Steering.Board board(Draw draw) {
        return new Steering.Board(draw.between(30, 110), draw.between(80, 130), draw.between(-40, 80));
    }

    private static Steering.Round wheel(Draw draw) {
        double from = draw.between(40, 120);
        return new Steering.Round(0, 0, from, from + draw.between(20, 70), draw.between(30, 60));
    }

    private static Rotation turned(Steering steering, double turnRad) {
        return new Rotation(direction(steering), turnRad, RotationConvention.VECTOR_OPERATOR);
    }

    private static Vector3D direction(Steering steering) {
        return new Vector3D(-Math.cos(steering.axisRad()), 0, Math.sin(steering.axisRad()));
    }

    /// {@return the axle seen from the ground, once the hanger has turned and the deck has leaned}
    private static Vector3D axle(Steering steering, double leanRad) {
        var onDeck = turned(steering, steering.turnRad(leanRad)).applyTo(Vector3D.PLUS_J);
        return new Rotation(Vector3D.PLUS_I, leanRad, RotationConvention.VECTOR_OPERATOR).applyTo(onDeck);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theAxleStaysParallelToTheGround(Draw draw) {
        var steering = steering(draw);
        double lean = lean(draw);
        assertThat(axle(steering, lean).getZ()).isCloseTo(0, within(1e-12));
        assertThat(axle(steering, -lean).getZ()).isCloseTo(0, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theSteeringAngleIsTheYawOfTheAxle(Draw draw) {
        var steering = steering(draw);
        double lean = draw.random().nextBoolean() ? lean(draw) : -lean(draw);
        var axle = axle(steering, lean);
        assertThat(steering.steerRad(lean)).isCloseTo(Math.atan2(-axle.getX(), axle.getY()), within(1e-12));
    }

    @ParameterizedTest // level axis, no lean: nothing steers; 45° and a lean of 30°: tan σ = 1/2
    @CsvSource({"0, 20, 0", "50, 0, 0", "45, 30, 26.565051", "45, -30, -26.565051"})
    void steersAsKnownFromTheTriangle(double axisDeg, double leanDeg, double steerDeg) {
        var steering = new Steering(Math.toRadians(axisDeg), 0, 0);
        assertThat(Math.toDegrees(steering.steerRad(Math.toRadians(leanDeg)))).isCloseTo(steerDeg, within(1e-6));
    }

    /// A deck whose underside is 60 above the axle, 100 to either side of the middle, 40 behind the axle. Round bodies
    /// of radius 30: under it, beside it, behind it, past its corner, and into it.
    @ParameterizedTest
    @CsvSource({
        "  0,   0,   40,  90,  30", // 60 − 30
        "  0,   0,  120, 160,  36.055513", // 20 beside, 30 below
        "-75,  80,   40,  90,   5", // 35 behind, less 30, level with the deck
        "-90,  80,  110, 140,  22.360680", // 20 behind, 10 beside
        "  0,  45,   40,  90, -15", // 15 into it from below
        "  0, 300,  130, 150,  30", // beside it and far above
    })
    void withoutLeanDistancesArePlaneGeometry(double x, double z, double from, double to, double expected) {
        var body = new Steering.Round(x, z, from, to, 30);
        var board = new Steering.Board(60, 100, 40);
        for (var steering : new Steering[] {new Steering(0.8, -3, 0), new Steering(0.7, 2, 28)}) {
            assertThat(steering.leastMm(body, board, 0)).isCloseTo(expected, within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void leftIsAsRight(Draw draw) {
        var steering = steering(draw);
        var board = board(draw);
        double lean = lean(draw);
        var wheel = wheel(draw);
        var other = new Steering.Round(wheel.xMm(), wheel.zMm(), -wheel.fromMm(), -wheel.toMm(), wheel.radiusMm());
        double here = steering.leastMm(wheel, board, lean);
        assertThat(steering.leastMm(other, board, lean)).isCloseTo(here, within(1e-3));
        assertThat(steering.leastMm(wheel, board, -lean)).isEqualTo(here);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void twoAxesInOnePlaceAreOne(Draw draw) {
        var one = new Steering(Math.toRadians(draw.between(15, 65)), draw.between(-15, 15), 0);
        var two = new Steering(one.axisRad(), one.rakeMm(), 1e-9);
        var wheel = wheel(draw);
        var board = board(draw);
        double lean = lean(draw);
        assertThat(two.leastMm(wheel, board, lean)).isCloseTo(one.leastMm(wheel, board, lean), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void leaningNeverGivesMoreRoomThanStandingUpright(Draw draw) {
        var steering = steering(draw);
        var wheel = wheel(draw);
        var board = board(draw);
        assertThat(steering.leastMm(wheel, board, lean(draw))).isLessThanOrEqualTo(steering.leastMm(wheel, board, 0));
    }

    @ParameterizedTest
    @MethodSource("twenty")
    void millionsOfPointsFindNoneNearer(Draw draw) {
        var steering = steering(draw);
        var wheel = wheel(draw);
        var board = board(draw);
        double lean = lean(draw);
        double least = Double.POSITIVE_INFINITY;
        for (double leaning : new double[] {0, lean, -lean}) {
            least = Math.min(least, sampled(steering, wheel, board, leaning));
        }
        assertThat(steering.leastMm(wheel, board, lean)).isCloseTo(least, within(0.02));
    }

    /// Two million points around and along a body, each turned with the hanger.
    private static double sampled(Steering steering, Steering.Round body, Steering.Board board, double leanRad) {
        double turn = steering.turnRad(leanRad);
        var from = place(steering, new Vector3D(body.xMm(), body.fromMm(), body.zMm()), turn);
        var to = place(steering, new Vector3D(body.xMm(), body.toMm(), body.zMm()), turn);
        var rotation = turned(steering, turn);
        var ahead = rotation.applyTo(Vector3D.PLUS_I).scalarMultiply(body.radiusMm());
        var up = rotation.applyTo(Vector3D.PLUS_K).scalarMultiply(body.radiusMm());
        int around = 4000;
        int along = 500;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < around; i++) {
            double angle = 2 * Math.PI * i / around;
            var rim = new Vector3D(Math.cos(angle), ahead, Math.sin(angle), up);
            for (int k = 0; k < along; k++) {
                double share = k / (along - 1.0);
                double x = from.getX() + share * (to.getX() - from.getX()) + rim.getX();
                double y = from.getY() + share * (to.getY() - from.getY()) + rim.getY();
                double z = from.getZ() + share * (to.getZ() - from.getZ()) + rim.getZ();
                least = Math.min(least, distance(board, x, y, z));
            }
        }
        return least;
    }

    /// The nearest point of the deck is the point itself held within the deck's bounds.
    private static double distance(Steering.Board board, double x, double y, double z) {
        double dx = Math.max(x, -board.behindMm()) - x;
        double dy = Math.clamp(y, -board.halfWidthMm(), board.halfWidthMm()) - y;
        double dz = Math.max(z, board.underMm()) - z;
        double away = Math.sqrt(dx * dx + dy * dy + dz * dz);
        if (away > 0) {
            return away;
        }
        double beside = board.halfWidthMm() - Math.abs(y);
        return -Math.min(Math.min(x + board.behindMm(), beside), z - board.underMm());
    }

    private static Vector3D place(Steering steering, Vector3D p, double turn) {
        var normal = new Vector3D(Math.sin(steering.axisRad()), 0, Math.cos(steering.axisRad()));
        var near = normal.scalarMultiply(-steering.rakeMm());
        if (steering.linkMm() == 0) {
            return near.add(turned(steering, turn).applyTo(p.subtract(near)));
        }
        var far = normal.scalarMultiply(steering.linkMm() - steering.rakeMm());
        var half = turned(steering, turn / 2);
        var between = near.add(half.applyTo(p.subtract(near)));
        return far.add(half.applyTo(between.subtract(far)));
    }
}
