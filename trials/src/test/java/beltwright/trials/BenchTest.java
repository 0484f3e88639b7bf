package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Finding;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.press.json.DossierJson;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The bench in a browser: what it shows is what the engine says, and a newcomer finds the way.
class BenchTest {
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
    @ValueSource(
            strings = {
                "harbour-mile",
                "market-hill-single",
                "orchard-lane",
                "quarry-road-load",
                "steep-street",
                "steep-street-light"
            })
    void twentyEditsShowWhatTheEngineSays(String kit) throws Exception {
        var shelf = tried.workshop.shelf();
        var page = tried.page();
        page.navigate(tried.at("kits/" + kit));
        var random = new Random(20);
        var edits = new ArrayList<Edit>();
        for (int i = 0; i < 20; i++) {
            var edit = edit(shelf, kit, random);
            edits.removeIf(e -> e.document().equals(edit.document()) && e.path().equals(edit.path()));
            edits.add(edit);
            type(page, shelf, kit, edit);
            var dossier = Dossiers.of(shelf.with(edits).kit(kit));
            assertShows(page, dossier);
        }
        var json = page.request()
                .get(page.url().replaceFirst("(/kits/[a-z-]+)\\?", "$1/json?").replaceFirst("&seat=.*", ""));
        assertThat(json.text())
                .isEqualTo(DossierJson.text(Dossiers.of(shelf.with(edits).kit(kit))));
        assertThat(commandLine(kit, edits).path("findings"))
                .isEqualTo(new ObjectMapper().readTree(json.text()).path("findings"));
        assertGuide(page, kit, edits, Dossiers.of(shelf.with(edits).kit(kit)));
    }

    /// {@return one dimension of one part of the kit, moved by up to ten per cent within what is allowed}
    private static Edit edit(Shelf shelf, String kit, Random random) {
        var parts = new ArrayList<>(shelf.kit(kit).parts().keySet());
        while (true) {
            var part = parts.get(random.nextInt(parts.size()));
            var fields = shelf.editable(part).stream()
                    .filter(f -> !f.source().isEmpty() && f.text().matches("[0-9.]+( ±[0-9.]+)?"))
                    .toList();
            if (fields.isEmpty()) {
                continue;
            }
            var field = fields.get(random.nextInt(fields.size()));
            double old = Double.parseDouble(field.text().split(" ")[0]);
            var text = Math.round(old * (0.9 + 0.2 * random.nextDouble()) * 100) / 100.0
                    + field.text().substring(field.text().split(" ")[0].length());
            if (text.equals(field.text())
                    || text.startsWith(old + "") && !field.text().contains(" ")) {
                continue;
            }
            var edit = new Edit(part, field.path(), text);
            try {
                shelf.with(List.of(edit));
                return edit;
            } catch (Refusal notAllowed) {
                continue;
            }
        }
    }

    private static void type(Page page, Shelf shelf, String kit, Edit edit) {
        var seat = shelf.kit(kit).seats().values().stream()
                .filter(s -> s.part().id().equals(edit.document()))
                .findFirst()
                .orElseThrow()
                .name()
                .toString();
        page.locator("#seats .name")
                .getByText(seat, new com.microsoft.playwright.Locator.GetByTextOptions().setExact(true))
                .click();
        var field =
                page.locator("form.field[data-field='" + edit.document() + "." + edit.path() + "'] input[name=value]");
        field.waitFor();
        field.fill(edit.value());
        field.press("Enter");
        try {
            page.waitForFunction(
                    "e => new URL(location).searchParams.getAll('set').includes(e) && !document.body.classList.contains('busy')",
                    edit.toString(),
                    new Page.WaitForFunctionOptions().setTimeout(10_000));
        } catch (com.microsoft.playwright.TimeoutError e) {
            throw new AssertionError(
                    edit + " did not arrive at " + page.url() + "; "
                            + page.locator(".refusal").allTextContents(),
                    e);
        }
    }

    private static void assertShows(Page page, Dossier dossier) {
        var rungs = page.locator(".rung");
        assertThat(
                        rungs.evaluateAll(
                                "all => all.map(r => r.dataset.finding + '|' + r.dataset.says + '|' + (r.querySelector('.remedy')?.textContent ?? '') + '|' + r.querySelector('.mark').getAttribute('aria-label'))"))
                .isEqualTo(dossier.findings().stream().map(BenchTest::rung).toList());
        var drawn = new ArrayList<>(
                strings(page.locator("#drawings [data-dimension] text").allTextContents()));
        var wanted = new ArrayList<String>();
        dossier.dimensions()
                .forEach(d ->
                        wanted.add((d.diameter() ? "⌀" : "") + beltwright.press.drawing.Lettering.number(d.valueMm())));
        assertThat(drawn).containsExactlyInAnyOrderElementsOf(wanted);
    }

    private static String rung(Finding f) {
        return f.key() + "|" + f.says() + "|" + f.remedy() + "|" + f.verdict();
    }

    private static List<String> strings(List<String> texts) {
        return texts.stream().map(String::strip).filter(t -> !t.isEmpty()).toList();
    }

    private static void assertGuide(Page page, String kit, List<Edit> edits, Dossier dossier) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Assembly guide"))
                .click();
        page.waitForLoadState();
        assertThat(URLDecoder.decode(page.url(), StandardCharsets.UTF_8)).contains("/kits/" + kit + "/guide");
        for (var step : dossier.steps()) {
            var text = page.locator("#step-" + step.number()).innerText();
            assertThat(text).contains(step.title()).contains(step.threadlocker());
            step.takes()
                    .forEach(t -> assertThat(text).contains(t.count() + " ×").contains(t.name()));
            step.tools().forEach(t -> assertThat(text).contains(t));
            step.does().forEach(d -> assertThat(text).contains(d));
            step.cautions().forEach(c -> assertThat(text).contains(c));
            var torque = step.torque();
            if (torque != null) {
                assertThat(text)
                        .contains(beltwright.quantity.Numbers.fixed(torque.torqueNm(), 1) + " N·m")
                        .contains(torque.basis());
            }
        }
        assertThat(page.locator("section.step").count())
                .isEqualTo(dossier.steps().size());
        var proof = page.locator(".tally tbody tr").allInnerTexts();
        assertThat(proof).hasSameSizeAs(dossier.tallies());
        for (int i = 0; i < proof.size(); i++) {
            var tally = dossier.tallies().get(i);
            assertThat(proof.get(i)).contains(tally.name()).contains(String.valueOf(tally.inSteps()));
        }
        page.goBack();
        assertThat(edits).isNotEmpty();
    }

    /// {@return what `check KIT --json` prints for this draft, from a process of its own}
    private static JsonNode commandLine(String kit, List<Edit> edits) throws IOException, InterruptedException {
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                System.getProperty("java.class.path"),
                "beltwright.app.Main",
                "check",
                kit,
                "--json",
                "--workshop",
                tried.store.toString()));
        edits.forEach(e -> command.addAll(List.of("--set", e.toString())));
        var process = new ProcessBuilder(command).start();
        var out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return new ObjectMapper().readTree(out);
    }

    /// The first quarter of an hour: the demo opens on the kit that fails, the rung leads to its place in the drawing
    /// and
    /// to what mends it, and mending it there clears the ladder.
    @Test
    void aNewcomerFindsTheScrewAndMendsIt() {
        var page = tried.page();
        page.navigate(tried.at(""));
        assertThat(page.url()).endsWith("/kits/steep-street-light");
        var weakest = page.locator(".rung").first();
        assertThat(weakest.getAttribute("class")).contains("fails");
        assertThat(weakest.innerText()).contains("End of the motor screw").contains("M4 screw 12 long");
        assertThat(weakest.boundingBox().y).isLessThan(900);
        var finding = weakest.getAttribute("data-finding");
        assertThat(page.locator("#drawings [data-finding='" + finding + "'].sel, #drawings .sel [data-finding='"
                                + finding + "']")
                        .count())
                .as("its distance stands out in the drawing")
                .isPositive();

        weakest.locator("summary").click();
        assertThat(weakest.locator(".working").isVisible()).isTrue();
        assertThat(weakest.locator(".working").innerText()).contains("l − t − t_washer");

        for (var side : List.of("left", "right")) {
            page.locator("li.seat[data-seat='" + side + " motor screws'] select")
                    .selectOption("4 x screw-m4x12");
            page.waitForFunction("s => location.search.includes(s) && !document.body.classList.contains('busy')", side);
        }
        assertThat(page.locator(".rung.fails").count()).isZero();
        assertThat(page.locator("#strip").innerText()).contains("0 fails");
        page.goBack();
        page.waitForFunction("() => document.querySelectorAll('.rung.fails').length === 1");
    }

    /// However far down the ladder a rung stands, its place in the drawing is on the screen with it.
    @Test
    void aRungIsReadBesideItsDrawing() {
        var page = tried.page();
        page.navigate(tried.at("kits/steep-street-light"));
        var rung = page.locator(".rung").nth(60);
        rung.locator("summary").focus();
        assertThat(page.evaluate("() => scrollY")).isEqualTo(0);
        var place = page.locator("#drawings svg.drawing").first().boundingBox();
        assertThat(rung.boundingBox().y).isBetween(0.0, 1000.0);
        assertThat(place.y).isBetween(0.0, 500.0);
        assertThat(page.locator("#drawings .sel").count()).isPositive();
    }

    /// A change on the page leaves the ladder where it was being read.
    @Test
    void aChangeLeavesTheReaderWhereHeWas() {
        var page = tried.page();
        page.navigate(tried.at("kits/steep-street?seat=left+motor+screws"));
        page.evaluate("() => document.getElementById('ladder').scrollTop = 900");
        page.locator("li.seat[data-seat='left motor screws'] select").selectOption("4 x screw-m4x12");
        page.waitForFunction("() => location.search.includes('m4x12') && !document.body.classList.contains('busy')");
        assertThat(((Number) page.evaluate("() => document.getElementById('ladder').scrollTop")).intValue())
                .as("but for the lines that say what was")
                .isBetween(850, 1000);
    }

    /// Sides that differ are worked out one by one; sides that are alike, once.
    @Test
    void everySideOfANumberHasItsWorking() {
        var page = tried.page();
        page.navigate(tried.at("kits/steep-street"));
        assertThat(sidesWorkedOut(page)).containsOnly("left and right");
        page.navigate(tried.at("kits/steep-street?set=steep-street.seats.right+drive+pulley%3Dpulley-15"));
        assertThat(sidesWorkedOut(page)).contains("left", "right");
        var pull = page.locator(".number")
                .filter(new com.microsoft.playwright.Locator.FilterOptions().setHasText("Belt pull, driving"))
                .first();
        pull.locator("summary").click();
        assertThat(pull.locator(".working").count()).isEqualTo(2);
        assertThat(pull.innerText()).contains("pulley-16.rim.teeth").contains("pulley-15.rim.teeth");
    }

    private static List<String> sidesWorkedOut(Page page) {
        return page.locator(".number h3").allTextContents();
    }

    /// A bar that would run out of its scale says so at the end where it would.
    @Test
    void aBarThatRunsOutSaysSo() {
        var page = tried.page();
        page.navigate(tried.at("kits/steep-street-light"));
        var shelf = tried.workshop.shelf();
        var findings = Dossiers.of(shelf.kit("steep-street-light")).findings();
        var less = findings.stream()
                .filter(f -> f.margin() != null && f.marginWorst() != null && f.marginBest() != null)
                .filter(f -> f.margin() < -1)
                .map(Finding::key)
                .toList();
        assertThat(less).isNotEmpty();
        var marked = page.locator(".rung")
                .evaluateAll(
                        "all => all.filter(r => r.querySelector('.bar path[d=\"M0 4L-4 7L0 10\"]')).map(r => r.dataset.finding)");
        assertThat(marked).isEqualTo(less);
    }

    @Test
    void whatIsTypedWrongIsSaidAtTheFieldAndNothingIsLost() {
        var page = tried.page();
        page.navigate(tried.at("kits/steep-street?seat=left+mount"));
        var field = page.locator("form.field[data-field='mount-hill.plateThicknessMm']");
        field.locator("input[name=value]").fill("eight");
        field.locator("input[name=value]").press("Enter");
        var wrong = page.locator("form.field.wrong");
        wrong.waitFor();
        assertThat(wrong.innerText()).contains("'eight'").contains("allowed");
        assertThat(wrong.locator("input[name=value]").inputValue()).isEqualTo("eight");
        assertThat(page.url()).doesNotContain("eight");
    }

    @Test
    void everythingWorksWithoutScript() {
        var page = tried.page(new com.microsoft.playwright.Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(tried.at("kits/steep-street?seat=left+mount"));
        var field = page.locator("form.field[data-field='mount-hill.slotMaxMm']");
        field.locator("input[name=value]").fill("78 ±0.1");
        field.locator("button").click();
        assertThat(URLDecoder.decode(page.url(), StandardCharsets.UTF_8)).contains("set=mount-hill.slotMaxMm=78 ±0.1");
        assertThat(page.locator(".rung.fails").first().innerText()).contains("Take-up");
    }

    @Test
    void aKeptDraftIsInTheStoreAndAMeasuredFieldIsNot() {
        try (var own = Tried.fresh()) {
            var page = own.page();
            page.navigate(own.at("kits/steep-street?set=screw-m4x14.lengthMm%3D13.5"));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep this draft"))
                    .click();
            page.waitForURL("**/kits/steep-street");
            assertThat(own.workshop.shelf().editable("screw-m4x14").stream()
                            .filter(f -> f.path().equals("lengthMm"))
                            .findFirst()
                            .orElseThrow()
                            .text())
                    .isEqualTo("13.5");

            page.navigate(own.at("kits/steep-street?set=mount-hill.plateThicknessMm%3D9"));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep this draft"))
                    .click();
            page.getByText("was measured").waitFor();
        }
    }
}
