package beltwright.app;

import static beltwright.app.Typesetting.hanging;
import static beltwright.app.Typesetting.outdented;

import beltwright.kit.Kit;
import beltwright.press.table.SpreadTables;
import beltwright.spread.Odds;
import beltwright.spread.Spread;
import java.util.ArrayList;
import java.util.List;

/// A spread as a terminal shows it.
final class SpreadText {
    private final Kit kit;
    private final Spread spread;
    private final int columns;

    SpreadText(Kit kit, Spread spread, int columns) {
        this.kit = kit;
        this.spread = spread;
        this.columns = columns;
    }

    /// @param certain whether findings that hold in every kit are listed, not only counted
    List<String> all(boolean certain) {
        var lines = head();
        var listed = certain ? spread.odds().stream().filter(Odds::told).toList() : spread.unsure();
        if (!listed.isEmpty()) {
            lines.addAll(outdented(
                    "Findings, least sure first; what is to spare (capacity less demand) at the worst limits and at percentiles"
                            + " of the kits drawn",
                    columns));
            lines.add("");
            lines.addAll(TableText.of(SpreadTables.findings(listed)).lines(columns));
            lines.add("");
        }
        if (!certain) {
            lines.addAll(outdented(
                    spread.sure().size() + " findings hold at the worst limits and in every kit drawn", columns));
        }
        for (var o : spread.cannotTell()) {
            lines.addAll(outdented(
                    "cannot tell: " + SpreadTables.name(o) + ", " + o.finding().says(), columns));
        }
        return lines;
    }

    private ArrayList<String> head() {
        var lines = new ArrayList<String>();
        var draft = kit.draft();
        lines.addAll(hanging(
                "",
                "Spread: " + draft.name() + " (" + draft.id() + ")" + (draft.invented() ? ", invented" : ""),
                columns));
        lines.addAll(outdented(
                spread.kits() + " kits drawn, seed " + spread.seed() + "; " + spread.inputs()
                        + " numbers with limits in each, every piece on its own",
                columns));
        lines.add("");
        boolean all = spread.untold().isEmpty();
        lines.addAll(outdented(
                "Goes together first time: " + (all ? "" : "at most ") + SpreadTables.told(spread.goesTogether()) + "; "
                        + spread.counted().size() + " fits count"
                        + (all ? "" : ", " + spread.untold().size() + " cannot be told"),
                columns));
        lines.add("");
        return lines;
    }

    /// {@return one finding with all that it rests on}
    List<String> one(Odds o) {
        var lines = head();
        var f = o.finding();
        lines.addAll(outdented(
                Mark.of(f.verdict()) + " " + SpreadTables.name(o) + ": " + f.verdict() + "; " + f.says(), columns));
        if (!o.told()) {
            return lines;
        }
        lines.addAll(outdented(
                "Holds in " + o.holds() + " of " + o.kits() + " kits: " + SpreadTables.told(o.share())
                        + SpreadTables.aside(o),
                columns));
        var s = o.scatter();
        if (s != null) {
            lines.add("");
            lines.addAll(hanging("", SpreadTables.words(o, s) + " " + SpreadTables.SPARE, columns));
            lines.add("");
            lines.add("To spare (" + f.unit() + ")");
            lines.addAll(TableText.of(SpreadTables.left(o, s)).lines(columns));
        }
        if (!o.matters().isEmpty()) {
            lines.add("");
            lines.addAll(outdented("What matters most: squared correlation with what is to spare", columns));
            lines.addAll(TableText.of(SpreadTables.matters(o)).lines(columns));
        }
        return lines;
    }
}
