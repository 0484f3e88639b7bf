package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.check.WeakestLink;
import beltwright.layout.LayoutSolver;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Dowel pins and a stop keep a mount from turning on its hanger.
class HangerFormTest {
    private static final String FLANGED = "harbour-mile";
    private static final String CLAMPED = "market-hill-single";
    private static final String RECTANGULAR = "quarry-road-load";

    private static String[] pins(String mount, String... more) {
        return Stream.concat(
                        Stream.of(
                                mount + ".dowels=2",
                                mount + ".dowelMm=4",
                                mount + ".dowelArmMm=15",
                                mount + ".dowelDepthMm=6",
                                mount + ".dowelMaterial=steel-dowel"),
                        Arrays.stream(more))
                .toArray(String[]::new);
    }

    /// {@return the finding of a kit that the demo ships without pins, or whose pins are taken out}
    private static Finding found(String kit, String slug, String... edits) {
        return StrengthFindings.one(kit, slug, kit.equals(FLANGED) ? FormKits.bare(edits) : edits);
    }

    private static String[] stop(String mount) {
        return new String[] {mount + ".stopArmMm=25", mount + ".stopWidthMm=8", mount + ".stopHeightMm=6"};
    }

    private static double value(Finding finding, String symbol) {
        return finding.working().stream()
                .filter(l -> l.symbol().equals(symbol))
                .mapToDouble(l -> l.value())
                .findFirst()
                .orElseThrow();
    }

    /// By hand: two pins of 4 mm at 15 mm, 6 mm deep in 7075-T6 that bears 480 MPa. They shear at
    /// 2·1050·12.566·15/1000 = 395.84 N·m, widen their holes at 2·480·4·6·15/1000 = 345.6 N·m, and hold
    /// half of that.
    @ParameterizedTest
    @CsvSource({"hanger-joint-flange, harbour-mile, mount-flange", "hanger-joint-clamp, market-hill-single, mount-city"
    })
    void pinsHoldWhatTheyHoldByHand(String slug, String kit, String mount) {
        var found = found(kit, slug, pins(mount));
        assertThat(value(found, "T_shear")).isCloseTo(395.84, within(0.01));
        assertThat(value(found, "T_bear")).isCloseTo(345.6, within(1e-9));
        assertThat(found.capacity()).isCloseTo(172.8, within(1e-9));
        assertThat(found.says()).contains("held by pins, friction not added");
        assertThat(found.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /// By hand: 8 by 6 mm at 25 mm, 480·8·6·25/1000 = 576 N·m once, half of it under torque that reverses.
    @Test
    void aStopHoldsWhatItHoldsByHand() {
        var found = found(CLAMPED, "hanger-joint-clamp", stop("mount-city"));
        assertThat(found.capacity()).isCloseTo(288, within(1e-9));
        assertThat(found.says()).contains("held by a stop, friction not added");
    }

    @Test
    void thinPinsShearBeforeTheirHolesWiden() {
        var found = found(FLANGED, "hanger-joint-flange", pins("mount-flange", "mount-flange.dowelDepthMm=20"));
        assertThat(found.capacity()).isCloseTo(395.84 / 2, within(0.01));
    }

    /// The most of all counts and nothing is added: weak pins leave what friction holds.
    @Tag("law")
    @ParameterizedTest
    @CsvSource({
        "hanger-joint-flange, harbour-mile, mount-flange",
        "hanger-joint-clamp, market-hill-single, mount-city",
        "hanger-joint-clamp, quarry-road-load, mount-load",
    })
    void nothingIsAddedAndNothingIsLost(String slug, String kit, String mount) {
        double bare = found(kit, slug).capacity();
        var weak =
                found(kit, slug, pins(mount, mount + ".dowelMm=1.5", mount + ".dowels=1", mount + ".dowelDepthMm=1"));
        assertThat(weak.capacity()).isEqualTo(bare);
        assertThat(found(kit, slug, pins(mount)).capacity()).isGreaterThanOrEqualTo(bare);
    }

    @Tag("law")
    @ParameterizedTest
    @CsvSource({
        "dowels, 1 2 4 8",
        "dowelMm, 2 3 4 6",
        "dowelArmMm, 8 12 20",
        "dowelDepthMm, 2 4 8 20",
        "stopArmMm, 10 30 60",
        "stopWidthMm, 3 6 12",
        "stopHeightMm, 3 6 12",
    })
    void moreOfItNeverHoldsLess(String field, String rising) {
        for (var slug : List.of("hanger-joint-flange", "hanger-strike-flange")) {
            double before = 0;
            for (var value : rising.split(" ")) {
                var edits = Stream.concat(
                        Arrays.stream(field.startsWith("stop") ? stop("mount-flange") : pins("mount-flange")),
                        Stream.of("mount-flange." + field + "=" + value));
                double now = found(FLANGED, slug, edits.toArray(String[]::new)).capacity();
                assertThat(now).as("%s %s=%s", slug, field, value).isGreaterThanOrEqualTo(before);
                before = now;
            }
        }
    }

    @Test
    void whatAPinNeedsIsNamed() {
        var found = found(
                FLANGED,
                "hanger-joint-flange",
                "mount-flange.dowels=2",
                "mount-flange.dowelMm=unknown",
                "mount-flange.dowelArmMm=unknown");
        assertThat(found.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(found.needs())
                .contains(
                        "mount-flange.dowelMm",
                        "mount-flange.dowelArmMm",
                        "mount-flange.dowelDepthMm",
                        "mount-flange.dowelMaterial");
    }

    @Test
    void aPinOfNothingKnownIsRefused() {
        assertThatThrownBy(() -> DemoKits.SHELF
                        .with(List.of(Edit.parse("mount-flange.dowelMaterial=cheese")))
                        .kit(FLANGED))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("cheese")
                .hasMessageContaining("steel-dowel");
    }

    @Test
    void aPinnedClampNoLongerTurnsKindly() {
        var bare = found(CLAMPED, "hanger-strike-clamp");
        assertThat(bare.says()).contains("kinder than breaking");
        var pinned = found(CLAMPED, "hanger-strike-clamp", pins("mount-city"));
        assertThat(pinned.says()).doesNotContain("kinder than breaking");
        assertThat(pinned.demand()).isGreaterThan(bare.demand());
        var weak = found(
                CLAMPED, "hanger-strike-clamp", pins("mount-city", "mount-city.dowels=1", "mount-city.dowelDepthMm=1"));
        assertThat(weak.capacity()).isLessThan(pinned.capacity());
        assertThat(found(RECTANGULAR, "hanger-strike-clamp", pins("mount-load")).capacity())
                .isGreaterThanOrEqualTo(
                        found(RECTANGULAR, "hanger-strike-clamp").capacity());
    }

    /// The belt pulls straight across the screws of a flange: what is asked is torque and pull at the screws' radius.
    @Test
    void aFlangeFeelsTheBeltsPullAcrossItsScrews() {
        var found = found(FLANGED, "hanger-joint-flange");
        double side = value(found, "P") + value(found, "F_jolt");
        assertThat(found.demand()).isCloseTo(value(found, "M_t") + side * 17 / 1000, within(1e-9));
        double tight = found(FLANGED, "hanger-joint-flange", FLANGED + ".placements.left.tensionN=300")
                .demand();
        double tighter = found(FLANGED, "hanger-joint-flange", FLANGED + ".placements.left.tensionN=400")
                .demand();
        assertThat(tighter - tight).isCloseTo(200 * 0.017, within(1e-6));
        var clamp = found(CLAMPED, "hanger-joint-clamp", CLAMPED + ".placements.left.tensionN=400");
        assertThat(clamp.demand())
                .isEqualTo(found(CLAMPED, "hanger-joint-clamp").demand());
    }

    @Test
    void pinsBreakWhereFrictionSlips() {
        assertThat(kind()).isEqualTo(WeakestLink.Kind.SLIPS);
        assertThat(kind(pins("mount-flange"))).isEqualTo(WeakestLink.Kind.BREAKS);
    }

    private static WeakestLink.Kind kind(String... edits) {
        var kit = DemoKits.SHELF
                .with(Arrays.stream(FormKits.bare(edits)).map(Edit::parse).toList())
                .kit(FLANGED);
        return WeakestLink.of(kit, LayoutSolver.solve(kit)).stream()
                .flatMap(w -> w.links().stream())
                .filter(l -> l.key().startsWith("hanger-joint-flange"))
                .findFirst()
                .orElseThrow()
                .kind();
    }
}
