package beltwright.power;

/// What a stop takes: energy, time and way at a steady deceleration.
///
///     E = ½·m·v²        t = v/a        s = v²/(2·a)
///
/// - Source: statement of motion.
/// - Valid: level ground.
/// - Neglects: turning parts, air and rolling, which help, and the time a rider takes to pull the
///   trigger.
public final class Stopping {
    private Stopping() {}

    /// {@return energy that the brakes take (J)}
    public static double energyJ(double massKg, double speedMps) {
        return 0.5 * massKg * speedMps * speedMps;
    }

    /// {@return time to a stop (s)}
    public static double timeS(double speedMps, double decelerationMps2) {
        return speedMps / decelerationMps2;
    }

    /// {@return way to a stop (m)}
    public static double wayM(double speedMps, double decelerationMps2) {
        return speedMps * speedMps / (2 * decelerationMps2);
    }
}
