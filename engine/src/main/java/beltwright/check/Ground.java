package beltwright.check;

import beltwright.kit.Drive;
import beltwright.layout.DriveLayout;
import beltwright.quantity.Range;

/// Where the motor axis is in the side view, with the limits of centre distance and mount angle.
final class Ground {
    private Ground() {}

    static void motorPosition(Subject s, Working w) {
        w.given("β", s.drive().placement().aboveAxleDeg());
        double c = s.at().centreDistanceMm().nominal();
        double angle = Math.toRadians(s.drive().placement().aboveAxleDeg().nominal());
        int sign = s.drive().placement().motor().sign();
        w.line(
                "x",
                (sign < 0 ? "−" : "") + "C·cos(β·π/180)",
                sign * c * Math.cos(angle),
                "mm",
                "motor axis ahead of the axle");
        w.line("z", "C·sin(β·π/180)", c * Math.sin(angle), "mm", "motor axis above the axle");
    }

    /// {@return how far the motor axis lies fore or aft of the axle (mm)}
    static Range away(Subject s) {
        return away(s.drive(), s.at());
    }

    static Range away(Drive drive, DriveLayout at) {
        var c = at.centreDistanceMm();
        var a = drive.placement().aboveAxleDeg();
        double steepest = Math.max(Math.abs(a.lower()), Math.abs(a.upper()));
        double flattest = a.lower() <= 0 && a.upper() >= 0 ? 0 : Math.min(Math.abs(a.lower()), Math.abs(a.upper()));
        return new Range(
                c.low() * Math.cos(Math.toRadians(steepest)),
                c.nominal() * Math.cos(Math.toRadians(a.nominal())),
                c.high() * Math.cos(Math.toRadians(flattest)));
    }

    /// {@return how far the motor axis lies above the axle (mm)}
    static Range above(Subject s) {
        return above(s.drive(), s.at());
    }

    static Range above(Drive drive, DriveLayout at) {
        var c = at.centreDistanceMm();
        var a = drive.placement().aboveAxleDeg();
        double low = Math.sin(Math.toRadians(a.lower()));
        double high = Math.sin(Math.toRadians(a.upper()));
        return new Range(
                Math.min(c.low() * low, c.high() * low),
                c.nominal() * Math.sin(Math.toRadians(a.nominal())),
                Math.max(c.low() * high, c.high() * high));
    }
}
