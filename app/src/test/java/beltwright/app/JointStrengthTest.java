package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossiers;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/// The joints of a drive: what must hold of them without the formula, and one planted failure for each.
class JointStrengthTest {
    private static final String KIT = "market-hill-single";
    private static final Set<String> JOINTS = Set.of(
            "slot-grip",
            "slot-pressure",
            "motor-joint-opens",
            "motor-screw-stress",
            "hanger-joint-clamp",
            "hanger-joint-flange",
            "hanger-strike-clamp",
            "hanger-strike-flange",
            "hanger-strike-one-piece",
            "shaft-joint",
            "plate-bending",
            "plate-fatigue");

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    private static List<Finding> joints(String kit, List<Edit> edits) {
        return StrengthFindings.of(kit, JOINTS, edits);
    }

    private static Finding joint(String kit, String slug, String... edits) {
        return StrengthFindings.one(kit, slug, edits);
    }

    @ParameterizedTest
    @MethodSource("kits")
    void everyDemoKitAnswersAndNoneFails(String kit) {
        assertThat(joints(kit, List.of()))
                .hasSizeGreaterThanOrEqualTo(8)
                .allSatisfy(f -> assertThat(f.verdict()).as(f.key()).isIn(Verdict.HOLDS, Verdict.MARGINAL));
    }

    @Tag("law")
    @ParameterizedTest
    @MethodSource("kits")
    void theWorstAndTheBestEncloseTheNominal(String kit) {
        for (var edit : Edits.seeded(kit, 29, 40)) {
            assertThat(joints(kit, List.of(edit)))
                    .isNotEmpty()
                    .allSatisfy(f -> StrengthFindings.nominalIsEnclosed(f, edit));
        }
    }

    @Tag("law")
    @ParameterizedTest
    @CsvSource({
        "slot-grip, market-hill-single, mount-city.slots, 3 4 6 8",
        "slot-grip, market-hill-single, screw-m4x12.strength, A2-70 8.8 10.9 12.9",
        "slot-grip, market-hill-single, market-hill-single.task.jointFriction, 0.05 0.1 0.2",
        "hanger-joint-clamp, market-hill-single, mount-city.clampScrews, 1 2 4 6",
        "hanger-joint-clamp, market-hill-single, screw-m5x20.strength, A2-70 8.8 10.9 12.9",
        "hanger-joint-clamp, quarry-road-load, mount-load.clampScrews, 1 2 4 8",
        "hanger-joint-flange, harbour-mile, mount-flange.flangeHoles, 1 2 3 6",
        "hanger-joint-flange, harbour-mile, mount-flange.flangeCircleMm, 20 30 50",
        "hanger-strike-flange, harbour-mile, mount-flange.flangeHoles, 1 2 3",
        "motor-joint-opens, market-hill-single, screw-m4x12.strength, A2-70 8.8 10.9 12.9",
        "plate-bending, market-hill-single, mount-city.material, pa66-gf30 aluminium-6061-t6 aluminium-7075-t6 steel-hardened",
        "plate-fatigue, market-hill-single, mount-city.material, pa66-gf30 aluminium-6061-t6 aluminium-7075-t6 steel-hardened",
        "hanger-strike-one-piece, orchard-lane, mount-cast.material, pa66-gf30 aluminium-6061-t6 aluminium-7075-t6 steel-hardened",
    })
    void moreOfItNeverHoldsLess(String slug, String kit, String field, String rising) {
        assertThat(StrengthFindings.neverLess(kit, slug, field, rising, Finding::capacity))
                .isPositive();
    }

    @Tag("law")
    @ParameterizedTest
    @CsvSource({
        "plate-bending, mount-city.plateThicknessMm, 3 4 6 8",
        "plate-fatigue, mount-city.plateThicknessMm, 3 4 6 8",
        "plate-bending, mount-city.plateRadiusMm, 24 26 30",
        "slot-pressure, washer-m4.outsideMm, 8 9 12",
        "slot-pressure, washer-m4.thicknessMm, 0.5 1 2",
        "motor-joint-opens, mount-city.boltCircleMm, 30 40 50",
    })
    void moreOfItNeverAsksMore(String slug, String field, String rising) {
        assertThat(StrengthFindings.neverMore(KIT, slug, field, rising, Finding::demand))
                .isPositive();
    }

    /// What the belt asks follows the torque; what the jolting motor asks stays.
    @Tag("law")
    @ParameterizedTest
    @ValueSource(strings = {"slot-grip", "motor-joint-opens", "hanger-joint-clamp", "shaft-joint", "plate-bending"})
    void theBeltsShareDoublesWithTheTorque(String slug) {
        var still = KIT + ".task.motorJoltFactor=1";
        var far = KIT + ".task.gripShare=unknown";
        double jolt = asked(slug, 1, still, far);
        double once = asked(slug, 41, still, far);
        double twice = asked(slug, 81, still, far);
        assertThat(twice - jolt).isCloseTo(2 * (once - jolt), within(1e-9 * twice));
    }

    private static double asked(String slug, int currentA, String still, String far) {
        return joint(
                        KIT,
                        slug,
                        still,
                        far,
                        KIT + ".placements.left.tensionN=unknown",
                        "controller-one.driveCurrentA=" + currentA,
                        "controller-one.brakeCurrentA=" + currentA)
                .demand();
    }

    /// A key misses its aim both ways: the same scatter that loosens one joint overloads another.
    @Tag("law")
    @Test
    void scatterHurtsBothWays() {
        var wide = KIT + ".task.preloadScatterPercent=50";
        var narrow = KIT + ".task.preloadScatterPercent=10";
        assertThat(joint(KIT, "slot-grip", wide).capacityWorst())
                .isLessThan(joint(KIT, "slot-grip", narrow).capacityWorst());
        assertThat(joint(KIT, "slot-pressure", wide).demandWorst())
                .isGreaterThan(joint(KIT, "slot-pressure", narrow).demandWorst());
    }

    @Test
    void warmthCountsForAllButSteelAndMonthsForAPlastic() {
        var plastic = "mount-city.material=pa66-gf30";
        var steel = "mount-city.material=steel-hardened";
        var hot = KIT + ".task.mountC=80";
        var cold = KIT + ".task.mountC=23";
        assertThat(joint(KIT, "plate-bending", plastic, cold).capacity()).isCloseTo(115 / 2.0, within(1e-9));
        assertThat(joint(KIT, "plate-bending", plastic, hot).capacity()).isCloseTo(115 / 4.0, within(1e-9));
        assertThat(joint(KIT, "plate-bending", cold).capacity()).isEqualTo(480);
        assertThat(joint(KIT, "plate-bending", hot).capacity()).isBetween(240.0, 480.0);
        assertThat(joint(KIT, "plate-bending", steel, hot).capacity()).isEqualTo(900);
    }

    @ParameterizedTest(name = "{0} fails with {2}")
    @CsvSource({
        "slot-grip, market-hill-single, placements.left.tensionN=800",
        "slot-pressure, market-hill-single, washer-m4.outsideMm=5.5",
        "motor-joint-opens, market-hill-single, placements.left.tensionN=1800",
        "motor-screw-stress, market-hill-single, placements.left.tensionN=2000;mount-city.boltCircleMm=10;"
                + "motor-54.canLengthMm=200;task.motorJoltFactor=100;screw-m4x12.strength=A2-70",
        "hanger-joint-clamp, market-hill-single, task.motorJoltFactor=60",
        "hanger-joint-clamp, quarry-road-load, task.motorJoltFactor=100",
        "hanger-joint-flange, harbour-mile, task.motorJoltFactor=60",
        "hanger-strike-clamp, market-hill-single, mount-city.plateThicknessMm=2;mount-city.material=aluminium-6061-t6",
        "hanger-strike-clamp, quarry-road-load, task.strikeFactor=3",
        "hanger-strike-flange, harbour-mile, task.strikeFactor=4",
        "hanger-strike-one-piece, orchard-lane, task.strikeFactor=4",
        "shaft-joint, market-hill-single, pulley-15.boreForm=round",
        "plate-bending, market-hill-single, mount-city.plateThicknessMm=2",
        "plate-bending, market-hill-single, mount-city.material=pa66-gf30",
        "plate-fatigue, market-hill-single, mount-city.plateThicknessMm=3",
        "clamp-screw-engagement, market-hill-single, mount-city.material=pa66-gf30",
    })
    void aPlantedFailureIsFound(String slug, String kit, String edits) {
        var all = new ArrayList<Edit>();
        if (kit.equals(FormKits.PINNED)) { // its screws are planted, not its pins
            Stream.of(FormKits.bare()).map(Edit::parse).forEach(all::add);
        }
        for (var edit : edits.split(";")) {
            boolean ofKit = edit.startsWith("placements.") || edit.startsWith("task.");
            all.add(Edit.parse(ofKit ? kit + "." + edit : edit));
        }
        var found = Dossiers.of(DemoKits.SHELF.with(all).kit(kit)).findings().stream()
                .filter(f -> f.key().equals(slug + ".left"))
                .findFirst()
                .orElseThrow();
        assertThat(found.verdict()).as(found.says()).isEqualTo(Verdict.FAILS);
        assertThat(found.remedy()).isNotBlank();
    }

    @ParameterizedTest(name = "{0} needs what {1} takes away")
    @CsvSource({
        "slot-grip, motor-54.massKg=unknown, motor-54.massKg",
        "shaft-joint, pulley-15.material=, pulley-15.material",
        "motor-joint-opens, mount-city.slots=2, three screws",
        "plate-bending, mount-city.openingMm=60, its opening leave whole",
        "hanger-joint-clamp, hanger-150.sectionHeightMm=unknown, hanger-150.sectionHeightMm",
        "slot-pressure, mount-city.material=core-plastic, under the head of a screw of core-plastic",
    })
    void whatIsNotKnownIsNamed(String slug, String edit, String named) {
        var found = joint(KIT, slug, edit);
        assertThat(found.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(String.join("; ", found.needs())).contains(named);
    }

    @Test
    void aRoundClampTurnsBeforeThePlateBends() {
        assertThat(joint(KIT, "hanger-strike-clamp").says()).contains("kinder than breaking");
    }
}
