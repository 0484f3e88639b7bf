package beltwright.part;

import beltwright.quantity.Dimension;
import beltwright.quantity.Range;

/// The toothed rim of a pulley: what meets the belt.
public record ToothedRim(
        BeltProfile profile,

        @Field(value = "number of grooves", min = 8, max = 120)
        int teeth,

        @Field(value = "toothed width between flanges, or over all where there are none", min = 3, max = 60)
        Dimension faceWidthMm,

        Flanges flanges,

        @Field(value = "outside diameter of the flange", max = 200, when = "flanges=motor side|wheel side|both")
        Dimension flangeDiameterMm,

        @Field(value = "thickness of one flange", max = 5, when = "flanges=motor side|wheel side|both")
        Dimension flangeThicknessMm) {

    /// Which sides of the rim have a flange; the motor side is the one that faces away from the wheel.
    public enum Flanges {
        NONE("none", 0),
        MOTOR_SIDE("motor side", 1),
        WHEEL_SIDE("wheel side", 1),
        BOTH("both", 2);

        private final String words;
        private final int count;

        Flanges(String words, int count) {
            this.words = words;
            this.count = count;
        }

        public int count() {
            return count;
        }

        public boolean onMotorSide() {
            return this == BOTH || this == MOTOR_SIDE;
        }

        public boolean onWheelSide() {
            return this == BOTH || this == WHEEL_SIDE;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// {@return the pitch diameter z·p/π (mm)}
    public double pitchDiameterMm() {
        return teeth * profile.pitchMm() / Math.PI;
    }

    /// {@return the outside diameter over the teeth, pitch diameter less twice the pitch line differential (mm)}
    public double outsideDiameterMm() {
        return pitchDiameterMm() - 2 * profile.pitchLineDifferentialMm();
    }

    /// {@return the largest diameter of the pulley with its belt on (mm)}
    public Range reachMm() {
        double belted = outsideDiameterMm() + 2 * (profile.heightMm() - profile.toothHeightMm());
        return flanges == Flanges.NONE
                ? Range.exact(belted)
                : new Range(
                        Math.max(belted, flangeDiameterMm.lower()),
                        Math.max(belted, flangeDiameterMm.nominal()),
                        Math.max(belted, flangeDiameterMm.upper()));
    }

    /// {@return the same, at the flange's upper limit (mm)}
    public double reachDiameterMm() {
        return reachMm().high();
    }
}
