package beltwright.press.drawing;

import beltwright.kit.Kit;
import beltwright.kit.Side;

/// Where stations along the axle, outward from one end face of the hanger, stand across the plan.
record Stations(double halfWidthMm, double outward) {
    Stations(Kit kit, Side side) {
        this(kit.hanger().widthMm().nominal() / 2, side == Side.LEFT ? -1 : 1);
    }

    double x(double station) {
        return outward * (halfWidthMm + station);
    }

    /// {@return the direction from this end towards the middle of the hanger}
    Point inward() {
        return new Point(-outward, 0);
    }
}
