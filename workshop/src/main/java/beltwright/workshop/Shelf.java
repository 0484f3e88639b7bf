package beltwright.workshop;

import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.quantity.Refusal;
import beltwright.ride.Log;
import beltwright.ride.Route;
import beltwright.workshop.document.Changes;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Editable;
import beltwright.workshop.document.Measurement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/// The parts at hand, the kits made of them, what was measured, where to ride and what was ridden. It never changes: an
/// edit gives another shelf.
///
/// Parts and kits are as they are used: measurements are laid over them in the order of [Measurement#ORDER], edits over
/// those.
///
/// @param measurements in the order in which they were laid over parts and kits
/// @param reference the materials that parts may name
public record Shelf(
        SortedMap<String, Part> parts,
        SortedMap<String, KitDraft> drafts,
        List<Measurement> measurements,
        SortedMap<String, Route> routes,
        SortedMap<String, Log> logs,
        Reference reference) {

    public Shelf {
        parts = Collections.unmodifiableSortedMap(new TreeMap<>(parts));
        drafts = Collections.unmodifiableSortedMap(new TreeMap<>(drafts));
        measurements = List.copyOf(measurements);
        routes = Collections.unmodifiableSortedMap(new TreeMap<>(routes));
        logs = Collections.unmodifiableSortedMap(new TreeMap<>(logs));
    }

    /// @throws Refusal if a measurement does not fit what it measured
    public static Shelf of(Collection<? extends Document> documents, Reference reference) {
        var parts = new TreeMap<String, Part>();
        var drafts = new TreeMap<String, KitDraft>();
        var measurements = new ArrayList<Measurement>();
        var routes = new TreeMap<String, Route>();
        var logs = new TreeMap<String, Log>();
        for (var document : documents) {
            switch (document) {
                case Document.OfPart(var part) -> parts.put(part.id(), part);
                case Document.OfKit(var kit) -> drafts.put(kit.id(), kit);
                case Document.OfMeasurement(var measurement) -> measurements.add(measurement);
                case Document.OfRoute(var route) -> routes.put(route.id(), route);
                case Document.OfLog(var log) -> logs.put(log.id(), log);
            }
        }
        measurements.sort(Measurement.ORDER);
        for (var measurement : measurements) {
            if (drafts.computeIfPresent(measurement.of(), (id, kit) -> measurement.over(kit)) == null) {
                parts.put(measurement.of(), measurement.over(found(parts, "part", measurement.of())));
            }
        }
        return new Shelf(parts, drafts, measurements, routes, logs, reference);
    }

    /// @throws Refusal if there is no such part
    public Part part(String id) {
        return found(parts, "part", id);
    }

    /// @throws Refusal if there is no such route
    public Route route(String id) {
        return found(routes, "route", id);
    }

    /// @throws Refusal if there is no such log
    public Log log(String id) {
        return found(logs, "log", id);
    }

    /// @throws Refusal if there is no such kit
    public KitDraft draft(String id) {
        return found(drafts, "kit", id);
    }

    /// {@return the kit resolved with the parts of this shelf}
    ///
    /// @throws Refusal if there is no such kit, or something keeps it from being one
    public Kit kit(String id) {
        return Kit.resolve(draft(id), this::part, reference);
    }

    /// {@return the shelf as it would be with these edits, made one after the other}
    ///
    /// @throws Refusal if an edit names no field of a part or kit here, or its value cannot be true
    public Shelf with(List<Edit> edits) {
        var changedParts = new TreeMap<>(parts);
        var changedDrafts = new TreeMap<>(drafts);
        for (var edit : edits) {
            if (changedParts.computeIfPresent(
                                    edit.document(), (id, part) -> Changes.changed(part, edit.path(), edit.value()))
                            == null
                    && changedDrafts.computeIfPresent(
                                    edit.document(), (id, kit) -> Changes.changed(kit, edit.path(), edit.value()))
                            == null) {
                throw unknown(edit.document());
            }
        }
        return new Shelf(changedParts, changedDrafts, measurements, routes, logs, reference);
    }

    /// {@return the shelf with every dimension whose source is an estimate forgotten}
    public Shelf withoutEstimates() {
        return new Shelf(
                each(parts, Changes::withoutEstimates),
                each(drafts, Changes::withoutEstimates),
                measurements,
                routes,
                logs,
                reference.withoutEstimates());
    }

    private static <T> SortedMap<String, T> each(SortedMap<String, T> things, UnaryOperator<T> change) {
        var changed = new TreeMap<>(things);
        changed.replaceAll((id, thing) -> change.apply(thing));
        return changed;
    }

    /// {@return the fields of a part or a kit that an edit can change}
    ///
    /// @throws Refusal if there is no such document
    public List<Editable> editable(String document) {
        var part = parts.get(document);
        if (part != null) {
            return Changes.fields(part);
        }
        var draft = drafts.get(document);
        if (draft != null) {
            return Changes.fields(draft, parts.values());
        }
        throw unknown(document);
    }

    private Refusal unknown(String document) {
        boolean measured = measurements.stream().anyMatch(m -> m.id().equals(document));
        boolean ridden = routes.containsKey(document) || logs.containsKey(document);
        return new Refusal(
                document,
                measured
                        ? "is a measurement, the record of what was read"
                        : ridden ? "is a route or a log, which no edit changes" : "is neither a part nor a kit here",
                "kits " + String.join(", ", drafts.keySet()) + "; parts " + String.join(", ", parts.keySet()),
                measured ? "edit what was measured" : "name one of these before the first dot");
    }

    private static <T> T found(SortedMap<String, T> things, String what, String id) {
        var thing = things.get(id);
        if (thing == null) {
            throw new Refusal(
                    "",
                    "no " + what + " has the id '" + id + "'",
                    things.isEmpty() ? "none: there is no " + what + " yet" : String.join(", ", things.keySet()),
                    things.isEmpty() ? "import a folder first" : "use one of these");
        }
        return thing;
    }
}
