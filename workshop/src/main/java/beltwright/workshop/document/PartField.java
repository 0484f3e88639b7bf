package beltwright.workshop.document;

import beltwright.part.Field;
import beltwright.quantity.Dimension;
import beltwright.quantity.Unit;
import java.util.List;

/// One field of a kind of part, as a table can give it.
///
/// @param path `rim.faceWidthMm`
/// @param type what it holds
/// @param meaning what is measured, and from where to where
/// @param allowed what an error says is allowed
/// @param required whether every part must say it
/// @param choices the values to choose from, empty where any text or number can be typed
/// @param group what reads it
/// @param when which other field says whether there is anything to measure: `shaftForm=D`; empty for always
public record PartField(
        String path,
        Class<?> type,
        String meaning,
        String allowed,
        boolean required,
        List<String> choices,
        Field.Group group,
        String when) {
    public PartField {
        choices = List.copyOf(choices);
    }

    static PartField of(String path, FieldForm form) {
        boolean required = !form.dimension() && !form.optional() && form.when() == When.ALWAYS;
        var inside = path.substring(0, path.lastIndexOf('.') + 1);
        return new PartField(
                path,
                form.type(),
                form.meaning(),
                form.allowed(),
                required,
                form.choices(),
                form.group(),
                form.when() == When.ALWAYS ? "" : inside + form.when());
    }

    public boolean dimension() {
        return type == Dimension.class;
    }

    /// {@return whether it is kept to the letter, blanks included}
    public boolean text() {
        return type == String.class;
    }

    /// {@return the unit of a dimension; none for what is not one}
    public Unit unit() {
        return dimension() ? Unit.of(path) : Unit.NONE;
    }

    public boolean length() {
        return unit() == Unit.MM;
    }
}
