package beltwright.workshop.document;

import beltwright.part.Field;
import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Unit;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/// One field of a record as it is typed: its name, its type, what it means and which values can be true.
record FieldForm(
        String name,
        Class<?> type,
        String meaning,
        double min,
        double max,
        When when,
        boolean optional,
        String within,
        Field.Group group) {
    private static final Pattern WHOLE_NUMBER = Pattern.compile("[+-]?[0-9]{1,9}");
    private static final List<String> TRUTH = List.of("true", "false");

    static FieldForm of(RecordComponent component) {
        var field = Optional.ofNullable(component.getAnnotation(Field.class));
        var words = component.getName().replaceAll("(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return new FieldForm(
                component.getName(),
                component.getType(),
                field.map(Field::value).orElse(words),
                field.map(Field::min).orElse(Double.NEGATIVE_INFINITY),
                field.map(Field::max).orElse(Double.POSITIVE_INFINITY),
                When.parse(field.map(Field::when).orElse("")),
                component.getName().equals("note") || field.map(Field::optional).orElse(false),
                field.map(Field::within).orElse(""),
                field.map(Field::group).orElse(Field.Group.FIT));
    }

    FieldForm(String name, Class<?> type, String meaning, double min, double max) {
        this(name, type, meaning, min, max, When.ALWAYS, name.equals("note"), "", Field.Group.FIT);
    }

    /// {@return what stands in a field that was left out because there is nothing to measure}
    @Nullable
    Object nothing(String path, Provenance usual) {
        if (dimension()) {
            return Dimension.unknown(path, usual);
        }
        if (type == int.class) {
            return (int) Math.max(0, min);
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return type == String.class ? "" : null;
    }

    boolean nested() {
        return type.isRecord() && !dimension();
    }

    boolean dimension() {
        return type == Dimension.class;
    }

    boolean optionalText() {
        return type == String.class && optional;
    }

    /// {@return the words to choose from, empty where any text or number can be typed}
    List<String> choices() {
        if (type == boolean.class) {
            return TRUTH;
        }
        return type.isEnum()
                ? Arrays.stream(type.getEnumConstants()).map(Object::toString).toList()
                : List.of();
    }

    /// {@return meaning and, for a number, its range: what an error says is allowed}
    String allowed() {
        if (!choices().isEmpty()) {
            return "one of " + String.join(", ", choices());
        }
        if (dimension() || type == int.class) {
            var unit = Unit.of(name).symbol();
            return (type == int.class ? "a whole number, " : "") + Numbers.plain(min) + " to " + Numbers.plain(max)
                    + (unit.isEmpty() ? "" : " " + unit) + ": " + meaning;
        }
        return meaning;
    }

    /// {@return the value typed, or null when it was refused; the scope then holds the mistake}
    @Nullable
    Object read(Scope at, Node node, Provenance usual) {
        at.seen(node);
        if (nested()) {
            var form = RecordForm.of(type);
            var fields = at.fields(node, "the fields " + String.join(", ", form.names()));
            return fields == null ? null : form.read(at, fields, usual, Map.of());
        }
        if (dimension()) {
            return dimension(at, node, usual);
        }
        if (optionalText() && node instanceof Node.Text note && note.text().isBlank()) {
            return "";
        }
        var text = at.text(node, allowed());
        if (text == null) {
            return null;
        }
        if (type == int.class) {
            return wholeNumber(at, text, node.line());
        }
        if (type == boolean.class || type.isEnum()) {
            return chosen(at, text, node.line());
        }
        return text;
    }

    private @Nullable Object chosen(Scope at, String text, int line) {
        int index = choices().indexOf(text);
        if (index < 0) {
            at.mistake(line, "'" + text + "' is not known", allowed(), Scope.Nearest.mend(text, choices()));
            return null;
        }
        return type.isEnum() ? type.getEnumConstants()[index] : Boolean.valueOf(text);
    }

    private @Nullable Integer wholeNumber(Scope at, String text, int line) {
        if (!WHOLE_NUMBER.matcher(text).matches()) {
            at.mistake(line, "'" + text + "' is not a whole number", allowed(), "type the number of pieces");
            return null;
        }
        int value = Integer.parseInt(text);
        return inRange(at, value, text, line) ? Integer.valueOf(value) : null;
    }

    /// Reads `63 ±0.2`, or `{value: 63 ±0.2, source: measured, ...}` where the source is not the usual one.
    private @Nullable Dimension dimension(Scope at, Node node, Provenance usual) {
        if (node instanceof Node.Fields fields) {
            at.refuseOthers(fields, List.of("value", "source"));
            var value = at.required(fields, "value", DimensionText.ALLOWED);
            var source = fields.fields().get("source");
            var own = source == null ? usual : provenance(at.in("source"), source);
            return value == null || own == null ? null : dimension(at, at.text(value, allowed()), value.line(), own);
        }
        return dimension(at, at.text(node, allowed()), node.line(), usual);
    }

    @Nullable
    Dimension dimension(Scope at, @Nullable String text, int line, Provenance provenance) {
        if (text == null) {
            return null;
        }
        try {
            var d = DimensionText.parse(at.field(), text, provenance);
            return !d.known() || inRange(at, d.nominal(), text, line) ? d : null;
        } catch (Refusal r) {
            at.refused(line, r);
            return null;
        }
    }

    static @Nullable Provenance provenance(Scope at, Node node) {
        var text = at.text(node, "where the number was read, for example 'measured, caliper'");
        try {
            return text == null ? null : Provenance.parse(text);
        } catch (Refusal r) {
            at.refused(node.line(), r);
            return null;
        }
    }

    boolean canBe(double value) {
        return value >= min && value <= max;
    }

    private boolean inRange(Scope at, double value, String text, int line) {
        if (canBe(value)) {
            return true;
        }
        at.mistake(
                line, "'" + text + "' cannot be true of a real one", allowed(), "check the unit and the decimal point");
        return false;
    }

    /// {@return how a value of this field is written}
    Node write(Object value, Provenance usual) {
        if (nested()) {
            return new Node.Fields(RecordForm.of(type).write(value, usual), 0);
        }
        if (!(value instanceof Dimension d)) {
            return new Node.Text(value.toString());
        }
        if (d.provenance().equals(usual)) {
            return new Node.Text(d.text());
        }
        var own = new LinkedHashMap<String, Node>();
        own.put("value", new Node.Text(d.text()));
        own.put("source", new Node.Text(d.provenance().words()));
        return new Node.Fields(own, 0);
    }
}
