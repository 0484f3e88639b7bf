package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.TensionCard;
import beltwright.check.WeakestLink;
import beltwright.kit.Kit;
import beltwright.kit.Side;
import beltwright.layout.LayoutSolver;
import beltwright.press.table.TensionTables;
import beltwright.quantity.Numbers;
import beltwright.workshop.Edit;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// Jobs of the workshop in a browser: how tight is the belt of this kit to be, what would other motor screws change,
/// and
/// what gives first.
class TensionTrialTest {
    private static final String KIT = "steep-street";
    private static final Pattern PAGES = Pattern.compile("/Type\\s*/Page[^s]");

    private static Tried tried;

    @BeforeAll
    static void open() {
        tried = Tried.fresh();
    }

    @AfterEach
    void closePages() {
        tried.closePages();
    }

    @AfterAll
    static void close() {
        if (tried != null) {
            tried.close();
        }
    }

    private static Kit kit(Edit... edits) {
        return tried.workshop.shelf().with(List.of(edits)).kit(KIT);
    }

    private static TensionCard card(Kit kit) {
        return TensionCard.of(kit, LayoutSolver.solve(kit)).getFirst();
    }

    private static String band(Page page) {
        return page.locator(".belt .card tr:has(th:text-is('Band')) td").first().textContent();
    }

    @Test
    void weakerMotorScrewsMoveTheBandAndAreTakenBack() {
        var page = tried.page();
        page.navigate(tried.at("kits/" + KIT));
        page.locator(".ways a:text-is('Tension')").click();
        assertThat(page.locator("h1").textContent()).startsWith("Belt tension");
        assertThat(page.locator(".how").first().textContent())
                .contains("loosest wheel angle", "a phone with a tuner app", "pluck here");
        assertThat(band(page)).isEqualTo(TensionTables.band(card(kit())));
        assertThat(page.locator("section.belt > figure svg.drawing").first().textContent())
                .contains("target", "least", "most");

        var edit = kit().drives().getFirst().motorScrew().id() + ".strength=A2-70";
        page.navigate(tried.at("kits/" + KIT + "/tension?set=" + URLEncoder.encode(edit, StandardCharsets.UTF_8)));
        var weaker = card(kit(Edit.parse(edit)));
        assertThat(card(kit()).sure()).isTrue();
        assertThat(weaker.sure())
                .as("slots that hold less close the band at the worse limits")
                .isFalse();
        assertThat(band(page)).isEqualTo(TensionTables.band(weaker));

        page.locator(".drafted a:text-is('take back')").click();
        assertThat(band(page)).isEqualTo(TensionTables.band(card(kit())));
    }

    @Test
    void whatGivesFirstIsNamedAndLeadsToItsWorking() {
        var kit = kit();
        var chain = WeakestLink.of(kit, LayoutSolver.solve(kit)).getFirst();
        var link = chain.links().stream()
                .filter(l -> l.kind() == WeakestLink.Kind.BREAKS)
                .findFirst()
                .orElseThrow();
        var page = tried.page();
        page.navigate(tried.at("kits/" + KIT + "/weakest"));
        assertThat(page.locator(".first").first().textContent()).contains(TensionTables.givesFirst(chain, false));
        var to = page.locator(".drive").first().locator("a:text-is(\"" + link.name() + "\")");
        to.focus();
        page.keyboard().press("Enter");
        page.waitForURL(url -> url.endsWith("#f-" + link.key()));
        var working = page.locator("[id='f-" + link.key() + "'] .working");
        working.waitFor();
        assertThat(working.isVisible()).isTrue();
        assertThat(page.evaluate(
                        "id => { const y = document.getElementById(id).getBoundingClientRect().y; return y >= 0 && y < innerHeight; }",
                        "f-" + link.key()))
                .isEqualTo(true);
    }

    /// A workshop records three jump tests by keyboard, mends a slip on the way, and the card stops resting on habit.
    @Test
    void jumpTestsAreRecordedAndTakeOverFromTheHabit() {
        var own = "market-hill-single";
        var page = tried.watched();
        page.navigate(tried.at("kits/" + own + "/tension"));
        assertThat(page.locator(".notes").textContent()).contains("is habit");
        jump(page, "100", "N at rest", "3,O");
        var slip = page.locator("#jump-torque[aria-invalid=true]");
        slip.waitFor();
        assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("jump-torque");
        assertThat(page.locator("#jump-torque-says").textContent()).contains("'3,O' is no number");
        assertThat(page.locator("#jump-tension").inputValue()).isEqualTo("100");
        assertThat(tried.workshop.shelf().draft(own).placements().get(Side.LEFT).jumpTests())
                .isEmpty();
        slip.fill("3,0");
        page.keyboard().press("Enter");
        says(page, "1 of 3 different tensions: 2 more are needed");

        double heard = TensionCard.of(kept(own), LayoutSolver.solve(kept(own)))
                .getFirst()
                .frequencyHz(140);
        jump(page, Numbers.fixed(heard, 1), "Hz of the free span", "4.3");
        says(page, "2 of 3 different tensions: 1 more is needed");
        jump(page, "180", "N at rest", "5.4");
        says(page, "told by a line through 3 jump tests from 100 to 180 N: 3 N·m at 100 N");
        assertThat(page.locator("#tests tbody tr").count()).isEqualTo(3);
        assertThat(page.locator("#tests tbody tr").nth(1).textContent())
                .contains("by " + Numbers.fixed(heard, 1) + " Hz", "jumped", "Ann O.", "2026-11-20");
        assertThat(page.locator(".notes").textContent())
                .contains("the least by 3 jump tests from 100 to 180 N")
                .doesNotContain("is habit");
        assertThat(band(page)).isEqualTo(TensionTables.band(card(kept(own))));
        assertThat(tried.complaints).isEmpty();

        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(page.locator("#tests").isVisible()).isFalse();
        assertThat(page.locator("section.belt").isVisible()).isTrue();
    }

    private static Kit kept(String kit) {
        return tried.workshop.shelf().kit(kit);
    }

    /// Types a jump test without touching the mouse, and keeps it.
    private static void jump(Page page, String tension, String told, String torque) {
        page.locator("#jump-side").focus();
        page.keyboard().press("Tab");
        page.keyboard().insertText(tension);
        page.keyboard().press("Tab");
        page.keyboard().type(told.substring(0, 1));
        page.keyboard().press("Tab");
        page.keyboard().insertText(torque);
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().insertText("Ann O.");
        page.keyboard().press("Tab");
        page.keyboard().press("ControlOrMeta+a");
        page.keyboard().insertText("2026-11-20");
        page.keyboard().press("Enter");
    }

    /// Waits until the tests below the card tell this.
    private static void says(Page page, String text) {
        page.locator("#tests .told:has-text('" + text + "')").waitFor();
        page.waitForLoadState();
    }

    /// On a telephone every field and button of the form is there to touch, and nothing runs out of the page.
    @Test
    void aWeightIsHungOnATelephone() {
        var page = tried.page(new Browser.NewContextOptions().setViewportSize(390, 844));
        page.navigate(tried.at("kits/quarry-road-load/tension"));
        for (var field : page.locator("#hung input, #hung select, #hung button").all()) {
            field.scrollIntoViewIfNeeded();
            var box = field.boundingBox();
            assertThat(box.x).isNotNegative();
            assertThat(box.x + box.width).isLessThanOrEqualTo(390);
            assertThat(box.height).isGreaterThanOrEqualTo(32);
        }
        page.locator("#hung-span").fill("86");
        page.locator("#hung-pull").fill("98,1");
        page.locator("#hung-sound").fill("4");
        page.locator("#hung-by").fill("workshop");
        page.locator("#hung button").click();
        assertThat(page.locator("#hung-sound-says").textContent()).contains("10 to 5000 Hz");
        page.waitForLoadState();
        assertThat(new AxeBuilder(page)
                        .include("#tests").analyze().getViolations().stream()
                                .filter(v -> List.of("serious", "critical").contains(v.getImpact()))
                                .map(v -> v.getId() + ": " + v.getHelp()))
                .isEmpty();
        assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(390);
        page.locator("#hung-sound").fill("230");
        page.locator("#hung button").click();
        page.waitForURL(url -> url.endsWith("#tests"));
        assertThat(page.locator("#tests").textContent()).contains("On a span of 86 mm: one more weight is needed");
        page.waitForLoadState();
        assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(390);
    }

    @Test
    void theCardPrintsOnOnePage() {
        var page = tried.page();
        page.navigate(tried.at("kits/" + KIT + "/tension"));
        var pdf = new String(
                page.pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true)),
                StandardCharsets.ISO_8859_1);
        assertThat(PAGES.matcher(pdf).results().count()).isEqualTo(1);
    }
}
