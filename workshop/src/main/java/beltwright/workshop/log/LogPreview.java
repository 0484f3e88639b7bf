package beltwright.workshop.log;

import beltwright.ride.Log.Reading;
import beltwright.workshop.table.ColumnUnit;
import java.util.List;
import java.util.Optional;

/// What a table would be read as, before it is.
///
/// @param columns in the order of the table
/// @param rows below the headings
/// @param doubts what looks as if a column were in another unit, or keeps the table from being read
public record LogPreview(List<Column> columns, int rows, List<String> doubts) {
    public LogPreview {
        columns = List.copyOf(columns);
        doubts = List.copyOf(doubts);
    }

    /// One column of the table.
    ///
    /// @param reading what it is read as; empty where it is left out
    /// @param unit that its numbers are in; empty where nobody said
    /// @param first its first cells, as typed
    public record Column(String heading, Optional<Reading> reading, Optional<ColumnUnit> unit, List<String> first) {
        public Column {
            first = List.copyOf(first);
        }
    }
}
