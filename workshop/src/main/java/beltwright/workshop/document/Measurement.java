package beltwright.workshop.document;

import beltwright.kit.KitDraft;
import beltwright.kit.Task;
import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/// What was measured on a part or a kit, by whom, with what and when.
///
/// Its values are laid over the part or the kit as typed whenever it is used, with the provenance
/// `measured, <with>, <when>`. Where two measurements name the same field, the later `when` wins, then the greater id.
/// Its own document stays as it was typed; an edit that is tried out wins over any measurement.
///
/// @param of id of the part or the kit
/// @param values by the path of the field: `diameterMm` or `rim.faceWidthMm` of a part, `task.rollingPercent` of a kit
public record Measurement(
        String id, String of, String by, String with, LocalDate when, SortedMap<String, Dimension> values) {
    /// The order in which measurements are laid over what was measured: the last one wins.
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
        refuseOthers(
                PartForm.dimensions(part.getClass()).keySet(),
                "a dimension of " + part.id(),
                "name a dimension of a " + part.kind());
        return (Part)
                form.mapped(part, leaf -> values.containsKey(leaf.path()) ? values.get(leaf.path()) : leaf.value());
    }

    /// {@return the kit with these values in place of those of its task}
    ///
    /// @throws Refusal if a value is of nothing in the task
    public KitDraft over(KitDraft kit) {
        refuseOthers(KitForm.dimensions().keySet(), "a number of the task of " + kit.id(), "name one of the task");
        var task = RecordForm.of(Task.class).mapped(kit.task(), leaf -> {
            var path = KitForm.TASK + leaf.path();
            return values.containsKey(path) ? values.get(path) : leaf.value();
        });
        return new KitDraft(
                kit.id(), kit.name(), kit.invented(), kit.note(), kit.seats(), kit.joints(), kit.placements(), (Task)
                        task);
    }

    private void refuseOthers(Set<String> paths, String what, String mend) {
        for (var path : values.keySet()) {
            if (!paths.contains(path)) {
                throw new Refusal(id + ".values." + path, "is not " + what, String.join(", ", paths), mend);
            }
        }
    }

    public static Provenance provenance(String with, LocalDate when) {
        return new Provenance(Source.MEASURED, with + ", " + when);
    }
}
