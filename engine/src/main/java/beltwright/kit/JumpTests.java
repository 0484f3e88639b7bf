package beltwright.kit;

import beltwright.part.Signed;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/// The workshop's own jump tests of one belt on one drive pulley: at this tension at rest, this torque at the motor
/// made
/// a tooth jump. From three tensions on, a straight line through them tells the torque at tensions between those
/// tried, and at no others; fewer are kept and tell nothing yet. A test that stopped before a tooth jumped is kept
/// too: how far it was from a jump nobody knows, so it moves no line.
///
/// @param tests one or more, as typed
/// @param jumps those in which a tooth jumped
/// @param lacking at how many more tensions a tooth must have jumped
public record JumpTests(List<Test> tests, List<Test> jumps, int lacking) {
    /// How many different tensions it takes.
    public static final int ENOUGH = 3;

    /// How far apart two tensions lie to be different ones, as a share of the lower: about twice as far as five
    /// readings of a tuner may take a tension apart. So much the torque must rise, too, from the lowest to the
    /// highest. Habit.
    public static final double APART = 0.1;

    private static final String ALLOWED =
            "'60 N 4.1 Nm, 80 N by 270 Hz 5.6 Nm by 62 A, 100 N no jump to 6.9 Nm', each with who and when in"
                    + " brackets where known: '60 N 4.1 Nm (workshop 2026-11-20)'";
    private static final double MOST = 1e6;
    private static final Pattern ONE = Pattern.compile(
            "([0-9.]+) N(?: by ([0-9.]+) Hz)? (no jump to )?([0-9.]+) N·?m(?: by ([0-9.]+) A)?" + Signed.PATTERN);

    /// What was read last: every check of a kit asks for the same text.
    private static volatile @Nullable Read last;

    private record Read(String text, JumpTests tests) {}

    /// One test.
    ///
    /// @param tensionN tension at rest (N)
    /// @param heardHz how the span sounded, where the tension was told by that (Hz); else 0
    /// @param torqueNm torque at the motor when a tooth jumped, or when the test was stopped (N·m)
    /// @param amperes motor current, as it was read, where the torque was told by that (A); else 0
    public record Test(
            double tensionN, double heardHz, double torqueNm, double amperes, boolean jumped, Signed signed) {
        @Override
        public String toString() {
            return Numbers.plain(tensionN) + " N " + (heardHz > 0 ? "by " + Numbers.plain(heardHz) + " Hz " : "")
                    + (jumped ? "" : "no jump to ") + Numbers.plain(torqueNm) + " Nm"
                    + (amperes > 0 ? " by " + Numbers.plain(amperes) + " A" : "") + signed;
        }
    }

    public JumpTests {
        tests = List.copyOf(tests);
        jumps = List.copyOf(jumps);
    }

    /// {@return whether this text holds tests that take the habit's place}
    public static boolean tell(String text) {
        return !text.isBlank() && parse(text).tell();
    }

    /// @throws Refusal if the text does not read as tensions and torques
    public static JumpTests parse(String text) {
        var before = last;
        if (before != null && before.text.equals(text)) {
            return before.tests;
        }
        var tests = read(text);
        last = new Read(text, tests);
        return tests;
    }

    /// {@return the text with one more test behind it}
    ///
    /// @throws Refusal if that test is in it already, or the tests then contradict the rule
    public static String added(String text, Test test) {
        if (!text.isBlank() && parse(text).tests.contains(test)) {
            throw new Refusal(
                    "jumpTests", "'" + test + "' is recorded already", "each test once", "leave it as it is recorded");
        }
        var longer = text.isBlank() ? test.toString() : text.strip() + ", " + test;
        parse(longer);
        return longer;
    }

    private static JumpTests read(String text) {
        var tests = new ArrayList<Test>();
        for (var part : text.split(",")) {
            var one = ONE.matcher(part.strip());
            if (!one.matches()) {
                throw refused("'" + part.strip() + "' cannot be read");
            }
            try {
                tests.add(new Test(
                        Double.parseDouble(one.group(1)),
                        one.group(2) == null ? 0 : Double.parseDouble(one.group(2)),
                        Double.parseDouble(one.group(4)),
                        one.group(5) == null ? 0 : Double.parseDouble(one.group(5)),
                        one.group(3) == null,
                        Signed.of("jumpTests", one.group(6), one.group(7))));
            } catch (NumberFormatException e) {
                throw refused("'" + part.strip() + "' holds something that is no number");
            }
        }
        if (tests.stream().anyMatch(t -> !(t.tensionN > 0 && t.torqueNm > 0))) {
            throw refused("a number is not above 0");
        }
        if (tests.stream()
                .anyMatch(t -> Math.max(Math.max(t.tensionN, t.heardHz), Math.max(t.torqueNm, t.amperes)) > MOST)) {
            throw refused("a number is beyond " + Numbers.plain(MOST));
        }
        var jumps = tests.stream().filter(Test::jumped).toList();
        var read = new JumpTests(tests, jumps, Math.max(0, ENOUGH - apart(jumps)));
        var flat = read.tell() ? read.flat() : "";
        if (!flat.isEmpty()) {
            throw new Refusal(
                    "jumpTests",
                    "torque does not rise with tension: " + flat,
                    "tests in which a tighter belt stands more torque, a tenth more at least from the lowest tension to"
                            + " the highest (habit)",
                    "check each reading, take out the one that is wrong, or test at tensions further apart");
        }
        return read;
    }

    /// {@return at how many tensions a tooth jumped, those that are nearly the same counted once}
    private static int apart(List<Test> jumps) {
        int count = 0;
        double from = 0;
        for (double tension :
                jumps.stream().mapToDouble(Test::tensionN).sorted().toArray()) {
            if (tension >= from) {
                count++;
                from = tension * (1 + APART) * (1 - 1e-12); // a tenth typed in decimals is a tenth
            }
        }
        return count;
    }

    /// {@return why the line through these tests tells nothing, or empty where it does}
    private String flat() {
        double low = mean(false) + (leastN() - mean(true)) * slope();
        double rise = (mostN() - leastN()) * slope();
        var over = " from " + Numbers.plain(leastN()) + " to " + Numbers.plain(mostN()) + " N";
        if (!(rise > 0)) {
            return "the line through the tests is level or falls" + over;
        }
        if (!(rise >= APART * low)) {
            return "the line through the tests rises by " + Numbers.significant(rise, 2) + " N·m" + over
                    + ", less than a tenth";
        }
        return rise > scatterNm()
                ? ""
                : "the tests lie further from their line, " + Numbers.significant(scatterNm(), 2)
                        + " N·m, than it rises" + over + ", " + Numbers.significant(rise, 2) + " N·m";
    }

    private static Refusal refused(String what) {
        return new Refusal("jumpTests", what, ALLOWED, "write it like that");
    }

    /// {@return whether teeth jumped at enough tensions for a line}
    public boolean tell() {
        return lacking == 0;
    }

    private double mean(boolean tension) {
        double sum = 0;
        for (var t : jumps) {
            sum += tension ? t.tensionN : t.torqueNm;
        }
        return sum / jumps.size();
    }

    /// {@return slope of the least-squares line (N·m/N)}
    public double slope() {
        double x = mean(true);
        double y = mean(false);
        double xy = 0;
        double xx = 0;
        for (var t : jumps) {
            xy += (t.tensionN - x) * (t.torqueNm - y);
            xx += (t.tensionN - x) * (t.tensionN - x);
        }
        return xy / xx;
    }

    /// {@return how far the lowest test lies below the line (N·m): the line is taken down by that}
    public double scatterNm() {
        double x = mean(true);
        double y = mean(false);
        double slope = slope();
        double most = Double.NEGATIVE_INFINITY;
        for (var t : jumps) {
            most = Math.max(most, y + slope * (t.tensionN - x) - t.torqueNm);
        }
        return most;
    }

    /// {@return lowest tension tried (N)}
    public double leastN() {
        double least = Double.POSITIVE_INFINITY;
        for (var t : jumps) {
            least = Math.min(least, t.tensionN);
        }
        return least;
    }

    /// {@return highest tension tried (N)}
    public double mostN() {
        double most = Double.NEGATIVE_INFINITY;
        for (var t : jumps) {
            most = Math.max(most, t.tensionN);
        }
        return most;
    }

    /// Tension at rest at which a tooth jumps at this torque, by the line taken down to the lowest test.
    ///
    /// @return the lowest tension tried where the torque needs less; NaN where it needs more than the highest tried
    public double tensionN(double torqueNm) {
        double needed = mean(true) + (torqueNm + scatterNm() - mean(false)) / slope();
        return needed > mostN() ? Double.NaN : Math.max(needed, leastN());
    }

    /// Torque at which a tooth jumps at this tension at rest, by the same line.
    ///
    /// @return NaN outside the tensions tried
    public double torqueNm(double tensionN) {
        return tensionN < leastN() || tensionN > mostN()
                ? Double.NaN
                : mean(false) + (tensionN - mean(true)) * slope() - scatterNm();
    }

    @Override
    public String toString() {
        return jumps.size() + " jump tests from " + Numbers.plain(leastN()) + " to " + Numbers.plain(mostN()) + " N";
    }
}
