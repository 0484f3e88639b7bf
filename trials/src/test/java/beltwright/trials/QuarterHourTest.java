package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.pairs.Pairs;
import beltwright.pairs.Things;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// A newcomer's first quarter of an hour on an empty workshop: one hanger, one motor, two
/// wheels, two pulleys and three belts typed from caliper and packet, then what goes
/// with what. Every number here is invented.
class QuarterHourTest {
    private static Tried tried; // fresh for each test

    @BeforeEach
    void open() {
        tried = Tried.empty();
    }

    @AfterEach
    void close() {
        if (tried != null) {
            tried.close();
        }
    }

    private static void enter(Page page, String kind, Map<String, String> typed) {
        page.navigate(tried.at("parts"));
        page.locator("section[id='" + kind + "'] .add a:not(.aside)").click();
        page.locator("input[name=source]").fill("measured, caliper");
        typed.forEach((path, value) -> {
            var field = page.locator("[name='" + path + "']");
            if ((Boolean) field.evaluate("e => e.tagName === 'SELECT'")) {
                field.selectOption(value);
            } else {
                field.fill(value);
            }
        });
        page.locator("#entry button").click();
        page.waitForURL("**/parts/*");
        assertThat(page.locator(".asked.wrong").allTextContents()).isEmpty();
        assertThat(page.locator("h1").textContent()).doesNotContain("Enter a");
    }

    private static Map<String, String> fields(String... pairs) {
        var fields = new LinkedHashMap<String, String>();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put(pairs[i], pairs[i + 1]);
        }
        return fields;
    }

    private static void enterNine(Page page) {
        enter(
                page,
                "hanger",
                fields(
                        "name",
                        "Hanger 180",
                        "widthMm",
                        "180 ± 0.2",
                        "axleDiameterMm",
                        "8",
                        "axleLengthMm",
                        "52",
                        "axleThread",
                        "M8",
                        "axleThreadLengthMm",
                        "14",
                        "section",
                        "round",
                        "sectionHeightMm",
                        "18",
                        "material",
                        "aluminium-6061-t6"));
        enter(
                page,
                "motor",
                fields(
                        "name",
                        "Motor 50",
                        "canDiameterMm",
                        "50,2 ± 0,1",
                        "canLengthMm",
                        "60",
                        "shaftForm",
                        "D",
                        "shaftDiameterMm",
                        "8 h6",
                        "shaftFlatMm",
                        "7",
                        "shaftLengthMm",
                        "36",
                        "boltCircleMm",
                        "44",
                        "boltHoles",
                        "4",
                        "thread",
                        "M4",
                        "threadMaterial",
                        "aluminium-6061-t6"));
        enter(
                page,
                "wheel",
                fields(
                        "name",
                        "Wheel 90",
                        "diameterMm",
                        "90",
                        "widthMm",
                        "52",
                        "bearingSeatMm",
                        "22",
                        "coreSpacingMm",
                        "10",
                        "openings",
                        "5",
                        "openingWidthMm",
                        "9",
                        "openingCircleMm",
                        "42",
                        "openingDepthMm",
                        "15",
                        "screwHoles",
                        "0",
                        "coreMaterial",
                        "core-plastic"));
        enter(
                page,
                "wheel",
                fields(
                        "name",
                        "Wheel 100",
                        "diameterMm",
                        "100",
                        "widthMm",
                        "55",
                        "bearingSeatMm",
                        "22",
                        "coreSpacingMm",
                        "10",
                        "openings",
                        "6",
                        "openingWidthMm",
                        "9",
                        "openingCircleMm",
                        "46",
                        "openingDepthMm",
                        "15",
                        "screwHoles",
                        "0",
                        "coreMaterial",
                        "core-plastic"));
        enter(
                page,
                "drive pulley",
                fields(
                        "name",
                        "Small pulley 15",
                        "rim.profile",
                        "5M H",
                        "rim.teeth",
                        "15",
                        "rim.faceWidthMm",
                        "16.5",
                        "rim.flanges",
                        "both",
                        "rim.flangeDiameterMm",
                        "27.5",
                        "rim.flangeThicknessMm",
                        "1.2",
                        "boreForm",
                        "D",
                        "boreDiameterMm",
                        "8.02",
                        "boreFlatMm",
                        "7.05",
                        "hubLengthMm",
                        "8",
                        "hubSide",
                        "motor",
                        "setScrews",
                        "2",
                        "setScrewThread",
                        "M4"));
        enter(
                page,
                "wheel pulley",
                fields(
                        "name",
                        "Large pulley 36",
                        "rim.profile",
                        "5M H",
                        "rim.teeth",
                        "36",
                        "rim.faceWidthMm",
                        "16.5",
                        "rim.flanges",
                        "none",
                        "boreDiameterMm",
                        "24",
                        "holding",
                        "lugs",
                        "lugs",
                        "5",
                        "lugWidthMm",
                        "8.6",
                        "lugCircleMm",
                        "42",
                        "lugLengthMm",
                        "10",
                        "screwHoles",
                        "0",
                        "material",
                        "aluminium-6061-t6"));
        for (int teeth : new int[] {51, 53, 56}) {
            enter(
                    page,
                    "belt",
                    fields(
                            "name",
                            "Belt " + teeth * 5,
                            "profile",
                            "5M H",
                            "teeth",
                            String.valueOf(teeth),
                            "widthMm",
                            "15",
                            "lengthDeviationMm",
                            "0 ± 0.4"));
        }
    }

    @Test
    void ninePartsThenTheMatrixWithTheDecidingDimension() {
        var page = tried.page();
        page.navigate(tried.at(""));
        assertThat(page.url()).endsWith("/parts");
        assertThat(page.locator("main").textContent()).contains("An empty shelf");
        enterNine(page);
        page.navigate(tried.at(""));
        assertThat(page.url()).endsWith("/pairs");

        page.locator(".choose a")
                .filter(new Locator.FilterOptions().setHasText("belt × pulleys"))
                .click();
        assertThat(page.locator(".matrix tbody tr").count()).isEqualTo(3);
        assertThat(page.locator(".matrix").textContent())
                .contains("centre distance 66.6 mm", "Belt between the flanges");
        shows(page, "belt", "pulleys");

        page.locator(".choose a")
                .filter(new Locator.FilterOptions().setHasText("wheel pulley × wheel"))
                .click();
        var cells = page.locator(".matrix tbody td");
        assertThat(cells.count()).isEqualTo(2);
        assertThat(page.locator(".matrix td.fails").count()).isEqualTo(1); // five lugs, six openings
        shows(page, "wheel pulley", "wheel");
        page.locator(".matrix td.fails a").click();
        page.locator("#why .rung").first().waitFor();
        assertThat(page.locator("#why").textContent())
                .contains(
                        "Every lug has an opening", "5 lugs, 6 openings", "a wheel pulley for a core with 6 openings");

        page.locator(".choose a")
                .filter(new Locator.FilterOptions().setHasText("drive pulley × motor"))
                .click();
        assertThat(page.locator(".matrix td.holds, .matrix td.marginal").count())
                .isEqualTo(1);
        shows(page, "drive pulley", "motor");

        page.locator(".choose a")
                .filter(new Locator.FilterOptions().setHasText("wheel × hanger"))
                .click();
        page.locator(".matrix td a").first().click();
        page.locator("#why .rung").first().waitFor();
        assertThat(page.locator("#why").textContent()).contains("a 608 fits");
    }

    /// Every cell of the matrix on the page says what the engine says.
    private static void shows(Page page, String rows, String columns) {
        var shelf = tried.workshop.shelf();
        var parts = shelf.parts().values();
        var down = Things.named(rows, parts, List.of());
        var across = Things.named(columns, parts, List.of());
        var pairs = new Pairs(shelf::part, shelf.reference())
                .stream(down.all(), across.all()).toList();
        var cells = page.locator(".matrix tbody td").all();
        assertThat(cells).hasSameSizeAs(pairs);
        for (int i = 0; i < pairs.size(); i++) {
            var decides = pairs.get(i).decides();
            var text = cells.get(i).textContent();
            if (decides == null) {
                assertThat(text).contains("–");
            } else {
                assertThat(text).contains(decides.check()).contains(decides.slackText());
                assertThat(cells.get(i).getAttribute("class"))
                        .isEqualTo(decides.verdict().toString().replace(' ', '-'));
            }
        }
    }

    @Test
    void theFormAsksOnlyWhatApplies() {
        var page = tried.page();
        page.navigate(tried.at("parts/new?kind=motor"));
        var flat = page.locator(".asked[data-path=shaftFlatMm]");
        assertThat(flat.isVisible()).isFalse();
        page.locator("[name=shaftForm]").selectOption("D");
        assertThat(flat.isVisible()).isTrue();
        assertThat(page.locator(".asked[data-path=keyWidthMm]").isVisible()).isFalse();
        page.locator("[name=shaftForm]").selectOption("keyed");
        assertThat(flat.isVisible()).isFalse();
        assertThat(page.locator(".asked[data-path=keyWidthMm]").isVisible()).isTrue();
        page.locator("[name=keyWidthMm]").focus();
        assertThat(page.locator(".measure.beside [data-field=keyWidthMm].sel").count())
                .isEqualTo(1);
        assertThat(page.locator(".measure.stacked").isVisible()).isFalse();
        assertThat(page.locator(".measure.beside [data-field=shaftFlatMm]").isVisible())
                .isFalse();
        page.setViewportSize(390, 900);
        assertThat(page.locator(".measure.beside").isVisible()).isFalse();
        assertThat(page.locator(".measure.stacked [data-field=keyWidthMm]").isVisible())
                .isTrue();
    }

    @Test
    void whatFitDoesNotAskIsFoldedAndTheFigureUnfoldsIt() {
        var page = tried.page();
        page.navigate(tried.at("parts/new?kind=motor"));
        assertThat(page.locator(".fold summary").allTextContents())
                .hasSize(3)
                .allMatch(text -> text.matches("(?s).*0 of \\d+ filled.*"));
        assertThat(page.locator("[name=wireDiameterMm]").isVisible()).isFalse();
        page.locator(".measure [data-field=wireDiameterMm]").first().dispatchEvent("click");
        assertThat(page.locator("[name=wireDiameterMm]").isVisible()).isTrue();
        assertThat(page.evaluate("() => document.activeElement.name")).isEqualTo("wireDiameterMm");
        page.locator("[name=name]").fill("Odd motor");
        page.locator("[name=wireDiameterMm]").fill("thick");
        page.locator("#entry button").click();
        page.locator(".asked.wrong").first().waitFor();
        assertThat(page.locator(".asked[data-path=wireDiameterMm].wrong").isVisible())
                .isTrue();
        assertThat(page.locator(".fold[open]").count()).isEqualTo(1);
    }

    @Test
    void whatCannotBeTrueIsSaidBesideItsFieldAndNothingTypedIsLost() {
        var page = tried.page();
        page.navigate(tried.at("parts/new?kind=bearing"));
        page.locator("[name=name]").fill("Odd bearing");
        page.locator("[name=source]").fill("measured, caliper");
        page.locator("[name=boreMm]").fill("eight");
        page.locator("[name=outsideMm]").fill("22");
        page.locator("[name=widthMm]").fill("700");
        page.locator("#entry button").click();
        page.locator(".asked.wrong").first().waitFor();
        assertThat(page.locator(".asked.wrong").count()).isEqualTo(2);
        assertThat(page.locator(".asked[data-path=boreMm]").textContent()).contains("'eight'");
        assertThat(page.inputValue("[name=outsideMm]")).isEqualTo("22");
        assertThat(tried.workshop.shelf().parts()).doesNotContainKey("odd-bearing");
        page.locator("[name=boreMm]").fill("5/16 in");
        page.locator("[name=widthMm]").fill("7");
        page.locator("#entry button").click();
        page.waitForURL(java.util.regex.Pattern.compile(".*/parts/odd-bearing\\?kept=now"));
        assertThat(page.locator("[role=status]").textContent()).contains("Kept.");
        assertThat(page.inputValue("[name=boreMm]")).isEqualTo("5/16 in");
    }

    @Test
    void inchesAreOneChoiceAway() {
        var page = tried.page();
        page.navigate(tried.at("parts/new?kind=sleeve"));
        page.locator("[name=name]").fill("Inch sleeve");
        page.locator("[name=source]").fill("measured, caliper, customer's wheels");
        page.locator("input[name=unit][value=in]").check();
        page.locator("[name=boreMm]").fill("0.315");
        page.locator("[name=outsideMm]").fill("12 mm");
        page.locator("[name=lengthMm]").fill("3/8");
        page.locator("#entry button").click();
        page.waitForURL(java.util.regex.Pattern.compile(".*/parts/inch-sleeve\\?kept=now"));
        assertThat(page.locator("[role=status]").textContent()).contains("Kept.");
        var sleeve = (beltwright.part.Sleeve) tried.workshop.shelf().part("inch-sleeve");
        assertThat(sleeve.boreMm().nominal()).isEqualTo(0.315 * 25.4);
        assertThat(sleeve.outsideMm().nominal()).isEqualTo(12);
        assertThat(sleeve.lengthMm().nominal()).isEqualTo(25.4 * 3 / 8);
    }

    @Test
    void aPastedTableIsKeptWholeOrNotAtAll() {
        var page = tried.page();
        page.navigate(tried.at("parts/paste?kind=washer"));
        page.locator("[name=kind]").selectOption("washer");
        page.locator("[name=source]").fill("measured, caliper");
        page.locator("[name=text]")
                .fill("id\tname\trevision\thole\toutside [in]\tthickness\n"
                        + "w-a\tWasher a\tA\t4,3\t0.354\t0,8\n"
                        + "w-b\tWasher b\tA\tfour\t0.354\t0,8\n");
        page.locator("button[name=preview]").click();
        page.locator(".preview td.wrong").first().waitFor();
        assertThat(page.locator(".preview td.wrong").count()).isEqualTo(1);
        assertThat(page.locator(".preview td.wrong").textContent()).contains("'four'");
        assertThat(page.locator("button[name=save]").count()).isZero();
        assertThat(tried.workshop.shelf().parts()).doesNotContainKey("w-a");
        page.locator("[name=text]").fill(page.inputValue("[name=text]").replace("four", "4.4 ± 0.05"));
        page.locator("button[name=preview]").click();
        page.locator("button[name=save]").click();
        page.waitForURL(java.util.regex.Pattern.compile(".*/parts\\?kept=2#washer"));
        assertThat(page.locator("[role=status]").textContent()).contains("Kept: 2 parts");
        assertThat(tried.workshop.shelf().parts()).containsKeys("w-a", "w-b");
        var washer = (beltwright.part.Washer) tried.workshop.shelf().part("w-a");
        assertThat(washer.outsideMm().nominal()).isEqualTo(0.354 * 25.4);
        assertThat(washer.holeMm().nominal()).isEqualTo(4.3);
    }
}
