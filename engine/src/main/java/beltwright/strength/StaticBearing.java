package beltwright.strength;

/// How a bearing stands a shock, how far a wheel rolls on it, and what a pull beyond two bearings does to them.
///
///     P0 = max(Fr, 0.6·Fr + 0.5·Fa)      s0 = C0/P0      km = L10·π·D
///     front = F·(a + b)/b                rear = F·a/b, the other way
///
/// - Source: ISO 76 for deep groove ball bearings as a bearing handbook prints it; statics.
/// - Valid: D the wheel's diameter as worn as it may be; the motor's shaft stiff, its bearings b apart, the pull a
///   before the front one.
/// - Neglects: the weight of can and shaft; misalignment.
public final class StaticBearing {
    private static final double RADIAL = 0.6;
    private static final double AXIAL = 0.5;

    private StaticBearing() {}

    /// {@return P0, the standing radial load (N) that dents the bearing as much}
    public static double equivalentN(double radialN, double axialN) {
        return Math.max(radialN, RADIAL * radialN + AXIAL * axialN);
    }

    /// {@return s0 (1); less than 1 leaves dents}
    public static double safety(double staticRatingN, double equivalentN) {
        return staticRatingN / equivalentN;
    }

    /// {@return how far (km) a wheel of this diameter rolls in so many millions of turns}
    public static double lifeKm(double millionTurns, double wheelMm) {
        return millionTurns * Math.PI * wheelMm;
    }

    /// {@return what the front bearing of a motor bears (N): more than the pull itself}
    ///
    /// @param overhangMm a, from the front bearing out to the belt's middle (mm)
    /// @param apartMm b, between the bearings (mm)
    public static double frontN(double pullN, double overhangMm, double apartMm) {
        return pullN * (overhangMm + apartMm) / apartMm;
    }

    /// {@return what the rear bearing bears (N), against the pull}
    public static double rearN(double pullN, double overhangMm, double apartMm) {
        return pullN * overhangMm / apartMm;
    }

    /// {@return bending of the shaft at the front bearing (N·m)}
    public static double bendingNm(double pullN, double overhangMm) {
        return pullN * overhangMm / 1000;
    }
}
