package beltwright.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.app.DemoKits;
import beltwright.app.bench.Hands;
import beltwright.check.Assumed;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.quantity.Dimension;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Frictions, jolts and loads that nobody gave, and how far screws miss their preload, are drawn as dimensions are.
class RulesDrawnTest {
    private static final String KIT = "steep-street";
    private static final String GRIP = "slot-grip.left";
    private static final String FRICTION = KIT + ".task.jointFriction";
    private static final String SCATTER = KIT + ".task.preloadScatterPercent";

    /// Two screws where four would do, and a belt that is too tight for them.
    private static final List<Edit> LOOSE =
            List.of(new Edit("mount-hill", "slots", "2"), new Edit(KIT, "placements.left.tensionN", "250"));

    private static Shelf shelf(Edit... edits) {
        return DemoKits.SHELF.with(
                Stream.concat(LOOSE.stream(), Stream.of(edits)).toList());
    }

    private static Odds grip(int kits, long seed, Edit... edits) {
        return of(Sampling.of(shelf(edits).kit(KIT), kits, seed, new Hands(2), () -> false), GRIP);
    }

    private static Odds of(Spread spread, String key) {
        return spread.odds().stream()
                .filter(o -> o.finding().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Edit task(String field, String value) {
        return new Edit(KIT, "task." + field, value);
    }

    /// Two M4 screws of class 8.8 at 0.6 of their proof strength against two spans of 250 N and a motor of 640 g, with
    /// friction 0.10 to 0.15 and a jolt of 8 to 12 g, every number written by hand.
    ///
    /// @param miss how far preload misses its aim, even up to this share of it
    private static double byHand(int kits, double miss) {
        var random = new SplittableRandom(20_261_128);
        double stressMm2 = Math.PI / 4 * Math.pow(4 - 0.938194 * 0.7, 2);
        int holds = 0;
        for (int k = 0; k < kits; k++) {
            double friction = 0.10 + 0.05 * random.nextDouble();
            double jolt = 8 + 4 * random.nextDouble();
            double preloadN = 0.6 * 580 * stressMm2 * (1 + miss * (2 * random.nextDouble() - 1));
            if (2 * preloadN * friction >= 2 * 250 + jolt * 0.64 * 9.80665) {
                holds++;
            }
        }
        return (double) holds / kits;
    }

    @Tag("law")
    @ParameterizedTest
    @CsvSource({"35, 7", "20, 8", "12, 9"})
    void theOddsOfAGripAreThoseOfADrawByHand(int percent, long seed) {
        int byHand = 1_000_000;
        int kits = 20_000;
        var odds = percent == 35
                ? grip(kits, seed)
                : grip(kits, seed, task("preloadScatterPercent", String.valueOf(percent)));
        double p = byHand(byHand, percent / 100.0);
        assertThat(odds.finding().verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(p).isBetween(0.8, 0.9995);
        assertThat(odds.share().value()).isCloseTo(p, within(3 * Math.sqrt(p * (1 - p) * (1.0 / kits + 1.0 / byHand))));
    }

    /// A sum of squares without a formula of ours: friction, preload and jolt, each an even number, in plain shares.
    @Tag("law")
    @Test
    void aHandKeyMattersMostThenFrictionThenTheJolt() {
        var matters = grip(10_000, 1).matters();
        assertThat(matters)
                .extracting(Odds.Influence::dimension)
                .startsWith(SCATTER, FRICTION)
                .contains(KIT + ".task.motorJoltFactor");
        assertThat(matters.getFirst().where()).isEqualTo("preload of left motor screws");
        assertThat(matters.get(1).where()).isEqualTo("task");
        assertThat(matters).allSatisfy(m -> assertThat(m.distribution()).hasToString("even between the limits"));
        // F and μ enter as a product: their variances over their squared means are 0.35²/3 and (0.025/0.125)²/3
        double ratio = (0.025 / 0.125) * (0.025 / 0.125) / (0.35 * 0.35);
        assertThat(matters.get(1).share() / matters.getFirst().share()).isCloseTo(ratio, within(0.04));
    }

    /// With a key that misses by less, friction stands first, with its words and limits from the working.
    @ParameterizedTest
    @CsvSource({"10, 0.70, 0.90", "0, 0.95, 1.03"})
    void withABetterKeyFrictionMattersMost(String percent, double least, double most) {
        var first = grip(10_000, 1, task("preloadScatterPercent", percent))
                .matters()
                .getFirst();
        assertThat(first.dimension()).isEqualTo(FRICTION);
        assertThat(first.typed()).isEqualTo("0.12 +0.03/-0.02");
        assertThat(first.rising()).isTrue();
        assertThat(first.share()).isBetween(least, most);
    }

    /// Writing a rule down as an estimate changes no draw.
    @Test
    void typingWhatTheRulesSayChangesNothing() {
        var typed = grip(
                2000,
                3,
                task("jointFriction", "0.12 +0.03/-0.02"),
                task("motorJoltFactor", "10 ±2"),
                task("preloadScatterPercent", "35"));
        var ruled = grip(2000, 3);
        assertThat(typed.holds()).isEqualTo(ruled.holds());
        var a = Objects.requireNonNull(typed.scatter());
        var b = Objects.requireNonNull(ruled.scatter());
        assertThat(a.mean()).isCloseTo(b.mean(), within(1e-9)); // limits as sums, 0.12 + 0.03, round otherwise
        assertThat(a.deviation()).isCloseTo(b.deviation(), within(1e-9));
        assertThat(a.histogram().counts()).isEqualTo(b.histogram().counts());
    }

    /// A scatter that was measured is a normal distribution, as any measurement is.
    @Test
    void aMeasuredScatterIsNormal() {
        var miss = grip(500, 1, task("preloadScatterPercent", "{value: 30, source: 'measured, invented load cell'}"))
                .matters()
                .getFirst();
        assertThat(miss.distribution().toString()).isEqualTo("normal, limits at 2 σ");
        assertThat(miss.distribution().half()).isEqualTo(30);
        assertThat(miss.distribution().middle()).isZero();
    }

    @Test
    void whatIsTypedStandsAndIsNotDrawnTwice() {
        var typed = new Pieces(shelf(task("jointFriction", "0.12"), task("motorJoltFactor", "9 ±1"))
                        .kit(KIT))
                .inputs();
        assertThat(typed).noneMatch(i -> i.dimension().of().equals(FRICTION));
        assertThat(typed.stream()
                        .filter(i -> i.dimension().of().endsWith(".motorJoltFactor"))
                        .map(i -> i.dimension().text()))
                .containsExactly("9 ±1");
    }

    @Test
    void withoutEstimatesTheyStayUnknown() {
        var kit = DemoKits.SHELF.withoutEstimates().with(LOOSE).kit(KIT);
        assertThat(Assumed.standingIn(kit)).isEmpty();
        assertThat(Assumed.misses(kit)).isEmpty();
        var odds = of(Sampling.of(kit, 200, 1), GRIP);
        assertThat(odds.told()).isFalse();
        assertThat(odds.untold()).isEqualTo(200);
        assertThat(odds.finding().needs()).contains(FRICTION, SCATTER);
    }

    /// One joint that is tightened otherwise moves nothing on the other side, nor another joint.
    @ParameterizedTest
    @ValueSource(strings = {"left motor screws", "right clamp screws"})
    void aJointIsTightenedOnItsOwn(String seat) {
        var moved = moved(DemoKits.SHELF.kit(KIT), i -> i.where().equals("preload of " + seat));
        var side = seat.substring(0, seat.indexOf(' '));
        assertThat(moved).isNotEmpty().allMatch(key -> key.endsWith("." + side));
        assertThat(moved).doesNotContain("hanger-joint-clamp." + (side.equals("left") ? "right" : "left"));
        assertThat(moved.contains("slot-grip." + side)).isEqualTo(seat.endsWith("motor screws"));
        assertThat(moved.contains("hanger-joint-clamp." + side)).isEqualTo(seat.endsWith("clamp screws"));
    }

    /// Every rule, and the preload of every seat that is drawn, is read by some check of some kit. A core of plastic
    /// gives way before its screws do, so the wheels are of metal here; pins hold more than a flange's
    /// screws, so there are none.
    @Test
    void nothingIsDrawnInVain() {
        var drawn = new HashSet<String>();
        var idle = new HashSet<String>();
        for (var id : DemoKits.ids().toList()) {
            var metal = new Edit(
                    DemoKits.SHELF.kit(id).ends().getFirst().wheel().id(), "coreMaterial", "aluminium-6061-t6");
            var kit = DemoKits.SHELF
                    .with(List.of(
                            new Edit(id, "task.drivenBrakingPercent", "unknown"),
                            metal,
                            new Edit("mount-flange", "dowels", "0")))
                    .kit(id);
            for (var input : new Pieces(kit).inputs()) {
                boolean rule = Assumed.standingIn(kit).stream()
                        .anyMatch(r -> input.dimension().of().equals(id + "." + r.of()));
                if (rule || input.where().startsWith("preload of")) {
                    var name = (input.where() + " " + input.dimension().of().substring(id.length() + 1))
                            .replaceFirst("left |right ", "");
                    (moved(kit, i -> i.equals(input)).isEmpty() ? idle : drawn).add(name);
                }
            }
        }
        idle.removeAll(drawn);
        assertThat(idle).isEmpty();
        assertThat(drawn).hasSizeGreaterThanOrEqualTo(7 + 4);
    }

    /// Every rule that is written with limits is drawn where nothing is typed.
    @Test
    void noRuleIsForgotten() throws ReflectiveOperationException {
        var kit = DemoKits.SHELF
                .with(List.of(task("drivenBrakingPercent", "unknown")))
                .kit(KIT);
        var standing = Assumed.standingIn(kit);
        int rules = 0;
        for (var field : Assumed.class.getDeclaredFields()) {
            if (field.getType() == Dimension.class) {
                field.setAccessible(true);
                var rule = (Dimension) field.get(null);
                rules++;
                assertThat(standing.contains(rule)).as(rule.of()).isEqualTo(rule.toleranced());
            }
        }
        assertThat(rules).isGreaterThanOrEqualTo(11);
        assertThat(standing).hasSizeGreaterThanOrEqualTo(7);
    }

    /// {@return keys of the questions whose answer moves when these inputs go to their lower limits}
    private static List<String> moved(Kit kit, Predicate<Input> which) {
        var pieces = new Pieces(kit);
        var inputs = pieces.inputs();
        var questions = Asking.questions(kit, pieces);
        var asking = new Asking(kit, pieces, questions);
        var values = inputs.stream().mapToDouble(i -> i.dimension().nominal()).toArray();
        asking.ask(values);
        var before = new double[questions.size()];
        for (int q = 0; q < before.length; q++) {
            before[q] = asking.slack(q);
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = which.test(inputs.get(i)) ? inputs.get(i).dimension().lower() : values[i];
        }
        asking.ask(values);
        return IntStream.range(0, before.length)
                .filter(q -> Double.compare(asking.slack(q), before[q]) != 0)
                .mapToObj(q -> questions.get(q).key())
                .toList();
    }
}
