package beltwright.press.table;

import beltwright.quantity.Numbers;
import beltwright.ride.LimitSheet;
import beltwright.ride.PowerSheet;
import java.util.ArrayList;
import java.util.Comparator;
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
                    metres(row.leaningBack().wayM()),
                    why));
        }
        return new Table(
                List.of("from km/h", "way m", "with reaction m", "s", "pack full m", "leaning back m", "held back by"),
                List.of(
                        "from %s km/h",
                        "upright: way %s m",
                        "with reaction %s m",
                        "%s s",
                        "with the pack full way %s m",
                        "leaning back way %s m",
                        "held back by: %s"),
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
                    metres(row.leaningBack().wayM()),
                    row.governs() + (row.note().isEmpty() ? "" : "; " + row.note())));
        }
        return new Table(
                List.of(
                        "what",
                        "m/s² at 10 km/h",
                        "at cruise",
                        "way m",
                        "with reaction m",
                        "leaning back m",
                        "held back by"),
                List.of(
                        "%s",
                        "upright: slows down at %s m/s² at 10 km/h",
                        "%s at cruise",
                        "way %s m",
                        "with reaction %s m",
                        "leaning back way %s m",
                        "held back by: %s"),
                rows);
    }

    /// {@return for which rider the stops and what is left are told}
    public static String stance(PowerSheet sheet) {
        var road = sheet.board().road();
        return "Rider stiff and upright: " + Numbers.fixed(100 * road.upright().drivenBrakingShare(), 0)
                + " % of the weight is then on the driven axle. 'Leaning back' is the way of a rider who keeps "
                + Numbers.fixed(100 * road.drivenBrakingShare(), 0) + " % there while braking.";
    }

    /// Two limits that one thing fades between, as one row: the key of its beginning, of its end, what it is called.
    private static final List<String[]> FADING = List.of(
            new String[] {"cut-back-from", "cut-back-to", "Supply voltage over which the draw fades"},
            new String[] {"winding-from", "winding-to", "Winding temperature over which the current fades"});

    /// Within what they spare: what stops the rider first, then what moves him, then what only wears.
    private static final List<String> ORDER = List.of(
            "lost-link",
            "first-ride-current",
            "first-ride-ramp",
            "first-ride-brake",
            "brake-current",
            "drive-current",
            "winding-from",
            "cut-back-from",
            "most-voltage",
            "charge-current",
            "battery-current",
            "electrical-speed",
            "ratio",
            "pole-pairs",
            "wheel-diameter");

    /// {@return the limits to set, gathered by what they spare}
    public static Table limits(PowerSheet sheet) {
        var ends = FADING.stream().map(f -> f[1]).toList();
        var rows = sheet.limits().stream()
                .filter(row -> !ends.contains(row.key()))
                .sorted(Comparator.comparing(LimitSheet.Row::spares).thenComparing(row -> ORDER.indexOf(row.key())))
                .map(row -> limit(row, sheet.limits()))
                .toList();
        return new Table(
                List.of("spares", "limit to set", "value", "stated", "reason"),
                List.of("%s", "%s", "%s", "stated %s", "because: %s"),
                rows);
    }

    private static List<String> limit(LimitSheet.Row row, List<LimitSheet.Row> all) {
        var spares = row.spares().toString();
        var unit = row.unit().isEmpty() ? "" : " " + row.unit();
        for (var fading : FADING) {
            if (fading[0].equals(row.key())) {
                var end = all.stream()
                        .filter(r -> r.key().equals(fading[1]))
                        .findFirst()
                        .orElseThrow();
                return List.of(
                        spares,
                        fading[2],
                        "from " + number(row.value()) + " to " + number(end.value()) + unit,
                        Double.isNaN(row.stated()) || Double.isNaN(end.stated())
                                ? ""
                                : number(row.stated()) + " to " + number(end.stated()) + unit,
                        "from: " + row.reason() + "; to: " + end.reason());
            }
        }
        return List.of(
                spares,
                row.name(),
                number(row.value()) + unit,
                Double.isNaN(row.stated()) ? "" : number(row.stated()) + unit,
                row.reason());
    }

    private static String number(double value) {
        return Numbers.significant(value, 6);
    }

    private static String kmh(double speedMps) {
        return Numbers.fixed(KMH * speedMps, 1);
    }

    private static String metres(double value) {
        return Numbers.fixed(value, 1);
    }
}
