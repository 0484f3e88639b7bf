package beltwright.workshop.log;

import beltwright.kit.Kit;
import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.ride.Calibration;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Measurement;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.TreeMap;

/// What a calibration leaves in a workshop: the log, and a measurement of the kit's task or of its motor, on which
/// later
/// answers rest.
public final class Calibrated {
    private static final int DIGITS = 2;

    private Calibrated() {}

    /// {@return log and measurement}
    ///
    /// @param id of the measurement; the log is kept as this with `-log` after it
    public static List<Document> documents(String id, Kit kit, Calibration.Result result) {
        var log = result.log();
        boolean heat = result.found().getFirst().what().heat();
        var of = heat ? kit.drives().getFirst().motor().id() : kit.id();
        var values = new TreeMap<String, Dimension>();
        var with = log.with() + ", log " + log.id();
        for (var found : result.found()) {
            var path = found.what().path();
            values.put(
                    path, DimensionText.parse(of + "." + path, text(found), Measurement.provenance(with, log.when())));
        }
        return List.of(
                new Document.OfLog(log),
                new Document.OfMeasurement(new Measurement(id, of, log.by(), with, log.when(), values)));
    }

    /// {@return the value with its 95 % interval as it is typed: `1.432 ±0.051`}
    public static String text(Calibration.Found found) {
        var half = BigDecimal.valueOf(found.halfWidth()).round(new MathContext(DIGITS, RoundingMode.UP));
        int decimals = Math.max(0, half.scale());
        return Numbers.fixed(found.value(), decimals).replace('−', '-') + " ±"
                + half.setScale(decimals, RoundingMode.UP).toPlainString();
    }
}
