package beltwright.app.bench;

import beltwright.check.TensionCard;
import beltwright.check.WeakestLink;
import beltwright.layout.LayoutSolver;
import beltwright.press.chart.PluckFigure;
import beltwright.press.chart.TensionChart;
import beltwright.press.chart.WeakestChart;
import beltwright.press.json.TensionJson;
import beltwright.press.json.WeakestJson;
import beltwright.press.svg.SvgWriter;
import beltwright.press.table.Table;
import beltwright.press.table.TensionTables;
import beltwright.quantity.Refusal;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/// How tight the belts of a kit are to be, tests of them that are recorded, and what of a drive gives first.
public final class TensionPages {
    private final Bench bench;

    TensionPages(Bench bench) {
        this.bench = bench;
    }

    /// A card as a page shows it, for one side or for both where they are alike.
    ///
    /// @param figure where to pluck
    /// @param chart empty where the band cannot be told
    public record Belt(String sides, TensionCard card, String figure, String chart, Table rows) {}

    /// The links of one drive as a page shows them.
    ///
    /// @param links addresses of the findings, a row each; empty where there is none
    public record Links(WeakestLink.Chain chain, String chart, Table table, List<String> links) {}

    private RoadSheet road(Context ctx, String here) {
        return RoadSheet.of(bench.shelf(), Bench.draft(ctx), here);
    }

    private static List<TensionCard> cards(RoadSheet road) {
        return TensionCard.of(road.kit(), LayoutSolver.solve(road.kit()));
    }

    private static List<WeakestLink.Chain> chains(RoadSheet road) {
        return WeakestLink.of(road.kit(), LayoutSolver.solve(road.kit()));
    }

    void tension(Context ctx) {
        show(ctx, road(ctx, "/tension"), new TypedForm(Map.of()), new TypedForm(Map.of()));
    }

    /// @param jump what was typed of a jump test
    /// @param hung what was typed of a hung weight
    void show(Context ctx, RoadSheet road, TypedForm jump, TypedForm hung) {
        var belts = new ArrayList<Belt>();
        var estimates = new LinkedHashSet<String>();
        var layout = LayoutSolver.solve(road.kit());
        var cards = TensionCard.of(road.kit(), layout);
        for (var card : cards) {
            estimates.addAll(card.estimates());
            var last = belts.isEmpty() ? null : belts.getLast();
            if (last != null && last.card().alike(card)) {
                belts.set(
                        belts.size() - 1,
                        new Belt(
                                last.sides() + " and " + card.side(),
                                last.card(),
                                last.figure(),
                                last.chart(),
                                last.rows()));
            } else {
                var chart = card.known() ? SvgWriter.inline(TensionChart.of(card), "tension-" + card.side()) : "";
                int one = cards.indexOf(card); // drives, their layouts and cards come in one order
                var figure = SvgWriter.inline(
                        PluckFigure.of(
                                road.kit().drives().get(one), layout.drives().get(one), card),
                        "pluck-" + card.side());
                belts.add(new Belt(card.side().toString(), card, figure, chart, TensionTables.card(card)));
            }
        }
        bench.render(
                ctx,
                "bench/tension.jte",
                Map.of(
                        "road",
                        road,
                        "belts",
                        belts,
                        "tests",
                        BeltTests.of(road.kit(), cards, jump, hung),
                        "estimates",
                        List.copyOf(estimates)));
    }

    /// Records a jump test, or shows the page again with what is wrong beside each field and keeps nothing.
    void jump(Context ctx) {
        var typed = TypedForm.of(ctx);
        record(ctx, typed, new TypedForm(Map.of()), typed);
    }

    /// As above, a weight hung on a belt.
    void hung(Context ctx) {
        var typed = TypedForm.of(ctx);
        record(ctx, new TypedForm(Map.of()), typed, typed);
    }

    private void record(Context ctx, TypedForm jump, TypedForm hung, TypedForm typed) {
        var road = road(ctx, "/tension");
        if (!road.edits().isEmpty()) {
            throw new Refusal(
                    "set",
                    "the page shows a draft, and nobody can have tested what is not kept",
                    "tests of the kit as it is kept",
                    "keep the draft on the sheet, or take it back, and record the test then");
        }
        var kit = road.kit();
        var edits = typed == jump ? BeltTests.jump(kit, cards(road), typed) : BeltTests.hung(kit, typed);
        if (typed.sound()) {
            try {
                bench.workshop().keep(edits);
                ctx.redirect(road.address("/tension") + "#tests", HttpStatus.SEE_OTHER);
                return;
            } catch (Refusal r) {
                BeltTests.refused(r, typed);
            }
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, road, jump, hung);
    }

    void weakest(Context ctx) {
        var road = road(ctx, "/weakest");
        var drives = new ArrayList<Links>();
        var estimates = new LinkedHashSet<String>();
        for (var chain : chains(road)) {
            estimates.addAll(chain.estimates());
            drives.add(new Links(
                    chain,
                    SvgWriter.inline(WeakestChart.of(chain), "weakest-" + chain.side()),
                    TensionTables.links(chain),
                    chain.links().stream()
                            .map(l -> l.key().isEmpty() ? "" : road.address("") + "#f-" + l.key())
                            .toList()));
        }
        bench.render(
                ctx, "bench/weakest.jte", Map.of("road", road, "drives", drives, "estimates", List.copyOf(estimates)));
    }

    void tensionJson(Context ctx) {
        var road = road(ctx, "/tension");
        Bench.json(ctx, TensionJson.of(road.kit().id(), cards(road)));
    }

    void weakestJson(Context ctx) {
        var road = road(ctx, "/weakest");
        Bench.json(ctx, WeakestJson.of(road.kit().id(), chains(road)));
    }
}
