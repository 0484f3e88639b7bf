package beltwright.press.json;

import beltwright.assembly.Box;
import beltwright.assembly.Step;
import beltwright.assembly.Tally;
import beltwright.check.Finding;
import beltwright.check.FirstNumber;
import beltwright.check.Line;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.kit.Kit;
import beltwright.kit.Seat;
import beltwright.kit.Side;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DriveLayout;
import beltwright.layout.EndLayout;
import beltwright.quantity.Range;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/// The contract for scripts: the same dossier always gives the same text, and a number that is not known is `null`.
///
/// Names end with their unit, as in the engine; `docs/json.md` describes each.
public final class DossierJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private DossierJson() {}

    /// {@return the dossier as indented text, ending with a line feed}
    public static String text(Dossier dossier) {
        return text(of(dossier));
    }

    /// {@return any part of the contract as indented text, ending with a line feed}
    public static String text(JsonNode node) {
        return node.toPrettyString().replace(System.lineSeparator(), "\n") + "\n";
    }

    public static ObjectNode of(Dossier dossier) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.set("kit", kit(dossier.kit()));
        json.set("verdicts", verdicts(dossier.findings()));
        json.set("layout", layout(dossier));
        json.set("findings", each(dossier.findings(), DossierJson::of));
        json.set("numbers", each(dossier.numbers(), DossierJson::of));
        json.set("dimensions", each(dossier.dimensions(), DossierJson::of));
        json.set("box", box(dossier.box()));
        json.set("steps", each(dossier.steps(), DossierJson::of));
        json.set("tallies", each(dossier.tallies(), DossierJson::of));
        return json;
    }

    public static ObjectNode of(Finding f) {
        var json = MAPPER.createObjectNode();
        json.put("key", f.key());
        json.put("check", f.check());
        json.put("verdict", f.verdict().toString());
        number(json, "demand", f.demand());
        number(json, "capacity", f.capacity());
        json.put("unit", f.unit());
        number(json, "margin", f.margin());
        number(json, "demandWorst", f.demandWorst());
        number(json, "capacityWorst", f.capacityWorst());
        number(json, "marginWorst", f.marginWorst());
        number(json, "demandBest", f.demandBest());
        number(json, "capacityBest", f.capacityBest());
        number(json, "marginBest", f.marginBest());
        json.set("subjects", words(f.subjects()));
        json.set("needs", words(f.needs()));
        json.set("estimates", words(f.estimates()));
        json.put("says", f.says());
        json.put("remedy", f.remedy());
        json.put("source", f.source());
        json.set("working", each(f.working(), DossierJson::line));
        return json;
    }

    public static ObjectNode of(FirstNumber n) {
        var json = MAPPER.createObjectNode();
        json.put("key", n.key());
        json.put("name", n.name());
        json.put("symbol", n.symbol());
        number(json, "value", n.value());
        json.put("unit", n.unit());
        json.set("needs", words(n.needs()));
        json.set("estimates", words(n.estimates()));
        json.put("habit", n.habit());
        json.set("working", each(n.working(), DossierJson::line));
        return json;
    }

    public static ObjectNode of(DrawnDimension d) {
        var json = MAPPER.createObjectNode();
        json.put("name", d.name());
        json.put("view", word(d.view()));
        json.put("side", d.side().toString());
        number(json, "valueMm", d.valueMm());
        number(json, "fromXMm", d.fromX());
        number(json, "fromYMm", d.fromY());
        number(json, "toXMm", d.toX());
        number(json, "toYMm", d.toY());
        json.put("along", word(d.along()));
        json.put("diameter", d.diameter());
        json.put("finding", d.finding());
        return json;
    }

    public static ObjectNode of(Step step) {
        var json = MAPPER.createObjectNode();
        json.put("number", step.number());
        json.put("title", step.title());
        json.put("joint", step.joint());
        json.set("takes", each(step.takes(), DossierJson::take));
        json.set("tools", words(step.tools()));
        json.set("torque", torque(step.torque()));
        json.put("threadlocker", step.threadlocker());
        json.set("does", words(step.does()));
        json.set("cautions", words(step.cautions()));
        json.set("seats", words(step.seats()));
        json.set("after", words(step.after()));
        return json;
    }

    private static ObjectNode of(Tally t) {
        var json = MAPPER.createObjectNode();
        json.put("part", t.part());
        json.put("name", t.name());
        json.put("inBox", t.inBox());
        json.put("inSteps", t.inSteps());
        json.put("meets", t.meets());
        return json;
    }

    private static ObjectNode kit(Kit kit) {
        var json = MAPPER.createObjectNode();
        json.put("id", kit.id());
        json.put("name", kit.draft().name());
        json.put("invented", kit.draft().invented());
        json.put("note", kit.draft().note());
        json.set("seats", each(List.copyOf(kit.seats().values()), DossierJson::seat));
        return json;
    }

    private static ObjectNode seat(Seat seat) {
        var json = MAPPER.createObjectNode();
        json.put("seat", seat.name().toString());
        json.put("part", seat.part().id());
        json.put("name", seat.part().name());
        json.put("kind", seat.part().kind());
        json.put("revision", seat.part().label().revision());
        json.put("count", seat.count());
        json.put("fromRider", seat.fromRider());
        return json;
    }

    private static ObjectNode verdicts(List<Finding> findings) {
        var json = MAPPER.createObjectNode();
        json.put("fails", count(findings, Verdict.FAILS));
        json.put("cannotTell", count(findings, Verdict.CANNOT_TELL));
        json.put("marginal", count(findings, Verdict.MARGINAL));
        json.put("holds", count(findings, Verdict.HOLDS));
        return json;
    }

    private static int count(List<Finding> findings, Verdict verdict) {
        return Math.toIntExact(
                findings.stream().filter(f -> f.verdict() == verdict).count());
    }

    private static ObjectNode layout(Dossier dossier) {
        var json = MAPPER.createObjectNode();
        for (var end : dossier.layout().ends()) {
            var side = json.putObject(end.side().toString());
            drive(dossier, end.side()).ifPresent(d -> put(side, d));
            put(side, end);
        }
        return json;
    }

    private static Optional<DriveLayout> drive(Dossier dossier, Side side) {
        return dossier.layout().drives().stream().filter(d -> d.side() == side).findFirst();
    }

    private static void put(ObjectNode json, DriveLayout d) {
        json.put("closed", d.closed());
        range(json, "centreDistance", d.centreDistanceMm());
        range(json, "slotPosition", d.slotPositionMm());
        range(json, "slotTravelLeft", d.slotTravelLeftMm());
        number(json, "teethInMesh", d.teethInMesh().nominal());
        number(json, "wrapDeg", d.wrapDeg());
        number(json, "spanMm", d.spanMm());
        number(json, "motorXMm", d.motorXMm());
        number(json, "motorZMm", d.motorZMm());
        range(json, "plateOuter", d.plateOuterMm());
        range(json, "plateInner", d.plateInnerMm());
        range(json, "motorEnd", d.motorEndMm());
        range(json, "shaftEnd", d.shaftEndMm());
        range(json, "drivePulleyNear", d.drivePulleyNearMm());
        range(json, "driveRimMiddle", d.driveRimMiddleMm());
        range(json, "drivePulleyFar", d.drivePulleyFarMm());
        range(json, "wheelRimNear", d.wheelRimNearMm());
        range(json, "wheelRimMiddle", d.wheelRimMiddleMm());
        range(json, "wheelRimFar", d.wheelRimFarMm());
        range(json, "pulleySeat", d.pulleySeatMm());
    }

    private static void put(ObjectNode json, EndLayout e) {
        range(json, "ringOuter", e.ringOuterMm());
        range(json, "innerBearingOuter", e.innerBearingOuterMm());
        range(json, "coreMiddle", e.coreMiddleMm());
        range(json, "wheelInner", e.wheelInnerMm());
        range(json, "wheelOuter", e.wheelOuterMm());
        range(json, "stack", e.stackMm());
        range(json, "threadBegins", e.threadBeginsMm());
        range(json, "threadPastNut", e.threadPastNutMm());
    }

    private static ObjectNode box(Box box) {
        var json = MAPPER.createObjectNode();
        json.put("pieces", box.pieces());
        json.set("items", each(box.items(), DossierJson::item));
        return json;
    }

    private static ObjectNode item(Box.Item item) {
        var json = MAPPER.createObjectNode();
        json.put("part", item.part());
        json.put("name", item.name());
        json.put("kind", item.kind());
        json.put("revision", item.revision());
        json.put("count", item.count());
        number(json, "massKg", item.massKg());
        json.set("seats", words(item.seats()));
        return json;
    }

    private static ObjectNode take(Step.Take take) {
        var json = MAPPER.createObjectNode();
        json.put("part", take.part());
        json.put("name", take.name());
        json.put("count", take.count());
        json.put("seat", take.seat());
        json.put("fromRider", take.fromRider());
        return json;
    }

    private static @Nullable ObjectNode torque(Step.@Nullable Torque torque) {
        if (torque == null) {
            return null;
        }
        var json = MAPPER.createObjectNode();
        number(json, "torqueNm", torque.torqueNm());
        json.put("basis", torque.basis());
        return json;
    }

    private static ObjectNode line(Line line) {
        var json = MAPPER.createObjectNode();
        json.put("symbol", line.symbol());
        json.put("formula", line.formula());
        json.put("numbers", line.numbers());
        number(json, "value", line.value());
        json.put("unit", line.unit());
        json.put("source", line.source());
        return json;
    }

    private static void range(ObjectNode json, String name, Range range) {
        number(json, name + "Mm", range.nominal());
        number(json, name + "LowMm", range.low());
        number(json, name + "HighMm", range.high());
    }

    /// JSON has no word for a number that is not known or not finite: it is `null`, and the finding's `needs` say why.
    static void number(ObjectNode json, String name, @Nullable Double value) {
        json.set(name, value == null || !Double.isFinite(value) ? NODES.nullNode() : NODES.numberNode(value));
    }

    private static ArrayNode words(List<String> words) {
        return each(words, NODES::textNode);
    }

    private static <T> ArrayNode each(List<T> all, Function<T, ? extends JsonNode> toJson) {
        var array = MAPPER.createArrayNode();
        all.forEach(one -> array.add(toJson.apply(one)));
        return array;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
