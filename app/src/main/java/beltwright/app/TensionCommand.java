package beltwright.app;

import static beltwright.app.Typesetting.hanging;

import beltwright.check.TensionCard;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.press.json.TensionJson;
import beltwright.press.table.TensionTables;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import picocli.CommandLine;

@CommandLine.Command(
        name = "tension",
        description = {
            "Say how tight the belts of a kit are to be, and how that is heard and felt.",
            "Band and target as tension, frequency of the span and force, what makes it swing, and when to measure again.",
            "Ends with 0, with 1 where no tension suits all or the target lies outside its band, with 2 on bad input, with 3"
                    + " where a number is missing."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright tension steep-street",
            "  ./beltwright tension steep-street --set steep-street.placements.left.tensionN=120",
            "  ./beltwright tension steep-street --set belt-265-15.hungWeights='span 64.5 mm: 50 N 265 Hz, 100 N 355 Hz'"
        })
final class TensionCommand extends KitCommand {
    TensionCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var asked = edited(shelf()).kit(kit);
        var cards = TensionCard.of(asked, LayoutSolver.solve(asked));
        if (json) {
            say(TensionJson.of(asked.id(), cards));
        } else {
            say(told(asked, cards));
        }
        if (cards.stream().anyMatch(c -> c.known() && (!c.band() || c.outside()))) {
            return Exit.SOMETHING_FAILS;
        }
        return cards.stream().allMatch(c -> c.needs().isEmpty()) ? Exit.NOTHING_FAILS : Exit.CANNOT_TELL;
    }

    private List<String> told(Kit kit, List<TensionCard> cards) {
        var parts = new ArrayList<List<String>>();
        parts.add(hanging("", "Belt tension: " + PowerText.named(kit), desk.columns()));
        var estimates = new LinkedHashSet<String>();
        for (var card : cards) {
            var lines = new ArrayList<String>();
            lines.add(card.side().toString());
            TensionTables.steps(card)
                    .forEach(step -> lines.addAll(hanging(step.substring(0, 3), step.substring(3), desk.columns())));
            lines.addAll(TableText.of(TensionTables.card(card)).lines(desk.columns()));
            card.notes().forEach(note -> lines.addAll(hanging("note: ", note, desk.columns())));
            parts.add(lines);
            estimates.addAll(card.estimates());
        }
        var cautions = new ArrayList<String>();
        TensionCard.CAUTIONS.forEach(c -> cautions.addAll(hanging("! ", c, desk.columns())));
        parts.add(cautions);
        parts.add(PowerText.rests(List.of(), List.copyOf(estimates), desk.columns()));
        return PowerText.joined(parts);
    }
}
