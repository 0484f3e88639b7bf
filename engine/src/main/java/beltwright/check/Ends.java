package beltwright.check;

import beltwright.quantity.Numbers;

/// The ends of a band as they are written, the same on rung, card and guide: the lower one rounded up, the upper one
/// down, so that nobody who keeps to what is printed leaves the band.
///
/// @param low lower end
/// @param high upper end
public record Ends(String low, String high) {
    private static final int FINEST = 3;

    /// {@return both with so many decimals, or more where the band is too narrow for them}
    public static Ends of(double low, double high, int decimals) {
        int enough = decimals;
        while (enough < FINEST && low <= high && rounded(low, high, enough)) {
            enough++;
        }
        return new Ends(Numbers.atLeast(low, enough), Numbers.atMost(high, enough));
    }

    /// {@return whether so few decimals leave nothing between the ends}
    private static boolean rounded(double low, double high, int decimals) {
        double step = Math.pow(10, decimals);
        return Math.ceil(low * step) > Math.floor(high * step);
    }

    @Override
    public String toString() {
        return low + " to " + high;
    }
}
