package beltwright.kit;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/// The workshop's own jump tests of one belt on one drive pulley: at this tension at rest, this torque at the motor
/// made
/// a tooth jump. A straight line through them tells the torque at tensions between those tried, and at no others.
///
/// @param tests three or more tensions
public record JumpTests(List<Test> tests) {
    private static final String ALLOWED = "'60 N 4.1 Nm, 80 N 5.6 Nm, 100 N 6.9 Nm', three or more different tensions";
    private static final Pattern ONE = Pattern.compile("([0-9.]+) N ([0-9.]+) N·?m");
    private static final int LEAST = 3;

    /// What was read last: every check of a kit asks for the same text.
    private static volatile @Nullable Read last;

    private record Read(String text, JumpTests tests) {}

    /// Tension at rest (N) and torque (N·m) at which a tooth jumped.
    public record Test(double tensionN, double torqueNm) {}

    public JumpTests {
        tests = List.copyOf(tests);
    }

    /// {@return whether this text holds any test}
    public static boolean given(String text) {
        return !text.isBlank();
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

    private static JumpTests read(String text) {
        var tests = new ArrayList<Test>();
        for (var part : text.split(",")) {
            var one = ONE.matcher(part.strip());
            if (!one.matches()) {
                throw refused("'" + part.strip() + "' cannot be read");
            }
            try {
                tests.add(new Test(Double.parseDouble(one.group(1)), Double.parseDouble(one.group(2))));
            } catch (NumberFormatException e) {
                throw refused("'" + part.strip() + "' holds something that is no number");
            }
        }
        if (tests.stream().map(Test::tensionN).distinct().count() < LEAST) {
            throw refused("fewer than " + LEAST + " different tensions");
        }
        if (tests.stream().anyMatch(t -> !(t.tensionN > 0 && t.torqueNm > 0))) {
            throw refused("a number is not above 0");
        }
        var read = new JumpTests(tests);
        if (!(read.slope() > 0)) {
            throw refused("torque does not rise with tension");
        }
        return read;
    }

    private static Refusal refused(String what) {
        return new Refusal("jumpTests", what, ALLOWED, "write it like that");
    }

    private double mean(boolean tension) {
        double sum = 0;
        for (var t : tests) {
            sum += tension ? t.tensionN : t.torqueNm;
        }
        return sum / tests.size();
    }

    /// {@return slope of the least-squares line (N·m/N)}
    public double slope() {
        double x = mean(true);
        double y = mean(false);
        double xy = 0;
        double xx = 0;
        for (var t : tests) {
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
        for (var t : tests) {
            most = Math.max(most, y + slope * (t.tensionN - x) - t.torqueNm);
        }
        return most;
    }

    /// {@return lowest tension tried (N)}
    public double leastN() {
        double least = Double.POSITIVE_INFINITY;
        for (var t : tests) {
            least = Math.min(least, t.tensionN);
        }
        return least;
    }

    /// {@return highest tension tried (N)}
    public double mostN() {
        double most = Double.NEGATIVE_INFINITY;
        for (var t : tests) {
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
        return tests.size() + " jump tests from " + Numbers.plain(leastN()) + " to " + Numbers.plain(mostN()) + " N";
    }
}
