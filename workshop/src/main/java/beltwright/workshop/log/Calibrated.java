package beltwright.workshop.log;

import beltwright.kit.Kit;
import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.ride.Calibration;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Measurement;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/// What a calibration leaves in a workshop: a measurement of the kit's task or of its motor, on which later answers
/// rest.
public final class Calibrated {
    private static final int DIGITS = 2;

    private Calibrated() {}

    /// {@return id of what a coefficient is kept with: the kit, or the motor for what warms it}
    public static String of(Kit kit, Calibration.Found found) {
        return found.what().heat() ? kit.drives().getFirst().motor().id() : kit.id();
    }

    /// {@return what was found, as a measurement}
    ///
    /// @param set what was set otherwise than it is kept, as typed: the values hold for that
    /// @throws Refusal if a value cannot be true of a real kit
    public static Measurement measurement(
            String id, Kit kit, Shelf shelf, Calibration.Result result, List<String> set) {
        var log = result.log();
        var of = of(kit, result.found().getFirst());
        var conditions = set.isEmpty() ? "" : ", taken with " + String.join(", ", set);
        var with = log.with() + ", log " + log.id() + conditions + "; limits are the 95 % interval";
        var values = new TreeMap<String, Dimension>();
        for (var found : result.found()) {
            var path = found.what().path();
            try {
                shelf.with(List.of(new Edit(of, path, text(found))));
            } catch (Refusal r) {
                throw new Refusal(
                        log.id(),
                        found.what() + " comes out at " + text(found) + " "
                                + found.what().unit() + ", which cannot be true",
                        r.allowed(),
                        "look at the units of time and speed, and at the slope of the road");
            }
            values.put(
                    path, DimensionText.parse(of + "." + path, text(found), Measurement.provenance(with, log.when())));
        }
        return new Measurement(id, of, log.by(), with, log.when(), values);
    }

    /// {@return fields of this measurement over which a later one lies, each with its id: `task.rollingPercent
    /// (coast-9)`}
    public static List<String> covered(Measurement measurement, Shelf shelf) {
        var covered = new ArrayList<String>();
        for (var other : shelf.measurements()) {
            if (other.of().equals(measurement.of()) && Measurement.ORDER.compare(other, measurement) > 0) {
                measurement.values().keySet().stream()
                        .filter(other.values()::containsKey)
                        .forEach(path -> covered.add(path + " (" + other.id() + ")"));
            }
        }
        return covered;
    }

    /// {@return the value with its 95 % interval as it is typed: `1.432 ±0.051`}
    public static String text(Calibration.Found found) {
        var half = BigDecimal.valueOf(found.halfWidth()).round(new MathContext(DIGITS, RoundingMode.UP));
        int decimals = Math.max(0, half.scale());
        return Numbers.fixed(found.value(), decimals).replace('−', '-') + " ±"
                + half.setScale(decimals, RoundingMode.UP).toPlainString();
    }
}
