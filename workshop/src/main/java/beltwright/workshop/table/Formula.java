package beltwright.workshop.table;

import java.util.regex.Pattern;

/// Text that a spreadsheet would take for a formula: it is written with an apostrophe before it,
/// and read without.
final class Formula {
    private static final Pattern LOOKS_LIKE_ONE = Pattern.compile("'*[=+@-].*", Pattern.DOTALL);

    private Formula() {}

    static String guarded(String text) {
        return LOOKS_LIKE_ONE.matcher(text).matches() ? "'" + text : text;
    }

    static String plain(String cell) {
        return cell.startsWith("'") && LOOKS_LIKE_ONE.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
