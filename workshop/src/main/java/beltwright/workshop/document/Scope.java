package beltwright.workshop.document;

import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedCollection;
import org.jspecify.annotations.Nullable;

/// Where the reader stands: the file, the document, the path of the field; and the list that mistakes go to.
final class Scope {
    private final String file;
    private final String document;
    private final String path;
    private final Found found;
    private final Map<String, Integer> lines;

    /// What has been found in the whole file so far.
    private record Found(List<Mistake> mistakes, List<Reading.Use> uses) {}

    private Scope(String file, String document, String path, Found found, Map<String, Integer> lines) {
        this.file = file;
        this.document = document;
        this.path = path;
        this.found = found;
        this.lines = lines;
    }

    static Scope file(String file) {
        return new Scope(file, "", "", new Found(new ArrayList<>(), new ArrayList<>()), new HashMap<>());
    }

    /// {@return the scope of one document of the file, with lines of its own}
    Scope document(String id) {
        return new Scope(file, id, "", found, new HashMap<>());
    }

    Scope in(String name) {
        return new Scope(file, document, path.isEmpty() ? name : path + "." + name, found, lines);
    }

    String file() {
        return file;
    }

    String document() {
        return document;
    }

    List<Mistake> mistakes() {
        return found.mistakes();
    }

    List<Reading.Use> uses() {
        return found.uses();
    }

    /// Notes that this place names a part or a kit, of one of these types.
    void uses(int line, String id, Class<?>... types) {
        found.uses().add(new Reading.Use(file, line, field(), id, List.of(types)));
    }

    Map<String, Integer> lines() {
        return lines;
    }

    /// {@return the name of this place in messages and in `Dimension.of`: `pulley-16.rim.faceWidthMm`}
    String field() {
        if (path.isEmpty()) {
            return document.isEmpty() ? "document" : document;
        }
        return document.isEmpty() ? path : document + "." + path;
    }

    /// Remembers the line of this place, so that a later mistake about it can name the line.
    void seen(Node node) {
        lines.put(path, node.line());
    }

    void mistake(int line, String wrong, String allowed, String mend) {
        mistakes().add(new Mistake(file, line, field(), wrong, allowed, mend));
    }

    void refused(int line, Refusal refusal) {
        mistake(line, refusal.wrong(), refusal.allowed(), refusal.mend());
    }

    /// {@return the value of the field here, or null with a mistake where there is none}
    @Nullable
    Node required(Node.Fields in, String name, String meaning) {
        var node = in.fields().get(name);
        if (node == null) {
            in(name).mistake(in.line(), "missing", meaning, "add the field '" + name + "'");
        } else {
            in(name).seen(node);
        }
        return node;
    }

    /// {@return the text here, or null with a mistake where there is a list, nested fields, or nothing}
    @Nullable
    String text(Node node, String allowed) {
        if (node instanceof Node.Text typed) {
            if (!typed.text().isBlank()) {
                return typed.text();
            }
            mistake(typed.line(), "is empty", allowed, "type a value, or take the field out");
            return null;
        }
        mistake(node.line(), "holds nested values where one value is wanted", allowed, "type one value");
        return null;
    }

    Node.@Nullable Fields fields(Node node, String allowed) {
        if (node instanceof Node.Fields fields) {
            return fields;
        }
        mistake(node.line(), "holds no nested fields", allowed, "indent the fields below this line");
        return null;
    }

    @Nullable
    List<Node> items(Node node, String allowed) {
        if (node instanceof Node.Items(List<Node> items, int line)) {
            return items;
        }
        mistake(node.line(), "is not a list", allowed, "write a list, for example '[left motor, left mount]'");
        return null;
    }

    /// Names every field that does not belong here.
    void refuseOthers(Node.Fields fields, SequencedCollection<String> allowed) {
        fields.fields().forEach((name, node) -> {
            if (!allowed.contains(name)) {
                in(name).mistake(
                                node.line(),
                                "is not a field here",
                                String.join(", ", allowed),
                                Nearest.mend(name, allowed));
            }
        });
    }

    /// The name that was probably meant.
    static final class Nearest {
        private Nearest() {}

        static String mend(String typed, SequencedCollection<String> allowed) {
            var nearest = allowed.stream().min(Comparator.comparingInt(a -> distance(typed, a)));
            return nearest.filter(n -> distance(typed, n) <= Math.max(2, n.length() / 3))
                    .map(n -> "did you mean '" + n + "'?")
                    .orElse("use one of these names");
        }

        /// {@return how many letters must be added, dropped or changed (Levenshtein), without regard to case}
        private static int distance(String typed, String name) {
            int[] row = new int[name.length() + 1];
            for (int j = 0; j < row.length; j++) {
                row[j] = j;
            }
            for (int i = 1; i <= typed.length(); i++) {
                int diagonal = row[0];
                row[0] = i;
                for (int j = 1; j <= name.length(); j++) {
                    boolean same =
                            Character.toLowerCase(typed.charAt(i - 1)) == Character.toLowerCase(name.charAt(j - 1));
                    int best = Math.min(Math.min(row[j], row[j - 1]) + 1, diagonal + (same ? 0 : 1));
                    diagonal = row[j];
                    row[j] = best;
                }
            }
            return row[name.length()];
        }
    }
}
