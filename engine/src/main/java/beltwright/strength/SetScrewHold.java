package beltwright.strength;

/// How much torque a set screw holds a pulley against.
///
///     steady: T = F·d/2, F from the table by size         reversing: T/4
///     two screws: F·(1.75 − 0.45·(β − 60)/120)             other seating torque: F·T/T_table
///     on a flat: T = p·d_t³/12                             in a drilled spot: T = τ·π/4·d_t²·d/2, p·d_t·t·d/2
///
/// The table gives cup points on a round shaft, tightened as it says, against steady torque. On a flat the tip can
/// only be turned by pressing one half of it into the flat: p on a half disc of the tip's diameter. That is safe but
/// small; what the screw grips by pressing comes on top and is not counted with it.
///
/// - Source: Shigley, _Mechanical Engineering Design_, 9th ed., table 7-4, from memory. Two charts that were read
///   agree: holding power at sizes 0, 1 and 2 (SS-05), seven of its seating torques (SS-01). Another public chart,
/// itself
///   approximate, prints 0.4 to 0.5 of the power from 1/4 in up. Two screws: a screw maker's chart, from memory. The
///   quarter under reversal is common practice, no source.
/// - Valid: alloy steel screws of 1.5 to 12.7 mm, shaft at least 10 points Rockwell C softer; two screws 60 to 180°
///   apart. Outside the sizes and angles the answer is NaN.
/// - Neglects: threads of a soft hub, which may strip before the screw seats; loosening by vibration.
public final class SetScrewHold {
    /// Share of the steady holding power that is left when the torque reverses (1). Common practice, no source.
    public static final double REVERSING = 0.25;

    /// Holding power of a flat point over that of a cup point (1), as a screw maker's catalogue prints it.
    public static final double FLAT_POINT = 0.92;

    private static final double INCH_MM = 25.4;
    private static final double LBF_N = 4.4482216152605;
    private static final double LBF_INCH_NM = 0.1129848290276;

    /// Diameter (in), seating torque (lbf·in), holding power (lbf).
    private static final double[][] CUP_POINT = {
        {0.0600, 1.0, 50},
        {0.0730, 1.8, 65},
        {0.0860, 1.8, 85},
        {0.0990, 5, 120},
        {0.1120, 5, 160},
        {0.1250, 10, 200},
        {0.1380, 10, 250},
        {0.1640, 20, 385},
        {0.1900, 36, 540},
        {0.2500, 87, 1000},
        {0.3125, 165, 1500},
        {0.3750, 290, 2000},
        {0.4375, 430, 2500},
        {0.5000, 620, 3000}
    };

    private SetScrewHold() {}

    /// {@return F, holding power of one cup point screw (N), between the sizes of the table in proportion}
    public static double holdingN(double screwMm) {
        return along(2, screwMm) * LBF_N;
    }

    /// {@return F (N) when the screw is tightened with another torque: holding goes with seating torque}
    public static double holdingN(double screwMm, double seatingNm) {
        return holdingN(screwMm) * seatingNm / seatingNm(screwMm);
    }

    /// {@return torque (N·m) that the table tightens this screw with}
    public static double seatingNm(double screwMm) {
        return along(1, screwMm) * LBF_INCH_NM;
    }

    /// {@return torque (N·m) that this holding power holds on this shaft while it stays steady}
    public static double steadyNm(double holdingN, double shaftMm) {
        return holdingN * shaftMm / 2000;
    }

    /// {@return torque (N·m) that it holds when the torque reverses, as driving and braking do}
    public static double reversingNm(double holdingN, double shaftMm) {
        return REVERSING * steadyNm(holdingN, shaftMm);
    }

    /// {@return holding power of two equal screws over that of one (1)}
    ///
    /// @param apartDeg β, angle between them around the shaft (°)
    public static double twoScrews(double apartDeg) {
        return apartDeg >= 60 && apartDeg <= 180 ? 1.75 - 0.45 * (apartDeg - 60) / 120 : Double.NaN;
    }

    /// {@return torque (N·m) at which a flat under the screw's tip gives}
    ///
    /// @param tipMm d_t, diameter of the tip (mm)
    /// @param pressureMpa p, what the softer of tip and shaft bears (MPa)
    public static double onFlatNm(double tipMm, double pressureMpa) {
        return pressureMpa * tipMm * tipMm * tipMm / 12_000;
    }

    /// {@return torque (N·m) at which a tip in a drilled spot shears off}
    public static double tipShearNm(double tipMm, double shearMpa, double shaftMm) {
        return shearMpa * Math.PI / 4 * tipMm * tipMm * shaftMm / 2000;
    }

    /// {@return torque (N·m) at which a tip crushes the wall of a drilled spot so deep}
    public static double tipBearingNm(double tipMm, double depthMm, double pressureMpa, double shaftMm) {
        return pressureMpa * tipMm * depthMm * shaftMm / 2000;
    }

    private static double along(int column, double screwMm) {
        double inch = screwMm / INCH_MM;
        int last = CUP_POINT.length - 1;
        if (!(inch >= CUP_POINT[0][0] && inch <= CUP_POINT[last][0])) {
            return Double.NaN;
        }
        int i = 0;
        while (i < last - 1 && inch >= CUP_POINT[i + 1][0]) {
            i++;
        }
        double share = (inch - CUP_POINT[i][0]) / (CUP_POINT[i + 1][0] - CUP_POINT[i][0]);
        return CUP_POINT[i][column] + share * (CUP_POINT[i + 1][column] - CUP_POINT[i][column]);
    }
}
