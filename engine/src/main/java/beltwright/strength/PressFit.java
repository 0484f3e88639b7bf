package beltwright.strength;

/// A hub pressed on a shaft, each of its own material.
///
///     p = δ/(d·(K_h/E_h + K_s/E_s))     K_h = (D² + d²)/(D² − d²) + ν_h     K_s = (d² + d_i²)/(d² − d_i²) − ν_s
///     δ(ϑ) = δ + (α_s − α_h)·d·Δϑ       σ_hub = p·(D² + d²)/(D² − d²)       σ_shaft = −p·(d² + d_i²)/(d² − d_i²)
///     T = μ·p·π·d²·l/2                  F = μ·p·π·d·l
///
/// Ask at the loosest fit for what it holds, at the tightest for what it strains.
///
/// - Source: Lamé's thick cylinders as in Shigley, _Mechanical Engineering Design_, 9th ed., eq. 7-39 and 7-40.
/// - Valid: elastic, hub and shaft of one length, even temperature. A negative δ is play: no pressure, nothing held.
/// - Neglects: roughness that is pressed flat, the ends of the hub, creep of a plastic hub.
public final class PressFit {
    /// What one side of the fit is made of.
    ///
    /// @param youngMpa E (MPa)
    /// @param poisson ν (1)
    /// @param expansionPerK α (1/K)
    public record Stuff(double youngMpa, double poisson, double expansionPerK) {}

    private PressFit() {}

    /// {@return δ (mm) when both are this much warmer than when they were measured}
    public static double interferenceMm(
            double interferenceMm, double diameterMm, Stuff shaft, Stuff hub, double warmerK) {
        return interferenceMm + (shaft.expansionPerK - hub.expansionPerK) * diameterMm * warmerK;
    }

    /// {@return p between hub and shaft (MPa)}
    ///
    /// @param interferenceMm δ, shaft less bore, on the diameter (mm)
    /// @param innerMm d_i of a hollow shaft, 0 where it is solid (mm)
    /// @param diameterMm d of the joint (mm)
    /// @param outerMm D of the hub (mm)
    public static double pressureMpa(
            double interferenceMm, double innerMm, double diameterMm, double outerMm, Stuff shaft, Stuff hub) {
        double ofHub = (hubRatio(diameterMm, outerMm) + hub.poisson) / hub.youngMpa;
        double ofShaft = (shaftRatio(innerMm, diameterMm) - shaft.poisson) / shaft.youngMpa;
        return Math.max(0, interferenceMm) / (diameterMm * (ofHub + ofShaft));
    }

    /// {@return hoop stress at the hub's bore (MPa)}
    public static double hubHoopMpa(double pressureMpa, double diameterMm, double outerMm) {
        return pressureMpa * hubRatio(diameterMm, outerMm);
    }

    /// {@return hoop stress at the skin of the shaft (MPa), less than nothing: it is squeezed}
    public static double shaftHoopMpa(double pressureMpa, double innerMm, double diameterMm) {
        return -pressureMpa * shaftRatio(innerMm, diameterMm);
    }

    /// {@return stress at the hub's bore (MPa) to hold against its yield strength, by von Mises}
    public static double hubStressMpa(double pressureMpa, double diameterMm, double outerMm) {
        double hoop = hubHoopMpa(pressureMpa, diameterMm, outerMm);
        return Math.sqrt(hoop * hoop + hoop * pressureMpa + pressureMpa * pressureMpa);
    }

    /// {@return torque (N·m) that the fit holds}
    public static double torqueNm(double pressureMpa, double friction, double diameterMm, double lengthMm) {
        return axialN(pressureMpa, friction, diameterMm, lengthMm) * diameterMm / 2000;
    }

    /// {@return force along the shaft (N) that the fit holds, and that it takes to press it together}
    public static double axialN(double pressureMpa, double friction, double diameterMm, double lengthMm) {
        return friction * pressureMpa * Math.PI * diameterMm * lengthMm;
    }

    private static double hubRatio(double diameterMm, double outerMm) {
        return (outerMm * outerMm + diameterMm * diameterMm) / (outerMm * outerMm - diameterMm * diameterMm);
    }

    private static double shaftRatio(double innerMm, double diameterMm) {
        return (diameterMm * diameterMm + innerMm * innerMm) / (diameterMm * diameterMm - innerMm * innerMm);
    }
}
