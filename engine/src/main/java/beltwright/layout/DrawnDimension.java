package beltwright.layout;

import beltwright.kit.Side;

/// A distance that a drawing shows: two witness points and a name. The number printed is the distance between them.
///
/// In the side view the points are x forward, z up from the axle. In the plan view they are x forward, y left from the
/// middle of the hanger.
///
/// @param finding the finding that this distance decides, as `check.subject`, or empty
/// @param diameter whether the text is preceded by a diameter sign
public record DrawnDimension(
        String name,
        View view,
        Side side,
        double fromX,
        double fromY,
        double toX,
        double toY,
        Along along,
        boolean diameter,
        String finding) {
    /// Which projection shows it.
    public enum View {
        SIDE,
        PLAN
    }

    /// Which way the dimension line runs: between the points, or only along one axis of the sheet.
    public enum Along {
        POINTS,
        HORIZONTAL,
        VERTICAL
    }

    /// {@return the distance that is printed (mm)}
    public double valueMm() {
        return switch (along) {
            case POINTS -> Math.hypot(toX - fromX, toY - fromY);
            case HORIZONTAL -> Math.abs(toX - fromX);
            case VERTICAL -> Math.abs(toY - fromY);
        };
    }
}
