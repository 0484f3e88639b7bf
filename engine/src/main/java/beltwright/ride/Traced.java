package beltwright.ride;

import beltwright.power.MotorHeat;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/// What a board would have done with the currents of a measured ride: speed from the push, temperatures from the loss.
///
/// - Source: the equations of `RideSolver`, with measured current in place of a rider; classical fourth-order steps of
///   the numeric library from reading to reading.
/// - Valid: readings no more than a few seconds apart; between two readings current and grade go in a straight line.
/// - Neglects: noise in the measured current.
final class Traced {
    private static final double LONGEST_STEP_S = 1;
    private static final double JUMP_AS = 1;
    private static final double WIDEST_GAP_S = 30;

    private final Board board;
    private final double[] time;
    private final double[] current;
    private final double[] sine;
    private final double[] speed;
    private final boolean belts;
    private final ClassicalRungeKuttaIntegrator steps = new ClassicalRungeKuttaIntegrator(LONGEST_STEP_S);

    Traced(Board board, Log log) {
        this.board = board;
        this.time = column(log, Log.Reading.TIME);
        this.belts = log.belts() == Log.Belts.ON;
        this.speed = log.has(Log.Reading.SPEED) ? column(log, Log.Reading.SPEED) : new double[time.length];
        this.current = belts && log.has(Log.Reading.MOTOR_CURRENT)
                ? column(log, Log.Reading.MOTOR_CURRENT)
                : new double[time.length];
        this.sine = slopes(log);
        for (int i = 1; i < time.length; i++) {
            if (time[i] - time[i - 1] > WIDEST_GAP_S) {
                throw new Refusal(
                        log.id() + ".time, row " + (i + 1),
                        "a gap of " + Numbers.significant(time[i] - time[i - 1], 3) + " s",
                        "at most " + Numbers.plain(WIDEST_GAP_S) + " s from row to row",
                        "if this column is in ms, say so where the log is read; else cut the log there and use one piece");
            }
        }
    }

    static double[] column(Log log, Log.Reading what) {
        return log.of(what).stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double[] slopes(Log log) {
        if (log.has(Log.Reading.GRADE)) {
            return log.of(Log.Reading.GRADE).stream().mapToDouble(Road::sine).toArray();
        }
        var sines = new double[time.length];
        if (log.has(Log.Reading.ELEVATION) && log.has(Log.Reading.DISTANCE)) {
            double[] h = column(log, Log.Reading.ELEVATION);
            double[] x = column(log, Log.Reading.DISTANCE);
            int window = 5;
            for (int i = 0; i < sines.length; i++) {
                int a = Math.max(0, i - window);
                int b = Math.min(sines.length - 1, i + window);
                sines[i] = x[b] > x[a] ? Math.clamp((h[b] - h[a]) / (x[b] - x[a]), -0.6, 0.6) : 0;
            }
        }
        return sines;
    }

    int rows() {
        return time.length;
    }

    /// {@return how often the current changes so much between two readings that the moment matters}
    int jumps() {
        int jumps = 0;
        for (int i = 1; i < time.length; i++) {
            if (Math.abs(current[i] - current[i - 1]) * (time[i] - time[i - 1]) > JUMP_AS) {
                jumps++;
            }
        }
        return jumps;
    }

    /// Speeds (m/s) at every reading, from a speed at the first.
    void speeds(Road road, double startMps, double[] out) {
        double inertial = road.inertialKg() - (belts ? 0 : board.belting().motorsKg());
        var y = new double[] {startMps};
        out[0] = startMps;
        for (int i = 1; i < time.length; i++) {
            int row = i;
            y = across(y, i, (t, s, dy) -> {
                double share = (t - time[row - 1]) / (time[row] - time[row - 1]);
                double v = Math.max(0, s[0]);
                double amps = current[row - 1] + share * (current[row] - current[row - 1]);
                double slope = sine[row - 1] + share * (sine[row] - sine[row - 1]);
                var train = board.train();
                double push = belts ? train.pushN(train.motor().shaftNm(amps, train.radPerS(v))) : 0;
                double net = push - road.loadN(v, slope);
                dy[0] = s[0] <= 0 && net < 0 ? 0 : net / inertial;
            });
            out[i] = y[0];
        }
    }

    /// Temperatures (°C) of winding and case at every reading, from those at the first.
    void temperatures(MotorHeat heat, double windingC, double caseC, double[] winding, double[] casing) {
        var motor = board.train().motor();
        double wind = board.road().headWindMps();
        var y = new double[] {windingC, caseC};
        winding[0] = windingC;
        casing[0] = caseC;
        for (int i = 1; i < time.length; i++) {
            double from = heat.caseToAirWPerK(speed[i - 1] + wind, board.train().radPerS(speed[i - 1]));
            double to = heat.caseToAirWPerK(speed[i] + wind, board.train().radPerS(speed[i]));
            int row = i;
            y = across(y, i, (t, s, dy) -> {
                double share = (t - time[row - 1]) / (time[row] - time[row - 1]);
                double amps = current[row - 1] + share * (current[row] - current[row - 1]);
                double omega = board.train().radPerS(speed[row - 1] + share * (speed[row] - speed[row - 1]));
                double loss = amps * amps * motor.resistanceOhm(s[0]) + motor.lossNm(omega) * omega;
                dy[0] = heat.windingKPerS(loss, s[0], s[1]);
                dy[1] = heat.caseKPerS(s[0], s[1], board.airC(), from + share * (to - from));
            });
            winding[i] = y[0];
            casing[i] = y[1];
        }
    }

    private interface Slope {
        void at(double t, double[] y, double[] dy);
    }

    private double[] across(double[] y, int row, Slope slope) {
        int n = y.length;
        var equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return n;
            }

            @Override
            public double[] computeDerivatives(double t, double[] state) {
                var dy = new double[n];
                slope.at(t, state, dy);
                return dy;
            }
        };
        double from = time[row - 1];
        double span = time[row] - from;
        int pieces = (int) Math.ceil(span / LONGEST_STEP_S - 1e-9);
        var state = y;
        for (int k = 0; k < pieces; k++) {
            state = steps.singleStep(equation, from + span * k / pieces, state, from + span * (k + 1) / pieces);
        }
        return state;
    }
}
