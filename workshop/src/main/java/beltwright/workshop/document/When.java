package beltwright.workshop.document;

import beltwright.quantity.Dimension;
import java.util.List;
import java.util.Map;

/// When a field of a part has anything to say, by another field of the same part: `shaftForm=D`, `setScrews>1`.
///
/// @param field the other field, empty for always
/// @param words one of which it must be, empty where it is a count
/// @param above the count that it must exceed
record When(String field, List<String> words, int above) {
    static final When ALWAYS = new When("", List.of(), 0);

    static When parse(String text) {
        if (text.isEmpty()) {
            return ALWAYS;
        }
        int equals = text.indexOf('=');
        if (equals > 0) {
            return new When(
                    text.substring(0, equals),
                    List.of(text.substring(equals + 1).split("\\|")),
                    0);
        }
        int above = text.indexOf('>');
        return new When(text.substring(0, above), List.of(), Integer.parseInt(text.substring(above + 1)));
    }

    @Override
    public String toString() {
        return field.isEmpty() ? "" : words.isEmpty() ? field + ">" + above : field + "=" + String.join("|", words);
    }

    /// @param known what the fields before it hold; a dimension meets it where it is known and above
    boolean met(Map<String, ?> known) {
        var value = known.get(field);
        if (field.isEmpty()) {
            return true;
        }
        if (value instanceof Dimension d) {
            return d.known() && d.nominal() > above;
        }
        if (value == null) { // refused: what hangs on it is not asked for as well
            return false;
        }
        return words.isEmpty() ? value instanceof Integer count && count > above : words.contains(value.toString());
    }
}
