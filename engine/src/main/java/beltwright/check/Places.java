package beltwright.check;

import beltwright.kit.Side;

/// Where a station on the axle lies in the plan view.
final class Places {
    private Places() {}

    /// {@return y in the plan view (mm, left positive) of a station outward from this side's end face}
    static double plan(Subject s, double station) {
        double fromMiddle = s.kit().hanger().widthMm().nominal() / 2 + station;
        return s.side() == Side.LEFT ? fromMiddle : -fromMiddle;
    }
}
