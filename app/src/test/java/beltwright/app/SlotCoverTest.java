package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.app.bench.Slots;
import beltwright.belt.PitchLine;
import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossiers;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.pairs.SlotCover;
import beltwright.part.Belt;
import beltwright.part.DrivePulley;
import beltwright.part.Label;
import beltwright.part.Mount;
import beltwright.part.Part;
import beltwright.part.WheelPulley;
import beltwright.press.chart.SlotChart;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity;
import beltwright.quantity.Dimension;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// The belts that fall in the slots of the demo's mounts.
@Tag("law")
class SlotCoverTest {
    private static final Set<String> TELLING =
            Set.of("take-up", "fitting-travel", "pulleys-clear", "belt-profile", "belt-width");
    private static final double BESIDE_MM = 6; // so far beside the slot a belt is still told

    static Stream<String> mounts() {
        return DemoKits.SHELF.parts().values().stream()
                .filter(Mount.class::isInstance)
                .map(Part::id);
    }

    static Stream<SlotCover.Line> lines() {
        return mounts().flatMap(id -> cover(id).lines().stream());
    }

    private static SlotCover cover(String mount) {
        return Slots.cover(DemoKits.SHELF, mount);
    }

    /// Each belt is put into a whole kit with a clamp, and that kit's ladder is asked.
    @ParameterizedTest
    @MethodSource("mounts")
    void aKitSaysTheSameOfEachBelt(String id) {
        var mount = (Mount) DemoKits.SHELF.part(id);
        var base = switch (mount.fixing()) {
            case CLAMP -> "market-hill-single";
            case FLANGE -> "harbour-mile";
            default -> "orchard-lane";
        };
        int told = 0;
        for (var line : cover(id).lines()) {
            for (var mark : line.marks()) {
                for (var drive : line.drives()) {
                    for (var wheel : line.wheels()) {
                        if (mark.onShelf() && drive.setScrews() > 0) {
                            same(
                                    kit(
                                            base,
                                            id,
                                            drive.id(),
                                            wheel.id(),
                                            mark.belts().getFirst()),
                                    mark);
                            told++;
                        }
                    }
                }
            }
        }
        assertThat(told).isPositive();
    }

    private static List<Finding> kit(String base, String mount, String drive, String wheel, String belt) {
        var edits = new ArrayList<>(List.of(
                new Edit(base, "seats.left mount", mount),
                new Edit(base, "seats.left drive pulley", drive),
                new Edit(base, "seats.left wheel pulley", wheel),
                new Edit(base, "seats.left pulley screws", "5 x screw-m4x30"),
                new Edit(base, "seats.left belt", belt)));
        var kit = DemoKits.SHELF.kit(base);
        if (kit.seats().containsKey(new SeatName(kit.drives().getFirst().side(), Role.IDLER))) {
            edits.add(new Edit(base, "joints.left idler on mount", ""));
            edits.add(new Edit(base, "seats.left idler", ""));
            edits.add(new Edit(base, "seats.left idler screw", ""));
        }
        return Dossiers.of(DemoKits.SHELF.with(edits).kit(base)).findings().stream()
                .filter(f -> TELLING.contains(f.key().substring(0, f.key().lastIndexOf('.'))))
                .toList();
    }

    private static void same(List<Finding> findings, SlotCover.Mark mark) {
        var weakest = findings.getFirst();
        assertThat(mark.verdict()).as("%s", mark).isEqualTo(weakest.verdict());
        assertThat(mark.decides().key()).as("%s", mark).isEqualTo(weakest.key());
        assertThat(mark.decides().slack()).as("%s", mark).isEqualTo(weakest.capacity() - weakest.demand());
        assertThat(mark.decides().slackWorst())
                .as("%s", mark)
                .isEqualTo(weakest.capacityWorst() - weakest.demandWorst());
    }

    @ParameterizedTest
    @MethodSource("lines")
    void aToothMoreIsFurtherAway(SlotCover.Line line) {
        for (int i = 1; i < line.marks().size(); i++) {
            var before = line.marks().get(i - 1);
            var mark = line.marks().get(i);
            if (mark.teeth() == before.teeth()) { // belts that are told otherwise, the best first
                assertThat(mark.belts()).isNotEmpty().doesNotContainAnyElementsOf(before.belts());
                assertThat(mark.verdict()).isLessThanOrEqualTo(before.verdict());
            } else {
                assertThat(mark.teeth()).isEqualTo(before.teeth() + 1);
                assertThat(mark.centreDistanceMm().nominal())
                        .isGreaterThan(before.centreDistanceMm().nominal());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("mounts")
    void theShelfsBeltsAreExactlyThoseThatComeNear(String id) {
        var cover = cover(id);
        int near = 0;
        for (var line : cover.lines()) {
            var rim = line.drives().getFirst().rim();
            var pulleys = new PitchLine(
                    rim.pitchDiameterMm(), line.wheels().getFirst().rim().pitchDiameterMm());
            var expected = DemoKits.SHELF.parts().values().stream()
                    .filter(p -> p instanceof Belt belt && belt.profile() == rim.profile())
                    .filter(p -> {
                        double length = ((Belt) p).lengthMm();
                        double centre = pulleys.centreDistanceMm(length);
                        return centre > cover.slot().low() - BESIDE_MM
                                && centre < cover.slot().high() + BESIDE_MM;
                    })
                    .map(Part::id)
                    .collect(Collectors.toSet());
            var marked = line.marks().stream().flatMap(m -> m.belts().stream()).toList();
            assertThat(marked).as("%s", line.names()).containsExactlyInAnyOrderElementsOf(expected);
            near += marked.size();
        }
        assertThat(near).isPositive();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void everyMarkIsWhereItsBeltIsTaut(SlotCover.Line line) {
        for (var drive : line.drives()) {
            for (var wheel : line.wheels()) {
                var pulleys =
                        new PitchLine(drive.rim().pitchDiameterMm(), wheel.rim().pitchDiameterMm());
                for (var mark : line.marks()) {
                    if (!mark.onShelf()) {
                        assertThat(pulleys.lengthMm(mark.centreDistanceMm().nominal()))
                                .isCloseTo(mark.teeth() * drive.rim().profile().pitchMm(), within(1e-6));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("mounts")
    void theChartNamesEveryMarkInsideItsAxis(String id) {
        var cover = cover(id);
        var named = words(SlotChart.of(cover)).stream()
                .filter(w -> w.matches("\\d+|\\(\\d+\\)"))
                .collect(Collectors.toCollection(ArrayList::new));
        double from = cover.slot().low() - BESIDE_MM;
        double to = cover.slot().high() + BESIDE_MM;
        for (int mm = (int) Math.ceil(from); mm <= to; mm++) {
            if (mm % 5 == 0) {
                assertThat(named.remove(String.valueOf(mm)))
                        .as("%s on the axis", mm)
                        .isTrue();
            }
        }
        double edge = 3 * (to - from) / 150; // nearer the end there is no room for a name
        var inside = cover.lines().stream()
                .flatMap(line -> bestOf(line.marks()))
                .filter(m -> m.centreDistanceMm().nominal() >= from + edge
                        && m.centreDistanceMm().nominal() <= to - edge)
                .map(m -> m.onShelf() ? String.valueOf(m.teeth()) : "(" + m.teeth() + ")")
                .toList();
        assertThat(named).containsExactlyInAnyOrderElementsOf(inside);
        assertThat(inside).isNotEmpty();
    }

    /// {@return of marks with as many teeth the first, which is the best}
    private static Stream<SlotCover.Mark> bestOf(List<SlotCover.Mark> marks) {
        var first = new TreeMap<Integer, SlotCover.Mark>();
        marks.forEach(m -> first.putIfAbsent(m.teeth(), m));
        return first.values().stream();
    }

    /// A wide belt as long as one that fits is told its width, beside that one.
    @Test
    void aBeltWiderThanTheFacesIsNotOffered() {
        var parts = new TreeMap<>(DemoKits.SHELF.parts());
        var narrow = (Belt) DemoKits.SHELF.part("belt-265-15");
        var wide = new Belt(
                new Label("belt-265-25", "Belt 265 × 25", "", narrow.label().massKg(), ""),
                narrow.profile(),
                narrow.teeth(),
                Dimension.exact("belt-265-25.widthMm", 25, narrow.widthMm().provenance()),
                narrow.lengthDeviationMm(),
                narrow.massGPerM(),
                narrow.grade(),
                narrow.stiffnessN(),
                narrow.hungWeights());
        parts.put(wide.id(), wide);
        var cover = SlotCover.of(
                (Mount) DemoKits.SHELF.part("mount-city"),
                List.of((DrivePulley) DemoKits.SHELF.part("pulley-15")),
                List.of((WheelPulley) DemoKits.SHELF.part("wheel-pulley-36")),
                List.of(wide, narrow),
                DemoKits.REFERENCE);
        var marks = cover.lines().getFirst().marks().stream()
                .filter(m -> m.teeth() == narrow.teeth())
                .toList();
        assertThat(marks).hasSize(2);
        assertThat(marks.get(0).belts()).containsExactly(narrow.id());
        assertThat(marks.get(0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(marks.get(1).belts()).containsExactly(wide.id());
        assertThat(marks.get(1).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(marks.get(1).decides().key()).isEqualTo("belt-width.left");
        assertThat(marks.get(1).decides().slackText()).startsWith("−");
    }

    private static List<String> words(Drawing chart) {
        return chart.views().stream()
                .flatMap(v -> v.entities().stream())
                .flatMap(e -> e instanceof Entity.Text t ? Stream.of(t.words()) : Stream.empty())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("mounts")
    void noTextOfTheChartLiesOnAnother(String id) {
        var chart = SlotChart.of(cover(id));
        var texts = chart.texts();
        for (int i = 0; i < texts.size(); i++) {
            var bounds = texts.get(i).bounds();
            assertThat(bounds.left()).isGreaterThanOrEqualTo(0);
            assertThat(bounds.right()).isLessThanOrEqualTo(chart.widthMm());
            assertThat(bounds.bottom()).isGreaterThanOrEqualTo(0);
            assertThat(bounds.top()).isLessThanOrEqualTo(chart.heightMm());
            for (int j = i + 1; j < texts.size(); j++) {
                assertThat(texts.get(i).overlaps(texts.get(j)))
                        .as(
                                "%s: %s and %s",
                                id, words(chart).get(i), words(chart).get(j))
                        .isFalse();
            }
        }
    }

    @Test
    void onlyAMountHasASlot() {
        assertThatThrownBy(() -> cover("motor-54"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is a motor")
                .hasMessageContaining("mount-city")
                .hasMessageContaining("name a mount");
    }
}
