package beltwright.check;

import beltwright.kit.Drive;
import beltwright.layout.DriveLayout;
import beltwright.layout.LayoutSolver;
import beltwright.part.Idler;

/// Writes how the belt sets the centre distance; several workings begin with it.
final class Closure {
    private static final String GEOMETRY = "open belt around two pulleys, exact (Shigley eq. 17-1, 17-2)";

    private static final String TANGENTS = "turn between the common tangents, from the layout";

    private Closure() {}

    /// {@return whether every number is known that the centre distance rests on}
    static boolean known(Drive drive) {
        var idler = drive.idler();
        var place = drive.placement();
        return drive.belt().lengthDeviationMm().known()
                && (idler.blank()
                        || (place.idlerAlongMm().known()
                                && place.idlerAsideMm().known()
                                && (idler.runs() == Idler.Runs.INSIDE
                                        || idler.diameterMm().known())));
    }

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
        if (!at.closed() && !drive.idler().blank()) {
            idler(drive, w);
            w.given("C", "no centre distance: the idler keeps the belt from closing", Double.NaN, "mm", "layout");
            return;
        }
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
        if (!drive.idler().blank()) {
            aroundIdler(drive, at.centreDistanceMm().nominal(), w);
            return;
        }
        w.line(
                "L_check",
                "2·√(C^2 − ((D − d)/2)^2) + π/2·(D + d) + (D − d)·asin((D − d)/(2·C))",
                pitchLine.lengthMm(at.centreDistanceMm().nominal()),
                "mm",
                GEOMETRY);
    }

    /// Quotes the idler and where it stands.
    private static void idler(Drive drive, Working w) {
        w.given("x_i", drive.placement().idlerAlongMm());
        w.given("y_i", drive.placement().idlerAsideMm());
        idlerDiameter(drive, w);
    }

    /// Writes the pitch diameter of the idler.
    static void idlerDiameter(Drive drive, Working w) {
        var idler = drive.idler();
        var belt = drive.belt().profile();
        if (idler.runs() == Idler.Runs.INSIDE) {
            w.given("z_i", idler.id() + ".teeth", idler.teeth(), "", "count");
            w.given(
                    "p_i",
                    "pitch of the idler",
                    idler.profile().pitchMm(),
                    "mm",
                    idler.profile().standard());
            w.line("d_i", "z_i·p_i/π", idler.pitchDiameterMm(belt).nominal(), "mm", "pitch diameter of the idler");
        } else {
            w.given("d_back", idler.diameterMm());
            w.given("h_b", "height of the belt", belt.heightMm(), "mm", belt.standard());
            w.given("h_t", "height of its teeth", belt.toothHeightMm(), "mm", belt.standard());
            w.given(
                    "u",
                    "pitch line above the root of the teeth",
                    belt.pitchLineDifferentialMm(),
                    "mm",
                    belt.standard());
            w.line(
                    "d_i",
                    "d_back + 2·(h_b − h_t − u)",
                    idler.pitchDiameterMm(belt).nominal(),
                    "mm",
                    "pitch line on the back of the belt");
        }
    }

    /// The three spans and wraps of a belt with an idler, summed to its length.
    private static void aroundIdler(Drive drive, double c, Working w) {
        idler(drive, w);
        var loop = LayoutSolver.loop(drive);
        String side = drive.idler().runs() == Idler.Runs.BACK ? " + " : " − ";
        w.line("s_0", "√(C^2 − ((D − d)/2)^2)", loop.spanMm(c), "mm", "span without the idler");
        w.line(
                "s_1",
                "√(x_i^2 + y_i^2 − (D/2" + side + "d_i/2)^2)",
                loop.toIdlerMm(c),
                "mm",
                "span from the wheel pulley to the idler");
        w.line(
                "s_2",
                "√((C − x_i)^2 + y_i^2 − (d/2" + side + "d_i/2)^2)",
                loop.fromIdlerMm(c),
                "mm",
                "span from the idler to the drive pulley");
        w.given("wrap", "wrap on the drive pulley", loop.driveWrapRad(c), "rad", TANGENTS);
        w.given("wrap_w", "wrap on the wheel pulley", loop.drivenWrapRad(c), "rad", TANGENTS);
        w.given("wrap_i", "wrap on the idler", loop.idlerWrapRad(c), "rad", TANGENTS);
        w.line(
                "L_check",
                "s_0 + s_1 + s_2 + wrap·d/2 + wrap_w·D/2 + wrap_i·d_i/2",
                loop.lengthMm(c),
                "mm",
                "belt around three pulleys, exact");
    }

    /// Writes the wrap on the drive pulley.
    static double driveWrap(Drive drive, double c, Working w) {
        if (!drive.idler().blank()) {
            return w.given(
                    "wrap", "wrap on the drive pulley", LayoutSolver.loop(drive).driveWrapRad(c), "rad", TANGENTS);
        }
        var line = LayoutSolver.pitchLine(drive);
        w.line("φ", "asin((D − d)/(2·C))", line.spanAngleRad(c), "rad", "angle between span and centre line");
        return w.line("wrap", "π − 2·φ", line.driveWrapRad(c), "rad", "on the drive pulley");
    }
}
