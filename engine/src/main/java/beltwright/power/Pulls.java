package beltwright.power;

/// Belt pulls in closed form, driving and braking.
///
///     driving:  Te = 2·M/d          M = Kt·I
///     braking:  Te = 2·F·r/D        F = m·a/n
///
/// d and D are the pitch diameters of drive and wheel pulley, r the wheel's radius, n the number of drives.
///
/// - Source: statics; Te as in Shigley ch. 17 for synchronous drives (from memory).
/// - Neglects: rolling and air drag, which help the brake; the inertia of turning parts.
public final class Pulls {
    private Pulls() {}

    /// {@return effective tension (N) from a torque on a pulley of this pitch diameter}
    public static double effectiveN(double torqueNm, double pitchDiameterMm) {
        return 2 * torqueNm / (pitchDiameterMm / 1000);
    }

    /// {@return speed of the belt (m/s) on a pulley of this pitch diameter}
    public static double beltSpeedMps(double pitchDiameterMm, double speedRpm) {
        return Math.PI * pitchDiameterMm * speedRpm / 60_000;
    }

    /// {@return torque on one driven wheel (N·m) for this deceleration shared by `drives`}
    public static double brakingWheelNm(double massKg, double decelerationMps2, double wheelDiameterMm, int drives) {
        return massKg * decelerationMps2 / drives * wheelDiameterMm / 2000;
    }

    /// {@return deceleration (m/s²) that this torque on each driven wheel gives}
    public static double decelerationMps2(double wheelNm, double massKg, double wheelDiameterMm, int drives) {
        return wheelNm * drives / massKg / (wheelDiameterMm / 2000);
    }
}
