package beltwright.app.bench;

import beltwright.press.chart.SpreadChart;
import beltwright.press.json.SpreadJson;
import beltwright.press.svg.SvgWriter;
import beltwright.press.table.SpreadTables;
import beltwright.press.table.Table;
import beltwright.quantity.Refusal;
import beltwright.spread.Odds;
import beltwright.spread.Sampling;
import beltwright.spread.Spread;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/// How sure the findings of a kit are: the kit of the address drawn many times, number of kits and seed in the address.
public final class SpreadPages {
    static final String PAGE = "/spread";
    private static final int MOST = 50_000;
    private static final int DRAWN = 12;
    private static final int KEPT = 8;

    private final Bench bench;
    private final Hands hands = new Hands(Runtime.getRuntime().availableProcessors());
    private final Map<Asked, Spread> known = new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Spread> eldest) {
            return size() > KEPT;
        }
    };
    private @Nullable Shelf knownOn;

    /// What a spread depends on beside the store.
    private record Asked(Draft draft, int kits, long seed) {}

    SpreadPages(Bench bench) {
        this.bench = bench;
    }

    /// One finding as the page shows it.
    ///
    /// @param chart empty where nothing varies or it is a yes-or-no question
    public record Shown(Odds odds, String chart, @Nullable Table left) {
        static Shown of(Odds odds, boolean drawn) {
            var s = odds.scatter();
            return new Shown(
                    odds,
                    s == null || !drawn
                            ? ""
                            : SvgWriter.inline(
                                    SpreadChart.of(odds, s),
                                    "spread-" + odds.finding().key().replace('.', '-')),
                    s == null ? null : SpreadTables.left(odds, s));
        }

        public String name() {
            return SpreadTables.name(odds);
        }

        public String mark() {
            return odds.finding().verdict().toString().replace(' ', '-');
        }

        public String percent() {
            return SpreadTables.percent(odds.share().value());
        }

        public String told() {
            return SpreadTables.told(odds.share());
        }
    }

    /// A spread with what its page asks.
    ///
    /// @param of key of the finding that is opened; empty where none is asked for
    /// @param shown the findings that are not sure, the one asked for first
    /// @param refused field, value and reason of a value that was not taken; empty where all was
    public record View(RoadSheet road, Spread spread, String of, List<Shown> shown, List<String> refused) {
        public String kits() {
            return String.valueOf(spread.kits());
        }

        public String seed() {
            return String.valueOf(spread.seed());
        }

        public String together() {
            return SpreadTables.percent(spread.goesTogether().value());
        }

        public String togetherTold() {
            return SpreadTables.told(spread.goesTogether());
        }

        public String address(String page, String key) {
            return road.address(page, "kits", kits(), "seed", seed(), "of", key);
        }

        /// {@return the sheet of this draft with the odds of this spread at its rungs}
        public String ladder() {
            return road.address("", "odds", kits(), "seed", seed());
        }

        public List<String> estimates() {
            var all = new LinkedHashSet<String>();
            spread.odds().forEach(o -> all.addAll(o.finding().estimates()));
            return List.copyOf(all);
        }
    }

    void page(Context ctx) {
        var field = asked(ctx, "field");
        if (field.isEmpty()) {
            show(ctx, List.of());
            return;
        }
        var draft = Bench.draft(ctx);
        var value = asked(ctx, "value");
        try {
            var next = draft.with(Edit.parse(field + "=" + value));
            var road = RoadSheet.of(bench.shelf(), next, PAGE);
            ctx.redirect(
                    road.address(PAGE, "kits", asked(ctx, "kits"), "seed", asked(ctx, "seed"), "of", asked(ctx, "of")),
                    HttpStatus.SEE_OTHER);
        } catch (Refusal r) {
            ctx.status(422);
            show(ctx, List.of(field, value, r.wrong() + "; allowed: " + r.allowed() + "; " + r.mend()));
        }
    }

    private void show(Context ctx, List<String> refused) {
        var road = RoadSheet.of(bench.shelf(), Bench.draft(ctx), PAGE);
        var spread = spread(road.draft(), kits(ctx, "kits"), seed(ctx));
        var of = asked(ctx, "of");
        var shown = new ArrayList<Shown>();
        if (!of.isEmpty()) {
            shown.add(Shown.of(found(spread, of), true));
        }
        spread.unsure().stream()
                .filter(o -> !o.finding().key().equals(of))
                .forEach(o -> shown.add(Shown.of(o, shown.size() < DRAWN)));
        bench.render(ctx, "bench/spread.jte", Map.of("view", new View(road, spread, of, List.copyOf(shown), refused)));
    }

    void json(Context ctx) {
        var spread = spread(Bench.draft(ctx), kits(ctx, "kits"), seed(ctx));
        var of = asked(ctx, "of");
        Bench.json(ctx, SpreadJson.of(spread, of.isEmpty() ? spread.odds() : List.of(found(spread, of))));
    }

    /// {@return the odds of each finding by its key, as a rung of the ladder tells them; none where none are asked for}
    Map<String, String> odds(Context ctx) {
        if (asked(ctx, "odds").isEmpty()) {
            return Map.of();
        }
        var spread = spread(Bench.draft(ctx), kits(ctx, "odds"), seed(ctx));
        var odds = new HashMap<String, String>();
        spread.odds().stream()
                .filter(Odds::told)
                .forEach(o -> odds.put(o.finding().key(), SpreadTables.rung(o)));
        return odds;
    }

    private static Odds found(Spread spread, String key) {
        return spread.odds().stream()
                .filter(o -> o.finding().key().equals(key))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        "of",
                        "this kit has no finding '" + key + "'",
                        "a key of this kit, as its JSON lists them",
                        "choose a finding from the list"));
    }

    /// A page, its charts and the ladder ask for the same spread one after the other.
    private synchronized Spread spread(Draft draft, int kits, long seed) {
        var shelf = bench.shelf();
        if (knownOn != shelf) {
            known.clear();
            knownOn = shelf;
        }
        return known.computeIfAbsent(
                new Asked(draft, kits, seed),
                a -> Sampling.of(draft.over(shelf).kit(draft.kit()), kits, seed, hands, () -> false));
    }

    private static String asked(Context ctx, String name) {
        return Objects.requireNonNullElse(ctx.queryParam(name), "").strip();
    }

    private static int kits(Context ctx, String name) {
        var typed = asked(ctx, name);
        if (typed.isEmpty()) {
            return Sampling.USUAL;
        }
        if (typed.matches("[0-9]{1,6}")) {
            int kits = Integer.parseInt(typed);
            if (kits >= 1 && kits <= MOST) {
                return kits;
            }
        }
        throw new Refusal(
                name, "'" + typed + "' kits", "1 to " + MOST, "ask for fewer; './beltwright spread' draws more");
    }

    private static long seed(Context ctx) {
        var typed = asked(ctx, "seed");
        if (typed.isEmpty()) {
            return 1;
        }
        if (typed.matches("-?[0-9]{1,18}")) {
            return Long.parseLong(typed);
        }
        throw new Refusal("seed", "'" + typed + "' is no whole number", "a whole number", "give another seed");
    }
}
