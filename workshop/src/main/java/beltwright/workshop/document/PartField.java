package beltwright.workshop.document;

import beltwright.quantity.Unit;
import java.util.List;

/// One field of a kind of part, as a table can give it.
///
/// @param path `rim.faceWidthMm`
/// @param meaning what is measured, and from where to where
/// @param allowed what an error says is allowed
/// @param unit of a dimension; none for what is not one
/// @param required whether every part must say it
/// @param text whether it is kept to the letter
/// @param choices the values to choose from, empty where any text or number can be typed
public record PartField(
        String path, String meaning, String allowed, Unit unit, boolean required, boolean text, List<String> choices) {
    public PartField {
        choices = List.copyOf(choices);
    }

    static PartField of(String path, FieldForm form) {
        return new PartField(
                path,
                form.meaning(),
                form.allowed(),
                form.dimension() ? Unit.of(form.name()) : Unit.NONE,
                !form.dimension() && !form.optionalText(),
                form.type() == String.class,
                form.choices());
    }
}
