package beltwright.ride;

import beltwright.quantity.Refusal;

/// A rider who holds a wish speed: speeds up and slows down towards it, never harder than is comfortable.
///
///     a = (v_wish − v)/τ + a_ahead·v/v_wish,   held between −2·braking and speeding
///
/// The share v/v_wish: where the wish falls along the road, it falls in time as fast as the board goes. Without it a
/// board below its wish would slow down to rest before it reaches a stop.
///
/// - Source: first-order speed control, common practice.
/// - Neglects: foot brake; a rider who sees the hill coming.
///
/// @param speedingMps2 hardest the rider likes to speed up (m/s²)
/// @param brakingMps2 how hard the rider likes to brake (m/s²)
/// @param settleS τ (s)
public record Rider(double speedingMps2, double brakingMps2, double settleS) {
    public static final double GENTLEST_MPS2 = 0.05; // slower than that is not told from standing still
    public static final Rider CALM = new Rider(1.0, 1.2, 1.0);

    public Rider {
        if (!(speedingMps2 >= GENTLEST_MPS2 && speedingMps2 <= 9)
                || !(brakingMps2 >= GENTLEST_MPS2 && brakingMps2 <= 9)
                || !(settleS >= 0.1 && settleS <= 60)) {
            throw new Refusal(
                    "rider",
                    "speeds up at " + speedingMps2 + " m/s², brakes at " + brakingMps2 + " m/s², settles in " + settleS
                            + " s",
                    GENTLEST_MPS2 + " to 9 m/s², 0.1 to 60 s",
                    "give other values");
        }
    }

    double wantedMps2(double speedMps, double allowedMps, double aheadMps2) {
        double falls = allowedMps > 0 ? aheadMps2 * speedMps / allowedMps : aheadMps2;
        return Math.clamp((allowedMps - speedMps) / settleS + falls, -2 * brakingMps2, speedingMps2);
    }
}
