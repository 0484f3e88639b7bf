package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
    @TempDir
    static Path folder;

    static Typed typed;

    @BeforeAll
    static void importSmall() {
        typed = Typed.withSmallWorkshop(folder);
    }

    @Test
    void printsTheLadderWeakestFirstThenTheCountsThenTheFirstNumbers() {
        var answer = typed.run("check", Typed.KIT);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isZero();
        var lines = answer.out().lines().toList();
        assertThat(lines.getFirst()).isEqualTo("Market Hill, one motor (market-hill-single), invented");
        assertThat(lines.get(3)).startsWith("⬓ marginal");
        var failing = typed.run("check", Typed.KIT, "--set", "mount-city.plateThicknessMm=9")
                .out()
                .lines()
                .toList();
        assertThat(failing.get(3)).startsWith("⊠ fails");
        assertThat(failing.get(4).strip()).startsWith("→ ");
        assertThat(lines).anyMatch(l -> l.matches("■ holds +Teeth in mesh +left +\\+\\d+ % +\\d whole.*"));
        assertThat(answer.out()).containsSubsequence("⬓ marginal", "■ holds", " holds · resting on ", "First numbers");
        assertThat(answer.out()).contains("Tension to start with", "habit: ");
    }

    @ParameterizedTest(name = "{0}: exit code {1}")
    @CsvSource({
        "washer-m4.massKg=0.002, 0",
        "mount-city.plateThicknessMm=9, 1",
        "hanger-150.axleLengthMm=unknown, 3",
        "mount-city.plateThicknessMm=-1, 2",
    })
    void theVerdictIsTheExitCode(String edit, int code) {
        assertThat(typed.run("check", Typed.KIT, "--set", edit).code()).isEqualTo(code);
    }

    @Test
    void aFailureStandsAboveWhatCannotBeTold() {
        var answer =
                typed.run("check", Typed.KIT, "--set", Typed.THICK_PLATE, "--set", "hanger-150.axleLengthMm=unknown");
        assertThat(answer.code()).isEqualTo(Exit.SOMETHING_FAILS);
        assertThat(answer.out())
                .containsSubsequence("⊠ fails", "⬚ cannot tell", "needs hanger-150.axleLengthMm", "■ holds");
    }

    @Test
    void withoutEstimatesSomethingCannotBeTold() {
        var usual = typed.run("check", Typed.KIT);
        assertThat(usual.out()).contains("resting on");
        var strict = typed.run("check", Typed.KIT, "--no-estimates");
        assertThat(strict.code()).isEqualTo(Exit.CANNOT_TELL);
        assertThat(strict.out()).contains("⬚ cannot tell").doesNotContain("resting on");
    }

    @ParameterizedTest
    @ValueSource(strings = {"teeth-in-mesh", "teeth-in-mesh.left", "Teeth in mesh", "teeth in MESH"})
    void printsTheWorkingOfOneCheckLineByLine(String name) {
        var answer = typed.run("check", Typed.KIT, "--working", name);
        assertThat(answer.code()).isZero();
        assertThat(answer.out().lines().filter(l -> l.startsWith("■"))).hasSize(1);
        assertThat(answer.out()).contains("z_mesh", " teeth");
    }

    @Test
    void printsTheWorkingOfAFirstNumber() {
        var answer = typed.run("check", Typed.KIT, "--working", "pull-driving");
        assertThat(answer.out()).startsWith("Belt pull, driving, left: ").contains(" N\n", "(");
    }

    @Test
    void anUnknownCheckIsRefusedWithTheNamesThatThereAre() {
        var answer = typed.run("check", Typed.KIT, "--working", "gearbox");
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err())
                .startsWith("--working: kit market-hill-single has no check 'gearbox'; allowed: ")
                .contains("teeth-in-mesh");
    }

    @Test
    void jsonIsTheDossier() throws IOException {
        var answer = typed.run("check", Typed.KIT, "--json", "--set", Typed.THICK_PLATE);
        assertThat(answer.code()).isEqualTo(Exit.SOMETHING_FAILS);
        var json = answer.json();
        assertThat(json.at("/kit/id").asText()).isEqualTo(Typed.KIT);
        assertThat(json.at("/verdicts/fails").asInt()).isPositive();
        assertThat(json.at("/findings/0/verdict").asText()).isEqualTo("fails");
        assertThat(json.at("/layout/left/teethInMesh").asDouble()).isBetween(6.0, 8.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {30, 44, 80, 100, 120, 200})
    void noLineIsWiderThanTheTerminal(int columns) {
        var narrow = new Typed(folder).with("COLUMNS", String.valueOf(columns));
        var words = narrow.run("check", Typed.KIT, "--working", "all").out().lines();
        assertThat(narrow.run("check", Typed.KIT).out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
        // A formula may hold one long word; it is never cut.
        assertThat(words.filter(line -> line.length() > columns))
                .allSatisfy(line -> assertThat(line.strip()).matches("(\\S+ )?(= )?\\S+"));
    }

    @Test
    void withoutATerminalEveryRungIsOneLine() {
        var lines = typed.run("check", Typed.KIT).out().lines().filter(l -> l.matches("[■⬓⊠⬚] .*\\b(left|kit)\\b.*"));
        assertThat(lines).hasSizeGreaterThan(50);
    }
}
