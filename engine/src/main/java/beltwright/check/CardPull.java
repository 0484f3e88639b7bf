package beltwright.check;

import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;

/// The effective tension that the tension card of a drive is made for: the drive's worst torque in each direction with
/// every number at its worse limit, to lay beside what a ride asks.
///
/// - Source: as in `DrivePull`.
/// - Neglects: unlike sides; a ride takes every drive for the first as well.
///
/// @param drivingN effective tension at the worst torque, driving (N)
/// @param brakingN the same, braking
public record CardPull(double drivingN, double brakingN) {
    /// {@return that of the first drive}
    public static CardPull of(Kit kit) {
        var drive = Subject.of(kit, LayoutSolver.solve(kit)).stream()
                .filter(s -> s.scope() == Scope.DRIVE)
                .findFirst()
                .orElseThrow();
        return new CardPull(asked(drive, false), asked(drive, true));
    }

    private static double asked(Subject drive, boolean braking) {
        return DrivePull.effectiveN(drive, DrivePull.motorNm(drive, At.WORST, braking));
    }
}
