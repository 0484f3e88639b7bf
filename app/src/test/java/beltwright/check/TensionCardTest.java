package beltwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.app.DemoKits;
import beltwright.belt.SpanFrequency;
import beltwright.dossier.Dossiers;
import beltwright.kit.JumpTests;
import beltwright.layout.LayoutSolver;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What must hold of a tension card, whatever the kit.
@Tag("law")
class TensionCardTest {
    private static final String KIT = "market-hill-single";

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    private static List<TensionCard> cards(String kit, String... edits) {
        var read = Stream.of(edits).map(Edit::parse).toList();
        var resolved = DemoKits.SHELF.with(read).kit(kit);
        return TensionCard.of(resolved, LayoutSolver.solve(resolved));
    }

    private static TensionCard card(String... edits) {
        return cards(KIT, edits).getFirst();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void theTargetLiesInTheBandOrTheCardSaysSo(String kit) {
        for (var edit : new String[] {"1.2", "0.6", "0.3"}) {
            for (var card : cards(kit, kit + ".task.gripShare=" + edit)) {
                if (card.band()) {
                    assertThat(card.leastN()).isLessThanOrEqualTo(card.mostN());
                    boolean inside = card.setN() >= card.leastN() && card.setN() <= card.mostN();
                    assertThat(inside
                                    || card.notes().stream()
                                            .anyMatch(n -> n.contains("needed") || n.contains("more than")))
                            .as("%s at %s: %s", kit, edit, card)
                            .isTrue();
                } else {
                    assertThat(card.why()).isNotEmpty();
                }
            }
        }
    }

    /// The ladder of the kit with its belt at the very end of the band is the referee: nothing that the belt pulls on
    /// fails there, and a hair beyond it the part fails that the card names.
    @ParameterizedTest
    @MethodSource("kits")
    void allStandTheUpperEndAndOneNoMore(String kit) {
        for (var card : cards(kit)) {
            assertThat(card.sure()).as(kit).isTrue();
            var first = card.stands().getFirst();
            assertThat(first.part()).isEqualTo(card.because());
            assertThat(first.tensionN()).isCloseTo(card.mostN(), within(1e-6));
            for (var part : card.stands()) {
                if (part.ends()) {
                    assertThat(left(kit, card, part, 0.9999))
                            .as("%s %s", kit, part)
                            .isGreaterThanOrEqualTo(0);
                    assertThat(left(kit, card, part, 1.0001))
                            .as("%s %s", kit, part)
                            .isNegative();
                }
            }
        }
    }

    /// What is left at the worse limits of the question that ends this part, by the ladder of an edited kit.
    private static double left(String kit, TensionCard card, TensionCard.Stands part, double share) {
        var edit = kit + ".placements." + card.side() + ".tensionN=" + Numbers.plain(share * part.tensionN());
        var resolved = DemoKits.SHELF.with(List.of(Edit.parse(edit))).kit(kit);
        var finding = Ladder.findings(resolved, LayoutSolver.solve(resolved)).stream()
                .filter(f -> f.key().equals(part.question()))
                .findFirst()
                .orElseThrow();
        return finding.capacityWorst() - finding.demandWorst();
    }

    @Test
    void aPartWithoutNumbersSetsNoEndAndIsNamed() {
        var motor = DemoKits.SHELF.kit(KIT).drives().getFirst().motor().id();
        var card = card(motor + ".bearingStaticN=unknown");
        assertThat(card.notes()).anyMatch(n -> n.startsWith("for want of a number") && n.contains("front bearing"));
        assertThat(card.band()).isTrue();
    }

    @Test
    void anAxleThatIsTooWeakAlreadyLeavesNoBand() {
        var card = card(KIT + ".task.landingFactor=20");
        assertThat(card.band()).isFalse();
        assertThat(card.why()).startsWith("no band: because").contains("the pull at work alone is too much for the ");
    }

    @Test
    void tightAndSlackSideShareTheTension() {
        for (var card : cards("steep-street")) {
            assertThat(card.tightN(140) + card.slackN(140)).isCloseTo(280, within(1e-9));
            assertThat(card.tightN(140) - card.slackN(140)).isCloseTo(card.effectiveN(), within(1e-9));
            assertThat(card.slackN(1)).isZero();
        }
    }

    @ParameterizedTest
    @MethodSource("kits")
    void soundAndTensionGoBothWaysAndRiseTogether(String kit) {
        for (var card : cards(kit)) {
            double last = 0;
            for (double tension = 10; tension < 500; tension += 7) {
                double hertz = card.frequencyHz(tension);
                assertThat(card.tensionN(hertz)).isCloseTo(tension, within(1e-9));
                assertThat(hertz).isGreaterThan(last);
                last = hertz;
            }
        }
    }

    /// Two sides built alike are one card: what stands how much is asked of each side by a question of its own.
    @Test
    void sidesBuiltAlikeAreToldAsOne() {
        for (var kit : new String[] {"steep-street", "quarry-road-load"}) {
            var both = cards(kit);
            assertThat(both).hasSize(2);
            assertThat(both.getLast().alike(both.getFirst())).as(kit).isTrue();
            assertThat(both.getLast().stands())
                    .allSatisfy(st -> assertThat(st.question()).endsWith(".right"));
        }
        var other = cards("steep-street", "steep-street.placements.left.tensionN=150");
        assertThat(other.getLast().alike(other.getFirst())).isFalse();
    }

    /// A newcomer finds each sort of card in the demo: told by weights and stiffness, by jump tests, by habit alone.
    @Test
    void theDemoShowsWhatTestsOfOnesOwnDo() {
        for (var card : cards("steep-street")) {
            assertThat(card.calibrated()).isEqualTo("4 hung weights on 75 mm");
            assertThat(card.offsetN()).isPositive();
            assertThat(card.rippleN()).isPositive();
            assertThat(card.warmerN()).isPositive();
            assertThat(card.notes()).anyMatch(n -> n.contains("is habit"));
        }
        for (var card : cards("quarry-road-load")) {
            assertThat(card.notes())
                    .anyMatch(n -> n.contains("below 137 N the slack span goes slack"))
                    .noneMatch(n -> n.contains("is habit"));
            assertThat(card.leastN()).isBetween(90.0, 170.0);
        }
        assertThat(card().calibrated()).isEmpty();
        assertThat(card().rippleN()).isNaN();
        assertThat(card().notes()).anyMatch(n -> n.contains("is habit"));
    }

    /// What a ride is laid beside is what the card's least rests on.
    @ParameterizedTest
    @MethodSource("kits")
    void theCardIsMadeForThePullThatRidesAreLaidBeside(String id) {
        var pull = CardPull.of(DemoKits.SHELF.kit(id));
        var card = cards(id).getFirst();
        if (card.sure() && card.notes().stream().anyMatch(n -> n.contains("is habit"))) {
            assertThat(0.55 * Math.max(pull.drivingN(), pull.brakingN())).isCloseTo(card.leastN(), within(1e-9));
        } else {
            assertThat(pull.drivingN()).isPositive();
        }
    }

    /// Whatever was typed of jumps, the slack span stays taut at the least, under the worst pull at the worse limits:
    /// that
    /// is tension less half of the pull, and no formula of the card.
    @ParameterizedTest
    @MethodSource("kits")
    void theLeastKeepsTheSlackSpanTautWhateverJumpTestsTell(String kit) {
        var random = new Random(20261128);
        int told = 0;
        int taut = 0;
        for (int i = 0; i < 60; i++) {
            var text = i == 0 ? "" : jumps(random);
            if (!text.isEmpty() && !tells(text)) {
                continue;
            }
            var edits = DemoKits.SHELF.kit(kit).drives().stream()
                    .map(d -> kit + ".placements." + d.side() + ".jumpTests=" + text)
                    .toArray(String[]::new);
            for (var card : text.isEmpty() ? cards(kit) : cards(kit, edits)) {
                if (Double.isNaN(card.leastN())) {
                    continue;
                }
                told++;
                double worst = worstN(kit, card);
                assertThat(card.leastN() - worst / 2).as("%s %s", kit, text).isPositive();
                assertThat(Double.parseDouble(card.newtons().low()) - worst / 2).isPositive();
                boolean byTaut = card.leastBecause().startsWith("the slack span");
                taut += byTaut ? 1 : 0;
                assertThat(!byTaut || card.leastN() < 0.526 * worst)
                        .as("%s %s: %s", kit, text, card)
                        .isTrue();
            }
        }
        assertThat(told).isGreaterThan(20);
        assertThat(taut).isPositive();
    }

    /// Worst pull of the drive of this card: at the worse limits where its band is for them, else at nominal.
    private static double worstN(String kit, TensionCard card) {
        var resolved = DemoKits.SHELF.kit(kit);
        var drive = Subject.of(resolved, LayoutSolver.solve(resolved)).stream()
                .filter(s -> s.scope() == Scope.DRIVE && s.side() == card.side())
                .findFirst()
                .orElseThrow();
        return DrivePull.effectiveN(drive, DrivePull.worstNm(drive, card.sure() ? At.WORST : At.NOMINAL));
    }

    private static String jumps(Random random) {
        double tension = 5 + 100 * random.nextDouble();
        double torque = 0.5 + 8 * random.nextDouble();
        var tests = new ArrayList<String>();
        for (int i = 0; i < 3 + random.nextInt(3); i++) {
            tests.add(Numbers.fixed(tension, 1) + " N " + Numbers.fixed(torque, 2) + " Nm");
            tension *= 1.05 + random.nextDouble();
            torque *= 0.98 + 0.6 * random.nextDouble();
        }
        return String.join(", ", tests);
    }

    private static boolean tells(String text) {
        try {
            return JumpTests.tell(text);
        } catch (Refusal _) {
            return false;
        }
    }

    @Test
    void theReportedJumpTestsNoLongerTakeTheBandBelowATautSlackSpan() {
        var kit = "steep-street";
        var before = cards(kit).getFirst();
        var card = cards(kit, kit + ".placements.left.jumpTests=20 N 3.1 Nm, 30 N 4.2 Nm, 110 N 9.5 Nm")
                .getFirst();
        assertThat(card.leastN()).isBetween(0.95 * before.leastN(), before.leastN());
        assertThat(card.leastBecause()).isEqualTo("the slack span, which must stay taut");
        assertThat(card.notes()).anyMatch(n -> n.contains("below 96 N the slack span goes slack at the worst pull"));
    }

    @Test
    void tensionsNearlyTheSameAreOneAndALevelLineIsRefused() {
        assertThat(JumpTests.parse("100 N 3.1 Nm, 100.1 N 3.2 Nm, 100.2 N 3.4 Nm")
                        .lacking())
                .isEqualTo(2);
        assertThat(JumpTests.parse("100 N 3.1 Nm, 110 N 3.5 Nm, 121 N 3.9 Nm").lacking())
                .isZero();
        assertThat(JumpTests.parse("100 N 3.1 Nm, 109 N 3.5 Nm, 118 N 3.9 Nm").lacking())
                .isEqualTo(1);
        assertThatThrownBy(() -> JumpTests.parse("100 N 3.1 Nm, 130 N 3.1 Nm, 170 N 3.2 Nm"))
                .hasMessageContaining("torque does not rise with tension")
                .hasMessageContaining("less than a tenth");
        assertThatThrownBy(() -> JumpTests.parse("100 N 3 Nm, 130 N 6 Nm, 170 N 4 Nm"))
                .hasMessageContaining("further from their line");
        assertThatThrownBy(() -> JumpTests.parse("100 N 4 Nm, 130 N 4 Nm, 170 N 4 Nm"))
                .hasMessageContaining("level or falls");
    }

    /// What is printed lies in the band, and is the same on rung, card and guide.
    @ParameterizedTest
    @MethodSource("kits")
    void rungCardAndGuideSayOneBandRoundedInward(String id) {
        var dossier = Dossiers.of(DemoKits.SHELF.kit(id));
        for (var card : cards(id)) {
            var band = card.newtons();
            assertThat(Double.parseDouble(band.low())).isBetween(card.leastN(), card.leastN() + 1);
            assertThat(Double.parseDouble(band.high())).isBetween(card.mostN() - 1, card.mostN());
            assertThat(card.tensionN(Double.parseDouble(card.hertz().low()))).isGreaterThanOrEqualTo(card.leastN());
            assertThat(card.tensionN(Double.parseDouble(card.hertz().high()))).isLessThanOrEqualTo(card.mostN());
            var rung = dossier.findings().stream()
                    .filter(f -> f.key().equals("tension-band." + card.side()))
                    .findFirst()
                    .orElseThrow();
            assertThat(rung.says())
                    .startsWith(band + " N at the worse limits, ")
                    .contains(" N at nominal; ");
            var step = dossier.steps().stream()
                    .filter(st -> st.title().equals("Align the " + card.side() + " belt and set its tension"))
                    .findFirst()
                    .orElseThrow();
            assertThat(step.does()).containsAll(card.steps());
            assertThat(String.join(" ", step.does()))
                    .contains(
                            "loosest wheel angle",
                            "between " + card.hertz().low() + " and "
                                    + card.hertz().high() + " Hz, " + band.low() + " and " + band.high() + " N");
        }
    }

    @Test
    void aBandTooNarrowForWholeNewtonsKeepsMoreDigits() {
        assertThat(Ends.of(100.3, 100.8, 0)).hasToString("100.3 to 100.8");
        assertThat(Ends.of(99.2, 176.9, 0)).hasToString("100 to 176");
        assertThat(Ends.of(100, 176, 0)).hasToString("100 to 176");
    }

    /// A sound that was kept is held against the card of today.
    @Test
    void aJumpTestHeardByAnotherCalibrationIsNamed() {
        var kit = "steep-street";
        var now = cards(kit).getFirst();
        double right = now.tensionN(270);
        for (double share : new double[] {0.9, 0.96, 1, 1.04, 1.1}) {
            var test = Numbers.fixed(share * right, 1) + " N by 270 Hz 2.4 Nm";
            var card = cards(kit, kit + ".placements.left.jumpTests=" + test).getFirst();
            assertThat(card.notes().stream()
                            .anyMatch(n -> n.contains("270 Hz was kept as " + Numbers.fixed(share * right, 1) + " N")
                                    && n.contains("270 Hz is " + Numbers.fixed(right, 1) + " N")
                                    && n.contains("record it again")))
                    .isEqualTo(Math.abs(1 / share - 1) > 0.05);
        }
    }

    @Test
    void slotsStandLessAsFrictionScattersMore() {
        double last = Double.POSITIVE_INFINITY;
        for (var scatter : new String[] {"0.01", "0.02", "0.04", "0.06"}) {
            double slots = slotsN(card(KIT + ".task.jointFriction=0.12 ±" + scatter));
            assertThat(slots).isLessThan(last);
            last = slots;
        }
        last = Double.POSITIVE_INFINITY;
        for (var scatter : new String[] {"5", "20", "35", "50"}) {
            double slots = slotsN(card(KIT + ".task.preloadScatterPercent=" + scatter));
            assertThat(slots).isLessThan(last);
            last = slots;
        }
    }

    private static double slotsN(TensionCard card) {
        assertThat(card.sure()).isTrue();
        return card.stands().stream()
                .filter(p -> p.part().equals("the slot screws"))
                .findFirst()
                .orElseThrow()
                .tensionN();
    }

    @Test
    void aBeltThatIsTightAndWarmSaysSo() {
        var belt = DemoKits.SHELF.kit(KIT).drives().getFirst().belt().id() + ".stiffnessN=50000";
        var loose = card(belt, KIT + ".task.mountC=21");
        var warm = card(belt, KIT + ".task.mountC=80");
        assertThat(warm.warmerN()).isGreaterThan(loose.warmerN()).isPositive();
        assertThat(warm.rippleN()).isPositive();
        assertThat(card(KIT + ".task.mountC=80").warmerN()).isNaN();
    }

    /// A stiff string made by its own formula, written down as weights and sounds, gives its mass and stiffness back.
    @Test
    void hungWeightsGiveAStiffStringBack() {
        double massKgM = 0.0525;
        double bending = 60_000;
        var text = new StringBuilder("span 80 mm:");
        for (double tension : new double[] {40, 90, 150, 220}) {
            double hertz = SpanFrequency.stiffHz(tension, massKgM, 80, bending);
            text.append(tension == 40 ? " " : ", ")
                    .append(Numbers.plain(tension))
                    .append(" N ")
                    .append(Numbers.plain(hertz))
                    .append(" Hz");
        }
        var belt = DemoKits.SHELF.kit(KIT).drives().getFirst().belt().id();
        var card = card(belt + ".hungWeights=" + text);
        double span = card.spanMm();
        assertThat(card.factor()).isCloseTo(4 * massKgM * span * span / 1e6, within(1e-8));
        assertThat(card.offsetN()).isCloseTo(Math.PI * Math.PI * bending / (span * span), within(1e-3));
        assertThat(card.calibrated()).isEqualTo("4 hung weights on 80 mm");
        assertThat(card.frequencyHz(120)).isCloseTo(SpanFrequency.stiffHz(120, massKgM, span, bending), within(1e-3));
    }

    /// Sound read an octave high is doubted; a percent or two of a tuner, or the belt's own stiffness, is not.
    @Test
    void weightsAreDoubtedFromAnOctaveOnAndNoSooner() {
        double massKgM = 0.0525;
        var belt = DemoKits.SHELF.kit(KIT).drives().getFirst().belt().id();
        for (double bending : new double[] {0, 30_000, 60_000, 90_000}) {
            for (double times : new double[] {0.5, 0.98, 1, 1.02, 2}) {
                double light = times * SpanFrequency.stiffHz(60, massKgM, 80, bending);
                double heavy = times * SpanFrequency.stiffHz(180, massKgM, 80, bending);
                var card = card(belt + ".hungWeights=span 80 mm: 60 N " + Numbers.plain(light) + " Hz, 180 N "
                        + Numbers.plain(heavy) + " Hz");
                assertThat(card.notes().stream().anyMatch(n -> n.contains("octave")))
                        .as("%s times, %s: %s", times, bending, card.notes())
                        .isEqualTo(times == 0.5 || times == 2);
                assertThat(card.notes()).noneMatch(n -> n.contains("below 0"));
            }
        }
        assertThat(DemoKits.ids().flatMap(id -> cards(id).stream()))
                .allSatisfy(c -> assertThat(c.notes()).noneMatch(n -> n.contains("octave") || n.contains("below 0")));
    }

    @Test
    void jumpTestsTakeTheHabitsPlaceAndReachNoFurther() {
        var text = "90 N 2 Nm, 120 N 3 Nm, 150 N 4 Nm";
        var tried = card(KIT + ".placements.left.jumpTests=" + text);
        var kit = DemoKits.SHELF.kit(KIT);
        var subject = Subject.of(kit, LayoutSolver.solve(kit)).getFirst();
        double torque = 1.25 * DrivePull.worstNm(subject, At.WORST);
        assertThat(tried.leastN()).isCloseTo(90 + (torque - 2) * 30, within(1e-9));
        assertThat(tried.notes()).noneMatch(n -> n.contains("habit"));

        var low = card(KIT + ".placements.left.jumpTests=20 N 0.7 Nm, 30 N 1.0 Nm, 40 N 1.4 Nm");
        assertThat(low.known()).isFalse();
        assertThat(low.why()).isEqualTo("cannot tell: needs a jump test at a higher tension");
    }

    @Test
    void aLineOfJumpTestsGoesBothWaysAndNoFurther() {
        var tests = JumpTests.parse("60 N 4.1 Nm, 80 N 5.6 Nm, 100 N 6.9 Nm");
        for (double tension = 62; tension <= 100; tension += 4.75) {
            assertThat(tests.tensionN(tests.torqueNm(tension))).isCloseTo(tension, within(1e-9));
        }
        for (var test : tests.tests()) {
            assertThat(tests.torqueNm(test.tensionN())).isLessThanOrEqualTo(test.torqueNm() + 1e-12);
        }
        assertThat(tests.torqueNm(100.1)).isNaN();
        assertThat(tests.torqueNm(59.9)).isNaN();
        assertThat(tests.tensionN(8)).isNaN();
        assertThat(tests.tensionN(1)).isEqualTo(60);
    }
}
