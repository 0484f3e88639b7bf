package beltwright.app;

import beltwright.press.json.DossierJson;
import beltwright.quantity.Refusal;
import beltwright.workshop.Workshop;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/// What every command has: a desk, a workshop, and a form of its answer for scripts.
abstract class Command implements Callable<Integer> {
    static final String WORKSHOP_VARIABLE = "BELTWRIGHT_WORKSHOP";
    private static final Path OWN = Path.of("workshop.db");
    private static final Path DEMO = Path.of("demo-out", "demo.db");

    final Desk desk;

    @Option(
            names = "--workshop",
            paramLabel = "FILE",
            description = {
                "the workshop's file",
                "(default: $BELTWRIGHT_WORKSHOP, else ./workshop.db, else demo-out/demo.db)"
            })
    @Nullable Path workshop;

    @Option(names = "--json", description = "answer as JSON; docs/json.md names every field")
    boolean json;

    @Option(names = "--help", usageHelp = true, description = "show this page")
    boolean help;

    Command(Desk desk) {
        this.desk = desk;
    }

    /// {@return the workshop that is there to read}
    ///
    /// @throws Refusal if there is none
    Workshop readWorkshop() {
        var named = named();
        if (named == null) {
            named = List.of(OWN, DEMO).stream()
                    .filter(file -> Files.isRegularFile(desk.at(file)))
                    .findFirst()
                    .orElseThrow(() -> new Refusal(
                            "--workshop",
                            "no workshop here",
                            "$" + WORKSHOP_VARIABLE + ", ./" + OWN + " or " + DEMO,
                            "run './beltwright demo' to make the invented one, or './beltwright import FOLDER'"));
        } else if (!Files.isRegularFile(desk.at(named))) {
            throw new Refusal(
                    "--workshop",
                    "'" + named + "' is not there",
                    "a file that 'import' or 'demo' made",
                    "name another file, or run './beltwright import FOLDER --workshop " + named + "'");
        }
        return open(named);
    }

    /// {@return the file of the workshop to write into, there or not}
    Path workshopToWrite() {
        var named = named();
        return named == null ? OWN : named;
    }

    private @Nullable Path named() {
        if (workshop != null) {
            return workshop;
        }
        var variable = desk.environment().get(WORKSHOP_VARIABLE);
        return variable == null || variable.isEmpty() ? null : Path.of(variable);
    }

    Workshop open(Path file) {
        return Workshop.open(desk.at(file));
    }

    void say(List<String> lines) {
        lines.forEach(desk.out()::println);
    }

    void say(String line) {
        desk.out().println(line);
    }

    void say(JsonNode node) {
        desk.out().print(DossierJson.text(node));
        desk.out().flush();
    }
}
