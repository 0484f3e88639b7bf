package beltwright.press.table;

import beltwright.quantity.Numbers;
import beltwright.ride.Calibration;
import java.util.List;

/// What a measured ride tells, each coefficient with its interval.
public final class CalibrationTable {
    private CalibrationTable() {}

    public static Table of(Calibration.Result result) {
        return new Table(
                List.of("Coefficient", "before", "found", "95 % from", "to", "unit"),
                result.found().stream()
                        .map(f -> List.of(
                                f.what().toString(),
                                Numbers.significant(f.before(), 3),
                                Numbers.within(f.value(), f.low(), f.high()),
                                Numbers.within(f.low(), f.low(), f.high()),
                                Numbers.within(f.high(), f.low(), f.high()),
                                f.what().unit()))
                        .toList());
    }

    /// {@return what is left over between measured and computed, in words}
    public static String leftOver(Calibration.Result result) {
        boolean heat = result.found().getFirst().what().heat();
        return Numbers.significant(result.leftOver(), 2) + (heat ? " K" : " m/s") + ", root mean square over "
                + result.rows() + " rows";
    }
}
