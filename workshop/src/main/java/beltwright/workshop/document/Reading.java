package beltwright.workshop.document;

import beltwright.quantity.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// What was read from files: the documents that are sound in themselves, and every mistake, in reading order.
///
/// @param unsound ids of documents that had mistakes of their own; what names them is not told that they are missing
/// @param uses every place that names a part or a kit, in sound and unsound documents alike
public record Reading(List<Typed> documents, Set<String> unsound, List<Use> uses, List<Mistake> mistakes) {
    public Reading {
        documents = List.copyOf(documents);
        unsound = Set.copyOf(unsound);
        uses = List.copyOf(uses);
        mistakes = mistakes.stream().sorted(Mistake.ORDER).toList();
    }

    /// A document, and where each of its fields was typed.
    ///
    /// @param line of the document's start
    /// @param lines by the path of the field, `seats.left motor`
    public record Typed(Document document, String file, int line, Map<String, Integer> lines) {
        public Typed {
            lines = Map.copyOf(lines);
        }

        /// {@return a mistake of this document that only others bring to light}
        public Mistake mistake(String path, String wrong, String allowed, String mend) {
            var field = path.isEmpty() ? document.id() : document.id() + "." + path;
            return new Mistake(file, lines.getOrDefault(path, line), field, wrong, allowed, mend);
        }
    }

    /// A place that names a part or a kit.
    ///
    /// @param types what it takes: `KitDraft`, `Part`, or one kind of part
    public record Use(String file, int line, String field, String id, List<Class<?>> types) {
        public Use {
            types = List.copyOf(types);
        }

        boolean takes(Object thing) {
            return types.stream().anyMatch(type -> type.isInstance(thing));
        }
    }

    /// {@return what was read from several files as one}
    public static Reading together(List<Reading> readings) {
        return new Reading(
                readings.stream().flatMap(r -> r.documents.stream()).toList(),
                readings.stream().flatMap(r -> r.unsound.stream()).collect(Collectors.toSet()),
                readings.stream().flatMap(r -> r.uses.stream()).toList(),
                readings.stream().flatMap(r -> r.mistakes.stream()).toList());
    }

    /// {@return the same reading with what came to light by holding the documents against each other}
    public Reading and(List<Mistake> more) {
        return new Reading(
                documents,
                unsound,
                uses,
                Stream.concat(mistakes.stream(), more.stream()).toList());
    }

    /// @throws Refusal naming the first mistake, if there is any
    public List<Document> orRefuse() {
        if (!mistakes.isEmpty()) {
            var first = mistakes.getFirst();
            var line = first.file() + ":" + first.line() + ": " + first.field();
            throw new Refusal(line, first.wrong(), first.allowed(), first.mend());
        }
        return sound();
    }

    /// {@return the documents that are sound in themselves}
    public List<Document> sound() {
        return documents.stream().map(Typed::document).toList();
    }
}
