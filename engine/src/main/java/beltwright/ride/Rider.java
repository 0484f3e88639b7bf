package beltwright.ride;

import beltwright.quantity.Refusal;

/// A rider who holds a wish speed: speeds up and slows down towards it, never harder than is comfortable.
///
///     a = (v_wish − v)/τ + a_ahead,   held between −2·braking and speeding
///
/// - Source: first-order speed control, common practice.
/// - Neglects: foot brake; a rider who sees the hill coming.
///
/// @param speedingMps2 hardest the rider likes to speed up (m/s²)
/// @param brakingMps2 how hard the rider likes to brake (m/s²)
/// @param settleS τ (s)
public record Rider(double speedingMps2, double brakingMps2, double settleS) {
    public static final Rider CALM = new Rider(1.0, 1.2, 1.0);

    public Rider {
        if (!(speedingMps2 > 0 && speedingMps2 <= 9 && brakingMps2 > 0 && brakingMps2 <= 9 && settleS >= 0.1)) {
            throw new Refusal(
                    "rider",
                    "speeds up at " + speedingMps2 + " m/s², brakes at " + brakingMps2 + " m/s², settles in " + settleS
                            + " s",
                    "above 0 to 9 m/s², at least 0.1 s",
                    "give other values");
        }
    }

    double wantedMps2(double speedMps, double allowedMps, double aheadMps2) {
        return Math.clamp((allowedMps - speedMps) / settleS + aheadMps2, -2 * brakingMps2, speedingMps2);
    }
}
