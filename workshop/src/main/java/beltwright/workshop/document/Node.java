package beltwright.workshop.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// A document as a tree of text that remembers its lines; every scalar stays the text that was typed.
sealed interface Node {
    /// {@return the line of the field's name, of the list entry, or of the document's start, counted from 1}
    int line();

    /// @param blockLine where the first line of the text stands, if it was typed as a block under `|`; 0 if it was not
    record Text(String text, int line, int blockLine) implements Node {
        Text(String text, int line) {
            this(text, line, 0);
        }

        Text(String text) {
            this(text, 0);
        }

        /// {@return text to be written as a block, a line of text to a line of the file}
        static Text block(String lines) {
            return new Text(lines, 0, 1);
        }
    }

    record Items(List<Node> items, int line) implements Node {
        public Items {
            items = List.copyOf(items);
        }
    }

    /// Named fields, in the order typed.
    record Fields(SequencedMap<String, Node> fields, int line) implements Node {
        public Fields {
            fields = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(fields));
        }
    }
}
