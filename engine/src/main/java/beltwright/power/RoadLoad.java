package beltwright.power;

/// What the road asks of a board at steady speed.
///
///     F = m·g·sin β + c·m·g·cos β + ½·ρ·A·v²       tan β = grade
///
/// - Source: the road-load equation of the cycling power model of Martin et al., _J. Appl. Biomech._ 14 (1998) 276,
///   without its bearing term.
/// - Valid: still air, steady speed.
/// - Neglects: wind, bearing drag, acceleration.
public final class RoadLoad {
    public static final double G = 9.80665; // standard gravity (m/s²)

    private RoadLoad() {}

    /// {@return force along the slope (N) of weight on a grade and of rolling}
    public static double climbN(double massKg, double gradePercent, double rollingPercent) {
        double beta = Math.atan(gradePercent / 100);
        return massKg * G * (Math.sin(beta) + rollingPercent / 100 * Math.cos(beta));
    }

    /// {@return air drag (N)}
    public static double dragN(double airDensityKgM3, double dragAreaM2, double speedMps) {
        return 0.5 * airDensityKgM3 * dragAreaM2 * speedMps * speedMps;
    }
}
