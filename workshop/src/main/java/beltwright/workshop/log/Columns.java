package beltwright.workshop.log;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.ride.Log;
import beltwright.ride.Log.Reading;
import beltwright.workshop.table.ColumnUnit;
import beltwright.workshop.table.LongTable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// The columns of one table that are read, row by row, in the units of their readings.
final class Columns {
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,4}):([0-5]?[0-9]):([0-5]?[0-9](?:[.,][0-9]{1,9})?)");
    private static final int LONGEST_MAPPED = 1_000_000;

    private final LongTable table;
    private final Plan plan;
    private final Map<Reading, List<Double>> readings = new EnumMap<>(Reading.class);
    private final Map<Reading, List<Double>> typed = new EnumMap<>(Reading.class); // as in the table
    private final List<Integer> lines = new ArrayList<>();
    private double firstS;

    Columns(LongTable table, Plan plan) {
        this.table = table;
        this.plan = plan;
    }

    /// @throws Refusal naming the first cell or column that is wrong
    Map<Reading, List<Double>> readings() {
        plan.columns().forEach(c -> readings.put(c.reading(), new ArrayList<>()));
        plan.columns().forEach(c -> typed.put(c.reading(), new ArrayList<>()));
        int[] rows = {0};
        table.forEach((line, cells) -> {
            if (++rows[0] <= Log.MOST_ROWS) {
                row(line, cells);
            } else if (rows[0] == LONGEST_MAPPED) {
                throw tooMany("more than " + rows[0]);
            }
        });
        if (rows[0] > Log.MOST_ROWS) {
            throw tooMany(String.valueOf(rows[0]));
        }
        if (rows[0] < 3) {
            throw new Refusal(
                    table.file(),
                    "holds " + rows[0] + (rows[0] == 1 ? " row" : " rows") + " below the headings",
                    "3 rows or more",
                    "give a longer record");
        }
        plan.columns().forEach(this::refuseOtherUnit);
        return readings;
    }

    private Refusal tooMany(String rows) {
        return new Refusal(
                table.file(),
                "has " + rows + " rows",
                "up to " + Log.MOST_ROWS,
                "cut the record, or keep every second row of it");
    }

    private void row(int line, List<String> cells) {
        lines.add(line);
        for (var column : plan.columns()) {
            var unit = column.unit().orElseThrow();
            var cell = cells.get(column.index());
            double value = unit == ColumnUnit.CLOCK
                    ? clock(line, column.heading(), cell)
                    : table.number(line, column.heading(), cell, "a number in " + unit);
            var done = of(readings, column.reading());
            double counted = unit.counted(value);
            if (column.reading() == Reading.TIME) {
                firstS = done.isEmpty() ? counted : firstS;
                counted = rounded(counted - firstS);
                if (!done.isEmpty() && counted <= done.getLast()) {
                    throw new Refusal(
                            table.where(line, column.heading()),
                            "time " + LongTable.shown(cell) + " "
                                    + (counted == done.getLast() ? "is that of" : "is before") + " the row before",
                            "times that rise by 0.0001 s or more from row to row",
                            "take this row out, or sort the rows");
                }
            }
            done.add(rounded(counted));
            of(typed, column.reading()).add(value);
        }
    }

    private static List<Double> of(Map<Reading, List<Double>> readings, Reading reading) {
        return Optional.ofNullable(readings.get(reading)).orElseThrow();
    }

    private double clock(int line, String heading, String cell) {
        var parts = CLOCK.matcher(cell.strip());
        if (!parts.matches()) {
            throw new Refusal(
                    table.where(line, heading),
                    cell.isBlank() ? "the cell is empty" : "'" + LongTable.shown(cell) + "' is no time",
                    "hours:minutes:seconds, 0:01:02.5",
                    "correct it, or say that the column is in s or ms");
        }
        return Integer.parseInt(parts.group(1)) * 3600.0
                + Integer.parseInt(parts.group(2)) * 60.0
                + Double.parseDouble(parts.group(3).replace(',', '.'));
    }

    /// Names the first row that cannot be true, and the units in which all rows could be.
    private void refuseOtherUnit(Plan.Read column) {
        var what = column.reading();
        var values = of(readings, what);
        for (int i = 0; i < values.size(); i++) {
            double value = values.get(i);
            if (!(value >= what.least() && value <= what.most())) {
                var others = fitting(column).stream().map(ColumnUnit::toString).collect(Collectors.joining(" or "));
                boolean below = value < what.least();
                double worst = values.stream().reduce(value, below ? Math::min : Math::max);
                throw new Refusal(
                        table.where(lines.get(i), column.heading()),
                        what + " reaches " + Numbers.significant(worst, 4) + " " + what.unit() + " when read in "
                                + column.unit().orElseThrow(),
                        Numbers.plain(what.least()) + " to " + Numbers.plain(what.most()) + " " + what.unit(),
                        others.isEmpty() ? "look at this row" : "is this column in " + others + "?");
            }
        }
    }

    private List<ColumnUnit> fitting(Plan.Read column) {
        var what = column.reading();
        double first = what == Reading.TIME ? of(typed, what).getFirst() : 0;
        return Guess.of(what).units().stream()
                .filter(u -> u != column.unit().orElseThrow() && u != ColumnUnit.CLOCK)
                .filter(u -> of(typed, what).stream()
                        .mapToDouble(v -> u.counted(v - first))
                        .allMatch(v -> v >= what.least() && v <= what.most()))
                .toList();
    }

    static double rounded(double value) {
        return Math.abs(value) < 1e11 ? Math.rint(value * 10_000) / 10_000 : value;
    }
}
