package beltwright.check;

import beltwright.kit.Drive;
import beltwright.layout.DriveLayout;
import beltwright.layout.LayoutSolver;

/// Writes how the belt sets the centre distance; several workings begin with it.
final class Closure {
    private static final String GEOMETRY = "open belt around two pulleys, exact (Shigley eq. 17-1, 17-2)";

    private Closure() {}

    static void pitchDiameters(Drive drive, Working w) {
        var rim = drive.drivePulley().rim();
        var driven = drive.wheelPulley().rim();
        double p = w.given(
                "p", "belt pitch", rim.profile().pitchMm(), "mm", rim.profile().standard());
        w.given("z1", drive.drivePulley().id() + ".rim.teeth", rim.teeth(), "", "count");
        w.given("z2", drive.wheelPulley().id() + ".rim.teeth", driven.teeth(), "", "count");
        boolean onePitch = driven.profile().pitchMm() == p;
        if (!onePitch) {
            w.given(
                    "p2",
                    "pitch of the wheel pulley",
                    driven.profile().pitchMm(),
                    "mm",
                    driven.profile().standard());
        }
        w.line("d", "z1·p/π", rim.teeth() * p / Math.PI, "mm", "pitch diameter of the drive pulley");
        w.line(
                "D",
                onePitch ? "z2·p/π" : "z2·p2/π",
                driven.pitchDiameterMm(),
                "mm",
                "pitch diameter of the wheel pulley");
    }

    static void centreDistance(Drive drive, DriveLayout at, Working w) {
        pitchDiameters(drive, w);
        var belt = drive.belt();
        var pitchLine = LayoutSolver.pitchLine(drive);
        w.given("z_b", belt.id() + ".teeth", belt.teeth(), "", "count");
        w.given(
                "pb",
                "pitch of the belt",
                belt.profile().pitchMm(),
                "mm",
                belt.profile().standard());
        w.given("e", belt.lengthDeviationMm());
        w.line("L", "z_b·pb + e", belt.lengthMm(), "mm", "pitch length");
        if (!at.closed()) {
            w.line(
                    "L_least",
                    "π·max(d, D)",
                    Math.PI * Math.max(pitchLine.driveMm(), pitchLine.drivenMm()),
                    "mm",
                    "shorter than this does not go around");
            w.given("C", "no centre distance: the belt does not go around", Double.NaN, "mm", "layout");
            return;
        }
        w.given(
                "C",
                "centre distance at which the belt is L long, from the layout",
                at.centreDistanceMm(),
                "root of L(C) = L");
        w.line(
                "L_check",
                "2·√(C^2 − ((D − d)/2)^2) + π/2·(D + d) + (D − d)·asin((D − d)/(2·C))",
                pitchLine.lengthMm(at.centreDistanceMm().nominal()),
                "mm",
                GEOMETRY);
    }
}
