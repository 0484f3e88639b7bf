package beltwright.press.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.kit.Side;
import beltwright.workshop.Edit;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// What stands around the belt: cover, deck and riser, mounts that are no clamp, pulleys without lugs.
class AroundTheDriveTest {
    private static CoverDrawing cover(String... edits) {
        var dossier = DemoKits.dossier(
                "harbour-mile", List.of(edits).stream().map(Edit::parse).toArray(Edit[]::new));
        return new CoverDrawing(
                dossier.kit().drives().getFirst(), dossier.layout().drives().getFirst());
    }

    @ParameterizedTest
    @CsvSource({"ahead, 15", "ahead, 0", "ahead, -35", "ahead, -80", "behind, 15", "behind, -40"})
    void stonesLeaveTheCoverBelowTheMotorAxis(String motor, double above) {
        var cover = cover(
                "harbour-mile.placements.left.motor=" + motor,
                "harbour-mile.placements.left.aboveAxleDeg=" + above,
                "cover-15.reachMm=34"); // long enough that the opening lies within the wall
        var wall = cover.wall();
        assertThat(wall).hasSize(2);
        wall.forEach(piece -> ContourTest.closes(piece, "wall"));
        // the two lips nearest to each other: one opening wide, the motor axis above their middle
        double nearest = Double.POSITIVE_INFINITY;
        var middle = Point.ORIGIN;
        for (var a : wall.get(0).segments()) {
            for (var b : wall.get(1).segments()) {
                if (a.from().distance(b.from()) < nearest) {
                    nearest = a.from().distance(b.from());
                    middle = a.from().middle(b.from());
                }
            }
        }
        assertThat(nearest).isCloseTo(cover.drive().cover().stoneOpeningMm().nominal(), within(1.0)); // a chord of it
        assertThat(middle.x()).isCloseTo(cover.at().motorXMm(), within(0.2));
        assertThat(middle.y()).isLessThan(cover.at().motorZMm());
    }

    /// The wall follows the belt: nowhere does the belt's back come nearer than around the drive pulley.
    @Test
    void theBeltRunsInsideTheCover() {
        var cover = cover();
        var path = BeltPath.of(cover.drive(), cover.at());
        var profile = cover.drive().belt().profile();
        double back = profile.heightMm() - profile.toothHeightMm() - profile.pitchLineDifferentialMm();
        double pitch = cover.drive().drivePulley().rim().pitchDiameterMm() / 2;
        double gap = cover.drive().cover().radiusMm().nominal() - pitch - back;
        var motor = new Point(cover.at().motorXMm(), cover.at().motorZMm());
        for (var piece : cover.wall()) {
            for (var s : piece.segments()) {
                for (var stretch : path.stretches(-back)) {
                    if (stretch instanceof Segment.Straight span) {
                        var heading = span.to().minus(span.from());
                        double along = s.from().minus(span.from()).dot(heading) / heading.dot(heading);
                        var foot = span.from().plus(heading.times(Math.clamp(along, 0, 1)));
                        assertThat(s.from().distance(foot)).isGreaterThan(gap - 1e-6);
                    }
                }
                assertThat(s.halfway().distance(motor))
                        .isGreaterThan(cover.drive().cover().radiusMm().nominal() - 1e-6);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-mile", "quarry-road-load"})
    void theDeckLiesOnItsRiserAndEndsBehindTheAxle(String kit) {
        var dossier = DemoKits.dossier(kit);
        var hanger = dossier.kit().hanger();
        var deck = dossier.kit().deck();
        var drawn = bounds(kit, "deck");
        double under = hanger.axleDropMm().nominal()
                + dossier.kit().riser().thicknessMm().nominal();
        assertThat(drawn.bottom()).isCloseTo(under, within(1e-9));
        assertThat(drawn.top()).isCloseTo(under + deck.thicknessMm().nominal(), within(1e-9));
        assertThat(drawn.left())
                .isCloseTo(-(deck.endMm().nominal() - hanger.axleFromBaseMm().nominal()), within(1e-9));
        assertThat(bounds(kit, "riser").top()).isCloseTo(under, within(1e-9));
        assertThat(bounds(kit, "deck nuts").top())
                .isLessThan(hanger.axleDropMm().nominal());
    }

    private static Bounds bounds(String kit, String seat) {
        return DemoKits.office(kit).sideSketch(Side.LEFT).entities().stream()
                .filter(e -> e.tag().seat().equals(seat))
                .map(Entity::bounds)
                .reduce(Bounds.EMPTY, Bounds::with);
    }

    @ParameterizedTest
    @CsvSource({"mount-flange, 26", "mount-flange, 18", "mount-cast, 26", "mount-cast, 12"})
    void aPlateWithoutAClampGoesRoundTheHanger(String mount, double radius) {
        var kit = mount.equals("mount-flange") ? "harbour-mile" : "orchard-lane";
        var dossier = DemoKits.dossier(kit, Edit.parse(mount + ".plateRadiusMm=" + radius));
        var plate = new MountPlate(
                dossier.kit().drives().getFirst().mount(), dossier.kit().hanger(), Point.polar(1, 0.4));
        var outline = plate.outline();
        ContourTest.closes(outline, mount);
        assertThat(plate.split()).isEmpty();
        var far = Point.polar(1, 0.4).times(plate.mount().slotMaxMm().nominal() + radius);
        var back = Point.polar(1, 0.4).times(-plate.half(far.unit()));
        assertThat(outline.segments().stream()
                        .mapToDouble(s -> s.halfway().distance(far))
                        .min()
                        .orElseThrow())
                .isLessThan(1e-6);
        assertThat(outline.segments().stream()
                        .mapToDouble(s -> s.halfway().distance(back))
                        .min()
                        .orElseThrow())
                .isLessThan(1e-6);
    }

    /// A mount in one piece shows no joint: in the plan its root belongs to the outline of the hanger.
    @Test
    void aCastMountGrowsOutOfItsHanger() {
        var dossier = DemoKits.dossier("orchard-lane");
        var plan = new PlanView(dossier.kit(), dossier.layout(), new Materials(DemoKits.REFERENCE))
                .draw()
                .entities();
        double reach = dossier.kit().hanger().bodyReachMm().nominal();
        var hanger = plan.stream()
                .filter(e -> e.tag().seat().equals("hanger") && e instanceof Entity.Path)
                .map(Entity::bounds)
                .reduce(Bounds.EMPTY, Bounds::with);
        assertThat(hanger.top()).isGreaterThan(reach);
        var seats = plan.stream().map(e -> e.tag().seat()).collect(Collectors.toSet());
        assertThat(seats)
                .doesNotContain("left clamp screws", "left flange screws")
                .contains("left axle spacer");
    }
}
