package beltwright.app.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Finding;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import java.util.ArrayList;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/// The engine's geometric verdicts against bodies built from the parts alone and measured by sampling their outlines.
@Tag("law")
@Tag("slow")
class IndependentGeometryTest {
    private static final int KITS = 300;
    private static final int DRAWS = 50;

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
        var wrong = new TreeMap<String, String>();
        int all = 0;
        for (int seed = 0; seed < KITS; seed++) {
            var changed = ChangedKits.seeded(seed);
            var findings = findings(changed.kit());
            var random = new Random(seed);
            for (int i = 0; i < DRAWS; i++) {
                for (var own : Answers.of(changed.kit(), Draw.between(random), i % 10 == 0).entrySet()) {
                    var finding = findings.get(own.getKey());
                    var told = new Told(finding, own.getValue());
                    if (Known.of(told, changed.kit()).isPresent()) {
                        continue;
                    }
                    all++;
                    if (told.contradictsTheWorst()) {
                        wrong.merge(told.slug(), "1 " + told + " " + finding.capacityWorst() + ": " + changed, (a, b) -> {
                            int space = a.indexOf(' ');
                            return (Integer.parseInt(a.substring(0, space)) + 1) + a.substring(space);
                        });
                    }
                }
            }
        }
        System.out.println(all + " drawn");
        assertThat(wrong).isEmpty();
    }

    private static Map<String, Finding> findings(Kit kit) {
        return Ladder.findings(kit, LayoutSolver.solve(kit)).stream().collect(Collectors.toMap(Finding::key, f -> f));
    }
}
