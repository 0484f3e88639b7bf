package beltwright.published;

import beltwright.published.PublishedCase.Value;
import java.util.ArrayList;
import java.util.List;

/// Writes `docs/validation.md` from the case files.
final class ValidationPage {
    private static final String HEAD = """
            # Held against the world

            Generated from the case files in `engine/src/test/resources/cases` by the test `PublishedCasesTest`; do not edit.
            Regenerate with `mvn -B -pl engine -am test -Dtest=PublishedCasesTest -Dsurefire.failIfNoSpecifiedTests=false -Dbeltwright.write=true`.

            Ours agrees where it rounds to the printed digits or lies within the stated tolerance.
            *read*: the number was read in the named source. *memory*: from memory of it, not re-read.
            *derived*: computed by independent tools from what was read, not itself published.
            Where a row and the engine hold the same table, the row proves that it was copied without a slip, and no more.

            """;

    private ValidationPage() {}

    static String of(List<PublishedCase> cases) {
        var page = new StringBuilder(HEAD);
        page.append("**").append(read(cases)).append(" cases were read in their source**, ");
        page.append(count(cases, "memory")).append(" come from memory, ");
        page.append(count(cases, "derived")).append(" are derived; together ");
        page.append(cases.stream().mapToInt(c -> c.values().size()).sum()).append(" numbers.\n\n");

        page.append("| case | what | source | numbers | largest deviation | confidence |\n");
        page.append("| --- | --- | --- | ---: | ---: | --- |\n");
        for (var one : cases) {
            page.append("| ").append(link(one)).append(" | ").append(one.title());
            page.append(" | ").append(source(one));
            page.append(" | ").append(one.values().size());
            page.append(" | ").append(largest(one));
            page.append(" | ").append(one.confidence()).append(" |\n");
        }
        differing(cases, page);
        page.append("\n## Every number\n");
        cases.forEach(c -> all(c, page));
        return page.toString();
    }

    static long read(List<PublishedCase> cases) {
        return count(cases, "read");
    }

    private static long count(List<PublishedCase> cases, String confidence) {
        return cases.stream().filter(c -> c.confidence().equals(confidence)).count();
    }

    private static String link(PublishedCase one) {
        return "[" + one.id() + "](#" + one.id().toLowerCase(java.util.Locale.ROOT) + ")";
    }

    private static String source(PublishedCase one) {
        return one.page().equals("none") ? one.source() : one.source() + ", " + one.page();
    }

    private static String largest(PublishedCase one) {
        double most = one.values().stream()
                .filter(v -> v.differs() == null)
                .mapToDouble(v -> Math.abs(Agreement.of(v).relative()))
                .max()
                .orElse(Double.NaN);
        return Double.isNaN(most)
                ? "see below"
                : most < 5e-7 ? "none" : beltwright.quantity.Numbers.significant(100 * most, 2) + " %";
    }

    private static void differing(List<PublishedCase> cases, StringBuilder page) {
        page.append("\n## Known to differ\n\n");
        page.append("Printed by a rule of thumb, or a source, that this project does not use.\n\n");
        page.append("| case | what | printed | ours | why |\n| --- | --- | ---: | ---: | --- |\n");
        for (var one : cases) {
            for (var value : one.values()) {
                if (value.differs() != null) {
                    var held = Agreement.of(value);
                    page.append("| ").append(link(one)).append(" | ").append(value.what());
                    page.append(" | ").append(with(value.printed(), value));
                    page.append(" | ").append(with(held.oursText(), value));
                    page.append(" | ").append(value.differs()).append(" |\n");
                }
            }
        }
    }

    private static void all(PublishedCase one, StringBuilder page) {
        page.append("\n### ").append(one.id()).append("\n\n");
        page.append(one.title()).append(". ").append(capital(source(one)));
        page.append(" (").append(one.confidence()).append(").");
        page.append(one.note().isEmpty() ? "" : " " + capital(one.note()) + ".").append("\n\n");
        page.append("| what | put in | printed | ours | deviation | rule |\n");
        page.append("| --- | --- | ---: | ---: | ---: | --- |\n");
        for (var value : one.values()) {
            var held = Agreement.of(value);
            var cells = new ArrayList<String>();
            cells.add(value.what());
            cells.add(value.inputs().toString());
            cells.add(with(value.printed(), value));
            cells.add(held.oursText());
            cells.add(held.deviationText());
            cells.add(value.differs() == null ? held.rule() : "known to differ");
            page.append("| ").append(String.join(" | ", cells)).append(" |\n");
        }
    }

    private static String with(String number, Value value) {
        return value.unit().isEmpty() ? number : number + " " + value.unit();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
