package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.assembly.Tally;
import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossiers;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.pairs.Mend;
import beltwright.pairs.Mending;
import beltwright.part.DowelPin;
import beltwright.part.StandardSizes;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Dowel pins are parts like screws: counted, judged, in the box, in a step, and offered where they are missing.
class DowelPinTest {
    private static final String KIT = FormKits.PINNED;
    private static final String CLAMPED = FormKits.CLAMPED;

    private static Shelf shelf(String... edits) {
        return DemoKits.SHELF.with(Arrays.stream(edits).map(Edit::parse).toList());
    }

    private static Finding found(String slug, String... edits) {
        return Dossiers.of(shelf(edits).kit(KIT)).findings().stream()
                .filter(f -> f.key().startsWith(slug + "."))
                .findFirst()
                .orElseThrow();
    }

    private static double value(Finding finding, String symbol) {
        return finding.working().stream()
                .filter(l -> l.symbol().equals(symbol))
                .mapToDouble(l -> l.value())
                .findFirst()
                .orElseThrow();
    }

    /// By hand: 12 mm of pin, 7.2 in the hanger, so 4.8 in the mount; at worst 11.5 − 7.3 = 4.2 mm. Two pins of 4.008
    /// mm
    /// at 17 mm widen their holes at 2·480·4.008·4.8·17/1000 = 313.97 N·m and hold half of that.
    @Test
    void thePartsOfTheKitSayWhatHolds() {
        var joint = found("hanger-joint-flange");
        assertThat(value(joint, "l_pin")).isCloseTo(4.8, within(1e-9));
        assertThat(value(joint, "T_bear")).isCloseTo(313.97, within(0.01));
        assertThat(joint.capacity()).isCloseTo(313.97 / 2, within(0.01));
        assertThat(joint.capacityWorst()).isCloseTo(2 * 480 * 4.004 * 4.2 * 16.95 / 2000, within(1e-6));
        assertThat(joint.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(found("dowel-reach").capacityWorst()).isCloseTo(4.2, within(1e-9));
        assertThat(found("dowel-room").capacity()).isCloseTo(1.2, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "dowel-holes, hanger-150-flange.dowelHoles=1, FAILS",
        "dowel-holes, hanger-150-flange.dowelHoles=0, FAILS",
        "dowel-holes, hanger-150-flange.dowelHoles=6, HOLDS",
        "dowel-fit-mount, mount-flange.dowelMm=4 H8, HOLDS",
        "dowel-fit-mount, mount-flange.dowelMm=4 H9, MARGINAL",
        "dowel-fit-mount, mount-flange.dowelMm=4.1 ±0.05, FAILS",
        "dowel-fit-mount, mount-flange.dowelMm=unknown, CANNOT_TELL",
        "dowel-fit-hanger, hanger-150-flange.dowelMm=3.97 ±0.005, FAILS",
        "dowel-fit-hanger, dowel-4x12.diameterMm=4 h6, HOLDS",
        "dowel-reach, dowel-4x12.lengthMm=11 ±0.5, FAILS",
        "dowel-reach, dowel-4x12.lengthMm=6 ±0.25, FAILS",
        "dowel-reach, mount-flange.dowelHoleDepthMm=4.1 ±0.3, MARGINAL",
        "dowel-room, dowel-4x12.lengthMm=14 ±0.5, FAILS",
        "dowel-room, dowel-4x12.lengthMm=12.9 ±0.5, MARGINAL",
        "dowel-room, hanger-150-flange.dowelHoleDepthMm=unknown, CANNOT_TELL",
        "hanger-joint-flange, hanger-150-flange.dowelHoleDepthMm=unknown, CANNOT_TELL",
        "hanger-joint-flange, dowel-4x12.lengthMm=6 ±0.25, MARGINAL",
        "hardware, harbour-mile.seats.left dowel pins=1 x dowel-4x12, FAILS",
        "hardware, harbour-mile.seats.left dowel pins=3 x dowel-4x12, FAILS",
        "hardware, mount-flange.dowels=4, FAILS",
    })
    void pinsAreJudged(String slug, String edit, Verdict verdict) {
        assertThat(found(slug, edit).verdict()).isEqualTo(verdict);
    }

    /// What the mount alone tells still holds the joint, and the kit is told that it has no pins.
    @Test
    void pinsThatNoBoxHoldsAreMissed() {
        var edits = FormKits.loose(
                "mount-flange.dowelDepthMm=6", "mount-flange.dowelMaterial=steel-dowel", "mount-flange.dowelMm=4");
        assertThat(found("hanger-joint-flange", edits).verdict()).isEqualTo(Verdict.HOLDS);
        var hardware = found("hardware", edits);
        assertThat(hardware.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hardware.says()).contains("no left dowel pins");
        assertThat(hardware.remedy()).contains("put 2 into the left dowel pins");
    }

    @Test
    void theBoxHoldsThemAndAStepUsesThem() {
        var dossier = Dossiers.of(DemoKits.SHELF.kit(KIT));
        assertThat(dossier.box().items())
                .filteredOn(i -> i.kind().equals("dowel pin"))
                .singleElement()
                .satisfies(i -> assertThat(i.count()).isEqualTo(2));
        assertThat(dossier.tallies()).allMatch(Tally::meets);
        var step = dossier.steps().stream()
                .filter(s -> s.seats().contains("left dowel pins"))
                .toList();
        assertThat(step).singleElement().satisfies(s -> {
            assertThat(s.title()).isEqualTo("Screw the left mount to the hanger");
            assertThat(s.does().getFirst()).contains("Press each pin straight into the hanger");
            assertThat(s.does().getLast()).startsWith("Tighten the screws");
            assertThat(s.cautions()).anyMatch(c -> c.contains("eye protection") && c.contains("chips"));
            assertThat(s.tools()).contains("vice with soft jaws, or brass drift");
        });
        var bare = Dossiers.of(shelf(FormKits.bare()).kit(KIT));
        assertThat(bare.steps()).noneMatch(s -> String.join(" ", s.does()).contains("pin straight"));
        assertThat(bare.steps()).noneMatch(s -> String.join(" ", s.cautions()).contains("hardened pin"));
    }

    /// A clamp may be pinned as well: the step says so before its screws are tightened.
    @Test
    void aClampTakesPinsToo() {
        var shelf = shelf(
                "mount-city.dowels=1",
                "mount-city.dowelMm=4 H7",
                CLAMPED + ".seats.left dowel pins=1 x dowel-4x12",
                CLAMPED
                        + ".joints.left mount on hanger={by: clamp, of: [left mount, hanger], with: [left clamp screws, left dowel pins]}");
        var steps = Dossiers.of(shelf.kit(CLAMPED)).steps();
        assertThat(steps)
                .filteredOn(s -> s.seats().contains("left dowel pins"))
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.does().getFirst()).contains("Press each pin");
                    assertThat(s.does()).anyMatch(d -> d.contains("over the pins by hand"));
                });
    }

    private static Verdict hardware(Kit kit) {
        return Dossiers.of(kit).findings().stream()
                .filter(f -> f.key().equals("hardware.kit"))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    /// The mend names seat, number and joint; typed as it says, nothing is missing any more.
    @Test
    void aMendAddsPinsFromTheShelf() {
        var loose = shelf(FormKits.loose());
        assertThat(hardware(loose.kit(KIT))).isEqualTo(Verdict.FAILS);
        var mends = Mending.of(loose.kit(KIT), loose.parts(), loose.reference()).all("hardware.kit");
        var mend = mends.getFirst();
        assertThat(mend.says()).isEqualTo("Dowel pin 4 m6 × 12 (dowel-4x12) as left dowel pins");
        assertThat(mend.onShelf()).isTrue();
        assertThat(mend.fields().stream().map(f -> f[0]))
                .containsExactly("seats.left dowel pins", "joints.left mount on hanger");
        assertThat(mend.fields().getFirst()[1]).isEqualTo("2 x dowel-4x12");
        var edits = mend.fields().stream()
                .map(f -> Edit.parse(KIT + "." + f[0] + "=" + f[1]))
                .toList();
        var mended = loose.with(edits).kit(KIT);
        assertThat(hardware(mended)).isEqualTo(Verdict.HOLDS);
        assertThat(mended.seat(mended.drives().getFirst().seat(Role.DOWEL_PINS)).count())
                .isEqualTo(2);
        assertThat(mends).noneMatch(m -> m.says().contains("× 20")); // held apart by them
    }

    @Test
    void pinsThatNobodyHasAreBought() {
        var loose = shelf(FormKits.loose());
        var parts = new TreeMap<>(loose.parts());
        parts.values().removeIf(p -> p instanceof DowelPin);
        var mend = Mending.of(loose.kit(KIT), parts, loose.reference())
                .smallest("hardware.kit")
                .orElseThrow();
        assertThat(mend.says()).isEqualTo("dowel pins 4 m6 × 12 as left dowel pins (not on the shelf)");
        assertThat(mend.fields()).isEmpty();
    }

    /// Pins too short for their holes: the next length that reaches is a change like another screw.
    @Test
    void pinsOfAnotherLengthMend() {
        var shelf = shelf("dowel-4x12.lengthMm=10 ±0.25");
        var mend = Mending.of(shelf.kit(KIT), Map.of(), shelf.reference())
                .smallest("dowel-reach.left")
                .map(Mend::says);
        assertThat(mend).contains("dowel pins 4 m6 × 12 as left dowel pins (not on the shelf)");
    }

    @Test
    void aPinOfNoMaterialIsRefused() {
        assertThatThrownBy(() -> shelf("dowel-4x12.material=cheese").kit(KIT))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("dowel-4x12")
                .hasMessageContaining("cheese");
    }

    /// Longer pins never reach less into the mount, and room is what they leave.
    @Tag("law")
    @Test
    void whatOneGainsTheOtherLoses() {
        double before = 0;
        for (double length : StandardSizes.DOWEL_LENGTHS_MM) {
            var edit = "dowel-4x12.lengthMm=" + length;
            double reach = found("dowel-reach", edit).capacity();
            assertThat(reach).isGreaterThanOrEqualTo(before);
            double room = found("dowel-room", edit).capacity();
            if (reach > 0 && room >= 0) {
                assertThat(reach + room).isCloseTo(6, within(1e-9)); // the depth of the mount's hole
            }
            before = reach;
        }
        assertThat(before).isEqualTo(6);
    }
}
