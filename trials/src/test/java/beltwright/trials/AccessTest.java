package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayDeque;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Pages for everybody: audited, narrow, by keyboard, and with lettering that does not run into itself.
class AccessTest {
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

    @ParameterizedTest
    @CsvSource({
        "kits/steep-street-light, 1400, LIGHT",
        "kits/steep-street-light, 390, DARK",
        "kits/market-hill-single, 1400, DARK",
        "kits/steep-street/guide, 1000, LIGHT",
        "kits/steep-street/guide, 390, DARK",
        "kits/steep-street/box, 390, LIGHT",
        "kits/harbour-mile, 1400, LIGHT",
        "pairs, 1400, LIGHT",
        "pairs?rows=belt&columns=pulleys, 390, DARK",
        "pairs/why?rows=wheel&columns=kits&row=wheel-97&column=market-hill-single, 390, LIGHT",
        "parts, 390, DARK",
        "parts/new?kind=motor, 1400, LIGHT",
        "parts/new?kind=wheel pulley, 390, DARK",
        "parts/wheel-90, 1400, DARK",
        "parts/paste, 390, LIGHT",
        "slots/mount-hill, 1400, LIGHT",
        "slots/mount-hill, 390, DARK",
        "kits/steep-street/tension, 1300, LIGHT",
        "kits/steep-street/tension, 1300, DARK",
        "kits/market-hill-single/tension, 390, LIGHT",
        "kits/steep-street/weakest, 1300, LIGHT",
        "kits/steep-street/weakest, 1300, DARK",
        "kits/market-hill-single/weakest, 390, LIGHT",
        "kits/steep-street/power, 1300, LIGHT",
        "kits/steep-street/power, 1300, DARK",
        "kits/market-hill-single/power, 390, LIGHT",
        "kits/steep-street/brakes, 1300, LIGHT",
        "kits/steep-street/brakes, 1300, DARK",
        "kits/market-hill-single/brakes, 390, LIGHT",
        "kits/steep-street/limits, 1300, LIGHT",
        "kits/steep-street/limits, 1300, DARK",
        "kits/market-hill-single/limits, 390, LIGHT",
        "kits/market-hill-single/ride?route=mill-hill&with=steep-street, 1300, LIGHT",
        "kits/market-hill-single/ride?route=mill-hill&with=steep-street, 1300, DARK",
        "kits/market-hill-single/ride?route=mill-hill, 390, LIGHT",
        "kits/steep-street/log, 1300, DARK",
        "kits/steep-street/log, 390, LIGHT",
        "kits/quarry-road-load/spread?kits=500, 1300, LIGHT",
        "kits/quarry-road-load/spread?kits=500, 390, DARK",
        "kits/steep-street-light?odds=200, 1300, DARK",
        "nowhere, 390, LIGHT"
    })
    void theAuditFindsNothingSerious(String path, int width, ColorScheme scheme) {
        var page = tried.page(
                new Browser.NewContextOptions().setViewportSize(width, 900).setColorScheme(scheme));
        page.navigate(tried.at(path));
        assertThat(serious(page)).isEmpty();
    }

    private static List<String> serious(Page page) {
        var options = new AxeRunOptions();
        options.setResultTypes(List.of("violations")); // every node that passes would be written out as well
        return new AxeBuilder(page)
                .options(options).analyze().getViolations().stream()
                        .filter(v -> List.of("serious", "critical").contains(v.getImpact()))
                        .map(v -> v.getId() + ": " + v.getHelp() + " "
                                + v.getNodes().stream()
                                        .limit(3)
                                        .map(n -> n.getHtml())
                                        .toList())
                        .toList();
    }

    /// The audit itself, on a page that has been spoiled: a picture without words, and lettering as pale as its paper.
    @Test
    void theAuditFindsWhatIsWrong() {
        var page = tried.page();
        page.navigate(tried.at("kits/steep-street/tension"));
        page.evaluate("""
                () => {
                  document.querySelector('main, body').append(document.createElement('img'));
                  const h1 = document.querySelector('h1');
                  h1.style.color = '#eee';
                  h1.style.background = '#fff';
                }""");
        assertThat(serious(page))
                .hasSize(2)
                .anyMatch(v -> v.startsWith("image-alt"))
                .anyMatch(v -> v.startsWith("color-contrast"));
    }

    @ParameterizedTest
    @CsvSource({
        "kits/steep-street-light",
        "kits/steep-street/guide",
        "kits/steep-street/box",
        "pairs",
        "pairs?rows=belt&columns=pulleys",
        "parts",
        "parts/new?kind=hanger",
        "parts/paste",
        "slots/mount-hill",
        "kits/steep-street/tension",
        "kits/steep-street/weakest",
        "kits/steep-street/power",
        "kits/steep-street/brakes",
        "kits/steep-street/limits",
        "kits/market-hill-single/ride?route=mill-hill&with=steep-street",
        "kits/steep-street/log",
        "kits/quarry-road-load/spread?kits=500"
    })
    void nothingRunsOutOfANarrowPage(String path) {
        var page = tried.page(new Browser.NewContextOptions().setViewportSize(390, 844));
        page.navigate(tried.at(path));
        assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(390);
    }

    /// On a phone the ladder is long: the seats are one touch away, not a hundred rungs.
    @Test
    void aNarrowSheetLeadsToItsPlaces() {
        var page = tried.page(new Browser.NewContextOptions().setViewportSize(390, 844));
        page.navigate(tried.at("kits/steep-street-light"));
        for (var place : List.of("seats", "part", "numbers", "ladder", "drawings")) {
            page.locator(".places a[href='#" + place + "']").click();
            page.waitForFunction(
                    "id => { const y = document.getElementById(id).getBoundingClientRect().y; return y >= 0 && y <= 60; }",
                    place);
            assertThat(page.url()).endsWith("#" + place);
        }
    }

    /// Everything that can be done is reached by keyboard.
    @Test
    void theKeyboardReachesRungSeatAndField() {
        var page = tried.page();
        page.navigate(tried.at("kits/steep-street-light"));
        page.locator(".rung summary").first().focus();
        page.keyboard().press("Enter");
        assertThat(page.locator(".rung .working").first().isVisible()).isTrue();
        assertThat(page.locator(".rung.on").count()).isEqualTo(1);
        page.keyboard().press("Tab");
        assertThat(page.evaluate("() => document.activeElement.closest('.rung, .opened') !== null"))
                .isEqualTo(true);
        page.locator("#seats .name").nth(3).focus();
        page.keyboard().press("Enter");
        page.waitForFunction("() => location.search.includes('seat=')");
        page.locator("#part input[name=value]").first().focus();
        assertThat(page.evaluate("() => document.activeElement.name")).isEqualTo("value");
    }

    /// The link to the mend stands where the mend arrives; a reader who is on it must not be thrown back to the top.
    @Test
    void whatArrivesLeavesTheKeyboardInItsRung() {
        var page = tried.page();
        var held = new ArrayDeque<Route>();
        page.route("**/mend**", held::add);
        page.navigate(tried.at("kits/steep-street-light"));
        page.locator(".rung.fails summary").first().focus();
        page.keyboard().press("Enter");
        page.keyboard().press("Tab");
        assertThat(page.evaluate("() => document.activeElement.closest('.mending') !== null"))
                .isEqualTo(true);
        page.waitForCondition(() -> !held.isEmpty());
        held.forEach(Route::resume);
        page.waitForCondition(() -> page.locator(".rung.fails .mending").first().getAttribute("data-fetch") == null);
        assertThat(page.evaluate("() => document.activeElement.closest('.rung.fails .mending') !== null"))
                .isEqualTo(true);
        page.keyboard().press("Tab");
        assertThat(page.evaluate("() => document.activeElement.closest('.rung') !== null"))
                .isEqualTo(true);
    }

    /// A change of part, and before its answer is here the reader goes on to a rung.
    @Test
    void aPageThatArrivesLeavesTheKeyboardOnItsRung() {
        var page = tried.page();
        var held = new ArrayDeque<Route>();
        page.navigate(tried.at("kits/steep-street?seat=left+motor+screws"));
        page.route("**/*m4x12*", held::add);
        page.locator("li.seat[data-seat='left motor screws'] select").selectOption("4 x screw-m4x12");
        page.waitForCondition(() -> !held.isEmpty());
        page.locator(".rung summary").nth(2).focus();
        var rung = page.evaluate("() => document.activeElement.id");
        held.forEach(Route::resume);
        page.waitForFunction("() => location.search.includes('m4x12') && !document.body.classList.contains('busy')");
        assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo(rung);
    }

    /// With the fonts of this machine, as the browser sets them.
    @ParameterizedTest
    @CsvSource({
        "steep-street-light, 30",
        "steep-street, 30",
        "market-hill-single, 30",
        "quarry-road-load, 30",
        "steep-street/tension, 12",
        "market-hill-single/tension, 12",
        "quarry-road-load/tension, 12",
        "harbour-mile/tension, 12",
        "orchard-lane/tension, 12",
        "steep-street/weakest, 40",
        "market-hill-single/weakest, 40",
        "quarry-road-load/weakest, 40",
        "harbour-mile/weakest, 40",
        "orchard-lane/weakest, 40",
        "steep-street/power, 15",
        "market-hill-single/power, 15",
        "quarry-road-load/power, 15",
        "harbour-mile/power, 15",
        "orchard-lane/power, 15",
        "steep-street/brakes, 30",
        "market-hill-single/brakes, 30",
        "quarry-road-load/brakes, 30",
        "harbour-mile/brakes, 30",
        "orchard-lane/brakes, 30",
        "quarry-road-load/spread?kits=500, 12"
    })
    void noTwoTextsOfADrawingOverlap(String kit, int least) {
        var page = tried.page();
        page.navigate(tried.at("kits/" + kit));
        page.locator("details.more").evaluateAll("all => all.forEach(d => d.open = true)");
        @SuppressWarnings("unchecked")
        var overlaps = (List<String>) page.evaluate("""
                () => {
                  const found = [];
                  for (const svg of document.querySelectorAll('svg.drawing')) {
                    const frame = svg.getBoundingClientRect();
                    const texts = [...svg.querySelectorAll('text')].map((t) => [t.textContent, t.getBoundingClientRect()]);
                    texts.forEach(([a, p], i) => {
                      if (p.left < frame.left || p.right > frame.right || p.top < frame.top || p.bottom > frame.bottom) {
                        found.push(a + ' leaves the sheet');
                      }
                      texts.slice(i + 1).forEach(([b, q]) => {
                        const w = Math.min(p.right, q.right) - Math.max(p.left, q.left);
                        const h = Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top);
                        if (w > 0.5 && h > 0.35 * Math.min(p.height, q.height)) found.push(a + ' over ' + b);
                      });
                    });
                  }
                  return found;
                }""");
        assertThat(overlaps).isEmpty();
        assertThat(page.locator("svg.drawing text").count()).isGreaterThanOrEqualTo(least);
    }
}
