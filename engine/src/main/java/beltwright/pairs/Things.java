package beltwright.pairs;

import beltwright.kit.KitDraft;
import beltwright.kit.Role;
import beltwright.part.DrivePulley;
import beltwright.part.Part;
import beltwright.part.WheelPulley;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/// What can stand in the rows and columns of a matrix: every part of the shelf in one place, both pulleys together, or
/// the kits.
///
/// @param words how it is asked for: `kits`, `pulleys`, or the name of a seat without its side
public record Things(String words, List<Thing> all) {
    public static final String KITS = "kits";
    public static final String PULLEYS = "pulleys";

    /// The matrices that answer the usual questions, as rows and columns.
    private static final String[][] USUAL = {
        {"wheel", KITS},
        {"belt", KITS},
        {"wheel pulley", KITS},
        {"drive pulley", KITS},
        {"motor", KITS},
        {"hanger", KITS},
        {"belt", PULLEYS},
        {"drive pulley", "motor"},
        {"wheel pulley", "wheel"},
        {"wheel", "hanger"},
        {"mount", "motor"},
        {"mount", "hanger"},
        {"inner bearing", "wheel"},
        {"inner bearing", "hanger"},
        {"core spacer", "wheel"},
        {"cover", "mount"},
        {"deck", "hanger"},
        {"controller", "battery pack"},
        {"motor", "controller"},
    };

    public Things {
        all = List.copyOf(all);
    }

    /// {@return everything of this shelf that these words ask for}
    ///
    /// @throws Refusal if the words name nothing that can be held against something
    public static Things named(String words, Collection<Part> parts, Collection<KitDraft> kits) {
        var plain = words.strip();
        if (plain.equals(KITS) || plain.equals("kit")) {
            return new Things(KITS, kits.stream().<Thing>map(Thing.OfKit::new).toList());
        }
        if (plain.equals(PULLEYS)) {
            return new Things(PULLEYS, pulleys(parts));
        }
        var role = Role.named(plain)
                .or(() -> Role.named(plain + "s"))
                .or(() -> plain.endsWith("s") ? Role.named(plain.substring(0, plain.length() - 1)) : Role.named(plain))
                .or(() -> plain.equals("bearing") || plain.equals("bearings")
                        ? Role.named("inner bearing")
                        : Role.named(plain))
                .orElseThrow(() -> new Refusal(
                        "pairs",
                        "'" + words + "' is nothing to hold against something",
                        KITS + ", " + PULLEYS + " (both together), "
                                + String.join(
                                        ", ",
                                        Arrays.stream(Role.values())
                                                .map(Role::toString)
                                                .toList()),
                        "use one of these"));
        return new Things(
                role.toString(),
                parts.stream()
                        .filter(role.type()::isInstance)
                        .<Thing>map(p -> new Thing.InPlace(role, p))
                        .toList());
    }

    /// Refuses what has nothing to be held against: two kits have no seat for each other.
    public static void meet(Things rows, Things columns) {
        if (rows.words().equals(KITS) && columns.words().equals(KITS)) {
            throw new Refusal(
                    "pairs",
                    "kits are held against kits",
                    "a kit against a part, or a part against a part",
                    "name a seat such as wheel for one of the two; how each kit stands tells 'check'");
        }
    }

    private static List<Thing> pulleys(Collection<Part> parts) {
        var together = new ArrayList<Thing>();
        for (var drive : parts) {
            for (var wheel : parts) {
                if (drive instanceof DrivePulley && wheel instanceof WheelPulley) {
                    together.add(new Thing.Together(List.of(
                            new Thing.InPlace(Role.DRIVE_PULLEY, drive), new Thing.InPlace(Role.WHEEL_PULLEY, wheel))));
                }
            }
        }
        return together;
    }

    /// {@return the rows and columns of the usual matrices for which this shelf has both}
    public static List<List<Things>> usual(Collection<Part> parts, Collection<KitDraft> kits) {
        return Stream.of(USUAL)
                .map(names -> List.of(named(names[0], parts, kits), named(names[1], parts, kits)))
                .filter(m -> !m.get(0).all().isEmpty() && !m.get(1).all().isEmpty())
                .toList();
    }
}
