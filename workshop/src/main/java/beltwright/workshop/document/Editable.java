package beltwright.workshop.document;

import java.util.List;

/// One field that can be changed, as a form shows it.
///
/// @param path after the document's id and a dot it names the field in an edit
/// @param meaning what is measured, and from where to where
/// @param unit symbol, empty where there is none
/// @param text the value as typed now
/// @param source where it was read, empty for what is not a dimension
/// @param choices the values to choose from, empty where any text or number can be typed
/// @param idle whether another field says that there is nothing to measure, such as the flat of a round shaft
public record Editable(
        String path, String meaning, String unit, String text, String source, List<String> choices, boolean idle) {
    public Editable {
        choices = List.copyOf(choices);
    }

    /// A field that hangs on no other.
    public Editable(String path, String meaning, String unit, String text, String source, List<String> choices) {
        this(path, meaning, unit, text, source, choices, false);
    }
}
