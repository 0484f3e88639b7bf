package beltwright.pairs;

import beltwright.kit.Hardware;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.pairs.Mending.Change;
import beltwright.part.DowelPin;
import beltwright.part.Part;
import beltwright.part.StandardSizes;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/// Dowel pins where a mount has holes for them and nothing fills the seat; they go into the joint that holds the mount.
record Pins(Kit kit, Map<String, Part> shelf) {
    static final double SAME_MM = 0.1; // a hole and the size that it is for

    List<Change> all() {
        var seats = Hardware.missing(kit).keySet().stream()
                .filter(s -> s.role() == Role.DOWEL_PINS)
                .toList();
        var joints = seats.stream().flatMap(this::with).toList();
        var changes = new ArrayList<Change>();
        if (seats.isEmpty() || joints.size() < seats.size()) {
            return changes;
        }
        for (var part : shelf.values()) {
            if (part instanceof DowelPin pin) {
                var says = pin.name() + " (" + pin.id() + ") as " + Mending.words(seats);
                var fields = new TreeMap<String, String>();
                joints.forEach(j -> fields.put("joints." + j.name(), written(j)));
                changes.add(added(says, true, pin, seats, fields, joints, 1.5));
            }
        }
        for (double diameter : sizes(seats)) {
            for (double length : StandardSizes.DOWEL_LENGTHS_MM) {
                var says = words(diameter, length) + " as " + Mending.words(seats) + " (not on the shelf)";
                var pin = StandardSizes.dowelPin(diameter, length);
                changes.add(added(says, false, pin, seats, Map.of(), joints, 1.6));
            }
        }
        return changes;
    }

    private static Change added(
            String says,
            boolean onShelf,
            DowelPin pin,
            List<SeatName> seats,
            Map<String, String> fields,
            List<Joint> joints,
            double size) {
        return new Change(
                says,
                onShelf,
                Mending.all(seats, pin),
                Map.of(),
                fields,
                joints,
                size + pin.lengthMm().nominal() / 1000);
    }

    /// {@return the joint that holds the mount of this side, with the pins}
    private Stream<Joint> with(SeatName pins) {
        return kit.joints().stream()
                .filter(j -> j.of().getFirst().equals(new SeatName(pins.side(), Role.MOUNT)))
                .limit(1)
                .map(j -> new Joint(
                        j.name(),
                        j.by(),
                        j.of(),
                        Stream.concat(j.with().stream(), Stream.of(pins)).toList()));
    }

    /// {@return the joint as a kit file has it}
    private static String written(Joint joint) {
        return "{by: " + joint.by() + ", of: " + joint.of() + ", with: " + joint.with() + "}";
    }

    private List<Double> sizes(List<SeatName> seats) {
        return StandardSizes.DOWELS_MM.stream()
                .filter(d -> kit.drives().stream()
                        .filter(drive -> seats.contains(drive.seat(Role.DOWEL_PINS)))
                        .allMatch(drive -> Math.abs(drive.mount().dowelMm().nominal() - d) < SAME_MM))
                .toList();
    }

    static String words(double diameterMm, double lengthMm) {
        return "dowel pins " + Numbers.plain(diameterMm) + " m6 × " + Numbers.plain(lengthMm);
    }
}
