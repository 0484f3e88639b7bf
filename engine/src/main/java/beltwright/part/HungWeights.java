package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/// A belt's own calibration: a span of it loaded with known pulls and plucked.
///
/// @param spanMm length of the span that was plucked (mm)
/// @param readings pulls and what was heard, two or more different pulls
public record HungWeights(double spanMm, List<Reading> readings) {
    private static final String ALLOWED = "'span 64.5 mm: 50 N 150 Hz, 100 N 235 Hz', two or more different pulls";
    private static final Pattern WHOLE = Pattern.compile("span ([0-9.]+) mm: (.+)");
    private static final Pattern ONE = Pattern.compile("([0-9.]+) N ([0-9.]+) Hz");

    /// One pull (N) and the frequency heard (Hz).
    public record Reading(double tensionN, double frequencyHz) {}

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
            if (readings.stream().map(Reading::frequencyHz).distinct().count() < 2
                    || readings.stream().map(Reading::tensionN).distinct().count() < 2) {
                throw refused("fewer than two different pulls and frequencies");
            }
            if (!(span > 0) || readings.stream().anyMatch(r -> !(r.tensionN > 0 && r.frequencyHz > 0))) {
                throw refused("a number is not above 0");
            }
            return new HungWeights(span, readings);
        } catch (NumberFormatException e) {
            throw refused("'" + text + "' holds something that is no number");
        }
    }

    private static Refusal refused(String what) {
        return new Refusal("hungWeights", what, ALLOWED, "write it like that");
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
