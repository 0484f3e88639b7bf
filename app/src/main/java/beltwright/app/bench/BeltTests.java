package beltwright.app.bench;

import beltwright.check.TensionCard;
import beltwright.kit.Drive;
import beltwright.kit.JumpTests;
import beltwright.kit.Kit;
import beltwright.kit.Side;
import beltwright.part.Belt;
import beltwright.part.HungWeights;
import beltwright.power.MotorModel;
import beltwright.power.RoadLoad;
import beltwright.press.table.Table;
import beltwright.press.table.TensionTables;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/// The workshop's own tests of the belts of a kit, as its tension page shows and takes them: jump tests are kept with
/// the kit's placement, hung weights with the belt.
///
/// @param jump the form for a jump test
/// @param hung the form for a hung weight
public record BeltTests(List<Own> own, Form jump, Form hung) {
    private static final double MOST_N = 2000; // as a placement's own tension
    private static final double MOST_NM = 100;
    private static final double LEAST_HZ = 10;
    private static final double MOST_HZ = 5000;
    private static final double LEAST_MM = 10;
    private static final double MOST_MM = 1000;
    private static final double LEAST = 0.01;
    private static final String BOTH = "left and right";
    private static final String SIDE = "side";
    private static final String TENSION = "tension";
    private static final String TOLD = "told";
    private static final String TORQUE = "torque";
    private static final String OUTCOME = "outcome";
    private static final String BELT = "belt";
    private static final String SPAN = "span";
    private static final String PULL = "pull";
    private static final String SOUND = "sound";
    private static final List<String> TOLD_AS = List.of("N at rest", "Hz of the free span");
    private static final String TORQUE_AS = "torqueAs";
    private static final String STATED = "A, phase current as the controller states it";
    private static final String DIRECT = "A, motor current, direct";
    private static final List<String> TORQUES = List.of("N·m at the motor's shaft", STATED, DIRECT);
    private static final double MOST_A = 500; // as a controller's own
    private static final String PULL_AS = "pullAs";
    private static final List<String> PULLS = List.of("N", "kg hung on it");
    private static final List<String> OUTCOMES = List.of("a tooth jumped", "no tooth jumped up to it");

    /// Tests of one sort that are kept, and what they tell.
    public record Own(String of, Table rows, String says) {}

    /// A form with its fields.
    ///
    /// @param error what is wrong with no single field
    public record Form(List<TypedForm.Entry> fields, String error) {}

    static BeltTests of(Kit kit, List<TensionCard> cards, TypedForm jump, TypedForm hung) {
        return new BeltTests(kept(kit, cards), jumpForm(kit, jump), hungForm(kit, hung));
    }

    private static List<Own> kept(Kit kit, List<TensionCard> cards) {
        var own = new ArrayList<Own>();
        var sides = alike(kit) ? List.of(kit.drives().getFirst()) : kit.drives();
        for (var drive : sides) {
            var text = drive.placement().jumpTests();
            if (!text.isBlank()) {
                var tests = JumpTests.parse(text);
                own.add(new Own(
                        "Jump tests, " + (sides.size() < kit.drives().size() ? BOTH : drive.side()),
                        TensionTables.jumps(tests, card(cards, drive.side().toString())),
                        TensionTables.told(tests)));
            }
        }
        for (var belt : belts(kit)) {
            var text = belt(kit, belt).belt().hungWeights();
            if (!text.isBlank()) {
                var tests = HungWeights.parse(text);
                own.add(new Own("Hung weights, " + belt, TensionTables.hung(tests), TensionTables.told(tests)));
            }
        }
        return own;
    }

    /// {@return whether both sides have the same belt on the same pulleys, and the same tests so far}
    private static boolean alike(Kit kit) {
        if (kit.drives().size() < 2) {
            return false;
        }
        var a = kit.drives().getFirst();
        var b = kit.drives().getLast();
        return a.belt().equals(b.belt())
                && a.drivePulley().equals(b.drivePulley())
                && a.motor().equals(b.motor())
                && a.wheelPulley().equals(b.wheelPulley())
                && a.placement().jumpTests().equals(b.placement().jumpTests());
    }

    private static List<String> sides(Kit kit) {
        var sides = new ArrayList<String>();
        if (alike(kit)) {
            sides.add(BOTH);
        }
        kit.drives().forEach(d -> sides.add(d.side().toString()));
        return sides;
    }

    private static List<String> belts(Kit kit) {
        return kit.drives().stream().map(d -> d.belt().id()).distinct().toList();
    }

    private static Drive belt(Kit kit, String id) {
        return kit.drives().stream()
                .filter(d -> d.belt().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Form jumpForm(Kit kit, TypedForm typed) {
        var sides = sides(kit);
        var fields = new ArrayList<>(List.of(
                typed.entry(SIDE, "side", "", sides.getFirst(), "one test may speak for two sides built alike", sides),
                typed.entry(TENSION, "tension", "", "", "of each span, before any torque", List.of()),
                typed.entry(TOLD, "that is", "", TOLD_AS.getFirst(), "Hz becomes N by the card above", TOLD_AS),
                typed.entry(TORQUE, "motor torque", "", "", "at which it jumped, wheel held", List.of()),
                typed.entry(
                        TORQUE_AS,
                        "that is",
                        "",
                        TORQUES.getFirst(),
                        "A becomes N·m by the motor's Kv at its highest; near saturation a motor gives less: then a lever and a"
                                + " scale tell it better",
                        TORQUES),
                typed.entry(OUTCOME, "what happened", "", OUTCOMES.getFirst(), "", OUTCOMES)));
        fields.addAll(typed.signing());
        return new Form(fields, typed.elsewhere());
    }

    private static Form hungForm(Kit kit, TypedForm typed) {
        var belts = belts(kit);
        var before = belt(kit, belts.getFirst()).belt().hungWeights();
        var span =
                before.isBlank() ? "" : Numbers.plain(HungWeights.parse(before).spanMm());
        var fields = new ArrayList<>(List.of(
                typed.entry(BELT, "belt", "", belts.getFirst(), "kept with the belt, for every kit", belts),
                typed.entry(SPAN, "span", "mm", span, "between what holds it, the same every time", List.of()),
                typed.entry(PULL, "pull", "", "", "all that hangs on the span, hook and bucket too", List.of()),
                typed.entry(PULL_AS, "that is", "", PULLS.getFirst(), "a kilogram pulls 9.81 N", PULLS),
                typed.entry(SOUND, "sound", "Hz", "", "plucked, the middle of five", List.of())));
        fields.addAll(typed.signing());
        return new Form(fields, typed.elsewhere());
    }

    /// {@return the edits that record a jump test, made when they are kept}
    static Function<Shelf, List<Edit>> jump(Kit kit, List<TensionCard> cards, TypedForm typed) {
        var side = typed.choice(SIDE, sides(kit));
        var test = new JumpTests.Test(
                tensionN(typed, side, cards),
                typed.choice(TOLD, TOLD_AS).equals(TOLD_AS.getFirst()) ? 0 : heardHz(typed),
                torqueNm(kit, typed, side),
                typed.choice(TORQUE_AS, TORQUES).equals(TORQUES.getFirst()) ? 0 : amperes(typed),
                typed.choice(OUTCOME, OUTCOMES).equals(OUTCOMES.getFirst()),
                typed.signed());
        var on = kit.drives().stream()
                .map(Drive::side)
                .filter(s -> side.equals(BOTH) || side.equals(s.toString()))
                .toList();
        return kept -> on.stream().map(s -> jump(kept, kit.id(), s, test)).toList();
    }

    private static Edit jump(Shelf kept, String kit, Side side, JumpTests.Test test) {
        var before =
                Objects.requireNonNull(kept.draft(kit).placements().get(side)).jumpTests();
        return new Edit(kit, "placements." + side + ".jumpTests", JumpTests.added(before, test));
    }

    private static TensionCard card(List<TensionCard> cards, String side) {
        return cards.stream()
                .filter(c -> side.startsWith(c.side().toString()))
                .findFirst()
                .orElseThrow();
    }

    /// {@return tension at rest (N), from what the span sounded like where that was typed; to a tenth}
    private static double tensionN(TypedForm typed, String side, List<TensionCard> cards) {
        if (typed.choice(TOLD, TOLD_AS).equals(TOLD_AS.getFirst())) {
            return typed.number(TENSION, LEAST, MOST_N, "N");
        }
        double heard = heardHz(typed);
        var card = card(cards, side);
        double tension = Math.round(card.tensionN(heard) * 10) / 10.0;
        if (Double.isNaN(card.factor())) {
            typed.wrong(
                    TENSION,
                    "cannot become newtons: needs " + String.join(", ", card.needs()),
                    "N at rest",
                    "enter what is missing, or the tension in N");
        } else if (!Double.isNaN(heard) && !(tension > 0 && tension <= MOST_N)) {
            typed.wrong(
                    TENSION,
                    Numbers.plain(heard) + " Hz would be " + Numbers.plain(tension) + " N",
                    Numbers.plain(LEAST) + " to " + Numbers.plain(MOST_N) + " N",
                    "pluck again: an octave off is a common mistake");
        }
        return tension;
    }

    /// {@return torque at the motor (N·m), from its current where that was typed: the least that its Kv leaves open,
    /// to a hundredth down}
    private static double torqueNm(Kit kit, TypedForm typed, String side) {
        var as = typed.choice(TORQUE_AS, TORQUES);
        if (as.equals(TORQUES.getFirst())) {
            return typed.number(TORQUE, LEAST, MOST_NM, "N·m");
        }
        double read = amperes(typed);
        var drive = kit.drives().stream()
                .filter(d -> side.startsWith(d.side().toString()))
                .findFirst()
                .orElseThrow();
        var kv = drive.motor().kvRpmPerV();
        if (!kv.known()) {
            typed.wrong(
                    TORQUE,
                    "cannot become newton metres: needs " + kv.of(),
                    "N·m at the motor's shaft",
                    "enter the motor's Kv, or the torque in N·m");
            return Double.NaN;
        }
        double direct = as.equals(DIRECT)
                ? read
                : MotorModel.directCurrentA(read, kit.controller().currentIs());
        double torque = Math.floor(MotorModel.torqueConstantNmA(kv.upper()) * direct * 100) / 100;
        if (!Double.isNaN(read) && !(torque >= LEAST && torque <= MOST_NM)) {
            typed.wrong(
                    TORQUE,
                    Numbers.plain(read) + " A would be " + Numbers.plain(torque) + " N·m",
                    Numbers.plain(LEAST) + " to " + Numbers.plain(MOST_NM) + " N·m",
                    "check the current: that of one motor, not of the pack");
        }
        return torque;
    }

    private static double amperes(TypedForm typed) {
        return typed.number(TORQUE, LEAST, MOST_A, "A");
    }

    private static double heardHz(TypedForm typed) {
        return typed.number(TENSION, LEAST_HZ, MOST_HZ, "Hz");
    }

    /// {@return the edits that record a hung weight, made when they are kept}
    static Function<Shelf, List<Edit>> hung(Kit kit, TypedForm typed) {
        var belt = typed.choice(BELT, belts(kit));
        double span = typed.number(SPAN, LEAST_MM, MOST_MM, "mm");
        boolean newtons = typed.choice(PULL_AS, PULLS).equals(PULLS.getFirst());
        double pull = newtons
                ? typed.number(PULL, LEAST, MOST_N, "N")
                : Math.round(typed.number(PULL, LEAST, MOST_N / 10, "kg") * RoadLoad.G * 10) / 10.0;
        var reading = new HungWeights.Reading(pull, typed.number(SOUND, LEAST_HZ, MOST_HZ, "Hz"), typed.signed());
        return kept -> {
            var before = ((Belt) kept.part(belt)).hungWeights();
            return List.of(new Edit(belt, "hungWeights", HungWeights.added(before, span, reading)));
        };
    }

    /// Says what a test contradicts beside the field that was read.
    static void refused(Refusal r, TypedForm typed) {
        var field = switch (r.where()) {
            case "jumpTests" -> TORQUE;
            case "hungWeights" -> SOUND;
            case "spanMm" -> SPAN;
            default -> "";
        };
        typed.wrong(field, r.wrong(), r.allowed(), r.mend());
    }
}
