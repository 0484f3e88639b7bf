package beltwright.workshop.table;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.Invented;
import beltwright.workshop.document.ReferenceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Whatever is done to a table, reading it ends in parts, mistakes or one refusal, never in
/// another exception.
class MangledTableTest {
    private static final List<String> SCRAPS = List.of(
            "",
            ",",
            ";",
            "\t",
            "\"",
            "\"\"",
            "\n",
            "\r",
            "\r\n",
            "\u0000",
            "\uD800",
            "\uFEFF",
            "±",
            "9".repeat(400),
            "=",
            "'=",
            "in",
            "1/0 in",
            "1e9",
            "unknown",
            "{",
            "[mm]",
            ",".repeat(300),
            "id",
            ".source",
            "estimate",
            "\u2028",
            "🛹");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void endsInPartsMistakesOrARefusal(long seed) {
        var random = new Random(seed);
        int refused = 0;
        int mistaken = 0;
        int sound = 0;
        for (int i = 0; i < 400; i++) {
            var invented = new Invented(random.nextLong());
            var kind = Kinds.values()[random.nextInt(Kinds.values().length)];
            var parts = List.of(invented.part(kind), invented.part(kind), invented.part(kind));
            var mangled = mangled(Tables.csv(kind, parts), random);
            try {
                var table = Table.parse("mangled", mangled);
                var columns = Columns.suggested(kind, table.headings()).withSource("measured");
                var preview = Preview.of("mangled", table, columns).against(Map.of(), ReferenceFile.bundled(), false);
                assertThat(preview.rows()).hasSameSizeAs(table.rows()).allSatisfy(row -> {
                    boolean nothingWrong =
                            row.flaws().isEmpty() && preview.flaws().isEmpty();
                    assertThat(row.part().isPresent() || !nothingWrong).isTrue();
                    assertThat(row.part().isPresent() && !row.flaws().isEmpty()).isFalse();
                });
                assertThat(preview.mistakes()).allSatisfy(m -> {
                    assertThat(m.line()).isBetween(1, mangled.length() + 1);
                    assertThat(List.of(m.field(), m.wrong(), m.allowed(), m.mend()))
                            .noneMatch(String::isBlank);
                });
                mistaken += preview.mistakes().isEmpty() ? 0 : 1;
                sound += preview.parts().size();
                comeBack(kind, preview.parts());
            } catch (Refusal r) {
                assertThat(List.of(r.where(), r.wrong(), r.allowed(), r.mend())).noneMatch(String::isBlank);
                refused++;
            }
        }
        assertThat(List.of(refused, mistaken, sound))
                .allSatisfy(n -> assertThat(n).isGreaterThan(40));
    }

    private static void comeBack(Kinds kind, List<Part> parts) {
        if (!parts.isEmpty()) {
            var table = Table.parse(Tables.csv(kind, parts));
            assertThat(Preview.of("again", table, Columns.suggested(kind, table.headings()))
                            .parts())
                    .isEqualTo(parts);
        }
    }

    private static String mangled(String csv, Random random) {
        var lines = new ArrayList<>(csv.lines().toList());
        int at = random.nextInt(lines.size());
        var line = lines.get(at);
        int column = random.nextInt(line.length() + 1);
        switch (random.nextInt(6)) {
            case 0 -> lines.set(at, line.substring(0, column));
            case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
            case 2 -> lines.set(at, line.substring(column));
            default ->
                lines.set(
                        at,
                        line.substring(0, column) + SCRAPS.get(random.nextInt(SCRAPS.size())) + line.substring(column));
        }
        return String.join(random.nextBoolean() ? "\n" : "\r\n", lines);
    }
}
