package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/// A belt's own calibration: a span of it loaded with known pulls and plucked. From two pulls on it tells how the
/// belt sounds; one alone is kept and tells nothing yet.
///
/// @param spanMm length of the span that was plucked (mm)
/// @param readings pulls and what was heard
public record HungWeights(double spanMm, List<Reading> readings) {
    /// How many different pulls it takes.
    public static final int ENOUGH = 2;

    private static final String ALLOWED =
            "'span 64.5 mm: 50 N 150 Hz, 100 N 235 Hz', each with who and when in brackets"
                    + " where known: '50 N 150 Hz (workshop 2026-11-20)'";
    private static final Pattern WHOLE = Pattern.compile("span ([0-9.]+) mm: (.+)");
    private static final Pattern ONE = Pattern.compile("([0-9.]+) N ([0-9.]+) Hz" + Signed.PATTERN);

    /// One pull (N) and the frequency heard (Hz).
    public record Reading(double tensionN, double frequencyHz, Signed signed) {
        @Override
        public String toString() {
            return Numbers.plain(tensionN) + " N " + Numbers.plain(frequencyHz) + " Hz" + signed;
        }
    }

    public HungWeights {
        readings = List.copyOf(readings);
    }

    /// {@return whether this text holds readings that tell how the belt sounds}
    public static boolean tell(String text) {
        return !text.isBlank() && parse(text).tell();
    }

    /// {@return the text with one more reading behind it}
    ///
    /// @throws Refusal if that was taken on a span of another length, is there already, or contradicts the rest
    public static String added(String text, double spanMm, Reading reading) {
        if (text.isBlank()) {
            return "span " + Numbers.plain(spanMm) + " mm: " + reading;
        }
        var before = parse(text);
        if (before.spanMm != spanMm) {
            throw new Refusal(
                    "spanMm",
                    "the readings before were taken on " + Numbers.plain(before.spanMm) + " mm",
                    "one length of span for all readings of a belt",
                    "pluck that span, or empty the belt's hungWeights and begin again");
        }
        if (before.readings.contains(reading)) {
            throw new Refusal(
                    "hungWeights",
                    "'" + reading + "' is recorded already",
                    "each reading once",
                    "leave it as it is recorded");
        }
        var longer = text.strip() + ", " + reading;
        parse(longer);
        return longer;
    }

    /// @throws Refusal if the text does not read as a span, pulls and frequencies
    public static HungWeights parse(String text) {
        var whole = WHOLE.matcher(text.strip());
        if (!whole.matches()) {
            throw refused("'" + text + "' cannot be read");
        }
        try {
            var readings = new ArrayList<Reading>();
            for (var part : whole.group(2).split(",")) {
                var one = ONE.matcher(part.strip());
                if (!one.matches()) {
                    throw refused("'" + part.strip() + "' cannot be read");
                }
                readings.add(new Reading(
                        Double.parseDouble(one.group(1)),
                        Double.parseDouble(one.group(2)),
                        Signed.of("hungWeights", one.group(3), one.group(4))));
            }
            double span = Double.parseDouble(whole.group(1));
            if (!(span > 0) || readings.stream().anyMatch(r -> !(r.tensionN > 0 && r.frequencyHz > 0))) {
                throw refused("a number is not above 0");
            }
            var read = new HungWeights(span, readings);
            if (read.tell() && !read.rises()) {
                throw new Refusal(
                        "hungWeights",
                        "the sound does not rise with the pull",
                        "readings in which a harder pull sounds higher",
                        "check each reading, and take out the one that is wrong");
            }
            return read;
        } catch (NumberFormatException e) {
            throw refused("'" + text + "' holds something that is no number");
        }
    }

    private static Refusal refused(String what) {
        return new Refusal("hungWeights", what, ALLOWED, "write it like that");
    }

    /// {@return whether two pulls and two sounds are there, which is what a line takes}
    public boolean tell() {
        return lacking() == 0;
    }

    /// {@return how many more different pulls it takes}
    public int lacking() {
        long pulls = readings.stream().map(Reading::tensionN).distinct().count();
        long sounds = readings.stream().map(Reading::frequencyHz).distinct().count();
        return (int) Math.max(0, ENOUGH - Math.min(pulls, sounds));
    }

    private boolean rises() {
        double pull = readings.stream().mapToDouble(Reading::tensionN).average().orElseThrow();
        return readings.stream()
                        .mapToDouble(r -> (r.tensionN - pull) * r.frequencyHz * r.frequencyHz)
                        .sum()
                > 0;
    }

    /// {@return least pull that was hung (N)}
    public double leastN() {
        return readings.stream().mapToDouble(Reading::tensionN).min().orElseThrow();
    }

    /// {@return greatest pull that was hung (N)}
    public double mostN() {
        return readings.stream().mapToDouble(Reading::tensionN).max().orElseThrow();
    }

    @Override
    public String toString() {
        return readings.size() + " hung weights on " + Numbers.plain(spanMm) + " mm";
    }
}
