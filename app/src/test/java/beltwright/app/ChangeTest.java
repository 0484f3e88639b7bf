package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.change.Change;
import beltwright.change.Change.What;
import beltwright.dossier.Dossiers;
import beltwright.press.json.DossierJson;
import beltwright.workshop.Edit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What an edit moves, in trade words.
class ChangeTest {
    static Stream<String> kits() {
        return DemoKits.ids();
    }

    /// Written by hand: the plate of the hill kit from 8 to 10 mm.
    ///
    /// Two millimetres more plate: the screw engages two less (5.18 to 3.20; the plate was
    /// measured at 8.02), so it ends further from the windings; the shaft stands out two less, so
    /// that it fills less of the pulley and the set screws miss it (1.48 to −0.50); the motors
    /// come two nearer on each side (13.96 to 10.00); the clamp finds two less room and the can is
    /// two further from the wheel; the pulley can slide (24.40 − 0.43) − 0.8 · 27.3 = 2.1 outward to
    /// be aligned at the worst limits, no longer the 4.0 that it has inward; nothing in the side view
    /// moves. The pulley hangs 1.98 further over the bearing of the motor:
    /// 1 + (22.07 + 1.98 + 6)/44 = 1.683, so that 280·1.683 + 63 = 534 N press on it.
    /// The band ends by the wheel's bearings and stays as it was.
    @Test
    void plateFromEightToTen() {
        var change = Change.between(
                DemoKits.dossier("steep-street"),
                DemoKits.dossier("steep-street", Edit.parse("mount-hill.plateThicknessMm=10 ±0.03")));

        assertThat(told(change, What.FINDING))
                .containsExactlyInAnyOrder(
                        "motor-bearing-life.left: holds: 42132 km; 5000 wanted -> holds: 38842 km; 5000 wanted",
                        "motor-bearing-static.left: holds: 1300 N; 521 wanted -> holds: 1300 N; 534 wanted",
                        "motor-shaft.left: holds: 191 MPa to and fro with every turn; it stands 292"
                                + " -> holds: 207 MPa to and fro with every turn; it stands 292",
                        "motor-bearing-life.right: holds: 42132 km; 5000 wanted -> holds: 38842 km; 5000 wanted",
                        "motor-bearing-static.right: holds: 1300 N; 521 wanted -> holds: 1300 N; 534 wanted",
                        "motor-shaft.right: holds: 191 MPa to and fro with every turn; it stands 292"
                                + " -> holds: 207 MPa to and fro with every turn; it stands 292",
                        "clamp-room.left: holds: 25.0 mm; 0.500 wanted -> holds: 23.0 mm; 0.500 wanted",
                        "clamp-room.right: holds: 25.0 mm; 0.500 wanted -> holds: 23.0 mm; 0.500 wanted",
                        "motor-screw-engagement.left: holds: 5.18 mm engaged; 2.7 wanted"
                                + " -> holds: 3.20 mm engaged; 2.7 wanted",
                        "motor-screw-engagement.right: holds: 5.18 mm engaged; 2.7 wanted"
                                + " -> holds: 3.20 mm engaged; 2.7 wanted",
                        "motor-screw-reach.left: holds: reaches 5.18 mm of 6.50; 0.5 to stay free,"
                                + " 1.3 left (0.7 at worst) -> holds: reaches 3.20 mm of 6.50;"
                                + " 0.5 to stay free, 3.3 left (2.7 at worst)",
                        "motor-screw-reach.right: holds: reaches 5.18 mm of 6.50; 0.5 to stay free,"
                                + " 1.3 left (0.7 at worst) -> holds: reaches 3.20 mm of 6.50;"
                                + " 0.5 to stay free, 3.3 left (2.7 at worst)",
                        "motor-wheel.left: holds: 32.0 mm; 2.00 wanted -> holds: 34.0 mm; 2.00 wanted",
                        "motor-wheel.right: holds: 32.0 mm; 2.00 wanted -> holds: 34.0 mm; 2.00 wanted",
                        "motors-apart.kit: holds: 14.0 mm; 3.00 wanted -> holds: 10.0 mm; 3.00 wanted",
                        "belt-plane.left: holds: offset 0.0 mm as drawn, up to 1.1 by the limits, of which aligning takes"
                                + " 4.0; 0.339 allowed -> holds: offset 0.0 mm as drawn, up to 1.1 by the limits, of which"
                                + " aligning takes 2.1; 0.339 allowed",
                        "belt-plane.right: holds: offset 0.0 mm as drawn, up to 1.1 by the limits, of which aligning takes"
                                + " 4.0; 0.339 allowed -> holds: offset 0.0 mm as drawn, up to 1.1 by the limits, of which"
                                + " aligning takes 2.1; 0.339 allowed",
                        "shaft-reach.left: holds: 26.38 mm of 26.9 filled; 21.52 wanted"
                                + " -> holds: 24.40 mm of 26.9 filled; 21.52 wanted",
                        "set-screws-shaft.left: holds: the shaft ends 1.5 mm beyond them; 0.500 wanted"
                                + " -> fails: the shaft ends −0.5 mm beyond them; 0.500 wanted → a shaft 1.8 mm longer,"
                                + " or a pulley with its hub towards the motor",
                        "shaft-reach.right: holds: 26.38 mm of 26.9 filled; 21.52 wanted"
                                + " -> holds: 24.40 mm of 26.9 filled; 21.52 wanted",
                        "set-screws-shaft.right: holds: the shaft ends 1.5 mm beyond them; 0.500 wanted"
                                + " -> fails: the shaft ends −0.5 mm beyond them; 0.500 wanted → a shaft 1.8 mm longer,"
                                + " or a pulley with its hub towards the motor",
                        "hanger-strike-clamp.left: holds: the clamp turns at 24 N·m, before the plate bends at 479: kinder than"
                                + " breaking; set angle and belt anew after a strike -> holds: the clamp turns at 24 N·m,"
                                + " before the plate bends at 727: kinder than breaking; set angle and belt anew after a strike",
                        "motor-joint-opens.left: holds: 1528 N press under the worst screw after settling; the overhung pull"
                                + " takes 159 -> holds: 1723 N press under the worst screw after settling; the overhung pull"
                                + " takes 171",
                        "motor-screw-stress.left: holds: 351 MPa in the worst screw; proof strength 580 MPa"
                                + " -> holds: 351 MPa in the worst screw; proof strength 580 MPa",
                        "plate-bending.left: holds: 53 MPa in the plate; it bears 410"
                                + " -> holds: 38 MPa in the plate; it bears 410",
                        "plate-fatigue.left: holds: 16.9 MPa of amplitude at a slot's end; it lasts 88.5"
                                + " -> holds: 11.8 MPa of amplitude at a slot's end; it lasts 88.5",
                        "shaft-joint.left: holds: held by the flat, 29.5 N·m; peaks of 3.28 either way"
                                + " -> holds: held by the flat, 27.3 N·m; peaks of 3.28 either way",
                        "hanger-strike-clamp.right: holds: the clamp turns at 24 N·m, before the plate bends at 479: kinder than"
                                + " breaking; set angle and belt anew after a strike -> holds: the clamp turns at 24 N·m,"
                                + " before the plate bends at 727: kinder than breaking; set angle and belt anew after a strike",
                        "motor-joint-opens.right: holds: 1528 N press under the worst screw after settling; the overhung pull"
                                + " takes 159 -> holds: 1723 N press under the worst screw after settling; the overhung pull"
                                + " takes 171",
                        "motor-screw-stress.right: holds: 351 MPa in the worst screw; proof strength 580 MPa"
                                + " -> holds: 351 MPa in the worst screw; proof strength 580 MPa",
                        "plate-bending.right: holds: 53 MPa in the plate; it bears 410"
                                + " -> holds: 38 MPa in the plate; it bears 410",
                        "plate-fatigue.right: holds: 16.9 MPa of amplitude at a slot's end; it lasts 88.5"
                                + " -> holds: 11.8 MPa of amplitude at a slot's end; it lasts 88.5",
                        "shaft-joint.right: holds: held by the flat, 29.5 N·m; peaks of 3.28 either way"
                                + " -> holds: held by the flat, 27.3 N·m; peaks of 3.28 either way");
        assertThat(told(change, What.DIMENSION))
                .containsExactlyInAnyOrder(
                        "between the motors.left: 13.96 mm -> 10.00 mm",
                        "plate thickness.left: 8.02 mm -> 10.00 mm",
                        "plate thickness.right: 8.02 mm -> 10.00 mm",
                        "screw into the motor.left: 5.18 mm -> 3.20 mm",
                        "screw into the motor.right: 5.18 mm -> 3.20 mm");
        assertThat(told(change, What.NUMBER)).isEmpty();
        assertThat(told(change, What.BOX)).isEmpty();
        assertThat(told(change, What.STEP)).isEmpty();
    }

    private static List<String> told(Change change, What what) {
        return change.moved().stream()
                .filter(m -> m.what() == what)
                .map(m -> m.key() + ": " + m.before() + " -> " + m.after())
                .toList();
    }

    @Tag("law")
    @ParameterizedTest
    @MethodSource("kits")
    void fiftyEditsUndoneGiveTheFirstDossierBitForBit(String id) {
        var first = DossierJson.text(DemoKits.dossier(id));
        var road = OnTheRoad.numbers(DemoKits.SHELF.kit(id));
        int moved = 0;
        for (var edit : Edits.seeded(id, 50, 50)) {
            var changed = DemoKits.SHELF.with(List.of(edit));
            boolean same = DossierJson.text(Dossiers.of(changed.kit(id))).equals(first)
                    && OnTheRoad.numbers(changed.kit(id)).equals(road);
            moved += same ? 0 : 1;
            var before = DemoKits.SHELF.editable(edit.document()).stream()
                    .filter(f -> f.path().equals(edit.path()))
                    .findFirst()
                    .orElseThrow();
            var undone = changed.with(List.of(new Edit(edit.document(), edit.path(), before.text())));
            assertThat(DossierJson.text(Dossiers.of(undone.kit(id))))
                    .as(edit.toString())
                    .isEqualTo(first);
        }
        assertThat(moved)
                .as("edits that moved the dossier before they were undone")
                .isGreaterThan(40);
    }

    @Test
    void nothingChangesBetweenAKitAndItself() {
        assertThat(Change.between(DemoKits.dossier("steep-street"), DemoKits.dossier("steep-street"))
                        .moved())
                .isEmpty();
    }
}
