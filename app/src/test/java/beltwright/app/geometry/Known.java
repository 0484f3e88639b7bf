package beltwright.app.geometry;

import beltwright.app.DemoKits;
import beltwright.kit.Kit;
import beltwright.workshop.Edit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/// Where the engine finds more room than the bodies have, and why. Each is a disagreement that stands until the engine
/// or the meaning of a field changes; a test asks that it is still there.
enum Known {
    COVER_ARMS(
            "cover-ground",
            "the round of the wall only is asked; its arms towards the axle lie lower",
            kit -> true,
            "harbour-mile"),
    WASHER_OPENING(
            "washer-opening",
            "the opening is taken as a round about the motor axis; the motor travels, so it is as long as the slots",
            kit -> true,
            "orchard-lane",
            Edit.parse("washer-m4.outsideMm=13.5 +0/-0.36")),
    ODD_SLOTS(
            "slot-web",
            "with an odd number one slot lies on the line to the axle and runs into the opening; others only are asked",
            kit -> kit.drives().stream().anyMatch(d -> d.mount().slots() % 2 == 1),
            "quarry-road-load",
            Edit.parse("mount-load.slots=3")),
    DECK_MOTOR_BETWEEN(
            "deck-motor",
            "rest and full lean only are asked; of leans beyond 30 degrees one between can be nearer",
            Known::leansFar,
            "harbour-mile",
            Edit.parse("hanger-150-flange.fullLeanDeg=56.8 ±1"));

    private final String slug;
    private final String reason;
    private final Predicate<Kit> when;
    private final String kit;
    private final List<Edit> edits;

    Known(String slug, String reason, Predicate<Kit> when, String kit, Edit... edits) {
        this.slug = slug;
        this.reason = reason;
        this.when = when;
        this.kit = kit;
        this.edits = List.of(edits);
    }

    /// {@return a kit that shows it}
    Kit example() {
        return DemoKits.SHELF.with(edits).kit(kit);
    }

    String key() {
        return slug + ".left";
    }

    private static boolean leansFar(Kit kit) {
        return kit.hanger().fullLeanDeg().upper() > 30;
    }

    static Optional<Known> of(Told told, Kit kit) {
        return Arrays.stream(values())
                .filter(k -> k.slug.equals(told.slug()) && k.when.test(kit))
                .findFirst();
    }

    @Override
    public String toString() {
        return slug + ": " + reason;
    }
}
