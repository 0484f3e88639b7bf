package beltwright.strength;

/// What a steel shaft or axle stands when its load comes again and again.
///
///     q = 1/(1 + √a/√r)          Kf = 1 + q·(Kt − 1)
///     Se = ka·kb·ke·0.5·Sut         ka = 2.70·Sut^−0.265 (kpsi, machined)      kb = 0.879·d^−0.107 (in)
///     standing still: kb of 0.370·d, at most 1          thread: Kf from a table
///     S(N) = f·Sut·(Se/(f·Sut))^((log N − 3)/3)          n = 1/(σ_a/Se + σ_m/Sut)
///
/// A hanger's axle does not turn: its bending swells and fades. A motor's shaft turns: its bending
/// reverses each turn.
///
/// - Source: Shigley, _Mechanical Engineering Design_, 9th ed.: √a is eq. 6-35a, ka table 6-2, kb eq. 6-20, a round
///   that stands still eq. 6-24; the rest of ch. 6 and the ranges from memory, held against its worked examples.
///   Kf of threads is its table 8-16, from memory.
/// - Valid: steel of 350 to 1400 MPa, bending, shafts of 3 to 50 mm, 10³ to 10⁶ turns.
/// - Neglects: corrosion, plating, fretting under a press fit.
public final class Fatigue {
    /// Kf at the root of a rolled thread of class 8.8 or better (1).
    public static final double ROLLED_THREAD = 3.0;

    /// Kf at the root of a cut thread of class 8.8 or better (1).
    public static final double CUT_THREAD = 3.8;

    /// ke where 99 of 100 shafts must last (1).
    public static final double RELIABLE_99 = 0.814;

    private static final double KPSI_MPA = 6.894757;
    private static final double INCH_MM = 25.4;

    private Fatigue() {}

    /// {@return √a of this steel in bending (√mm)}
    public static double notchConstant(double tensileMpa) {
        double s = tensileMpa / KPSI_MPA;
        return Math.sqrt(INCH_MM) * (0.245799 - 0.307794e-2 * s + 0.150874e-4 * s * s - 0.266978e-7 * s * s * s);
    }

    /// {@return √a of this steel in twisting (√mm)}
    public static double twistNotchConstant(double tensileMpa) {
        double s = tensileMpa / KPSI_MPA;
        return Math.sqrt(INCH_MM) * (0.190 - 0.251e-2 * s + 0.135e-4 * s * s - 0.267e-7 * s * s * s);
    }

    /// {@return q_s, how much of a notch this steel feels in twisting (1)}
    public static double twistNotchSensitivity(double tensileMpa, double radiusMm) {
        return 1 / (1 + twistNotchConstant(tensileMpa) / Math.sqrt(radiusMm));
    }

    /// {@return q, how much of a notch this steel feels (1)}
    public static double notchSensitivity(double tensileMpa, double radiusMm) {
        return 1 / (1 + notchConstant(tensileMpa) / Math.sqrt(radiusMm));
    }

    /// {@return Kf, by how much a step multiplies the stress (1)}
    ///
    /// @param formFactor Kt of the step, from a chart (1)
    public static double notchFactor(double formFactor, double notchSensitivity) {
        return 1 + notchSensitivity * (formFactor - 1);
    }

    /// {@return endurance limit of a polished test bar (MPa)}
    public static double barLimitMpa(double tensileMpa) {
        return 0.5 * tensileMpa;
    }

    /// {@return ka of a machined or drawn surface (1)}
    public static double surfaceFactor(double tensileMpa) {
        return 2.70 * Math.pow(tensileMpa / KPSI_MPA, -0.265);
    }

    /// {@return kb of a turning shaft (1)}
    public static double sizeFactor(double diameterMm) {
        return 0.879 * Math.pow(diameterMm / INCH_MM, -0.107);
    }

    /// {@return kb of a round axle that does not turn (1): little of its skin sees the highest stress}
    ///
    /// The formula exceeds 1 below 7.6 mm; more than 1 is not counted on.
    public static double standingSizeFactor(double diameterMm) {
        return Math.min(1, sizeFactor(0.370 * diameterMm));
    }

    /// {@return Se, endurance limit of the part itself (MPa)}
    public static double limitMpa(double tensileMpa, double surface, double size, double reliability) {
        return surface * size * reliability * barLimitMpa(tensileMpa);
    }

    /// {@return amplitude (MPa) that breaks the bar after so many turns}
    ///
    /// @param share f, amplitude for a thousand turns over tensile strength (1)
    public static double amplitudeMpa(double tensileMpa, double share, double limitMpa, double turns) {
        double start = share * tensileMpa;
        return start * Math.pow(limitMpa / start, (Math.log10(turns) - 3) / 3);
    }

    /// {@return turns until this amplitude breaks the bar}
    public static double turns(double tensileMpa, double share, double limitMpa, double amplitudeMpa) {
        double start = share * tensileMpa;
        return Math.pow(10, 3 + 3 * Math.log(amplitudeMpa / start) / Math.log(limitMpa / start));
    }

    /// {@return n, factor of safety on the Goodman line (1)}
    public static double goodman(double amplitudeMpa, double meanMpa, double limitMpa, double tensileMpa) {
        return 1 / (amplitudeMpa / limitMpa + meanMpa / tensileMpa);
    }

    /// {@return n (1) of an axle that stands still while its bending goes from low to high and back}
    ///
    /// Kf multiplies amplitude and mean alike, which is safe.
    public static double standingFactor(
            double lowMpa, double highMpa, double notchFactor, double limitMpa, double tensileMpa) {
        return goodman(
                notchFactor * Math.abs(highMpa - lowMpa) / 2,
                notchFactor * Math.abs(highMpa + lowMpa) / 2,
                limitMpa,
                tensileMpa);
    }

    /// {@return n (1) of a shaft that turns under a steady bend, which reverses each turn}
    public static double turningFactor(double bendingMpa, double notchFactor, double limitMpa) {
        return limitMpa / (notchFactor * bendingMpa);
    }
}
