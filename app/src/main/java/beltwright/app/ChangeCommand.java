package beltwright.app;

import beltwright.change.Change;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

@CommandLine.Command(
        name = "change",
        description = {
            "Say what an edit moves, before and after, in findings, drawing, box and guide.",
            "Nothing is saved. The exit code is that of the kit after the edit."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright change steep-street --set mount-hill.plateThicknessMm=10",
            "  ./beltwright change steep-street --set 'steep-street.seats.left belt=belt-295-15' --json"
        })
final class ChangeCommand extends KitCommand {
    ChangeCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        if (set.isEmpty()) {
            throw new Refusal(
                    "--set",
                    "nothing to change",
                    "DOCUMENT.FIELD=VALUE, once or more",
                    "write for example '--set mount-hill.plateThicknessMm=10'");
        }
        var shelf = shelf();
        var before = Dossiers.of(shelf.kit(kit));
        var after = Dossiers.of(edited(shelf).kit(kit));
        var change = Change.between(before, after);
        if (json) {
            say(AnswerJson.changed(set, before, after, change));
        } else {
            say(told(before, after, change));
        }
        return Exit.of(after.findings());
    }

    private List<String> told(Dossier before, Dossier after, Change change) {
        int columns = desk.columns();
        var lines = new ArrayList<String>();
        lines.addAll(Typesetting.hanging(
                "", after.kit().draft().name() + " (" + kit + "): " + String.join(", ", set), columns));
        if (change.moved().isEmpty()) {
            lines.add("Nothing moves.");
            return lines;
        }
        for (var what : Change.What.values()) {
            var moved = change.moved().stream().filter(m -> m.what() == what).toList();
            if (!moved.isEmpty()) {
                lines.add("");
                lines.add(moved.size() + " × " + what);
            }
            for (var m : moved) {
                lines.addAll(Typesetting.hanging("  ", m.name(), columns));
                lines.addAll(
                        Typesetting.hanging("    before  ", m.before().isEmpty() ? "not there" : m.before(), columns));
                lines.addAll(
                        Typesetting.hanging("    after   ", m.after().isEmpty() ? "not there" : m.after(), columns));
            }
        }
        lines.add("");
        lines.addAll(Typesetting.hanging("before  ", LadderText.counts(before), columns));
        lines.addAll(Typesetting.hanging("after   ", LadderText.counts(after), columns));
        return lines;
    }
}
