package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.quantity.Tolerance;

/// Deep groove ball bearings that wheels, hangers and motors of this trade use, by their number.
///
/// - Source: sizes (ISO 15) as printed in two to four rolling-bearing general catalogues.
/// - Load ratings are left out: for one number they differ by up to a quarter between makers.
public enum BearingSize {
    B608("608", 8, 22, 7),
    B618_8("618/8", 8, 16, 4),
    B619_8("619/8", 8, 19, 6),
    B698("698", 8, 19, 6),
    B61800("61800", 10, 19, 5),
    B61900("61900", 10, 22, 6),
    B61801("61801", 12, 21, 5),
    B61901("61901", 12, 24, 6),
    B6001("6001", 12, 28, 8),
    B6902("6902", 15, 28, 7),
    B6002("6002", 15, 32, 9);

    private final String number;
    private final double boreMm;
    private final double outsideMm;
    private final double widthMm;

    BearingSize(String number, double boreMm, double outsideMm, double widthMm) {
        this.number = number;
        this.boreMm = boreMm;
        this.outsideMm = outsideMm;
        this.widthMm = widthMm;
    }

    @Override
    public String toString() {
        return number;
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
}
