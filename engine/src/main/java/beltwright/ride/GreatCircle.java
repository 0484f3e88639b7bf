package beltwright.ride;

/// How far it is from one place on the earth to another, and along a road that rises between them.
///
///     a = sin²(Δφ/2) + cos φ₁·cos φ₂·sin²(Δλ/2)     h = 2·R·asin √a     s = √(h² + Δz²)
///
/// - Source: haversine formula (common practice); R is the mean radius of the earth by the IUGG, 6371.0088 km, the
///   third of the sum of twice the greater and once the lesser half axis; printed distances: RL-20 to RL-23.
/// - Valid: anywhere; within about 0.5 % of the distance on the flattened earth.
/// - Neglects: that the earth is flattened, and that a road bends between two points.
public final class GreatCircle {
    static final double RADIUS_M = 6_371_008.8;

    private GreatCircle() {}

    /// {@return the distance at sea level (m)}; places in degrees
    public static double distanceM(double latitude1, double longitude1, double latitude2, double longitude2) {
        double north = Math.sin(Math.toRadians(latitude2 - latitude1) / 2);
        double east = Math.sin(Math.toRadians(longitude2 - longitude1) / 2);
        double a =
                north * north + Math.cos(Math.toRadians(latitude1)) * Math.cos(Math.toRadians(latitude2)) * east * east;
        return 2 * RADIUS_M * Math.asin(Math.min(1, Math.sqrt(a))); // rounding can lift it a hair above 1
    }

    /// {@return the way along an even slope (m)}
    ///
    /// @param horizontalM at sea level
    /// @param riseM below zero downhill
    public static double slopeM(double horizontalM, double riseM) {
        return Math.hypot(horizontalM, riseM);
    }

    /// {@return how much an even slope of this length rises (m)}
    ///
    /// @param alongM along the slope
    /// @param gradePercent rise over run
    public static double riseM(double alongM, double gradePercent) {
        return alongM * Math.sin(Math.atan(gradePercent / 100));
    }
}
