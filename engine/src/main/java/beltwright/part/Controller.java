package beltwright.part;

import beltwright.quantity.Dimension;

/// A motor controller: its limits for one motor, and its plugs.
public record Controller(
        Label label,

        @Field(value = "phase current when driving", min = 1, max = 500, group = Field.Group.RIDE)
        Dimension driveCurrentA,

        @Field(value = "phase current when braking", min = 1, max = 500, group = Field.Group.RIDE)
        Dimension brakeCurrentA,

        CurrentIs currentIs,

        @Field(
                value = "largest share of the pack voltage that reaches the motor",
                min = 50,
                max = 100,
                group = Field.Group.RIDE)
        Dimension dutyPercent,

        @Field(value = "lowest supply voltage", max = 100) Dimension leastSupplyV,

        @Field(value = "highest supply voltage", min = 5, max = 200)
        Dimension mostSupplyV,

        @Field(value = "current drawn from the pack when driving", min = 1, max = 500)
        Dimension batteryCurrentA,

        @Field(value = "current that flows back to the pack when braking", max = 500, group = Field.Group.RIDE)
        Dimension chargeCurrentA,

        @Field(value = "supply voltage at which it begins to draw less", max = 200, group = Field.Group.RIDE)
        Dimension cutBackFromV,

        @Field(value = "supply voltage at which it draws nothing more", max = 200, group = Field.Group.RIDE)
        Dimension cutBackToV,

        @Field(
                value = "winding temperature at which it begins to cut phase current back",
                min = 40,
                max = 200,
                group = Field.Group.RIDE)
        Dimension windingCutBackFromC,

        @Field(
                value = "winding temperature at which it gives no phase current any more",
                min = 40,
                max = 220,
                group = Field.Group.RIDE)
        Dimension windingCutBackToC,

        @Field(
                value = "highest electrical speed: motor speed times pole pairs",
                min = 1000,
                max = 500000,
                group = Field.Group.RIDE)
        Dimension electricalSpeedRpm,

        @Field(value = "socket for a phase plug, diameter", min = 2, max = 12, group = Field.Group.WIRES)
        Dimension phasePlugMm,

        @Field(value = "pins of the sensor socket, 0 without one", max = 12, group = Field.Group.WIRES)
        Dimension sensorPins,

        @Field(value = "pin to pin in the sensor socket", min = 0.5, max = 5, group = Field.Group.WIRES)
        Dimension sensorPitchMm,

        @Field(
                value = "plug towards the pack, diameter or width of a contact",
                min = 1,
                max = 15,
                group = Field.Group.WIRES)
        Dimension plugMm)
        implements Part {
    /// What the number on the controller means: the direct current of equal torque, or the peak of a sine.
    public enum CurrentIs {
        DIRECT("direct"),
        SINE_PEAK("sine peak");

        private final String words;

        CurrentIs(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
