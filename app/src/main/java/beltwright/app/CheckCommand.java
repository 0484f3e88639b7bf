package beltwright.app;

import beltwright.app.bench.Hands;
import beltwright.check.Finding;
import beltwright.check.FirstNumber;
import beltwright.dossier.Dossier;
import beltwright.press.json.DossierJson;
import beltwright.press.table.SpreadTables;
import beltwright.quantity.Refusal;
import beltwright.spread.Odds;
import beltwright.spread.Sampling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "check",
        description = "Say whether a kit goes together: its margin ladder, weakest first.",
        footer = {
            "",
            "Examples:",
            "  ./beltwright check steep-street",
            "  ./beltwright check steep-street --working teeth-in-mesh",
            "  ./beltwright check steep-street --set mount-hill.plateThicknessMm=10 --no-estimates --json"
        })
final class CheckCommand extends KitCommand {
    @Option(
            names = "--working",
            paramLabel = "CHECK",
            description = {
                "print the working of one check or first number line by line:",
                "by its name in the ladder, by its short name such as teeth-in-mesh, or 'all'"
            })
    String working = "";

    @Option(
            names = "--odds",
            description = "at each rung margin, band and in how many of " + Sampling.USUAL + " kits drawn it holds, as "
                    + "'spread' draws them")
    boolean odds;

    CheckCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var dossier = dossier();
        if (json) {
            say(DossierJson.of(dossier));
        } else if (working.isEmpty()) {
            var text = new LadderText(dossier, desk.columns(), odds ? odds(dossier) : Map.of());
            say(text.ladder());
            say("");
            say(text.numbers());
        } else {
            say(workings(dossier));
        }
        return Exit.of(dossier.findings());
    }

    private static Map<String, String> odds(Dossier dossier) {
        var hands = new Hands(Runtime.getRuntime().availableProcessors());
        var odds = new HashMap<String, String>();
        Sampling.of(dossier.kit(), Sampling.USUAL, 1, hands, () -> false).odds().stream()
                .filter(Odds::told)
                .forEach(o -> odds.put(o.finding().key(), SpreadTables.rung(o)));
        return odds;
    }

    private List<String> workings(Dossier dossier) {
        var text = new LadderText(dossier, desk.columns());
        var workings = Stream.concat(
                        dossier.findings().stream().filter(this::asked).map(text::working),
                        dossier.numbers().stream().filter(this::asked).map(text::working))
                .toList();
        if (workings.isEmpty()) {
            throw new Refusal(
                    "--working",
                    "kit " + kit + " has no check '" + working + "'",
                    String.join(", ", names(dossier)),
                    "name one of these, with '.left' or '.right' for one side only, or 'all'");
        }
        var lines = new ArrayList<String>();
        for (var one : workings) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(one);
        }
        return lines;
    }

    private boolean asked(Finding f) {
        return asked(f.key(), f.check());
    }

    private boolean asked(FirstNumber n) {
        return asked(n.key(), n.name());
    }

    private boolean asked(String key, String name) {
        return working.equals("all")
                || working.equals(key)
                || working.equals(bare(key))
                || working.equalsIgnoreCase(name);
    }

    private static List<String> names(Dossier dossier) {
        return Stream.concat(
                        dossier.findings().stream().map(Finding::key),
                        dossier.numbers().stream().map(FirstNumber::key))
                .map(CheckCommand::bare)
                .distinct()
                .toList();
    }

    private static String bare(String key) {
        return key.substring(0, key.lastIndexOf('.'));
    }
}
