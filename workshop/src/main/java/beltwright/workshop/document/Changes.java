package beltwright.workshop.document;

import static beltwright.workshop.document.Documents.NO_SOURCE;

import beltwright.kit.KitDraft;
import beltwright.kit.Placement;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.kit.Task;
import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/// What can be changed in a part or a kit, and how: the value is read just as it is in a file.
///
/// A changed dimension keeps its source unless the value brings its own, `{value: 10, source: estimate}`.
public final class Changes {

    private Changes() {}

    /// {@return every field of the part that can be changed}
    public static List<Editable> fields(Part part) {
        return editable("", part);
    }

    /// {@return every field of the kit that can be changed}
    ///
    /// @param shelf the parts that may fill a seat
    public static List<Editable> fields(KitDraft kit, Collection<Part> shelf) {
        var fields = new ArrayList<Editable>();
        fields.add(new Editable("name", KitForm.NAME.meaning(), "", kit.name(), "", List.of()));
        fields.add(new Editable("note", KitForm.NOTE.meaning(), "", kit.note(), "", List.of()));
        new TreeMap<>(kit.seats()).forEach((seat, filling) -> {
            var fit = shelf.stream().filter(seat.role().type()::isInstance).map(Part::id);
            var text = YamlWriter.inline(KitForm.written(filling));
            fields.add(new Editable(
                    "seats." + seat,
                    "the part in this seat",
                    "",
                    text,
                    "",
                    fit.sorted().toList()));
        });
        new TreeMap<>(kit.joints()).forEach((name, joint) -> {
            var text = YamlWriter.inline(KitForm.written(joint));
            fields.add(new Editable("joints." + name, "what is held together, and how", "", text, "", List.of()));
        });
        new TreeMap<>(kit.placements())
                .forEach((side, placement) -> fields.addAll(editable("placements." + side + ".", placement)));
        fields.addAll(editable("task.", kit.task()));
        return fields;
    }

    private static List<Editable> editable(String prefix, Object made) {
        var known = new HashMap<String, Object>(); // a field that is idle itself says nothing to those that hang on it
        return RecordForm.of(made.getClass()).leaves(made).stream()
                .map(leaf -> {
                    var d = leaf.value() instanceof Dimension dimension ? dimension : null;
                    var inside = leaf.path().substring(0, leaf.path().lastIndexOf('.') + 1);
                    var when = leaf.field().when();
                    boolean idle = !when.field().isEmpty()
                            && !when.met(Collections.singletonMap(when.field(), known.get(inside + when.field())));
                    if (!idle) {
                        known.put(leaf.path(), leaf.value());
                    }
                    return new Editable(
                            prefix + leaf.path(),
                            leaf.field().meaning(),
                            d == null ? "" : d.unit().symbol(),
                            d == null ? leaf.value().toString() : d.text(),
                            d == null ? "" : d.provenance().words(),
                            leaf.field().choices(),
                            idle);
                })
                .toList();
    }

    /// {@return the part with one field as typed in `value`}
    ///
    /// @throws Refusal if the part has no such field, or the value cannot be true of it
    public static Part changed(Part part, String path, String value) {
        return (Part) new Change(part.id(), path, value).of(part, "", fields(part));
    }

    /// {@return the kit with one field as typed in `value`}; an empty value takes a seat or a joint out
    ///
    /// @throws Refusal if the kit has no such field, or the value cannot be true of it
    public static KitDraft changed(KitDraft kit, String path, String value) {
        var change = new Change(kit.id(), path, value);
        var fields = fields(kit, List.of());
        var group = path.substring(0, Math.max(path.indexOf('.'), 0));
        var rest = path.substring(path.indexOf('.') + 1);
        var name = kit.name();
        var note = kit.note();
        var seats = kit.seats();
        var joints = kit.joints();
        var placements = kit.placements();
        var task = kit.task();
        switch (group) {
            case "seats" -> {
                var seat = change.read((at, node) -> KitForm.seatName(at, rest, 1));
                seats = with(
                        seats,
                        seat,
                        value.isBlank() ? null : kept(seat, seats.get(seat), value, change.read(KitForm::filling)));
            }
            case "joints" -> {
                var held = seats.keySet();
                joints = with(
                        joints,
                        rest,
                        value.isBlank() ? null : change.read((at, node) -> KitForm.joint(at, rest, node, held)));
            }
            case "placements" -> {
                var side = placements.keySet().stream()
                        .filter(s -> rest.startsWith(s + "."))
                        .findFirst()
                        .orElseThrow(() -> change.unknown(fields));
                var placement = Objects.requireNonNull(placements.get(side));
                placements =
                        with(placements, side, (Placement) change.of(placement, "placements." + side + ".", fields));
            }
            case "task" -> task = (Task) change.of(task, "task.", fields);
            default -> {
                switch (path) {
                    case "name" -> name = (String) change.read((at, node) -> KitForm.NAME.read(at, node, NO_SOURCE));
                    case "note" -> note = (String) change.read((at, node) -> KitForm.NOTE.read(at, node, NO_SOURCE));
                    default -> throw change.unknown(fields);
                }
            }
        }
        return new KitDraft(kit.id(), name, kit.invented(), note, seats, joints, placements, task);
    }

    private static <K extends Comparable<K>, V> SortedMap<K, V> with(Map<K, V> map, K key, @Nullable V value) {
        var changed = new TreeMap<K, V>(map);
        if (value == null) {
            changed.remove(key);
        } else {
            changed.put(key, value);
        }
        return Collections.unmodifiableSortedMap(changed);
    }

    /// One field of one document, and the value typed for it.
    private record Change(String id, String path, String value) {
        Object of(Object made, String prefix, List<Editable> fields) {
            if (fields.stream().noneMatch(f -> f.path().equals(path))) {
                throw unknown(fields);
            }
            var changed = RecordForm.of(made.getClass()).mapped(made, leaf -> {
                if (!path.equals(prefix + leaf.path())) {
                    return leaf.value();
                }
                var usual = leaf.value() instanceof Dimension d ? d.provenance() : NO_SOURCE;
                return read((at, node) -> leaf.field().read(at, node, usual));
            });
            var before = Bounds.of(made);
            for (var wrong : Bounds.of(changed)) {
                if (!before.contains(wrong)) {
                    throw new Refusal(id + "." + prefix + wrong.path(), wrong.wrong(), wrong.allowed(), wrong.mend());
                }
            }
            return changed;
        }

        <T> T read(BiFunction<Scope, Node, @Nullable T> reader) {
            var at = Scope.file("edit").document(id).in(path);
            var read = reader.apply(at, YamlReader.value(at, value));
            if (read == null || !at.mistakes().isEmpty()) {
                throw at.mistakes().getFirst().refusal();
            }
            return read;
        }

        Refusal unknown(List<Editable> fields) {
            var paths = fields.stream().map(Editable::path).toList();
            return new Refusal(
                    id + "." + path,
                    "'" + path + "' is not a field of " + id,
                    String.join(", ", paths),
                    Scope.Nearest.mend(path, paths));
        }
    }

    /// {@return the part with every estimated dimension forgotten}
    public static Part withoutEstimates(Part part) {
        return (Part) forgotten(part);
    }

    /// {@return the kit with every estimated number of its placements and its task forgotten}
    public static KitDraft withoutEstimates(KitDraft kit) {
        var placements = new TreeMap<Side, Placement>();
        kit.placements().forEach((side, placement) -> placements.put(side, (Placement) forgotten(placement)));
        return new KitDraft(
                kit.id(),
                kit.name(),
                kit.invented(),
                kit.note(),
                kit.seats(),
                kit.joints(),
                Collections.unmodifiableSortedMap(placements),
                (Task) forgotten(kit.task()));
    }

    private static Object forgotten(Object made) {
        return RecordForm.of(made.getClass())
                .mapped(
                        made,
                        leaf -> leaf.value() instanceof Dimension d && d.estimated() ? d.forgotten() : leaf.value());
    }

    /// Fasteners named without a count take the place of as many others.
    private static KitDraft.Filling kept(
            SeatName seat, KitDraft.@Nullable Filling before, String value, KitDraft.Filling typed) {
        boolean bare = value.strip().equals(typed.part());
        return before != null && bare && seat.role().fastener()
                ? new KitDraft.Filling(typed.part(), before.count(), before.fromRider())
                : typed;
    }
}
