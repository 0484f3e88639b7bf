package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.assembly.Box;
import beltwright.assembly.Step;
import beltwright.assembly.Tally;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.kit.SeatName;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// The guide follows from the joints and their geometry, not from the order of typing, and its count meets the box.
@Tag("law")
class GuideOrderTest {
    static Stream<String> kits() {
        return DemoKits.ids();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void shufflingSeatsAndJointsLeavesTheGuideAsItIs(String id) {
        var draft = DemoKits.SHELF.draft(id);
        var first = dossier(draft);
        var random = new Random(4);
        for (int i = 0; i < 200; i++) {
            var shuffled = dossier(with(draft, shuffled(draft.seats(), random), shuffled(draft.joints(), random)));
            assertThat(shuffled.steps()).isEqualTo(first.steps());
            assertThat(shuffled.box()).isEqualTo(first.box());
        }
    }

    @ParameterizedTest
    @MethodSource("kits")
    void boxAndStepsMeet(String id) {
        var dossier = DemoKits.dossier(id);
        assertThat(dossier.tallies()).isNotEmpty().allMatch(Tally::meets);
        assertThat(dossier.steps().stream().map(Step::joint).filter(j -> !j.isEmpty()))
                .containsExactlyInAnyOrderElementsOf(
                        DemoKits.SHELF.draft(id).joints().keySet());
        assertThat(dossier.box().pieces())
                .isEqualTo(dossier.kit().seats().values().stream()
                        .filter(s -> !s.fromRider() && beltwright.kit.Hardware.joined(s.name()))
                        .mapToInt(beltwright.kit.Seat::count)
                        .sum());
    }

    @ParameterizedTest
    @MethodSource("kits")
    void deletingAJointChangesOnlyItsSteps(String id) {
        var draft = DemoKits.SHELF.draft(id);
        var first = dossier(draft);
        for (var joint : draft.joints().values()) {
            var fewer = new LinkedHashMap<>(draft.joints());
            fewer.remove(joint.name());
            var without = dossier(with(draft, draft.seats(), fewer));

            assertThat(bare(without.steps(), "")).isEqualTo(bare(first.steps(), joint.name()));

            var orphaned = new HashSet<String>();
            orphaned.add(Objects.requireNonNull(draft.seats().get(joint.of().getFirst()))
                    .part());
            for (var tally : without.tallies()) {
                if (!orphaned.contains(tally.part())) {
                    assertThat(tally.inBox())
                            .as(joint.name() + ": " + tally.name())
                            .isEqualTo(tally.inSteps());
                }
            }
            assertThat(count(first.box()) - count(without.box()))
                    .as("%s takes its own fasteners out of the box", joint.name())
                    .isGreaterThanOrEqualTo(fasteners(draft, joint));
        }
    }

    private static int count(Box box) {
        return box.pieces();
    }

    private static int fasteners(KitDraft draft, Joint joint) {
        return joint.with().stream()
                .filter(s -> s.role().extent() == beltwright.kit.Role.Extent.FASTENER)
                .mapToInt(s -> Objects.requireNonNull(draft.seats().get(s)).count())
                .sum();
    }

    /// The steps without their numbers and without what they waited for, which name other steps.
    private static List<Step> bare(List<Step> steps, String leaveOut) {
        return steps.stream()
                .filter(s -> leaveOut.isEmpty() || !s.joint().equals(leaveOut))
                .map(s -> new Step(
                        0,
                        s.title(),
                        s.joint(),
                        s.takes(),
                        s.tools(),
                        s.torque(),
                        s.threadlocker(),
                        s.does(),
                        s.cautions(),
                        s.seats(),
                        List.of()))
                .toList();
    }

    private static Dossier dossier(KitDraft draft) {
        return Dossiers.of(Kit.resolve(draft, DemoKits.SHELF::part, DemoKits.REFERENCE));
    }

    private static KitDraft with(KitDraft d, Map<SeatName, KitDraft.Filling> seats, Map<String, Joint> joints) {
        return new KitDraft(d.id(), d.name(), d.invented(), d.note(), seats, joints, d.placements(), d.task());
    }

    private static <K, V> Map<K, V> shuffled(Map<K, V> map, Random random) {
        var keys = new ArrayList<>(map.keySet());
        Collections.shuffle(keys, random);
        var shuffled = new LinkedHashMap<K, V>();
        keys.forEach(k -> shuffled.put(k, map.get(k)));
        return shuffled;
    }
}
