package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/// A belt's own calibration: a span of it loaded with known pulls and plucked. Whatever else a span does, it sounds
/// higher the harder it is pulled, so readings that do not rise are refused: no line through them means anything. One
/// pull alone is kept and tells nothing yet.
///
/// @param spanMm length of the span that was plucked (mm)
/// @param readings pulls and what was heard
/// @param lacking how many more different pulls it takes to tell how the belt sounds
public record HungWeights(double spanMm, List<Reading> readings, int lacking) {
    private static final int ENOUGH = 2;
    private static final String ALLOWED =
            "'span 64.5 mm: 50 N 265 Hz, 100 N 355 Hz', each heavier one higher, with who and when in brackets where"
                    + " known: '50 N 265 Hz (workshop 2026-11-20)'";
    private static final String MEND = "write it like that";
    private static final double MOST = 1e6;
    private static final double LEAST = 1e-3;
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

    /// {@return whether these do}
    public boolean tell() {
        return lacking == 0;
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
            var numbers = new ArrayList<>(List.of(span));
            readings.forEach(r -> numbers.addAll(List.of(r.tensionN, r.frequencyHz)));
            if (numbers.stream().anyMatch(n -> !(n > 0))) {
                throw refused("a number is not above 0");
            }
            if (numbers.stream().anyMatch(n -> n < LEAST || n > MOST)) {
                throw refused("a number is beyond 0.001 to 1000000");
            }
            rises(readings);
            long pulls = readings.stream().map(Reading::tensionN).distinct().count();
            return new HungWeights(span, readings, (int) Math.max(0, ENOUGH - pulls));
        } catch (NumberFormatException e) {
            throw refused("'" + text + "' holds something that is no number");
        }
    }

    /// @throws Refusal where a heavier pull does not sound higher than every lighter one; k of a line is above 0 then
    private static void rises(List<Reading> readings) {
        var sorted = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::tensionN).thenComparing(Reading::frequencyHz))
                .toList();
        var highest = sorted.getFirst(); // of the pulls that are lighter
        var last = highest;
        for (var reading : sorted) {
            if (reading.tensionN > last.tensionN) {
                highest = last.frequencyHz > highest.frequencyHz ? last : highest;
                if (!(square(reading) > square(highest))) {
                    throw new Refusal(
                            "hungWeights",
                            "the frequency does not rise with the pull: " + reading + " after " + highest,
                            ALLOWED,
                            "pluck those two again, the same span and its lowest sound");
                }
            }
            last = reading;
        }
    }

    private static double square(Reading reading) {
        return reading.frequencyHz * reading.frequencyHz;
    }

    private static Refusal refused(String what) {
        return new Refusal("hungWeights", what, ALLOWED, MEND);
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
