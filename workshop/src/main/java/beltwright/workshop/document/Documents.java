package beltwright.workshop.document;

import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/// What all types of document have in common: schema, id, and which field names the type.
final class Documents {
    /// Stands in while a document without a readable source is read for its other mistakes; never kept.
    static final Provenance NO_SOURCE = new Provenance(Source.ESTIMATE, "");

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");
    static final int LONGEST_ID = 60;

    private Documents() {}

    /// Reads one document of a file.
    ///
    /// @return the document, or null when it had mistakes; the scope then holds them
    static Reading.@Nullable Typed read(Scope file, Node node) {
        int before = file.mistakes().size();
        var typed = file.fields(node, "a document with named fields");
        var type = typed == null ? null : type(file, typed);
        if (typed == null || type == null) {
            return null;
        }
        var idNode = file.required(typed, type.toString(), "an id");
        var id = idNode == null ? null : id(file.in(type.toString()), idNode);
        var at = id == null ? file : file.document(id);
        schema(at, typed);
        Document document = switch (type) {
            case PART -> map(PartForm.read(at, typed), Document.OfPart::new);
            case KIT -> map(KitForm.read(at, typed), Document.OfKit::new);
            case MEASUREMENT -> map(MeasurementForm.read(at, typed), Document.OfMeasurement::new);
            case ROUTE -> map(RouteForm.read(at, typed), Document.OfRoute::new);
            case LOG -> map(LogForm.read(at, typed), Document.OfLog::new);
        };
        return document == null || file.mistakes().size() > before
                ? null
                : new Reading.Typed(document, file.file(), node.line(), at.lines());
    }

    private static <A, B> @Nullable B map(@Nullable A value, Function<A, B> to) {
        return value == null ? null : to.apply(value);
    }

    private static Document.@Nullable Type type(Scope at, Node.Fields typed) {
        var named = named(typed);
        if (named.size() == 1) {
            return named.getFirst();
        }
        at.mistake(
                typed.line(),
                named.isEmpty() ? "names no part, kit, measurement, route or log" : "names more than one of " + named,
                "exactly one of the fields part, kit, measurement, route, log, with an id",
                "start with for example 'schema: 1' and 'part: motor-50'");
        return null;
    }

    /// A log also names the kit that was ridden.
    private static List<Document.Type> named(Node.Fields typed) {
        var names = typed.fields().keySet();
        return Stream.of(Document.Type.values())
                .filter(type -> names.contains(type.toString()))
                .filter(type -> type != Document.Type.KIT || !names.contains(Document.Type.LOG.toString()))
                .toList();
    }

    /// {@return the id that a document gives itself, sound or not}
    static Optional<String> idOf(Node node) {
        return node instanceof Node.Fields typed
                ? named(typed).stream()
                        .map(t -> typed.fields().get(t.toString()))
                        .filter(Node.Text.class::isInstance)
                        .map(n -> ((Node.Text) n).text())
                        .findFirst()
                : Optional.empty();
    }

    static void schema(Scope at, Node.Fields typed) {
        var allowed = "schema: " + Codec.SCHEMA;
        var node = at.required(typed, "schema", allowed);
        var text = node == null ? null : at.in("schema").text(node, allowed);
        if (node != null && text != null && !text.equals(String.valueOf(Codec.SCHEMA))) {
            at.in("schema")
                    .mistake(
                            node.line(),
                            "'" + text + "' is not a schema that this version reads",
                            allowed,
                            "use the version of this program that wrote the file, or correct the number");
        }
    }

    static @Nullable String id(Scope at, Node node) {
        var allowed = "lower-case letters, digits and single hyphens, at most " + LONGEST_ID;
        var text = at.text(node, allowed);
        if (text == null || (ID.matcher(text).matches() && text.length() <= LONGEST_ID)) {
            return text;
        }
        var shown = text.length() > LONGEST_ID ? text.substring(0, LONGEST_ID) + "…" : text;
        at.mistake(node.line(), "'" + shown + "' is not an id", allowed, "write for example 'motor-50'");
        return null;
    }

    static SequencedMap<String, Node> head(Document.Type type, String id) {
        var head = new LinkedHashMap<String, Node>();
        head.put("schema", new Node.Text(String.valueOf(Codec.SCHEMA)));
        head.put(type.toString(), new Node.Text(id));
        return head;
    }

    static Node.Fields only(Node.Fields typed, Collection<String> names) {
        return new Node.Fields(
                typed.fields().entrySet().stream()
                        .filter(e -> names.contains(e.getKey()))
                        .collect(Collectors.toMap(
                                Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new)),
                typed.line());
    }
}
