package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.quantity.Tolerance;
import java.util.Arrays;
import java.util.Optional;

/// Standard deep groove ball bearings for axles of 8, 10, 12 and 15 mm: boundary sizes by designation.
///
/// - Source: ISO 15, as the makers' general catalogues print it; rows that say `from memory` were not read there.
/// - The trials hold those of 8 mm bore against a general-purpose parts library; it knows no others of these.
/// - A seal takes no width, except in the 688: open it is 4 mm wide, sealed 5 mm. The sealed one is the one sold for
///   wheels.
/// - Load ratings C and C0: the lowest that four makers' general catalogues A to D print, which differ by up to a
/// quarter;
///   unknown where none of them was read.
/// - Leaves out: bearings to inch sizes, flanged ones, and what an axle of another diameter takes.
public enum BearingSize {
    B688("688", 8, 16, 4, BearingSize.READ, 1330, 570, "A"),
    B688_SEALED("688 sealed", 8, 16, 5, BearingSize.READ, 1330, 570, "A, open one"),
    B698("698", 8, 19, 6, BearingSize.READ, 1900, 735, "A"),
    B608("608", 8, 22, 7, BearingSize.READ, 3300, 1300, "D"),
    B628("628", 8, 24, 8, BearingSize.REMEMBERED, Double.NaN, Double.NaN, ""),
    B638("638", 8, 28, 9, BearingSize.REMEMBERED, Double.NaN, Double.NaN, ""),
    B6800("6800", 10, 19, 5, BearingSize.READ, 1300, 585, "D, C0 of A"),
    B6900("6900", 10, 22, 6, BearingSize.READ, 2000, 700, "D"),
    B6000("6000", 10, 26, 8, BearingSize.REMEMBERED, Double.NaN, Double.NaN, ""),
    B6200("6200", 10, 30, 9, BearingSize.REMEMBERED, Double.NaN, Double.NaN, ""),
    B6801("6801", 12, 21, 5, BearingSize.READ, 1430, 670, "A"),
    B6901("6901", 12, 24, 6, BearingSize.READ, 2250, 980, "A"),
    B6001("6001", 12, 28, 8, BearingSize.READ, 5100, 2370, "B"),
    B6201("6201", 12, 32, 10, BearingSize.REMEMBERED, Double.NaN, Double.NaN, ""),
    B6902("6902", 15, 28, 7, BearingSize.READ, 4350, 2260, "B"),
    B6002("6002", 15, 32, 9, BearingSize.READ, 5600, 2830, "B");

    private static final String READ = "ISO 15, read in bearing makers' general catalogues";
    private static final String REMEMBERED = "ISO 15, from memory";

    /// Limits and wear move a measured size by far less than this (mm), and no two standard sizes lie so close.
    private static final double SAME_MM = 0.2;

    private final String designation;
    private final double boreMm;
    private final double outsideMm;
    private final double widthMm;
    private final String source;
    private final double ratedN;
    private final double staticN;
    private final String catalogue;

    BearingSize(
            String designation,
            double boreMm,
            double outsideMm,
            double widthMm,
            String source,
            double ratedN,
            double staticN,
            String catalogue) {
        this.designation = designation;
        this.boreMm = boreMm;
        this.outsideMm = outsideMm;
        this.widthMm = widthMm;
        this.source = source;
        this.ratedN = ratedN;
        this.staticN = staticN;
        this.catalogue = catalogue;
    }

    /// {@return the standard bearing of this designation}; 618 and 619 are other ways to write 68 and 69
    public static Optional<BearingSize> named(String designation) {
        var plain = designation.replaceFirst("^61([89])/?", "6$1");
        return Arrays.stream(values()).filter(b -> b.designation.equals(plain)).findFirst();
    }

    /// Lower and upper deviation of a bore (mm), tolerance class Normal.
    ///
    /// - Source: a rolling-bearing general catalogue, app. 9.
    /// - Valid: bores from 2.5 to 18 mm.
    public static Tolerance boreTolerance(double boreMm) {
        if (!(boreMm >= 2.5 && boreMm <= 18)) {
            throw new Refusal(
                    "bore",
                    Numbers.plain(boreMm) + " mm is not in the table of bearing bores",
                    "2.5 to 18 mm",
                    "take the limits from the maker's data sheet");
        }
        return new Tolerance(-0.008, 0);
    }

    /// {@return the standard bearing of these sizes (mm), measured or nominal}
    public static Optional<BearingSize> of(double boreMm, double outsideMm, double widthMm) {
        return Arrays.stream(values())
                .filter(b -> Math.abs(b.boreMm - boreMm) < SAME_MM
                        && Math.abs(b.outsideMm - outsideMm) < SAME_MM
                        && Math.abs(b.widthMm - widthMm) < SAME_MM)
                .findFirst();
    }

    @Override
    public String toString() {
        return designation;
    }

    public double boreMm() {
        return boreMm;
    }

    public double outsideMm() {
        return outsideMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public String source() {
        return source;
    }

    /// {@return C, dynamic load rating (N), the lowest read; NaN where none was}
    public double ratedN() {
        return ratedN;
    }

    /// {@return C0, static load rating (N), the lowest read; NaN where none was}
    public double staticN() {
        return staticN;
    }

    /// {@return where the ratings were read}
    public String ratingSource() {
        return catalogue.isEmpty()
                ? "not read in a catalogue"
                : "general catalogue " + catalogue + ", the lowest of those read";
    }
}
