package beltwright.press.json;

import beltwright.check.TensionCard;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/// Tension cards for scripts: with `k` and the band, what is heard can be turned into a tension elsewhere.
public final class TensionJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private TensionJson() {}

    /// {@return how tight the belts of a kit are to be}
    public static ObjectNode of(String kit, List<TensionCard> cards) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.put("kit", kit);
        TensionCard.CAUTIONS.forEach(json.putArray("cautions")::add);
        var all = json.putArray("cards");
        cards.forEach(card -> all.add(of(card)));
        return json;
    }

    private static ObjectNode of(TensionCard card) {
        var json = MAPPER.createObjectNode();
        json.put("side", card.side().toString());
        json.put("band", card.band());
        json.put("sure", card.sure());
        json.put("why", card.why());
        json.put("leastBecause", card.leastBecause());
        json.put("because", card.because());
        json.put("chosen", card.chosen());
        json.put("outside", card.outside());
        at(json.putObject("least"), card, card.leastN());
        at(json.putObject("target"), card, card.setN());
        at(json.putObject("most"), card, card.mostN());
        var stands = json.putArray("stands");
        for (var part : card.stands()) {
            var one = stands.addObject();
            one.put("part", part.part());
            DossierJson.number(
                    one, "tensionN", part.ends() || Double.isNaN(part.tensionN()) ? part.tensionN() : Double.NaN);
            one.put("ends", part.ends());
            one.put("finding", part.question());
        }
        DossierJson.number(json, "effectiveN", card.effectiveN());
        DossierJson.number(json, "effectiveWorstN", card.effectiveWorstN());
        DossierJson.number(json, "spanMm", card.spanMm());
        DossierJson.number(json, "kNPerHz2", card.factor());
        DossierJson.number(json, "offsetN", card.offsetN());
        json.put("calibrated", card.calibrated());
        DossierJson.number(json, "deflectionMm", card.deflectionMm());
        DossierJson.number(json, "rippleN", card.rippleN());
        DossierJson.number(json, "warmerN", card.warmerN());
        DossierJson.number(json, "warmC", card.warmC());
        words(json.putArray("steps"), card.steps());
        words(json.putArray("notes"), card.notes());
        words(json.putArray("needs"), card.needs());
        words(json.putArray("estimates"), card.estimates());
        return json;
    }

    private static void at(ObjectNode json, TensionCard card, double tensionN) {
        DossierJson.number(json, "tensionN", tensionN);
        DossierJson.number(json, "frequencyHz", card.frequencyHz(tensionN));
        DossierJson.number(json, "forceN", card.forceN(tensionN));
    }

    private static void words(ArrayNode into, List<String> words) {
        words.forEach(into::add);
    }
}
