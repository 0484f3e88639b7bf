package beltwright.belt;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;

/// What a 5 mm belt of type H may carry for its whole life, by a belt maker's table.
///
///     P = P_N·k_b·k_l·k_z          wanted: P ≥ P_load·(c_0 + c_3)
///
/// P_N is printed for a belt 9 mm wide by the teeth and the speed of the smaller pulley; k_b is
/// for width, k_l for length, k_z for the whole teeth in mesh, c_0 for the load, c_3 for a drive
/// that speeds up. A brake drives the motor through the belt and so speeds up.
///
/// - Source: a belt maker's technical manual for rubber timing belt drives, tables 5, 6, 10, 11,
///   17 and 22 and the page of width factors.
/// - Valid: 14 to 40 teeth, 100 to 10 000 rpm (reinforced: 1000 to 10 000 rpm), 6 to 30 mm wide;
///   straight lines between printed numbers.
/// - Neglects: peaks, which such a table does not know, and heat.
public final class BeltRating {
    private static final int WHOLE = 6; // teeth in mesh for the full rating
    private static final double[] WIDTH_MM = {6, 9, 12, 15, 20, 25, 30};
    private static final double[] WIDTH_FACTOR = {0.61, 1.00, 1.44, 1.87, 2.63, 3.40, 4.15};

    private BeltRating() {}

    /// How the belt is built.
    public enum Grade {
        STANDARD(
                new double[] {14, 16, 18, 20, 24, 28, 32, 36, 40},
                new double[] {100, 500, 1000, 2000, 2850, 4000, 5000, 6000, 8000, 10000},
                new double[][] {
                    {21.9, 25.9, 30.0, 34.9, 44.1, 53.9, 64.0, 74.9, 87.0},
                    {91, 106, 122, 139, 174, 211, 251, 292, 336},
                    {154, 180, 206, 234, 291, 352, 416, 483, 552},
                    {262, 305, 349, 394, 488, 586, 688, 794, 902},
                    {338, 393, 449, 506, 625, 748, 874, 1004, 1137},
                    {443, 513, 585, 658, 808, 961, 1116, 1274, 1431},
                    {523, 605, 688, 772, 943, 1115, 1288, 1459, 1628},
                    {598, 690, 783, 877, 1064, 1250, 1433, 1610, 1778},
                    {735, 843, 950, 1057, 1264, 1459, 1637, 1794, 1927},
                    {854, 972, 1088, 1199, 1403, 1577, 1714, 1804, 1842},
                }),
        REINFORCED(new double[] {14, 16, 20, 24, 36, 40}, new double[] {1000, 2850, 4000, 6000, 10000}, new double[][] {
            {470, 590, 820, 1040, 1690, 1910},
            {1040, 1320, 1830, 2320, 3710, 4150},
            {1300, 1670, 2320, 2920, 4590, 5080},
            {1670, 2160, 2990, 3730, 5540, 6010},
            {2150, 2790, 3780, 4570, 5730, 5720},
        });

        private final double[] teeth;
        private final double[] rpm;
        private final double[][] watts;

        Grade(double[] teeth, double[] rpm, double[][] watts) {
            this.teeth = teeth;
            this.rpm = rpm;
            this.watts = watts;
        }
    }

    /// How hard the driven machine is on its belt, at most 16 hours a day.
    public enum Load {
        LIGHT(1.3),
        MEDIUM(1.6),
        HEAVY(1.8),
        VERY_HEAVY(2.0);

        private final double factor;

        Load(double factor) {
            this.factor = factor;
        }

        /// {@return c_0 (1)}
        public double factor() {
            return factor;
        }
    }

    /// {@return P_N, power (W) of a belt 9 mm wide at these teeth and this speed of the smaller
    /// pulley}
    public static double tableW(Grade grade, int teeth, double speedRpm) {
        int row = below(grade.rpm, speedRpm, "pulley speed", "rpm");
        int column = below(grade.teeth, teeth, "teeth of the smaller pulley", "teeth");
        double along = (teeth - grade.teeth[column]) / (grade.teeth[column + 1] - grade.teeth[column]);
        double slower = between(grade.watts[row][column], grade.watts[row][column + 1], along);
        double faster = between(grade.watts[row + 1][column], grade.watts[row + 1][column + 1], along);
        return between(slower, faster, (speedRpm - grade.rpm[row]) / (grade.rpm[row + 1] - grade.rpm[row]));
    }

    /// {@return k_b (1), which grows faster than the width}
    public static double widthFactor(double widthMm) {
        int i = below(WIDTH_MM, widthMm, "belt width", "mm");
        return between(WIDTH_FACTOR[i], WIDTH_FACTOR[i + 1], (widthMm - WIDTH_MM[i]) / (WIDTH_MM[i + 1] - WIDTH_MM[i]));
    }

    /// {@return k_l (1): a short belt bends more often}
    public static double lengthFactor(double lengthMm) {
        return lengthMm <= 440 ? 0.8 : lengthMm <= 555 ? 0.9 : lengthMm <= 800 ? 1.0 : lengthMm <= 1100 ? 1.1 : 1.2;
    }

    /// {@return k_z (1) of the whole teeth in mesh; a drive with fewer than three is to be
    /// designed again}
    public static double meshFactor(double teethInMesh) {
        double whole = Math.floor(teethInMesh);
        return Math.clamp(1 - 0.2 * (WHOLE - whole), 0, 1);
    }

    /// {@return c_3 (1)}
    ///
    /// @param slowDown speed of the driving pulley over that of the driven one; below 1 the drive
    /// speeds up
    public static double speedUpFactor(double slowDown) {
        return slowDown >= 0.80 ? 0 : slowDown >= 0.57 ? 0.1 : slowDown >= 0.40 ? 0.2 : slowDown >= 0.28 ? 0.3 : 0.4;
    }

    /// {@return P, the power (W) this belt may carry}
    public static double ratedW(double tableW, double widthFactor, double lengthFactor, double meshFactor) {
        return tableW * widthFactor * lengthFactor * meshFactor;
    }

    /// {@return the power (W) that the belt must be rated for}
    public static double wantedW(double loadW, Load load, double speedUpFactor) {
        return loadW * (load.factor() + speedUpFactor);
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    /// The step of the table that holds this value; its upper end counts to the last step.
    private static int below(double[] steps, double value, String what, String unit) {
        int last = steps.length - 1;
        if (!(value >= steps[0] && value <= steps[last])) {
            throw new Refusal(
                    what,
                    Numbers.plain(value) + " " + unit + " is not in the maker's table",
                    Numbers.plain(steps[0]) + " to " + Numbers.plain(steps[last]) + " " + unit,
                    "ask the belt's maker for a rating");
        }
        int step = 0;
        while (step < last - 1 && value >= steps[step + 1]) {
            step++;
        }
        return step;
    }
}
