package beltwright.ride;

import beltwright.power.Governs;
import beltwright.power.Operating;

/// How hard the belt of one drive is pulled at most on a ride, driving and braking.
///
///     Te = 2·|M|/d
///
/// - Source: statics; M of the shaft as the ride works it out, d the pitch diameter of the drive pulley.
/// - Valid: at the ends of the integrator's own steps, at its rows, and where another limit begins to govern.
/// - Neglects: what kerbs and cracks add, and that one drive may pull more than the other.
public record BeltPulls(Pull driving, Pull braking) {
    private static final Pull NONE = new Pull(0, Double.NaN, Double.NaN, Governs.WISH);

    /// @param effectiveN tight side less slack side (N), 0 where it never is
    /// @param timeS when (s)
    /// @param distanceM where (m)
    /// @param governs what governed there
    public record Pull(double effectiveN, double timeS, double distanceM, Governs governs) {}

    /// Keeps the greatest while a ride goes on.
    static final class Watch {
        private final double diameterM;
        private Pull driving = NONE;
        private Pull braking = NONE;

        Watch(double diameterM) {
            this.diameterM = diameterM;
        }

        /// {@return effective tension at this moment (N), below zero braking}
        double see(double timeS, double distanceM, Operating now) {
            double te = 2 * now.shaftNm / diameterM;
            if (te > driving.effectiveN) {
                driving = new Pull(te, timeS, distanceM, now.governs);
            } else if (-te > braking.effectiveN) {
                braking = new Pull(-te, timeS, distanceM, now.governs);
            }
            return te;
        }

        BeltPulls greatest() {
            return new BeltPulls(driving, braking);
        }
    }
}
