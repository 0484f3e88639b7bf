package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.part.Field;
import beltwright.part.Kinds;
import beltwright.workshop.Edit;
import beltwright.workshop.document.PartField;
import beltwright.workshop.document.PartRow;
import java.util.ArrayList;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// A form folds away what no question of fit reads. Whoever leaves it empty must still see what goes with what.
class FieldGroupsTest {
    /// The questions that may stay open while a group is not filled in.
    private static final Map<Field.Group, Set<String>> OWN = Map.of(
            Field.Group.COVER,
            Set.of("cover-circle", "cover-screw-engagement", "cover-screw-reach"),
            Field.Group.BOARD,
            Set.of("deck-holes", "deck-motor", "deck-screw", "deck-wheel", "deck-wires", "riser-holes"),
            Field.Group.WIRES,
            Set.of("deck-wires", "pack-plug", "phase-plug", "sensor-pins", "wire-room", "wire-routing"),
            Field.Group.STRENGTH,
            Set.of(
                    "axle-fatigue",
                    "belted-axle-fatigue",
                    "dowel-fit-hanger",
                    "dowel-fit-mount",
                    "dowel-reach",
                    "dowel-room",
                    "hanger-joint-flange", // of a mount with dowel pins
                    "hanger-strike-flange",
                    "motor-bearing-life",
                    "motor-bearing-static",
                    "motor-shaft",
                    "wheel-bearing-life",
                    "wheel-bearing-static"),
            Field.Group.RIDE, // and what pulls on the parts: the currents of the controller
            Set.of(
                    "belt-peak",
                    "belted-axle-fatigue",
                    "belted-axle-yield",
                    "braking",
                    "drive-pulley-teeth",
                    "electrical-speed",
                    "hanger-joint-clamp",
                    "hanger-joint-flange",
                    "hill-start",
                    "lug-bearing",
                    "lug-shear",
                    "motor-bearing-life",
                    "motor-bearing-static",
                    "motor-joint-opens",
                    "motor-screw-stress",
                    "motor-shaft",
                    "plate-bending",
                    "plate-fatigue",
                    "pulley-press-holds",
                    "pulley-screws-grip",
                    "shaft-joint",
                    "slot-grip",
                    "tension-band",
                    "tension-set",
                    "wheel-bearing-life",
                    "wheel-bearing-static",
                    "wheel-pulley-teeth"));

    @ParameterizedTest
    @EnumSource(Kinds.class)
    void whatMustBeSaidIsNotFoldedAway(Kinds kind) {
        var fields = PartRow.fields(kind);
        assertThat(fields).filteredOn(f -> f.group() != Field.Group.FIT).noneMatch(PartField::required);
        assertThat(fields)
                .filteredOn(f -> f.group() == Field.Group.FIT)
                .as("fields of a newcomer's form")
                .hasSizeLessThanOrEqualTo(32);
    }

    @ParameterizedTest
    @EnumSource(
            value = Field.Group.class,
            names = {"COVER", "BOARD", "WIRES", "STRENGTH", "RIDE"})
    void whatIsFoldedAwayLeavesOnlyItsOwnQuestionsOpen(Field.Group group) {
        var open = new TreeSet<String>();
        DemoKits.ids().forEach(id -> open.addAll(openWithout(group, id)));
        assertThat(open).isNotEmpty();
        assertThat(OWN.get(group)).containsAll(open);
    }

    private static Set<String> openWithout(Field.Group group, String id) {
        var edits = new ArrayList<Edit>();
        for (var part : DemoKits.SHELF.kit(id).parts().values()) {
            PartRow.fields(Kinds.of(part.getClass())).stream()
                    .filter(f -> f.group() == group && f.dimension())
                    .forEach(f -> edits.add(new Edit(part.id(), f.path(), "unknown")));
        }
        var open = cannotTell(DemoKits.dossier(id, edits.toArray(Edit[]::new)));
        open.removeAll(cannotTell(DemoKits.dossier(id)));
        return open;
    }

    private static Set<String> cannotTell(Dossier dossier) {
        var slugs = new TreeSet<String>();
        dossier.findings().stream()
                .filter(f -> f.verdict() == Verdict.CANNOT_TELL)
                .forEach(f -> slugs.add(f.key().substring(0, f.key().lastIndexOf('.'))));
        return slugs;
    }
}
