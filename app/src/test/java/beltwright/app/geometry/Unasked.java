package beltwright.app.geometry;

import beltwright.app.DemoKits;
import beltwright.kit.Kit;
import beltwright.workshop.Edit;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/// Pairs of bodies that no check holds apart: a kit of which nothing fails can have them stand in each other. Each
/// gives
/// such a kit, and leaves this list when a check asks for it.
enum Unasked {
    BELT_COVER(
            "left cover in left belt",
            "cover-belt asks at the drive pulley only; from there the spans widen towards the wheel pulley",
            "harbour-mile"),
    SCREWS_COVER(
            "left motor screws in left cover",
            "the wall stands on the plate where the heads of the motor screws are",
            "harbour-mile"),
    FLANGE_WHEEL_PULLEY(
            "left wheel pulley in left mount's flange",
            "wheel-pulley-hanger asks for the hanger's section only, a flange on its end face is wider than that",
            "harbour-mile"),
    FLANGE_CORE(
            "left mount's flange in left core",
            "as for the wheel pulley, with a thinner inner ring",
            "harbour-mile",
            Edit.parse("ring-8-13.lengthMm=12.84 ±0.05")),
    COVER_IDLER(
            "left idler in left cover",
            "no check holds the idler apart from the cover's arms",
            "harbour-mile",
            Edit.parse("wheel-pulley-36-screwed.rim.teeth=37")),
    BODY_PLATE(
            "middle body in left plate",
            "clamp-room asks for a mount that clamps only, and motor-body for the can only",
            "orchard-lane",
            Edit.parse("hanger-150-cast.bodyWidthMm=93.4 ±0.3"));

    private final String pair;
    private final String reason;
    private final String kit;
    private final List<Edit> edits;

    Unasked(String pair, String reason, String kit, Edit... edits) {
        this.pair = pair;
        this.reason = reason;
        this.kit = kit;
        this.edits = List.of(edits);
    }

    static Set<String> pairs() {
        var pairs = new TreeSet<String>();
        Arrays.stream(values()).forEach(u -> pairs.add(u.pair));
        return pairs;
    }

    String pair() {
        return pair;
    }

    Kit example() {
        return DemoKits.SHELF.with(edits).kit(kit);
    }

    @Override
    public String toString() {
        return pair + ": " + reason;
    }
}
