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

    private final List<String> heads;
    private final List<String> told;
    private final List<List<String>> rows = new ArrayList<>();

    /// @param heads of columns; numbers stand to the right, words to the left
    TableText(String... heads) {
        this(new Table(List.of(heads), List.of()));
    }

    private TableText(Table table) {
        this.heads = table.heads();
        this.told = table.told();
        rows.addAll(table.rows());
    }

    static TableText of(Table table) {
        return new TableText(table);
    }

    void row(String... cells) {
        row(List.of(cells));
    }

    void row(List<String> cells) {
        if (cells.size() != heads.size()) {
            throw new IllegalArgumentException(cells + " under " + heads);
        }
        rows.add(List.copyOf(cells));
    }

    List<String> lines(int columns) {
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
            var table = new Table(heads, told, rows);
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
