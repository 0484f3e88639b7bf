package beltwright.ride;

import beltwright.power.Governs;
import beltwright.power.Operating;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/// What a board does at steady speed, on one charge of its pack and in one wind.
///
/// - Source: `Powertrain`, `Road` and `MotorHeat` set to rest in time.
/// - Valid: straight road, winding as warm as stated at each method.
/// - Neglects: that charge falls while a hill is climbed.
public final class Steady {
    private static final double FASTEST_MPS = 60;
    private static final double STEEPEST_PERCENT = 100;
    private static final double CREEP_MPS = 0.01;

    /// A speed at which a board has begun to move, so that the motors' own drag counts.
    static final double BEGINS_MPS = 1e-9;

    private static final int STOP_PARTS = 2000;
    private static final double SLOWEST_LIMIT_S = 7200;

    private final Board board;
    private final Operating now = new Operating();

    public Steady(Board board) {
        this.board = board;
    }

    /// One point of the push that a board can give.
    public record Push(double speedMps, double pushN, double motorA, double packA, Governs governs) {}

    /// A speed that a board holds, and what keeps it from more.
    public record Speed(double speedMps, Governs governs) {}

    /// A grade, and what keeps the board from a steeper one.
    public record Grade(double percent, Governs governs) {}

    /// {@return the hardest push (N) at this speed, at a charge and a winding temperature, grip included}
    public Push push(double speedMps, double sine, double charge, double windingC) {
        return most(speedMps, Double.POSITIVE_INFINITY, board.road().gripN(sine, false), charge, windingC);
    }

    /// {@return the hardest braking (push below zero, N) at this speed, grip included}
    public Push brake(double speedMps, double charge, double windingC) {
        return most(speedMps, Double.NEGATIVE_INFINITY, board.road().gripN(0, true), charge, windingC);
    }

    private Push most(double speedMps, double wantedN, double gripN, double charge, double windingC) {
        board.train().at(speedMps, wantedN, gripN, charge, windingC, now);
        return new Push(speedMps, now.pushN, now.currentA, now.packA, now.governs);
    }

    /// {@return the moment at which a speed is held on a slope; what governs is `WISH` where it can be held}
    private Operating held(double speedMps, double sine, double charge, double windingC) {
        double load = board.road().loadN(speedMps, sine);
        board.train().at(speedMps, load, board.road().gripN(sine, load < 0), charge, windingC, now);
        return now;
    }

    /// The fastest that full throttle holds on a slope.
    ///
    /// @return 0 where it does not even creep
    public Speed fastest(double sine, double charge, double windingC) {
        UnivariateFunction left =
                v -> push(v, sine, charge, windingC).pushN() - board.road().loadN(v, sine);
        if (Double.isNaN(left.value(CREEP_MPS))) {
            return new Speed(Double.NaN, Governs.WISH);
        }
        if (left.value(CREEP_MPS) <= 0) {
            return new Speed(0, push(CREEP_MPS, sine, charge, windingC).governs());
        }
        // The first speed at which push and load cross: beyond it another branch would not be reached.
        double low = CREEP_MPS;
        double high = CREEP_MPS;
        while (high < FASTEST_MPS && left.value(high) > 0) {
            low = high;
            high += 0.25;
        }
        if (high >= FASTEST_MPS) {
            return new Speed(FASTEST_MPS, Governs.NONE);
        }
        double v = new BracketingNthOrderBrentSolver(1e-9, 1e-9, 1e-9, 5).solve(500, left, low, high);
        return new Speed(v, push(v * (1 + 1e-9), sine, charge, windingC).governs());
    }

    /// {@return the steepest slope on which the board starts from rest, winding at the temperature of the air}
    public Grade steepestStart() {
        UnivariateFunction left = percent -> {
            double sine = Road.sine(percent);
            return push(BEGINS_MPS, sine, board.charge(), board.airC()).pushN()
                    - board.road().loadN(0, sine);
        };
        return steepest(
                left,
                percent -> push(BEGINS_MPS, Road.sine(percent), board.charge(), board.airC())
                        .governs());
    }

    /// {@return the steepest slope on which the winding settles where the controller begins to cut back, ridden at the
    ///     cruise speed or, where that is too fast, at full throttle}
    public Grade steepestForEver() {
        double limit = board.train().limits().windingFromC();
        UnivariateFunction left = percent -> {
            double settled = settledC(percent);
            return limit - Math.min(settled, 1e4);
        };
        return steepest(left, percent -> Governs.HEAT);
    }

    private interface Why {
        Governs at(double percent);
    }

    private static Grade steepest(UnivariateFunction left, Why why) {
        double level = left.value(0);
        if (Double.isNaN(level)) {
            return new Grade(Double.NaN, Governs.WISH);
        }
        if (level <= 0) {
            return new Grade(0, why.at(0));
        }
        if (left.value(STEEPEST_PERCENT) > 0) {
            return new Grade(STEEPEST_PERCENT, Governs.WISH);
        }
        double percent = new BracketingNthOrderBrentSolver(1e-7, 1e-7, 1e-9, 5).solve(300, left, 0, STEEPEST_PERCENT);
        return new Grade(percent, why.at(percent * (1 + 1e-7)));
    }

    /// {@return the speed at which a slope is ridden: cruise, or full throttle where that is less (m/s)}
    public double ridden(double percent) {
        double sine = Road.sine(percent);
        double warm = board.train().limits().windingFromC();
        return Math.min(board.cruiseMps(), fastest(sine, board.charge(), warm).speedMps());
    }

    /// {@return where the winding settles on a slope (°C); infinite where it cannot be ridden for ever}
    public double settledC(double percent) {
        double v = ridden(percent);
        if (v <= CREEP_MPS) {
            return Double.POSITIVE_INFINITY;
        }
        var at = held(
                v * (1 - 1e-9),
                Road.sine(percent),
                board.charge(),
                board.train().limits().windingFromC());
        return board.train()
                .heat()
                .settledWindingC(
                        board.train().motor(),
                        at.currentA,
                        at.ironW,
                        board.airC(),
                        board.train().heat().caseToAirWPerK(v + board.road().headWindMps(), at.radPerS));
    }

    /// Time from the temperature of the air until the winding reaches a temperature on a slope.
    ///
    /// @return seconds; infinite where it settles below; NaN where the slope cannot be ridden at all
    public double secondsTo(double limitC, double percent) {
        double v = ridden(percent);
        if (!(v > CREEP_MPS)) {
            return Double.NaN;
        }
        double sine = Road.sine(percent);
        var heat = board.train().heat();
        double away = heat.caseToAirWPerK(
                v + board.road().headWindMps(), board.train().radPerS(v));
        var integrator = new DormandPrince54Integrator(1e-6, 60, 1e-6, 1e-8);
        integrator.addEventDetector(new End(y -> limitC - y[0]));
        var end = integrator.integrate(
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 2;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] y) {
                        // Currents as they are below the cut-back, so that the limit is met and not approached for
                        // ever.
                        double warm = Math.min(y[0], board.train().limits().windingFromC());
                        var at = held(v * (1 - 1e-9), sine, board.charge(), warm);
                        double loss = at.currentA
                                        * at.currentA
                                        * board.train().motor().resistanceOhm(y[0])
                                + at.ironW;
                        return new double[] {
                            heat.windingKPerS(loss, y[0], y[1]), heat.caseKPerS(y[0], y[1], board.airC(), away)
                        };
                    }
                },
                new ODEState(0, new double[] {board.airC(), board.airC()}),
                SLOWEST_LIMIT_S);
        return end.getTime() >= SLOWEST_LIMIT_S ? Double.POSITIVE_INFINITY : end.getTime();
    }

    /// A stop on level ground.
    ///
    /// @param wayM from the moment the brake bites (m)
    /// @param reactionM travelled before that (m)
    public record Stop(double speedMps, double wayM, double timeS, double reactionM, Governs governs) {
        public double wholeM() {
            return wayM + reactionM;
        }
    }

    /// Brakes as hard as there is from a speed to rest; rolling, air and bearings help.
    ///
    ///     x = ∫ v·m_e/(F_brake + F_load) dv        t = ∫ m_e/(F_brake + F_load) dv
    ///
    /// Middle values over 2000 equal parts of speed: brakes set in and let go in jumps.
    public Stop stop(double speedMps, double charge) {
        double way = 0;
        double time = 0;
        double step = speedMps / STOP_PARTS;
        for (int i = 0; i < STOP_PARTS; i++) {
            double v = (i + 0.5) * step;
            double holds = decelerationMps2(v, charge);
            way += v / holds * step;
            time += step / holds;
        }
        return new Stop(
                speedMps,
                way,
                time,
                speedMps * board.reactionS(),
                brake(speedMps, charge, board.airC()).governs());
    }

    /// {@return slowing down (m/s²) at the hardest electric braking, level ground}
    public double decelerationMps2(double speedMps, double charge) {
        return (board.road().loadN(speedMps, 0)
                        - brake(speedMps, charge, board.airC()).pushN())
                / board.road().inertialKg();
    }

    /// How far a charge goes at one speed on level ground.
    ///
    /// @param whPerKm mean
    /// @param emptiesTo charge at which the speed is no longer held (0 to 1)
    public record Range(double km, double whPerKm, double emptiesTo) {}

    ///     x = C·∫ v/I_p(q) dq,   from the charge at the start down to where the speed cannot be held
    public Range range(double speedMps) {
        double from = board.charge();
        if (held(speedMps, 0, from, board.airC()).governs != Governs.WISH) {
            return new Range(0, Double.NaN, from);
        }
        double to = 0;
        if (held(speedMps, 0, 0, board.airC()).governs != Governs.WISH) {
            double low = 0;
            double high = from;
            while (high - low > 1e-9) {
                double middle = (low + high) / 2;
                if (held(speedMps, 0, middle, board.airC()).governs == Governs.WISH) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            to = high;
        }
        int parts = 200;
        double metres = 0;
        double joules = 0;
        double step = (from - to) / parts;
        double capacity = board.train().pack().capacityAs();
        for (int i = 0; i < parts; i++) {
            var at = held(speedMps, 0, to + (i + 0.5) * step, board.airC());
            double seconds = capacity * step / at.packA;
            metres += speedMps * seconds;
            joules += at.packA * at.packV * seconds;
        }
        return new Range(metres / 1000, joules / 3600 / (metres / 1000), to);
    }

    /// {@return hardest push over speed, from rest until nothing is left}
    public List<Push> curve(double charge, double stepMps) {
        var points = new ArrayList<Push>();
        for (double v = 0; v < FASTEST_MPS; v += stepMps) {
            var point = push(v, 0, charge, board.airC());
            points.add(point);
            if (point.pushN() <= 0) {
                break;
            }
        }
        return points;
    }
}
