package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.pairs.Pairs;
import beltwright.pairs.Things;
import beltwright.part.Kinds;
import beltwright.workshop.table.Columns;
import beltwright.workshop.table.Preview;
import beltwright.workshop.table.Table;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// Ten thousand pairs: the page stands at once and fills as they are worked out. Every part here is invented.
class ManyPairsTest {
    private static final int EACH = 100;
    private static Tried tried;

    @BeforeAll
    static void open() {
        tried = Tried.empty();
        var wheels = new StringBuilder(
                "id,name,revision,source,diameterMm,widthMm,bearingSeatMm,coreSpacingMm,openings,openingWidthMm,openingCircleMm,openingDepthMm,screwHoles,coreMaterial\n");
        var pulleys = new StringBuilder(
                "id,name,revision,source,rim.profile,rim.teeth,rim.faceWidthMm,rim.flanges,boreDiameterMm,holding,lugs,lugWidthMm,lugCircleMm,lugLengthMm,screwHoles,material\n");
        for (int i = 0; i < EACH; i++) {
            wheels.append("wheel-%d,Wheel %d,A,estimate,%d,52,22,10,%d,9,%.1f,15,0,core-plastic%n"
                    .formatted(i, i, 80 + i % 40, 5 + i % 2, 40 + i * 0.1));
            pulleys.append(
                    "pulley-%d,Pulley %d,A,estimate,5M H,%d,16.5,none,24,lugs,5,8.6,%.1f,10,0,aluminium-6061-t6%n"
                            .formatted(i, i, 32 + i % 20, 40 + i * 0.1));
        }
        keep(Kinds.WHEEL, wheels.toString());
        keep(Kinds.WHEEL_PULLEY, pulleys.toString());
    }

    private static void keep(Kinds kind, String text) {
        var table = Table.parse(text);
        var done = tried.workshop.importTable(
                Preview.of(Table.PASTED, table, Columns.suggested(kind, table.headings())), false);
        assertThat(done.mistakes()).isEmpty();
    }

    @AfterAll
    static void close() {
        if (tried != null) {
            tried.close();
        }
    }

    @Test
    void tenThousandCellsFillOneByOneAndSayWhatTheEngineSays() {
        var page = tried.page();
        page.navigate(tried.at("pairs?rows=wheel pulley&columns=wheel"));
        assertThat(page.locator("td[data-row]").count()).isEqualTo(EACH * EACH);
        page.waitForFunction(
                "() => /holds/.test(document.getElementById('progress').textContent)",
                null,
                new Page.WaitForFunctionOptions().setTimeout(60_000));
        var shelf = tried.workshop.shelf();
        var parts = shelf.parts().values();
        var all = new Pairs(shelf::part, shelf.reference())
                .stream(
                                Things.named("wheel pulley", parts, List.of()).all(),
                                Things.named("wheel", parts, List.of()).all())
                        .toList();
        var told = page.locator("#progress").textContent();
        for (var verdict : beltwright.check.Verdict.values()) {
            long count = all.stream().filter(p -> p.verdict() == verdict).count();
            assertThat(told).contains(count + " " + verdict);
        }
        var one = all.get(4_321);
        var cell = page.locator("td[data-row='" + one.row() + "'][data-column='" + one.column() + "']");
        assertThat(cell.textContent())
                .contains(java.util.Objects.requireNonNull(one.decides()).check());
        cell.locator("a").click();
        page.locator("#why .rung").first().waitFor();
        assertThat(page.locator("#why h1").textContent()).contains("Pulley", "Wheel");
    }
}
