package beltwright.part;

import beltwright.quantity.Dimension;

/// The small pulley on the motor shaft. Its hub faces the motor or the wheel and carries the set screws.
public record DrivePulley(
        Label label,
        ToothedRim rim,
        ShaftForm boreForm,
        @Field(value = "bore diameter", min = 3, max = 30) Dimension boreDiameterMm,

        @Field(value = "across the flat of a D bore", min = 2, max = 30)
        Dimension boreFlatMm,

        @Field(value = "plain hub beside the rim, along the shaft", max = 40)
        Dimension hubLengthMm,

        HubSide hubSide,
        @Field(value = "number of set screw holes", max = 4) int setScrews,
        Thread setScrewThread)
        implements Part {
    /// The side of the rim that the hub stands on.
    public enum HubSide {
        MOTOR("motor"),
        WHEEL("wheel");

        private final String words;

        HubSide(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
