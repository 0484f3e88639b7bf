package beltwright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.power.Powertrain;
import beltwright.quantity.Refusal;
import beltwright.ride.Log.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/// Logs with a known truth: of 200 intervals of 95 % some 190 cover it, and 180 to 198 must (five standard deviations
/// of
/// the binomial down, what is left of a hundred up).
class CalibrationTest {
    private static final int LOGS = 200;
    private static final int LEAST = 180;
    private static final int MOST = 198;

    private static Log log(Log.Belts belts, Map<Reading, List<Double>> readings) {
        return new Log("seeded", "kit", "nobody", "invented", LocalDate.of(2026, 11, 25), belts, readings);
    }

    /// Speed of a coast-down in closed form: m·v' = −(a + b·v²), so v = √(a/b)·tan(atan(v₀·√(b/a)) − t·√(a·b)/m).
    private static Log coastDown(Random random, Board truth, double from, Log.Belts belts) {
        var road = truth.road();
        double mass =
                road.inertialKg() - (belts == Log.Belts.OFF ? truth.belting().motorsKg() : 0);
        double a = road.rollingN(0) + road.bearingN();
        double b = 0.5 * road.airKgM3() * road.dragAreaM2();
        var time = new ArrayList<Double>();
        var speed = new ArrayList<Double>();
        for (int i = 0; i < 100; i++) {
            double t = 0.5 * i;
            double v = Math.sqrt(a / b) * Math.tan(Math.atan(from * Math.sqrt(b / a)) - t * Math.sqrt(a * b) / mass);
            if (v < 1) {
                break;
            }
            time.add(t);
            speed.add(v + 0.05 * random.nextGaussian());
        }
        return log(belts, Map.of(Reading.TIME, time, Reading.SPEED, speed));
    }

    @Tag("law")
    @Test
    void coastDownsCoverRollingAndDrag() {
        var random = new Random(20261125);
        int rolling = 0;
        int drag = 0;
        for (int i = 0; i < LOGS; i++) {
            double c = 0.008 + 0.012 * random.nextDouble();
            double area = 0.35 + 0.3 * random.nextDouble();
            var truth = Boards.of(70 + 40 * random.nextDouble(), c, area);
            var told = truth.with(Boards.of(truth.road().massKg(), 0.013, 0.5).road());
            var log = coastDown(random, truth, 8 + 4 * random.nextDouble(), Log.Belts.OFF);
            var found = Calibration.of(told, log, EnumSet.of(Coefficient.ROLLING, Coefficient.DRAG_AREA))
                    .found();
            rolling += covers(found.get(0), 100 * c);
            drag += covers(found.get(1), area);
        }
        assertThat(rolling).isBetween(LEAST, MOST);
        assertThat(drag).isBetween(LEAST, MOST);
    }

    private static int covers(Calibration.Found found, double truth) {
        return found.low() <= truth && truth <= found.high() ? 1 : 0;
    }

    /// Ups and downs at one wish speed, or at another on each of them: then the current jumps.
    private static Route hills(Random random, boolean steady) {
        var points = new ArrayList<Route.Point>();
        double height = 50;
        double wish = 14 + 14 * random.nextDouble();
        for (int i = 0; i <= 8; i++) {
            points.add(new Route.Point(100 * i, height, steady ? wish : 14 + 14 * random.nextDouble(), 0));
            height += 6 * random.nextDouble() - 3;
        }
        return new Route("hills", "hills", true, "", "estimate, invented", points);
    }

    private static Log ridden(
            Random random, Board truth, boolean steady, double everyS, double noiseMps, double noiseK) {
        var options = new RideSolver.Options(new Rider(0.5, 0.6, 3), 60, 1e-9, everyS);
        var ride = RideSolver.ride("kit", truth, hills(random, steady), options);
        var readings = new EnumMap<Reading, List<Double>>(Reading.class);
        int rows = ride.rows() - 1;
        readings.put(Reading.TIME, listed(ride.of(Channel.TIME), rows, 1, 0, random));
        readings.put(Reading.SPEED, listed(ride.of(Channel.SPEED), rows, 1 / 3.6, noiseMps, random));
        readings.put(Reading.GRADE, listed(ride.of(Channel.GRADE), rows, 1, 0, random));
        readings.put(Reading.MOTOR_CURRENT, listed(ride.of(Channel.MOTOR_CURRENT), rows, 1, 0, random));
        readings.put(Reading.WINDING, listed(ride.of(Channel.WINDING), rows, 1, noiseK, random));
        readings.put(Reading.CASE, listed(ride.of(Channel.CASE), rows, 1, noiseK, random));
        return log(Log.Belts.ON, readings);
    }

    private static List<Double> listed(double[] values, int rows, double factor, double noise, Random random) {
        var list = new ArrayList<Double>();
        for (int i = 0; i < rows; i++) {
            list.add(values[i] * factor + noise * random.nextGaussian());
        }
        return list;
    }

    @Tag("law")
    @Test
    void ridesCoverMassRollingAndDrag() {
        var random = new Random(4);
        var covered = new int[3];
        for (int i = 0; i < LOGS; i++) {
            double c = 0.01 + 0.01 * random.nextDouble();
            double area = 0.35 + 0.3 * random.nextDouble();
            double mass = 70 + 40 * random.nextDouble();
            var log = ridden(random, Boards.of(mass, c, area), true, 0.1, 0.15, 0.5);
            var told = Boards.of(90, 0.015, 0.5);
            var found = Calibration.of(
                            told, log, EnumSet.of(Coefficient.ROLLING, Coefficient.DRAG_AREA, Coefficient.MASS))
                    .found();
            covered[0] += covers(found.get(0), 100 * c);
            covered[1] += covers(found.get(1), area);
            covered[2] += covers(found.get(2), mass);
        }
        for (int covers : covered) {
            assertThat(covers).as(java.util.Arrays.toString(covered)).isBetween(LEAST, MOST);
        }
    }

    @Tag("law")
    @Test
    void ridesCoverThermalResistances() {
        var random = new Random(5);
        int refused = 0;
        var covered = new int[2];
        for (int i = 0; i < LOGS; i++) {
            double inner = 0.3 + 0.5 * random.nextDouble();
            double outer = 1.5 + 3 * random.nextDouble();
            var truth = heated(Boards.usual(), inner, outer);
            var log = ridden(random, truth, false, 0.5, 0, 0.4);
            try {
                var found = Calibration.of(
                                Boards.usual(), log, EnumSet.of(Coefficient.WINDING_TO_CASE, Coefficient.CASE_TO_AIR))
                        .found();
                covered[0] += covers(found.get(0), inner);
                covered[1] += covers(found.get(1), outer);
            } catch (Refusal cannotTell) {
                // Three minutes may not show how a can cools. That counts as a truth that is not covered.
                assertThat(cannotTell).hasMessageContaining("cannot tell");
                refused++;
            }
        }
        assertThat(refused).isLessThanOrEqualTo(2);
        for (int covers : covered) {
            assertThat(covers).as(java.util.Arrays.toString(covered)).isBetween(LEAST, MOST);
        }
    }

    private static Board heated(Board board, double inner, double outer) {
        var t = board.train();
        return board.with(new Powertrain(
                t.motors(),
                t.ratio(),
                t.wheelRadiusM(),
                t.beltShare(),
                t.motor(),
                Boards.heat(inner, outer),
                t.pack(),
                t.limits()));
    }

    @Test
    void beltsOnOrOffMakesADifference() {
        var truth = Boards.usual();
        var log = coastDown(new Random(6), truth, 10, Log.Belts.OFF);
        var off = Calibration.of(truth, log, Set.of(Coefficient.ROLLING));
        var on = Calibration.of(truth, log(Log.Belts.ON, log.readings()), Set.of(Coefficient.ROLLING));
        assertThat(off.found().getFirst().value()).isBetween(1.48, 1.52);
        // What the motors take is no longer laid on the treads.
        assertThat(on.found().getFirst().value())
                .isLessThan(off.found().getFirst().value() - 0.2);
    }

    @Test
    void saysThatACurrentJumpsBetweenReadings() {
        var log = ridden(new Random(8), Boards.usual(), false, 1, 0.05, 0.5);
        assertThat(Calibration.of(Boards.usual(), log, Set.of(Coefficient.MASS)).notes())
                .anyMatch(note -> note.contains("the current jumps"));
    }

    @Test
    void saysWhatALogCannotTell() {
        var board = Boards.usual();
        var coast = coastDown(new Random(7), board, 10, Log.Belts.OFF);
        assertThatThrownBy(() -> Calibration.of(board, coast, Set.of(Coefficient.MASS)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("coast-down says nothing of the mass");
        assertThatThrownBy(() -> Calibration.of(board, coast, Set.of(Coefficient.CASE_TO_AIR)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("was not measured");
        assertThatThrownBy(() -> Calibration.of(board, coast, EnumSet.of(Coefficient.ROLLING, Coefficient.CASE_TO_AIR)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("not both");
        assertThatThrownBy(() -> Calibration.of(board, coast, Set.of()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("none asked for");
    }
}
