package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.guide.GuidePage;
import beltwright.press.json.DossierJson;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Whatever a part may be, the kit is still judged, drawn and described: nothing throws, nothing prints "NaN".
@Tag("law")
@Timeout(180) // a slow machine, not a loop
class HardyTest {
    static Stream<String> kits() {
        return DemoKits.ids();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void aDimensionThatIsNotKnownLeavesTheRest(String id) {
        int cannotTell = 0;
        for (var edit : Edits.everyDimension(id, 0.01)) {
            var dossier = DemoKits.dossier(id, new Edit(edit.document(), edit.path(), "unknown"));
            assertPrints(edit + " unknown", dossier);
            for (var finding : dossier.findings()) {
                if (finding.verdict() == Verdict.CANNOT_TELL) {
                    assertThat(finding.says()).startsWith("needs ").isNotEqualTo("needs ");
                    cannotTell++;
                }
            }
        }
        assertThat(cannotTell).isGreaterThan(100);
    }

    @ParameterizedTest
    @MethodSource("kits")
    void aMaterialThatIsNotKnownLeavesTheRest(String id) {
        int left = 0;
        int asked = 0;
        for (var part : DemoKits.SHELF.kit(id).parts().keySet()) {
            for (var field : DemoKits.SHELF.editable(part)) {
                if (field.path().toLowerCase(Locale.ROOT).endsWith("material")
                        && !field.text().isEmpty()) {
                    var dossier = DemoKits.dossier(id, new Edit(part, field.path(), ""));
                    assertPrints(part + "." + field.path(), dossier);
                    var needing = dossier.findings().stream()
                            .filter(f -> f.needs().contains(part + "." + field.path()))
                            .toList();
                    assertThat(needing).allMatch(f -> f.verdict() == Verdict.CANNOT_TELL);
                    asked += needing.size();
                    left++;
                }
            }
        }
        assertThat(left).isGreaterThan(4);
        assertThat(asked).isGreaterThan(10);
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("kits")
    void theFarEndsOfWhatIsAllowedAreAnsweredToo(String id) {
        int tried = 0;
        for (var edit : Edits.everyDimension(id, 0.01)) {
            for (double far : new double[] {0.4, 2.5}) {
                var value = Double.parseDouble(edit.value().split(" ")[0]) * far;
                try {
                    var dossier = DemoKits.dossier(id, new Edit(edit.document(), edit.path(), String.valueOf(value)));
                    assertPrints(edit.document() + "." + edit.path() + "=" + value, dossier);
                    tried++;
                } catch (Refusal notAllowed) {
                    assertThat(notAllowed.getMessage()).contains("allowed");
                }
            }
        }
        assertThat(tried).isGreaterThan(60);
    }

    @Test
    void aBeltThatDoesNotGoAroundIsSaidAndDrawn() {
        for (int teeth : List.of(20, 38, 41, 60, 300)) {
            var dossier = DemoKits.dossier("steep-street", Edit.parse("belt-300-15.teeth=" + teeth));
            assertPrints(teeth + " teeth", dossier);
            assertThat(dossier.findings().stream()
                            .filter(f -> f.key().equals("take-up.left"))
                            .findFirst()
                            .orElseThrow()
                            .verdict())
                    .isEqualTo(teeth == 300 || teeth <= 40 ? Verdict.FAILS : Verdict.HOLDS);
        }
    }

    private static void assertPrints(String what, Dossier dossier) {
        var all = new ArrayList<String>();
        try {
            all.add(DossierJson.text(dossier));
            all.add(GuidePage.html(dossier, DemoKits.REFERENCE, "draft"));
            new DrawingOffice(dossier, DemoKits.REFERENCE, "draft")
                    .all()
                    .forEach(d -> all.add(SvgWriter.inline(d, d.id())));
        } catch (RuntimeException e) {
            throw new AssertionError(what, e);
        }
        assertThat(all).as(what).noneMatch(text -> text.contains("NaN") || text.contains("Infinity"));
    }
}
