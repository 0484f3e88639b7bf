package beltwright.part;

import beltwright.quantity.Dimension;

/// An outrunner motor. Axial dimensions count from its mounting face: the shaft away from the can, the can the other
/// way.
public record Motor(
        Label label,

        @Field(value = "diameter of the turning can", min = 20, max = 150)
        Dimension canDiameterMm,

        @Field(value = "mounting face to the far end, rear screws and cap included", min = 15, max = 200)
        Dimension canLengthMm,

        ShaftForm shaftForm,
        @Field(value = "shaft diameter", min = 3, max = 20) Dimension shaftDiameterMm,

        @Field(value = "across the flat: flat to the opposite side", min = 2, max = 20)
        Dimension shaftFlatMm,

        @Field(value = "mounting face to shaft end", min = 5, max = 100)
        Dimension shaftLengthMm,

        @Field(value = "pitch circle of the mounting holes", min = 10, max = 100)
        Dimension boltCircleMm,

        @Field(value = "number of mounting holes", min = 2, max = 8)
        int boltHoles,

        Thread thread,

        @Field(value = "depth from the mounting face to where a screw would meet the windings", min = 1, max = 40)
        Dimension threadDepthMm,

        String threadMaterial,

        @Field(value = "pilot boss on the mounting face, diameter", max = 60)
        Dimension bossDiameterMm,

        @Field(value = "speed constant", min = 10, max = 2000)
        Dimension kvRpmPerV,

        @Field(value = "winding resistance", min = 0.001, max = 2)
        Dimension resistanceOhm,

        Winding resistanceIs,

        @Field(value = "current that turns the motor without load", max = 20)
        Dimension noLoadCurrentA)
        implements Part {
    /// Between which points the resistance was measured: two leads, or one lead and the star point.
    public enum Winding {
        LINE_TO_LINE("line to line"),
        PHASE("phase");

        private final String words;

        Winding(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
