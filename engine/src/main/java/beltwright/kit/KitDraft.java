package beltwright.kit;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

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

    /// {@return this kit without some seats, and without word of them in its joints; a joint that loses its last screw
    /// only puts its faces together: whether they hold is for the checks of the faces to say}
    KitDraft without(Collection<SeatName> gone) {
        var left = new TreeMap<>(seats);
        left.keySet().removeAll(gone);
        var joined = new TreeMap<>(joints);
        joined.replaceAll((name, joint) -> {
            var with = joint.with().stream().filter(s -> !gone.contains(s)).toList();
            boolean loose = with.size() < joint.with().size()
                    && with.stream().noneMatch(s -> s.role().fastener());
            return new Joint(name, loose ? Joint.Way.SLIDE : joint.by(), joint.of(), with);
        });
        return new KitDraft(id, name, invented, note, left, joined, placements, task);
    }

    /// So many pieces of the part with this id, in the box or from the rider.
    public record Filling(String part, int count, boolean fromRider) {}
}
