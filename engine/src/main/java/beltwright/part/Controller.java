package beltwright.part;

import beltwright.quantity.Dimension;

/// A motor controller, as far as the first numbers need it: its limits for one motor.
public record Controller(
        Label label,

        @Field(value = "phase current when driving", min = 1, max = 500)
        Dimension driveCurrentA,

        @Field(value = "phase current when braking", min = 1, max = 500)
        Dimension brakeCurrentA,

        CurrentIs currentIs,

        @Field(value = "largest share of the pack voltage that reaches the motor", min = 50, max = 100)
        Dimension dutyPercent)
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
