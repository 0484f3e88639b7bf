package beltwright.app.bench;

import beltwright.check.TensionCard;
import beltwright.check.WeakestLink;
import beltwright.layout.LayoutSolver;
import beltwright.press.chart.TensionChart;
import beltwright.press.chart.WeakestChart;
import beltwright.press.json.TensionJson;
import beltwright.press.json.WeakestJson;
import beltwright.press.svg.SvgWriter;
import beltwright.press.table.Table;
import beltwright.press.table.TensionTables;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/// How tight the belts of a kit are to be, and what of a drive gives first.
public final class TensionPages {
    private final Bench bench;

    TensionPages(Bench bench) {
        this.bench = bench;
    }

    /// A card as a page shows it, for one side or for both where they are alike.
    ///
    /// @param chart empty where the band cannot be told
    public record Belt(String sides, TensionCard card, String chart, Table rows) {}

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
        var road = road(ctx, "/tension");
        var belts = new ArrayList<Belt>();
        var estimates = new LinkedHashSet<String>();
        for (var card : cards(road)) {
            estimates.addAll(card.estimates());
            var last = belts.isEmpty() ? null : belts.getLast();
            if (last != null && last.card().alike(card)) {
                belts.set(
                        belts.size() - 1,
                        new Belt(last.sides() + " and " + card.side(), last.card(), last.chart(), last.rows()));
            } else {
                var chart = card.known() ? SvgWriter.inline(TensionChart.of(card), "tension-" + card.side()) : "";
                belts.add(new Belt(card.side().toString(), card, chart, TensionTables.card(card)));
            }
        }
        bench.render(
                ctx, "bench/tension.jte", Map.of("road", road, "belts", belts, "estimates", List.copyOf(estimates)));
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
