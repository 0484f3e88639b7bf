package beltwright.ride;

import beltwright.kit.Kit;
import beltwright.power.Governs;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Everything that a kit does at steady speed, computed once: numbers with their limits, push and load over speed,
/// stops, braking over speed and charge, what is left, limits to set.
///
/// @param needs numbers that are missing; where there are any, all else is empty
public record PowerSheet(
        Kit kit,
        Board board,
        List<String> needs,
        List<String> estimates,
        List<String> notes,
        List<Answer> answers,
        List<Steady.Push> curve,
        List<Load> loads,
        List<StopRow> stops,
        List<BrakeCurve> braking,
        List<WhatIsLeft.Row> left,
        List<LimitSheet.Row> limits) {
    private static final double SPOILT_C = 300;
    private static final double STEP_MPS = 0.25;
    private static final int DIGITS = 3;
    private static final int ESTIMATED_DIGITS = 2;
    private static final double[] GRADES = {0, 5, 10, 15, 20, 30};
    private static final double[] CHARGES = {1, 0.98, 0.95, 0.9, 0.8, 0.5, 0.2};
    private static final double[] STOPS_KMH = {10, 15, 20, 25, 30, 40};

    /// One number, what it was worked out under, what keeps it from being better, and the formula behind it.
    ///
    /// @param digits significant digits that it is worth at most
    public record Answer(
            String key, String name, Range value, String unit, String under, String governs, String how, int digits) {
        Answer(String key, String name, Range value, String unit, String under, String governs, String how) {
            this(key, name, value, unit, under, governs, how, DIGITS);
        }

        /// {@return the value with its worst case, to as many digits as that allows}
        public String text() {
            return nominal()
                    + (limits().isEmpty() ? "" : " (" + limits() + ")")
                    + (unitShown().isEmpty() ? "" : " " + unit);
        }

        /// {@return the value alone, or that there is none}
        public String nominal() {
            if (Double.isNaN(value.nominal())) {
                return "none: cannot be ridden so";
            }
            return Double.isInfinite(value.nominal())
                    ? "no end"
                    : Numbers.within(value.nominal(), value.low(), value.high(), digits);
        }

        /// {@return from worst to best; empty where there is no doubt, or none that the digits can show}
        public String limits() {
            if (!Double.isFinite(value.nominal()) || !(value.high() > value.low())) {
                return "";
            }
            var low = edge(value.low());
            var high = edge(value.high());
            return low.equals(high) ? "" : low + " to " + high;
        }

        public String unitShown() {
            return Double.isFinite(value.nominal()) ? unit : "";
        }

        private String edge(double at) {
            var text = nominal();
            int point = text.indexOf('.');
            return Double.isFinite(at)
                    ? Numbers.fixed(at, point < 0 ? 0 : text.length() - point - 1)
                    : Numbers.significant(at, digits);
        }
    }

    /// What a grade asks for over speed, at the speeds of the curve.
    public record Load(double gradePercent, List<Double> pushN) {
        public Load {
            pushN = List.copyOf(pushN);
        }
    }

    /// Stops from one speed, rider stiff and upright: pack as at the start, and pack full.
    ///
    /// @param leaningBack pack as at the start, rider leaning back
    public record StopRow(Steady.Stop usual, Steady.Stop packFull, Steady.Stop leaningBack) {}

    /// Hardest electric braking over speed at one charge.
    public record BrakeCurve(double charge, List<Steady.Push> points) {
        public BrakeCurve {
            points = List.copyOf(points);
        }
    }

    public static PowerSheet of(Kit kit) {
        var board = Board.of(kit);
        if (!board.known()) {
            return new PowerSheet(
                    kit,
                    board,
                    board.needs(),
                    board.estimates(),
                    board.notes(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of());
        }
        var steady = new Steady(board);
        var curve = steady.curve(board.charge(), STEP_MPS);
        return new PowerSheet(
                kit,
                board,
                List.of(),
                board.estimates(),
                board.notes(),
                answers(kit, board),
                curve,
                loads(board, curve),
                stops(board, steady),
                braking(board, new Steady(board.leaningBack()), curve),
                WhatIsLeft.rows(board),
                LimitSheet.of(kit, board));
    }

    private static List<Load> loads(Board board, List<Steady.Push> curve) {
        var loads = new ArrayList<Load>();
        for (double grade : GRADES) {
            loads.add(new Load(
                    grade,
                    curve.stream()
                            .map(p -> board.road().loadN(p.speedMps(), Road.sine(grade)))
                            .toList()));
        }
        return loads;
    }

    private static List<StopRow> stops(Board board, Steady steady) {
        var rows = new ArrayList<StopRow>();
        var upright = new Steady(board.upright());
        var leaning = new Steady(board.leaningBack());
        double top = steady.fastest(0, board.charge(), board.airC()).speedMps();
        for (double kmh : STOPS_KMH) {
            if (kmh / 3.6 <= top) {
                rows.add(row(board, upright, leaning, kmh / 3.6));
            }
        }
        rows.add(row(board, upright, leaning, top));
        return rows;
    }

    private static StopRow row(Board board, Steady upright, Steady leaning, double speedMps) {
        return new StopRow(
                upright.stop(speedMps, board.charge()),
                upright.stop(speedMps, 1),
                leaning.stop(speedMps, board.charge()));
    }

    private static List<BrakeCurve> braking(Board board, Steady steady, List<Steady.Push> curve) {
        var curves = new ArrayList<BrakeCurve>();
        for (double charge : CHARGES) {
            curves.add(new BrakeCurve(
                    charge,
                    curve.stream()
                            .map(p -> steady.brake(p.speedMps(), charge, board.airC()))
                            .toList()));
        }
        return curves;
    }

    private static List<Answer> answers(Kit kit, Board board) {
        double asked = kit.task().gradePercent().nominal();
        var steady = new Steady(board);
        double warm = board.train().limits().windingFromC();
        var ranges = Bands.of(kit, b -> numbers(b, asked));
        var level = steady.fastest(0, board.charge(), board.airC());
        var start = steady.steepestStart();
        var hill = steady.fastest(Road.sine(asked), board.charge(), warm);
        var answers = new ArrayList<Answer>();
        var still = board.road().headWindMps() == 0
                ? "still air"
                : "wind of " + round(board.road().headWindMps()) + " m/s against the board";
        var charged = "pack " + round(100 * board.charge()) + " % charged";
        answers.add(new Answer(
                "top-speed",
                "Top speed, loaded",
                ranges[0],
                "km/h",
                "level, " + still + ", " + charged + ", winding cold" + cells(kit, board),
                level.governs().toString(),
                "first speed v at which push and load are equal: F(v) = c·m·g + ½·ρ·cdA·(v + w)² + bearings"));
        answers.add(new Answer(
                "steepest-start",
                "Steepest start",
                ranges[1],
                "%",
                "from rest, winding cold, weight on the driven axle as typed",
                start.governs().toString(),
                "steepest α with F(0) ≥ m·g·(sin α + c·cos α) + bearings, and grip on the driven axle"));
        answers.add(new Answer(
                "steepest-for-ever",
                "Steepest grade that can be ridden for ever",
                ranges[2],
                "%",
                "at " + round(3.6 * board.cruiseMps()) + " km/h or full throttle, air " + round(board.airC())
                        + " °C; winding settles at " + round(warm) + " °C",
                Governs.HEAT.toString(),
                "grade at which the winding settles where the controller cuts back: losses of winding and"
                        + " iron over the thermal path to the air"));
        answers.add(new Answer(
                "hill-speed",
                "Speed on the hill",
                ranges[3],
                "km/h",
                round(asked) + " %, " + still + ", " + charged + ", winding at " + round(warm) + " °C",
                hill.governs().toString(),
                "as for top speed, with m·g·sin α in the load and the winding warm"));
        answers.add(new Answer(
                "hill-minutes",
                "Minutes on the hill until the controller cuts back",
                ranges[4],
                "min",
                "winding from " + round(board.airC()) + " to " + round(warm) + " °C on " + round(asked)
                        + " %, at cruise or full throttle" + settles(steady.settledC(asked)),
                Governs.HEAT.toString(),
                "heat balance of winding and can over time, losses of the current that the"
                        + " grade asks for, until the cut-back"));
        answers.add(new Answer(
                "range",
                "Range at cruise",
                ranges[5],
                "km",
                "level, " + still + ", " + round(3.6 * board.cruiseMps()) + " km/h all the way, " + charged
                        + " down to where that speed is no longer held",
                "",
                "x = C·∫ v/I(q) dq, from the charge at the start down to where the speed is no longer held"));
        answers.add(new Answer(
                "consumption",
                "Energy for each kilometre at cruise",
                ranges[6],
                "Wh/km",
                "level, " + still,
                "",
                "mean over the same charge of pack power over speed"));
        stances(kit, board, ranges, charged, answers);
        return answers;
    }

    /// What the drive can brake, an upright rider may not be able to use: the wheels slide first. Both stops are told.
    private static void stances(Kit kit, Board board, Range[] ranges, String charged, List<Answer> answers) {
        var rules = new Rules(kit.reference().estimating());
        boolean guessed = rules.massHeight(kit.task()).estimated();
        int digits = guessed ? ESTIMATED_DIGITS : DIGITS;
        var height = "mass " + Numbers.fixed(board.road().massHeightM(), 2) + " m above the road"
                + (guessed ? ", an estimate" : "");
        var level = "level, dry, electric brake only, " + charged;
        var wheels = board.train().motors() > 1 ? "" : "; one wheel brakes, with half of that weight";
        var integral = "x = ∫ v·m_e/(F_brake + F_load) dv, brake at its hardest all the way";
        answers.add(new Answer(
                "stop-upright",
                "Way to a stop from cruise, rider stiff and upright, brake alone",
                ranges[7],
                "m",
                level + "; " + percent(board.road().upright().drivenBrakingShare())
                        + " of the weight is then on the driven axle, " + height + wheels,
                governs(board.upright()),
                integral + ", F_brake ≤ μ·m·g/2 / (1 + μ·h/L)",
                digits));
        answers.add(new Answer(
                "stop-upright-reaction",
                "Way to a stop from cruise, rider stiff and upright, with reaction time",
                ranges[8],
                "m",
                "the same after " + round(board.reactionS()) + " s",
                "",
                "the same, and v·t before it",
                digits));
        answers.add(new Answer(
                "stop",
                "Way to a stop from cruise, rider leaning back, brake alone",
                ranges[9],
                "m",
                level + "; only with " + percent(board.road().drivenBrakingShare())
                        + " of the weight on the driven axle all the way" + wheels,
                governs(board.leaningBack()),
                integral + ", F_brake ≤ μ·share·m·g"));
        answers.add(new Answer(
                "stop-reaction",
                "Way to a stop from cruise, rider leaning back, with reaction time",
                ranges[10],
                "m",
                "the same after " + round(board.reactionS()) + " s",
                "",
                "the same, and v·t before it"));
        answers.add(new Answer(
                "grip-rigid",
                "Most braking of a stiff upright rider, driven axle at the rear",
                ranges[11],
                "m/s²",
                "weight moves forward; a rider who leans back gets more; " + height + wheels,
                Governs.GRIP.toString(),
                "a = μ·g/2 / (1 + μ·h/L), mass in the middle of the wheelbase L, h above the road",
                digits));
        answers.add(new Answer(
                "tips",
                "Slowing down at which a stiff upright rider tips over",
                ranges[12],
                "m/s²",
                "moments about the front axle; " + height,
                "",
                "a = g·L/(2·h), mass in the middle of the wheelbase L, h above the road",
                digits));
    }

    private static String governs(Board board) {
        return new Steady(board)
                .brake(board.cruiseMps(), board.charge(), board.airC())
                .governs()
                .toString();
    }

    private static String percent(double share) {
        return Numbers.fixed(100 * share, 0) + " %";
    }

    /// {@return volts of a cell at rest at this charge, and the working voltage that the first numbers take instead}
    private static String cells(Kit kit, Board board) {
        var pack = board.train().pack();
        var working = kit.pack().cellVoltageV();
        return ", " + Numbers.fixed(pack.openV(board.charge()) / pack.cells(), 2) + " V a cell at rest"
                + (working.known()
                        ? "; the first numbers of the sheet take " + Numbers.significant(working.nominal(), 3)
                                + " V a cell, so theirs differ"
                        : "");
    }

    private static double[] numbers(Board board, double grade) {
        var steady = new Steady(board);
        double warm = board.train().limits().windingFromC();
        var range = steady.range(board.cruiseMps());
        var upright = board.upright();
        var uprightStop = new Steady(upright).stop(board.cruiseMps(), board.charge());
        var stop = new Steady(board.leaningBack()).stop(board.cruiseMps(), board.charge());
        return new double[] {
            3.6 * steady.fastest(0, board.charge(), board.airC()).speedMps(),
            steady.steepestStart().percent(),
            steady.steepestForEver().percent(),
            3.6 * steady.fastest(Road.sine(grade), board.charge(), warm).speedMps(),
            steady.secondsTo(warm, grade) / 60,
            range.km(),
            range.whPerKm(),
            uprightStop.wayM(),
            uprightStop.wholeM(),
            stop.wayM(),
            stop.wholeM(),
            upright.road().gripN(0, true) / upright.road().massKg(),
            board.road().tipsAtMps2(),
        };
    }

    private static String settles(double settledC) {
        return settledC < SPOILT_C ? "; would settle at " + round(settledC) + " °C" : "";
    }

    private static String round(double value) {
        return Numbers.significant(value, 3);
    }
}
