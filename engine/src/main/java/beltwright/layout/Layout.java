package beltwright.layout;

import beltwright.kit.Side;
import java.util.List;

/// A kit solved in space: every drive and every end of the axle, in the order of the kit.
public record Layout(List<DriveLayout> drives, List<EndLayout> ends) {
    public Layout {
        drives = List.copyOf(drives);
        ends = List.copyOf(ends);
    }

    public EndLayout end(Side side) {
        return ends.stream().filter(e -> e.side() == side).findFirst().orElseThrow();
    }
}
