package beltwright.press.table;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/// Cells under their headings; the first column names the row.
///
/// @param told how a cell reads in a sentence, `way %s m`, where columns have no room
public record Table(List<String> heads, List<String> told, List<List<String>> rows) {
    private static final Pattern NUMBER = Pattern.compile("[−0-9.,:∞ ]+( .{1,6})?|unknown|");

    public Table {
        heads = List.copyOf(heads);
        told = List.copyOf(told);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /// As above; in a sentence a cell stands behind its heading, the first alone.
    public Table(List<String> heads, List<List<String>> rows) {
        this(heads, told(heads), rows);
    }

    private static List<String> told(List<String> heads) {
        return IntStream.range(0, heads.size())
                .mapToObj(i -> i == 0 ? "%s" : (heads.get(i).replace("%", "%%") + " %s").strip())
                .toList();
    }

    /// {@return a row as a sentence; cells that say nothing are left out}
    public String sentence(List<String> row) {
        var parts = new ArrayList<String>();
        for (int i = 1; i < row.size(); i++) {
            if (!row.get(i).isEmpty()) {
                parts.add(told.get(i).formatted(row.get(i)));
            }
        }
        return told.getFirst().formatted(row.getFirst()) + (parts.isEmpty() ? "" : ": " + String.join(", ", parts));
    }

    public boolean headed() {
        return heads.stream().anyMatch(h -> !h.isEmpty());
    }

    /// {@return whether every cell of a column is a number, so that they stand under each other to the right}
    public boolean numbers(int column) {
        return !rows.isEmpty()
                && rows.stream().allMatch(r -> NUMBER.matcher(r.get(column)).matches());
    }
}
