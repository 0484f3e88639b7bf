package beltwright.app;

import static beltwright.app.Typesetting.hanging;

import beltwright.kit.Kit;
import beltwright.power.Governs;
import beltwright.press.table.PowerTables;
import beltwright.ride.Caution;
import beltwright.ride.LimitSheet;
import beltwright.ride.PowerSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/// A power sheet as a terminal shows it, in three parts that can be asked for alone.
final class PowerText {
    private final PowerSheet sheet;
    private final int columns;

    PowerText(PowerSheet sheet, int columns) {
        this.sheet = sheet;
        this.columns = columns;
    }

    List<String> all() {
        return sheet.needs().isEmpty()
                ? joined(List.of(
                        title("Power"),
                        answers(),
                        brakes(),
                        titled("Limits to set in the controller", limits()),
                        rests()))
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
            lines.addAll(hanging("", a.name() + ": " + a.text(), columns));
            lines.addAll(hanging("  ", a.under(), columns));
            if (!a.governs().isEmpty()) {
                lines.addAll(hanging("  ", "governed by: " + a.governs(), columns));
            }
        }
        lines.addAll(caution(Caution.SPEED));
        lines.addAll(caution(Caution.HEAT));
        return lines;
    }

    private List<String> caution(Caution words) {
        return hanging("! ", words.toString(), columns);
    }

    /// The hardest braking over speed, a column for each charge.
    private List<String> forces() {
        var lines = new ArrayList<String>(hanging(
                "", "Hardest electric braking (N) over speed, by how full the pack is, rider leaning back", columns));
        lines.addAll(TableText.of(PowerTables.forces(sheet)).lines(columns));
        if (sheet.braking().stream().flatMap(c -> c.points().stream()).anyMatch(p -> p.governs() == Governs.OVER_RUN)) {
            lines.addAll(hanging(
                    "",
                    "Where back-EMF passes the voltage of the pack, the motors brake by themselves, whatever is asked"
                            + " (over-run).",
                    columns));
        }
        return lines;
    }

    private List<String> brakes() {
        var lines =
                new ArrayList<String>(hanging("", "Stops on level, dry ground with the electric brake alone", columns));
        lines.addAll(TableText.of(PowerTables.stops(sheet)).lines(columns));
        lines.addAll(hanging("", PowerTables.stance(sheet), columns));
        lines.add("");
        lines.addAll(hanging("", "What is left of the brake, and the way to a stop from cruise", columns));
        lines.addAll(TableText.of(PowerTables.left(sheet)).lines(columns));
        lines.addAll(caution(Caution.BRAKE));
        lines.addAll(caution(Caution.FULL));
        return lines;
    }

    private List<String> limits() {
        var lines =
                new ArrayList<String>(TableText.of(PowerTables.limits(sheet)).lines(columns));
        lines.addAll(hanging(
                "", "Amperes are as this controller states them; 'stated' is what its data sheet allows.", columns));
        lines.add("");
        lines.addAll(hanging("", "Then try, in this order", columns));
        var tests = LimitSheet.benchTests(sheet.limits());
        IntStream.range(0, tests.size())
                .forEach(i -> lines.addAll(hanging("  " + (i + 1) + ". ", tests.get(i), columns)));
        lines.addAll(caution(Caution.LAW));
        return lines;
    }

    private List<String> titled(String title, List<String> lines) {
        return Stream.concat(hanging("", title, columns).stream(), lines.stream())
                .toList();
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
                    "Rests on " + estimates.size() + (estimates.size() == 1 ? " estimate" : " estimates")
                            + "; a measured value takes the place of each:",
                    columns));
            estimates.forEach(e -> lines.addAll(hanging("  ", e, columns)));
        }
        return lines;
    }
}
