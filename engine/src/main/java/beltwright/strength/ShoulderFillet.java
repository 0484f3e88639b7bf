package beltwright.strength;

/// How much the fillet of a round step multiplies the stress of bending or twisting.
///
///     Kt = A·(r/d)^b          A and b by D/d; between two lines Kt is interpolated in D/d
///
/// - Source: fitted lines to Peterson's charts as printed in Norton, _Machine Design_, appendix, read in two public
///   copies of the table.
/// - Valid: D/d 1.01 to 6 in bending, 1.09 to 2 in twisting; r/d 0.01 to 0.3. Outside the answer is NaN, so that a
///   check says it cannot tell.
/// - Neglects: finite elements read 3 to 7 % above charts; an undercut, a scratch, a plating.
public final class ShoulderFillet {
    /// Least and greatest r/d that the charts hold (1).
    public static final double LEAST_RADIUS = 0.01;

    public static final double MOST_RADIUS = 0.3;

    private static final double[][] BENDING = {
        {1.01, 0.91938, -0.17032},
        {1.02, 0.96048, -0.17711},
        {1.03, 0.98061, -0.18381},
        {1.05, 0.98137, -0.19653},
        {1.07, 0.97527, -0.20958},
        {1.1, 0.95120, -0.23757},
        {1.2, 0.97098, -0.21796},
        {1.5, 0.93836, -0.25759},
        {2, 0.90879, -0.28598},
        {3, 0.89334, -0.30860},
        {6, 0.87868, -0.33243}
    };
    private static final double[][] TWISTING = {
        {1.09, 0.90337, -0.12692}, {1.2, 0.83425, -0.21649}, {1.33, 0.84897, -0.23161}, {2, 0.86331, -0.23865}
    };

    private ShoulderFillet() {}

    /// {@return Kt in bending (1); NaN outside the charts}
    ///
    /// @param largeMm D, diameter of the thick side (mm)
    /// @param smallMm d, diameter of the thin side (mm)
    /// @param radiusMm r, radius of the fillet (mm)
    public static double bending(double largeMm, double smallMm, double radiusMm) {
        return between(BENDING, largeMm / smallMm, radiusMm / smallMm);
    }

    /// {@return Kt in twisting (1); NaN outside the charts}
    public static double twisting(double largeMm, double smallMm, double radiusMm) {
        return between(TWISTING, largeMm / smallMm, radiusMm / smallMm);
    }

    private static double between(double[][] lines, double step, double radius) {
        int last = lines.length - 1;
        if (!(radius >= LEAST_RADIUS && radius <= MOST_RADIUS && step >= lines[0][0] && step <= lines[last][0])) {
            return Double.NaN;
        }
        int i = 0;
        while (i < last - 1 && step >= lines[i + 1][0]) {
            i++;
        }
        double share = (step - lines[i][0]) / (lines[i + 1][0] - lines[i][0]);
        double under = line(lines[i], radius);
        return under + share * (line(lines[i + 1], radius) - under);
    }

    private static double line(double[] line, double radius) {
        return line[1] * Math.pow(radius, line[2]);
    }
}
