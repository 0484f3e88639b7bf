package beltwright.kit;

import beltwright.quantity.Refusal;
import org.jspecify.annotations.Nullable;

/// A place in a kit: "hanger", "left motor", "right axle nut".
public record SeatName(@Nullable Side side, Role role) implements Comparable<SeatName> {

    public static SeatName of(Role role) {
        return new SeatName(null, role);
    }

    /// @throws Refusal if the words name no place in a kit
    public static SeatName parse(String words) {
        for (var side : Side.values()) {
            if (words.startsWith(side + " ")) {
                var role = Role.named(words.substring(side.toString().length() + 1));
                if (role.isPresent() && role.get().extent() != Role.Extent.KIT) {
                    return new SeatName(side, role.get());
                }
            }
        }
        var role = Role.named(words).filter(r -> r.extent() == Role.Extent.KIT);
        return SeatName.of(role.orElseThrow(() -> new Refusal(
                "seats", "'" + words + "' is not a place in a kit", Role.allowed(), "use one of these names")));
    }

    @Override
    public int compareTo(SeatName other) {
        int bySide =
                Integer.compare(side == null ? -1 : side.ordinal(), other.side == null ? -1 : other.side.ordinal());
        return bySide != 0 ? bySide : role.compareTo(other.role);
    }

    @Override
    public String toString() {
        return side == null ? role.toString() : side + " " + role;
    }
}
