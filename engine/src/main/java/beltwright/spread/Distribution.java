package beltwright.spread;

import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;

/// How the value of one piece is spread between the limits of its dimension. Nothing is ever drawn outside them, so the
/// worst case encloses every draw.
///
///     data sheet, standard      normal, limits at three σ
///     measured                  normal, limits at two σ
///     customer, estimate        even between the limits
///     no limits                 fixed
///
/// Normal or even, it is centred in the middle of the limits, wherever the nominal lies: `8 h6` is made between 7.991
/// and 8.000.
///
/// - Source: limits as an interval of three σ are common practice, no source; limits of a measurement as an expanded
///   uncertainty with k = 2, and even where only bounds are known: JCGM 100:2008, 6.2 and 4.3.7.
/// - Neglects: processes that drift or are sorted, and dimensions that vary together.
///
/// @param middle of the limits
/// @param half half the distance between the limits
/// @param cut at how many σ the limits lie; 0 where every value between them is as likely
public record Distribution(double middle, double half, double cut) {
    private static final double MADE = 3;
    private static final double MEASURED = 2;

    public static Distribution of(Dimension d) {
        double half = (d.upper() - d.lower()) / 2;
        double cut = switch (d.provenance().source()) {
            case DATA_SHEET, STANDARD -> MADE;
            case MEASURED -> MEASURED;
            case CUSTOMER, ESTIMATE -> 0;
        };
        return new Distribution(d.lower() + half, half, cut);
    }

    /// {@return the value below which this share of all pieces lies}
    ///
    /// @param share above 0, below 1
    public double at(double share) {
        if (half == 0) {
            return middle;
        }
        if (cut == 0) {
            return middle + half * (2 * share - 1);
        }
        double outside = outside(cut);
        return middle + half * Math.clamp(NormalQuantile.of(outside + share * (1 - 2 * outside)) / cut, -1, 1);
    }

    public double mean() {
        return middle;
    }

    /// Of a normal distribution cut at ±a σ: `1 − 2·a·φ(a)/(2·Φ(a) − 1)`, times σ².
    public double variance() {
        if (cut == 0) {
            return half * half / 3;
        }
        double sigma = half / cut;
        double density = Math.exp(-cut * cut / 2) / Math.sqrt(2 * Math.PI);
        return sigma * sigma * (1 - 2 * cut * density / (1 - 2 * outside(cut)));
    }

    /// {@return the share of a whole normal distribution beyond +`cut` σ}
    private static double outside(double cut) {
        return cut == MADE ? 0.001349898031630094526652 : 0.02275013194817920720028;
    }

    @Override
    public String toString() {
        return half == 0
                ? "fixed"
                : cut == 0 ? "even between the limits" : "normal, limits at " + Numbers.plain(cut) + " σ";
    }
}
