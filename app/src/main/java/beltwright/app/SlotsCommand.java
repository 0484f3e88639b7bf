package beltwright.app;

import beltwright.app.bench.Slots;
import beltwright.pairs.SlotCover;
import beltwright.press.json.PairJson;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Parameters;

@CommandLine.Command(
        name = "slots",
        description = {
            "Say which belts fall in the slot of a mount, over every two pulleys of the shelf.",
            "Each comes with the take-up that is left. A belt in brackets is not on the shelf."
        },
        footer = {"", "Examples:", "  ./beltwright slots mount-hill", "  ./beltwright slots mount-hill --json"})
final class SlotsCommand extends WorkshopCommand {
    @Parameters(paramLabel = "MOUNT", description = "the mount's id")
    String mount = "";

    SlotsCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var cover = Slots.cover(readWorkshop().shelf(), mount);
        if (json) {
            say(PairJson.of(cover));
        } else {
            say(told(cover));
        }
        return Exit.NOTHING_FAILS;
    }

    private List<String> told(SlotCover cover) {
        var lines = new ArrayList<String>();
        lines.add(cover.mount().name() + " (" + cover.mount().id() + "): slot from "
                + Numbers.fixed(cover.slot().low(), 1) + " to "
                + Numbers.fixed(cover.slot().high(), 1)
                + " mm between axle and motor");
        for (var line : cover.lines()) {
            lines.add("");
            lines.addAll(Typesetting.hanging("", String.join(" with ", line.names()), desk.columns()));
            for (var mark : line.marks()) {
                var name = mark.onShelf() ? String.join(", ", mark.belts()) : "(" + mark.teeth() + " teeth)";
                var c = mark.centreDistanceMm();
                lines.add("  " + Mark.of(mark.verdict()) + " " + Typesetting.padded(name, 22)
                        + Typesetting.right(Numbers.within(c.nominal(), c.low(), c.high()), 7) + " mm  "
                        + mark.decides().check() + " " + mark.decides().slackText());
            }
            if (line.marks().isEmpty()) {
                lines.add("  no belt length comes near this slot");
            }
        }
        return lines;
    }
}
