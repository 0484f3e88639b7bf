package beltwright.press.json;

import beltwright.check.Answer;
import beltwright.pairs.Mend;
import beltwright.pairs.Pair;
import beltwright.pairs.SlotCover;
import beltwright.pairs.Thing;
import beltwright.pairs.Things;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;

/// Pairs, slots and mends for scripts. A matrix is written as it is worked out, one pair a line, so that a reader can
/// follow while it runs.
public final class PairJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private PairJson() {}

    /// Writes a whole document: rows, columns, then every pair in row order.
    public static void write(Writer out, Things rows, Things columns, Stream<Pair> pairs) throws IOException {
        out.write("{\n  \"schema\": 1,\n  \"rows\": ");
        out.write(things(rows).toString());
        out.write(",\n  \"columns\": ");
        out.write(things(columns).toString());
        out.write(",\n  \"pairs\": [");
        String before = "\n    ";
        for (Iterator<Pair> each = pairs.iterator(); each.hasNext(); ) {
            out.write(before);
            out.write(of(each.next()).toString());
            before = ",\n    ";
        }
        out.write("\n  ]\n}\n");
        out.flush();
    }

    private static ObjectNode things(Things things) {
        var json = MAPPER.createObjectNode();
        json.put("of", things.words());
        var all = json.putArray("all");
        for (Thing thing : things.all()) {
            all.addObject().put("id", thing.id()).put("name", thing.name());
        }
        return json;
    }

    /// {@return one pair; its verdict is null where the two never meet}
    public static ObjectNode of(Pair pair) {
        var json = MAPPER.createObjectNode();
        json.put("row", pair.row());
        json.put("column", pair.column());
        json.put("verdict", pair.verdict() == null ? null : pair.verdict().toString());
        var decides = pair.decides();
        if (decides != null) {
            json.set("decides", of(decides));
        }
        json.put("asked", pair.asked());
        json.put("failing", pair.failing());
        DossierJson.number(json, "centreDistanceMm", pair.centreDistanceMm());
        pair.needs().forEach(json.putArray("needs")::add);
        if (!pair.refused().isEmpty()) {
            json.put("refused", pair.refused());
        }
        return json;
    }

    private static ObjectNode of(Answer answer) {
        var json = MAPPER.createObjectNode();
        json.put("key", answer.key());
        json.put("check", answer.check());
        json.put("verdict", answer.verdict().toString());
        json.put("unit", answer.unit());
        DossierJson.number(json, "slack", answer.slack());
        DossierJson.number(json, "slackWorst", answer.slackWorst());
        DossierJson.number(json, "slackBest", answer.slackBest());
        DossierJson.number(json, "marginWorst", answer.marginWorst());
        json.put("text", answer.slackText());
        return json;
    }

    public static ObjectNode of(SlotCover cover) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.put("mount", cover.mount().id());
        DossierJson.number(json, "slotMinMm", cover.slot().low());
        DossierJson.number(json, "slotMaxMm", cover.slot().high());
        var lines = json.putArray("lines");
        for (var line : cover.lines()) {
            var one = lines.addObject();
            var drives = one.putArray("drivePulleys");
            line.drives().forEach(p -> drives.add(p.id()));
            var wheels = one.putArray("wheelPulleys");
            line.wheels().forEach(p -> wheels.add(p.id()));
            var marks = one.putArray("marks");
            for (var mark : line.marks()) {
                var m = marks.addObject();
                m.put("teeth", mark.teeth());
                mark.belts().forEach(m.putArray("belts")::add);
                DossierJson.number(
                        m, "centreDistanceMm", mark.centreDistanceMm().nominal());
                DossierJson.number(
                        m, "centreDistanceMinMm", mark.centreDistanceMm().low());
                DossierJson.number(
                        m, "centreDistanceMaxMm", mark.centreDistanceMm().high());
                m.put("verdict", mark.verdict().toString());
                m.set("decides", of(mark.decides()));
            }
        }
        return json;
    }

    /// {@return the changes that mend a finding, smallest first; none where nothing does}
    public static ObjectNode of(String kit, String key, List<Mend> mends) {
        var json = MAPPER.createObjectNode();
        json.put("key", key);
        var changes = json.putArray("changes");
        for (var mend : mends) {
            var one = changes.addObject();
            one.put("change", mend.says());
            one.put("onShelf", mend.onShelf());
            one.put("becomes", mend.becomes().toString());
            var set = one.putArray("set");
            mend.fields().forEach(f -> set.add(kit + "." + f[0] + "=" + f[1]));
        }
        return json;
    }
}
