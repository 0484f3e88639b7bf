package beltwright.workshop.document;

import beltwright.quantity.Refusal;
import java.util.List;
import java.util.Map;

/// What was read from files: the documents that are sound in themselves, and every mistake, in reading order.
public record Reading(List<Typed> documents, List<Mistake> mistakes) {
    public Reading {
        documents = List.copyOf(documents);
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

    /// @throws Refusal naming the first mistake, if there is any
    public List<Document> orRefuse() {
        if (!mistakes.isEmpty()) {
            throw mistakes.getFirst().refusal();
        }
        return documents.stream().map(Typed::document).toList();
    }
}
