package beltwright.app.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.app.DemoKits;
import beltwright.check.Finding;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import java.util.ArrayList;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The engine's geometric verdicts against bodies built from the parts alone and measured by sampling their outlines.
///
@Tag("law")
@Tag("slow")
class IndependentGeometryTest {
    private static final int KITS = 900;
    private static final int DRAWN_KITS = 300;
    private static final int DRAWS = 50;

    /// What the engine itself says it takes at nominal, so that draws may lie below it.
    private static final Map<String, String> NOMINAL_ONLY = Map.of(
            "shaft-reach", "the pulley's length",
            "belt-plane", "its worst is what aligning leaves");

    @Test
    void everyVerdictAgrees() {
        var wrong = new ArrayList<String>();
        var asked = new TreeMap<String, Integer>();
        var failing = new TreeSet<String>();
        int kitsThatFail = 0;
        int swapped = 0;
        int tooNearToTell = 0;
        int all = 0;
        for (int seed = 0; seed < KITS; seed++) {
            var changed = ChangedKits.seeded(seed);
            var findings = findings(changed.kit());
            boolean fails = false;
            swapped += changed.swapped() ? 1 : 0;
            for (var own : Answers.of(changed.kit(), Draw.nominal(), true).entrySet()) {
                var told = told(findings, own.getKey(), own.getValue());
                asked.merge(told.slug(), 1, Integer::sum);
                all++;
                if (told.finding().verdict() == Verdict.FAILS) {
                    failing.add(told.slug());
                    fails = true;
                }
                if (told.tooNearToTell()) {
                    tooNearToTell++;
                } else if (!told.verdictAgrees() && !told.slug().equals("core-spacer")) { // asks the worst limit too
                    wrong.add("verdict " + told + ": " + changed);
                }
                if (!told.numberAgrees()) {
                    wrong.add("number " + told + ": " + changed);
                }
            }
            kitsThatFail += fails ? 1 : 0;
        }
        assertThat(wrong).as("%d answers", all).isEmpty();
        assertThat(asked)
                .hasSize(53)
                .allSatisfy((slug, times) -> assertThat(times).isGreaterThan(100));
        assertThat(failing).as("questions that fail somewhere").hasSizeGreaterThan(33);
        assertThat(kitsThatFail).as("about three kits of five").isBetween(KITS / 2, KITS * 2 / 3);
        assertThat(swapped).isGreaterThan(KITS / 8);
        assertThat(tooNearToTell).isLessThan(all / 200);
    }

    @Test
    void noWorstCaseIsUndercutBetweenTheLimits() {
        var wrong = new ConcurrentSkipListMap<String, String>();
        var asked = new AtomicInteger();
        IntStream.range(0, DRAWN_KITS).parallel().forEach(seed -> between(seed, wrong, asked));
        assertThat(wrong).as("%s answers", asked).isEmpty();
        assertThat(asked.get()).isGreaterThan(DRAWN_KITS * DRAWS * 30);
    }

    /// Draws sizes of one kit and notes one contradiction of every check. The deck takes long and has a tenth of the
    /// draws.
    private static void between(int seed, Map<String, String> wrong, AtomicInteger asked) {
        var changed = ChangedKits.seeded(seed);
        var findings = findings(changed.kit());
        var random = new Random(seed);
        for (int i = 0; i < DRAWS; i++) {
            for (var own :
                    Answers.of(changed.kit(), Draw.between(random), i % 10 == 0).entrySet()) {
                var told = told(findings, own.getKey(), own.getValue());
                if (NOMINAL_ONLY.containsKey(told.slug())) {
                    continue;
                }
                asked.incrementAndGet();
                if (told.undercutsTheWorst()) {
                    wrong.put(told.slug(), told + ", worst " + told.finding().capacityWorst() + ": " + changed);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "steep-street", "quarry-road-load", "harbour-mile", "orchard-lane"})
    void nothingOfADemoKitStandsInAnother(String id) {
        var bodies = Everything.of(DemoKits.SHELF.kit(id));
        assertThat(bodies).hasSizeGreaterThan(25);
        assertThat(Touching.overlaps(bodies)).isEmpty();
    }

    @Test
    void nothingOfAKitThatHoldsStandsInAnother() {
        var wrong = new TreeMap<String, String>();
        int holding = 0;
        for (int seed = 0; seed < KITS; seed++) {
            var changed = ChangedKits.seeded(seed);
            if (holds(changed.kit())) {
                holding++;
                for (var pair : Touching.overlaps(Everything.of(changed.kit()))) {
                    wrong.put(pair, changed.toString());
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(holding).isGreaterThan(KITS / 10);
    }

    private static boolean holds(Kit kit) {
        return findings(kit).values().stream()
                .allMatch(f -> f.verdict() == Verdict.HOLDS || f.verdict() == Verdict.MARGINAL);
    }

    private static Told told(Map<String, Finding> findings, String key, Answer own) {
        var finding = findings.get(key);
        assertThat(finding).as(key).isNotNull();
        return new Told(finding, own);
    }

    private static Map<String, Finding> findings(Kit kit) {
        return Ladder.findings(kit, LayoutSolver.solve(kit)).stream().collect(Collectors.toMap(Finding::key, f -> f));
    }
}
