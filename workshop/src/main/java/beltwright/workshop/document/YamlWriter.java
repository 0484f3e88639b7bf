package beltwright.workshop.document;

import java.util.Locale;
import java.util.stream.Collectors;

/// Writes a tree as canonical YAML: two levels of block, deeper ones in braces, text plain where it can be,
/// rows of numbers under `|`.
final class YamlWriter {
    private static final int BLOCK_LEVELS = 2;
    private static final String PLAIN_START = "[-+.−]?[\\p{L}\\p{N}]";
    private static final String PLAIN_IN_BRACES = PLAIN_START + "[\\p{L}\\p{N} .;'()/%+\\-−±×=_@&*!?<>|°·²³–—~^$]*";
    private static final String PLAIN_IN_BLOCK = PLAIN_START + "[\\p{L}\\p{N} .;'()/%+\\-−±×=_@&*!?<>|°·²³–—~^$,\"]*";

    private YamlWriter() {}

    static String write(Node.Fields document) {
        var out = new StringBuilder();
        block(document, 0, out);
        return out.toString();
    }

    /// {@return a value on one line, as it can be typed again}
    static String inline(Node value) {
        return inline(value, PLAIN_IN_BLOCK);
    }

    private static void block(Node.Fields fields, int level, StringBuilder out) {
        fields.fields().forEach((name, value) -> {
            out.repeat(' ', 2 * level).append(text(name, PLAIN_IN_BRACES)).append(':');
            if (value instanceof Node.Fields nested
                    && level + 1 < BLOCK_LEVELS
                    && !nested.fields().isEmpty()) {
                out.append('\n');
                block(nested, level + 1, out);
            } else if (value instanceof Node.Text lines && lines.blockLine() > 0) {
                out.append(" |\n");
                lines.text()
                        .lines()
                        .forEach(line ->
                                out.repeat(' ', 2 * level + 2).append(line).append('\n'));
            } else {
                out.append(' ').append(inline(value, PLAIN_IN_BLOCK)).append('\n');
            }
        });
    }

    private static String inline(Node value, String plain) {
        return switch (value) {
            case Node.Text t -> text(t.text(), plain);
            case Node.Items list ->
                list.items().stream().map(i -> inline(i, PLAIN_IN_BRACES)).collect(Collectors.joining(", ", "[", "]"));
            case Node.Fields map ->
                map.fields().entrySet().stream()
                        .map(e -> text(e.getKey(), PLAIN_IN_BRACES) + ": " + inline(e.getValue(), PLAIN_IN_BRACES))
                        .collect(Collectors.joining(", ", "{", "}"));
        };
    }

    private static String text(String text, String plain) {
        if (text.matches(plain) && !text.endsWith(" ")) {
            return text;
        }
        return text.codePoints().mapToObj(YamlWriter::escaped).collect(Collectors.joining("", "\"", "\""));
    }

    private static String escaped(int c) {
        return switch (c) {
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            case '\n' -> "\\n";
            case '\t' -> "\\t";
            default ->
                switch (Character.getType(c)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.LINE_SEPARATOR,
                            Character.PARAGRAPH_SEPARATOR,
                            Character.PRIVATE_USE,
                            Character.UNASSIGNED,
                            Character.SURROGATE -> String.format(Locale.ROOT, "\\U%08X", c);
                    default -> Character.toString(c);
                };
        };
    }
}
