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
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The engine's geometric verdicts against bodies built from the parts alone and measured by sampling their outlines.
@Tag("law")
@Tag("slow")
class IndependentGeometryTest {
    private static final int KITS = 300;
    private static final int DRAWS = 50;

    /// What the engine says it leaves out of the worst case, so that draws may lie below it.
    private static final Map<String, String> NOMINAL_ONLY = Map.of(
            "shaft-reach", "the pulley's length is taken at nominal",
            "idler-wrap", "wrap is taken at nominal");

    @Test
    void everyVerdictAgrees() {
        var wrong = new ArrayList<String>();
        var asked = new TreeMap<String, Integer>();
        var failing = new TreeMap<String, Integer>();
        var differing = new TreeMap<Known, Integer>();
        int kitsThatFail = 0;
        int tooNearToTell = 0;
        int all = 0;
        for (int seed = 0; seed < KITS; seed++) {
            var changed = ChangedKits.seeded(seed);
            var findings = findings(changed.kit());
            boolean fails = false;
            for (var own : Answers.of(changed.kit(), Draw.nominal(), true).entrySet()) {
                var finding = findings.get(own.getKey());
                if (finding == null) {
                    wrong.add("no finding " + own.getKey() + ": " + changed);
                    continue;
                }
                var told = new Told(finding, own.getValue());
                var known = Known.of(told, changed.kit());
                if (known.isPresent()) {
                    differing.merge(known.get(), told.number() > own.getValue().value() ? 1 : 0, Integer::sum);
                    if (told.number() < own.getValue().value() - own.getValue().within()) {
                        wrong.add("known, but the other way " + told + ": " + changed);
                    }
                    continue;
                }
                asked.merge(told.slug(), 1, Integer::sum);
                all++;
                if (finding.verdict() == Verdict.FAILS) {
                    failing.merge(told.slug(), 1, Integer::sum);
                    fails = true;
                }
                if (told.tooNearToTell()) {
                    tooNearToTell++;
                } else if (!told.verdictAgrees()) {
                    wrong.add("verdict " + told + ": " + changed);
                }
                if (!told.numberAgrees()) {
                    wrong.add("number " + told + ": " + changed);
                }
            }
            kitsThatFail += fails ? 1 : 0;
        }
        System.out.println(all + " asked, " + tooNearToTell + " near, kits failing " + kitsThatFail + "\n" + asked
                + "\n" + failing);
        System.out.println(differing);
        assertThat(wrong).as("%d questions", all).isEmpty();
    }

    @Test
    void noHoldIsContradictedBetweenTheLimits() {
        var wrong = new ConcurrentSkipListMap<String, String>();
        long all = IntStream.range(0, KITS).parallel().mapToLong(seed -> between(seed, wrong)).sum();
        System.out.println(all + " drawn");
        assertThat(wrong).as("%d answers", all).isEmpty();
    }

    /// Draws sizes of one kit and notes the first contradiction of every check; the deck takes long, so it has a tenth of
    /// the draws.
    private static long between(int seed, Map<String, String> wrong) {
        var changed = ChangedKits.seeded(seed);
        var findings = findings(changed.kit());
        var random = new Random(seed);
        long all = 0;
        for (int i = 0; i < DRAWS; i++) {
            for (var own : Answers.of(changed.kit(), Draw.between(random), i % 10 == 0).entrySet()) {
                var told = new Told(findings.get(own.getKey()), own.getValue());
                if (NOMINAL_ONLY.containsKey(told.slug())
                        || Known.of(told, changed.kit()).isPresent()) {
                    continue;
                }
                all++;
                if (told.contradictsTheWorst()) {
                    wrong.putIfAbsent(told.slug(), told + ", worst " + told.finding().capacityWorst() + ": " + changed);
                }
            }
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "steep-street", "quarry-road-load", "harbour-mile", "orchard-lane"})
    void nothingOfADemoKitStandsInAnother(String id) {
        var bodies = Everything.of(DemoKits.SHELF.kit(id));
        var overlaps = new TreeSet<String>();
        int pairs = 0;
        for (int i = 0; i < bodies.size(); i++) {
            for (int j = i + 1; j < bodies.size(); j++) {
                var a = bodies.get(i);
                var b = bodies.get(j);
                if (Touching.byDesign(a.name(), b.name())) {
                    continue;
                }
                pairs++;
                double apart = a.apart(b);
                if (apart < -Answer.SAMPLED_MM) {
                    overlaps.add(a.name() + " in " + b.name() + " " + apart);
                }
            }
        }
        System.out.println(id + " " + pairs + " " + overlaps);
    }

    private static Map<String, Finding> findings(Kit kit) {
        return Ladder.findings(kit, LayoutSolver.solve(kit)).stream().collect(Collectors.toMap(Finding::key, f -> f));
    }
}
