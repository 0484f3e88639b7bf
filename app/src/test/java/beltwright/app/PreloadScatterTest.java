package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossiers;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// How far a preload lies beside its aim: one number for every screw of a kit, typed or by the way of tightening.
class PreloadScatterTest {
    private static final String KIT = "market-hill-single";
    private static final String PERCENT = KIT + ".task.preloadScatterPercent=";
    private static final String WAY = KIT + ".task.tightening=";

    private static Finding found(String slug, String... edits) {
        return StrengthFindings.one(KIT, slug, edits);
    }

    /// {@return how far the least grip of the slots lies below the nominal one (1); friction is exact}
    private static double share(String... edits) {
        var all = new ArrayList<>(List.of(edits));
        all.add(KIT + ".task.jointFriction=0.12");
        var grip = found("slot-grip", all.toArray(String[]::new));
        return 1 - grip.capacityWorst() / grip.capacity();
    }

    @ParameterizedTest
    @CsvSource({
        "motor-screw-engagement, market-hill-single",
        "clamp-screw-engagement, market-hill-single",
        "flange-screw-engagement, harbour-mile",
    })
    void threadIsEngagedForTheScatterThatIsTyped(String slug, String kit) {
        var percent = kit + ".task.preloadScatterPercent=";
        double tight = StrengthFindings.one(kit, slug, percent + "10").demand();
        double wide = StrengthFindings.one(kit, slug, percent + "50").demand();
        double usual = StrengthFindings.one(kit, slug, percent + "unknown").demand();
        assertThat(wide / tight).isCloseTo(1.5 / 1.1, within(1e-9));
        assertThat(usual / tight).isCloseTo(1.35 / 1.1, within(1e-9));
    }

    @Test
    void engagementRestsOnTheSameEstimateAsTheJoint() {
        assertThat(found("motor-screw-engagement").estimates()).contains("task.preloadScatterPercent");
        assertThat(found("motor-screw-engagement", PERCENT + "20").estimates())
                .doesNotContain("task.preloadScatterPercent");
    }

    @ParameterizedTest(name = "{0}: ±{1}")
    @CsvSource({
        "hex key by hand, 0.35, hand key",
        "torque wrench, 0.23, 'α_A 1.6 of VDI 2230-1, from memory'",
        "angle, 0.10, 'α_A 1.2 of VDI 2230-1, from memory'",
    })
    void theWayOfTighteningGivesTheScatter(String way, double share, String source) {
        assertThat(share(WAY + way)).isCloseTo(share, within(1e-9));
        var line = found("slot-grip", WAY + way).working().stream()
                .filter(l -> l.symbol().equals("s_F"))
                .findFirst()
                .orElseThrow();
        assertThat(line.value()).isEqualTo(100 * share);
        assertThat(line.source()).contains(source).startsWith("estimate");
    }

    @Test
    void nothingTypedIsAKeyByHandAndATypedPercentWins() {
        assertThat(share()).isCloseTo(0.35, within(1e-9));
        assertThat(share(WAY + "angle", PERCENT + "28")).isCloseTo(0.28, within(1e-9));
    }

    @Test
    void withoutEstimatesTheWayGivesNothing() {
        var typed = DemoKits.SHELF.with(List.of(Edit.parse(WAY + "torque wrench")));
        var bare = typed.withoutEstimates().kit(KIT);
        var grip = Dossiers.of(bare).findings().stream()
                .filter(f -> f.key().startsWith("motor-screw-engagement"))
                .findFirst()
                .orElseThrow();
        assertThat(grip.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(grip.needs()).contains(KIT + ".task.preloadScatterPercent");
    }

    @Test
    void aWayThatNobodyKnowsIsRefusedOnce() {
        assertThatThrownBy(() -> DemoKits.SHELF.with(List.of(Edit.parse(WAY + "by feel"))))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("tightening")
                .hasMessageContaining("'by feel' is not known")
                .hasMessageContaining("hex key by hand, torque wrench, angle");
    }

    @Tag("law")
    @Test
    void theWayIsKeptAndTheUsualOneIsNotWritten() throws Exception {
        var text = Files.readString(DemoKits.ROOT.resolve("demo/kits/" + KIT + ".yaml"));
        var plain = Codec.write(Codec.readOne("kit", text));
        assertThat(plain).doesNotContain("tightening");
        var typed = plain + "  tightening: torque wrench\n";
        var read = Codec.readOne("kit", typed);
        assertThat(((Document.OfKit) read).kit().task().tightening()).hasToString("torque wrench");
        var again = Codec.write(read);
        assertThat(again).contains("tightening: torque wrench");
        assertThat(Codec.readOne("kit", again)).isEqualTo(read);
    }
}
