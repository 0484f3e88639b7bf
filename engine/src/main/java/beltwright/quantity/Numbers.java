package beltwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/// How a number is written down: plain digits, never an exponent, never more digits than its limits can carry.
public final class Numbers {
    private static final int MOST_DIGITS = 15; // of a double

    private Numbers() {}

    /// {@return the shortest plain text of this value to 10 significant digits}
    public static String plain(double value) {
        return significant(value, 10);
    }

    /// {@return the value rounded to `digits` significant digits, without trailing zeros}
    public static String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "unknown" : value > 0 ? "∞" : "−∞";
        }
        if (value == 0) {
            return "0";
        }
        return signed(BigDecimal.valueOf(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros());
    }

    /// {@return the value with exactly `decimals` places}
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return significant(value, decimals);
        }
        var rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return signed(rounded.signum() == 0 ? rounded.abs() : rounded);
    }

    /// {@return the next value of so many decimals that is not less, but for the rounding of the sum it came from}
    public static double up(double value, int decimals) {
        double step = Math.pow(10, decimals);
        return Math.ceil(value * step - 1e-7) / step;
    }

    /// The value to as many digits as its band allows: one digit finer than the band is wide, three significant digits
    /// where it has none.
    public static String within(double value, double lower, double upper) {
        return within(value, lower, upper, MOST_DIGITS);
    }

    /// As above, but no finer than so many significant digits of the value: numbers that rest on estimates have narrow
    /// bands where the estimates have no limits.
    public static String within(double value, double lower, double upper, int digits) {
        double band = upper - lower;
        if (!Double.isFinite(value)) {
            return significant(value, 3);
        }
        int finest = (int) (digits - 1 - Math.floor(Math.log10(Math.max(Math.abs(value), 1e-6))));
        int decimals = band > 0
                ? Math.min(finest, (int) Math.ceil(1 - Math.log10(band)))
                : (int) Math.ceil(2 - Math.floor(Math.log10(Math.max(Math.abs(value), 1e-6))));
        return fixed(value, Math.clamp(decimals, 0, 3));
    }

    /// {@return minutes and seconds to a tenth: `7:53.7`}
    public static String clock(double seconds) {
        long tenths = Math.round(10 * seconds);
        long rest = tenths % 600;
        return tenths / 600 + ":" + (rest < 100 ? "0" : "") + rest / 10 + "." + rest % 10;
    }

    private static String signed(BigDecimal value) {
        return value.toPlainString().replace('-', '−');
    }
}
