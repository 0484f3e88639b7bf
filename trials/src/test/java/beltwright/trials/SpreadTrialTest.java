package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.press.table.SpreadTables;
import beltwright.spread.Odds;
import beltwright.spread.Sampling;
import beltwright.spread.Spread;
import beltwright.workshop.Edit;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// A job of the workshop in a browser: some load carriers will not go together; which dimension is to be made more
/// closely, and does that help?
class SpreadTrialTest {
    private static final String KIT = "quarry-road-load";
    private static final int KITS = 2000;

    private Tried tried;

    @BeforeEach
    void open() {
        tried = Tried.fresh();
    }

    @AfterEach
    void close() {
        if (tried != null) {
            tried.close();
        }
    }

    private Spread engine(Edit... edits) {
        return Sampling.of(tried.workshop.shelf().with(List.of(edits)).kit(KIT), KITS, 5);
    }

    private static double percent(String shown) {
        return Double.parseDouble(shown.replace(" %", "").strip());
    }

    @Test
    void whichDimensionIsToBeMadeMoreClosely() {
        var page = tried.watched();
        page.navigate(tried.at("kits/" + KIT));
        page.getByRole(
                        AriaRole.LINK,
                        new Page.GetByRoleOptions().setName("Spread").setExact(true))
                .click();
        page.locator("input[name=kits]").first().fill(String.valueOf(KITS));
        page.locator("input[name=seed]").first().fill("5");
        page.getByText("Draw again").click();
        page.waitForURL("**/spread?*seed=5*");

        // the page says what the engine says
        var before = engine();
        var first = before.unsure().getFirst();
        assertThat(page.locator(".together").getAttribute("data-together"))
                .isEqualTo(SpreadTables.percent(before.goesTogether().value()));
        var top = page.locator("details.odds").first();
        assertThat(top.getAttribute("data-odds")).isEqualTo(first.finding().key());
        assertThat(top.locator(".big").textContent())
                .isEqualTo(SpreadTables.percent(first.share().value()));
        assertThat(top.locator("figure svg title").textContent()).contains(SpreadTables.name(first));

        // what matters most stands first; half its limits
        var most = first.matters().getFirst();
        assertThat(most.dimension()).isEqualTo("wheel-pulley-48-wide.threadDepthMm");
        var row = top.locator(".matters tbody tr").first();
        assertThat(row.locator("th").textContent()).contains(most.dimension());
        row.locator("input[name=value]").fill("10 ±0.1");
        row.getByText("Try").click();
        page.waitForURL("**set=wheel-pulley-48-wide.threadDepthMm*");
        assertThat(page.url())
                .contains("seed=5", "kits=" + KITS, "of=" + first.finding().key());

        var after = engine(new Edit("wheel-pulley-48-wide", "threadDepthMm", "10 ±0.1"));
        var same = after.odds().stream()
                .filter(o -> o.finding().key().equals(first.finding().key()))
                .map(Odds::share)
                .findFirst()
                .orElseThrow();
        var shown = page.locator("details.odds").first().locator(".big").textContent();
        assertThat(shown).isEqualTo(SpreadTables.percent(same.value()));
        assertThat(percent(shown))
                .isGreaterThan(100 * (first.share().value() + 2 * first.share().standardError()));
        assertThat(percent(page.locator(".together").getAttribute("data-together")))
                .isGreaterThan(100 * before.goesTogether().value());

        // the ladder of this draft shows the odds, and the back button undoes
        page.getByText("These odds on the ladder").click();
        page.waitForURL("**odds=" + KITS + "*");
        assertThat(page.locator(".rung .odds").count()).isGreaterThan(100);
        page.goBack();
        page.goBack();
        assertThat(page.locator("details.odds").first().locator(".big").textContent())
                .isEqualTo(SpreadTables.percent(first.share().value()));
        assertThat(tried.complaints).isEmpty();
    }

    @Test
    void aValueThatCannotBeIsRefusedInPlace() {
        var page = tried.watched();
        page.navigate(tried.at("kits/" + KIT + "/spread?kits=300"));
        var row = page.locator(".matters tbody tr").first();
        row.locator("input[name=value]").fill("ten or so");
        row.getByText("Try").click();
        assertThat(page.locator("[role=alert]").textContent())
                .contains("wheel-pulley-48-wide.threadDepthMm = ten or so", "allowed:");
        assertThat(page.url()).contains("field=");
        page.navigate(tried.at("kits/" + KIT + "/spread?kits=many"));
        assertThat(page.locator("main, body").first().textContent()).contains("'many' kits", "1 to 50000");
        assertThat(tried.complaints).allMatch(c -> c.contains("400"));
    }
}
