package beltwright.pairs;

import beltwright.check.Verdict;
import beltwright.kit.SeatName;
import java.util.List;
import java.util.Map;

/// One change that mends a finding without making any other worse.
///
/// @param says the change in trade words
/// @param onShelf whether everything it takes lies on the shelf already
/// @param seats seats to fill anew, by part id, with how many where the seat was empty; none where a part is bought or
///     made
/// @param placements other fields of the kit to set, as typed: `placements.left.plateInsetMm`, or the joint that a new
///     part goes into
/// @param becomes the verdict of the mended finding
/// @param size how large the change is: the smallest is offered
public record Mend(
        String says,
        boolean onShelf,
        Map<SeatName, String> seats,
        Map<String, String> placements,
        Verdict becomes,
        double size) {
    public Mend {
        seats = Map.copyOf(seats);
        placements = Map.copyOf(placements);
    }

    /// {@return the change as fields of the kit's document, `seats.left belt` or `placements.left.plateInsetMm`}; empty
    /// where the part is not on the shelf
    public List<String[]> fields() {
        var fields = new java.util.ArrayList<String[]>();
        seats.forEach((seat, part) -> fields.add(new String[] {"seats." + seat, part}));
        placements.forEach((field, value) -> fields.add(new String[] {field, value}));
        fields.sort(java.util.Comparator.comparing((String[] f) -> !f[0].startsWith("seats.")) // a joint names seats
                .thenComparing(f -> f[0]));
        return fields;
    }
}
