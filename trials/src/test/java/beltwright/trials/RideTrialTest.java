package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.press.table.PowerTables;
import beltwright.ride.Board;
import beltwright.ride.Channel;
import beltwright.ride.PowerSheet;
import beltwright.ride.Ride;
import beltwright.ride.RideSolver;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// A job of the workshop in a browser: will this kit climb that hill, what stops it, what would the other kit do, and
/// which limits are set in it.
class RideTrialTest {
    private static final String KIT = "market-hill-single";
    private static final String OTHER = "steep-street";
    private static final String ROUTE = "mill-hill";
    private static final Pattern PAGES = Pattern.compile("/Type\\s*/Page[^s]");

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

    private Ride ride(String kit) {
        var shelf = tried.workshop.shelf();
        return RideSolver.ride(kit, Board.of(shelf.kit(kit)), shelf.route(ROUTE), RideSolver.Options.USUAL);
    }

    private static void charted(Page page) {
        page.waitForFunction("() => document.querySelector('#cursor')?.getAttribute('aria-valuemax') > 0");
    }

    private JsonNode json(Page page, String kit) throws Exception {
        var answer = page.request().get(tried.at("kits/" + kit + "/ride/json?route=" + ROUTE));
        assertThat(answer.status()).isEqualTo(200);
        return new ObjectMapper().readTree(answer.text());
    }

    private static JsonNode values(JsonNode ride, String channel) {
        for (var one : ride.path("channels")) {
            if (one.path("name").asText().equals(channel)) {
                return one.path("values");
            }
        }
        throw new AssertionError("no channel " + channel);
    }

    /// Every place where a reading of this ride stands shows what the file has at this row.
    private static void assertReadings(Page page, JsonNode ride, int number, int row) {
        for (var channel : Channel.values()) {
            var shown = page.locator("[data-value=\"" + channel + "\"][data-ride=\"" + number + "\"]")
                    .allTextContents();
            assertThat(shown).as(channel + " in every chart that shows it").isNotEmpty();
            assertThat(shown.stream().distinct()).as(channel.toString()).hasSize(1);
            var value = values(ride, channel.toString()).get(row);
            if (channel == Channel.GOVERNS) {
                assertThat(shown.getFirst()).isEqualTo(value.asText());
            } else {
                assertThat(Double.parseDouble(shown.getFirst().replace('−', '-')))
                        .as(channel.toString())
                        .isCloseTo(value.asDouble(), within(0.51 * Math.pow(10, -channel.decimals())));
            }
        }
    }

    @Test
    void willItClimbTheHill() throws Exception {
        var page = tried.watched();
        page.navigate(tried.at("kits/" + KIT));
        page.getByRole(
                        AriaRole.LINK,
                        new Page.GetByRoleOptions().setName("Ride").setExact(true))
                .click();
        page.locator("select[name=route]").selectOption(ROUTE);
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Ride").setExact(true))
                .click();
        charted(page);

        var told = ride(KIT);
        assertThat(told.arrived()).isFalse();
        assertThat(page.locator(".ending").textContent()).contains(told.ending(), told.remedy());
        assertThat(page.locator(".spans .go").allTextContents())
                .isEqualTo(
                        told.spans().stream().map(s -> s.governs().toString()).toList());

        var file = json(page, KIT);
        page.locator("#cursor").focus();
        page.keyboard().press("ArrowRight");
        assertThat(page.locator("#cursor").getAttribute("aria-valuenow")).isEqualTo("1");
        assertReadings(page, file, 0, 1);
        for (int i = 0; i < 4; i++) {
            page.keyboard().press("Shift+ArrowRight");
        }
        page.keyboard().press("ArrowLeft");
        assertReadings(page, file, 0, 40);
        assertThat(page.locator("#cursor").getAttribute("aria-valuetext")).contains("km/h");
        page.keyboard().press("End");
        assertReadings(page, file, 0, told.rows() - 1);

        page.locator(".spans .go").last().click();
        int row = Integer.parseInt(page.locator("#cursor").getAttribute("aria-valuenow"));
        assertThat(values(file, Channel.TIME.toString()).get(row).asDouble())
                .isCloseTo(told.spans().getLast().fromS(), within(1.0));
        assertOneCursor(page);

        page.locator(".u-over").nth(2).hover();
        row = Integer.parseInt(page.locator("#cursor").getAttribute("aria-valuenow"));
        assertReadings(page, file, 0, row);
        assertOneCursor(page);
        page.getByText("over time").click();
        assertReadings(page, file, 0, row);
        assertOneCursor(page);
        assertThat(tried.complaints).isEmpty();
    }

    /// The line of the cursor stands at the same place of every field.
    @SuppressWarnings("unchecked")
    private static void assertOneCursor(Page page) {
        page.waitForFunction(
                "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
        var lefts = (List<Number>)
                page.evaluate(
                        "() => [...document.querySelectorAll('.u-cursor-x')].map(e => Math.round(e.getBoundingClientRect().left))");
        assertThat(lefts).hasSize(6);
        assertThat(lefts.stream().distinct()).hasSize(1);
    }

    @Test
    void theOtherKitRidesBesideIt() throws Exception {
        var page = tried.watched();
        page.navigate(tried.at("kits/" + KIT + "/ride?route=" + ROUTE));
        charted(page);
        page.locator("select[name=with]").selectOption(OTHER);
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Ride").setExact(true))
                .click();
        charted(page);
        assertThat(page.url()).contains("with=" + OTHER);
        assertThat(page.locator(".ending").allTextContents().get(1))
                .contains(ride(OTHER).ending());
        var first = json(page, KIT);
        var second = json(page, OTHER);
        page.locator("#cursor").focus();
        for (int i = 0; i < 5; i++) {
            page.keyboard().press("Shift+ArrowRight");
        }
        assertReadings(page, first, 0, 50);
        assertReadings(
                page,
                second,
                1,
                nearest(second, values(first, "distance").get(50).asDouble()));
        assertThat(page.locator(".handout a").allTextContents()).containsExactly("CSV", "JSON", "CSV", "JSON");
        var csv = page.request()
                .get(page.locator(".handout a").nth(2).evaluate("a => a.href").toString());
        assertThat(csv.text()).startsWith("\"time (s)\"");
        assertThat(csv.text().lines().count()).isEqualTo(ride(OTHER).rows() + 1);
        assertThat(tried.complaints).isEmpty();
    }

    private static int nearest(JsonNode ride, double distanceM) {
        var all = values(ride, "distance");
        int best = 0;
        for (int i = 1; i < all.size(); i++) {
            if (Math.abs(all.get(i).asDouble() - distanceM)
                    < Math.abs(all.get(best).asDouble() - distanceM)) {
                best = i;
            }
        }
        return best;
    }

    @Test
    void aBrokenRouteIsRefusedInOneMessageAndASoundOneIsKept() {
        var page = tried.watched();
        page.navigate(tried.at("kits/" + KIT + "/ride"));
        var before = tried.workshop.shelf().routes().keySet();
        bring(
                page,
                "broken.gpx",
                "<gpx><trk><trkseg><trkpt lat=\"95\" lon=\"0\"><ele>1</ele></trkpt></trkseg></trk></gpx>");
        assertThat(page.locator(".refusal").count()).isEqualTo(1);
        assertThat(page.locator(".refusal").textContent()).contains("broken.gpx", "allowed: ");
        assertThat(tried.workshop.shelf().routes().keySet()).isEqualTo(before);

        for (int rows : new int[] {2_100_000, 4_000_000}) { // a little too large, and far too large
            bring(page, "large.csv", "distance,elevation\n" + "0,0\n".repeat(rows));
            assertThat(page.locator(".refusal").textContent()).contains("is larger than 8 MB");
        }
        assertThat(tried.workshop.shelf().routes().keySet()).isEqualTo(before);

        bring(page, "Back lane.csv", "distance (m),elevation (m)\n0,10\n300,10\n600,25\n900,25\n");
        page.waitForURL("**/ride?route=back-lane");
        charted(page);
        assertThat(tried.workshop.shelf().routes()).containsKey("back-lane");
        assertThat(page.locator("select[name=route]").inputValue()).isEqualTo("back-lane");

        bring(page, "Back lane.csv", "distance (m),elevation (m)\n0,10\n300,10\n");
        assertThat(page.locator(".refusal").textContent()).contains("back-lane: ", "that is kept", "choose another id");
        assertThat(tried.complaints).isEmpty();
    }

    private static void bring(Page page, String name, String text) {
        page.locator("input[type=file]")
                .setInputFiles(new FilePayload(name, "text/plain", text.getBytes(StandardCharsets.UTF_8)));
        page.locator("#bring button").click();
        page.locator("#bring").waitFor();
    }

    @ParameterizedTest
    @ValueSource(strings = {KIT, OTHER, "harbour-mile", "orchard-lane", "quarry-road-load", "steep-street-light"})
    void theLimitsFillOneSheetOfPaper(String kit) {
        var page = tried.watched();
        page.navigate(tried.at("kits/" + kit + "/power"));
        page.locator(".ways a").getByText("Limits").click();
        var sheet = tried.workshop.shelf().kit(kit);
        var limits = PowerTables.limits(PowerSheet.of(sheet)).rows();
        assertThat(limits).hasSizeGreaterThan(10);
        assertThat(page.locator(".limits tbody th[scope=row]").allTextContents())
                .isEqualTo(limits.stream().map(r -> r.get(1)).toList());
        assertThat(page.locator(".limits tbody th[scope=rowgroup]").allTextContents())
                .isEqualTo(limits.stream()
                        .map(r -> "Spares: " + r.getFirst())
                        .distinct()
                        .toList());
        var pdf = new String(page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true)), StandardCharsets.ISO_8859_1);
        assertThat(PAGES.matcher(pdf).results().count()).isEqualTo(1);
        assertThat(tried.complaints).isEmpty();
    }

    @Test
    void everyPageOfTheRoadIsHeldToTheStrictPolicy() {
        var page = tried.watched();
        for (var place : List.of("power", "brakes", "limits", "ride", "log")) {
            var answer = page.navigate(tried.at("kits/" + KIT + "/" + place));
            assertThat(answer.headerValue("content-security-policy"))
                    .contains("default-src 'none'", "script-src 'self'", "style-src 'self'")
                    .doesNotContain("unsafe", "sha256");
            assertThat(answer.text()).doesNotContain(" style=\"", "<style", "onclick=");
            assertThat(page.locator(".ways [aria-current]").textContent().toLowerCase(java.util.Locale.ROOT))
                    .isEqualTo(place);
        }
        assertThat(tried.complaints).isEmpty();
    }
}
