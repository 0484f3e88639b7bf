package beltwright.app;

import java.util.ArrayList;
import java.util.List;

/// Words set into the columns that a terminal has.
final class Typesetting {
    private Typesetting() {}

    /// {@return the text broken between words so that no line is longer than `width`, unless one word is}
    static List<String> broken(String text, int width) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : text.strip().split("\\s+", -1)) {
            if (!line.isEmpty() && length(line) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /// {@return the text broken, its first line after `head`, the others indented as deep as `head` is long}
    static List<String> hanging(String head, String text, int columns) {
        var lines = new ArrayList<String>();
        int indent = length(head);
        var first = head;
        for (var line : broken(text, Math.max(1, columns - indent))) {
            lines.add((first + line).stripTrailing());
            first = " ".repeat(indent);
        }
        return lines;
    }

    /// {@return the text broken, all lines but the first indented by two}
    static List<String> outdented(String text, int columns) {
        var lines = new ArrayList<String>();
        for (var line : broken(text, Math.max(1, columns - 2))) {
            lines.add(lines.isEmpty() ? line : "  " + line);
        }
        return lines;
    }

    static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - length(text)));
    }

    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - length(text))) + text;
    }

    static int widest(List<String> texts) {
        return texts.stream().mapToInt(Typesetting::length).max().orElse(0);
    }

    /// One column a character; an accent that sits on a letter takes none.
    private static int length(CharSequence text) {
        return (int) text.codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .count();
    }
}
