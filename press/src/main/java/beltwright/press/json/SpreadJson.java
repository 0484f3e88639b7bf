package beltwright.press.json;

import beltwright.spread.Odds;
import beltwright.spread.Spread;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/// A spread for scripts.
public final class SpreadJson {
    private SpreadJson() {}

    /// @param odds the findings to print
    public static ObjectNode of(Spread spread, List<Odds> odds) {
        var json = JsonNodeFactory.instance.objectNode();
        json.put("schema", 1).put("kit", spread.kit()).put("kits", spread.kits());
        json.put("seed", spread.seed()).put("inputs", spread.inputs());
        var together = json.putObject("together");
        share(together, spread.goesTogether());
        spread.counted().forEach(together.putArray("counted")::add);
        spread.untold().forEach(together.putArray("untold")::add);
        var findings = json.putArray("findings");
        odds.forEach(o -> findings.add(of(o)));
        return json;
    }

    private static ObjectNode of(Odds o) {
        var json = JsonNodeFactory.instance.objectNode();
        var f = o.finding();
        json.put("key", f.key())
                .put("check", f.check())
                .put("verdict", f.verdict().toString());
        json.put("unit", f.unit()).put("fit", o.fit());
        if (o.told()) {
            share(json, o.share());
        } else {
            List.of("kits", "odds", "standardError", "least", "most").forEach(json::putNull);
        }
        json.put("asked", o.asked()).put("untold", o.untold());
        var s = o.scatter();
        var slack = json.putObject("slack");
        DossierJson.number(slack, "nominal", f.capacity() - f.demand());
        DossierJson.number(slack, "mean", s == null ? Double.NaN : s.mean());
        DossierJson.number(slack, "deviation", s == null ? Double.NaN : s.deviation());
        DossierJson.number(slack, "worst", f.capacityWorst() - f.demandWorst());
        DossierJson.number(slack, "best", f.capacityBest() - f.demandBest());
        DossierJson.number(slack, "middle", s == null ? Double.NaN : s.middle());
        DossierJson.number(slack, "rssLow", s == null ? Double.NaN : s.rssLow());
        DossierJson.number(slack, "rssHigh", s == null ? Double.NaN : s.rssHigh());
        var percentiles = slack.putArray("percentiles");
        var histogram = slack.putObject("histogram");
        DossierJson.number(
                histogram, "low", s == null ? Double.NaN : s.histogram().low());
        DossierJson.number(
                histogram, "high", s == null ? Double.NaN : s.histogram().high());
        var counts = histogram.putArray("counts");
        if (s != null) {
            for (int i = 0; i < Odds.Scatter.PERCENT.size(); i++) {
                var one = percentiles.addObject().put("percent", Odds.Scatter.PERCENT.get(i));
                DossierJson.number(one, "value", s.percentiles().get(i));
            }
            s.histogram().counts().forEach(counts::add);
        }
        var matters = json.putArray("matters");
        for (var m : o.matters()) {
            var one = matters.addObject().put("where", m.where()).put("dimension", m.dimension());
            one.put("typed", m.typed());
            one.put("pieces", m.pieces()).put("distribution", m.distribution().toString());
            DossierJson.number(one, "share", m.share());
            one.put("rising", m.rising());
        }
        f.needs().forEach(json.putArray("needs")::add);
        f.estimates().forEach(json.putArray("estimates")::add);
        return json;
    }

    private static void share(ObjectNode json, Spread.Share share) {
        json.put("kits", share.of());
        DossierJson.number(json, "odds", share.value());
        DossierJson.number(json, "standardError", share.standardError());
        DossierJson.number(json, "least", share.least());
        DossierJson.number(json, "most", share.most());
    }
}
