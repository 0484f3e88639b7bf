package beltwright.layout;

/// Distances between the simple outlines that a drive is made of. A negative distance is an overlap.
public final class Clearance {
    private Clearance() {}

    /// Distance between two bodies that are apart by `a` in one direction and by `b` at right angles to it.
    public static double apart(double a, double b) {
        return a > 0 && b > 0 ? Math.hypot(a, b) : Math.max(a, b);
    }

    /// {@return distance from a point to a rectangle around the origin (mm), negative inside}
    public static double toRectangle(double x, double z, double halfDepth, double halfHeight) {
        return apart(Math.abs(x) - halfDepth, Math.abs(z) - halfHeight);
    }

    /// {@return distance from a point to a circle around the origin (mm), negative inside}
    public static double toCircle(double x, double z, double radius) {
        return Math.hypot(x, z) - radius;
    }

    /// Distance of a disc from a kerb edge at the moment the wheel touches that edge.
    ///
    /// The kerb fills everything ahead of its edge and below its top. The edge touches the wheel where
    /// x = √(R² − (R − h)²). No wheel rolls over a kerb as high as its axle: then the distance is R − h less the
    /// radius, which is no clearance.
    ///
    /// @param x centre of the disc from the axle, towards the kerb (mm)
    /// @param z centre of the disc above the axle (mm)
    /// @param radius of the disc (mm)
    /// @param wheelRadius R (mm)
    /// @param kerb h, height of the kerb (mm)
    public static double toKerb(double x, double z, double radius, double wheelRadius, double kerb) {
        if (kerb >= wheelRadius) {
            return wheelRadius - kerb - radius;
        }
        double edge = Math.sqrt(wheelRadius * wheelRadius - (wheelRadius - kerb) * (wheelRadius - kerb));
        return apart(edge - x, z - (kerb - wheelRadius)) - radius;
    }

    /// Distance of a disc from the slope under it while a ramp crest passes between the axles.
    ///
    /// The slope under the near wheel tilts up towards the disc by α = φ·(1 − x/w) just before the crest reaches it
    /// (small angles, the crest at the foot of the disc). A disc outside the wheelbase never meets it: α = 0.
    ///
    /// @param x centre of the disc from the near axle, towards the other axle (mm)
    /// @param crestRad φ, change of slope (rad)
    /// @param wheelbase w (mm)
    public static double toCrest(
            double x, double z, double radius, double wheelRadius, double crestRad, double wheelbase) {
        double alpha = x > 0 ? crestRad * (1 - x / wheelbase) : 0;
        return wheelRadius - x * Math.sin(alpha) + z * Math.cos(alpha) - radius;
    }
}
