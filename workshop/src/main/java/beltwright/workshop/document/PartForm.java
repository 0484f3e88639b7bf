package beltwright.workshop.document;

import beltwright.part.Kinds;
import beltwright.part.Label;
import beltwright.part.Part;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/// A part as a document: its label and source at the top, its own fields under `dimensions`.
final class PartForm {
    private static final RecordForm LABEL = RecordForm.of(Label.class);
    private static final List<String> HEAD = Stream.of(
                    List.of("schema", "part", "kind"), LABEL.names(), List.of("source", "dimensions"))
            .flatMap(List::stream)
            .toList();

    private PartForm() {}

    static @Nullable Part read(Scope at, Node.Fields typed) {
        at.refuseOthers(typed, HEAD);
        var kind = kind(at, at.required(typed, "kind", Kinds.allowed()));
        var source = at.required(typed, "source", "where the dimensions were read, for example 'data sheet, ...'");
        var usual = source == null ? null : FieldForm.provenance(at.in("source"), source);
        var dimensions =
                typed.fields().getOrDefault("dimensions", new Node.Fields(new LinkedHashMap<>(), typed.line()));
        var fields = at.in("dimensions").fields(dimensions, "the dimensions of this part");
        // With no source the rest is still read, so that its mistakes come out too.
        var assumed = usual == null ? Documents.NO_SOURCE : usual;
        var label = LABEL.read(at, Documents.only(typed, LABEL.names()), assumed, Map.of("id", at.document()));
        if (kind == null || fields == null) {
            return null;
        }
        var given = new LinkedHashMap<String, @Nullable Object>();
        given.put("label", label);
        var part = RecordForm.of(kind.type()).read(at, fields, assumed, given);
        return usual == null ? null : (Part) part;
    }

    /// {@return the fields of this kind that hold a dimension, by path}
    static SequencedMap<String, FieldForm> dimensions(Class<? extends Part> kind) {
        var dimensions = RecordForm.of(kind).paths();
        dimensions.values().removeIf(f -> !f.dimension());
        return dimensions;
    }

    private static @Nullable Kinds kind(Scope at, @Nullable Node node) {
        var inside = at.in("kind");
        var words = node == null ? null : inside.text(node, Kinds.allowed());
        if (node == null || words == null) {
            return null;
        }
        var kind = Kinds.named(words);
        if (kind.isEmpty()) {
            var all = Stream.of(Kinds.values()).map(Kinds::words).toList();
            inside.mistake(
                    node.line(),
                    "'" + words + "' is not a kind of part",
                    Kinds.allowed(),
                    Scope.Nearest.mend(words, all));
        }
        return kind.orElse(null);
    }

    static SequencedMap<String, Node> write(Part part) {
        var form = RecordForm.of(part.getClass());
        var usual = form.usual(part);
        var typed = Documents.head(Document.Type.PART, part.id());
        typed.put("kind", new Node.Text(part.kind()));
        typed.putAll(LABEL.write(part.label(), usual));
        typed.put("source", new Node.Text(usual.words()));
        typed.put("dimensions", new Node.Fields(form.write(part, usual), 0));
        return typed;
    }
}
