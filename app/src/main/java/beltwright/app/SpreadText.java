package beltwright.app;

import static beltwright.app.Typesetting.hanging;
import static beltwright.app.Typesetting.outdented;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.quantity.Numbers;
import beltwright.spread.Odds;
import beltwright.spread.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// A spread as a terminal shows it.
final class SpreadText {
    private static final int NAMED = 3;

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
        var told = spread.odds().stream().filter(Odds::told).toList();
        var table = new TableText("odds", "±", "finding", "worst", "1 %", "50 %", "99 %", "unit", "matters most");
        var listed = told.stream()
                .filter(o -> certain || o.holds() < o.kits() || !holds(o.finding()))
                .toList();
        listed.forEach(o -> table.row(row(o)));
        if (!listed.isEmpty()) {
            lines.addAll(hanging(
                    "",
                    "Findings, least sure first; what is left (capacity less demand) at the worst limits and at percentiles of the kits drawn",
                    columns));
            lines.add("");
            lines.addAll(table.lines(columns));
            lines.add("");
        }
        if (told.size() > listed.size()) {
            lines.addAll(outdented(
                    told.size() - listed.size() + " findings hold at the worst limits and in every kit drawn",
                    columns));
        }
        spread.odds().stream()
                .filter(o -> !o.told())
                .forEach(o -> lines.addAll(outdented(
                        "cannot tell: " + o.finding().check() + " ("
                                + o.finding().key() + "), " + o.finding().says(),
                        columns)));
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
        var share = spread.goesTogether();
        lines.addAll(outdented(
                "Goes together first time: " + (spread.untold().isEmpty() ? "" : "at most ") + percent(share.value())
                        + " ± " + percent(share.standardError()) + ", 19 times in 20 between "
                        + percent(share.least()) + " and " + percent(share.most()) + "; "
                        + spread.counted().size() + " fits count"
                        + (spread.untold().isEmpty()
                                ? ""
                                : ", " + spread.untold().size() + " cannot be told"),
                columns));
        lines.add("");
        return lines;
    }

    private static boolean holds(Finding f) {
        return f.verdict() == Verdict.HOLDS;
    }

    private static List<String> row(Odds o) {
        var f = o.finding();
        var s = o.scatter();
        double worst = f.capacityWorst() - f.demandWorst();
        return List.of(
                percent(o.share().value()),
                percent(o.share().standardError()),
                f.check() + ", " + f.side(),
                f.unit().isEmpty() ? "" : number(worst, s),
                s == null ? "" : number(s.percentiles().get(0), s),
                s == null ? "" : number(s.percentiles().get(2), s),
                s == null ? "" : number(s.percentiles().get(4), s),
                f.unit(),
                o.matters().stream().limit(NAMED).map(SpreadText::named).collect(Collectors.joining(", ")));
    }

    private static String named(Odds.Influence m) {
        return percent(m.share()) + " " + m.dimension() + " of " + m.where();
    }

    /// {@return one finding with all that it rests on}
    List<String> one(Odds o) {
        var lines = head();
        var f = o.finding();
        lines.addAll(outdented(
                Mark.of(f.verdict()) + " " + f.check() + ", " + f.side() + ": " + f.verdict() + "; " + f.says(),
                columns));
        if (!o.told()) {
            return lines;
        }
        var share = o.share();
        lines.addAll(outdented(
                "Holds in " + o.holds() + " of " + o.kits() + " kits: " + percent(share.value()) + " ± "
                        + percent(share.standardError()) + ", 19 times in 20 between " + percent(share.least())
                        + " and " + percent(share.most())
                        + (o.untold() == 0 ? "" : "; in " + o.untold() + " it cannot be told"),
                columns));
        var s = o.scatter();
        if (s != null) {
            lines.add("");
            lines.add("What is left (" + f.unit() + ")");
            var table = new TableText("", "");
            table.row("nominal", number(f.capacity() - f.demand(), s));
            table.row("worst limits", number(s.worst(), s));
            table.row("root-sum-square, low", number(s.rssLow(), s));
            for (int i = 0; i < s.percentiles().size(); i++) {
                table.row(
                        Odds.Scatter.PERCENT.get(i) + " % of kits below",
                        number(s.percentiles().get(i), s));
            }
            table.row("root-sum-square, high", number(s.rssHigh(), s));
            table.row("best limits", number(s.best(), s));
            table.row("mean", number(s.mean(), s));
            table.row("standard deviation", number(s.deviation(), s));
            lines.addAll(table.lines(columns));
        }
        if (!o.matters().isEmpty()) {
            lines.add("");
            lines.addAll(outdented("What matters most: squared correlation with what is left", columns));
            var table = new TableText("share", "dimension", "where", "more of it", "distribution");
            for (var m : o.matters()) {
                table.row(
                        percent(m.share()),
                        m.dimension(),
                        m.where() + (m.pieces() > 1 ? ", " + m.pieces() + " pieces" : ""),
                        m.rising() ? "leaves more" : "leaves less",
                        m.distribution().toString());
            }
            lines.addAll(table.lines(columns));
        }
        return lines;
    }

    private static String number(double value, Odds.Scatter s) {
        int decimals = s == null ? 2 : (int) Math.clamp(Math.ceil(1 - Math.log10(s.deviation())), 0, 4);
        return Numbers.fixed(value, decimals);
    }

    private static String percent(double share) {
        return Numbers.fixed(100 * share, share > 0.9995 && share < 1 ? 3 : share < 0.01 && share > 0 ? 2 : 1) + " %";
    }
}
