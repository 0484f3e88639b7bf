package beltwright.ride;

import beltwright.power.MotorHeat;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/// Finds the coefficients with which a computed ride comes closest to a measured one, and how sure that is.
///
/// The measured current drives the computed board (a coast-down has none); what differs between computed and measured
/// speed, or temperature, is made least. Speed and temperatures at the first reading are found along with it.
///
///     θ: Σ (measured − computed(θ))² least        covariance s²·(JᵀJ)⁻¹·(1 + ρ)/(1 − ρ)        interval ± t·σ, 95 %
///
/// s² is the mean square of what is left over, ρ its correlation from row to row, counted where above zero: left-overs
/// that hang together say less than their number.
///
/// - Source: nonlinear least squares by Levenberg and Marquardt, numeric library; intervals as in any text on
/// regression;
///   ρ after the effective number of independent readings, common practice in time series.
/// - Valid: readings whose errors are not biased; a coast-down that spans at least a factor of two in speed.
/// - Neglects: errors of the measured current, and whatever the ride's equations neglect.
public final class Calibration {
    private static final double SURE = 0.975;
    private static final double FIRST_STEP = 1e-4;
    private static final int FEWEST_ROWS = 30;
    private static final int BLOCKS = 30;
    private static final double MUCH = 4;

    /// One coefficient found.
    ///
    /// @param before what the kit says, or an estimate of it
    /// @param low and `high`: the 95 % interval
    public record Found(Coefficient what, double before, double value, double low, double high) {
        public double halfWidth() {
            return (high - low) / 2;
        }
    }

    /// What came out.
    ///
    /// @param leftOver root mean square of measured less computed, in m/s or K
    /// @param computed speed (m/s) or winding temperature (°C) at every reading, with what was found
    public record Result(
            Log log, List<Found> found, double leftOver, int rows, List<String> notes, List<Double> computed) {
        public Result {
            found = List.copyOf(found);
            notes = List.copyOf(notes);
            computed = List.copyOf(computed);
        }
    }

    private final Board board;
    private final Log log;
    private final List<Coefficient> wanted;
    private final boolean heat;
    private final Traced traced;
    private final double[] measured;
    private final List<String> notes = new ArrayList<>();

    private Calibration(Board board, Log log, Set<Coefficient> wanted) {
        this.board = board;
        this.log = log;
        this.wanted = List.copyOf(EnumSet.copyOf(wanted));
        this.heat = this.wanted.getFirst().heat();
        this.traced = new Traced(board, log);
        refuse();
        this.measured = heat ? temperatures() : Traced.column(log, Log.Reading.SPEED);
    }

    /// {@return what the log says of these coefficients}
    ///
    /// @throws Refusal if the log cannot tell them
    public static Result of(Board board, Log log, Set<Coefficient> wanted) {
        if (wanted.isEmpty()) {
            throw new Refusal(
                    "coefficients",
                    "none asked for",
                    List.of(Coefficient.values()).toString(),
                    "name some");
        }
        return new Calibration(board, log, wanted).find();
    }

    private void refuse() {
        for (var c : wanted) {
            if (c.heat() != heat) {
                throw new Refusal(
                        "coefficients",
                        c + " beside " + wanted.getFirst(),
                        "coefficients of motion (" + Coefficient.ROLLING + ", " + Coefficient.DRAG_AREA + ", "
                                + Coefficient.MASS + ") or of heat, not both",
                        "ask twice");
            }
        }
        if (!board.known()) {
            throw new Refusal(log.kit(), "needs " + board.needs(), "every number known", "enter them");
        }
        if (log.rows() < FEWEST_ROWS) {
            throw new Refusal(
                    log.id(), log.rows() + " rows", "at least " + FEWEST_ROWS + " rows", "log longer or more often");
        }
        boolean driven = log.belts() == Log.Belts.ON && log.has(Log.Reading.MOTOR_CURRENT);
        if (wanted.contains(Coefficient.MASS) && !driven) {
            throw new Refusal(
                    log.id(),
                    "a coast-down says nothing of the mass: every force in it grows with the mass",
                    "a ride with the motor current logged, belts on",
                    "weigh board and rider, or log a ride with current");
        }
        if (heat) {
            log.of(Log.Reading.WINDING);
            log.of(Log.Reading.SPEED);
            log.of(Log.Reading.MOTOR_CURRENT);
        }
        if (!heat && !log.has(Log.Reading.GRADE) && !log.has(Log.Reading.ELEVATION)) {
            notes.add("neither grade nor height was logged: the road is taken as level");
        }
        if (!heat && log.belts() == Log.Belts.ON && !driven) {
            notes.add("belts on and no current logged: the motors are taken as turned by the board, without current");
        }
        if (driven && !heat && traced.jumps() > 0) {
            notes.add("the current jumps " + traced.jumps()
                    + " times from one reading to the next: when exactly is not known,"
                    + " and the intervals do not count that; log ten times a second or more");
        }
        if (!heat && board.road().headWindMps() == 0) {
            notes.add("still air is taken; ride both ways and compare, or measure the wind");
        }
    }

    /// Winding readings, then case readings where there are any.
    private double[] temperatures() {
        double[] winding = Traced.column(log, Log.Reading.WINDING);
        if (!log.has(Log.Reading.CASE)) {
            return winding;
        }
        double[] casing = Traced.column(log, Log.Reading.CASE);
        var both = java.util.Arrays.copyOf(winding, 2 * winding.length);
        System.arraycopy(casing, 0, both, winding.length, casing.length);
        return both;
    }

    private double before(Coefficient c) {
        var thermal = board.train().heat();
        return switch (c) {
            case ROLLING -> 100 * board.road().rollingShare();
            case DRAG_AREA -> board.road().dragAreaM2();
            case MASS -> board.road().massKg();
            case WINDING_TO_CASE -> thermal.windingToCaseKPerW();
            case CASE_TO_AIR -> thermal.caseToAirKPerW();
        };
    }

    private double value(Coefficient c, double[] theta) {
        int at = wanted.indexOf(c);
        return at < 0 ? before(c) : theta[at];
    }

    /// Computed readings for coefficients followed by the values at the first reading.
    private double[] computed(double[] theta) {
        int rows = traced.rows();
        int n = wanted.size();
        var out = new double[measured.length];
        if (heat) {
            var h = board.train().heat();
            var tried = new MotorHeat(
                    h.windingJPerK(),
                    h.caseJPerK(),
                    value(Coefficient.WINDING_TO_CASE, theta),
                    value(Coefficient.CASE_TO_AIR, theta),
                    h.canDiameterM(),
                    h.canAreaM2(),
                    h.airflowShare(),
                    h.mostWindingC());
            var winding = new double[rows];
            var casing = new double[rows];
            traced.temperatures(tried, theta[n], theta[n + 1], winding, casing);
            System.arraycopy(winding, 0, out, 0, rows);
            if (out.length > rows) {
                System.arraycopy(casing, 0, out, rows, rows);
            }
        } else {
            traced.speeds(road(theta), theta[n], out);
        }
        return out;
    }

    private Road road(double[] theta) {
        var r = board.road();
        return new Road(
                value(Coefficient.MASS, theta),
                r.inertiaKg(),
                value(Coefficient.ROLLING, theta) / 100,
                value(Coefficient.DRAG_AREA, theta),
                r.airKgM3(),
                r.bearingN(),
                r.headWindMps(),
                r.gripShare(),
                r.drivenShare(),
                r.drivenBrakingShare(),
                r.massHeightM(),
                r.wheelbaseM());
    }

    private Result find() {
        int n = wanted.size();
        var start = new double[n + (heat ? 2 : 1)];
        var sizes = new double[start.length];
        for (int i = 0; i < n; i++) {
            start[i] = before(wanted.get(i));
            sizes[i] = start[i];
        }
        start[n] = measured[0];
        sizes[n] = heat ? 10 : 1;
        if (heat) {
            start[n + 1] = log.has(Log.Reading.CASE) ? measured[traced.rows()] : measured[0];
            sizes[n + 1] = 10;
        }
        MultivariateJacobianFunction model = point -> {
            var theta = point.toArray();
            return new Pair<RealVector, org.hipparchus.linear.RealMatrix>(
                    new ArrayRealVector(computed(theta), false), slopes(theta, sizes));
        };
        try {
            var optimum = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(measured)
                            .model(model)
                            .maxEvaluations(200)
                            .maxIterations(100)
                            .build());
            return result(
                    optimum.getPoint().toArray(), optimum.getCovariances(1e-14).getData());
        } catch (MathRuntimeException e) {
            throw new Refusal(
                    log.id(),
                    "cannot tell " + wanted + " from these readings (" + e.getMessage() + ")",
                    "readings in which each of them shows: a wide range of speeds, or of currents",
                    "ask for fewer coefficients, or log another ride");
        }
    }

    /// Central differences.
    private Array2DRowRealMatrix slopes(double[] theta, double[] sizes) {
        var slopes = new double[measured.length][theta.length];
        for (int k = 0; k < theta.length; k++) {
            double step = FIRST_STEP * sizes[k];
            var moved = theta.clone();
            moved[k] = theta[k] + step;
            double[] up = computed(moved);
            moved[k] = theta[k] - step;
            double[] down = computed(moved);
            for (int i = 0; i < slopes.length; i++) {
                slopes[i][k] = (up[i] - down[i]) / (2 * step);
            }
        }
        return new Array2DRowRealMatrix(slopes, false);
    }

    /// How much more the means of blocks scatter than they would if the left-overs were independent; at least 1.
    private double together(double[] best, double meanSquare) {
        int length = Math.max(1, best.length / BLOCKS);
        double scatter = 0;
        int blocks = best.length / length;
        for (int b = 0; b < blocks; b++) {
            double sum = 0;
            for (int i = b * length; i < (b + 1) * length; i++) {
                sum += measured[i] - best[i];
            }
            scatter += sum * sum / length;
        }
        return meanSquare == 0 ? 1 : Math.max(1, scatter / blocks / meanSquare);
    }

    private Result result(double[] theta, double[][] covariance) {
        double[] best = computed(theta);
        double squares = 0;
        for (int i = 0; i < best.length; i++) {
            squares += (measured[i] - best[i]) * (measured[i] - best[i]);
        }
        int free = best.length - theta.length;
        double variance = squares / free;
        double widened = together(best, squares / best.length);
        if (widened > MUCH) {
            notes.add(
                    "what is left over hangs together over many rows: something that the equations do not know moved the"
                            + " board; the intervals are " + beltwright.quantity.Numbers.fixed(Math.sqrt(widened), 1)
                            + " times as wide for it");
        }
        double t = new TDistribution(free).inverseCumulativeProbability(SURE);
        var found = new ArrayList<Found>();
        for (int i = 0; i < wanted.size(); i++) {
            double half = t * Math.sqrt(variance * widened * covariance[i][i]);
            found.add(new Found(wanted.get(i), before(wanted.get(i)), theta[i], theta[i] - half, theta[i] + half));
        }
        return new Result(
                log,
                found,
                Math.sqrt(squares / best.length),
                traced.rows(),
                notes,
                java.util.Arrays.stream(best, 0, traced.rows()).boxed().toList());
    }
}
