package beltwright.assembly;

/// One row of the proof that the guide uses what the box holds: counted from joints, and counted again from steps.
public record Tally(String part, String name, int inBox, int inSteps) {
    public boolean meets() {
        return inBox == inSteps;
    }
}
