package beltwright.strength;

/// What screws and pins on a circle hold against turning.
///
///     friction: T = n·μ·F·D/2        pins: T = n·τ·π/4·d²·D/2        bearing: T = n·p·d·t·D/2
///     worst screw: F = 2·T/(n·D) + S/n          stop: T = p·A·r
///
/// - Source: statics, as in any text on flange couplings and bolt groups.
/// - Valid: screws or pins evenly spaced on one circle. Of friction and pins only one counts: friction lets go before
///   pins come to bear.
/// - Neglects: that the worst fitted pin bears first.
public final class FlangeGrip {
    private FlangeGrip() {}

    /// {@return torque (N·m) held by friction under so many screws}
    public static double frictionNm(double screws, double preloadN, double friction, double circleMm) {
        return FrictionGrip.slipN(screws, preloadN, friction, 1) * circleMm / 2000;
    }

    /// {@return torque (N·m) at which so many pins, dowels or stops shear off}
    public static double shearNm(double pins, double diameterMm, double shearMpa, double circleMm) {
        return pins * shearMpa * Math.PI / 4 * diameterMm * diameterMm * circleMm / 2000;
    }

    /// {@return torque (N·m) at which so many pins crush the wall of their holes}
    ///
    /// @param depthMm length of pin in the weaker part (mm)
    public static double bearingNm(
            double pins, double diameterMm, double depthMm, double pressureMpa, double circleMm) {
        return pins * pressureMpa * diameterMm * depthMm * circleMm / 2000;
    }

    /// {@return length of pin (mm) in the part that holds less of it, the pin on the bottom of its hole in one of them}
    ///
    /// @param holeMm depth of the hole that it stands in (mm)
    /// @param otherMm depth of the hole in the other part (mm)
    /// @param outMm what stands out of the first (mm), its length less the depth; negative where it vanishes in it
    public static double pinDepthMm(double holeMm, double otherMm, double outMm) {
        return Math.max(0, Math.min(Math.min(holeMm, otherMm), outMm));
    }

    /// {@return torque (N·m) at which the face of a stop is pressed as much as the weaker material bears}
    ///
    /// @param armMm from the axis to the middle of the face (mm)
    public static double stopNm(double areaMm2, double pressureMpa, double armMm) {
        return pressureMpa * areaMm2 * armMm / 1000;
    }

    /// {@return torque (N·m) that takes as much of screws or pins as this torque and a sideways force together}
    ///
    /// The worst one feels both in one direction; so taken, the sum holds for all and is safe.
    ///
    /// @param armMm of the screws or pins (mm)
    public static double withSideNm(double torqueNm, double sideN, double armMm) {
        return torqueNm + sideN * armMm / 1000;
    }

    /// {@return force across the worst screw (N) under a torque and a sideways force on the whole circle}
    public static double worstScrewN(double screws, double torqueNm, double circleMm, double sideN) {
        return (2000 * torqueNm / circleMm + sideN) / screws;
    }
}
