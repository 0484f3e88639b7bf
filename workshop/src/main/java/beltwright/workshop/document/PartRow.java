package beltwright.workshop.document;

import beltwright.part.Field;
import beltwright.part.Kinds;
import beltwright.part.Label;
import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// A part as one row of cells, each by the path of its field. The cells become the tree that a
/// part file gives, and are read by the same forms.
///
/// The cell `source` says where the dimensions of the row were read. A dimension read elsewhere
/// has a cell of its own for that, by its path and `.source`.
public final class PartRow {
    public static final String ID = "id";
    public static final String NAME = "name";
    public static final String REVISION = "revision";
    public static final String FIRST_REVISION = "A";
    public static final String SOURCE = "source";
    public static final String OWN_SOURCE = ".source";

    private static final String WHERE_READ = "where the dimensions were read, for example 'measured, caliper'";

    private PartRow() {}

    /// {@return the fields of this kind in the order of its record, the id first and the source
    /// last}
    public static List<PartField> fields(Kinds kind) {
        var fields = new ArrayList<PartField>();
        fields.add(new PartField(ID, String.class, "the id", "an id", true, List.of(), Field.Group.FIT, ""));
        RecordForm.of(kind.type()).paths().forEach((path, form) -> fields.add(PartField.of(path, form)));
        fields.add(
                new PartField(SOURCE, Provenance.class, WHERE_READ, WHERE_READ, true, List.of(), Field.Group.FIT, ""));
        return fields;
    }

    /// Reads one row.
    ///
    /// @param cells by path; a blank one counts as not typed, and one that is not there as having
    ///     no column
    /// @return the part, or every mistake of the row, each with the path of its field after the id
    public static Reading read(String file, int line, Kinds kind, Map<String, String> cells) {
        var scope = Scope.file(file);
        var typed = Documents.read(scope, tree(line, kind, cells));
        var mistakes = scope.mistakes();
        if (!cells.containsKey(ID) && mistakes.removeIf(m -> m.field().equals(Document.Type.PART.toString()))) {
            nameless(file, line, cells.getOrDefault(NAME, "").strip()).ifPresent(mistakes::add);
        }
        return new Reading(typed == null ? List.of() : List.of(typed), Set.of(), scope.uses(), mistakes);
    }

    /// What is said of a part without an id, unless its name is missing and said to be.
    private static Optional<Mistake> nameless(String file, int line, String name) {
        return name.isEmpty()
                ? Optional.empty()
                : Optional.of(new Mistake(
                        file,
                        line,
                        ID,
                        "no id can be made of the name '" + name + "', which has no letter a to z and no digit",
                        "lower-case letters a to z, digits and single hyphens",
                        "type an id as well, for example 'wheel-90'; the name may stay as it is"));
    }

    /// {@return the cells with an id made of the name where none was typed, if the name gives one}
    public static SequencedMap<String, String> named(Map<String, String> cells) {
        var named = new LinkedHashMap<>(cells);
        var made = id(cells.getOrDefault(NAME, ""));
        if (!made.isEmpty()) {
            named.putIfAbsent(ID, made);
        }
        return named;
    }

    /// {@return an id made of a name: `Wheel 90 × 50` becomes `wheel-90-50`; empty where it holds nothing for an id}
    static String id(String name) {
        var words = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        if (words.length() <= Documents.LONGEST_ID) {
            return words;
        }
        int end = words.lastIndexOf('-', Documents.LONGEST_ID);
        return words.substring(0, end > 0 ? end : Documents.LONGEST_ID);
    }

    private static Node.Fields tree(int line, Kinds kind, Map<String, String> cells) {
        var typed = new LinkedHashMap<String, Node>();
        typed.put("schema", new Node.Text(String.valueOf(Codec.SCHEMA), line));
        typed.put(
                Document.Type.PART.toString(),
                new Node.Text(cells.getOrDefault(ID, "").strip(), line));
        typed.put("kind", new Node.Text(kind.words(), line));
        typed.putAll(RecordForm.of(Label.class).tree(line, (path, form) -> leaf(line, path, form, cells)));
        typed.put(SOURCE, new Node.Text(cells.getOrDefault(SOURCE, "").strip(), line));
        var own = RecordForm.of(kind.type()).tree(line, (path, form) -> leaf(line, path, form, cells));
        typed.put("dimensions", new Node.Fields(own, line));
        return new Node.Fields(typed, line);
    }

    private static Optional<Node> leaf(int line, String path, FieldForm form, Map<String, String> cells) {
        var cell = cells.get(path);
        if (form.dimension()) {
            return dimension(
                    line,
                    cell == null ? "" : cell.strip(),
                    cells.getOrDefault(path + OWN_SOURCE, "").strip());
        }
        if (cell == null || (cell.isBlank() && form.when() != When.ALWAYS)) {
            return Optional.empty();
        }
        return Optional.of(new Node.Text(form.type() == String.class ? cell : cell.strip(), line));
    }

    private static Optional<Node> dimension(int line, String value, String source) {
        if (source.isEmpty()) {
            return value.isEmpty() ? Optional.empty() : Optional.of(new Node.Text(value, line));
        }
        var own = new LinkedHashMap<String, Node>();
        own.put("value", new Node.Text(value.isEmpty() ? "unknown" : value, line));
        own.put(SOURCE, new Node.Text(source, line));
        return Optional.of(new Node.Fields(own, line));
    }

    /// {@return the cells that are read as this part}
    public static SequencedMap<String, String> write(Part part) {
        var form = RecordForm.of(part.getClass());
        var usual = form.usual(part);
        var cells = new LinkedHashMap<String, String>();
        var own = new LinkedHashMap<String, String>();
        cells.put(ID, part.id());
        for (var leaf : form.leaves(part)) {
            if (leaf.value() instanceof Dimension d) {
                cells.put(leaf.path(), d.text());
                if (!d.provenance().equals(usual)) {
                    own.put(leaf.path() + OWN_SOURCE, d.provenance().words());
                }
            } else {
                cells.put(leaf.path(), leaf.value().toString());
            }
        }
        cells.put(SOURCE, usual.words());
        cells.putAll(own);
        return cells;
    }

    /// {@return the cells of a kept part with what was typed over it in a form}
    ///
    /// A dimension that was left as it is keeps the source it has; one that was changed takes the
    /// form's. A source typed for one dimension goes before both.
    ///
    /// @param typed by path, blank ones too; what is not there was not asked and stays, unless what
    ///     it hangs on was changed
    /// @param everywhere whether the form's source is also that of dimensions left as they are, but
    ///     for those that have a source of their own
    public static SequencedMap<String, String> over(Part kept, Map<String, String> typed, boolean everywhere) {
        var was = write(kept);
        var usual = was.getOrDefault(SOURCE, "");
        var source = typed.getOrDefault(SOURCE, usual).strip();
        var fields = new LinkedHashMap<String, PartField>();
        fields(Kinds.of(kept.getClass())).forEach(field -> fields.put(field.path(), field));
        var cells = new LinkedHashMap<String, String>();
        fields.forEach((path, field) -> {
            if (!typed.containsKey(path) && !left(path, fields, was, typed)) {
                return;
            }
            cells.put(path, typed.getOrDefault(path, was.getOrDefault(path, "")));
            if (field.dimension()) {
                var own = typed.getOrDefault(path + OWN_SOURCE, "").strip();
                if (own.isEmpty() && left(path, fields, was, typed)) {
                    own = was.getOrDefault(path + OWN_SOURCE, everywhere ? source : usual);
                }
                if (!own.isEmpty() && !own.equals(source)) {
                    cells.put(path + OWN_SOURCE, own);
                }
            }
        });
        cells.put(ID, kept.id());
        return cells;
    }

    /// {@return whether a field was left as it is; one that was not asked hangs on another, and is left with that}
    private static boolean left(
            String path, Map<String, PartField> fields, Map<String, String> was, Map<String, String> typed) {
        var before = was.getOrDefault(path, "");
        if (typed.containsKey(path)) {
            var now = typed.getOrDefault(path, "").strip();
            return now.equals(before.strip()) || (now.isEmpty() && before.equals("unknown"));
        }
        var field = fields.get(path);
        return field == null || field.when().isEmpty() || left(field.when().split("[=>]")[0], fields, was, typed);
    }
}
