package beltwright.pairs;

import beltwright.check.Answer;
import beltwright.check.Check;
import beltwright.check.Checks;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.kit.Hardware;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.kit.Placement;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.LayoutSolver;
import beltwright.part.Belt;
import beltwright.part.DowelPin;
import beltwright.part.DrivePulley;
import beltwright.part.Idler;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.part.Riser;
import beltwright.part.Screw;
import beltwright.part.Sleeve;
import beltwright.part.StandardSizes;
import beltwright.part.Thread;
import beltwright.part.WheelPulley;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/// Searches the smallest change that mends one finding of a kit: the motor or the mount set otherwise, another screw,
/// spacer, dowel pin, riser or belt of a standard size, another part from the shelf.
///
/// A change counts when the finding no longer fails, no other answer gets worse, and nothing new fails. Sizes are an
/// order, not a price: setting something otherwise (below 1), a screw, pin or spacer (1 to 2), a belt or riser (2 to
/// 3),
/// then parts by what hangs on them. A part may bring the screws that hold it: that is one change, and counts as the
/// part. Nothing is added but a riser under a deck that has none, and dowel pins where a mount has holes for them. On
/// both sides of a kit that has the same part twice,
/// both are changed.
public final class Mending {
    private static final double[] SLEEVE_STEPS_MM = {0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 1, 1.5, 2, 3, 4, 5};
    private static final int TEETH = 12;
    private static final SeatName RISER = SeatName.of(Role.RISER);
    private static final SeatName DECK_SCREWS = SeatName.of(Role.DECK_SCREWS);
    private static final SeatName HANGER = SeatName.of(Role.HANGER);

    private final Kit kit;
    private final Map<String, Part> parts;
    private final Map<String, Part> shelf;
    private final Reference reference;
    private final Map<String, Answer> before = new HashMap<>();

    private Mending(Kit kit, Map<String, ? extends Part> shelf, Reference reference) {
        this.kit = kit;
        this.parts = kit.parts();
        this.shelf = new TreeMap<>(shelf);
        this.reference = reference;
        answers(kit).forEach(a -> before.put(a.key(), a));
    }

    /// {@return a search over this shelf for one kit}
    public static Mending of(Kit kit, Map<String, ? extends Part> shelf, Reference reference) {
        return new Mending(kit, shelf, reference);
    }

    /// {@return the smallest change that mends this finding: to `holds` if any does, else to `marginal`; none where
    /// nothing on this shelf and no standard size does}
    ///
    /// @param key the finding's key
    public Optional<Mend> smallest(String key) {
        var all = all(key);
        return all.stream()
                .filter(m -> m.becomes() == Verdict.HOLDS)
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /// {@return every single change that mends this finding, smallest first}
    public List<Mend> all(String key) {
        var was = before.get(key);
        if (was == null) {
            throw new Refusal(
                    "finding",
                    "kit " + kit.id() + " has no finding '" + key + "'",
                    String.join(", ", new TreeMap<>(before).keySet()),
                    "name one of these");
        }
        var check = Checks.ALL.stream()
                .filter(c -> c.slug().equals(key.substring(0, key.lastIndexOf('.'))))
                .findFirst()
                .orElseThrow();
        var mends = new ArrayList<Mend>();
        for (var change : changes(check.reads(), check.readsPlacement())) {
            tried(change, was, check).ifPresent(mends::add);
        }
        mends.sort(Comparator.comparingDouble(Mend::size).thenComparing(Mend::says));
        return mends;
    }

    /// A change to be tried.
    record Change(
            String says,
            boolean onShelf,
            Map<SeatName, Part> parts,
            Map<Side, Placement> placements,
            Map<String, String> fields,
            List<Joint> joints,
            double size) {
        Change(
                String says,
                boolean onShelf,
                Map<SeatName, Part> parts,
                Map<Side, Placement> placements,
                Map<String, String> fields,
                double size) {
            this(says, onShelf, parts, placements, fields, List.of(), size);
        }
    }

    /// Most changes do not mend: the finding itself is asked first, and everything else only where it got better.
    private Optional<Mend> tried(Change change, Answer was, Check check) {
        Kit changed;
        try {
            changed = changed(change);
        } catch (Refusal r) {
            return Optional.empty();
        }
        var layout = LayoutSolver.solve(changed);
        var becomes = Ladder.answers(changed, layout, check::equals).stream()
                .filter(a -> a.key().equals(was.key()))
                .map(Answer::verdict)
                .findFirst()
                .orElse(Verdict.FAILS);
        if (becomes.compareTo(Verdict.MARGINAL) < 0
                || becomes.compareTo(was.verdict()) <= 0
                || Ladder.answers(changed, layout, other -> true).stream().anyMatch(a -> worse(a, was))) {
            return Optional.empty();
        }
        var seats = new TreeMap<SeatName, String>();
        if (change.onShelf()) {
            change.parts().forEach((seat, part) -> {
                int pieces = kit.seats().containsKey(seat) ? 1 : Hardware.needed(kit, seat);
                seats.put(seat, (pieces > 1 ? pieces + " x " : "") + part.id());
            });
        }
        return Optional.of(new Mend(change.says(), change.onShelf(), seats, change.fields(), becomes, change.size()));
    }

    /// {@return whether an answer is worse than before, or fails where there was none}
    private boolean worse(Answer answer, Answer mended) {
        var old = before.get(answer.key());
        return !answer.key().equals(mended.key())
                && (old == null
                        ? answer.verdict() == Verdict.FAILS
                        : answer.verdict().compareTo(old.verdict()) < 0);
    }

    private static List<Answer> answers(Kit kit) {
        return Ladder.answers(kit, LayoutSolver.solve(kit), check -> true);
    }

    private Kit changed(Change change) {
        var d = kit.draft();
        var seats = new TreeMap<>(d.seats());
        var made = new HashMap<String, Part>();
        change.parts().forEach((seat, part) -> {
            var filling = seats.get(seat);
            int count = filling == null ? Math.max(1, Hardware.needed(kit, seat)) : filling.count();
            seats.put(seat, new KitDraft.Filling(part.id(), count, filling != null && filling.fromRider()));
            made.put(part.id(), part);
        });
        var placements = new TreeMap<>(d.placements());
        placements.putAll(change.placements());
        var joints = new TreeMap<>(d.joints());
        change.joints().forEach(j -> joints.put(j.name(), j));
        if (kit.riser().blank() && seats.containsKey(RISER)) {
            joints.put(
                    "riser under deck",
                    new Joint("riser under deck", Joint.Way.SLIDE, List.of(RISER, HANGER), List.of()));
        }
        Function<String, Part> find = id -> {
            var part = made.getOrDefault(id, parts.get(id));
            if (part == null) {
                throw new Refusal("part", "'" + id + "' is not there", "", "");
            }
            return part;
        };
        return Kit.resolve(
                new KitDraft(d.id(), d.name(), d.invented(), d.note(), seats, joints, placements, d.task()),
                find,
                reference);
    }

    private List<Change> changes(List<Role> reads, boolean placed) {
        var changes = new ArrayList<Change>();
        if (placed || reads.contains(Role.BELT)) {
            changes.addAll(new Moves(kit).all());
        }
        if (reads.contains(Role.DECK) && kit.riser().blank()) {
            risers(changes);
        }
        changes.addAll(new Pins(kit, shelf).all());
        var roles = new ArrayList<>(reads);
        for (var role : Role.values()) {
            boolean sits = kit.seats().keySet().stream().anyMatch(s -> s.role() == role);
            if (role.optional() && sits && !roles.contains(role)) {
                roles.add(role);
            }
        }
        for (var role : roles) {
            seatsAlike(role).forEach((part, seats) -> {
                standard(part, seats, changes);
                if (role == Role.CORE_SPACER && part instanceof Sleeve sleeve) {
                    spacerToFit(sleeve, seats, changes);
                }
                fromShelf(role, part, seats, changes);
            });
        }
        return changes;
    }

    /// A riser where there is none, with deck screws as much longer as it is thick: the one part that a change adds.
    private void risers(List<Change> changes) {
        for (double thickness : StandardSizes.RISERS_MM) {
            var riser = StandardSizes.riserFor(kit.deck(), thickness);
            boughtWithScrews(riser, thickness, "a riser of " + mm(thickness) + " under the deck", 2.1, changes);
        }
        for (var part : shelf.values()) {
            if (part instanceof Riser riser) {
                withHardware(Role.RISER, riser, null, List.of(RISER), changes);
            }
        }
    }

    /// A riser that nobody has, with the shortest deck screws that are as much longer as the deck is raised.
    private void boughtWithScrews(Riser riser, double raised, String says, double size, List<Change> changes) {
        var screw = kit.deckScrew();
        for (double length : StandardSizes.SCREW_LENGTHS_MM) {
            if (length >= screw.lengthMm().nominal() + raised) {
                changes.add(new Change(
                        says + ", with deck screws " + screw.thread() + " × " + Numbers.plain(length)
                                + " (not on the shelf)",
                        false,
                        Map.of(RISER, riser, DECK_SCREWS, StandardSizes.screw(screw, length)),
                        Map.of(),
                        Map.of(),
                        size + Math.abs(raised) / 100));
                return;
            }
        }
    }

    /// The middle of what is allowed, rounded to what a lathe turns.
    private void spacerToFit(Sleeve sleeve, List<SeatName> seats, List<Change> changes) {
        kit.ends().stream()
                .filter(e -> seats.contains(new SeatName(e.side(), Role.CORE_SPACER)))
                .map(e -> e.wheel())
                .filter(w -> w.coreSpacingMm().known())
                .mapToDouble(StandardSizes::coreSpacerMm)
                .distinct()
                .forEach(length -> turned(sleeve, length, seats, changes));
    }

    private static void turned(Sleeve sleeve, double length, List<SeatName> seats, List<Change> changes) {
        bought(
                StandardSizes.sleeve(sleeve, length),
                "a sleeve " + Numbers.plain(length) + " mm long as " + words(seats),
                seats,
                1.2 + steps(length, sleeve.lengthMm().nominal(), 100),
                changes);
    }

    /// {@return the seat of the screws that hold a part, and their thread; nothing where it is held otherwise}
    private static Optional<Map.Entry<Role, Thread>> heldBy(Role role, Part part, Kit kit) {
        return switch (part) {
            case Riser r
            when role == Role.RISER ->
                Optional.of(Map.entry(Role.DECK_SCREWS, kit.deckScrew().thread()));
            case WheelPulley p when p.screwHoles() > 0 -> Optional.of(Map.entry(Role.PULLEY_SCREWS, p.screwThread()));
            case DrivePulley p when p.setScrews() > 0 -> Optional.of(Map.entry(Role.SET_SCREWS, p.setScrewThread()));
            case Idler i -> Optional.of(Map.entry(Role.IDLER_SCREW, i.screwThread()));
            default -> Optional.empty();
        };
    }

    /// A part of the shelf with other screws of the shelf to hold it; as many as there are, since that is what it
    /// needs.
    private void withHardware(
            Role role, Part part, @Nullable Part instead, List<SeatName> seats, List<Change> changes) {
        var held = heldBy(role, part, kit).orElse(null);
        if (held == null) {
            return;
        }
        var screwSeats = seats.stream()
                .map(s -> s.side() == null ? SeatName.of(held.getKey()) : new SeatName(s.side(), held.getKey()))
                .toList();
        if (!kit.seats().keySet().containsAll(screwSeats)) {
            return;
        }
        var before = (Screw) kit.seat(screwSeats.getFirst()).part();
        for (var other : shelf.values()) {
            if (other instanceof Screw screw
                    && screw.thread() == held.getValue()
                    && !screw.id().equals(before.id())) {
                var parts = new TreeMap<>(all(seats, part));
                parts.putAll(all(screwSeats, screw));
                changes.add(new Change(
                        part.name() + " (" + part.id() + ") as " + words(seats) + ", with " + screw.name() + " ("
                                + screw.id() + ") as " + words(screwSeats),
                        true,
                        parts,
                        Map.of(),
                        Map.of(),
                        weight(part)
                                + (instead == null ? 0.5 : distance(part, instead))
                                + 0.05
                                + distance(screw, before) / 10));
            }
        }
    }

    /// {@return the seats of a role by the part that fills them: both sides change together where they are alike}
    private Map<Part, List<SeatName>> seatsAlike(Role role) {
        var alike = new HashMap<Part, List<SeatName>>();
        for (var seat : kit.seats().values()) {
            if (seat.name().role() == role) {
                alike.computeIfAbsent(seat.part(), p -> new ArrayList<>()).add(seat.name());
            }
        }
        return alike;
    }

    static Map<SeatName, Part> all(List<SeatName> seats, Part part) {
        var filled = new TreeMap<SeatName, Part>();
        seats.forEach(s -> filled.put(s, part));
        return filled;
    }

    private void standard(Part part, List<SeatName> seats, List<Change> changes) {
        var where = words(seats);
        switch (part) {
            case Screw screw ->
                StandardSizes.SCREW_LENGTHS_MM.forEach(length -> bought(
                        StandardSizes.screw(screw, length),
                        "screws " + screw.thread() + " × " + Numbers.plain(length) + " as " + where,
                        seats,
                        1 + steps(length, screw.lengthMm().nominal(), 100),
                        changes));
            case DowelPin pin -> {
                for (double diameter : StandardSizes.DOWELS_MM) {
                    if (Math.abs(diameter - pin.diameterMm().nominal()) < Pins.SAME_MM) {
                        StandardSizes.DOWEL_LENGTHS_MM.forEach(length -> bought(
                                StandardSizes.dowelPin(diameter, length),
                                Pins.words(diameter, length) + " as " + where,
                                seats,
                                1 + steps(length, pin.lengthMm().nominal(), 100),
                                changes));
                    }
                }
            }
            case Sleeve sleeve -> {
                for (double step : SLEEVE_STEPS_MM) {
                    for (double length : new double[] {
                        sleeve.lengthMm().nominal() + step, sleeve.lengthMm().nominal() - step
                    }) {
                        if (length > 0.2) {
                            turned(sleeve, Math.round(length * 100) / 100.0, seats, changes);
                        }
                    }
                }
            }
            case Riser riser ->
                StandardSizes.RISERS_MM.forEach(thickness -> {
                    var other = StandardSizes.riser(riser, thickness);
                    double raised = thickness - riser.thicknessMm().nominal();
                    bought(other, "a riser of " + mm(thickness), seats, 2 + Math.abs(raised) / 100, changes);
                    boughtWithScrews(other, raised, "a riser of " + mm(thickness), 2.6, changes); // two things to buy
                });
            case Belt belt -> {
                for (int away = 1; away <= TEETH; away++) {
                    for (int teeth : new int[] {belt.teeth() + away, belt.teeth() - away}) {
                        if (!StandardSizes.stocked(belt.profile(), teeth)) {
                            continue;
                        }
                        bought(
                                StandardSizes.belt(belt, teeth),
                                "a belt of " + teeth + " teeth ("
                                        + Numbers.plain(teeth * belt.profile().pitchMm()) + " mm) as " + where,
                                seats,
                                2.2 + away / 100.0,
                                changes);
                    }
                }
            }
            default -> {}
        }
    }

    private static double steps(double a, double b, double per) {
        return Math.abs(a - b) / per;
    }

    private static void bought(Part part, String says, List<SeatName> seats, double size, List<Change> changes) {
        changes.add(new Change(says + " (not on the shelf)", false, all(seats, part), Map.of(), Map.of(), size + 0.05));
    }

    private void fromShelf(Role role, Part instead, List<SeatName> seats, List<Change> changes) {
        for (var part : shelf.values()) {
            if (role.type().isInstance(part) && !part.id().equals(instead.id())) {
                changes.add(new Change(
                        part.name() + " (" + part.id() + ") as " + words(seats),
                        true,
                        all(seats, part),
                        Map.of(),
                        Map.of(),
                        weight(part) + distance(part, instead)));
                withHardware(role, part, instead, seats, changes);
            }
        }
    }

    /// What hangs on a part, as a whole number: see the class.
    private static double weight(Part part) {
        return switch (part.kind()) {
            case "screw", "washer", "nut", "sleeve", "dowel pin" -> 1;
            case "belt", "riser" -> 2;
            case "cover", "idler", "consumable" -> 3;
            case "drive pulley" -> 4;
            case "wheel pulley", "bearing" -> 5;
            case "wheel" -> 6;
            case "mount", "controller", "battery pack" -> 7;
            case "motor" -> 8;
            default -> 9;
        };
    }

    private static double distance(Part a, Part b) {
        if (a instanceof Belt x && b instanceof Belt y) {
            return 0.2 + Math.abs(x.teeth() - y.teeth()) / 100.0;
        }
        if (a instanceof Screw x && b instanceof Screw y) {
            return x.thread() == y.thread() && x.head() == y.head()
                    ? steps(x.lengthMm().nominal(), y.lengthMm().nominal(), 100)
                    : 0.9;
        }
        if (a instanceof DowelPin x && b instanceof DowelPin y) {
            return 0.1 + steps(x.lengthMm().nominal(), y.lengthMm().nominal(), 100);
        }
        return 0.5;
    }

    private static String mm(double value) {
        return Numbers.plain(value) + " mm";
    }

    static String words(List<SeatName> seats) {
        return seats.size() == 2 && seats.getFirst().side() != seats.getLast().side()
                ? seats.getFirst().role() + " on both sides"
                : String.join(" and ", seats.stream().map(SeatName::toString).toList());
    }
}
