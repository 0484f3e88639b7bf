package beltwright.workshop.document;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.part.Reference;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Whatever is done to a file, reading it ends in documents and mistakes, never in another exception.
class MangledTextTest {
    private static final Reference REFERENCE = ReferenceFile.bundled();

    private static final List<String> SCRAPS = List.of(
            "",
            ":",
            ": ",
            "- ",
            "{",
            "}",
            "[",
            "]",
            "\"",
            "'",
            "&a ",
            "*a",
            "!!x ",
            "? ",
            "| ",
            "> ",
            "#",
            "\n---\n",
            "\n",
            "\t",
            "\u0000",
            "\uFEFF",
            "\uD800",
            "%YAML 1.2\n",
            "...",
            "±",
            "9".repeat(400),
            "[".repeat(5000),
            "- ".repeat(3000),
            "{a: ".repeat(3000),
            "a: ".repeat(50),
            "<<: ",
            "of: ",
            "with: [",
            "unknown",
            "-5",
            "1e9",
            "''",
            "null",
            "🛹".repeat(600),
            "\"\\UFFFFFFFF\"",
            "\\x",
            "\u0085",
            "\u2028",
            "\r",
            "--- |\n");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void endsInMistakes(long seed) {
        var random = new Random(seed);
        int refused = 0;
        for (int i = 0; i < 800; i++) {
            var invented = new Invented(random.nextLong());
            var text = Codec.write(invented.document()) + "---\n" + Codec.write(invented.document());
            var mangled = mangled(text, random);
            int lines = (int) mangled.lines().count();
            var reading = random.nextBoolean()
                    ? Codec.read("mangled", mangled)
                    : Codec.read("mangled", mangled.getBytes(StandardCharsets.UTF_8));
            var together = reading.and(Agreement.mistakes(reading, Map.of(), REFERENCE));
            refused += reading.mistakes().isEmpty() ? 0 : 1;
            assertThat(together.mistakes()).allSatisfy(m -> {
                assertThat(m.line()).isBetween(1, lines + 1);
                assertThat(List.of(m.field(), m.wrong(), m.allowed(), m.mend())).noneMatch(String::isBlank);
            });
            for (var document : reading.sound()) {
                assertThat(Codec.readOne("again", Codec.write(document))).isEqualTo(document);
            }
        }
        assertThat(refused).as("most mangled files are refused").isGreaterThan(400);
    }

    private static String mangled(String text, Random random) {
        var lines = new ArrayList<>(text.lines().toList());
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(lines.size());
            var line = lines.get(at);
            int column = random.nextInt(line.length() + 1);
            switch (random.nextInt(6)) {
                case 0 -> lines.set(at, line.substring(0, column));
                case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
                case 2 -> lines.set(at, " ".repeat(random.nextInt(5)) + line.strip());
                case 3 -> lines.set(at, line.substring(column));
                default ->
                    lines.set(
                            at,
                            line.substring(0, column)
                                    + SCRAPS.get(random.nextInt(SCRAPS.size()))
                                    + line.substring(column));
            }
        }
        return String.join(random.nextBoolean() ? "\n" : "\r\n", lines);
    }
}
