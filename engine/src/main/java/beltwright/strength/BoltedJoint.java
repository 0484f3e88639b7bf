package beltwright.strength;

/// How screw and clamped parts share a force that pulls the joint apart.
///
///     k_b = A_d·A_t·E/(A_d·l_t + A_t·l_d)
///     k_m = 0.5774·π·E·d/(2·ln(5·(0.5774·l + 0.5·d)/(0.5774·l + 2.5·d)))
///     k = 0.5774·π·E·d/ln((1.155·t + D − d)·(D + d)/((1.155·t + D + d)·(D − d)))          1/k_m = Σ 1/k
///     C = k_b/(k_b + k_m)        F_b = F_i + C·F         F_m = F_i − (1 − C)·F
///     n_p = S_p·A_t/F_b          n_0 = F_i/((1 − C)·F)         n_L = (S_p·A_t − F_i)/(C·F)
///     n_f = S_e·(S_ut − σ_i)/(σ_a·(S_ut + S_e))         σ_a = C·F/(2·A_t)         σ_i = F_i/A_t
///
/// - Source: Shigley, _Mechanical Engineering Design_, 9th ed., eq. 8-22 and 8-28 to 8-30 (ex. 8-4); the cone as in
///   its solutions manual, p. 221; n_f is its eq. 8-38, from memory. Printed examples agree (BJ-31, BJ-37, BJ-40,
///   BJ-41, BJ-44 to BJ-46).
/// - Valid: k_m in one piece: parts of one material, a washer face 1.5·d wide. Parts that stay together.
/// - Neglects: plates too narrow for the cone of pressure under a head.
public final class BoltedJoint {
    private BoltedJoint() {}

    /// {@return k_b, stiffness of the screw (N/mm)}
    ///
    /// @param shankMm2 area of the plain shank (mm²)
    /// @param threadMm2 stress area of the thread (mm²)
    /// @param shankMm length of shank in the grip (mm)
    /// @param threadMm length of thread in the grip (mm)
    public static double screwStiffness(
            double shankMm2, double threadMm2, double shankMm, double threadMm, double youngMpa) {
        return shankMm2 * threadMm2 * youngMpa / (shankMm2 * threadMm + threadMm2 * shankMm);
    }

    /// {@return k_m, stiffness of the clamped parts (N/mm)}
    public static double partsStiffness(double majorMm, double gripMm, double youngMpa) {
        double l = 0.5774 * gripMm;
        return 0.5774 * Math.PI * youngMpa * majorMm / (2 * Math.log(5 * (l + 0.5 * majorMm) / (l + 2.5 * majorMm)));
    }

    /// {@return C, share of the force that the screw feels (1)}
    public static double screwShare(double screwStiffness, double partsStiffness) {
        return screwStiffness / (screwStiffness + partsStiffness);
    }

    /// {@return force in the screw (N) under a force that pulls the joint apart}
    public static double screwForceN(double preloadN, double screwShare, double pullN) {
        return preloadN + screwShare * pullN;
    }

    /// {@return k, stiffness (N/mm) of one part under a head, which presses it in a cone of 30°}
    ///
    /// @param coneMm D, where the cone starts: the face of head or washer (mm)
    /// @param holeMm d, diameter of the screw (mm)
    /// @param thickMm t, thickness of the part (mm)
    public static double coneStiffness(double coneMm, double holeMm, double thickMm, double youngMpa) {
        double t = 1.155 * thickMm;
        return 0.5774
                * Math.PI
                * youngMpa
                * holeMm
                / Math.log((t + coneMm - holeMm) * (coneMm + holeMm) / ((t + coneMm + holeMm) * (coneMm - holeMm)));
    }

    /// {@return stiffness (N/mm) of two parts one behind the other}
    public static double inSeries(double one, double other) {
        return one * other / (one + other);
    }

    /// {@return F_m, force (N) that still presses the parts together; below nothing they have parted}
    public static double clampN(double preloadN, double screwShare, double pullN) {
        return preloadN - (1 - screwShare) * pullN;
    }

    /// {@return n_0, how many times the pull it takes to part them (1)}
    public static double separationFactor(double preloadN, double screwShare, double pullN) {
        return preloadN / ((1 - screwShare) * pullN);
    }

    /// {@return n_p, strength of the screw over what it feels (1)}
    ///
    /// @param strengthMpa proof or yield strength (MPa)
    /// @param preloadN the highest preload that the key makes (N)
    public static double screwFactor(
            double strengthMpa, double stressAreaMm2, double preloadN, double screwShare, double pullN) {
        return strengthMpa * stressAreaMm2 / screwForceN(preloadN, screwShare, pullN);
    }

    /// {@return n_L, how many times the pull it takes to bring the screw to that strength (1)}
    public static double loadFactor(
            double strengthMpa, double stressAreaMm2, double preloadN, double screwShare, double pullN) {
        return (strengthMpa * stressAreaMm2 - preloadN) / (screwShare * pullN);
    }

    /// {@return n_f, how many times the pull, coming and going, it takes to tire the screw (1)}
    ///
    /// @param limitMpa S_e of the thread, notch counted in (MPa)
    /// @param pullN the highest pull; the lowest is none (N)
    public static double fatigueFactor(
            double limitMpa,
            double tensileMpa,
            double stressAreaMm2,
            double preloadN,
            double screwShare,
            double pullN) {
        double amplitude = screwShare * pullN / (2 * stressAreaMm2);
        return limitMpa * (tensileMpa - preloadN / stressAreaMm2) / (amplitude * (tensileMpa + limitMpa));
    }
}
