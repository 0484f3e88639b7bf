package beltwright.belt;

import beltwright.quantity.Refusal;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// An open belt around two pulleys, followed along its pitch line.
///
///     φ = asin((D − d)/(2·C))      span = C·cos φ
///     L = 2·C·cos φ + π/2·(D + d) + (D − d)·φ
///     wrap on d = π − 2·φ          teeth in mesh = z·wrap/(2·π)
///
/// d is the pitch diameter of the drive pulley, D that of the driven one; either may be the larger.
///
/// - Source: exact open-belt geometry as in Shigley, _Mechanical Engineering Design_, eq. 17-1 and 17-2.
/// - Valid: rigid pitch line, no idler, pulleys in one plane.
/// - Neglects: polygon effect and cord stiffness (both far below a belt's length tolerance at 12 teeth and more).
///
/// @param driveMm pitch diameter of the drive pulley (mm)
/// @param drivenMm pitch diameter of the driven pulley (mm)
public record PitchLine(double driveMm, double drivenMm) {
    private static final double ROOT_MM = 1e-10;

    public PitchLine {
        if (!(driveMm > 0 && drivenMm > 0)) {
            throw new Refusal(
                    "pitch diameter",
                    driveMm + " and " + drivenMm + " mm",
                    "both above 0 mm",
                    "correct the number of teeth");
        }
    }

    /// {@return the half angle φ between the two spans (rad)}
    public double spanAngleRad(double centreDistanceMm) {
        return Math.asin((drivenMm - driveMm) / (2 * centreDistanceMm));
    }

    /// {@return the pitch length of the belt at this centre distance (mm)}
    public double lengthMm(double centreDistanceMm) {
        double phi = spanAngleRad(centreDistanceMm);
        return 2 * centreDistanceMm * Math.cos(phi) + Math.PI / 2 * (drivenMm + driveMm) + (drivenMm - driveMm) * phi;
    }

    /// {@return the free span, tangent point to tangent point (mm)}
    public double spanMm(double centreDistanceMm) {
        return centreDistanceMm * Math.cos(spanAngleRad(centreDistanceMm));
    }

    /// {@return the wrap on the drive pulley (rad)}
    public double driveWrapRad(double centreDistanceMm) {
        return Math.PI - 2 * spanAngleRad(centreDistanceMm);
    }

    /// {@return teeth of the drive pulley in mesh, with decimals; whole teeth count in a rating}
    public static double teethInMesh(int teeth, double wrapRad) {
        return teeth * wrapRad / (2 * Math.PI);
    }

    /// {@return the shortest centre distance (mm) a handbook advises, (D + d)/2 + 15}
    ///
    /// - Source: a belt maker's technical manual for rubber timing belt drives, p. 42.
    /// - Neglects: flanges, and what a board has room for.
    public double nearestAdvisedMm() {
        return (driveMm + drivenMm) / 2 + 15;
    }

    /// {@return the longest centre distance (mm) the same handbook advises}
    public double farthestAdvisedMm() {
        return 2 * (driveMm + drivenMm);
    }

    /// {@return whether a belt of this length goes around both pulleys at all}
    public boolean closes(double lengthMm) {
        return lengthMm > Math.PI * Math.max(driveMm, drivenMm);
    }

    /// The centre distance at which a belt of this length is taut. It may be so short that the pulleys overlap: that is
    /// for a check to say.
    ///
    /// @param lengthMm pitch length (mm)
    /// @return centre distance (mm), NaN where the belt is too short to go around
    public double centreDistanceMm(double lengthMm) {
        if (!closes(lengthMm)) {
            return Double.NaN;
        }
        double nearest = Math.abs(drivenMm - driveMm) / 2;
        UnivariateFunction excess = c -> lengthMm(Math.max(c, nearest)) - lengthMm;
        return new BracketingNthOrderBrentSolver(ROOT_MM, 5).solve(200, excess, nearest, lengthMm / 2);
    }
}
