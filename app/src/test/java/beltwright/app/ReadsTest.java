package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Check;
import beltwright.check.Checks;
import beltwright.check.Reading;
import beltwright.check.Subject;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.layout.LayoutSolver;
import beltwright.part.Part;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Editable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/// A check says which parts it reads; pairs rest on that. Every field of every part of the demo kits is changed, seat
/// by
/// seat, to see which answers move.
@Tag("law")
@Tag("slow")
class ReadsTest {
    private static final Provenance ANY = new Provenance(Source.MEASURED, "test");

    /// What no edit of these kits shows: a part that is read by its id alone, and the smaller of two distances at right
    /// angles, which decides only where bodies overlap the other way.
    private static final Map<String, Set<String>> UNSEEN = Map.of(
            "one-piece", Set.of("HANGER"),
            "cover-wheel", Set.of("INNER_BEARING"),
            "hanger-joint-flange", Set.of("WHEEL"), // the one flanged kit is held back by its controller, not its grip
            "hub-clamp", Set.of("WHEEL"), // the same of the one kit whose hub is clamped
            "motor-body", Set.of("MOUNT"),
            "motors-apart", Set.of("DRIVE_PULLEY", "WHEEL_PULLEY"),
            "tension-band", Set.of("placement"),
            "pulley-wheel", Set.of("INNER_BEARING", "MOTOR", "MOUNT"),
            "wheel-pulley-hanger", Set.of("INNER_BEARING", "WHEEL"));

    private static final Map<String, Set<String>> MOVED_BY = new TreeMap<>();

    /// One kit with every seat holding a part of its own.
    private record Bench(KitDraft draft, Map<String, Part> parts) {
        static Bench of(Kit kit) {
            var seats = new LinkedHashMap<SeatName, KitDraft.Filling>();
            var parts = new TreeMap<String, Part>();
            kit.seats().forEach((name, seat) -> {
                seats.put(name, new KitDraft.Filling(name.toString(), seat.count(), seat.fromRider()));
                parts.put(name.toString(), seat.part());
            });
            var d = kit.draft();
            return new Bench(
                    new KitDraft(d.id(), d.name(), true, "", seats, d.joints(), d.placements(), d.task()), parts);
        }

        Kit with(String seat, Part part) {
            Function<String, Part> shelf = id -> id.equals(seat) ? part : parts.get(id);
            return Kit.resolve(draft, shelf, DemoKits.REFERENCE);
        }
    }

    @BeforeAll
    static void moveEverything() {
        DemoKits.ids().forEach(id -> moveEverything(DemoKits.SHELF, id));
        moveEverything(FormKits.pinned(), FormKits.PINNED);
        moveEverything(FormKits.screwed(), FormKits.PINNED);
        moveEverything(FormKits.clamped(2), FormKits.CLAMPED);
    }

    private static void moveEverything(Shelf shelf, String id) {
        var kit = shelf.kit(id);
        var before = answers(kit);
        var bench = Bench.of(kit);
        for (var seat : kit.seats().values()) {
            for (var edit : edits(shelf, seat.part().id())) {
                var part = shelf.with(List.of(edit)).part(seat.part().id());
                try {
                    note(
                            before,
                            answers(bench.with(seat.name().toString(), part)),
                            seat.name().role().name());
                } catch (Refusal r) {
                    continue; // the change asks for another seat
                }
            }
        }
        for (var edit : edits(shelf, id)) {
            if (edit.path().startsWith("placements.") || edit.path().startsWith("task.")) {
                note(
                        before,
                        answers(shelf.with(List.of(edit)).kit(id)),
                        edit.path().startsWith("task.")
                                ? "task"
                                : edit.path().contains("idler") ? Role.IDLER.name() : "placement");
            }
        }
    }

    private static void note(Map<String, Reading> before, Map<String, Reading> after, String by) {
        before.forEach((key, reading) -> {
            var now = after.get(key);
            if (now != null && !now.same(reading)) {
                MOVED_BY.computeIfAbsent(key.substring(0, key.lastIndexOf('.')), k -> new TreeSet<>())
                        .add(by);
            }
        });
    }

    private static Map<String, Reading> answers(Kit kit) {
        var answers = new TreeMap<String, Reading>();
        for (var subject : Subject.of(kit, LayoutSolver.solve(kit))) {
            for (var check : Checks.ALL) {
                if (check.concerns(subject)) {
                    var reading = new Reading();
                    check.measure(subject, reading);
                    answers.put(check.key(subject), reading);
                }
            }
        }
        return answers;
    }

    private static List<Edit> edits(Shelf shelf, String document) {
        var edits = new ArrayList<Edit>();
        for (var field : shelf.editable(document)) {
            values(document, field).forEach(v -> add(shelf, edits, new Edit(document, field.path(), v)));
        }
        return edits;
    }

    private static List<String> values(String document, Editable field) {
        var moved = new ArrayList<String>();
        for (double factor : new double[] {1.02, 1.3, 0.7, 0.4, 3}) {
            scaled(document, field, factor).ifPresent(moved::add);
        }
        if (!moved.isEmpty()) {
            return moved;
        }
        if (field.path().startsWith("seats.") || field.path().startsWith("joints.")) {
            return List.of();
        }
        if (!field.choices().isEmpty()) {
            return field.choices();
        }
        if (field.path().equals("material") || field.path().equals("threadMaterial")) {
            return List.of("core-plastic", "aluminium-7075-t6", "aluminium-6061-t6");
        }
        try {
            int count = Integer.parseInt(field.text());
            return List.of(String.valueOf(count + 1), String.valueOf(count - 1), String.valueOf(count * 3));
        } catch (NumberFormatException notACount) {
            return field.path().equals("madeWith") ? List.of("hanger-150") : List.of();
        }
    }

    private static Optional<String> scaled(String document, Editable field, double factor) {
        if (field.source().isEmpty()) {
            return Optional.empty();
        }
        try {
            var d = DimensionText.parse(document + "." + field.path(), field.text(), ANY);
            return d.known() ? Optional.of(Numbers.plain(d.nominal() * factor).replace('−', '-')) : Optional.empty();
        } catch (Refusal notADimension) {
            return Optional.empty();
        }
    }

    private static void add(Shelf shelf, List<Edit> edits, Edit edit) {
        try {
            shelf.with(List.of(edit));
            edits.add(edit);
        } catch (Refusal outOfRange) {
            return;
        }
    }

    @Test
    void anAnswerMovesOnlyWithPartsThatItSaysItReads() {
        var wrong = new TreeMap<String, Set<String>>();
        for (Check check : Checks.ALL) {
            var moved = new TreeSet<>(MOVED_BY.getOrDefault(check.slug(), Set.of()));
            check.reads().forEach(r -> moved.remove(r.name()));
            for (var role : Role.values()) {
                if (role.optional()) {
                    moved.remove(role.name());
                }
            }
            if (check.readsPlacement()) {
                moved.remove("placement");
            }
            if (check.readsTask()) {
                moved.remove("task");
            }
            if (!moved.isEmpty() && !check.slug().equals("hardware")) {
                wrong.put(check.slug(), moved);
            }
        }
        assertThat(wrong).as("reads more than it says").isEmpty();
    }

    @Test
    void everyPartThatAnAnswerSaysItReadsMovesItSomewhere() {
        var idle = new TreeMap<String, Set<String>>();
        for (Check check : Checks.ALL) {
            var moved = MOVED_BY.getOrDefault(check.slug(), Set.of());
            var said = new TreeSet<String>();
            check.reads().forEach(r -> said.add(r.name()));
            if (check.readsPlacement() && !check.reads().contains(Role.IDLER)) { // moved as the idler's own place
                said.add("placement");
            }
            if (check.readsTask()) {
                said.add("task");
            }
            said.removeAll(moved);
            said.removeAll(UNSEEN.getOrDefault(check.slug(), Set.of()));
            if (!said.isEmpty()) {
                idle.put(check.slug(), said);
            }
        }
        assertThat(idle).as("says it reads what never moves it").isEmpty();
    }
}
