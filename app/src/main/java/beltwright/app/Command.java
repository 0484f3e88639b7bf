package beltwright.app;

import beltwright.press.json.DossierJson;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Option;

/// What every command has: a desk, and a form of its answer for scripts.
abstract class Command implements Callable<Integer> {
    final Desk desk;

    @Option(names = "--json", description = "answer as JSON; docs/json.md names every field")
    boolean json;

    @Option(names = "--help", usageHelp = true, description = "show this page")
    boolean help;

    Command(Desk desk) {
        this.desk = desk;
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
