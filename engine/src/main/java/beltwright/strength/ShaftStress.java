package beltwright.strength;

/// Stress in a round shaft or axle.
///
///     σ = 32·M/(π·d³)        τ = 16·T/(π·d³)        σ_1 = σ/2 + √((σ/2)² + τ²)
///     σ_v = √(σ² + 3·τ²)
///
/// - Source: elastic beam, as in any text on machine design.
/// - Valid: solid round section away from steps, holes and flats.
/// - Neglects: transverse shear; a step multiplies the stress, see `Fatigue`.
public final class ShaftStress {
    private ShaftStress() {}

    /// {@return σ of bending (MPa)}
    public static double bendingMpa(double bendingNm, double diameterMm) {
        return 32_000 * bendingNm / (Math.PI * diameterMm * diameterMm * diameterMm);
    }

    /// {@return τ of twisting (MPa)}
    public static double twistMpa(double torqueNm, double diameterMm) {
        return 16_000 * torqueNm / (Math.PI * diameterMm * diameterMm * diameterMm);
    }

    /// {@return σ_1, the largest normal stress (MPa) of both together}
    public static double largestMpa(double bendingMpa, double twistMpa) {
        return bendingMpa / 2 + Math.hypot(bendingMpa / 2, twistMpa);
    }

    /// {@return σ_v, the pull (MPa) that strains ductile steel as much as both together}
    public static double misesMpa(double normalMpa, double shearMpa) {
        return Math.sqrt(normalMpa * normalMpa + 3 * shearMpa * shearMpa);
    }
}
