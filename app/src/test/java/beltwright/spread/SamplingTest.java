package beltwright.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.app.DemoKits;
import beltwright.app.bench.Hands;
import beltwright.check.Assumed;
import beltwright.check.Reading;
import beltwright.check.Subject;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.quantity.Dimension;
import beltwright.quantity.Refusal;
import beltwright.ride.GivenUp;
import beltwright.workshop.Edit;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Kits of the demo, drawn.
class SamplingTest {
    private static final String LIGHT = "steep-street-light";

    private static Kit kit(String id, Edit... edits) {
        return DemoKits.SHELF.with(List.of(edits)).kit(id);
    }

    static java.util.stream.Stream<String> kits() {
        return DemoKits.ids();
    }

    private static Odds of(Spread spread, String key) {
        return spread.odds().stream()
                .filter(o -> o.finding().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void theKitWithEveryNumberAtNominalIsTheKitToTheLastBit(String id) {
        var kit = kit(id);
        var pieces = new Pieces(kit);
        var questions = Asking.questions(kit, pieces);
        var asking = new Asking(kit, pieces, questions);
        asking.ask(pieces.inputs().stream()
                .mapToDouble(i -> i.dimension().nominal())
                .toArray());
        var subjects = Subject.of(kit, LayoutSolver.solve(kit));
        var reading = new Reading();
        assertThat(questions).hasSizeGreaterThan(80);
        for (int q = 0; q < questions.size(); q++) {
            questions.get(q).check().measure(subjects.get(questions.get(q).subject()), reading);
            assertThat(asking.slack(q)).as(questions.get(q).key()).isEqualTo(reading.capacity() - reading.demand());
        }
    }

    /// What is drawn is what has limits: nothing is forgotten, nothing without limits moves.
    @ParameterizedTest
    @MethodSource("kits")
    void everyNumberWithLimitsIsDrawnInEverySeat(String id) {
        var kit = kit(id);
        var pieces = new Pieces(kit);
        int wanted = 0;
        for (var seat : kit.seats().values()) {
            int fitted = Math.max(1, Math.min(seat.count(), beltwright.kit.Hardware.needed(kit, seat.name())));
            wanted += fitted * toleranced(seat.part());
        }
        for (var place : kit.draft().placements().values()) {
            wanted += toleranced(place);
        }
        wanted += toleranced(kit.task());
        wanted += Assumed.standingIn(kit).size() + Assumed.misses(kit).size();
        assertThat(pieces.inputs()).hasSize(wanted);
        assertThat(pieces.inputs().stream().map(Input::stream)).doesNotHaveDuplicates();
        var drawn = pieces.kit(
                pieces.inputs().stream().mapToDouble(i -> i.dimension().upper()).toArray());
        drawn.seats()
                .values()
                .forEach(seat -> assertThat(toleranced(seat.part()))
                        .as(seat.name().toString())
                        .isZero());
    }

    private static int toleranced(Object value) {
        if (value instanceof Dimension d) {
            return d.toleranced() ? 1 : 0;
        }
        int n = 0;
        if (value instanceof Record r) {
            for (var c : r.getClass().getRecordComponents()) {
                try {
                    n += toleranced(c.getAccessor().invoke(r));
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
        return n;
    }

    @Test
    void threadsChangeNoBit() {
        var one = Sampling.of(kit(LIGHT), 6500, 42, new Hands(1), () -> false);
        assertThat(Sampling.of(kit(LIGHT), 6500, 42, new Hands(2), () -> false)).isEqualTo(one);
        assertThat(Sampling.of(kit(LIGHT), 6500, 42, new Hands(7), () -> false)).isEqualTo(one);
        assertThat(Sampling.of(kit(LIGHT), 6500, 43, new Hands(2), () -> false)).isNotEqualTo(one);
    }

    /// What follows from the limits is not asked after five thousand kits; what does not is asked in every kit.
    @Test
    void whatTheLimitsDecideIsNotAskedForEver() {
        var spread = Sampling.of(kit("orchard-lane"), 10_500, 1);
        assertThat(spread.odds())
                .allSatisfy(o -> assertThat(o.asked()).as(o.finding().key()).isIn(5000, 10_500));
        var braking = of(spread, "braking.left");
        assertThat(braking.finding().verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(braking.asked()).isEqualTo(10_500);
        assertThat(braking.holds()).isBetween(10_350, 10_480);
        var thread = of(spread, "thread-past-nut.left");
        assertThat(thread.asked()).isEqualTo(5000);
        assertThat(thread.holds()).isEqualTo(10_500);
        var early = of(Sampling.of(kit("orchard-lane"), 5000, 1), "thread-past-nut.left");
        assertThat(thread.matters()).isEqualTo(early.matters());
        assertThat(thread.scatter()).isEqualTo(early.scatter());
    }

    @Test
    void itCanBeGivenUp() {
        var asked = new AtomicInteger();
        assertThatThrownBy(() -> Sampling.of(kit(LIGHT), 20_000, 1, new Hands(2), () -> asked.incrementAndGet() > 5))
                .isInstanceOf(GivenUp.class);
        assertThat(asked.get()).isLessThan(40);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 200_001})
    void aNumberOfKitsThatCannotBeDrawnIsRefused(int kits) {
        assertThatThrownBy(() -> Sampling.of(kit(LIGHT), kits, 1)).isInstanceOf(Refusal.class);
    }

    /// The stack on the axle is a sum: its mean and variance are those of its members, added.
    @Tag("law")
    @ParameterizedTest
    @ValueSource(strings = {"left", "right"})
    void aStackMeetsTheClosedForm(String side) {
        var kit = kit("steep-street");
        int n = 20_000;
        var s = Objects.requireNonNull(
                of(Sampling.of(kit, n, 3), "thread-past-nut." + side).scatter());
        var end = kit.ends().get(side.equals("left") ? 0 : 1);
        var members = List.of(
                kit.hanger().axleLengthMm(),
                end.innerRing().lengthMm(),
                end.innerBearing().widthMm(),
                end.coreSpacer().lengthMm(),
                end.outerBearing().widthMm(),
                end.outerRing().lengthMm(),
                end.nut().heightMm());
        double variance =
                members.stream().mapToDouble(d -> Distribution.of(d).variance()).sum();
        double mean =
                -members.stream().skip(1).mapToDouble(SamplingTest::middle).sum() + middle(members.getFirst());
        assertThat(s.deviation() * s.deviation()).isCloseTo(variance, within(3 * variance * Math.sqrt(2.0 / n)));
        assertThat(s.mean()).isCloseTo(mean - kit.hanger().axleThread().pitchMm(), within(3 * Math.sqrt(variance / n)));
        double rss = Math.sqrt(members.stream()
                .mapToDouble(d -> Math.pow((d.upper() - d.lower()) / 2, 2))
                .sum());
        assertThat(s.rssHigh() - s.rssLow()).isCloseTo(2 * rss, within(1e-9));
    }

    private static double middle(Dimension d) {
        return (d.lower() + d.upper()) / 2;
    }

    /// The shares of a sum are the variances of its members over the whole variance, and add up to one.
    @Tag("law")
    @Test
    void theSharesOfAStackAreThoseOfItsVariances() {
        var kit = kit("steep-street");
        var odds = of(Sampling.of(kit, 5000, 3), "thread-past-nut.left");
        assertThat(odds.matters().stream().mapToDouble(Odds.Influence::share).sum())
                .isCloseTo(1, within(0.06));
        double nut = Distribution.of(kit.ends().getFirst().nut().heightMm()).variance();
        double axle = Distribution.of(kit.hanger().axleLengthMm()).variance();
        double whole =
                odds.scatter() == null ? Double.NaN : Math.pow(odds.scatter().deviation(), 2);
        assertThat(odds.matters().get(0).where()).isEqualTo("left axle nut");
        assertThat(odds.matters().get(0).rising()).isFalse();
        assertThat(odds.matters().get(0).share()).isCloseTo(nut / whole, within(0.03));
        assertThat(odds.matters().get(1).dimension()).isEqualTo("hanger-200.axleLengthMm");
        assertThat(odds.matters().get(1).rising()).isTrue();
        assertThat(odds.matters().get(1).share()).isCloseTo(axle / whole, within(0.03));
    }

    /// A finding that holds at the worst limits holds in every draw, new checks too.
    @Tag("law")
    @ParameterizedTest
    @MethodSource("kits")
    void whatHoldsAtTheWorstLimitsHoldsInEveryKit(String id) {
        var certain = Sampling.of(kit(id), 600, 5).odds().stream()
                .filter(o -> o.finding().verdict() == Verdict.HOLDS)
                .toList();
        assertThat(certain)
                .hasSizeGreaterThan(60)
                .allSatisfy(o -> assertThat(o.holds()).as(o.finding().key()).isEqualTo(o.kits()));
    }

    /// A check that reads no seat of several pieces does not move when only those move, and neither does the layout.
    @ParameterizedTest
    @MethodSource("kits")
    void onlyTheSeatsOfSeveralPiecesAreLookedAtAgain(String id) {
        var kit = kit(id);
        var pieces = new Pieces(kit);
        var values = pieces.inputs().stream()
                .mapToDouble(i ->
                        i.piece() == 0 ? i.dimension().lower() : i.dimension().upper())
                .toArray();
        var first = pieces.kit(values);
        var second = pieces.other(first, values, 1);
        assertThat(second.seats()).isNotEqualTo(first.seats());
        assertThat(LayoutSolver.solve(second)).isEqualTo(LayoutSolver.solve(first));
        var before = Subject.of(first, LayoutSolver.solve(first));
        var after = Subject.of(second, LayoutSolver.solve(second));
        var a = new Reading();
        var b = new Reading();
        for (var q : Asking.questions(kit, pieces)) {
            q.check().measure(before.get(q.subject()), a);
            q.check().measure(after.get(q.subject()), b);
            assertThat(q.several() || a.same(b)).as(q.key()).isTrue();
        }
    }

    /// Four screws are four pieces: all must be long enough, which is less likely than that one is.
    @Tag("law")
    @Test
    void theWorstOfSeveralPiecesDecides() {
        var limits = new Edit("screw-m4x14", "lengthMm", "14 ±0.35");
        var many = of(Sampling.of(kit(LIGHT, limits), 4000, 9), "motor-screw-reach.left");
        assertThat(many.matters().stream().filter(m -> m.where().equals("left motor screws")))
                .allMatch(m -> m.pieces() == 4)
                .isNotEmpty();
        var scatter = Objects.requireNonNull(many.scatter());
        assertThat(scatter.mean()).isLessThan(scatter.middle());
    }

    /// Narrower limits about the same middle never lower the odds of a chain that holds in the middle.
    @Tag("law")
    @Test
    void narrowerLimitsNeverLowerTheOddsOfAChain() {
        int n = 8000;
        double before = 0;
        for (var limits : new String[] {"1.2", "0.9", "0.6", "0.3", "0.1", "0.02"}) {
            var edit = new Edit("hanger-200", "axleLengthMm", "50.7 ±" + limits);
            var odds = of(Sampling.of(kit("steep-street", edit), n, 11), "thread-past-nut.left");
            assertThat(odds.share().value())
                    .as(limits)
                    .isGreaterThanOrEqualTo(before - 3 * odds.share().standardError());
            before = odds.share().value();
        }
        assertThat(before).isGreaterThan(0.5);
    }

    /// The same seed draws the same kits: another dimension's limits leave every other draw as it was.
    @Test
    void limitsOfOneDimensionLeaveTheOthersAlone() {
        var plain = Sampling.of(kit("steep-street"), 500, 2);
        var edited = Sampling.of(kit("steep-street", new Edit("motor-63", "canDiameterMm", "63.2 ±0.4")), 500, 2);
        assertThat(of(edited, "thread-past-nut.left").scatter())
                .isNotNull()
                .isEqualTo(of(plain, "thread-past-nut.left").scatter());
        assertThat(of(edited, "motor-ground.left").scatter())
                .isNotEqualTo(of(plain, "motor-ground.left").scatter());
    }

    @Test
    void whatIsUnknownStaysUnknown() {
        var kit = kit("steep-street", new Edit("motor-63", "threadDepthMm", "unknown"));
        var spread = Sampling.of(kit, 300, 1);
        var reach = of(spread, "motor-screw-reach.left");
        assertThat(reach.told()).isFalse();
        assertThat(reach.finding().needs()).contains("motor-63.threadDepthMm");
        assertThat(reach.untold()).isEqualTo(300);
        assertThat(spread.untold()).contains("motor-screw-reach.left");
        assertThat(spread.counted()).doesNotContain("motor-screw-reach.left");
        assertThat(spread.odds().getLast().told()).isFalse();
    }
}
