package beltwright.workshop.table;

import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.workshop.document.Agreement;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Mistake;
import beltwright.workshop.document.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// What a table would give: for each row the part, or what is wrong in which cell. Nothing is
/// saved yet.
///
/// @param file the name of the table in messages
/// @param flaws of the headings and of the table as a whole
public record Preview(String file, Table table, Columns columns, List<Flaw> flaws, List<Row> rows) {
    public Preview {
        flaws = List.copyOf(flaws);
        rows = List.copyOf(rows);
    }

    /// Something wrong in one cell.
    ///
    /// @param column counted from 0; empty where it is no single cell
    public record Flaw(OptionalInt column, Mistake mistake) {}

    /// One row of the table, and what it gives.
    ///
    /// @param id as typed, or made of the name
    /// @param typed the part, where the row is sound in itself
    /// @param flaws by column
    public record Row(int line, String id, Optional<Reading.Typed> typed, List<Flaw> flaws) {
        public Row {
            flaws = flaws.stream()
                    .sorted(Comparator.comparingInt(flaw -> flaw.column().orElse(-1)))
                    .toList();
        }

        /// {@return the part that this row gives, if nothing is wrong with it}
        public Optional<Part> part() {
            return flaws.isEmpty() && typed.isPresent() && typed.get().document() instanceof Document.OfPart(var part)
                    ? Optional.of(part)
                    : Optional.empty();
        }

        private Row and(Columns columns, List<Mistake> mistakes) {
            var more = new ArrayList<>(flaws);
            mistakes.forEach(m -> more.add(new Flaw(columns.shown(RowReader.path(id, m.field())), m)));
            return new Row(line, id, typed, more);
        }
    }

    /// Reads every row; what is kept already is not looked at.
    public static Preview of(String file, Table table, Columns columns) {
        if (columns.columns().size() != table.headings().size()) {
            throw new IllegalArgumentException("these columns are of another table");
        }
        var reader = new RowReader(file, table, columns);
        return new Preview(file, table, columns, reader.flaws(), reader.rows());
    }

    /// {@return the same with what comes to light by holding the parts against what is kept
    /// already}
    ///
    /// @param stored documents by id
    /// @param reference the materials that a part may name
    /// @param replace whether parts of the same kind that are kept already give way
    public Preview against(Map<String, Document> stored, Reference reference, boolean replace) {
        var more = new ArrayList<>(Agreement.mistakes(reading(), stored, reference));
        for (var row : rows) {
            if (!replace
                    && stored.get(row.id()) instanceof Document.OfPart(var kept)
                    && columns.kind().type().isInstance(kept)) {
                more.add(new Mistake(
                        file,
                        row.line(),
                        row.id(),
                        "a " + kept.kind() + " with this id is kept already",
                        "an id of its own, unless the table is to replace what is kept",
                        "use another id, or let the table replace (--replace)"));
            }
        }
        var byLine = more.stream().collect(Collectors.groupingBy(Mistake::line));
        var held = rows.stream()
                .map(row -> row.and(columns, byLine.getOrDefault(row.line(), List.of())))
                .toList();
        return new Preview(file, table, columns, flaws, held);
    }

    private Reading reading() {
        return new Reading(
                rows.stream()
                        .filter(row -> row.flaws().isEmpty())
                        .flatMap(row -> row.typed().stream())
                        .toList(),
                Set.of(),
                List.of(),
                List.of());
    }

    /// {@return the parts of the rows in which nothing is wrong; none while the columns have flaws}
    public List<Part> parts() {
        return flaws.isEmpty()
                ? rows.stream().flatMap(row -> row.part().stream()).toList()
                : List.of();
    }

    /// {@return everything that is wrong, from the top down}
    public List<Mistake> mistakes() {
        return Stream.concat(flaws.stream(), rows.stream().flatMap(row -> row.flaws().stream()))
                .map(Flaw::mistake)
                .toList();
    }
}
