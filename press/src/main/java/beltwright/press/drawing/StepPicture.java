package beltwright.press.drawing;

import beltwright.assembly.Step;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.DrawnDimension;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// Small pictures for guide steps: the view that shows a step's seats best, cut out around them, those seats in the
/// accent and the rest thin. Each view is drawn once for all steps.
final class StepPicture {
    private static final Set<Role> SEEN_FROM_THE_SIDE = EnumSet.of(
            Role.MOUNT,
            Role.CLAMP_SCREWS,
            Role.DOWEL_PINS,
            Role.MOTOR,
            Role.MOTOR_SCREWS,
            Role.MOTOR_WASHERS,
            Role.BELT,
            Role.IDLER,
            Role.COVER,
            Role.COVER_SCREWS);
    private static final Set<Role> OF_THE_DECK = EnumSet.of(Role.DECK, Role.RISER, Role.DECK_SCREWS, Role.DECK_NUTS);
    private static final double[] SCALES = {2, 1, 0.5, 0.2, 0.1};
    private static final double WIDE = 120; // room for the picture in a guide (mm)
    private static final double HIGH = 80;
    private static final double AROUND = 0.18; // of the seats' size, left around them
    private static final double LEAST = 10; // left around them at least (real mm)
    private static final double SMALLEST =
            70; // how much is shown at least, so that small parts are seen in place (real mm)

    private final DrawingOffice office;
    private final Map<Side, List<Entity>> sides = new EnumMap<>(Side.class);
    private @Nullable List<Entity> plan;

    StepPicture(DrawingOffice office) {
        this.office = office;
    }

    Optional<Drawing> of(Step step) {
        var view = view(step);
        var side = side(step);
        var entities = view == DrawnDimension.View.SIDE ? seenFrom(side.orElseThrow()) : plan();
        var seats = Set.copyOf(step.seats());
        var around = Bounds.EMPTY;
        for (var e : entities) {
            if (decides(step, e.tag().seat()) && !backdrop(e)) {
                around = around.with(e.bounds());
            }
        }
        if (around.empty()) {
            return Optional.empty();
        }
        double size = Math.max(around.width(), around.height());
        double beside = Math.max(LEAST, AROUND * size);
        var shown = around.grown(Math.max(beside, (SMALLEST - size) / 2));
        double scale = SCALES[SCALES.length - 1];
        for (double s : SCALES) {
            if (shown.width() * s <= WIDE && shown.height() * s <= HIGH) {
                scale = s;
                break;
            }
        }
        var kit = office.dossier().kit().draft();
        var drawn = entities.stream()
                .map(e -> e.tagged(e.tag()
                        .with(
                                seats.contains(e.tag().seat()) && !backdrop(e)
                                        ? Tag.Emphasis.CHOSEN
                                        : Tag.Emphasis.QUIET)))
                .collect(Collectors.toList());
        var place = new Placing(scale, new Point(-shown.left() * scale, -shown.bottom() * scale));
        var title = "Step " + step.number() + ": " + step.title();
        return Optional.of(new Drawing(
                kit.id() + "-step-" + step.number(),
                title,
                title + ". Shown: " + String.join(", ", step.seats()) + ".",
                Math.ceil(shown.width() * scale),
                Math.ceil(shown.height() * scale),
                scale,
                List.of(new View(view == DrawnDimension.View.SIDE ? "side view" : "plan", drawn, place, shown))));
    }

    private List<Entity> seenFrom(Side side) {
        return sides.computeIfAbsent(
                side, s -> DrawingOffice.facing(office.sideSketch(s).entities(), s));
    }

    private List<Entity> plan() {
        var drawn = plan;
        if (drawn == null) {
            drawn = new PlanView(office.dossier().kit(), office.dossier().layout(), new Materials(office.reference()))
                    .draw()
                    .entities();
            plan = drawn;
        }
        return drawn;
    }

    /// {@return whether the picture is cut out around this seat: the hanger only where nothing else is worked on}
    private static boolean decides(Step step, String seat) {
        return step.seats().contains(seat)
                && (!seat.equals(Role.HANGER.toString()) || names(step).stream().noneMatch(s -> s.side() != null));
    }

    /// The road belongs to the wheel's seat but is no part of it.
    private static boolean backdrop(Entity e) {
        return switch (e) {
            case Entity.Line l -> l.line() == LineClass.GROUND || l.line() == LineClass.CENTRE;
            default -> false;
        };
    }

    /// A belt and a deck are seen from the side; else the view in which more of the seats are seen.
    private DrawnDimension.View view(Step step) {
        if (names(step).stream().anyMatch(s -> OF_THE_DECK.contains(s.role()))) {
            return DrawnDimension.View.SIDE;
        }
        var sided = names(step).stream().filter(s -> s.side() != null).toList();
        long fromSide = sided.stream()
                .filter(s -> SEEN_FROM_THE_SIDE.contains(s.role()))
                .count();
        boolean belt = sided.stream().anyMatch(s -> s.role() == Role.BELT);
        return side(step).isPresent() && (belt || 2 * fromSide > sided.size())
                ? DrawnDimension.View.SIDE
                : DrawnDimension.View.PLAN;
    }

    /// {@return the first driven side that the step works on; the first of all where it works on the deck}
    private Optional<Side> side(Step step) {
        if (names(step).stream().anyMatch(s -> OF_THE_DECK.contains(s.role()))) {
            return Optional.of(office.dossier().layout().drives().getFirst().side());
        }
        return names(step).stream()
                .flatMap(s -> Optional.ofNullable(s.side()).stream())
                .filter(side -> office.dossier().layout().drives().stream().anyMatch(d -> d.side() == side))
                .findFirst();
    }

    private static List<SeatName> names(Step step) {
        return step.seats().stream().map(SeatName::parse).toList();
    }
}
