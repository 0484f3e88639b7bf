package beltwright.layout;

import java.util.function.DoubleUnaryOperator;

/// How a hanger stands under a leaning deck, seen from the deck: x forward, y left, z up from the axle's middle at
/// rest.
///
/// The deck leans by θ about its length while the axle stays parallel to the ground, so the hanger turns about its
/// steering axis by ψ, and steers by σ:
///
///     tan ψ = tan θ/cos λ        tan σ = tan λ·sin θ
///
/// λ is the steering axis above the baseplate, rising towards the board's end. A double kingpin turns by ψ/2 about each
/// of its two axes.
///
/// - Source: rigid-body geometry of an inclined hinge; the steering relation as in Hubbard, _Lateral Dynamics and
///   Stability of the Skateboard_, J. Applied Mechanics 1979 (from memory).
/// - Valid: rigid pivots, both axes of a double kingpin alike, λ and θ below 90°.
///
/// @param axisRad λ
/// @param rakeMm steering axis to axle line
/// @param linkMm between two steering axes; 0 for one
public record Steering(double axisRad, double rakeMm, double linkMm) {

    /// {@return the turn of the hanger about its steering axis (rad)}
    public double turnRad(double leanRad) {
        return Math.atan(Math.tan(leanRad) / Math.cos(axisRad));
    }

    /// {@return the steering angle of the axle over the ground (rad)}
    public double steerRad(double leanRad) {
        return Math.atan(Math.tan(axisRad) * Math.sin(leanRad));
    }

    /// A body that turns about an axle-wise line, as the deck meets it: two end circles.
    ///
    /// @param xMm axis ahead of the axle
    /// @param zMm axis above the axle
    /// @param fromMm nearer end, left positive
    /// @param toMm farther end
    public record Round(double xMm, double zMm, double fromMm, double toMm, double radiusMm) {}

    /// The deck over the hanger: everything above `underMm`, within half its width, ahead of its end.
    ///
    /// @param underMm underside above the axle at rest
    /// @param behindMm end of the deck behind the axle
    public record Board(double underMm, double halfWidthMm, double behindMm) {
        double distance(double x, double y, double z) {
            double below = underMm - z;
            double beside = Math.abs(y) - halfWidthMm;
            double beyond = -behindMm - x;
            double nearest = Math.max(Math.max(below, beside), beyond);
            if (nearest <= 0) {
                return nearest;
            }
            double under = Math.max(below, 0);
            double aside = Math.max(beside, 0);
            double behind = Math.max(beyond, 0);
            return Math.sqrt(under * under + aside * aside + behind * behind);
        }
    }

    private static final int AROUND = 24;
    private static final int ALONG = 4;
    private static final double STEP_RAD = Math.toRadians(15);
    private static final int NARROWINGS = 18; // leaves 0.01 mm of a body 70 mm long
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /// {@return the least distance between body and deck from rest to full lean, to either side (mm)}
    public double leastMm(Round body, Board board, double fullLeanRad) {
        double least = Double.POSITIVE_INFINITY;
        int steps = Math.max(1, (int) Math.ceil(Math.abs(fullLeanRad) / STEP_RAD));
        for (int i = steps; i >= 1; i--) { // full lean first: it is likely to decide
            double turn = turnRad(fullLeanRad * i / steps);
            least = Math.min(least, new Pose(body, board, turn).least(least));
            least = Math.min(least, new Pose(body, board, -turn).least(least));
        }
        return Math.min(least, new Pose(body, board, 0).least(least));
    }

    /// The body turned with the hanger.
    private final class Pose {
        private final Board board;
        private final double radius;
        private final double[] from;
        private final double[] to;
        private final double[] e1;
        private final double[] e2;

        Pose(Round body, Board board, double turn) {
            this.board = board;
            this.radius = body.radiusMm();
            this.from = turned(new double[] {body.xMm(), body.fromMm(), body.zMm()}, turn, true);
            this.to = turned(new double[] {body.xMm(), body.toMm(), body.zMm()}, turn, true);
            this.e1 = turned(new double[] {1, 0, 0}, turn, false);
            this.e2 = turned(new double[] {0, 0, 1}, turn, false);
        }

        /// How far the body reaches in one direction: the farther end, and its circle seen from there.
        private double reach(int axis, int sign) {
            return Math.max(sign * from[axis], sign * to[axis]) + radius * Math.hypot(e1[axis], e2[axis]);
        }

        /// Where the whole body is under the deck, its highest point decides. Elsewhere: coarse steps around, then the
        /// valley around the best of them.
        ///
        /// @param known a distance found elsewhere: where the valley cannot reach below it, it is not searched
        double least(double known) {
            double below = board.underMm() - reach(2, 1);
            double beside = Math.max(reach(1, 1), reach(1, -1)) - board.halfWidthMm();
            double beyond = reach(0, -1) - board.behindMm();
            if (beside < 0 && beyond < 0 && below >= Math.max(beside, beyond)) {
                return below;
            }
            double best = Double.POSITIVE_INFINITY;
            double angle = 0;
            for (int i = 0; i < AROUND; i++) {
                double a = 2 * Math.PI * i / AROUND;
                var line = new Along(a);
                for (int k = 0; k <= ALONG; k++) {
                    double d = line.at((double) k / ALONG);
                    if (d < best) {
                        best = d;
                        angle = a;
                    }
                }
            }
            if (Double.isInfinite(best)) {
                return Double.NaN;
            }
            double step = 2 * Math.PI / AROUND;
            if (best - beyondCoarse() > known) {
                return best;
            }
            return Math.min(best, lowest(a -> new Along(a).least(), angle - step, angle + step));
        }

        /// {@return how far a point of the body can be from the nearest of the coarse ones, and so how much nearer to
        /// the
        /// deck (mm)}
        private double beyondCoarse() {
            double length = Math.sqrt((to[0] - from[0]) * (to[0] - from[0])
                    + (to[1] - from[1]) * (to[1] - from[1])
                    + (to[2] - from[2]) * (to[2] - from[2]));
            return radius * Math.PI / AROUND + length / ALONG / 2;
        }

        /// One line along the body.
        private final class Along {
            private final double x;
            private final double y;
            private final double z;

            Along(double angle) {
                double c = radius * Math.cos(angle);
                double s = radius * Math.sin(angle);
                x = from[0] + c * e1[0] + s * e2[0];
                y = from[1] + c * e1[1] + s * e2[1];
                z = from[2] + c * e1[2] + s * e2[2];
            }

            double at(double share) {
                return board.distance(
                        x + share * (to[0] - from[0]), y + share * (to[1] - from[1]), z + share * (to[2] - from[2]));
            }

            /// {@return the least distance; the deck is convex, so there is one valley}
            double least() {
                return Math.min(Math.min(at(0), at(1)), lowest(this::at, 0, 1));
            }
        }
    }

    /// {@return the bottom of one valley, by golden section}
    private static double lowest(DoubleUnaryOperator depth, double from, double to) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = depth.applyAsDouble(left);
        double atRight = depth.applyAsDouble(right);
        for (int i = 0; i < NARROWINGS; i++) {
            if (atLeft < atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = depth.applyAsDouble(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = depth.applyAsDouble(right);
            }
        }
        return Math.min(atLeft, atRight);
    }

    /// Turns a point, or a direction, with the hanger.
    private double[] turned(double[] p, double turn, boolean point) {
        double away = point ? 1 : 0;
        if (linkMm == 0) {
            return about(p, away * -rakeMm, turn);
        }
        return about(about(p, away * -rakeMm, turn / 2), away * (linkMm - rakeMm), turn / 2);
    }

    /// Rodrigues' rotation about the steering direction through the point `offset` along the normal from the axle.
    private double[] about(double[] p, double offset, double turn) {
        double cos = Math.cos(axisRad);
        double sin = Math.sin(axisRad);
        double ox = offset * sin;
        double oz = offset * cos;
        double x = p[0] - ox;
        double y = p[1];
        double z = p[2] - oz;
        double ux = -cos;
        double uz = sin;
        double along = ux * x + uz * z;
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return new double[] {
            ox + x * c - uz * y * s + ux * along * (1 - c),
            y * c + (uz * x - ux * z) * s,
            oz + z * c + ux * y * s + uz * along * (1 - c)
        };
    }
}
