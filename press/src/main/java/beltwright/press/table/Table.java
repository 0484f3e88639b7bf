package beltwright.press.table;

import java.util.List;
import java.util.regex.Pattern;

/// Cells under their headings; the first column names the row.
public record Table(List<String> heads, List<List<String>> rows) {
    private static final Pattern NUMBER = Pattern.compile("[−0-9.,:∞ ]+( .{1,6})?|unknown|");

    public Table {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
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
