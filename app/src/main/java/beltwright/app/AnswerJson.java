package beltwright.app;

import beltwright.change.Change;
import beltwright.dossier.Dossier;
import beltwright.press.json.DossierJson;
import beltwright.press.json.RideJson;
import beltwright.press.table.Ridden;
import beltwright.ride.Board;
import beltwright.ride.Route;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.Document;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/// The answers to scripts of the commands that are about more, or less, than one dossier.
final class AnswerJson {
    private static final int SCHEMA = 1;

    private AnswerJson() {}

    static ObjectNode kits(List<Dossier> dossiers) {
        var json = answer();
        var kits = json.putArray("kits");
        dossiers.forEach(dossier -> kits.add(kit(dossier)));
        return json;
    }

    private static ObjectNode kit(Dossier dossier) {
        var whole = DossierJson.of(dossier);
        var kit = JsonNodeFactory.instance.objectNode();
        kit.put("id", dossier.kit().id());
        kit.put("name", dossier.kit().draft().name());
        kit.put("invented", dossier.kit().draft().invented());
        kit.set("verdicts", verdicts(whole));
        return kit;
    }

    private static JsonNode verdicts(ObjectNode dossier) {
        return Objects.requireNonNull(dossier.get("verdicts"));
    }

    static ObjectNode imported(Workshop.Import done, List<String> leftOut) {
        var json = answer();
        documents(json, done.saved());
        var mistakes = json.putArray("mistakes");
        for (var mistake : done.mistakes()) {
            mistakes.addObject()
                    .put("file", mistake.file())
                    .put("line", mistake.line())
                    .put("field", mistake.field())
                    .put("wrong", mistake.wrong())
                    .put("allowed", mistake.allowed())
                    .put("mend", mistake.mend());
        }
        leftOut.forEach(json.putArray("leftOut")::add);
        return json;
    }

    static ObjectNode exported(String folder, List<Document> documents) {
        var json = answer();
        json.put("folder", folder);
        documents(json, documents);
        return json;
    }

    /// As above, for tables.
    static ObjectNode exportedTables(String folder, List<String> files) {
        var json = answer();
        json.put("folder", folder);
        files.forEach(json.putArray("files")::add);
        return json;
    }

    private static void documents(ObjectNode json, List<Document> documents) {
        var array = json.putArray("documents");
        documents.forEach(
                d -> array.addObject().put("type", d.type().toString()).put("id", d.id()));
    }

    static ObjectNode changed(List<String> set, Dossier before, Dossier after, Change change) {
        var json = answer();
        json.put("kit", after.kit().id());
        set.forEach(json.putArray("set")::add);
        var moved = json.putArray("moved");
        for (var m : change.moved()) {
            moved.addObject()
                    .put("what", m.what().toString())
                    .put("key", m.key())
                    .put("name", m.name())
                    .put("before", m.before())
                    .put("after", m.after());
        }
        json.set("before", DossierJson.of(before));
        json.set("after", DossierJson.of(after));
        return json;
    }

    static ObjectNode demo(String workshop, List<Dossier> dossiers, List<String> files) {
        var json = kits(dossiers);
        json.put("workshop", workshop);
        files.forEach(json.putArray("files")::add);
        return json;
    }

    /// One ride, or two under `rides`, each with what its kit rests on.
    static ObjectNode rides(List<Ridden> ridden) {
        var all = ridden.stream().map(r -> rests(RideJson.of(r), r.board())).toList();
        return all.size() == 1 ? all.getFirst() : both(all);
    }

    /// As above, where a number is missing: nothing was ridden.
    static ObjectNode noRide(Route route, Map<String, Board> boards) {
        var all = new ArrayList<ObjectNode>();
        boards.forEach((kit, board) -> all.add(rests(answer().put("kit", kit).put("route", route.id()), board)));
        return all.size() == 1 ? all.getFirst() : both(all);
    }

    private static ObjectNode both(List<ObjectNode> rides) {
        var json = answer();
        json.putArray("rides").addAll(rides);
        return json;
    }

    private static ObjectNode rests(ObjectNode json, Board board) {
        board.needs().forEach(json.putArray("needs")::add);
        board.estimates().forEach(json.putArray("estimates")::add);
        board.notes().forEach(json.putArray("notes")::add);
        return json;
    }

    static ObjectNode serving(String address) {
        return answer().put("address", address);
    }

    private static ObjectNode answer() {
        return JsonNodeFactory.instance.objectNode().put("schema", SCHEMA);
    }
}
