package beltwright.kit;

import java.util.Map;

/// A kit as typed: names of parts, not yet parts. Resolution turns it into a [Kit] or refuses.
///
/// @param invented true where the kit is a made-up example
/// @param seats what fills each seat, by part id
/// @param placements one for each side that has a motor
public record KitDraft(
        String id,
        String name,
        boolean invented,
        String note,
        Map<SeatName, Filling> seats,
        Map<String, Joint> joints,
        Map<Side, Placement> placements,
        Task task) {

    /// So many pieces of the part with this id, in the box or from the rider.
    public record Filling(String part, int count, boolean fromRider) {}
}
