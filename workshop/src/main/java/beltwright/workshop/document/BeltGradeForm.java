package beltwright.workshop.document;

import beltwright.part.BeltGrade;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// A belt grade of the workshop's own in the reference file: the power that its belts carry, by teeth and speed of the
/// smaller pulley.
final class BeltGradeForm {
    private static final List<String> NAMES = List.of("name", "pitchMm", "widthMm", "teeth", "watts", "source");
    private static final String TEETH = "the teeth of each column, rising, '14 16 20'";
    private static final String WATTS =
            "a speed (rpm) and the power (W) of each column, rising, '1000: 470 590 820; 2850: 1040 1320 1830'";

    private BeltGradeForm() {}

    static @Nullable BeltGrade read(Scope at, String id, Node node) {
        var typed = at.fields(node, String.join(", ", NAMES));
        if (typed == null) {
            return null;
        }
        at.refuseOthers(typed, NAMES);
        var name = ReferenceFile.text(at, typed, "name", "what people call it");
        var pitch = ReferenceFile.text(at, typed, "pitchMm", "pitch that the table is for (mm)");
        var width = ReferenceFile.text(at, typed, "widthMm", "width that the table is for (mm)");
        var teeth = ReferenceFile.text(at, typed, "teeth", TEETH);
        var watts = ReferenceFile.text(at, typed, "watts", WATTS);
        var source = ReferenceFile.text(at, typed, "source", "where the table was read");
        if (name == null || pitch == null || width == null || teeth == null || watts == null || source == null) {
            return null;
        }
        try {
            var rpm = new ArrayList<Double>();
            var rows = new ArrayList<List<Double>>();
            for (var row : watts.split(";")) {
                var parts = row.split(":");
                rpm.add(Double.parseDouble(parts[0].strip()));
                rows.add(numbers(parts[1]));
            }
            return new BeltGrade(
                    id, name, Double.parseDouble(pitch), Double.parseDouble(width), numbers(teeth), rpm, rows, source);
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            at.mistake(node.line(), "a number of this table cannot be read", TEETH + "; " + WATTS, "correct it");
        } catch (Refusal r) {
            at.refused(node.line(), r);
        }
        return null;
    }

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.strip().split("[ ,]+")).map(Double::valueOf).toList();
    }
}
