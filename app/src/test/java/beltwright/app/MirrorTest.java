package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Finding;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.kit.SeatName;
import beltwright.layout.DrawnDimension;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// A kit with left and right exchanged is the mirror image of the kit.
@Tag("law")
class MirrorTest {
    static Stream<String> kits() {
        return DemoKits.ids();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void aMirroredKitMirrors(String id) {
        var draft = DemoKits.SHELF.draft(id);
        var kit = dossier(draft);
        var image = dossier(mirrored(draft));

        var findings = new TreeSet<String>();
        kit.findings().forEach(f -> findings.add(told(f)));
        var mirrored = new TreeSet<String>();
        image.findings().forEach(f -> mirrored.add(swapped(told(f))));
        assertThat(mirrored).isEqualTo(findings);

        var drawn = new TreeSet<String>();
        kit.dimensions().forEach(d -> drawn.add(told(d, 1)));
        var seen = new TreeSet<String>();
        image.dimensions().forEach(d -> seen.add(swapped(told(d, d.view() == DrawnDimension.View.PLAN ? -1 : 1))));
        // a distance across the whole hanger is told from its first side, whichever that is
        assertThat(apartFromTheWholeHanger(seen)).isEqualTo(apartFromTheWholeHanger(drawn));

        assertThat(image.box().pieces()).isEqualTo(kit.box().pieces());
        assertThat(image.steps()).hasSameSizeAs(kit.steps());
    }

    private static TreeSet<String> apartFromTheWholeHanger(TreeSet<String> told) {
        told.removeIf(t -> t.startsWith("hanger width") || t.startsWith("between the motors"));
        return told;
    }

    private static String told(Finding f) {
        return f.key() + " " + f.verdict() + " " + f.demand() + " " + f.capacity() + " " + f.capacityWorst();
    }

    private static String told(DrawnDimension d, int mirror) {
        return d.name() + "." + d.side() + " "
                + List.of(d.fromX(), mirror * d.fromY() + 0.0, d.toX(), mirror * d.toY() + 0.0);
    }

    private static String swapped(String text) {
        return text.replace(".left", ".#").replace(".right", ".left").replace(".#", ".right");
    }

    private static Dossier dossier(KitDraft draft) {
        return Dossiers.of(Kit.resolve(draft, DemoKits.SHELF::part, DemoKits.REFERENCE));
    }

    private static KitDraft mirrored(KitDraft d) {
        var seats = new TreeMap<SeatName, KitDraft.Filling>();
        d.seats().forEach((name, filling) -> seats.put(mirrored(name), filling));
        var joints = new TreeMap<String, Joint>();
        d.joints()
                .values()
                .forEach(j -> joints.put(j.name(), new Joint(j.name(), j.by(), mirrored(j.of()), mirrored(j.with()))));
        var placements = new TreeMap<beltwright.kit.Side, beltwright.kit.Placement>();
        d.placements().forEach((side, placement) -> placements.put(side.other(), placement));
        return new KitDraft(d.id(), d.name(), d.invented(), d.note(), seats, joints, placements, d.task());
    }

    private static List<SeatName> mirrored(List<SeatName> names) {
        return names.stream().map(MirrorTest::mirrored).toList();
    }

    private static SeatName mirrored(SeatName name) {
        var side = name.side();
        return side == null ? name : new SeatName(side.other(), name.role());
    }
}
