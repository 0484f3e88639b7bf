package beltwright.power;

/// How much harder a motor may work for a while, seen from its heat alone.
///
///     for a time t, then cold again:   P/P_0 = √(1/(1 − e^(−t/τ)))
///     t on, s off, for ever:           P/P_0 = √((1 − e^(−t/τ − s/τ_s))/(1 − e^(−t/τ)))
///     a course in legs:                P_rms = √(Σ t·(a² + a·b + b²)/3 / Σ t)      each leg from a to b
///
/// P_0 is what the motor holds for ever. P may be a torque or a current as well; heat goes with
/// its square.
///
/// - Source: one-body warming as in Dubey, electrical drives, ch. 4; the formulas follow from it
///   and reproduce its examples.
/// - Valid: copper loss far above iron loss; one time constant τ while running, another τ_s at
///   rest.
/// - Neglects: that a winding warms faster than the can around it.
public final class Warming {
    private Warming() {}

    /// A leg of a course, from one value to another in a straight line; the unit of time is the
    /// same for all legs.
    public record Leg(double time, double from, double to) {}

    /// {@return P/P_0 (1) for one stretch from cold}
    public static double onceFactor(double time, double constant) {
        return Math.sqrt(1 / (1 - Math.exp(-time / constant)));
    }

    /// {@return P/P_0 (1) where work and rest follow each other for ever}
    public static double repeatedFactor(double on, double onConstant, double off, double offConstant) {
        return Math.sqrt((1 - Math.exp(-on / onConstant - off / offConstant)) / (1 - Math.exp(-on / onConstant)));
    }

    /// {@return the steady value that warms as much as this course}
    public static double rootMeanSquare(Iterable<Leg> course) {
        double squares = 0;
        double time = 0;
        for (var leg : course) {
            squares += leg.time * (leg.from * leg.from + leg.from * leg.to + leg.to * leg.to) / 3;
            time += leg.time;
        }
        return Math.sqrt(squares / time);
    }
}
