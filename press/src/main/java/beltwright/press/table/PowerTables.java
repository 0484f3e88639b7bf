package beltwright.press.table;

import beltwright.quantity.Numbers;
import beltwright.ride.PowerSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/// The tables of a power sheet.
public final class PowerTables {
    private static final double KMH = 3.6; // km/h in a metre each second
    private static final int EVERY = 4; // of the points of the sheet: a metre each second

    private PowerTables() {}

    /// {@return the hardest braking over speed, a column for each charge}
    public static Table forces(PowerSheet sheet) {
        var heads = Stream.concat(
                        Stream.of("km/h"),
                        sheet.braking().stream().map(c -> Numbers.significant(100 * c.charge(), 3) + " %"))
                .toList();
        var rows = new ArrayList<List<String>>();
        for (int i = 0; i < sheet.curve().size(); i += EVERY) {
            int point = i;
            rows.add(Stream.concat(
                            Stream.of(kmh(sheet.curve().get(i).speedMps())),
                            sheet.braking().stream()
                                    .map(c ->
                                            Numbers.fixed(-c.points().get(point).pushN(), 0)))
                    .toList());
        }
        return new Table(heads, rows);
    }

    /// {@return stops by speed, pack as at the start and pack full}
    public static Table stops(PowerSheet sheet) {
        var rows = new ArrayList<List<String>>();
        for (var row : sheet.stops()) {
            var usual = row.usual();
            var full = row.packFull();
            var why = usual.governs() == full.governs()
                    ? usual.governs().toString()
                    : usual.governs() + "; full: " + full.governs();
            rows.add(List.of(
                    kmh(usual.speedMps()),
                    metres(usual.wayM()),
                    metres(usual.wholeM()),
                    metres(usual.timeS()),
                    metres(full.wayM()),
                    why));
        }
        return new Table(
                List.of("from km/h", "way m", "with reaction m", "s", "pack full m", "held back by"),
                List.of(
                        "from %s km/h",
                        "way %s m", "with reaction %s m", "%s s", "with the pack full way %s m", "held back by: %s"),
                rows);
    }

    /// {@return what is left of the brake when something is not as it should be}
    public static Table left(PowerSheet sheet) {
        var rows = new ArrayList<List<String>>();
        for (var row : sheet.left()) {
            rows.add(List.of(
                    row.what(),
                    Numbers.fixed(row.slow(), 2),
                    Numbers.fixed(row.cruise(), 2),
                    metres(row.stop().wayM()),
                    metres(row.stop().wholeM()),
                    row.governs() + (row.note().isEmpty() ? "" : "; " + row.note())));
        }
        return new Table(
                List.of("what", "m/s² at 10 km/h", "at cruise", "way m", "with reaction m", "held back by"),
                List.of(
                        "%s",
                        "slows down at %s m/s² at 10 km/h",
                        "%s at cruise",
                        "way %s m",
                        "with reaction %s m",
                        "held back by: %s"),
                rows);
    }

    /// {@return the limits to set}
    public static Table limits(PowerSheet sheet) {
        var rows = new ArrayList<List<String>>();
        for (var row : sheet.limits()) {
            var unit = row.unit().isEmpty() ? "" : " " + row.unit();
            rows.add(List.of(
                    row.name(),
                    Numbers.significant(row.value(), 6) + unit,
                    Double.isNaN(row.stated()) ? "" : Numbers.significant(row.stated(), 6) + unit,
                    row.protects(),
                    row.reason()));
        }
        return new Table(
                List.of("Limit to set", "value", "stated", "spares", "reason"),
                List.of("%s", "%s", "stated %s", "spares the %s", "because: %s"),
                rows);
    }

    private static String kmh(double speedMps) {
        return Numbers.fixed(KMH * speedMps, 1);
    }

    private static String metres(double value) {
        return Numbers.fixed(value, 1);
    }
}
