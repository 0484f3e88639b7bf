package beltwright.workshop.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/// Rows of numbers under `|`, a row to a line, spaces between the numbers.
final class NumberLines {
    /// Stands for a number that was left open.
    static final String OPEN = "-";

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,20}(\\.[0-9]{1,20})?([eE][+-]?[0-9]{1,3})?");
    private static final Pattern SPACES = Pattern.compile("[ \\t]+");
    private static final int MOST_PLACES = 20;

    private NumberLines() {}

    /// One row.
    ///
    /// @param line of the file
    record Row(int line, List<String> cells) {
        Row {
            cells = List.copyOf(cells);
        }
    }

    /// {@return the rows, or null with a mistake where there is no block}
    ///
    /// @param allowed what a row holds
    static @Nullable List<Row> rows(Scope at, Node node, String allowed) {
        if (!(node instanceof Node.Text(String text, int line, int blockLine)) || blockLine == 0) {
            at.mistake(
                    node.line(),
                    "is no block of rows",
                    "'|', and below it " + allowed,
                    "write '|' behind the name and one row on each line below it, indented by two spaces");
            return null;
        }
        var rows = new ArrayList<Row>();
        var lines = text.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            var row = lines[i].strip();
            if (!row.isEmpty()) {
                rows.add(new Row(blockLine + i, List.of(SPACES.split(row))));
            }
        }
        return rows;
    }

    /// {@return the number, or not-a-number with a mistake}
    ///
    /// @param what it is, with its unit
    static double number(Scope at, int line, String what, String typed, double least, double most) {
        var allowed = text(least) + " to " + text(most);
        if (!NUMBER.matcher(typed).matches()) {
            at.mistake(
                    line,
                    what + " is '" + shown(typed) + "', which is no number",
                    allowed,
                    "type a number with a decimal point");
            return Double.NaN;
        }
        double value = Double.parseDouble(typed);
        if (value < least || value > most) {
            at.mistake(
                    line,
                    what + " is " + shown(typed) + ", which cannot be true",
                    allowed,
                    "check unit and decimal point");
            return Double.NaN;
        }
        return value;
    }

    static String shown(String typed) {
        return typed.length() > 40 ? typed.substring(0, 40) + "…" : typed;
    }

    /// {@return rows as they are read}
    static Node.Text written(List<double[]> rows) {
        var text = new StringBuilder();
        for (var row : rows) {
            for (int i = 0; i < row.length; i++) {
                text.append(i == 0 ? "" : " ").append(text(row[i]));
            }
            text.append('\n');
        }
        return Node.Text.block(text.toString());
    }

    /// {@return the shortest text that is read as the same number}
    static String text(double value) {
        if (Double.isNaN(value)) {
            return OPEN;
        }
        if (value == 0) {
            return 1 / value < 0 ? "-0" : "0";
        }
        var plain = BigDecimal.valueOf(value).stripTrailingZeros();
        return Math.abs(plain.scale()) > MOST_PLACES || plain.precision() - plain.scale() > MOST_PLACES
                ? Double.toString(value)
                : plain.toPlainString();
    }
}
