package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/// A belt's own calibration: a span of it loaded with known pulls and plucked. Whatever else a span does, it sounds
/// higher the harder it is pulled, so readings that do not rise are refused: no line through them means anything.
///
/// @param spanMm length of the span that was plucked (mm)
/// @param readings pulls and what was heard, two or more different pulls
public record HungWeights(double spanMm, List<Reading> readings) {
    private static final String ALLOWED =
            "'span 64.5 mm: 50 N 265 Hz, 100 N 355 Hz', two or more different pulls, each heavier one higher";
    private static final String MEND = "write it like that";
    private static final double MOST = 1e6;
    private static final double LEAST = 1e-3;
    private static final Pattern WHOLE = Pattern.compile("span ([0-9.]+) mm: (.+)");
    private static final Pattern ONE = Pattern.compile("([0-9.]+) N ([0-9.]+) Hz");

    /// One pull (N) and the frequency heard (Hz).
    public record Reading(double tensionN, double frequencyHz) {
        @Override
        public String toString() {
            return Numbers.plain(tensionN) + " N " + Numbers.plain(frequencyHz) + " Hz";
        }
    }

    public HungWeights {
        readings = List.copyOf(readings);
    }

    /// {@return whether this text holds a calibration at all}
    public static boolean given(String text) {
        return !text.isBlank();
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
                readings.add(new Reading(Double.parseDouble(one.group(1)), Double.parseDouble(one.group(2))));
            }
            double span = Double.parseDouble(whole.group(1));
            if (readings.stream().map(Reading::tensionN).distinct().count() < 2) {
                throw refused("fewer than two different pulls");
            }
            var numbers = new ArrayList<>(List.of(span));
            readings.forEach(r -> numbers.addAll(List.of(r.tensionN, r.frequencyHz)));
            if (numbers.stream().anyMatch(n -> !(n > 0))) {
                throw refused("a number is not above 0");
            }
            if (numbers.stream().anyMatch(n -> n < LEAST || n > MOST)) {
                throw refused("a number is beyond 0.001 to 1000000");
            }
            rises(readings);
            return new HungWeights(span, readings);
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
