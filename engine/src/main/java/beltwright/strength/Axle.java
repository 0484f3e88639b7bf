package beltwright.strength;

/// Bending of a hanger's axle, a cantilever that does not turn.
///
///     R_o = F·(s − s_i)/(s_o − s_i)        R_i = F − R_o        M(s) = Σ R·(s_R − s), bearings outward of s
///     couple on the wheel:  R_o = M/(s_o − s_i)       R_i = −R_o
///     |M| = √(M_up² + M_fore²)             amplitude = |M_1 − M_2|/2        mean = |M_1 + M_2|/2
///
/// Stations run outward along the axle from any one face, as in the layout. Wheel load and belt pull act on the
/// wheel; the axle feels them where the two bearings sit. The wheel's load points up, the belt's pull has a part up
/// and a part fore. A motor's shaft turns: there the amplitude is |M| and the mean is nothing.
///
/// - Source: statics of a beam; adding the two planes at right angles as in any text on shafts.
/// - Valid: a stiff wheel on two bearings, forces across the axle. Amplitude and mean are each taken at their own
///   worst point of the round, which is safe.
/// - Neglects: how far a bearing's ring spreads its load along the axle; the core spacer, which stiffens it.
public final class Axle {
    private Axle() {}

    /// {@return part of the force (N) that the outer bearing takes; less than nothing where it pulls the other way}
    ///
    /// @param forceN force on the wheel (N)
    /// @param atMm station of that force (mm)
    /// @param innerMm station of the inner bearing's middle (mm)
    /// @param outerMm station of the outer bearing's middle (mm)
    public static double outerN(double forceN, double atMm, double innerMm, double outerMm) {
        return forceN * (atMm - innerMm) / (outerMm - innerMm);
    }

    /// {@return part of the force (N) that the inner bearing takes}
    public static double innerN(double forceN, double atMm, double innerMm, double outerMm) {
        return forceN - outerN(forceN, atMm, innerMm, outerMm);
    }

    /// {@return bending (N·m) in one plane at a section, by one force on the wheel}
    public static double bendingNm(double sectionMm, double forceN, double atMm, double innerMm, double outerMm) {
        double outer = outerN(forceN, atMm, innerMm, outerMm);
        return ((forceN - outer) * Math.max(0, innerMm - sectionMm) + outer * Math.max(0, outerMm - sectionMm)) / 1000;
    }

    /// {@return force (N) on the outer bearing by a couple (N·m) that tips the wheel's end up; the inner one takes as
    /// much the other way}
    public static double coupleN(double coupleNm, double innerMm, double outerMm) {
        return 1000 * coupleNm / (outerMm - innerMm);
    }

    /// {@return bending (N·m) in one plane at a section, by a couple on the wheel}
    public static double coupledNm(double sectionMm, double coupleNm, double innerMm, double outerMm) {
        return coupleN(coupleNm, innerMm, outerMm)
                * (Math.max(0, outerMm - sectionMm) - Math.max(0, innerMm - sectionMm))
                / 1000;
    }

    /// {@return length of a vector of two parts at right angles}
    public static double resultant(double up, double fore) {
        return Math.hypot(up, fore);
    }

    /// {@return amplitude of a load that goes between two states, each with a part up and a part fore}
    public static double amplitude(double upOne, double foreOne, double upTwo, double foreTwo) {
        return Math.hypot(upOne - upTwo, foreOne - foreTwo) / 2;
    }

    /// {@return mean of a load that goes between two states}
    public static double mean(double upOne, double foreOne, double upTwo, double foreTwo) {
        return Math.hypot(upOne + upTwo, foreOne + foreTwo) / 2;
    }

    /// {@return diameter at the root of an external thread, d3 = d − 1.226869·p (mm)}
    ///
    /// Source: ISO 724 and ISO 68-1, from memory.
    public static double rootMm(double majorMm, double pitchMm) {
        return majorMm - 1.226869 * pitchMm;
    }

    /// {@return axial stress (MPa) by the nut's preload in this section}
    public static double axialMpa(double preloadN, double diameterMm) {
        return 4 * preloadN / (Math.PI * diameterMm * diameterMm);
    }

    /// {@return factor against yielding (1) under bending, pull and twist}
    ///
    /// A step does not count: steel flows there a little and no more.
    public static double yieldFactor(double yieldMpa, double bendingMpa, double axialMpa, double twistMpa) {
        return yieldMpa / ShaftStress.misesMpa(bendingMpa + axialMpa, twistMpa);
    }
}
