package beltwright.workshop.table;

import beltwright.part.Kinds;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.PartRow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/// Which column of a table gives which field of a kind of part, and where the whole table was read.
///
/// @param source of every row without one of its own, as typed: `measured, caliper`; may be empty
public record Columns(Kinds kind, List<Column> columns, String source) {
    /// @throws Refusal if a column gives something that this kind of part does not have
    public Columns {
        columns = List.copyOf(columns);
        source = source.strip();
        var names = new FieldNames(kind);
        for (var column : columns) {
            if (!column.leftOut() && !names.isPath(column.path())) {
                throw noField(column.heading(), column.path(), kind);
            }
        }
    }

    /// One column.
    ///
    /// @param path of the field that it gives, empty where the column is left out; `id`, `source`
    ///     and a dimension's own source, `rim.faceWidthMm.source`, are fields here too
    /// @param unit of a length without one
    public record Column(String heading, String path, LengthUnit unit) {
        public static final String LEFT_OUT = "";

        public boolean leftOut() {
            return path.equals(LEFT_OUT);
        }
    }

    /// {@return what the headings seem to mean, each field once; what they do not say clearly is
    /// left out}
    public static Columns suggested(Kinds kind, List<String> headings) {
        var names = new FieldNames(kind);
        var taken = new HashSet<String>();
        var columns = new ArrayList<Column>();
        for (var typed : headings) {
            var heading = Heading.of(typed);
            var path = names.path(heading.words()).filter(taken::add).orElse(Column.LEFT_OUT);
            columns.add(new Column(typed, path, heading.length()));
        }
        return new Columns(kind, columns, "");
    }

    public Columns withSource(String typed) {
        return new Columns(kind, columns, typed);
    }

    /// {@return the same with one column giving another field}; a column that was only guessed to
    /// give it is left out
    ///
    /// @param field a path or its words, with or without `[in]`, `[cm]` or `[mm]`; empty or `-` leaves the
    ///     column out
    /// @throws Refusal if there is no such heading or no such field
    public Columns with(String heading, String field) {
        var index = IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).heading().strip().equals(heading.strip()))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        "columns",
                        "no column is headed '" + heading.strip() + "'",
                        String.join(", ", columns.stream().map(Column::heading).toList()),
                        "write the heading as it stands in the table"));
        return with(index, field);
    }

    /// As above for several columns at once, typed as `Ø [in]=bore,Price=-`.
    ///
    /// @throws Refusal if a piece between commas has no equals sign, unless it begins a heading
    ///     with a comma in it, as in `Ø, in=bore`
    public Columns with(String typed) {
        var changed = this;
        var heading = "";
        for (var piece : typed.split(",", -1)) {
            var one = heading.isEmpty() ? piece : heading + "," + piece;
            int equals = one.lastIndexOf('=');
            heading = equals < 0 ? one : "";
            if (equals >= 0) {
                changed = changed.with(one.substring(0, equals), one.substring(equals + 1));
            }
        }
        if (!heading.isEmpty()) {
            throw new Refusal(
                    "columns",
                    "'" + heading.strip() + "' does not say which field the column gives",
                    "HEADING=FIELD, several with commas between them",
                    "write for example 'Ø [in]=bore'");
        }
        return changed;
    }

    private Columns with(int index, String field) {
        var typed = Heading.of(field);
        var heading = columns.get(index).heading();
        boolean out = typed.words().isEmpty() || typed.words().equals("-");
        var path = out
                ? Column.LEFT_OUT
                : new FieldNames(kind).path(typed.words()).orElseThrow(() -> noField(heading, typed.words(), kind));
        var unit = (typed.unit().isEmpty() ? Heading.of(heading) : typed).length();
        var headings = columns.stream().map(Column::heading).toList();
        var guessed = suggested(kind, headings).columns();
        var changed = new ArrayList<Column>();
        for (int i = 0; i < columns.size(); i++) {
            var column = columns.get(i);
            boolean moved = !out && column.path().equals(path) && column.equals(guessed.get(i));
            changed.add(moved ? new Column(column.heading(), Column.LEFT_OUT, column.unit()) : column);
        }
        changed.set(index, new Column(heading, path, unit));
        return new Columns(kind, changed, source);
    }

    private static Refusal noField(String heading, String typed, Kinds kind) {
        return new Refusal(
                "columns." + heading.strip(),
                "'" + typed + "' is not a field of a " + kind.words(),
                String.join(", ", new FieldNames(kind).paths()) + ", or '-' to leave the column out",
                "use one of these names");
    }

    OptionalInt column(String path) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).path().equals(path))
                .findFirst();
    }

    /// {@return the column of a field, or for an id that no column gives that of the name it is made of}
    OptionalInt shown(String path) {
        var own = column(path);
        return own.isEmpty() && path.equals(PartRow.ID) ? column(PartRow.NAME) : own;
    }

    /// {@return what no column gives and every part gets nevertheless, in words}
    public List<String> made() {
        var made = new ArrayList<String>();
        if (column(PartRow.ID).isEmpty()) {
            made.add("id, made of the name");
        }
        if (column(PartRow.REVISION).isEmpty()) {
            made.add("revision, " + PartRow.FIRST_REVISION);
        }
        return made;
    }

    /// {@return the headings of what is left out}
    public List<String> leftOut() {
        return columns.stream()
                .filter(column -> column.leftOut() && !column.heading().isBlank())
                .map(column -> column.heading().strip())
                .toList();
    }
}
