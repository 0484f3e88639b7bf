package beltwright.strength;

/// What teeth of a pulley and lugs of a wheel bear.
///
///     tooth: F = k·Te/z_m        τ = F/(s·b)        p = F/(h·b)        σ = 6·F·y/(s²·b)
///     lug:   F = T/(n·r)         τ = F/(w·l)        p = F/(h·l)
///
/// - Source: statics.
/// - Valid: n lugs that really touch: where play differs, count one less than there are, or one.
/// - Neglects: the round at a tooth's root. How unevenly teeth share the pull (k, 1 for even) has no published
///   number.
public final class ToothShear {
    private ToothShear() {}

    /// {@return pull on the worst tooth (N)}
    ///
    /// @param teethInMesh z_m, whole teeth (1)
    /// @param uneven k, worst over mean (1)
    public static double toothN(double effectiveN, double teethInMesh, double uneven) {
        return uneven * effectiveN / teethInMesh;
    }

    /// {@return force on each lug (N)}
    ///
    /// @param atMm r, from the axle to the middle of the touching face (mm)
    public static double lugN(double torqueNm, double lugs, double atMm) {
        return 1000 * torqueNm / (lugs * atMm);
    }

    /// {@return τ (MPa) over the root of tooth or lug}
    public static double shearMpa(double forceN, double rootMm, double faceMm) {
        return forceN / (rootMm * faceMm);
    }

    /// {@return p (MPa) on the flank of tooth or lug}
    public static double bearingMpa(double forceN, double heightMm, double faceMm) {
        return forceN / (heightMm * faceMm);
    }

    /// {@return σ (MPa) at the root, bent by a force so far above it}
    ///
    /// @param aboveMm y, from the root to the force (mm)
    public static double bendingMpa(double forceN, double aboveMm, double rootMm, double faceMm) {
        return 6 * forceN * aboveMm / (rootMm * rootMm * faceMm);
    }
}
