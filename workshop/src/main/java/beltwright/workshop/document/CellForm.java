package beltwright.workshop.document;

import beltwright.part.Cell;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// A cell of the reference file: name, curve and its source, fall of resistance with warmth and its source.
final class CellForm {
    private static final List<String> NAMES = List.of("name", "curve", "source", "activationK", "warmthSource");
    private static final String CURVE = "charge and voltage (V) of each point, '0 2.50, 0.1 3.15, 1 4.18'";

    private CellForm() {}

    static @Nullable Cell read(Scope at, String id, Node node) {
        var typed = at.fields(node, String.join(", ", NAMES));
        if (typed == null) {
            return null;
        }
        at.refuseOthers(typed, NAMES);
        var name = ReferenceFile.text(at, typed, "name", "what people call it");
        var curve = ReferenceFile.text(at, typed, "curve", CURVE);
        var source = ReferenceFile.text(at, typed, "source", "where the curve was read, or 'from memory'");
        var activation = ReferenceFile.text(at, typed, "activationK", "activation temperature (K), or 'unknown'");
        var warmth = ReferenceFile.text(at, typed, "warmthSource", "where that was read, or 'from memory'");
        if (name == null || curve == null || source == null || activation == null || warmth == null) {
            return null;
        }
        try {
            var points = new ArrayList<Cell.Point>();
            for (var pair : curve.split(",")) {
                var numbers = pair.strip().split(" +");
                points.add(new Cell.Point(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
            }
            double steep = activation.equals("unknown") ? Double.NaN : Double.parseDouble(activation);
            return new Cell(id, name, points, steep, source, warmth);
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            at.in("curve").mistake(node.line(), "a point of curve or activationK is no number", CURVE, "correct it");
            return null;
        } catch (Refusal r) {
            at.refused(node.line(), r);
            return null;
        }
    }
}
