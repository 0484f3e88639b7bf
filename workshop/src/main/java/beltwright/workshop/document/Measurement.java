package beltwright.workshop.document;

import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.SortedMap;
import java.util.TreeMap;

/// What was measured on a part, by whom, with what and when.
///
/// Its values are laid over the part as typed whenever the part is used, with the provenance
/// `measured, <with>, <when>`. Where two measurements name the same field, the later `when` wins, then the greater id.
/// The part's own document stays as it was typed; an edit that is tried out wins over any measurement.
///
/// @param of id of the part
/// @param values by the path of the part's field, `diameterMm` or `rim.faceWidthMm`
public record Measurement(
        String id, String of, String by, String with, LocalDate when, SortedMap<String, Dimension> values) {
    /// The order in which measurements are laid over a part: the last one wins.
    public static final Comparator<Measurement> ORDER =
            Comparator.comparing(Measurement::when).thenComparing(Measurement::id);

    public Measurement {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    /// {@return the part with these values in place of its own}
    ///
    /// @throws Refusal if the part has no such dimension
    public Part over(Part part) {
        var form = RecordForm.of(part.getClass());
        for (var path : values.keySet()) {
            var field = form.paths().get(path);
            if (field == null || !field.dimension()) {
                throw new Refusal(
                        id + ".values." + path,
                        "is not a dimension of " + part.id(),
                        String.join(", ", PartForm.dimensions(part.getClass()).keySet()),
                        "name a dimension of a " + part.kind());
            }
        }
        return (Part)
                form.mapped(part, leaf -> values.containsKey(leaf.path()) ? values.get(leaf.path()) : leaf.value());
    }

    static Provenance provenance(String with, LocalDate when) {
        return new Provenance(Source.MEASURED, with + ", " + when);
    }
}
