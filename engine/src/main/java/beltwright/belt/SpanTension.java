package beltwright.belt;

/// Belt tension seen from one free span: as a pluck frequency and as a force at a stated deflection.
///
///     T = 4·m′·L²·f²       f = √(T/m′)/(2·L)       F = 4·T·δ/L
///
/// - Source: the string formula as in a belt maker's technical manual, worked example on its p. 44. The deflection
/// force
///   is the statics of a taut string; that manual asks about a seventh more, a twentieth of the effective tension.
/// - Valid: 100 to 1000 Hz; deflection up to a fiftieth of the span.
/// - Neglects: bending stiffness of the belt, which makes a reading high, so the belt is looser than it sounds.
public final class SpanTension {
    /// Static tension as a share of the worst effective tension: half of the 1.1 that a belt maker's technical manual,
    /// p. 44, asks of the shaft force. That it keeps the slack side from jumping is habit.
    public static final double STATIC_SHARE = 0.55;

    /// Tension to set a new belt to, over the least: it gives some up in its first hours. Common practice, no source.
    public static final double FRESH = 1.25;

    /// Tension to keep over half of the worst pull, so that the slack span stays taut: five readings may lie 5 % apart,
    /// 2.5 % either way in hertz, which is a twentieth of the tension. Habit.
    public static final double TAUT = 1.05;

    private SpanTension() {}

    /// @param tensionN static span tension (N)
    /// @param massKgM belt mass per length (kg/m)
    /// @param spanMm free span (mm)
    /// @return pluck frequency (Hz)
    public static double frequencyHz(double tensionN, double massKgM, double spanMm) {
        return Math.sqrt(tensionN / massKgM) / (2 * spanMm / 1000);
    }

    /// {@return static span tension (N) of a span that sounds at this frequency}
    public static double tensionN(double frequencyHz, double massKgM, double spanMm) {
        double spanM = spanMm / 1000;
        return 4 * massKgM * spanM * spanM * frequencyHz * frequencyHz;
    }

    /// {@return the force at mid-span (N) that deflects it so far}
    public static double deflectionForceN(double tensionN, double deflectionMm, double spanMm) {
        return 4 * tensionN * deflectionMm / spanMm;
    }

    /// {@return the pull on either shaft (N) by both spans, taken as parallel}
    public static double shaftForceN(double tightN, double slackN) {
        return tightN + slackN;
    }

    /// {@return least tension at rest (N) for this worst effective tension}
    public static double leastN(double worstEffectiveN) {
        return STATIC_SHARE * worstEffectiveN;
    }

    /// Tension at rest (N) that keeps the slack span taut under this worst effective tension.
    ///
    ///     slack = T − Te/2 > 0          T_taut = 1.05·Te/2
    ///
    /// - Source: tight side less slack side is Te, their sum stays 2·T, as in a belt maker's technical
    ///   manual; the reserve is habit.
    /// - Valid: both pulleys stand still along the line between them, and the spans are alike.
    /// - Neglects: run-out, which is why the belt is set where it is loosest; what a new belt gives up.
    public static double tautN(double worstEffectiveN) {
        return TAUT * worstEffectiveN / 2;
    }

    /// {@return the tension to start with (N) for this worst effective tension}
    public static double startN(double worstEffectiveN) {
        return FRESH * leastN(worstEffectiveN);
    }
}
