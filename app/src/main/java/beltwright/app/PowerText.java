package beltwright.app;

import static beltwright.app.Typesetting.hanging;

import beltwright.kit.Kit;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import beltwright.ride.LimitSheet;
import beltwright.ride.PowerSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/// A power sheet as a terminal shows it, in three parts that can be asked for alone.
final class PowerText {
    private static final double KMH = 3.6; // km/h in a metre each second
    private static final int EVERY = 4; // of the points of the sheet: a metre each second

    static final String BRAKE_CAUTION =
            "No electric brake is a parking brake, and none is sure: it is gone with a belt, a wire, the pack or the radio"
                    + " link. The foot brake is counted nowhere here; whoever rides this board must be able to stop with it.";
    static final String FULL_CAUTION =
            "A full pack takes nothing back: do not start a descent on it. Where the protection board disconnects, the"
                    + " brake is gone at once.";
    static final String SPEED_CAUTION =
            "Top speed is what the drive reaches, not what can be ridden or stopped safely. Read the way to a stop beside it.";
    static final String HEAT_CAUTION =
            "A can that is too hot to touch burns skin. Magnets that were too hot once stay weaker, and the numbers here no"
                    + " longer hold.";
    static final String LAW_CAUTION =
            "What may be ridden, where and how fast differs from place to place: find out before riding on a public way.";

    private final PowerSheet sheet;
    private final int columns;

    PowerText(PowerSheet sheet, int columns) {
        this.sheet = sheet;
        this.columns = columns;
    }

    List<String> all() {
        return sheet.needs().isEmpty()
                ? joined(List.of(title("Power"), answers(), brakes(), limits(), rests()))
                : missing();
    }

    List<String> brakesAlone() {
        return sheet.needs().isEmpty() ? joined(List.of(title("Brakes"), forces(), brakes(), rests())) : missing();
    }

    List<String> limitsAlone() {
        return sheet.needs().isEmpty() ? joined(List.of(title("Limits to set"), limits(), rests())) : missing();
    }

    private List<String> missing() {
        return joined(List.of(title("Power"), needs(sheet.needs(), columns), rests()));
    }

    /// {@return what is missing, and what to do about it}
    static List<String> needs(List<String> needs, int columns) {
        var lines = new ArrayList<String>();
        lines.addAll(hanging("⬚ ", "cannot tell: needs " + String.join(", ", needs), columns));
        lines.addAll(hanging(
                "→ ", "enter them; a rule of thumb stands in for some where --no-estimates is left out", columns));
        return lines;
    }

    static String named(Kit kit) {
        var draft = kit.draft();
        return draft.name() + " (" + draft.id() + ")" + (draft.invented() ? ", invented" : "");
    }

    private List<String> title(String what) {
        return hanging("", what + ": " + named(sheet.kit()), columns);
    }

    static List<String> joined(List<List<String>> parts) {
        var lines = new ArrayList<String>();
        for (var part : parts) {
            if (!part.isEmpty() && !lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(part);
        }
        return lines;
    }

    private List<String> answers() {
        var lines = new ArrayList<String>();
        for (var a : sheet.answers()) {
            lines.addAll(hanging("", a.name() + ": " + value(a.value(), a.unit()), columns));
            lines.addAll(hanging("  ", a.under(), columns));
            if (!a.governs().isEmpty()) {
                lines.addAll(hanging("  ", "governed by: " + a.governs(), columns));
            }
        }
        lines.addAll(caution(SPEED_CAUTION));
        lines.addAll(caution(HEAT_CAUTION));
        return lines;
    }

    private List<String> caution(String words) {
        return hanging("! ", words, columns);
    }

    /// {@return a value with its worst case, to as many digits as that allows}
    static String value(Range range, String unit) {
        double value = range.nominal();
        if (Double.isNaN(value)) {
            return "none: cannot be ridden so";
        }
        if (Double.isInfinite(value)) {
            return "no end";
        }
        var text = Numbers.within(value, range.low(), range.high());
        boolean limits = range.high() > range.low();
        return text
                + (limits ? " (" + edge(range.low(), range) + " to " + edge(range.high(), range) + ")" : "")
                + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String edge(double value, Range range) {
        return Double.isFinite(value)
                ? Numbers.within(value, range.low(), range.high())
                : Numbers.significant(value, 3);
    }

    /// The hardest braking over speed, a column for each charge.
    private List<String> forces() {
        var heads = Stream.concat(
                Stream.of("km/h"), sheet.braking().stream().map(c -> Numbers.significant(100 * c.charge(), 3) + " %"));
        var table = new TableText(heads.toArray(String[]::new));
        for (int i = 0; i < sheet.curve().size(); i += EVERY) {
            int point = i;
            table.row(Stream.concat(
                            Stream.of(Numbers.fixed(KMH * sheet.curve().get(i).speedMps(), 1)),
                            sheet.braking().stream()
                                    .map(c ->
                                            Numbers.fixed(-c.points().get(point).pushN(), 0)))
                    .toList());
        }
        var lines = new ArrayList<String>(
                hanging("", "Hardest electric braking (N) over speed, by how full the pack is", columns));
        lines.addAll(table.lines(columns));
        return lines;
    }

    private List<String> brakes() {
        var stops = new TableText("from km/h", "way m", "with reaction m", "s", "pack full: way m", "held back by");
        for (var row : sheet.stops()) {
            var usual = row.usual();
            var full = row.packFull();
            var why = usual.governs() == full.governs()
                    ? usual.governs().toString()
                    : usual.governs() + "; full: " + full.governs();
            stops.row(
                    Numbers.fixed(KMH * usual.speedMps(), 1),
                    metres(usual.wayM()),
                    metres(usual.wholeM()),
                    metres(usual.timeS()),
                    metres(full.wayM()),
                    why);
        }
        var left = new TableText("what", "m/s² at 10 km/h", "at cruise", "way m", "with reaction m", "held back by");
        for (var row : sheet.left()) {
            left.row(
                    row.what(),
                    Numbers.fixed(row.slow(), 2),
                    Numbers.fixed(row.cruise(), 2),
                    metres(row.stop().wayM()),
                    metres(row.stop().wholeM()),
                    row.governs() + (row.note().isEmpty() ? "" : "; " + row.note()));
        }
        var lines =
                new ArrayList<String>(hanging("", "Stops on level, dry ground with the electric brake alone", columns));
        lines.addAll(stops.lines(columns));
        lines.add("");
        lines.addAll(hanging("", "What is left of the brake, and the way to a stop from cruise", columns));
        lines.addAll(left.lines(columns));
        lines.addAll(caution(BRAKE_CAUTION));
        lines.addAll(caution(FULL_CAUTION));
        return lines;
    }

    private static String metres(double value) {
        return Numbers.fixed(value, 1);
    }

    private List<String> limits() {
        var table = new TableText("Limit to set", "value", "stated", "spares", "reason");
        for (var row : sheet.limits()) {
            var unit = row.unit().isEmpty() ? "" : " " + row.unit();
            table.row(
                    row.name(),
                    Numbers.significant(row.value(), 6) + unit,
                    Double.isNaN(row.stated()) ? "" : Numbers.significant(row.stated(), 6) + unit,
                    row.protects(),
                    row.reason());
        }
        var lines = new ArrayList<String>(table.lines(columns));
        lines.addAll(hanging(
                "", "Amperes are as this controller states them; 'stated' is what its data sheet allows.", columns));
        lines.add("");
        lines.addAll(hanging("", "Then try, in this order", columns));
        var tests = LimitSheet.benchTests(sheet.limits());
        IntStream.range(0, tests.size())
                .forEach(i -> lines.addAll(hanging("  " + (i + 1) + ". ", tests.get(i), columns)));
        lines.addAll(caution(LAW_CAUTION));
        return lines;
    }

    private List<String> rests() {
        return rests(sheet.notes(), sheet.estimates(), columns);
    }

    /// {@return notes on how the kit was taken, and the estimates under the numbers}
    static List<String> rests(List<String> notes, List<String> estimates, int columns) {
        var lines = new ArrayList<String>();
        notes.forEach(note -> lines.addAll(hanging("note: ", note, columns)));
        if (!estimates.isEmpty()) {
            lines.addAll(hanging(
                    "",
                    "Rests on " + estimates.size() + " estimates; a measured value takes the place of each:",
                    columns));
            estimates.forEach(e -> lines.addAll(hanging("  ", e, columns)));
        }
        return lines;
    }
}
