package beltwright.quantity;

import java.util.Objects;

/// Where a number was read: the kind of source, and a free note such as "caliper, 2026-10-02".
public record Provenance(Source source, String note) {
    public Provenance {
        Objects.requireNonNull(source);
        note = note.strip();
    }

    /// Reads `measured, caliper, 2026-10-02`: the source first, then whatever the reader should know.
    ///
    /// @throws Refusal if the first words name no source
    public static Provenance parse(String text) {
        for (var source : Source.values()) {
            if (text.equals(source.words())) {
                return new Provenance(source, "");
            }
            if (text.startsWith(source.words() + ",")) {
                return new Provenance(
                        source, text.substring(source.words().length() + 1).strip());
            }
        }
        throw new Refusal(
                "source",
                "'" + text + "' names no source",
                "one of " + Source.allowed() + ", then a comma and a note",
                "write for example 'measured, caliper'");
    }

    public String words() {
        return note.isEmpty() ? source.words() : source.words() + ", " + note;
    }
}
