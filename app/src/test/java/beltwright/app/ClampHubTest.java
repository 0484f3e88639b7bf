package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.assembly.Step;
import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.check.WeakestLink;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.kit.Kit;
import beltwright.kit.Side;
import beltwright.layout.LayoutSolver;
import beltwright.press.drawing.DrawingOffice;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A drive pulley whose split hub is clamped on the shaft by screws, in place of set screws.
class ClampHubTest {
    private static final String KIT = FormKits.CLAMPED;

    private static Kit kit(int screws, String... more) {
        return FormKits.clamped(screws, more).kit(KIT);
    }

    private static Dossier dossier(String... more) {
        return Dossiers.of(kit(2, more));
    }

    private static Finding found(String slug, String... more) {
        return dossier(more).findings().stream()
                .filter(f -> f.key().equals(slug + ".left"))
                .findFirst()
                .orElseThrow();
    }

    /// By hand: class 8.8 M4, 0.6·580·8.7787 = 3055 N a screw; two press with 6110 N on 8 mm: 0.12·6110·8/1000 =
    /// 5.866 N·m. At worst 0.65 of the preload at a friction of 0.10.
    @Test
    void twoScrewsHoldWhatTheyHoldByHand() {
        var found = found("hub-clamp");
        assertThat(found.capacity()).isCloseTo(5.866, within(0.001));
        assertThat(found.capacityWorst()).isCloseTo(5.866 * 0.65 / 1.2, within(0.01));
        assertThat(found.says()).contains("held by a clamped hub");
    }

    /// By hand: the wall's middle lies 7 mm from the axis, as far as the screws: it pulls as much as they do,
    /// 6110/(6·8) = 127.3 MPa; the bore is pressed by twice as much, 12220/(8·8) = 190.9 MPa.
    @Test
    void theHubIsPressedAsByHand() {
        var found = found("hub-clamp-stress", "pulley-15.boreDiameterMm=8", "motor-54.shaftDiameterMm=8");
        assertThat(value(found, "σ_wall")).isCloseTo(127.3, within(0.05));
        assertThat(value(found, "p_bore")).isCloseTo(190.9, within(0.1));
        assertThat(found.demand()).isCloseTo(190.9, within(0.1));
    }

    private static double value(Finding finding, String symbol) {
        return finding.working().stream()
                .filter(l -> l.symbol().equals(symbol))
                .mapToDouble(l -> l.value())
                .findFirst()
                .orElseThrow();
    }

    @Tag("law")
    @ParameterizedTest
    @CsvSource({
        "hub-clamp, screw-m4x12.strength, A2-70 8.8 10.9 12.9",
        "hub-clamp, market-hill-single.task.jointFriction, 0.05 0.1 0.2",
    })
    void moreOfItNeverHoldsLess(String slug, String field, String rising) {
        double before = 0;
        for (var value : rising.split(" ")) {
            double now = found(slug, field + "=" + value).capacity();
            assertThat(now).as("%s=%s", field, value).isGreaterThan(before);
            before = now;
        }
    }

    @Test
    void aScatterThatIsNarrowerHoldsMoreAndPressesLess() {
        var wrench = KIT + ".task.tightening=torque wrench";
        assertThat(found("hub-clamp", wrench).capacityWorst())
                .isGreaterThan(found("hub-clamp").capacityWorst());
        assertThat(found("hub-clamp-stress", wrench).demandWorst())
                .isLessThan(found("hub-clamp-stress").demandWorst());
    }

    @Tag("law")
    @ParameterizedTest
    @CsvSource({"hub-clamp", "hub-clamp-stress"})
    void theWorstAndTheBestEncloseTheNominal(String slug) {
        for (var edit : List.of(
                "pulley-15.hubScrewArmMm=9 ±0.5",
                "pulley-15.hubDiameterMm=19 ±1",
                "motor-54.shaftDiameterMm=7.9 ±0.1")) {
            StrengthFindings.nominalIsEnclosed(found(slug, edit), Edit.parse(edit));
        }
    }

    @Test
    void setScrewsAreNotAskedForWhereTheHubClamps() {
        var asked = dossier().findings().stream().map(Finding::key).toList();
        assertThat(asked)
                .contains(
                        "shaft-form.left",
                        "hub-clamp.left",
                        "hub-clamp-stress.left",
                        "hub-screw-thread.left",
                        "hub-screw-engagement.left",
                        "hub-screw-reach.left")
                .doesNotContain("shaft-joint.left")
                .noneMatch(key -> key.startsWith("set-screw"));
        assertThat(found("shaft-form").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(found("shaft-form").says()).contains("held by a hub clamped on it");
        assertThat(found("hub-screw-thread").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(found("hub-screw-engagement").capacity()).isCloseTo(6, within(1e-9));
    }

    @Test
    void aFormThatCarriesTheTorqueNeedsNoClamp() {
        var keys = dossier("pulley-15.boreForm=D").findings().stream()
                .map(Finding::key)
                .collect(Collectors.toSet());
        assertThat(keys).contains("shaft-joint.left").doesNotContain("hub-clamp.left");
        assertThat(found("shaft-form", "pulley-15.boreForm=keyed").verdict()).isEqualTo(Verdict.FAILS);
    }

    @ParameterizedTest(name = "{0} fails with {1}")
    @CsvSource({
        "hub-clamp, controller-one.driveCurrentA=120;market-hill-single.task.gripShare=unknown",
        "hub-clamp-stress, pulley-15.hubLengthMm=2",
        "hub-screw-thread, pulley-15.hubScrewThread=M5",
        "hub-screw-engagement, pulley-15.hubScrewGripMm=11",
        "hub-screw-reach, pulley-15.hubThreadDepthMm=5.5",
    })
    void aPlantedFailureIsFound(String slug, String edits) {
        var found = found(slug, edits.split(";"));
        assertThat(found.verdict()).as(found.says()).isEqualTo(Verdict.FAILS);
        assertThat(found.remedy()).isNotBlank();
    }

    @ParameterizedTest(name = "{0} needs what {1} takes away")
    @CsvSource({
        "hub-clamp-stress, pulley-15.hubScrewArmMm=unknown, pulley-15.hubScrewArmMm",
        "hub-clamp-stress, pulley-15.material=, pulley-15.material",
        "hub-screw-engagement, pulley-15.material=, pulley-15.material",
        "hub-clamp, motor-54.shaftDiameterMm=unknown, motor-54.shaftDiameterMm",
    })
    void whatIsNotKnownIsNamed(String slug, String edit, String named) {
        var found = found(slug, edit);
        assertThat(found.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(found.needs()).contains(named);
    }

    @Test
    void itIsALinkThatSlips() {
        var kit = kit(2);
        var links = WeakestLink.of(kit, LayoutSolver.solve(kit)).getFirst().links();
        assertThat(links).anySatisfy(l -> {
            assertThat(l.key()).isEqualTo("hub-clamp.left");
            assertThat(l.kind()).isEqualTo(WeakestLink.Kind.SLIPS);
            assertThat(l.driveNm()).isCloseTo(5.866 / 1.5, within(0.01));
        });
    }

    @Test
    void theBoxHoldsItsScrewsAndTheGuideTightensThem() {
        var dossier = dossier();
        assertThat(dossier.tallies())
                .allSatisfy(t -> assertThat(t.meets()).as(t.name()).isTrue());
        assertThat(dossier.findings().stream()
                        .filter(f -> f.key().startsWith("hardware"))
                        .findFirst()
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        var step = step(dossier, "Fix the left drive pulley on the shaft");
        assertThat(step.takes()).anySatisfy(t -> {
            assertThat(t.seat()).isEqualTo("left hub screws");
            assertThat(t.count()).isEqualTo(2);
        });
        assertThat(step.tools()).contains("3 mm hex key");
        assertThat(String.join(" ", step.does()))
                .contains("the slit not over a flat", "hub screws")
                .doesNotContain("set screw");
        assertThat(step.cautions()).contains("A pulley that slips on its shaft neither drives nor brakes.");
        var aligned = step(dossier, "Align the left belt and set its tension");
        assertThat(String.join(" ", aligned.does()))
                .contains("Loosen the hub screws", "Tighten the hub screws in turn to ")
                .doesNotContain("set screw");
        var titles = dossier.steps().stream().map(Step::title).toList();
        assertThat(titles.indexOf(step.title()))
                .isGreaterThan(titles.indexOf("Clamp the left mount on the hanger"))
                .isLessThan(titles.indexOf("Lay the left belt on its pulleys"));
    }

    private static Step step(Dossier dossier, String title) {
        return dossier.steps().stream()
                .filter(s -> s.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aScrewTooFewIsMissedAndNoneIsRefused() {
        var one = Dossiers.of(kit(1));
        var hardware = one.findings().stream()
                .filter(f -> f.key().startsWith("hardware"))
                .findFirst()
                .orElseThrow();
        assertThat(hardware.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hardware.remedy()).contains("add 1 to the left hub screws");
        assertThatThrownBy(() -> kit(0)).isInstanceOf(Refusal.class).hasMessageContaining("left hub screws");
    }

    @Test
    void itIsDrawn() {
        var dossier = dossier();
        var seats = new ArrayList<String>();
        new DrawingOffice(dossier, DemoKits.REFERENCE, "draft")
                .side(Side.LEFT)
                .views()
                .forEach(v -> v.entities().forEach(e -> seats.add(e.tag().seat())));
        assertThat(seats).contains("left hub screws").doesNotContain("left set screws");
    }
}
