package beltwright.check;

import beltwright.belt.BeltLoop;
import beltwright.layout.LayoutSolver;
import beltwright.part.StandardSizes;
import beltwright.quantity.Numbers;

/// What mends a drive whose belt does not close in the slot.
final class Remedies {
    private static final double TAKE_UP_MM = 1.0;

    private Remedies() {}

    /// The belt whose number of teeth puts the motor into the slot with take-up left, nearest to the one chosen.
    static String belt(Subject s) {
        var drive = s.drive();
        BeltLoop line = LayoutSolver.loop(drive);
        var belt = drive.belt();
        double spread = belt.lengthDeviationMm().upper();
        for (int away = 1; away <= 40; away++) {
            for (int teeth : new int[] {belt.teeth() + away, belt.teeth() - away}) {
                if (!StandardSizes.stocked(belt.profile(), teeth)) {
                    continue;
                }
                double length = teeth * belt.profile().pitchMm();
                double longest = line.centreDistanceMm(length + spread);
                double shortest =
                        line.centreDistanceMm(length + belt.lengthDeviationMm().lower());
                if (drive.mount().slotMaxMm().lower() - longest >= TAKE_UP_MM
                        && shortest - drive.mount().slotMinMm().upper() >= 0) {
                    return "a belt of " + teeth + " teeth (" + Numbers.significant(length, 5)
                            + " mm) puts the motor at " + Numbers.fixed(line.centreDistanceMm(length), 1) + " mm";
                }
            }
        }
        double c = s.at().centreDistanceMm().nominal();
        return Double.isNaN(c)
                ? "a longer belt or smaller pulleys"
                : "no belt length that is sold falls in this slot: a slot from " + Numbers.fixed(c - 3, 0) + " to "
                        + Numbers.fixed(c + 3, 0) + " mm would";
    }
}
