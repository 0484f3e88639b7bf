package beltwright.belt;

import beltwright.part.BeltGrade;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.List;

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
    private static final List<Double> WIDTH_MM = List.of(6., 9., 12., 15., 20., 25., 30.);
    private static final double[] WIDTH_FACTOR = {0.61, 1.00, 1.44, 1.87, 2.63, 3.40, 4.15};

    private BeltRating() {}

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

    /// {@return P_N, power (W) of a belt of the table's width at these teeth and this speed of the smaller pulley}
    public static double tableW(BeltGrade grade, int teeth, double speedRpm) {
        int row = below(grade.rpm(), speedRpm, "pulley speed", "rpm");
        int column = below(grade.teeth(), teeth, "teeth of the smaller pulley", "teeth");
        double from = grade.teeth().get(column);
        double along = (teeth - from) / (grade.teeth().get(column + 1) - from);
        var slow = grade.watts().get(row);
        var fast = grade.watts().get(row + 1);
        double slower = between(slow.get(column), slow.get(column + 1), along);
        double faster = between(fast.get(column), fast.get(column + 1), along);
        double least = grade.rpm().get(row);
        return between(slower, faster, (speedRpm - least) / (grade.rpm().get(row + 1) - least));
    }

    /// Pull (N) that a belt of the table's width carries, which is what the table means at any speed.
    ///
    ///     F = P_N/v        v = z·p·n/60 000
    ///
    /// Below the slowest speed printed, the pull there stands: a belt carries no less when it turns more slowly.
    ///
    /// @return NaN where the table does not hold these teeth, or this speed is above it
    public static double tablePullN(BeltGrade grade, int teeth, double speedRpm) {
        double slowest = grade.rpm().getFirst();
        double rpm = Math.max(speedRpm, slowest);
        if (teeth < grade.teeth().getFirst()
                || teeth > grade.teeth().getLast()
                || rpm > grade.rpm().getLast()) {
            return Double.NaN;
        }
        return tableW(grade, teeth, rpm) / (teeth * grade.pitchMm() * rpm / 60_000);
    }

    /// {@return whether the page of width factors holds this width (mm)}
    public static boolean holdsWidth(double widthMm) {
        return widthMm >= WIDTH_MM.getFirst() && widthMm <= WIDTH_MM.getLast();
    }

    /// {@return this width, or the widest that the page holds (mm)}
    public static double upTo(double widthMm) {
        return Math.min(widthMm, WIDTH_MM.getLast());
    }

    /// {@return k_b (1), which grows faster than the width}
    public static double widthFactor(double widthMm) {
        int i = below(WIDTH_MM, widthMm, "belt width", "mm");
        double from = WIDTH_MM.get(i);
        return between(WIDTH_FACTOR[i], WIDTH_FACTOR[i + 1], (widthMm - from) / (WIDTH_MM.get(i + 1) - from));
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
    private static int below(List<Double> steps, double value, String what, String unit) {
        if (!(value >= steps.getFirst() && value <= steps.getLast())) {
            throw new Refusal(
                    what,
                    Numbers.plain(value) + " " + unit + " is not in the maker's table",
                    Numbers.plain(steps.getFirst()) + " to " + Numbers.plain(steps.getLast()) + " " + unit,
                    "ask the belt's maker for a rating");
        }
        int step = 0;
        while (step < steps.size() - 2 && value >= steps.get(step + 1)) {
            step++;
        }
        return step;
    }
}
