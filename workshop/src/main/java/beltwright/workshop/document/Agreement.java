package beltwright.workshop.document;

import beltwright.kit.JumpTests;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.part.Belt;
import beltwright.part.HungWeights;
import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SequencedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// What documents must agree on before they are kept together: ids, parts that exist and are of the right kind, fields
/// that were measured, materials and grades that the reference file knows, tests of a belt that read as such.
public final class Agreement {
    private final Reading reading;
    private final Map<String, Document> stored;
    private final Reference reference;
    private final Map<String, Part> parts = new TreeMap<>();
    private final Map<String, KitDraft> kits = new TreeMap<>();
    private final List<Mistake> mistakes = new ArrayList<>();

    private Agreement(Reading reading, Map<String, Document> stored, Reference reference) {
        this.reading = reading;
        this.stored = stored;
        this.reference = reference;
        stored.values().forEach(this::know);
        reading.documents().forEach(typed -> know(typed.document()));
    }

    private void know(Document document) {
        if (document instanceof Document.OfPart(var part)) {
            parts.put(part.id(), part);
        }
        if (document instanceof Document.OfKit(var kit)) {
            kits.put(kit.id(), kit);
        }
    }

    /// Holds what was read against itself and against what is stored already.
    ///
    /// @param stored documents by id; those read would replace them
    /// @param reference the materials that a part may name
    public static List<Mistake> mistakes(Reading reading, Map<String, Document> stored, Reference reference) {
        var agreement = new Agreement(reading, stored, reference);
        agreement.ids();
        reading.uses().forEach(agreement::use);
        reading.documents().forEach(agreement::inside);
        return agreement.mistakes;
    }

    private void ids() {
        var first = new HashMap<String, Reading.Typed>();
        for (var typed : reading.documents()) {
            var other = first.putIfAbsent(typed.document().id(), typed);
            if (other != null) {
                mistakes.add(typed.mistake(
                        "",
                        "the id is used twice, first in " + other.file() + ":" + other.line(),
                        "each id once, over documents of every type",
                        "rename one of the two, or take it out"));
            }
            var before = stored.get(typed.document().id());
            if (before != null && !kind(before).equals(kind(typed.document()))) {
                mistakes.add(typed.mistake(
                        "",
                        "is a " + kind(typed.document()) + ", but a " + kind(before) + " with this id is kept already",
                        "a " + kind(before) + ", or an id of its own",
                        "use another id"));
            }
        }
    }

    private static String kind(Document document) {
        return document instanceof Document.OfPart(var part)
                ? part.kind()
                : document.type().toString();
    }

    private void use(Reading.Use use) {
        var thing = parts.containsKey(use.id()) ? parts.get(use.id()) : kits.get(use.id());
        if (thing == null && !reading.unsound().contains(use.id())) {
            var fit = Stream.concat(parts.entrySet().stream(), kits.entrySet().stream())
                    .filter(entry -> use.takes(entry.getValue()))
                    .map(Map.Entry::getKey)
                    .toList();
            var what = use.types().stream()
                    .map(type -> type == KitDraft.class ? "kit" : "part")
                    .distinct()
                    .collect(Collectors.joining(" or "));
            mistakes.add(new Mistake(
                    use.file(),
                    use.line(),
                    use.field(),
                    "no " + what + " has the id '" + use.id() + "'",
                    fit.isEmpty() ? "the id of a " + what : String.join(", ", fit),
                    Scope.Nearest.mend(use.id(), fit)));
        } else if (thing != null && !use.takes(thing)) {
            boolean kit = use.types().contains(KitDraft.class);
            mistakes.add(new Mistake(
                    use.file(),
                    use.line(),
                    use.field(),
                    "'" + use.id() + "' is a " + (thing instanceof Part part ? part.kind() : "kit"),
                    kit ? "the id of a kit" : "a " + kind(use.types().getFirst()),
                    kit ? "name the kit" : "put a part of that kind into this seat"));
        }
    }

    @SuppressWarnings("unchecked") // a seat takes nothing but parts
    private static String kind(Class<?> type) {
        return Kinds.of((Class<? extends Part>) type).words();
    }

    private void inside(Reading.Typed typed) {
        switch (typed.document()) {
            case Document.OfPart(var part) -> {
                bounds(typed, "", part);
                materials(typed, part);
                if (part instanceof Belt belt) {
                    reads(typed, "grade", belt.grade(), reference::grade);
                    reads(typed, "hungWeights", belt.hungWeights(), HungWeights::parse);
                }
            }
            case Document.OfKit(var kit) -> {
                bounds(typed, "task.", kit.task());
                kit.placements().forEach((side, placement) -> bounds(typed, "placements." + side + ".", placement));
                int before = mistakes.size();
                kit.placements()
                        .forEach((side, placement) -> reads(
                                typed, "placements." + side + ".jumpTests", placement.jumpTests(), JumpTests::parse));
                if (before == mistakes.size()
                        && kit.seats().values().stream().allMatch(f -> parts.containsKey(f.part()))) {
                    resolves(typed, kit);
                }
            }
            case Document.OfMeasurement(var measurement) -> {
                var part = parts.get(measurement.of());
                var kit = kits.get(measurement.of());
                if (part != null) {
                    var what = "a dimension of '" + part.id() + "', a " + part.kind();
                    measured(typed, measurement, PartForm.dimensions(part.getClass()), what);
                } else if (kit != null) {
                    measured(typed, measurement, KitForm.dimensions(), "a number of the task of '" + kit.id() + "'");
                }
            }
            case Document.OfRoute _, Document.OfLog _ -> {
                // a route rests on nothing, and that the kit of a log is there has been asked as for a seat
            }
        }
    }

    private void bounds(Reading.Typed typed, String prefix, Object made) {
        Bounds.of(made).forEach(w -> mistakes.add(typed.mistake(prefix + w.path(), w.wrong(), w.allowed(), w.mend())));
    }

    private void materials(Reading.Typed typed, Part part) {
        for (var leaf : RecordForm.of(part.getClass()).leaves(part)) {
            if (leaf.value() instanceof String material
                    && !material.isBlank()
                    && leaf.path().toLowerCase(Locale.ROOT).endsWith("material")
                    && !reference.materials().containsKey(material)) {
                var known = reference.materials().keySet().stream().sorted().toList();
                mistakes.add(typed.mistake(
                        leaf.path(),
                        "'" + material + "' is not in the reference file",
                        String.join(", ", known),
                        Scope.Nearest.mend(material, known)));
            }
        }
    }

    /// Holds a text with a form of its own against that form.
    private void reads(Reading.Typed typed, String path, String text, Consumer<String> read) {
        if (!text.isBlank()) {
            try {
                read.accept(text);
            } catch (Refusal r) {
                mistakes.add(typed.mistake(path, r.wrong(), r.allowed(), r.mend()));
            }
        }
    }

    private void measured(
            Reading.Typed typed, Measurement measurement, SequencedMap<String, FieldForm> fields, String what) {
        measurement.values().forEach((path, value) -> {
            var field = fields.get(path);
            if (field == null) {
                var names = List.copyOf(fields.keySet());
                mistakes.add(typed.mistake(
                        "values." + path, "is not " + what, String.join(", ", names), Scope.Nearest.mend(path, names)));
            } else if (value.known() && !field.canBe(value.nominal())) {
                mistakes.add(typed.mistake(
                        "values." + path,
                        "'" + value.text() + "' cannot be true of a real one",
                        field.allowed(),
                        "check the unit and the decimal point"));
            } else if (value.known()) {
                Bounds.limits("values." + path, field, value)
                        .ifPresent(w -> mistakes.add(typed.mistake(w.path(), w.wrong(), w.allowed(), w.mend())));
            }
        });
    }

    /// Names what keeps a kit from being one at all, unless a part of it has been named already.
    private void resolves(Reading.Typed typed, KitDraft kit) {
        var wrong = kit.seats().entrySet().stream()
                .anyMatch(e -> !e.getKey()
                        .role()
                        .type()
                        .isInstance(parts.get(e.getValue().part())));
        if (wrong) {
            return;
        }
        try {
            Kit.resolve(kit, id -> Objects.requireNonNull(parts.get(id)), reference);
        } catch (Refusal r) {
            var path = r.where().startsWith("kit " + kit.id() + ".")
                    ? r.where().substring(("kit " + kit.id() + ".").length())
                    : "";
            mistakes.add(typed.mistake(path, r.wrong(), r.allowed(), r.mend()));
        }
    }
}
