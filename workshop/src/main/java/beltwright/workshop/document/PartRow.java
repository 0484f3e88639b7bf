package beltwright.workshop.document;

import beltwright.part.Kinds;
import beltwright.part.Label;
import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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
    public static final String SOURCE = "source";
    public static final String OWN_SOURCE = ".source";

    private static final String WHERE_READ = "where the dimensions were read, for example 'measured, caliper'";

    private PartRow() {}

    /// {@return the fields of this kind in the order of its record, the id first and the source
    /// last}
    public static List<PartField> fields(Kinds kind) {
        var fields = new ArrayList<PartField>();
        fields.add(new PartField(ID, String.class, "the id", "an id", true, List.of(), ""));
        RecordForm.of(kind.type()).paths().forEach((path, form) -> fields.add(PartField.of(path, form)));
        fields.add(new PartField(SOURCE, Provenance.class, WHERE_READ, WHERE_READ, true, List.of(), ""));
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
        return new Reading(typed == null ? List.of() : List.of(typed), Set.of(), scope.uses(), scope.mistakes());
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
}
