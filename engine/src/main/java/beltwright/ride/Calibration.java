package beltwright.ride;

import beltwright.power.MotorHeat;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
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
    private static final double FAR = 2; // times what the kit had, or that part of it
    private static final double FASTER = 1.2; // than the motors turn by themselves: no hill of a log does that

    /// Fields of kit and parts that a computed speed, or temperature, rests on.
    private static final Set<String> MOVES = Set.of(
            "allUpMassKg",
            "rollingPercent",
            "dragAreaM2",
            "airDensityKgM3",
            "bearingDragN",
            "headWindMps",
            "diameterMm",
            "inertiaKgM2");

    private static final Set<String> DRIVES = Set.of(
            "kvRpmPerV", "noLoadCurrentA", "noLoadAtRpm", "noLoadGrowthPercent", "beltEfficiencyPercent", "rotorKgM2");
    private static final Set<String> WARMS = Set.of(
            "kvRpmPerV",
            "noLoadCurrentA",
            "noLoadAtRpm",
            "noLoadGrowthPercent",
            "diameterMm",
            "resistanceOhm",
            "resistanceAtC",
            "windingJPerK",
            "caseJPerK",
            "windingToCaseKPerW",
            "caseToAirKPerW",
            "airflowPercent",
            "canDiameterMm",
            "canLengthMm",
            "airC",
            "headWindMps");

    /// One coefficient found.
    ///
    /// @param before what the kit says, or an estimate of it; NaN where nobody knows
    /// @param low and `high`: the 95 % interval
    public record Found(Coefficient what, double before, double value, double low, double high) {
        public double halfWidth() {
            return (high - low) / 2;
        }
    }

    /// What came out.
    ///
    /// @param leftOver root mean square of measured less computed, in m/s or K
    /// @param estimates that were taken as they are, with their words
    /// @param computed speed (m/s) or winding temperature (°C) at every reading, with what was found
    public record Result(
            Log log,
            List<Found> found,
            double leftOver,
            int rows,
            List<String> notes,
            List<String> estimates,
            List<Double> computed) {
        public Result {
            found = List.copyOf(found);
            notes = List.copyOf(notes);
            estimates = List.copyOf(estimates);
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

    /// {@return numbers of the board that are missing; those that are to be found do not count}
    public static List<String> needs(Board board, Set<Coefficient> wanted) {
        return board.needs().stream()
                .filter(n -> wanted.stream().noneMatch(c -> n.endsWith("." + c.path())))
                .toList();
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
                        "what moves the board (" + all(false) + ") or what warms it (" + all(true) + "), not both",
                        "ask twice");
            }
        }
        var needs = needs(board, Set.copyOf(wanted));
        if (!needs.isEmpty()) {
            throw new Refusal(log.kit(), "needs " + String.join(", ", needs), "every number known", "enter them");
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
            if (!driven) {
                throw new Refusal(
                        log.id(),
                        "belts off: the speed of the board is not that of the motors",
                        "a ride with belts on",
                        "log a ride with belts on");
            }
            notes.add("the air is taken as " + Numbers.significant(board.airC(), 3)
                    + " °C, and the motor current as read: what is found is wrong where they are, and the intervals do"
                    + " not count that");
        } else {
            motionNotes(driven);
        }
        refuseTooFast();
    }

    private static String all(boolean heat) {
        return Arrays.stream(Coefficient.values())
                .filter(c -> c.heat() == heat)
                .map(Coefficient::key)
                .collect(Collectors.joining(", "));
    }

    private void motionNotes(boolean driven) {
        if (!log.has(Log.Reading.GRADE) && !log.has(Log.Reading.ELEVATION)) {
            notes.add("neither grade nor height was logged: the road is taken as level");
        } else if (!log.has(Log.Reading.GRADE) && !log.has(Log.Reading.DISTANCE)) {
            notes.add("height was logged but no distance, so that no slope comes of it: the road is taken as level");
        }
        if (log.belts() == Log.Belts.ON && !driven) {
            notes.add("belts on and no current logged: the motors are taken as turned by the board, without current");
        }
        if (log.belts() == Log.Belts.OFF && log.has(Log.Reading.MOTOR_CURRENT)) {
            notes.add("belts off: the motor current moves nothing and is left out");
        }
        if (driven && traced.jumps() > 0) {
            notes.add("the current jumps " + traced.jumps()
                    + " times from one reading to the next: when exactly is not known,"
                    + " and the intervals do not count that; log ten times a second or more");
        }
        if (board.road().headWindMps() == 0) {
            notes.add("still air is taken; ride both ways and compare, or measure the wind");
        }
        if (driven) {
            notes.add("a motor current or a slope that is read a little wrong makes what is found as wrong, and the"
                    + " intervals do not count that: they are for the scatter of the readings alone");
        }
        if (!wanted.contains(Coefficient.MASS) && (driven || wanted.contains(Coefficient.DRAG_AREA))) {
            notes.add("the mass is taken as " + Numbers.significant(before(Coefficient.MASS), 4) + " kg: "
                    + (driven
                            ? "what is found is wrong where the mass is"
                            : "the drag area is wrong by as many percent as the mass")
                    + ", and the interval does not count that");
        }
    }

    private void refuseTooFast() {
        if (!log.has(Log.Reading.SPEED)) {
            return;
        }
        var train = board.train();
        double alone = train.pack().fullV() / train.motor().torqueConstantNmA() / train.ratio() * train.wheelRadiusM();
        double fastest =
                Arrays.stream(Traced.column(log, Log.Reading.SPEED)).max().orElse(0);
        if (fastest > FASTER * alone) {
            var words = "speed reaches " + Numbers.significant(fastest, 3) + " m/s, "
                    + Numbers.significant(fastest / alone, 2)
                    + " times what the motors of this kit turn without load and with a full pack";
            if (log.belts() == Log.Belts.ON) {
                throw new Refusal(
                        log.id() + ".speed",
                        words,
                        "up to " + Numbers.significant(FASTER * alone, 3) + " m/s with belts on",
                        "is this column in km/h? say so where the log is read; or is it of another kit?");
            }
            notes.add(words + ": is this column in another unit?");
        }
    }

    /// Winding readings, then case readings where there are any.
    private double[] temperatures() {
        double[] winding = Traced.column(log, Log.Reading.WINDING);
        if (!log.has(Log.Reading.CASE)) {
            return winding;
        }
        double[] casing = Traced.column(log, Log.Reading.CASE);
        var both = Arrays.copyOf(winding, 2 * winding.length);
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
            double before = before(wanted.get(i));
            start[i] = before > 0 ? before : wanted.get(i).start();
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
            throw cannotTell(wanted.stream().map(Coefficient::toString).collect(Collectors.joining(" and ")), "");
        }
    }

    private Refusal cannotTell(String what, String because) {
        return new Refusal(
                log.id(),
                "cannot tell " + what + " from these readings" + because,
                "readings in which each of them shows: "
                        + (heat ? "minutes of high current, then of low" : "a wide range of speeds, or of currents"),
                "look at the units of time and speed, ask for less, or log another ride");
    }

    private Found found(Coefficient what, double value, double half) {
        var unit = " " + what.unit();
        if (!(value - half > 0)) {
            throw cannotTell(
                    what.toString(),
                    ": it comes out at " + Numbers.significant(value, 2) + unit + ", 95 % interval "
                            + Numbers.significant(value - half, 2) + " to " + Numbers.significant(value + half, 2)
                            + unit);
        }
        double before = before(what);
        if (value > FAR * before || value < before / FAR) {
            notes.add(what + " comes out at " + Numbers.significant(value / before, 2)
                    + " times what the kit had: look at the units of the columns, the slope of the road, and whether"
                    + " the belts were on");
        }
        return new Found(what, before, value, value - half, value + half);
    }

    private List<String> estimates() {
        return board.estimates().stream()
                .filter(e -> wanted.stream().noneMatch(c -> e.contains("." + c.path() + ":")))
                .filter(e -> {
                    var path = e.substring(0, e.indexOf(':'));
                    var field = path.substring(path.lastIndexOf('.') + 1);
                    return heat
                            ? WARMS.contains(field)
                            : MOVES.contains(field) || log.belts() == Log.Belts.ON && DRIVES.contains(field);
                })
                .toList();
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
                            + " board; the intervals are " + Numbers.fixed(Math.sqrt(widened), 1)
                            + " times as wide for it");
        }
        double t = new TDistribution(free).inverseCumulativeProbability(SURE);
        var found = new ArrayList<Found>();
        for (int i = 0; i < wanted.size(); i++) {
            double half = t * Math.sqrt(variance * widened * covariance[i][i]);
            found.add(found(wanted.get(i), theta[i], half));
        }
        return new Result(
                log,
                found,
                Math.sqrt(squares / best.length),
                traced.rows(),
                notes,
                estimates(),
                Arrays.stream(best, 0, traced.rows()).boxed().toList());
    }
}
