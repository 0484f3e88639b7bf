package beltwright.strength;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;

/// How long a deep groove ball bearing runs before its rings tire.
///
///     P = X·V·Fr + Y·Fa        L10 = (C/P)³        hours = L10·10⁶/(60·n)
///     P_mean = (Σ n·P³/Σ n)^(1/3)
///     L10 for a reliability R:  L·(ln(1/0.9)/ln(1/R))^(1/β)        loss = μ·P·d/2·ω
///
/// V is 1 where the inner ring turns, 1.2 where the outer ring does. X and Y are 1 and 0 while
/// Fa/Fr is at most e.
///
/// - Source: ISO 281 as printed in rolling-bearing general catalogues (e, X, Y); V and β as in
///   Jindal, machine design, ch. 18; the formula of reliability from memory, held against his
///   example.
/// - Valid: normal radial clearance, steady load, clean grease; f0·Fa/C0 from 0.172 to 6.89.
/// - Neglects: dirt and water, which end most wheel bearings first, and shocks.
public final class BearingLife {
    /// X where the axial load counts.
    public static final double RADIAL_FACTOR = 0.56;

    private static final double[] AXIAL_SHARE = {0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89};
    private static final double[] E = {0.19, 0.22, 0.26, 0.28, 0.30, 0.34, 0.38, 0.42, 0.44};
    private static final double[] Y = {2.30, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1.00};

    private BearingLife() {}

    /// {@return e, the share Fa/Fr from which the axial load counts, at this f0·Fa/C0}
    public static double axialLimit(double axialShare) {
        return along(E, axialShare);
    }

    /// {@return Y (1) at this f0·Fa/C0}
    public static double axialFactor(double axialShare) {
        return along(Y, axialShare);
    }

    /// {@return P, the steady radial load (N) that tires the bearing as much}
    public static double equivalentN(
            double radialN, double axialN, double ringFactor, double radialFactor, double axialFactor) {
        return radialFactor * ringFactor * radialN + axialFactor * axialN;
    }

    /// {@return L10 (millions of turns), which nine bearings of ten reach}
    public static double millionTurns(double ratingN, double equivalentN) {
        return Math.pow(ratingN / equivalentN, 3);
    }

    /// {@return L10 (h) at this speed}
    public static double hours(double ratingN, double equivalentN, double speedRpm) {
        return millionTurns(ratingN, equivalentN) * 1e6 / (60 * speedRpm);
    }

    /// {@return the steady load (N) that tires the bearing as much as these loads one after the other}
    ///
    /// @param turns how many turns under each, in any unit
    public static double meanLoadN(double[] turns, double[] loadsN) {
        double all = 0;
        double tired = 0;
        for (int i = 0; i < turns.length; i++) {
            all += turns[i];
            tired += turns[i] * loadsN[i] * loadsN[i] * loadsN[i];
        }
        return Math.cbrt(tired / all);
    }

    /// {@return C (N), the rating that lasts so many millions of turns}
    public static double ratingN(double equivalentN, double millionTurns) {
        return equivalentN * Math.cbrt(millionTurns);
    }

    /// {@return L10 (millions of turns) of a bearing that reaches this life with this reliability}
    ///
    /// @param reliability share of bearings that must reach it (1)
    /// @param spread β of the Weibull distribution, 1.17 in the source
    public static double ratedTurns(double millionTurns, double reliability, double spread) {
        return millionTurns * Math.pow(Math.log(1 / 0.9) / Math.log(1 / reliability), 1 / spread);
    }

    /// {@return heat (W) of rolling friction}
    public static double frictionW(double loadN, double friction, double boreMm, double speedRpm) {
        return friction * loadN * boreMm / 2000 * speedRpm * Math.PI / 30;
    }

    private static double along(double[] column, double axialShare) {
        int last = AXIAL_SHARE.length - 1;
        if (!(axialShare >= AXIAL_SHARE[0] && axialShare <= AXIAL_SHARE[last])) {
            throw new Refusal(
                    "axial load",
                    "f0·Fa/C0 = " + Numbers.plain(axialShare) + " is not in the table of bearing loads",
                    "0.172 to 6.89",
                    "take another bearing");
        }
        int i = 0;
        while (i < last - 1 && axialShare >= AXIAL_SHARE[i + 1]) {
            i++;
        }
        double share = (axialShare - AXIAL_SHARE[i]) / (AXIAL_SHARE[i + 1] - AXIAL_SHARE[i]);
        return column[i] + share * (column[i + 1] - column[i]);
    }
}
