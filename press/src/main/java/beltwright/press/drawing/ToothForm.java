package beltwright.press.drawing;

import beltwright.part.BeltProfile;
import java.util.List;

/// How a belt tooth and its groove are drawn: simplified, true in number, pitch and depth.
///
/// The rounded profiles become one arc, the trapezoidal ones three lines. Not for making a pulley.
final class ToothForm {
    private static final double ROUND = 0.61; // width at the land over pitch
    private static final double TRAPEZOID = 0.53;
    private static final double TRAPEZOID_FOOT = 0.36;

    private ToothForm() {}

    private static boolean round(BeltProfile profile) {
        return switch (profile) {
            case H3M, H5M, R5M, H8M -> true;
            case T5, AT5 -> false;
        };
    }

    static double widthMm(BeltProfile profile) {
        return (round(profile) ? ROUND : TRAPEZOID) * profile.pitchMm();
    }

    /// {@return one tooth from a to b, standing out in the direction `deep`}
    static List<Segment> dip(BeltProfile profile, Point a, Point b, Point deep) {
        var down = deep.times(profile.toothHeightMm());
        if (round(profile)) {
            return List.of(Segment.through(a, a.middle(b).plus(down), b));
        }
        var along = b.minus(a).unit().times((TRAPEZOID - TRAPEZOID_FOOT) / 2 * profile.pitchMm());
        var c = a.plus(along).plus(down);
        var d = b.minus(along).plus(down);
        return List.of(new Segment.Straight(a, c), new Segment.Straight(c, d), new Segment.Straight(d, b));
    }
}
