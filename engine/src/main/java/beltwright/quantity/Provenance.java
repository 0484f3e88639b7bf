package beltwright.quantity;

import java.util.Locale;
import java.util.Objects;

/// Where a number was read: the kind of source, and a free note such as "caliper, 2026-10-02".
public record Provenance(Source source, String note) {
    public Provenance {
        Objects.requireNonNull(source);
        note = note.strip();
    }

    /// Reads `measured, caliper, 2026-10-02`: the source first, then whatever the reader should know. A text that
    /// begins
    /// otherwise is a note as a whole, and its source is the first that it says anywhere, as [Source] orders them:
    /// `customer's wheels, caliper` was measured, `customer on the phone` was said by a customer.
    ///
    /// @throws Refusal if it says no source
    public static Provenance parse(String typed) {
        var text = typed.strip();
        var begins = text.split(",", 2);
        var first = Source.named(begins[0].strip().toLowerCase(Locale.ROOT));
        if (first.isPresent()) {
            return new Provenance(first.get(), begins.length == 1 ? "" : begins[1]);
        }
        return Source.saidIn(text)
                .map(source -> new Provenance(source, text))
                .orElseThrow(() -> new Refusal(
                        "source",
                        "'" + text + "' names no source",
                        "one of " + Source.allowed() + ", then a comma and a note; or what it was measured with",
                        "write for example 'measured, caliper'"));
    }

    public String words() {
        return note.isEmpty() ? source.words() : source.words() + ", " + note;
    }
}
