package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.json.DossierJson;
import beltwright.press.svg.SvgWriter;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Every dimension of every part of the demo is moved: some finding, number, drawing or output must move with it, or
/// the
/// dimension stands on the short list of unused ones with the reason. A planted failure alone would breed a toy.
@Tag("law")
class ToyAlarmTest {
    /// Unused dimensions, and why.
    private static final Map<String, String> UNUSED = Map.of(
            "pack-10s.massKg", "the rider's own, so in no box",
            "pack-12s.massKg", "the rider's own, so in no box",
            "controller-one.massKg", "the rider's own, so in no box",
            "controller-two.massKg", "the rider's own, so in no box",
            "controller-load.massKg", "the rider's own, so in no box",
            "wheel-97.massKg", "the rider's own, so in no box",
            "quarry-road-load.task.wheelbaseMm", "motors behind the axle never meet a ramp crest",
            "quarry-road-load.task.crestDeg", "motors behind the axle never meet a ramp crest");

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("kits")
    void everyDimensionMovesSomething(String id) {
        var before = everything(DemoKits.dossier(id));
        var still = new TreeSet<String>();
        var edits = Edits.everyDimension(id, 0.013);
        for (var edit : edits) {
            var kit = DemoKits.SHELF.with(List.of(edit)).kit(id);
            if (everything(Dossiers.of(kit)).equals(before)) {
                still.add(edit.document() + "." + edit.path());
            }
        }
        var listed = new TreeSet<>(UNUSED.keySet());
        listed.retainAll(edits.stream().map(e -> e.document() + "." + e.path()).toList());
        assertThat(edits).hasSizeGreaterThan(100);
        assertThat(still).as("dimensions that move nothing").isEqualTo(listed);
    }

    /// A spare on the shelf is put into a seat it fits, then moved.
    @Tag("slow")
    @Test
    void everyDimensionOfASpareMovesSomethingToo() {
        var seated = new TreeSet<String>();
        DemoKits.ids()
                .forEach(id -> seated.addAll(DemoKits.SHELF.kit(id).parts().keySet()));
        var spares = new TreeSet<>(DemoKits.SHELF.parts().keySet());
        spares.removeAll(seated);
        assertThat(spares).hasSizeGreaterThan(5);
        for (var spare : spares) {
            var part = DemoKits.SHELF.part(spare);
            var kit = DemoKits.SHELF.kit("steep-street");
            var seat = kit.seats().values().stream()
                    .filter(s -> s.part().getClass() == part.getClass())
                    .findFirst()
                    .orElseThrow();
            var placed = DemoKits.SHELF.with(List.of(new Edit("steep-street", "seats." + seat.name(), spare)));
            var before = everything(Dossiers.of(placed.kit("steep-street")));
            int tried = 0;
            for (var field : placed.editable(spare)) {
                var edit = Edits.moved(spare, field, 0.013);
                if (edit.isPresent()) {
                    var after = everything(
                            Dossiers.of(placed.with(List.of(edit.get())).kit("steep-street")));
                    assertThat(after).as(edit.get() + " moves nothing").isNotEqualTo(before);
                    tried++;
                }
            }
            assertThat(tried).as(spare).isPositive();
        }
    }

    /// What a person gets: findings with verdicts and numbers but without the working, the first numbers, box, steps,
    /// and the drawings. The working quotes every dimension, so it would hide one that is quoted and never used.
    private static List<String> everything(Dossier d) {
        var all = new ArrayList<String>();
        d.findings()
                .forEach(f -> all.add(f.key() + f.verdict() + f.demand() + " " + f.capacity() + " " + f.demandWorst()
                        + " " + f.capacityWorst() + f.capacityBest() + f.says()));
        d.numbers().forEach(n -> all.add(n.key() + n.value()));
        d.box().items().forEach(i -> all.add(i.toString()));
        d.steps().forEach(s -> all.add(s.toString()));
        new DrawingOffice(d, DemoKits.REFERENCE, "draft").all().forEach(s -> all.add(SvgWriter.standalone(s)));
        return all;
    }

    @ParameterizedTest
    @MethodSource("kits")
    void theSameKitGivesTheSameBytes(String id) {
        assertThat(DossierJson.text(DemoKits.dossier(id))).isEqualTo(DossierJson.text(DemoKits.dossier(id)));
        assertThat(everything(DemoKits.dossier(id))).isEqualTo(everything(DemoKits.dossier(id)));
    }
}
