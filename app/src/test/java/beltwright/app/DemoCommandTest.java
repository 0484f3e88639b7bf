package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// The demo, made once for the class, and every example of every help page, run in its folder.
class DemoCommandTest {
    private static final Pattern WORDS = Pattern.compile("'([^']*)'|(\\S+)");

    @TempDir
    static Path folder;

    static Typed typed;
    static Typed.Answer demo;

    @BeforeAll
    static void make() {
        typed = new Typed(folder);
        demo = typed.run("demo", "--no-serve");
    }

    @Test
    void endsWithNothingToComplainOfThoughAKitFails() {
        assertThat(demo.err()).isEmpty();
        assertThat(demo.code()).isZero();
        assertThat(demo.out()).contains("⊠ fails", "⊠ 2 fails");
    }

    @Test
    void printsHowEveryKitStands() throws IOException {
        var kits = typed.run("kits", "--json").json().at("/kits");
        assertThat(kits.size()).isGreaterThanOrEqualTo(3);
        for (var kit : kits) {
            var name = kit.get("name").asText() + " (" + kit.get("id").asText() + "), invented";
            assertThat(demo.out()).containsSubsequence(name, "Margin ladder", "…", " holds · resting on");
        }
    }

    @Test
    void writesWhatItSays() {
        var files = new ArrayList<String>();
        for (var folder : demo.out().substring(demo.out().indexOf("Written:")).split("\n  (?=demo-out)")) {
            var names = folder.split(": ", 2);
            if (names[0].startsWith("demo-out")) {
                Stream.of(names[1].split(",\\s+")).forEach(name -> files.add(names[0] + "/" + name.strip()));
            }
        }
        assertThat(files)
                .isNotEmpty()
                .allSatisfy(file -> assertThat(folder.resolve(file)).isNotEmptyFile());
        assertThat(files).anyMatch(file -> file.endsWith(".svg"));
    }

    @Test
    void aSecondDemoKeepsTheWorkshopThatIsThere() throws IOException {
        var before = Files.readAllBytes(folder.resolve("demo-out/demo.db"));
        var again = typed.run("demo", "--no-serve", "--json");
        assertThat(again.code()).isZero();
        assertThat(again.json().at("/workshop").asText())
                .isEqualTo(Path.of("demo-out", "demo.db").toString());
        assertThat(again.json().at("/kits").size()).isGreaterThanOrEqualTo(3);
        assertThat(Files.readAllBytes(folder.resolve("demo-out/demo.db"))).isEqualTo(before);
    }

    @Test
    void withoutItsFilesItSaysWhereTheyBelong() {
        var answer = Typed.at(folder, folder.resolve("nowhere")).run("demo", "--no-serve", "--out", "lost");
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.err()).startsWith("demo: ").contains("holds no parts and kits", "; allowed: ");
        assertThat(folder.resolve("lost")).doesNotExist();
    }

    static Stream<String> examples() {
        return Stream.concat(Stream.of(""), MainTest.commands())
                .flatMap(command -> new Typed(folder)
                        .run((command + " --help").strip().split(" "))
                        .out()
                        .lines())
                .map(String::strip)
                .filter(line ->
                        line.matches("\\./beltwright (check|kits|change|power|ride|calibrate|draw|guide|export) .*")
                                && !line.contains("--log ride.csv"))
                .distinct();
    }

    @ParameterizedTest
    @MethodSource
    void examples(String example) {
        List<String> words = WORDS.matcher(example)
                .results()
                .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
                .skip(1)
                .toList();
        var answer = typed.run(words.toArray(String[]::new));
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isIn(Exit.NOTHING_FAILS, Exit.SOMETHING_FAILS, Exit.CANNOT_TELL);
        assertThat(answer.out()).isNotBlank();
    }
}
