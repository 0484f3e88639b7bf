package beltwright.belt;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/// The way of a belt around drive and driven pulley, with or without an idler, followed along its pitch line.
///
/// Without an idler it is [PitchLine]. With one, the three circles are walked in turn; the tangent between circle i and
/// the next has the heading φ, and what is wrapped is the turn between two headings:
///
///     sin(φ − θ) = (o_i·r_i − o_j·r_j)/d        span = √(d² − (o_i·r_i − o_j·r_j)²)
///     L = Σ span + Σ r·wrap                      o = +1 inside the loop, −1 on the back of the belt
///
/// θ and d are direction and distance from centre to centre.
///
/// - Source: plane geometry of common tangents; without an idler it falls back on Shigley eq. 17-1 and 17-2.
/// - Valid: an idler that stands still and touches one span; taut spans; pulleys in one plane.
///
/// @param idler null where there is none
public record BeltLoop(PitchLine pulleys, @Nullable Idling idler) {
    private static final double ROOT_MM = 1e-10;
    private static final double STEP_MM = 1;
    private static final double NEAR_MM = 3;

    /// An idler beside the line from driven (axle) to drive pulley (motor).
    ///
    /// @param alongMm from the axle towards the motor
    /// @param asideMm beside that line, positive above it
    /// @param pitchDiameterMm diameter of the belt's pitch line around it
    /// @param onBack whether it touches the back of the belt
    public record Idling(double alongMm, double asideMm, double pitchDiameterMm, boolean onBack) {}

    /// The three circles solved for one centre distance: wraps (rad), spans from driven to idler and on to drive (mm).
    private record Walk(
            double drivenWrap, double driveWrap, double idlerWrap, double toIdler, double fromIdler, double lengthMm) {
        static final Walk NONE = new Walk(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /// {@return the pitch length of the belt at this centre distance (mm), NaN where circles overlap or the idler does
    ///     not touch}
    public double lengthMm(double centreDistanceMm) {
        return idler == null
                ? pulleys.lengthMm(centreDistanceMm)
                : walk(idler, centreDistanceMm).lengthMm();
    }

    /// {@return the free span that no idler touches (mm)}
    public double spanMm(double centreDistanceMm) {
        return pulleys.spanMm(centreDistanceMm);
    }

    /// {@return the wrap on the drive pulley (rad)}
    public double driveWrapRad(double centreDistanceMm) {
        return idler == null
                ? pulleys.driveWrapRad(centreDistanceMm)
                : walk(idler, centreDistanceMm).driveWrap();
    }

    /// {@return the wrap on the driven pulley (rad)}
    public double drivenWrapRad(double centreDistanceMm) {
        return idler == null
                ? 2 * Math.PI - pulleys.driveWrapRad(centreDistanceMm)
                : walk(idler, centreDistanceMm).drivenWrap();
    }

    /// {@return the wrap on the idler (rad), NaN without one or where it does not touch the belt}
    public double idlerWrapRad(double centreDistanceMm) {
        return idler == null ? Double.NaN : walk(idler, centreDistanceMm).idlerWrap();
    }

    /// {@return the span from driven pulley to idler (mm), NaN without one}
    public double toIdlerMm(double centreDistanceMm) {
        return idler == null ? Double.NaN : walk(idler, centreDistanceMm).toIdler();
    }

    /// {@return the span from idler to drive pulley (mm), NaN without one}
    public double fromIdlerMm(double centreDistanceMm) {
        return idler == null ? Double.NaN : walk(idler, centreDistanceMm).fromIdler();
    }

    public boolean closes(double lengthMm) {
        return idler == null ? pulleys.closes(lengthMm) : !Double.isNaN(centreDistanceMm(lengthMm));
    }

    /// {@return the centre distance at which a belt of this length is taut (mm), NaN where there is none}
    public double centreDistanceMm(double lengthMm) {
        if (idler == null) {
            return pulleys.centreDistanceMm(lengthMm);
        }
        double least = (pulleys.driveMm() + pulleys.drivenMm()) / 2;
        double before = Double.NaN;
        double at = Double.NaN;
        for (double c = least; c < lengthMm / 2; c += STEP_MM) {
            double excess = lengthMm(c) - lengthMm;
            if (before < 0 && excess >= 0) {
                return root(lengthMm, at, c);
            }
            if (Double.isNaN(before) && excess >= 0) {
                double first = touching(c, c - STEP_MM);
                return lengthMm(first) <= lengthMm ? root(lengthMm, first, c) : Double.NaN;
            }
            if (before < 0 && Double.isNaN(excess)) {
                double last = touching(at, c);
                if (lengthMm(last) >= lengthMm) {
                    return root(lengthMm, at, last);
                }
            }
            before = excess;
            at = c;
        }
        return Double.NaN;
    }

    /// {@return the same, looked for first where a neighbouring belt is taut}
    public double centreDistanceMm(double lengthMm, double nearMm) {
        double low = lengthMm(nearMm - NEAR_MM) - lengthMm;
        double high = lengthMm(nearMm + NEAR_MM) - lengthMm;
        return low < 0 && high > 0 ? root(lengthMm, nearMm - NEAR_MM, nearMm + NEAR_MM) : centreDistanceMm(lengthMm);
    }

    /// {@return the centre distance next to where the idler leaves the belt, between one where it touches and one where
    ///     it does not (mm)}
    private double touching(double with, double without) {
        double near = with;
        double far = without;
        while (Math.abs(far - near) > ROOT_MM) {
            double middle = (near + far) / 2;
            if (Double.isNaN(lengthMm(middle))) {
                far = middle;
            } else {
                near = middle;
            }
        }
        return near;
    }

    private double root(double lengthMm, double low, double high) {
        UnivariateFunction excess = c -> lengthMm(c) - lengthMm;
        return new BracketingNthOrderBrentSolver(ROOT_MM, 5).solve(200, excess, low, high);
    }

    /// Walks the belt anticlockwise: driven pulley, drive pulley, back, with the idler on the span on its side.
    private Walk walk(Idling third, double c) {
        boolean above = third.asideMm() > 0;
        double[] x = {0, c, third.alongMm()};
        double[] y = {0, 0, third.asideMm()};
        double[] r = {pulleys.drivenMm() / 2, pulleys.driveMm() / 2, third.pitchDiameterMm() / 2};
        int[] turn = {1, 1, third.onBack() ? -1 : 1};
        int[] next = above ? new int[] {1, 2, 0} : new int[] {2, 0, 1};
        double[] heading = new double[3];
        double[] spanFrom = new double[3];
        for (int i = 0; i < 3; i++) {
            int j = next[i];
            double d = Math.hypot(x[j] - x[i], y[j] - y[i]);
            double across = turn[i] * r[i] - turn[j] * r[j];
            heading[i] = Math.atan2(y[j] - y[i], x[j] - x[i]) + Math.asin(across / d);
            spanFrom[i] = Math.sqrt(d * d - across * across);
        }
        double[] wrap = new double[3];
        double length = spanFrom[0] + spanFrom[1] + spanFrom[2];
        for (int i = 0; i < 3; i++) {
            int j = next[i];
            wrap[j] = unwound(turn[j] * (heading[j] - heading[i]));
            length += r[j] * wrap[j];
        }
        boolean touches = wrap[2] > 0 && wrap[2] < Math.PI;
        // twice around: one of the pulleys lies inside the belt without touching it
        boolean once = wrap[0] + wrap[1] + turn[2] * wrap[2] < 3 * Math.PI;
        if (!touches || !once || Double.isNaN(length)) {
            return Walk.NONE;
        }
        double fromIdler = above ? spanFrom[1] : spanFrom[2];
        double toIdler = above ? spanFrom[2] : spanFrom[0];
        return new Walk(wrap[0], wrap[1], wrap[2], toIdler, fromIdler, length);
    }

    private static double unwound(double angle) {
        double turn = 2 * Math.PI;
        double rest = angle % turn;
        return rest < 0 ? rest + turn : rest;
    }
}
