package beltwright.workshop.log;

import beltwright.quantity.Refusal;
import beltwright.ride.Log.Reading;
import beltwright.workshop.table.ColumnUnit;
import beltwright.workshop.table.LongTable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/// Which columns of one table are read, as what and in which unit: what was mapped, and what the other headings say.
record Plan(List<Read> columns) {
    Plan {
        columns = List.copyOf(columns);
    }

    /// One column that is read.
    record Read(int index, String heading, Reading reading, Optional<ColumnUnit> unit) {}

    static Plan of(LongTable table, Mapping mapping) {
        var columns = new ArrayList<Read>();
        var said = new HashSet<Reading>();
        var taken = new HashSet<Integer>();
        for (var mapped : mapping.columns()) {
            said.add(mapped.reading());
            if (!mapped.heading().isEmpty()) {
                int index = index(table, mapped);
                if (!taken.add(index)) {
                    throw new Refusal(
                            "columns." + mapped.reading(),
                            "'" + mapped.heading() + "' is mapped twice",
                            "each column once",
                            "take one of the two out");
                }
                var heading = table.headings().get(index);
                columns.add(new Read(
                        index, heading, mapped.reading(), mapped.unit().or(() -> unit(heading, mapped.reading()))));
            }
        }
        for (int i = 0; i < table.headings().size(); i++) {
            var heading = table.headings().get(i);
            var reading = Guess.reading(ColumnUnit.titled(heading));
            if (!taken.contains(i) && reading.filter(said::add).isPresent()) {
                columns.add(new Read(i, heading, reading.get(), unit(heading, reading.get())));
            }
        }
        return new Plan(columns);
    }

    private static Optional<ColumnUnit> unit(String heading, Reading reading) {
        return ColumnUnit.titled(heading).unit().filter(u -> u.of() == Guess.of(reading));
    }

    private static int index(LongTable table, Mapping.Column mapped) {
        int index = table.headings().stream().map(String::strip).toList().indexOf(mapped.heading());
        if (index < 0) {
            throw new Refusal(
                    "columns." + mapped.reading(),
                    "no column is headed '" + LongTable.shown(mapped.heading()) + "'",
                    String.join(", ", table.headings()),
                    "write the heading as it stands in the file");
        }
        return index;
    }

    Optional<Read> at(int index) {
        return columns.stream().filter(c -> c.index() == index).findFirst();
    }

    /// @throws Refusal if there is no time, nothing read with it, or a column without a unit
    void ready(LongTable table) {
        for (var column : columns) {
            if (column.unit().isEmpty()) {
                var of = Guess.of(column.reading());
                throw new Refusal(
                        table.where(1, column.heading()),
                        "nothing says in which unit the " + column.reading() + " is",
                        of.allowed(),
                        "say '" + column.reading() + "=" + column.heading().strip() + ":"
                                + of.units().getFirst() + "', with the unit that it is in");
            }
        }
        boolean timed = columns.stream().anyMatch(c -> c.reading() == Reading.TIME);
        if (!timed || columns.size() < 2) {
            throw new Refusal(
                    table.where(1) + ": headings",
                    (timed ? "nothing but a time" : "no time") + " is found among "
                            + String.join(", ", table.headings()),
                    "a time, and something read with it",
                    "map the columns: 'time=HEADING:s,speed=HEADING:km/h'");
        }
    }
}
