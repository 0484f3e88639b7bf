package beltwright.app;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossiers;
import beltwright.pairs.Mend;
import beltwright.pairs.Mending;
import beltwright.press.json.PairJson;
import beltwright.quantity.Refusal;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "mend",
        description = {
            "Find for each failing finding the smallest single change that mends it.",
            "It makes nothing else worse: set otherwise, a screw, pin, spacer, riser or belt of a standard size, or another part of"
                    + " the shelf. Nothing is saved."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright mend steep-street-light",
            "  ./beltwright mend steep-street-light --of motor-screw-reach.left --all"
        })
final class MendCommand extends KitCommand {
    @Option(
            names = "--of",
            paramLabel = "FINDING",
            description = "one finding by its key in --json, such as take-up.left; also one that is only marginal")
    String of = "";

    @Option(names = "--all", description = "every change that mends it, not only the smallest")
    boolean all;

    MendCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var shelf = edited(shelf());
        var asked = shelf.kit(kit);
        var dossier = Dossiers.of(asked);
        var findings = dossier.findings().stream()
                .filter(f ->
                        of.isEmpty() ? f.verdict() == Verdict.FAILS : f.key().equals(of))
                .toList();
        if (!of.isEmpty() && findings.isEmpty()) {
            throw new Refusal(
                    "--of",
                    "kit " + kit + " has no finding '" + of + "'",
                    String.join(
                            ", ", dossier.findings().stream().map(Finding::key).toList()),
                    "name one of these");
        }
        var mending = Mending.of(asked, shelf.parts(), shelf.reference());
        var lines = new ArrayList<String>();
        var json = JsonNodeFactory.instance.objectNode().put("schema", 1).put("kit", kit);
        var mends = json.putArray("mends");
        for (var finding : findings) {
            var smallest = mending.smallest(finding.key());
            var every = all ? mending.all(finding.key()) : smallest.stream().toList();
            mends.add(PairJson.of(kit, finding.key(), every));
            lines.addAll(told(finding, every));
        }
        if (findings.isEmpty()) {
            lines.add("Nothing fails in this kit.");
        }
        if (this.json) {
            say(json);
        } else {
            say(lines);
        }
        return Exit.of(dossier.findings());
    }

    private List<String> told(Finding finding, List<Mend> every) {
        var lines = new ArrayList<String>();
        lines.addAll(Typesetting.hanging(
                Mark.of(finding.verdict()) + " ",
                finding.check() + " (" + finding.key() + "): " + finding.says(),
                desk.columns()));
        if (every.isEmpty()) {
            lines.add("  none on this shelf, and no standard size");
        }
        for (var mend : every) {
            lines.addAll(
                    Typesetting.hanging("  → ", mend.says() + ": then it " + became(mend.becomes()), desk.columns()));
            mend.fields().forEach(f -> lines.add("    --set '" + kit + "." + f[0] + "=" + f[1] + "'"));
        }
        return lines;
    }

    private static String became(Verdict verdict) {
        return verdict == Verdict.MARGINAL ? "is marginal" : verdict.toString();
    }
}
