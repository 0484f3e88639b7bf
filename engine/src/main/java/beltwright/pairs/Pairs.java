package beltwright.pairs;

import beltwright.check.Answer;
import beltwright.check.Check;
import beltwright.check.Finding;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.kit.Hardware;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.Layout;
import beltwright.layout.LayoutSolver;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.quantity.Refusal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/// Holds things against each other. Two parts are asked every check that reads both and nothing that is not there; a
/// part in a kit is asked every check that reads it, and whether the screws that it asks for are in the kit at all.
///
/// @param shelf finds a part by id, or refuses
public record Pairs(Function<String, Part> shelf, Reference reference) {

    /// A row put together with a column, and which checks tell of the two.
    private record Met(Kit kit, Set<Role> changed, Predicate<Check> telling) {}

    /// {@return every row against every column, row by row, each worked out as it is taken}
    public Stream<Pair> stream(List<? extends Thing> rows, List<? extends Thing> columns) {
        return rows.stream().flatMap(row -> columns.stream().map(column -> of(row, column)));
    }

    public Pair of(Thing row, Thing column) {
        Met met;
        try {
            met = meet(row, column);
        } catch (Refusal r) {
            return Pair.refused(row, column, r.where() + ": " + r.wrong() + "; " + r.mend());
        }
        var layout = LayoutSolver.solve(met.kit());
        var answers = Ladder.answers(met.kit(), layout, met.telling());
        if (answers.isEmpty()) {
            return Pair.strangers(row, column);
        }
        Answer weakest = answers.stream().min(Pair.DECIDES).orElseThrow();
        int failing =
                (int) answers.stream().filter(a -> a.verdict() == Verdict.FAILS).count();
        return new Pair(
                row.id(),
                column.id(),
                weakest.verdict(),
                weakest,
                answers.size(),
                failing,
                centre(met, layout),
                weakest.verdict() == Verdict.CANNOT_TELL ? needs(met, layout, weakest) : List.of(),
                "");
    }

    /// Only the working knows which number is missing, so it is written for this one answer.
    private static List<String> needs(Met met, Layout layout, Answer unknown) {
        return Ladder.findings(met.kit(), layout, check -> unknown.key().startsWith(check.slug() + ".")).stream()
                .filter(f -> f.key().equals(unknown.key()))
                .flatMap(f -> f.needs().stream())
                .toList();
    }

    private static double centre(Met met, Layout layout) {
        var drive = met.kit().drives().getFirst();
        return drive.belt().blank()
                        || drive.drivePulley().blank()
                        || drive.wheelPulley().blank()
                ? Double.NaN
                : layout.drives().getFirst().centreDistanceMm().nominal();
    }

    /// {@return everything the checks say of the two, weakest first, with the working}
    ///
    /// @throws Refusal where the two make no kit
    public List<Finding> findings(Thing row, Thing column) {
        var met = meet(row, column);
        return Ladder.findings(met.kit(), LayoutSolver.solve(met.kit()), met.telling());
    }

    private Met meet(Thing row, Thing column) {
        if (row instanceof Thing.OfKit kit) {
            return inKit(kit, column);
        }
        if (column instanceof Thing.OfKit kit) {
            return inKit(kit, row);
        }
        var first = places(row);
        var second = places(column);
        var parts = new TreeMap<SeatName, Part>();
        for (var one : List.of(first, second)) {
            for (var place : one) {
                seats(place.role()).forEach(seat -> parts.put(seat, place.part()));
            }
        }
        var ofRow = roles(first);
        var ofColumn = roles(second);
        var both = EnumSet.copyOf(ofRow);
        both.addAll(ofColumn);
        return new Met(
                Kit.partly(parts, reference),
                both,
                check ->
                        !check.readsPlacement() && !check.readsTask() && reads(check, ofRow) && reads(check, ofColumn));
    }

    private Met inKit(Thing.OfKit kit, Thing filling) {
        var places = places(filling);
        var draft = with(kit.draft(), places);
        Function<String, Part> filled = id -> places.stream()
                .map(Thing.InPlace::part)
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseGet(() -> shelf.apply(id));
        var roles = roles(places);
        var exchanged = Kit.exchanged(draft, filled, reference);
        boolean missing = !Hardware.missing(exchanged).isEmpty();
        return new Met(
                exchanged,
                roles,
                check -> reads(check, roles) || missing && check.slug().equals("hardware"));
    }

    private static List<Thing.InPlace> places(Thing thing) {
        return switch (thing) {
            case Thing.InPlace place -> List.of(place);
            case Thing.Together together -> together.parts();
            case Thing.OfKit kit ->
                throw new Refusal(
                        "pairs",
                        "'" + kit.id() + "' is held against another kit",
                        "a kit against a part, or a part against a part",
                        "look at each kit with 'check'");
        };
    }

    private static Set<Role> roles(List<Thing.InPlace> places) {
        var roles = EnumSet.noneOf(Role.class);
        places.forEach(p -> roles.add(p.role()));
        return roles;
    }

    private static boolean reads(Check check, Set<Role> roles) {
        return check.reads().stream().anyMatch(roles::contains);
    }

    /// {@return the draft with these parts in every seat of their roles, in each driven side's seat where it has none}
    static KitDraft with(KitDraft draft, List<Thing.InPlace> places) {
        var seats = new TreeMap<>(draft.seats());
        for (var place : places) {
            var there = draft.seats().keySet().stream()
                    .filter(s -> s.role() == place.role())
                    .toList();
            for (var seat : there.isEmpty() ? absent(draft, place.role()) : there) {
                var before = seats.get(seat);
                seats.put(
                        seat,
                        new KitDraft.Filling(
                                place.id(), before == null ? 1 : before.count(), before != null && before.fromRider()));
            }
        }
        return new KitDraft(
                draft.id(),
                draft.name(),
                draft.invented(),
                draft.note(),
                seats,
                draft.joints(),
                draft.placements(),
                draft.task());
    }

    private static List<SeatName> absent(KitDraft draft, Role role) {
        return role.extent() == Role.Extent.KIT
                ? List.of(SeatName.of(role))
                : draft.placements().keySet().stream()
                        .map(side -> new SeatName(side, role))
                        .toList();
    }

    /// One side is enough to ask; both bearings of a wheel are alike.
    private static List<SeatName> seats(Role role) {
        if (role.extent() == Role.Extent.KIT) {
            return List.of(SeatName.of(role));
        }
        return role == Role.INNER_BEARING
                ? List.of(new SeatName(Side.LEFT, Role.INNER_BEARING), new SeatName(Side.LEFT, Role.OUTER_BEARING))
                : List.of(new SeatName(Side.LEFT, role));
    }
}
