package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.TensionCard;
import beltwright.check.WeakestLink;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.press.table.TensionTables;
import beltwright.workshop.Edit;
import com.microsoft.playwright.Page;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
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
        assertThat(band(page)).isEqualTo(TensionTables.band(card(kit())));
        assertThat(page.locator(".belt svg.drawing").first().textContent()).contains("target", "least", "most");

        var edit = kit().drives().getFirst().motorScrew().id() + ".strength=A2-70";
        page.navigate(tried.at("kits/" + KIT + "/tension?set=" + URLEncoder.encode(edit, StandardCharsets.UTF_8)));
        var weaker = card(kit(Edit.parse(edit)));
        assertThat(weaker.mostN()).isLessThan(card(kit()).mostN());
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
