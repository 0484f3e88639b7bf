package beltwright.workshop.document;

import beltwright.kit.KitDraft;
import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Refusal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/// A measurement as a document: of which part or kit, by whom, with what, when, and the values.
final class MeasurementForm {
    private static final List<String> HEAD = List.of("schema", "measurement", "of", "by", "with", "when", "values");

    private MeasurementForm() {}

    static @Nullable Measurement read(Scope at, Node.Fields typed) {
        at.refuseOthers(typed, HEAD);
        var ofNode = at.required(typed, "of", "the id of the part or the kit that was measured");
        var of = ofNode == null ? null : Documents.id(at.in("of"), ofNode);
        if (ofNode != null && of != null) {
            at.in("of").uses(ofNode.line(), of, Part.class, KitDraft.class);
        }
        var by = text(at, typed, "by", "who measured");
        var with = text(at, typed, "with", "what it was measured with, for example 'caliper, 0.02 mm'");
        var whenText = text(at, typed, "when", "a day as year-month-day");
        var when = whenText == null
                ? null
                : day(at.in("when"), whenText, typed.fields().get("when"));
        var values = at.required(typed, "values", "what was read, '{diameterMm: 99.4 ±0.1}'");
        var fields = values == null
                ? null
                : at.in("values").fields(values, "fields of the part or the kit with their values");
        if (of == null || by == null || with == null || when == null || fields == null) {
            return null;
        }
        var read = new TreeMap<String, Dimension>();
        fields.fields().forEach((path, node) -> {
            var inside = at.in("values").in(path);
            inside.seen(node);
            var text = inside.text(node, DimensionText.ALLOWED);
            try {
                if (text != null) {
                    var provenance = Measurement.provenance(with, when);
                    read.put(path, DimensionText.parse(of + "." + path, text, provenance));
                }
            } catch (Refusal r) {
                inside.refused(node.line(), r);
            }
        });
        return new Measurement(at.document(), of, by, with, when, read);
    }

    static @Nullable String text(Scope at, Node.Fields typed, String name, String meaning) {
        var node = at.required(typed, name, meaning);
        return node == null ? null : at.in(name).text(node, meaning);
    }

    static @Nullable LocalDate day(Scope at, String text, @Nullable Node node) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            at.mistake(
                    node == null ? 0 : node.line(),
                    "'" + text + "' is not a day",
                    "year-month-day, for example 2026-10-02",
                    "correct the date");
            return null;
        }
    }

    static SequencedMap<String, Node> write(Measurement m) {
        var typed = Documents.head(Document.Type.MEASUREMENT, m.id());
        typed.put("of", new Node.Text(m.of()));
        typed.put("by", new Node.Text(m.by()));
        typed.put("with", new Node.Text(m.with()));
        typed.put("when", new Node.Text(m.when().toString()));
        var values = new LinkedHashMap<String, Node>();
        m.values().forEach((path, d) -> values.put(path, new Node.Text(d.text())));
        typed.put("values", new Node.Fields(values, 0));
        return typed;
    }
}
