package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.check.Answer;
import beltwright.check.Check;
import beltwright.check.Checks;
import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.kit.Role;
import beltwright.pairs.Pair;
import beltwright.pairs.Pairs;
import beltwright.pairs.Thing;
import beltwright.pairs.Things;
import beltwright.part.Part;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/// What goes with what on the shelf of the demo.
class PairsTest {
    private static final Pairs PAIRS = pairs(DemoKits.SHELF);
    private static final Map<String, Check> BY_SLUG =
            Checks.ALL.stream().collect(Collectors.toMap(Check::slug, Function.identity()));

    private static Pairs pairs(Shelf shelf) {
        return new Pairs(shelf::part, shelf.reference());
    }

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    static Stream<List<Things>> usual() {
        return Things.usual(
                DemoKits.SHELF.parts().values(), DemoKits.SHELF.drafts().values())
                .stream();
    }

    private static Thing.InPlace place(Shelf shelf, Role role, String id) {
        return new Thing.InPlace(role, shelf.part(id));
    }

    private static Check check(Finding f) {
        return Objects.requireNonNull(BY_SLUG.get(f.key().substring(0, f.key().lastIndexOf('.'))));
    }

    @Tag("law")
    @ParameterizedTest
    @MethodSource("kits")
    void aPartInItsOwnKitIsAskedWhatTheKitIsAsked(String id) {
        var kit = DemoKits.SHELF.kit(id);
        var findings = DemoKits.dossier(id).findings();
        int held = 0;
        for (var role : Role.values()) {
            var parts = kit.seats().values().stream()
                    .filter(s -> s.name().role() == role)
                    .map(s -> s.part().id())
                    .collect(Collectors.toSet());
            if (parts.size() != 1) {
                continue; // nothing sits there, or each side has another
            }
            var row = place(DemoKits.SHELF, role, parts.iterator().next());
            var column = new Thing.OfKit(DemoKits.SHELF.draft(id));
            var pair = PAIRS.of(row, column);
            var read = findings.stream()
                    .filter(f -> check(f).reads().contains(role))
                    .toList();
            assertThat(pair.asked()).as(role.toString()).isEqualTo(read.size());
            assertThat(pair.failing()).isEqualTo((int)
                    read.stream().filter(f -> f.verdict() == Verdict.FAILS).count());
            assertThat(PAIRS.findings(row, column)).as(role.toString()).isEqualTo(read);
            if (!read.isEmpty()) {
                var first = read.getFirst();
                assertThat(pair.verdict()).isEqualTo(first.verdict());
                var weakest = read.stream()
                        .filter(f -> f.verdict() == first.verdict() && f.unit().equals("mm"))
                        .findFirst()
                        .orElse(first);
                var decides = Objects.requireNonNull(pair.decides());
                assertThat(decides.key()).isEqualTo(weakest.key());
                assertThat(decides.slack()).isEqualTo(weakest.capacity() - weakest.demand());
                assertThat(decides.slackWorst()).isEqualTo(weakest.capacityWorst() - weakest.demandWorst());
                held++;
            }
        }
        assertThat(held).isGreaterThan(15);
    }

    @Tag("law")
    @ParameterizedTest
    @MethodSource("usual")
    void rowsAndColumnsCanChangePlaces(List<Things> matrix) {
        int told = 0;
        for (var row : matrix.get(0).all()) {
            for (var column : matrix.get(1).all()) {
                var pair = PAIRS.of(row, column);
                alike(PAIRS.of(column, row), pair);
                told += pair.verdict() == null ? 0 : 1;
            }
        }
        assertThat(told).isPositive();
    }

    @Tag("law")
    @Test
    void anyTwoPlacesCanChangePlaces() {
        int told = 0;
        for (var one : Role.values()) {
            for (var other : Role.values()) {
                if (one.ordinal() < other.ordinal()) {
                    for (var row : some(one)) {
                        for (var column : some(other)) {
                            var pair = PAIRS.of(row, column);
                            alike(PAIRS.of(column, row), pair);
                            told += pair.verdict() == null ? 0 : 1;
                        }
                    }
                }
            }
        }
        assertThat(told).isGreaterThan(200);
    }

    private static List<Thing> some(Role role) {
        var all = Things.named(
                        role.toString(),
                        DemoKits.SHELF.parts().values(),
                        DemoKits.SHELF.drafts().values())
                .all();
        return all.subList(0, Math.min(3, all.size()));
    }

    private static void alike(Pair swapped, Pair pair) {
        assertThat(swapped)
                .isEqualTo(new Pair(
                        pair.column(),
                        pair.row(),
                        pair.verdict(),
                        pair.decides(),
                        pair.asked(),
                        pair.failing(),
                        pair.centreDistanceMm(),
                        pair.needs(),
                        pair.refused()));
    }

    @Tag("law")
    @ParameterizedTest
    @MethodSource("usual")
    void onlyWhatIsThereIsAsked(List<Things> matrix) {
        for (var row : matrix.get(0).all()) {
            for (var column : matrix.get(1).all()) {
                if (column instanceof Thing.OfKit) {
                    continue;
                }
                var there = roles(row);
                there.addAll(roles(column));
                assertThat(PAIRS.findings(row, column)).allSatisfy(f -> {
                    assertThat(there).as(f.key()).containsAll(check(f).reads());
                    assertThat(check(f).reads()).as(f.key()).containsAnyElementsOf(roles(row));
                    assertThat(check(f).reads()).as(f.key()).containsAnyElementsOf(roles(column));
                });
            }
        }
    }

    private static Set<Role> roles(Thing thing) {
        var roles = EnumSet.noneOf(Role.class);
        switch (thing) {
            case Thing.InPlace place -> roles.add(place.role());
            case Thing.Together together -> together.parts().forEach(p -> roles.add(p.role()));
            case Thing.OfKit kit -> throw new AssertionError(kit.id());
        }
        if (roles.contains(Role.INNER_BEARING)) {
            roles.add(Role.OUTER_BEARING); // both bearings of a wheel are alike
        }
        return roles;
    }

    @Test
    void aMotorAndItsPulleySayNothingOfTakeUp() {
        var asked = PAIRS
                .findings(
                        place(DemoKits.SHELF, Role.MOTOR, "motor-54"),
                        place(DemoKits.SHELF, Role.DRIVE_PULLEY, "pulley-15"))
                .stream()
                .map(f -> check(f).slug())
                .toList();
        assertThat(asked).contains("shaft-bore").doesNotContain("take-up", "fitting-travel", "shaft-reach");
    }

    @Test
    void aBeltOverBothPulleysTellsItsCentreDistance() {
        var pulleys = new Thing.Together(List.of(
                place(DemoKits.SHELF, Role.DRIVE_PULLEY, "pulley-15"),
                place(DemoKits.SHELF, Role.WHEEL_PULLEY, "wheel-pulley-36")));
        var pair = PAIRS.of(place(DemoKits.SHELF, Role.BELT, "belt-265-15"), pulleys);
        // root of the exact length equation for 15 and 36 teeth and 265 mm, as in PitchLineLawTest
        assertThat(pair.centreDistanceMm()).isCloseTo(66.643584, within(0.2));
        assertThat(PAIRS.of(
                                place(DemoKits.SHELF, Role.BELT, "belt-265-15"),
                                pulleys.parts().getFirst())
                        .centreDistanceMm())
                .isNaN();
    }

    @Test
    void partsThatNeverMeetAreStrangers() {
        var pair = PAIRS.of(
                place(DemoKits.SHELF, Role.BELT, "belt-265-15"), place(DemoKits.SHELF, Role.AXLE_NUT, "nut-m8"));
        assertThat(pair.verdict()).isNull();
        assertThat(pair.decides()).isNull();
        assertThat(pair.asked()).isZero();
        assertThat(pair.refused()).isEmpty();
    }

    @Test
    void anEmptyShelfHasNoMatrix() {
        assertThat(Things.usual(List.of(), List.of())).isEmpty();
        assertThat(Things.usual(List.of(), DemoKits.SHELF.drafts().values())).isEmpty();
        assertThat(usual())
                .hasSizeGreaterThan(15)
                .allSatisfy(matrix -> assertThat(matrix)
                        .allSatisfy(things -> assertThat(things.all()).isNotEmpty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"gearbox", "", "left motor", "wheels and belts"})
    void unknownWordsAreRefusedWithWhatIsAllowed(String words) {
        assertThatThrownBy(() -> Things.named(words, List.of(), List.of()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("'" + words + "'")
                .hasMessageContaining("allowed: kits, pulleys (both together), ")
                .hasMessageContaining(
                        Arrays.stream(Role.values()).map(Role::toString).collect(Collectors.joining(", ")));
    }

    @ParameterizedTest
    @CsvSource({
        "wheel, wheel",
        "wheels, wheel",
        "drive pulleys, drive pulley",
        "bearing, inner bearing",
        "bearings, inner bearing",
        "motor screw, motor screws",
        "motor screws, motor screws",
        "kit, kits",
        "kits, kits",
        "pulleys, pulleys"
    })
    void oneOrManyIsTheSame(String typed, String words) {
        var parts = DemoKits.SHELF.parts().values();
        var things = Things.named(typed, parts, DemoKits.SHELF.drafts().values());
        assertThat(things.words()).isEqualTo(words);
        assertThat(things.all()).isNotEmpty();
    }

    /// The mount on a flange is held by flange screws, of which a kit with a clamp has none; its clamp screws are idle.
    @Test
    void aMountThatNeedsOtherScrewsLacksThem() {
        var column = new Thing.OfKit(DemoKits.SHELF.draft("market-hill-single"));
        var row = place(DemoKits.SHELF, Role.MOUNT, "mount-flange");
        var pair = PAIRS.of(row, column);
        assertThat(pair.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(pair.refused()).isEmpty();
        var findings = PAIRS.findings(row, column);
        assertThat(findings)
                .filteredOn(f -> f.key().equals("hardware.kit"))
                .singleElement()
                .satisfies(f -> assertThat(f.remedy()).contains("put 3 into the left flange screws"));
        assertThat(findings).extracting(Finding::key).noneMatch(k -> k.startsWith("clamp-screw"));
    }

    @Test
    void kitsAreNotHeldAgainstKits() {
        var kit = new Thing.OfKit(DemoKits.SHELF.draft("steep-street"));
        assertThat(PAIRS.of(kit, kit).refused()).contains("held against another kit");
    }

    /// An opening of 20.5 ±0.2 over a boss of 20 ±0.2 leaves 0.5 ± 0.4, and 0.2 is wanted.
    @Test
    void whatFitsByLessThanItsLimitsIsMarginal() {
        var pair = bossInOpening("20.5 ±0.2", "20 ±0.2");
        var decides = Objects.requireNonNull(pair.decides());
        assertThat(decides.check()).isEqualTo("Motor boss in the plate's opening");
        assertThat(decides.slackText()).isEqualTo("0.3 ± 0.4 mm");
        assertThat(pair.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(pair.failing()).isZero();
    }

    private static Pair wheelPulley(String part, String kit) {
        return PAIRS.of(place(DemoKits.SHELF, Role.WHEEL_PULLEY, part), new Thing.OfKit(DemoKits.SHELF.draft(kit)));
    }

    private static List<String> slugs(String part, String kit) {
        return PAIRS
                .findings(place(DemoKits.SHELF, Role.WHEEL_PULLEY, part), new Thing.OfKit(DemoKits.SHELF.draft(kit)))
                .stream()
                .map(f -> f.key().substring(0, f.key().lastIndexOf('.')))
                .toList();
    }

    /// A screwed pulley in a kit whose own is pressed in: the kit has no screws for it, and says so.
    @Test
    void aKitWithoutTheScrewsOfAPartSaysSo() {
        var pair = wheelPulley("wheel-pulley-36-screwed", "orchard-lane");
        assertThat(pair.refused()).isEmpty();
        assertThat(pair.verdict()).isEqualTo(Verdict.FAILS);
        var findings = PAIRS.findings(
                place(DemoKits.SHELF, Role.WHEEL_PULLEY, "wheel-pulley-36-screwed"),
                new Thing.OfKit(DemoKits.SHELF.draft("orchard-lane")));
        var hardware = findings.stream()
                .filter(f -> f.key().equals("hardware.kit"))
                .findFirst()
                .orElseThrow();
        assertThat(hardware.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hardware.demand() - hardware.capacity()).isEqualTo(5);
        assertThat(hardware.says()).contains("no left pulley screws");
        assertThat(hardware.remedy()).contains("put 5 into the left pulley screws");
        assertThat(hardware.subjects()).contains("left pulley screws");
        assertThat(slugs("wheel-pulley-36-screwed", "orchard-lane"))
                .contains("pulley-screw-count")
                .doesNotContain("pulley-screw-reach", "pulley-press");
    }

    /// A pressed pulley in a kit whose own is screwed: nothing of its screws is asked, and none is missing.
    @Test
    void aPressedPulleyDropsTheScrews() {
        var pair = wheelPulley("wheel-pulley-36-pressed", "harbour-mile");
        assertThat(pair.refused()).isEmpty();
        assertThat(slugs("wheel-pulley-36-pressed", "harbour-mile"))
                .contains("pulley-press")
                .doesNotContain("pulley-screw-thread", "pulley-screw-reach", "pulley-screw-engagement", "hardware");
    }

    @Test
    void everyPartOfEverySeatIsHeldAgainstEveryKit() {
        var parts = DemoKits.SHELF.parts().values();
        var kits = Things.named("kits", parts, DemoKits.SHELF.drafts().values());
        for (var role : Role.values()) {
            var rows = Things.named(role.toString(), parts, List.of());
            assertThat(PAIRS.stream(rows.all(), kits.all()))
                    .as(role.toString())
                    .allSatisfy(p -> assertThat(p.refused()).isEmpty());
        }
    }

    @Test
    void kitsAgainstKitsAreOneRefusal() {
        var kits = Things.named("kits", List.of(), DemoKits.SHELF.drafts().values());
        assertThatThrownBy(() -> Things.meet(kits, kits))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("kits are held against kits");
    }

    @ParameterizedTest
    @CsvSource({"20.5 ±0.1, 20 ±0.1, HOLDS", "20.1 ±0.2, 20 ±0.2, FAILS", "unknown, 20 ±0.2, CANNOT_TELL"})
    void limitsDecide(String opening, String boss, Verdict verdict) {
        assertThat(bossInOpening(opening, boss).verdict()).isEqualTo(verdict);
    }

    private static Pair bossInOpening(String opening, String boss) {
        var shelf = DemoKits.SHELF.with(
                List.of(new Edit("mount-city", "openingMm", opening), new Edit("motor-54", "bossDiameterMm", boss)));
        return pairs(shelf).of(place(shelf, Role.MOTOR, "motor-54"), place(shelf, Role.MOUNT, "mount-city"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
             1 |  0.3 | -0.1 |  0.7 | mm    | 0.3 ± 0.4 mm
             1 |  5.2 |  5.2 |  5.2 | mm    | 5.20 mm
             1 |  1.0 | -0.5 |  1.2 | mm    | 1.0 (−0.5 to 1.2) mm
             1 | -2.0 | -2.1 | -1.9 | mm    | −2.0 ± 0.1 mm
             6 |  0.0 |  0.0 |  0.0 | teeth | 6 whole of 6 wanted
             6 | -1.0 | -1.0 | -1.0 | teeth | 5 whole of 6 wanted
             1 | -1.0 | -1.0 | -1.0 | pins  | 1 pin apart
             0 |  0.0 |  0.0 |  0.0 | pins  | 0 pins apart
            58 | -5.0 | -5.0 | -5.0 | pieces| 53 pieces of 58 wanted
             1 |  NaN |  NaN |  NaN | mm    | ''
             1 |  0.4 |  NaN |  NaN | mm    | 0.400 mm
            """)
    void slackIsToldWithItsLimits(double wanted, double slack, double worst, double best, String unit, String told) {
        assertThat(new Answer("a.left", "A", Verdict.HOLDS, unit, wanted, slack, worst, best, "", null).slackText())
                .isEqualTo(told);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mm", "teeth", ""})
    void whatCannotBeToldIsCalledThatEverywhere(String unit) {
        double nan = Double.NaN;
        assertThat(new Answer("a.left", "A", Verdict.CANNOT_TELL, unit, 1, nan, nan, nan, "", null).slackText())
                .isEqualTo("cannot tell");
    }

    @Test
    void aDeviationIsToldAsWhatItIsOff() {
        assertThat(new Answer("a.left", "A", Verdict.HOLDS, "mm", 0.13, 0.02, 0.01, 0.03, "off", null).slackText())
                .isEqualTo("0.13 ± 0.01 mm off, 0.15 allowed");
    }

    @Test
    void yesOrNoLeavesNoSlack() {
        assertThat(new Answer("a.left", "A", Verdict.FAILS, "", 1, -1, -1, -1, "", null).slackText())
                .isEmpty();
    }

    @Test
    void everyPairComesOnceRowByRow() {
        var parts = DemoKits.SHELF.parts().values();
        var belts = Things.named("belts", parts, List.of());
        var wheels = Things.named("wheel pulleys", parts, List.of());
        var expected = new ArrayList<String>();
        for (var belt : belts.all()) {
            for (var wheel : wheels.all()) {
                expected.add(belt.id() + " " + wheel.id());
            }
        }
        assertThat(PAIRS.stream(belts.all(), wheels.all()).map(p -> p.row() + " " + p.column()))
                .containsExactlyElementsOf(expected);
        assertThat(belts.all())
                .extracting(Thing::id)
                .isSubsetOf(parts.stream().map(Part::id).toList());
    }
}
