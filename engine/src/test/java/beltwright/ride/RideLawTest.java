package beltwright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.part.Cell;
import beltwright.power.DriveLimits;
import beltwright.power.Governs;
import beltwright.power.MotorHeat;
import beltwright.power.OpenCircuit;
import beltwright.power.Operating;
import beltwright.power.Outrunner;
import beltwright.power.PackModel;
import beltwright.power.Powertrain;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What must hold of any ride and any board at steady speed, without the formulas they are made of.
@Tag("law")
class RideLawTest {
    private static final double FULL_CELL_V = 4.18; // as the curve of `Boards.CELL` ends

    static Stream<Draw> rides() {
        return beltwright.Seeds.draws().limit(200);
    }

    private static Board board(Draw draw) {
        int cells = draw.whole(8, 14);
        double wheelM = draw.between(0.04, 0.09);
        var limits = new DriveLimits(
                draw.between(20, 70),
                draw.between(15, 60),
                draw.between(15, 45),
                draw.between(4, 25),
                draw.between(0.9, 1),
                cells * 3.4,
                cells * 3.1,
                95,
                115,
                draw.between(700, 1500));
        return new Board(
                new Powertrain(
                        draw.whole(1, 2),
                        draw.between(2, 3.5) * wheelM / 0.0485,
                        wheelM,
                        draw.between(0.9, 0.99),
                        Outrunner.of(
                                draw.between(130, 230),
                                draw.between(0.03, 0.08),
                                22,
                                draw.between(0.8, 2.5),
                                600,
                                draw.between(0, 1)),
                        new MotorHeat(
                                draw.between(70, 160),
                                draw.between(120, 300),
                                draw.between(0.3, 0.9),
                                draw.between(1.5, 4),
                                0.06,
                                0.015,
                                draw.between(0.1, 0.6),
                                120),
                        new PackModel(
                                cells,
                                new OpenCircuit(Boards.CELL),
                                draw.between(0.03, 0.12),
                                draw.between(5, 25) * 3600,
                                draw.between(25, 90),
                                draw.between(4, 30),
                                cells * FULL_CELL_V,
                                cells * 3.0),
                        limits),
                new Road(
                        draw.between(60, 130),
                        draw.between(1, 5),
                        draw.between(0.008, 0.025),
                        draw.between(0.3, 0.7),
                        draw.between(1.0, 1.3),
                        draw.between(0, 2),
                        draw.between(-4, 6),
                        draw.between(0.3, 0.8),
                        0.5,
                        0.55,
                        1,
                        0.7),
                draw.between(-5, 35),
                draw.between(15, 35) / 3.6,
                draw.between(0.3, 1),
                1,
                Boards.usual().belting(),
                true,
                List.of(),
                List.of(),
                List.of());
    }

    /// A road of hills, stops and other speeds.
    private static Route route(Draw draw) {
        var points = new ArrayList<Route.Point>();
        double h = 0;
        for (int i = 0; i <= 30; i++) {
            boolean stop = i > 0 && draw.whole(0, 9) == 0;
            double kmh = stop ? 0 : draw.whole(0, 3) == 0 ? draw.between(8, 40) : Double.NaN;
            points.add(new Route.Point(50 * i, h, kmh, stop ? draw.between(0, 60) : 0));
            h += 50 * draw.between(-0.09, 0.09);
        }
        return new Route("drawn", "drawn", true, "", "estimate", points);
    }

    private static Route road(double... pairs) {
        var points = new ArrayList<Route.Point>();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(new Route.Point(pairs[i], pairs[i + 1], Double.NaN, 0));
        }
        return new Route("drawn", "drawn", true, "", "estimate", points);
    }

    private static Ride ride(Board board, Route route, double tolerance) {
        return RideSolver.ride("kit", board, route, RideSolver.Options.USUAL.withTolerance(tolerance));
    }

    @ParameterizedTest
    @MethodSource("rides")
    void whatTheCellsGaveWentSomewhere(Draw draw) {
        var ride = ride(board(draw), route(draw), RideSolver.Options.USUAL.tolerance());
        assertThat(ride.energy().openShare()).isLessThan(1e-6);
        assertThat(ride.steps()).isLessThan(20_000);
    }

    /// The greatest pulls are those of the channel, or greater; no ride asks more than limits and grip allow, but for
    /// the
    /// loss of belt and motor, and over-run, which nothing limits.
    @ParameterizedTest
    @MethodSource("rides")
    void noRidePullsTheBeltHarderThanControllerAndGripAllow(Draw draw) {
        var board = board(draw);
        var ride = ride(board, route(draw), 1e-7);
        var te = ride.of(Channel.EFFECTIVE_TENSION);
        double hardest = 0;
        double softest = 0;
        for (double each : te) {
            hardest = Math.max(hardest, each);
            softest = Math.min(softest, each);
        }
        var pulls = ride.pulls();
        assertThat(pulls.driving().effectiveN()).isGreaterThanOrEqualTo(hardest).isPositive();
        assertThat(pulls.braking().effectiveN()).isGreaterThanOrEqualTo(-softest);
        assertThat(pulls.driving().timeS()).isBetween(0.0, ride.timeS());
        assertThat(pulls.driving().distanceM()).isBetween(0.0, ride.distanceM());

        var train = board.train();
        double d = board.belting().pulleyDiameterM();
        double lossNm = train.motor().lossNm(train.radPerS(60 / 3.6));
        for (boolean braking : new boolean[] {false, true}) {
            var pull = braking ? pulls.braking() : pulls.driving();
            if (pull.governs() == Governs.OVER_RUN) {
                continue;
            }
            double controller = train.motor().torqueConstantNmA()
                    * (braking ? train.limits().brakeA() : train.limits().driveA());
            double slips = board.road().gripN(0, braking) / train.motors() * train.wheelRadiusM() / train.ratio();
            double allowed =
                    braking ? Math.min(controller + lossNm, slips) : Math.min(controller, slips / train.beltShare());
            assertThat(pull.effectiveN()).isLessThanOrEqualTo(2 * allowed / d * (1 + 1e-9));
        }
    }

    /// What a ride is off by, as the root of the mean square of its relative errors in time, energy and warmth.
    private static double off(Ride ride, Ride exact) {
        double time = ride.timeS() / exact.timeS() - 1;
        double used = (ride.energy().cellsJ() - exact.energy().cellsJ())
                / exact.energy().throughJ();
        double hot = ride.hottestC() / exact.hottestC() - 1;
        return Math.sqrt((time * time + used * used + hot * hot) / 3);
    }

    /// Not the fifth order of the method: limits that set in and let go cost most, and each costs about what the
    /// tolerance allows. Seen, as a geometric mean: 1.6e-3 at 1e-3, 1.5e-5 at 1e-6, 8.5e-7 at 1e-8.
    @Test
    void aHundredthOfTheToleranceIsATenthOfTheErrorAtMost() {
        var tolerances = List.of(1e-4, 1e-6, 1e-8);
        var sums = new double[tolerances.size()];
        var draws = beltwright.Seeds.draws().limit(30).toList();
        int counted = 0;
        for (var draw : draws) {
            var board = board(draw);
            var route = route(draw);
            var exact = ride(board, route, 1e-11);
            if (!exact.arrived()) {
                continue;
            }
            counted++;
            for (int i = 0; i < sums.length; i++) {
                sums[i] += Math.log10(Math.max(1e-15, off(ride(board, route, tolerances.get(i)), exact)));
            }
        }
        assertThat(counted).isGreaterThan(20);
        for (int i = 1; i < sums.length; i++) {
            assertThat((sums[i - 1] - sums[i]) / counted)
                    .as("decades at %s", tolerances.get(i))
                    .isBetween(1.0, 2.2);
        }
        assertThat(sums[2] / counted).isLessThan(-5.5);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void moreMassNeverClimbsFaster(Draw draw) {
        var board = board(draw);
        double sine = Road.sine(draw.between(0, 20));
        var r = board.road();
        var heavier = board.with(massed(r, r.massKg() * draw.between(1.01, 1.5)));
        // The grip of a heavier board is greater, too: where grip decides, mass has no part in it.
        var here = new Steady(board).fastest(sine, board.charge(), 60);
        if (here.governs() != Governs.GRIP) {
            assertThat(new Steady(heavier).fastest(sine, board.charge(), 60).speedMps())
                    .isLessThanOrEqualTo(here.speedMps() + 1e-9);
        }
    }

    private static Road massed(Road r, double kg) {
        return new Road(
                kg,
                r.inertiaKg(),
                r.rollingShare(),
                r.dragAreaM2(),
                r.airKgM3(),
                r.bearingN(),
                r.headWindMps(),
                r.gripShare(),
                r.drivenShare(),
                r.drivenBrakingShare(),
                r.massHeightM(),
                r.wheelbaseM());
    }

    private static Road winded(Road r, double headWindMps) {
        return new Road(
                r.massKg(),
                r.inertiaKg(),
                r.rollingShare(),
                r.dragAreaM2(),
                r.airKgM3(),
                r.bearingN(),
                headWindMps,
                r.gripShare(),
                r.drivenShare(),
                r.drivenBrakingShare(),
                r.massHeightM(),
                r.wheelbaseM());
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aSteeperHillIsNeverClimbedFaster(Draw draw) {
        var board = board(draw);
        var steady = new Steady(board);
        double before = Double.POSITIVE_INFINITY;
        for (double percent = 0; percent <= 30; percent += 3) {
            double v = steady.fastest(Road.sine(percent), board.charge(), 60).speedMps();
            assertThat(v).as("%s %%", percent).isLessThanOrEqualTo(before + 1e-9);
            before = v;
        }
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void moreHeadWindIsLessRange(Draw draw) {
        var board = board(draw);
        double v = draw.between(2, 5);
        double before = Double.POSITIVE_INFINITY;
        for (double wind = 0; wind <= 8; wind += 2) {
            double km =
                    new Steady(board.with(winded(board.road(), wind))).range(v).km();
            assertThat(km).as("%s m/s", wind).isLessThanOrEqualTo(before);
            before = km == 0 ? 0 : km * (1 - 1e-6);
        }
    }

    private static Board charging(Board board, double chargeA) {
        var p = board.train().pack();
        return with(
                board,
                board.train().motors(),
                new PackModel(
                        p.cells(), p.curve(), p.ohm(), p.capacityAs(), p.dischargeA(), chargeA, p.fullV(), p.emptyV()));
    }

    private static Board with(Board board, int motors, PackModel pack) {
        var t = board.train();
        return board.with(new Powertrain(
                motors, t.ratio(), t.wheelRadiusM(), t.beltShare(), t.motor(), t.heat(), pack, t.limits()));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aFullOrAColdPackNeverBrakesHarder(Draw draw) {
        var board = board(draw);
        double v = draw.between(0.5, 12);
        double charge = draw.between(0.1, 0.99);
        double usual = -new Steady(board).brake(v, charge, 40).pushN();
        assertThat(-new Steady(board).brake(v, 1, 40).pushN()).isLessThanOrEqualTo(usual + 1e-9);
        assertThat(-new Steady(charging(board, 0)).brake(v, charge, 40).pushN()).isLessThanOrEqualTo(usual + 1e-9);
    }

    /// Where two motors brake as hard as their currents let them, one brakes less. Where charge holds two back, one
    /// may brake harder: its winding turns more to heat, and its own back-EMF may be too low to charge that hard.
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void oneBeltLessNeverBrakesHarderUnlessChargeGoverns(Draw draw) {
        var board = board(draw);
        double v = draw.between(0.5, 12);
        double charge = draw.between(0.1, 1);
        var two = brake(with(board, 2, board.train().pack()), v, charge);
        var one = brake(with(board, 1, board.train().pack()), v, charge);
        if (!charging(two)) {
            assertThat(-one.pushN).isLessThanOrEqualTo(-two.pushN + 1e-9);
        } else if (charging(one)) {
            double heatN = (one.copperW - 2 * two.copperW) / v / board.train().beltShare();
            assertThat(-one.pushN).isLessThanOrEqualTo(-two.pushN + heatN + 1e-9);
        } else {
            assertThat(one.packA).isGreaterThanOrEqualTo(two.packA - 1e-9);
        }
    }

    private static Operating brake(Board board, double speedMps, double charge) {
        var at = new Operating();
        board.train().at(speedMps, Double.NEGATIVE_INFINITY, 1e4, charge, 40, at);
        return at;
    }

    private static boolean charging(Operating at) {
        return at.governs == Governs.CHARGE_CURRENT || at.governs == Governs.PACK_FULL;
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theNearerToWhereItSettlesTheLongerItTakes(Draw draw) {
        var board = board(draw);
        var steady = new Steady(board);
        double percent = draw.between(0, 6);
        double settled = steady.settledC(percent);
        if (!(settled > board.airC() + 5 && settled < board.train().limits().windingFromC())) {
            return;
        }
        double before = 0;
        double gained = 0;
        for (double share : new double[] {0.9, 0.99, 0.999}) {
            double seconds = steady.secondsTo(board.airC() + share * (settled - board.airC()), percent);
            assertThat(seconds).isGreaterThan(before);
            if (share > 0.99 && seconds < 7200) {
                // A tenth of what is left takes as long again each time, once the slower body alone is left.
                assertThat(seconds - before).isCloseTo(gained, within(0.2 * gained));
            }
            gained = seconds - before;
            before = seconds;
        }
        assertThat(steady.secondsTo(settled + 1e-3, percent)).isInfinite();
    }

    private static final Cell FLAT_CELL =
            new Cell("flat", "flat", List.of(new Cell.Point(0, 3.6), new Cell.Point(1, 3.6 + 1e-9)), 0, "", "");

    /// A board of no loss at all: no resistance, no drag, no friction.
    private static Board lossless(Cell cell) {
        return new Board(
                new Powertrain(
                        2,
                        2.5,
                        0.0485,
                        1,
                        Outrunner.of(170, 1e-12, 20, 0, 600, 0),
                        Boards.heat(),
                        new PackModel(12, new OpenCircuit(cell), 1e-12, 72_000, 800, 800, 60, 30),
                        new DriveLimits(390, 390, 400, 400, 1, 30, 20, 95, 115, 1500)),
                new Road(92, 3, 0, 0, 1.2, 0, 0, 2, 1, 1, 1, 0.7),
                20,
                22 / 3.6,
                0.7,
                1,
                Boards.usual().belting(),
                true,
                List.of(),
                List.of(),
                List.of());
    }

    @Test // up, down, a dip, and to a stop at the height of the start
    void aLoopWithoutLossGivesItsEnergyBack() {
        var points = new ArrayList<Route.Point>();
        double[] heights = {0, 5, 14, 20, 21, 15, 8, 4, -3, -6, -2, 0, 0};
        for (int i = 0; i < heights.length; i++) {
            points.add(new Route.Point(100 * i, heights[i], i == heights.length - 1 ? 0 : Double.NaN, 0));
        }
        var loop = new Route("loop", "loop", true, "", "estimate", points);
        var board = lossless(Boards.CELL);
        var ride = ride(board, loop, 1e-10);
        assertThat(ride.arrived()).isTrue();
        double foot = ride.energy().haltJ();
        assertThat(foot).isLessThan(1);
        assertThat(ride.energy().throughJ()).isGreaterThan(20_000);
        assertThat(ride.usedWh() * 3600)
                .isCloseTo(foot, within(1e-6 * ride.energy().throughJ()));
        assertThat((ride.chargeLeft() - board.charge()) * 12 * 3.8 * 72_000).isCloseTo(-foot, within(0.1));
    }

    /// Constant pull from rest, nothing in its way: the pack's limit is met at a speed, and so at a moment, that a
    /// line of algebra tells.
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aLimitIsMetAtTheMomentThatAlgebraTells(Draw draw) {
        double phaseA = draw.between(20, 60);
        double ohm = draw.between(0.02, 0.08);
        double packOhm = draw.between(0.02, 0.1);
        double batteryA = draw.between(6, 12);
        double kt = 60 / (2 * Math.PI * 170);
        double massKg = draw.between(60, 120);
        var frozen = new MotorHeat(1e15, 1e15, 1, 1, 0.06, 0.015, 0.5, 120);
        var board = lossless(FLAT_CELL)
                .with(new Powertrain(
                        2,
                        2.5,
                        0.0485,
                        1,
                        Outrunner.of(170, ohm, 20, 0, 600, 0),
                        frozen,
                        new PackModel(12, new OpenCircuit(FLAT_CELL), packOhm, 72_000, 800, 800, 60, 30),
                        new DriveLimits(phaseA, 390, batteryA, 400, 1, 30, 20, 95, 115, 1500)))
                .with(new Road(massKg, 3, 0, 0, 1.2, 0, 0, 2, 1, 1, 1, 0.7));
        var eager = new RideSolver.Options(new Rider(9, 1, 0.1), 0, 1e-9, 1);
        var ride = RideSolver.ride("kit", board, road(0, 0, 200, 0), eager);

        double watt = (12 * 3.6 - packOhm * 2 * batteryA) * 2 * batteryA / 2;
        double backEmf = (watt - phaseA * phaseA * ohm) / phaseA;
        double speed = backEmf / kt / 2.5 * 0.0485;
        double acceleration = 2 * kt * phaseA * 2.5 / 0.0485 / (massKg + 3);
        double seconds = speed / acceleration;
        if (speed > 5.5 || backEmf < 0) {
            return; // the rider's wish comes first
        }
        var met = ride.events().stream()
                .filter(e -> e.kind() == Event.Kind.MET && e.governs() == Governs.BATTERY_CURRENT)
                .findFirst()
                .orElseThrow();
        assertThat(met.timeS()).isCloseTo(seconds, within(2e-6));
        assertThat(met.distanceM()).isCloseTo(speed * seconds / 2, within(1e-5));
    }
}
