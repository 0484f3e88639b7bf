package beltwright.power;

/// What a controller allows, for one motor, in direct amperes.
///
/// @param driveA phase current, driving (A)
/// @param brakeA phase current, braking (A)
/// @param batteryA battery current out, for one motor (A)
/// @param chargeA battery current in, for one motor (A)
/// @param dutyShare largest share of the voltage that reaches the motor (1)
/// @param cutBackFromV supply voltage where it begins to draw less (V)
/// @param cutBackToV supply voltage where it draws nothing (V)
/// @param windingFromC winding temperature where phase current begins to fall (°C)
/// @param windingToC winding temperature where none is left (°C)
/// @param mostRadPerS motor speed at the limit of electrical speed (rad/s)
public record DriveLimits(
        double driveA,
        double brakeA,
        double batteryA,
        double chargeA,
        double dutyShare,
        double cutBackFromV,
        double cutBackToV,
        double windingFromC,
        double windingToC,
        double mostRadPerS) {

    /// {@return share of phase current that is left at this winding temperature (1)}
    public double warmShare(double windingC) {
        return windingC <= windingFromC
                ? 1
                : windingC >= windingToC ? 0 : (windingToC - windingC) / (windingToC - windingFromC);
    }
}
