package beltwright.workshop.table;

import beltwright.quantity.DimensionText;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Unit;
import beltwright.workshop.document.Mistake;
import beltwright.workshop.document.PartField;
import beltwright.workshop.document.PartRow;
import beltwright.workshop.table.Preview.Flaw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/// Reads the rows of one table as its columns say. What is wrong with the columns is said once,
/// not in every row.
final class RowReader {
    private static final String ASSUMED = "estimate"; // so that rows are read for other mistakes; never kept

    /// What a table may leave out: its source may be that of the whole table, its ids are made of the names.
    private static final Set<String> MADE = Set.of(PartRow.SOURCE, PartRow.ID, PartRow.REVISION);

    private final String file;
    private final Table table;
    private final Columns columns;
    private final FieldNames names;
    private final List<PartField> missing;
    private final String source;
    private final List<Flaw> flaws = new ArrayList<>();

    RowReader(String file, Table table, Columns columns) {
        this.file = file;
        this.table = table;
        this.columns = columns;
        names = new FieldNames(columns.kind());
        missing = names.required().stream()
                .filter(field -> columns.column(field.path()).isEmpty())
                .filter(field -> !MADE.contains(field.path()))
                .toList();
        missing.forEach(field -> flaw(
                OptionalInt.empty(),
                field.path(),
                "no column gives it",
                field.allowed(),
                "add a column headed '" + field.path() + "', or choose which column gives it"));
        for (int i = 0; i < columns.columns().size(); i++) {
            unit(i);
            once(i);
        }
        source = source();
    }

    /// {@return what is wrong with the columns}
    List<Flaw> flaws() {
        return flaws;
    }

    private void flaw(OptionalInt column, String field, String wrong, String allowed, String mend) {
        flaws.add(new Flaw(column, new Mistake(file, table.line(), field, wrong, allowed, mend)));
    }

    /// A heading that names another unit than its field has would be wrong by a factor, and inside
    /// every range.
    private void unit(int index) {
        var column = columns.columns().get(index);
        var field = column.leftOut() ? null : names.field(column.path()).orElseThrow();
        if (field == null || !field.path().equals(column.path()) || field.unit() == Unit.NONE) {
            return;
        }
        var named = Heading.of(column.heading()).unit();
        var read = field.length() ? column.unit().symbol() : field.unit().symbol();
        if (!named.isEmpty() && !named.equals(read)) {
            flaw(
                    OptionalInt.of(index),
                    column.path(),
                    "the heading '" + column.heading().strip() + "' names " + named + ", but the column is read in "
                            + read,
                    field.length() ? LengthUnit.allowed() : read,
                    field.length() && LengthUnit.named(named).isPresent()
                            ? "read the column as " + named
                            : "convert the values, and name " + read + " in the heading");
        }
    }

    private void once(int index) {
        var column = columns.columns().get(index);
        int first = columns.column(column.path()).orElseThrow();
        if (!column.leftOut() && first != index) {
            flaw(
                    OptionalInt.of(index),
                    column.path(),
                    "two columns give it, '"
                            + columns.columns().get(first).heading().strip() + "' and '"
                            + column.heading().strip() + "'",
                    "one column for each field",
                    "leave one of the two out");
        }
    }

    /// {@return the source of rows that name none}
    private String source() {
        boolean inRows = columns.column(PartRow.SOURCE).isPresent();
        if (inRows && columns.source().isEmpty()) {
            return "";
        }
        try {
            Provenance.parse(columns.source());
            return columns.source();
        } catch (Refusal r) {
            boolean none = columns.source().isEmpty();
            flaw(
                    OptionalInt.empty(),
                    PartRow.SOURCE,
                    none ? "nothing says where the table was read" : r.wrong(),
                    r.allowed(),
                    none ? "name the source of the whole table (--source), or add a column 'source'" : r.mend());
            return ASSUMED;
        }
    }

    List<Preview.Row> rows() {
        var first = new HashMap<String, Integer>();
        var rows = new ArrayList<Preview.Row>();
        for (var row : table.rows()) {
            var cells = cells(row.cells());
            var id = cells.getOrDefault(PartRow.ID, "").strip();
            var reading = PartRow.read(file, row.line(), columns.kind(), cells);
            var found = reading.mistakes().stream()
                    .map(mistake -> new Flaw(columns.shown(path(id, mistake.field())), mistake))
                    .filter(flaw -> flaw.column().isPresent()
                            || !saidAbove(path(id, flaw.mistake().field())))
                    .collect(Collectors.toCollection(ArrayList::new));
            var before = id.isEmpty() ? null : first.putIfAbsent(id, row.line());
            if (before != null) {
                found.add(new Flaw(columns.shown(PartRow.ID), twice(row.line(), id, before)));
            }
            rows.add(
                    new Preview.Row(row.line(), id, reading.documents().stream().findFirst(), found));
        }
        return rows;
    }

    private boolean saidAbove(String path) {
        return missing.stream().anyMatch(field -> field.path().equals(path));
    }

    private Mistake twice(int line, String id, int before) {
        if (columns.column(PartRow.ID).isEmpty()) {
            return new Mistake(
                    file,
                    line,
                    id,
                    "this name gives the id '" + id + "', and so does that in line " + before,
                    "names that give an id each, or a column 'id'",
                    "change one of the two names, or add a column 'id'");
        }
        return new Mistake(
                file,
                line,
                id,
                "the id is used twice, first in line " + before,
                "each id once in a table",
                "rename one of the two, or take it out");
    }

    /// {@return the path in a mistake's field, which begins with the id where that is sound}
    static String path(String id, String field) {
        if (field.equals(id) || field.equals("part")) {
            return PartRow.ID;
        }
        return !id.isEmpty() && field.startsWith(id + ".") ? field.substring(id.length() + 1) : field;
    }

    /// {@return the cells of a row by the path of their field, a length not in millimetres with its unit}
    private Map<String, String> cells(List<String> row) {
        var cells = new LinkedHashMap<String, String>();
        for (int i = 0; i < row.size(); i++) {
            var column = columns.columns().get(i);
            if (!column.leftOut()) {
                cells.put(column.path(), cell(column, row.get(i)));
            }
        }
        if (cells.getOrDefault(PartRow.SOURCE, "").isEmpty()) {
            cells.put(PartRow.SOURCE, source);
        }
        cells.putIfAbsent(PartRow.REVISION, PartRow.FIRST_REVISION);
        return PartRow.named(cells);
    }

    private String cell(Columns.Column column, String typed) {
        var field = names.field(column.path()).orElseThrow();
        if (field.text()) {
            return Formula.plain(typed);
        }
        var text = typed.strip();
        boolean length = field.length() && field.path().equals(column.path());
        boolean bare = !text.isEmpty() && !text.equals("unknown") && !DimensionText.namesUnit(text);
        return length && bare ? column.unit().with(text) : text;
    }
}
