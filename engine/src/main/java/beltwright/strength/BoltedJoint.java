package beltwright.strength;

/// How screw and clamped parts share a force that pulls the joint apart.
///
///     k_b = A_d·A_t·E/(A_d·l_t + A_t·l_d)
///     k_m = 0.5774·π·E·d/(2·ln(5·(0.5774·l + 0.5·d)/(0.5774·l + 2.5·d)))
///     C = k_b/(k_b + k_m)        F_b = F_i + C·F
///
/// - Source: Shigley, _Mechanical Engineering Design_, 9th ed., ch. 8 (eq. 8-22 and ex. 8-4).
/// - Valid: parts of one material, a washer face 1.5·d wide, parts that stay together.
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
}
