package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.assembly.Step;
import beltwright.dossier.Dossiers;
import beltwright.kit.Joint;
import beltwright.kit.SeatName;
import beltwright.quantity.Numbers;
import beltwright.ride.Board;
import beltwright.ride.LimitSheet;
import beltwright.workshop.Edit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What can hurt is said in the step where the hands are, and only where it is so.
class GuideCautionTest {
    private static final String PLASTIC = "creeps, softens when warm and breaks without warning";
    private static final String AXLE =
            "A broken axle throws the rider. One that was struck, dropped hard or bent is scrap";

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    private static List<Step> steps(String id, String... edits) {
        var read = Stream.of(edits).map(Edit::parse).toList();
        return Dossiers.of(DemoKits.SHELF.with(read).kit(id)).steps();
    }

    private static List<Step> with(List<Step> steps, String words) {
        return steps.stream()
                .filter(s -> s.cautions().stream().anyMatch(c -> c.contains(words)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void theLastStepSetsTheControllerByTheSheetOfLimits(String id) {
        var kit = DemoKits.SHELF.kit(id);
        var last = steps(id).getLast();
        var limits = LimitSheet.of(kit, Board.of(kit));
        assertThat(limits).isNotEmpty();
        var sets = last.does().stream()
                .filter(d -> d.contains("sheet Limits to set"))
                .findFirst()
                .orElseThrow();
        for (var row : limits) {
            if (row.key().startsWith("first-ride") || row.key().equals("lost-link")) {
                assertThat(sets).contains(Numbers.significant(row.value(), 6) + " " + row.unit());
            }
        }
        assertThat(last.cautions()).anyMatch(c -> c.startsWith("Radio link lost") && c.contains("up to"));
    }

    @ParameterizedTest
    @MethodSource("kits")
    void plasticInTheBeltsPathIsSaidWhereItIsMounted(String id) {
        var kit = DemoKits.SHELF.kit(id);
        assertThat(with(steps(id), PLASTIC)).isEmpty();
        var drive = kit.drives().getFirst();
        for (var part : List.of(
                drive.mount().id(),
                drive.wheelPulley().id(),
                drive.drivePulley().id())) {
            var told = with(steps(id, part + ".material=pa66-gf30"), PLASTIC);
            assertThat(told).as(part).isNotEmpty().allSatisfy(step -> {
                var joint = kit.joints().stream()
                        .filter(j -> j.name().equals(step.joint()))
                        .findFirst()
                        .orElseThrow();
                SeatName added = joint.of().getFirst();
                assertThat(kit.seat(added).part().id()).isEqualTo(part);
            });
        }
    }

    @ParameterizedTest
    @MethodSource("kits")
    void anAxleIsLookedAtWhereItsNutIsTightened(String id) {
        var kit = DemoKits.SHELF.kit(id);
        var nuts = kit.joints().stream()
                .filter(j -> j.by() == Joint.Way.NUT)
                .map(Joint::name)
                .toList();
        assertThat(nuts).isNotEmpty();
        assertThat(with(steps(id), AXLE).stream().map(Step::joint)).containsExactlyInAnyOrderElementsOf(nuts);
    }
}
