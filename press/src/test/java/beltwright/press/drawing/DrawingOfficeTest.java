package beltwright.press.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.dossier.Dossier;
import beltwright.layout.DrawnDimension;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Every demo kit, as it is and bent out of shape, drawn and looked at by rule.
class DrawingOfficeTest {
    private static final List<List<String>> BENT = List.of(
            List.of(),
            List.of("placements.left.aboveAxleDeg=-35"),
            List.of("placements.left.aboveAxleDeg=75"),
            List.of("placements.left.aboveAxleDeg=0", "placements.left.motor=behind"),
            List.of("placements.left.motor=behind", "placements.left.aboveAxleDeg=-20"),
            List.of("name=A kit with a name so long that no title strip of any sheet could ever hold the whole of it in"
                    + " one line, for a workshop that likes to tell a story"));

    record Case(String kit, List<Edit> edits) {
        DrawingOffice office() {
            return DemoKits.office(kit, edits.toArray(Edit[]::new));
        }

        @Override
        public String toString() {
            return kit + " " + edits;
        }
    }

    static Stream<Case> cases() {
        return DemoKits.ids()
                .flatMap(kit -> BENT.stream()
                        .map(bent -> new Case(
                                kit,
                                bent.stream()
                                        .map(e -> Edit.parse(kit + "." + e))
                                        .toList())));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void noTwoTextsOverlapAndNoneLeavesTheSheet(Case c) {
        for (var drawing : c.office().all()) {
            var texts = drawing.texts();
            assertThat(texts).hasSizeGreaterThan(10);
            var frame = new Bounds(0, 0, drawing.widthMm(), drawing.heightMm()).grown(-TitleStrip.FRAME);
            for (int i = 0; i < texts.size(); i++) {
                assertThat(texts.get(i).bounds().within(frame))
                        .as("%s text %d", drawing.id(), i)
                        .isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(texts.get(i).overlaps(texts.get(j)))
                            .as("%s texts %d and %d", drawing.id(), i, j)
                            .isFalse();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyDimensionStatesTheDistanceOfItsWitnessPoints(Case c) {
        var office = c.office();
        int drawn = 0;
        for (var drawing : office.all()) {
            for (var d : drawing.dimensions()) {
                var read = d.text().words().replace("⌀", "").replace('−', '-');
                var along = d.lineTo().minus(d.lineFrom()).unit();
                double distance = Math.abs(d.to().minus(d.from()).dot(along));
                assertThat(Double.parseDouble(read)).as(d.name()).isCloseTo(distance, within(0.005 + 1e-9));
                drawn++;
            }
        }
        assertThat(drawn).isEqualTo(shown(office.dossier()));
    }

    private static long shown(Dossier dossier) {
        return dossier.dimensions().stream()
                .filter(d -> d.valueMm() > 1e-9 && Double.isFinite(d.valueMm()))
                .count();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everySheetIsNoLargerThanA3UnlessTheSmallestScaleIsReached(Case c) {
        for (var drawing : c.office().all()) {
            assertThat(drawing.widthMm()).isLessThanOrEqualTo(420);
            assertThat(drawing.heightMm()).isLessThanOrEqualTo(297);
            assertThat(drawing.scale()).isIn(1.0, 0.5);
        }
    }

    @Test
    void theDistanceOfTheChosenFindingIsInTheAccentAndNoOther() {
        var plain = DemoKits.office(DemoKits.ids().findFirst().orElseThrow());
        var key = plain.dossier().dimensions().stream()
                .map(DrawnDimension::finding)
                .filter(f -> !f.isEmpty())
                .findFirst()
                .orElseThrow();
        var chosen = plain.pointingAt(key).all().stream()
                .flatMap(d -> d.dimensions().stream())
                .filter(d -> d.tag().emphasis() == Tag.Emphasis.CHOSEN)
                .toList();
        assertThat(chosen)
                .isNotEmpty()
                .allSatisfy(d -> assertThat(d.tag().finding()).isEqualTo(key));
        assertThat(plain.all())
                .allSatisfy(
                        d -> assertThat(d.dimensions()).noneMatch(e -> e.tag().emphasis() == Tag.Emphasis.CHOSEN));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theTwoSidesOfASymmetricalKitAreMirrorImages(Case c) {
        if (c.edits().isEmpty() && c.office().dossier().layout().drives().size() == 2) {
            var plan = new PlanView(
                            c.office().dossier().kit(),
                            c.office().dossier().layout(),
                            new Materials(DemoKits.REFERENCE))
                    .draw()
                    .entities();
            assertThat(extents(plan, "left ", true)).isEqualTo(extents(plan, "right ", false));
        }
    }

    private static List<String> extents(List<Entity> entities, String side, boolean mirrored) {
        var all = new ArrayList<String>();
        for (var e : entities) {
            if (e.tag().seat().startsWith(side)) {
                var b = e.bounds();
                var m = mirrored ? new Bounds(-b.right(), b.bottom(), -b.left(), b.top()) : b;
                all.add(e.tag().seat().substring(side.length())
                        + Stream.of(m.left(), m.bottom(), m.right(), m.top())
                                .map(Lettering::number)
                                .collect(Collectors.joining(" ", " ", "")));
            }
        }
        all.sort(null);
        return all;
    }

    @Test
    void whatLacksADimensionIsNamedOnTheSheet() {
        var kit = DemoKits.ids().findFirst().orElseThrow();
        var motor = DemoKits.dossier(kit).kit().drives().getFirst().motor().id();
        var office = DemoKits.office(kit, Edit.parse(motor + ".canLengthMm=unknown"));
        assertThat(office.plan().tells()).contains("not drawn whole, a dimension is unknown", "left motor");
        assertThat(DemoKits.office(kit).plan().tells()).doesNotContain("unknown");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everySeatThatHasABodyIsSeenSomewhere(Case c) {
        var office = c.office();
        var seen = office.all().stream()
                .flatMap(d -> d.views().stream())
                .flatMap(v -> v.entities().stream())
                .map(e -> e.tag().seat())
                .collect(Collectors.toSet());
        assertThat(office.dossier().kit().seats().keySet().stream()
                        .map(Object::toString)
                        .filter(s -> !List.of("battery pack", "controller", "threadlocker")
                                .contains(s)))
                .allSatisfy(s -> assertThat(seen).contains(s));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aStepPictureShowsWhatTheStepWorksOn(Case c) {
        var office = c.office();
        for (var step : office.dossier().steps()) {
            var picture = office.steps().apply(step).orElseThrow();
            var chosen = picture.views().getFirst().entities().stream()
                    .filter(e -> e.tag().emphasis() == Tag.Emphasis.CHOSEN)
                    .map(e -> e.tag().seat())
                    .collect(Collectors.toSet());
            assertThat(chosen).as(step.title()).isNotEmpty();
            assertThat(step.seats()).containsAll(chosen);
            assertThat(picture.widthMm()).isLessThanOrEqualTo(120);
            assertThat(picture.heightMm()).isLessThanOrEqualTo(80);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyOutlineClosesUponItself(Case c) {
        for (var drawing : c.office().all()) {
            for (var view : drawing.views()) {
                for (var e : view.entities()) {
                    if (e instanceof Entity.Path path) {
                        path.contours()
                                .forEach(outline ->
                                        ContourTest.closes(outline, e.tag().seat()));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void nothingIsDrawnInASeatThatNothingFills(Case c) {
        var office = c.office();
        var filled = office.dossier().kit().seats().keySet().stream()
                .map(Object::toString)
                .collect(Collectors.toSet());
        for (var drawing : office.all()) {
            for (var view : drawing.views()) {
                assertThat(view.entities()).allSatisfy(e -> {
                    if (!e.tag().seat().isEmpty()) {
                        assertThat(filled).contains(e.tag().seat());
                    }
                });
            }
        }
    }
}
