package beltwright.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.part.Wheel;
import beltwright.quantity.Source;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EntryPagesTest {
    private static final String WHEEL = """
            schema: 1
            part: wheel-own
            kind: wheel
            name: Wheel of several sources
            revision: B
            source: measured, caliper
            note: invented
            dimensions:
              diameterMm: 90
              wornDiameterMm: {value: 84, source: estimate}
              widthMm: 50 ± 0.3
              bearingSeatMm: {value: 22 N7, source: "measured, bore gauge"}
              openings: 0
              openingWidthMm: {value: 9, source: data sheet}
              screwHoles: 0
              coreMaterial: core-plastic
            """;

    @TempDir
    static Path folder;

    static Visitor visitor;

    @BeforeAll
    static void open() {
        visitor = new Visitor(folder).withDemo();
    }

    @AfterAll
    static void close() {
        visitor.close();
    }

    @BeforeEach
    void keepTheWheel() {
        var cells = beltwright.workshop.document.PartRow.write(part(WHEEL));
        assertThat(visitor.workshop.importPart(
                        Kinds.WHEEL, cells, visitor.workshop.store().documents().containsKey("wheel-own")))
                .isEmpty();
    }

    private static Part part(String file) {
        return ((Document.OfPart) Codec.readOne("a file", file)).part();
    }

    private static Map<String, String> texts() {
        var texts = new TreeMap<String, String>();
        visitor.workshop.store().documents().forEach((id, document) -> {
            if (document instanceof Document.OfPart) {
                texts.put(id, Codec.write(document));
            }
        });
        return texts;
    }

    private static Map<String, String> form(String id) {
        return Visitor.form(visitor.get("parts/" + id).body());
    }

    private static Wheel wheel() {
        return (Wheel) visitor.workshop.shelf().part("wheel-own");
    }

    @Test
    void savedAsItIsNothingChanges() {
        var before = texts();
        assertThat(before.size()).isGreaterThan(40);
        for (var id : before.keySet()) {
            assertThat(visitor.post("parts/save", form(id)).statusCode()).as(id).isEqualTo(303);
        }
        assertThat(texts()).isEqualTo(before);
    }

    @Test
    void whatWasNotAskedStays() {
        var form = form("wheel-own");
        form.keySet().removeIf(path -> path.startsWith("opening") && path.endsWith("Mm"));
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(wheel()).isEqualTo(part(WHEEL));
        form.put("openings", "4");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(wheel().openingWidthMm().known()).isFalse();
    }

    @Test
    void oneNumberChangedLeavesTheSourcesOfTheOthers() {
        var form = form("wheel-own");
        form.put("widthMm", "51");
        form.put("source", "measured, tape");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(texts().get("wheel-own"))
                .isEqualTo(Codec.write(new Document.OfPart(
                        part(WHEEL.replace("widthMm: 50 ± 0.3", "widthMm: {value: 51, source: \"measured, tape\"}")))));
        assertThat(wheel().wornDiameterMm().provenance().source()).isEqualTo(Source.ESTIMATE);
    }

    @Test
    void aNumberWithASourceOfItsOwnTakesTheFormsWhenItChanges() {
        var page = visitor.get("parts/wheel-own").body();
        assertThat(page).contains("source of its own: estimate").contains("source of its own: measured, bore gauge");
        var form = Visitor.form(page);
        form.put("wornDiameterMm", "83");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(wheel().wornDiameterMm().provenance().words()).isEqualTo("measured, caliper");
        assertThat(wheel().bearingSeatMm().provenance().words()).isEqualTo("measured, bore gauge");
    }

    @Test
    void aSourceTypedForOneNumberGoesBeforeTheForms() {
        var form = form("wheel-own");
        form.put("wornDiameterMm", "83");
        form.put("wornDiameterMm.source", "estimate, by eye");
        form.put("bearingSeatMm.source", "measured, caliper");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(wheel().wornDiameterMm().provenance().words()).isEqualTo("estimate, by eye");
        assertThat(wheel().bearingSeatMm().provenance().words()).isEqualTo("measured, caliper");

        form = form("wheel-own");
        form.put("wornDiameterMm.source", "hearsay");
        var refused = visitor.post("parts/save", form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Visitor.plain(refused.body())).contains("<strong>'hearsay' names no source");
        assertThat(Visitor.form(refused.body())).containsEntry("wornDiameterMm.source", "hearsay");
    }

    @Test
    void anotherSourceOfAllNumbersIsSaidSo() {
        var form = form("wheel-own");
        form.put("source", "data sheet, drawing 3");
        var refused = visitor.post("parts/save", form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("no number takes this source");
        form.put("everywhere", "yes");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(wheel().diameterMm().provenance().words()).isEqualTo("data sheet, drawing 3");
        assertThat(wheel().wornDiameterMm().provenance().words()).isEqualTo("estimate");
        assertThat(wheel().bearingSeatMm().provenance().words()).isEqualTo("measured, bore gauge");
    }

    @Test
    void inInchesALengthLeftAsItIsIsAnother() {
        var form = form("wheel-own");
        form.put("unit", "in");
        form.put("source", "measured, rule");
        form.replaceAll((path, typed) -> switch (path) {
            case "diameterMm" -> "3.5";
            case "widthMm", "wornDiameterMm", "bearingSeatMm", "openingWidthMm" -> typed + " mm";
            default -> typed;
        });
        form.put("widthMm", "unknown");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(wheel().diameterMm().nominal()).isEqualTo(3.5 * 25.4);
        assertThat(wheel().widthMm().known()).isFalse();
        assertThat(wheel().wornDiameterMm().nominal()).isEqualTo(84);
    }

    @Test
    void aMaterialMayStayUnknownAndIsChosenByItsName() {
        var form = form("wheel-own");
        form.put("coreMaterial", "");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
        assertThat(wheel().coreMaterial()).isEmpty();
        assertThat(visitor.get("parts/wheel-own").body())
                .contains(">not known</option>")
                .contains("<option value=\"pa66-gf30\">Glass-filled nylon (polyamide 66, 30 % glass fibre)</option>")
                .doesNotContain(">pa66-gf30<");
    }

    @Test
    void aPageSaysThatItsPartIsKept() {
        var answer = visitor.post("parts/save", form("wheel-own"));
        var to = answer.headers().firstValue("Location").orElseThrow();
        assertThat(visitor.get(to.substring(1)).body())
                .contains("role=\"status\"><b>Kept.</b> Wheel of several sources lies on the shelf");
        assertThat(visitor.get("parts/wheel-own").body())
                .doesNotContain("role=\"status\"")
                .contains("Back without keeping");
    }

    @Test
    void whatIsNotChosenIsMendedInTheForm() {
        var refused = visitor.post(
                "parts/save",
                Map.of("kind", "hanger", "kept", "", "name", "Hanger", "revision", "A", "source", "measured, caliper"));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Visitor.plain(refused.body()))
                .contains("nothing is chosen yet; one of round, rectangular; choose one of the list")
                .doesNotContain("add the field");
        assertThat(visitor.workshop.store().documents()).doesNotContainKey("hanger");
    }

    @Test
    void profileAndTeethComeFirstMassAndNoteLast() {
        for (var kind : Map.of("belt", "", "drive+pulley", "rim.", "wheel+pulley", "rim.")
                .entrySet()) {
            var page = visitor.get("parts/new?kind=" + kind.getKey()).body();
            var order = Pattern.compile("id=\"p-([^\"]+)\"")
                    .matcher(page)
                    .results()
                    .map(m -> m.group(1))
                    .toList();
            int teeth = order.indexOf(kind.getValue() + "teeth");
            assertThat(order.subList(0, teeth + 1))
                    .containsExactly(
                            "name", "id", "revision", "source", kind.getValue() + "profile", kind.getValue() + "teeth");
            assertThat(order.indexOf("note")).isEqualTo(order.indexOf("massKg") + 1);
            assertThat(order.indexOf("massKg")).isGreaterThan(teeth + 1);
        }
    }

    @Test
    void nothingIsSaidTwice() {
        assertThat(visitor.get("parts/new?kind=drive+pulley").body())
                .contains(">rim profile<")
                .contains("id=\"h-rim.profile\"></span>");
    }
}
