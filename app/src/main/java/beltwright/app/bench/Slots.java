package beltwright.app.bench;

import beltwright.pairs.SlotCover;
import beltwright.part.Belt;
import beltwright.part.DrivePulley;
import beltwright.part.Mount;
import beltwright.part.Part;
import beltwright.part.WheelPulley;
import beltwright.quantity.Refusal;
import beltwright.workshop.Shelf;
import java.util.List;

/// The slot of one mount over every pulley and belt of a shelf.
public final class Slots {
    private Slots() {}

    /// @throws Refusal if there is no such mount
    public static SlotCover cover(Shelf shelf, String id) {
        var part = shelf.parts().get(id);
        if (!(part instanceof Mount mount)) {
            throw new Refusal(
                    "mount",
                    part == null ? "no part has the id '" + id + "'" : "'" + id + "' is a " + part.kind(),
                    String.join(
                            ", ", all(shelf, Mount.class).stream().map(Part::id).toList()),
                    "name a mount");
        }
        return SlotCover.of(
                mount,
                all(shelf, DrivePulley.class),
                all(shelf, WheelPulley.class),
                all(shelf, Belt.class),
                shelf.reference());
    }

    /// {@return parts by name}
    public static String named(List<? extends Part> parts) {
        return String.join(", ", parts.stream().map(Part::name).toList());
    }

    /// {@return belts of this shelf by name}
    public static String belts(Shelf shelf, List<String> ids) {
        return named(ids.stream().map(shelf::part).toList());
    }

    private static <P extends Part> List<P> all(Shelf shelf, Class<P> kind) {
        return shelf.parts().values().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
