package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.TensionCard;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.kit.Kit;
import beltwright.kit.Seat;
import beltwright.part.BatteryPack;
import beltwright.part.Belt;
import beltwright.part.HungWeights;
import beltwright.part.Motor;
import beltwright.part.Wheel;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.json.DossierJson;
import beltwright.press.svg.SvgWriter;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/// Every dimension of every part of the demo is moved: some finding, number, drawing, output or answer on the road must
/// move with it, or the dimension stands on the short list of unused ones with the reason. A planted failure alone
/// would breed a toy.
@Tag("law")
class ToyAlarmTest {
    /// What only a deck asks of a hanger.
    private static final Set<String> UNDER_A_DECK = Set.of("fullLeanDeg", "bushingTravelMm", "linkMm");

    /// What a pack says that decides only where another limit does not come first;
    /// `whatNeverDecidesHereDecidesElsewhere`
    /// shows where that is.
    private static final Map<String, String> FAR_OFF = Map.of(
            "chargeCurrentA", "the controllers of the demo return less",
            "disconnectsAboveA", "above what controller and pack let pass",
            "leastChargeC", "the cells of the demo are warm",
            "cellsInParallel", "told of a pack and read by nothing yet");

    /// {@return why this dimension rightly moves nothing in this kit, or nothing where it must}
    private static Optional<String> unused(Kit kit, String document, String path) {
        var seats = kit.seats().values().stream()
                .filter(s -> s.part().id().equals(document))
                .toList();
        if (path.equals("massKg")
                && seats.stream().allMatch(Seat::fromRider)
                && seats.stream().noneMatch(s -> s.part() instanceof Wheel)) {
            return Optional.of("the rider's own, so in no box, and it does not turn");
        }
        if (kit.id().equals("quarry-road-load") && path.equals("task.crestDeg")) {
            return Optional.of("motors behind the axle never meet a ramp crest");
        }
        if (kit.deck().blank() && document.equals(kit.hanger().id()) && UNDER_A_DECK.contains(path)) {
            return Optional.of("nothing to meet without a deck");
        }
        if (seats.isEmpty()) {
            return Optional.empty();
        }
        return switch (seats.getFirst().part()) {
            case Motor m
            when path.equals("wireBendMm") && m.wireExit() == Motor.WireExit.SIDE ->
                Optional.of("wires at the side need no bend behind the motor");
            case Motor m
            when path.equals("mostWindingC")
                    && m.mostWindingC().nominal()
                            >= kit.controller().windingCutBackFromC().nominal() + 25 ->
                Optional.of("raised, the controller still cuts back before");
            case Belt b
            when path.equals("massGPerM") && HungWeights.tell(b.hungWeights()) ->
                Optional.of("the weights hung on it tell its sound, not its mass");
            case BatteryPack p -> Optional.ofNullable(FAR_OFF.get(path));
            default -> Optional.empty();
        };
    }

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("kits")
    void everyDimensionMovesSomething(String id) {
        var before = everything(DemoKits.dossier(id));
        var road = OnTheRoad.numbers(DemoKits.SHELF.kit(id));
        var ride = OnTheRoad.ride(DemoKits.SHELF.kit(id));
        var still = new TreeSet<String>();
        var edits = Edits.everyDimension(id, 0.013);
        for (var edit : edits) {
            var kit = DemoKits.SHELF.with(List.of(edit)).kit(id);
            if (everything(Dossiers.of(kit)).equals(before)
                    && OnTheRoad.numbers(kit).equals(road)
                    && OnTheRoad.ride(kit).equals(ride)) {
                still.add(edit.document() + "." + edit.path());
            }
        }
        var listed = new TreeSet<String>();
        for (var edit : edits) {
            unused(DemoKits.SHELF.kit(id), edit.document(), edit.path())
                    .ifPresent(why -> listed.add(edit.document() + "." + edit.path()));
        }
        assertThat(edits).hasSizeGreaterThan(100);
        assertThat(still).as("dimensions that move nothing").isEqualTo(listed);
    }

    @ParameterizedTest
    @CsvSource({
        "pack-10s.chargeCurrentA=5",
        "pack-10s.disconnectsAboveA=12",
        "pack-10s.leastChargeC=20",
        "motor-54.mostWindingC=90"
    })
    void whatNeverDecidesHereDecidesElsewhere(String edit) {
        var kit = "market-hill-single";
        assertThat(OnTheRoad.numbers(
                        DemoKits.SHELF.with(List.of(Edit.parse(edit))).kit(kit)))
                .isNotEqualTo(OnTheRoad.numbers(DemoKits.SHELF.kit(kit)));
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
                if (edit.isPresent()
                        && unused(placed.kit("steep-street"), spare, field.path())
                                .isEmpty()) {
                    var after = everything(
                            Dossiers.of(placed.with(List.of(edit.get())).kit("steep-street")));
                    assertThat(after).as(edit.get() + " moves nothing").isNotEqualTo(before);
                    tried++;
                }
            }
            assertThat(tried).as(spare).isPositive();
        }
    }

    /// What a person gets: findings with verdicts and numbers but without the working, the first numbers, tension
    /// cards, box, steps, and the drawings. The working quotes every dimension, so it would hide one that is
    /// quoted and never used.
    private static List<String> everything(Dossier d) {
        var all = new ArrayList<String>();
        d.findings()
                .forEach(f -> all.add(f.key() + f.verdict() + f.demand() + " " + f.capacity() + " " + f.demandWorst()
                        + " " + f.capacityWorst() + f.capacityBest() + f.says()));
        d.numbers().forEach(n -> all.add(n.key() + n.value()));
        TensionCard.of(d.kit(), d.layout()).forEach(c -> all.add(c.toString()));
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
