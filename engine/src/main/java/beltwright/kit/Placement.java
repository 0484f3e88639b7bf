package beltwright.kit;

import beltwright.part.Field;
import beltwright.quantity.Dimension;

/// Where one drive sits: which way the motor points and where the mount stands on the hanger.
///
/// @param motor whether the motor lies ahead of or behind the axle
/// @param aboveAxleDeg mount angle, positive above the axle line, negative below it
public record Placement(
        Toward motor,

        @Field(value = "mount angle above the axle line; negative is below", min = -90, max = 90)
        Dimension aboveAxleDeg,

        @Field(value = "hanger end face inward to the outer face of the plate", max = 150)
        Dimension plateInsetMm,

        @Field(value = "outer face of the plate to the near end of the drive pulley", max = 60)
        Dimension pulleyStandoffMm,

        @Field(value = "idler along the line from axle to motor", min = -100, max = 300)
        Dimension idlerAlongMm,

        @Field(value = "idler beside that line; negative is below it", min = -150, max = 150)
        Dimension idlerAsideMm,

        @Field(
                value = "tension of each span at rest, as this kit is to be set; unknown: a quarter above the least",
                max = 2000)
        Dimension tensionN,

        @Field(
                value =
                        "tension at rest and torque at the motor at which a tooth jumped, or did not: '60 N 4.1 Nm, 80 N no jump to 5.6 Nm'",
                optional = true)
        String jumpTests) {

    /// Fore or aft of the axle, in the direction of travel.
    public enum Toward {
        AHEAD("ahead", 1),
        BEHIND("behind", -1);

        private final String words;
        private final int sign;

        Toward(String words, int sign) {
            this.words = words;
            this.sign = sign;
        }

        /// {@return +1 where x points forward, −1 behind the axle}
        public int sign() {
            return sign;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
