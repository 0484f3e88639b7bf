package beltwright.press.table;

import beltwright.quantity.Numbers;
import beltwright.spread.Odds;
import beltwright.spread.Spread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// A spread in rows, the same for terminal and page.
public final class SpreadTables {
    private static final int NAMED = 3;
    private static final double NOTICED = 0.25; // of a standard deviation, between nominal and middle

    private SpreadTables() {}

    /// {@return findings with their odds; what is to spare at the worst limits and at percentiles of the kits drawn}
    public static Table findings(List<Odds> odds) {
        return new Table(
                List.of("finding", "odds", "±", "worst", "1 %", "50 %", "99 %", "unit", "matters most"),
                List.of(
                        "%s",
                        "holds in %s",
                        "± %s",
                        "to spare at worst limits %s",
                        "1 %% of kits below %s",
                        "half below %s",
                        "99 %% below %s",
                        "in %s",
                        "matters most: %s"),
                odds.stream().map(SpreadTables::finding).toList());
    }

    private static List<String> finding(Odds o) {
        var f = o.finding();
        var s = o.scatter();
        return List.of(
                name(o),
                percent(o.share().value()),
                percent(o.share().standardError()),
                f.unit().isEmpty() ? "" : number(f.capacityWorst() - f.demandWorst(), s),
                s == null ? "" : number(s.percentiles().get(0), s),
                s == null ? "" : number(s.percentiles().get(2), s),
                s == null ? "" : number(s.percentiles().get(4), s),
                f.unit(),
                o.matters().stream()
                        .limit(NAMED)
                        .map(m -> percent(m.share()) + " " + m.dimension() + " of " + m.where())
                        .collect(Collectors.joining(", ")));
    }

    /// {@return the question and its side}
    public static String name(Odds o) {
        var side = o.finding().side();
        return o.finding().check() + (side.equals("kit") ? "" : ", " + side);
    }

    /// {@return what is to spare in one finding: limits, root-sum-square and percentiles, smallest first}
    public static Table left(Odds o, Odds.Scatter s) {
        var rows = new ArrayList<List<String>>();
        var f = o.finding();
        rows.add(List.of("nominal", number(f.capacity() - f.demand(), s)));
        rows.add(List.of("worst limits", number(s.worst(), s)));
        rows.add(List.of("root-sum-square, low", number(s.rssLow(), s)));
        for (int i = 0; i < s.percentiles().size(); i++) {
            rows.add(List.of(
                    Odds.Scatter.PERCENT.get(i) + " % of kits below",
                    number(s.percentiles().get(i), s)));
        }
        rows.add(List.of("root-sum-square, high", number(s.rssHigh(), s)));
        rows.add(List.of("best limits", number(s.best(), s)));
        rows.add(List.of("mean", number(s.mean(), s)));
        rows.add(List.of("standard deviation", number(s.deviation(), s)));
        return new Table(List.of("", ""), rows);
    }

    /// What 'to spare' means beside the 'left' of a rung.
    public static final String SPARE =
            "To spare: what there is less what is wanted. A rung's own 'left' is the distance itself, before what is to"
                    + " stay free is taken off.";

    /// {@return nominal, worst and the middle of the draws in words, and why the middle is not the nominal}
    public static String words(Odds o, Odds.Scatter s) {
        var f = o.finding();
        double nominal = f.capacity() - f.demand();
        double half = s.percentiles().get(Odds.Scatter.PERCENT.indexOf(50));
        var unit = f.unit().isEmpty() ? "" : " " + f.unit();
        var words = "To spare" + (f.unit().isEmpty() ? "" : " (" + f.unit() + ")") + ": nominal " + number(nominal, s)
                + ", at the worst limits " + number(s.worst(), s) + "; half of the kits drawn have less than "
                + number(half, s) + unit + ".";
        if (Math.abs(half - nominal) < NOTICED * s.deviation()) {
            return words;
        }
        var why = new ArrayList<String>();
        o.matters().stream()
                .filter(m -> m.pieces() > 1)
                .max(Comparator.comparingDouble(Odds.Influence::share))
                .ifPresent(
                        m -> why.add("the worst of several pieces counts, each drawn on its own (" + where(m) + ")"));
        if (Math.abs(s.middle() - nominal) >= NOTICED * s.deviation()) {
            why.add(
                    "limits are not even about their nominal: with every dimension in the middle of its limits there is "
                            + number(s.middle(), s) + unit);
        }
        return words + " That is not the nominal, because "
                + (why.isEmpty() ? "what is drawn does not act in proportion" : String.join(", and ", why)) + ".";
    }

    /// {@return what moves one finding, most first}
    public static Table matters(Odds o) {
        return new Table(
                List.of("dimension", "share", "typed", "where", "more of it", "spread"),
                o.matters().stream()
                        .map(m -> List.of(
                                m.dimension(),
                                percent(m.share()),
                                m.typed(),
                                where(m),
                                m.rising() ? "more to spare" : "less to spare",
                                m.distribution().toString()))
                        .toList());
    }

    /// {@return the seat, and how many pieces of it are drawn}
    public static String where(Odds.Influence m) {
        return m.where() + (m.pieces() > 1 ? ", " + m.pieces() + " pieces" : "");
    }

    /// {@return margin, band and odds of one finding, as a rung of the ladder tells them}
    public static String rung(Odds o) {
        var f = o.finding();
        var odds = "holds in " + percent(o.share().value()) + " of " + o.kits() + " kits drawn";
        return f.margin() == null
                ? odds
                : "margin " + margin(f.margin()) + ", " + margin(f.marginWorst()) + " to " + margin(f.marginBest())
                        + "; " + odds;
    }

    private static String margin(@Nullable Double margin) {
        return margin == null ? "unknown" : (margin < 0 ? "" : "+") + Numbers.fixed(100 * margin, 0) + " %";
    }

    /// {@return a share with its standard error and the interval that covers the true one 19 times in 20}
    public static String told(Spread.Share share) {
        return percent(share.value()) + " ± " + percent(share.standardError()) + ", 19 times in 20 between "
                + percent(share.least()) + " and " + percent(share.most());
    }

    /// {@return what is to be said of the kits in which a finding was not told, or not asked; mostly nothing}
    public static String aside(Odds o) {
        return (o.untold() == 0 ? "" : "; in " + o.untold() + " kits it cannot be told")
                + (o.asked() == o.kits()
                        ? ""
                        : "; asked in the first " + o.asked() + ", the others follow from the limits");
    }

    public static String percent(double share) {
        double percent = 100 * share;
        boolean nearTheEnds = (percent > 0 && percent < 1) || (percent > 99 && percent < 100);
        return Numbers.fixed(percent, nearTheEnds ? 2 : 1) + " %";
    }

    /// {@return a value with as many digits as its spread carries}
    public static String number(double value, Odds.@Nullable Scatter s) {
        int decimals = s == null ? 2 : (int) Math.clamp(Math.ceil(1 - Math.log10(s.deviation())), 0, 4);
        return Numbers.fixed(value, decimals);
    }
}
