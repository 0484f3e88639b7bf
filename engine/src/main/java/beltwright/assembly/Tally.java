package beltwright.assembly;

import java.util.List;

/// One row of the proof that the guide uses what the box holds: counted from joints, and counted again from steps.
public record Tally(String part, String name, int inBox, int inSteps) {
    /// {@return all rows added up}
    public static Tally total(List<Tally> rows) {
        return new Tally(
                "",
                "In all",
                rows.stream().mapToInt(Tally::inBox).sum(),
                rows.stream().mapToInt(Tally::inSteps).sum());
    }

    public boolean meets() {
        return inBox == inSteps;
    }
}
