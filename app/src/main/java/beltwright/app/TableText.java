package beltwright.app;

import static beltwright.app.Typesetting.hanging;
import static beltwright.app.Typesetting.outdented;
import static beltwright.app.Typesetting.padded;
import static beltwright.app.Typesetting.right;

import beltwright.press.table.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/// Rows under headings as a terminal shows them: columns where they have room, else each row as a sentence.
final class TableText {
    private static final int LEAST_FOR_LAST = 24;
    private static final String BETWEEN = "  ";

    private final Table table;

    private TableText(Table table) {
        this.table = table;
    }

    static TableText of(Table table) {
        return new TableText(table);
    }

    List<String> lines(int columns) {
        var heads = table.heads();
        var rows = table.rows();
        int last = heads.size() - 1;
        var widths = new int[heads.size()];
        int fixed = 0;
        for (int i = 0; i <= last; i++) {
            int column = i;
            widths[i] = Typesetting.widest(Stream.concat(Stream.of(heads), rows.stream())
                    .map(r -> r.get(column))
                    .toList());
            fixed += i < last ? widths[i] + BETWEEN.length() : 0;
        }
        boolean wide = fixed + Math.min(widths[last], LEAST_FOR_LAST) <= columns;
        var lines = new ArrayList<String>();
        if (!wide) {
            rows.forEach(row -> lines.addAll(outdented(table.sentence(row), columns)));
            return lines;
        }
        var numbers = new boolean[heads.size()];
        for (int i = 0; i <= last; i++) {
            int column = i;
            numbers[i] = rows.stream().map(r -> r.get(column)).allMatch(TableText::isNumber);
        }
        var headed = heads.stream().allMatch(String::isEmpty)
                ? rows.stream()
                : Stream.concat(Stream.of(heads), rows.stream());
        headed.forEach(row -> {
            var line = new StringBuilder();
            for (int i = 0; i < last; i++) {
                line.append(numbers[i] ? right(row.get(i), widths[i]) : padded(row.get(i), widths[i]))
                        .append(BETWEEN);
            }
            if (numbers[last]) {
                lines.add((line + right(row.get(last), widths[last])).stripTrailing());
            } else {
                lines.addAll(hanging(line.toString(), row.get(last), columns));
            }
        });
        return lines;
    }

    private static boolean isNumber(String cell) {
        return cell.isEmpty() || Character.isDigit(cell.charAt(0)) || "−∞…".indexOf(cell.charAt(0)) >= 0;
    }
}
