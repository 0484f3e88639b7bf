package beltwright.assembly;

import java.util.List;
import org.jspecify.annotations.Nullable;

/// One step of the assembly guide.
///
/// @param joint the joint that is made, or empty for a step that only checks or sets something
/// @param takes what is picked up in this step, from the box or from the rider's own board
/// @param does what to do, sentence by sentence
/// @param seats what the picture shows in accent
/// @param after why it comes after an earlier step, as "joint: reason"
public record Step(
        int number,
        String title,
        String joint,
        List<Take> takes,
        List<String> tools,
        @Nullable Torque torque,
        String threadlocker,
        List<String> does,
        List<String> cautions,
        List<String> seats,
        List<String> after) {
    public Step {
        takes = List.copyOf(takes);
        tools = List.copyOf(tools);
        does = List.copyOf(does);
        cautions = List.copyOf(cautions);
        seats = List.copyOf(seats);
        after = List.copyOf(after);
    }

    /// So many pieces of a part for a seat.
    public record Take(String part, String name, int count, String seat, boolean fromRider) {}

    /// A tightening torque and what it rests on.
    public record Torque(double torqueNm, String basis) {}
}
