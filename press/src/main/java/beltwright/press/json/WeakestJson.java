package beltwright.press.json;

import beltwright.check.WeakestLink;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// What gives first as the torque of a motor rises, for scripts.
public final class WeakestJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private WeakestJson() {}

    /// {@return the links of every drive of a kit}
    public static ObjectNode of(String kit, List<WeakestLink.Chain> chains) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.put("kit", kit);
        var all = json.putArray("chains");
        chains.forEach(chain -> all.add(of(chain)));
        return json;
    }

    private static ObjectNode of(WeakestLink.Chain chain) {
        var json = MAPPER.createObjectNode();
        json.put("side", chain.side().toString());
        DossierJson.number(json, "driveNm", chain.driveNm());
        DossierJson.number(json, "brakeNm", chain.brakeNm());
        json.put("drivingGives", name(chain.firstToGive(false)));
        json.put("brakingGives", name(chain.firstToGive(true)));
        var links = json.putArray("links");
        for (var link : chain.links()) {
            var one = links.addObject();
            one.put("name", link.name());
            one.put("finding", link.key());
            one.put("kind", link.kind().name().toLowerCase(Locale.ROOT));
            DossierJson.number(one, "driveNm", link.driveNm());
            DossierJson.number(one, "driveWorstNm", link.driveWorstNm());
            DossierJson.number(one, "brakeNm", link.brakeNm());
            DossierJson.number(one, "brakeWorstNm", link.brakeWorstNm());
            one.put("early", chain.early(link));
            one.put("under", link.under());
        }
        chain.needs().forEach(json.putArray("needs")::add);
        chain.estimates().forEach(json.putArray("estimates")::add);
        return json;
    }

    private static String name(Optional<WeakestLink.Link> link) {
        return link.map(WeakestLink.Link::name).orElse("");
    }
}
