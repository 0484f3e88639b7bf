package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/// The way in: help, what was mistyped, what went wrong inside.
class MainTest {
    @TempDir
    Path folder;

    private static final String[] COMMANDS = {
        "demo", "kits", "check", "change", "power", "ride", "calibrate", "draw", "guide", "import", "export", "serve"
    };

    static Stream<String> commands() {
        return Stream.of(COMMANDS);
    }

    @Test
    void helpNamesEveryCommandAndTheExitCodes() {
        for (var answer : new Typed.Answer[] {new Typed(folder).run(), new Typed(folder).run("--help")}) {
            assertThat(answer.code()).isZero();
            assertThat(answer.out().lines().map(l -> l.strip().split(" ")[0])).contains(COMMANDS);
            assertThat(answer.out()).contains("nothing fails", "bad input", "internal error", "never a certificate");
        }
    }

    /// The list of commands shows the first line of each; a line that is cut by hand would end in the middle.
    @Test
    void everyLineOfADescriptionIsWholeSentencesAndTheFirstFitsTheList() {
        var commands = Main.line(Desk.here()).getSubcommands();
        assertThat(commands.keySet()).contains(COMMANDS);
        commands.forEach((name, command) -> {
            var lines = command.getCommandSpec().usageMessage().description();
            assertThat(lines).as(name).allMatch(line -> line.matches("[A-Z].*\\."));
            assertThat(lines[0]).as(name).doesNotContain(". ").hasSizeLessThanOrEqualTo(86);
        });
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHasAPageWithAnExample(String command) {
        var answer = new Typed(folder).run(command, "--help");
        assertThat(answer.code()).isZero();
        assertThat(answer.err()).isEmpty();
        assertThat(answer.out()).contains("Example", "./beltwright " + command, "--json");
    }

    @Test
    void theVersionIsThatOfTheBuild() throws Exception {
        assertThat(new Typed(folder).run("--version").out().strip()).isEqualTo("Beltwright " + Main.VERSION);
        assertThat(Files.readString(Typed.ROOT.resolve("pom.xml"))).contains("<version>" + Main.VERSION + "</version>");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "chek",
                "--colour",
                "check",
                "check a b",
                "check a --colour",
                "check --set",
                "demo --port x",
                "spread a --kits 99999999999",
                "spread a --seed",
                "kits a",
                "export"
            })
    void whatIsMistypedGetsOneLineAndCodeTwo(String line) {
        var answer = new Typed(folder).run(line.split(" "));
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.err()).matches("(?s)(--)?[a-z]+: .+; allowed: .+; see \\./beltwright [a-z ]*--help\\s*");
    }

    @Test
    void aFaultInsideIsOneLineAndCodeSeventy() {
        var answer = new Typed(folder).breaking(WorkshopCommand.VARIABLE).run("kits");
        assertThat(answer.code()).isEqualTo(Exit.INTERNAL_ERROR);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.err()).startsWith("internal error: ").contains("planted", "report", "BELTWRIGHT_DEBUG=1");
    }

    @Test
    void whenDebuggingAFaultTellsWhereItHappened() {
        var answer = new Typed(folder)
                .breaking(WorkshopCommand.VARIABLE)
                .with("BELTWRIGHT_DEBUG", "1")
                .run("kits");
        assertThat(answer.code()).isEqualTo(Exit.INTERNAL_ERROR);
        assertThat(answer.err()).contains("planted", "\tat beltwright.app.");
    }
}
