package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Role;
import beltwright.layout.DriveLayout;
import beltwright.part.Idler;

/// The idler of one drive, where it has one: from the side, and in the plan cut through its own axis.
record IdlerDrawing(Drive drive, DriveLayout at) {
    private static final double CLEARANCE = 0.2; // of the screw in its hole, as drawn (mm)

    boolean any() {
        return !drive.idler().blank();
    }

    Point centre() {
        return new Point(at.idlerXMm(), at.idlerZMm());
    }

    /// {@return radius that the belt lies on: the teeth, or the smooth round for the belt's back (mm)}
    double runsOnMm() {
        var idler = drive.idler();
        return idler.runs() == Idler.Runs.INSIDE
                ? idler.teeth() * idler.profile().pitchMm() / Math.PI / 2
                        - idler.profile().pitchLineDifferentialMm()
                : idler.diameterMm().nominal() / 2;
    }

    private double reach() {
        return drive.idler().reachDiameterMm().nominal() / 2;
    }

    /// {@return a point on its face beside the screw, turned from the line of centres}
    Point face() {
        var line = new Point(at.motorXMm(), at.motorZMm()).unit();
        var aside = line.left().times(Math.signum(line.cross(centre())));
        return centre().plus(aside.times(0.65 * runsOnMm()));
    }

    /// {@return whether its section lies over a thing this wide in the plan}
    boolean coversInPlan(double y, double half) {
        return any() && Math.abs(y - at.idlerXMm()) < reach() + half;
    }

    private boolean flanged() {
        return reach() > runsOnMm() + 0.1;
    }

    void side(Sketch sketch, BeltPath belt, double corner) {
        if (!any()) {
            return;
        }
        var idler = drive.idler();
        sketch.of(drive.seat(Role.IDLER));
        if (flanged()) {
            sketch.circle(centre(), reach(), LineClass.OUTLINE, Fill.PAPER);
        }
        if (idler.runs() == Idler.Runs.INSIDE) {
            double groove = belt.exists() ? belt.groove(centre(), drive.belt().teeth()) : 0;
            sketch.path(BeltPath.rim(centre(), idler.profile(), idler.teeth(), groove), LineClass.OUTLINE, Fill.PAPER);
        } else {
            sketch.circle(centre(), runsOnMm(), LineClass.OUTLINE, Fill.PAPER);
        }
        sketch.of(drive.seat(Role.IDLER_SCREW));
        ScrewFigure.fromAbove(sketch, drive.idlerScrew(), centre(), corner);
    }

    /// What stands in front of the belt.
    void sideFront(Sketch sketch) {
        if (any()) {
            sketch.of(drive.seat(Role.IDLER));
            if (flanged()) {
                sketch.circle(centre(), reach(), LineClass.PHANTOM);
            }
            double past = reach() + 3;
            sketch.line(centre().plus(new Point(-past, 0)), centre().plus(new Point(past, 0)), LineClass.CENTRE);
            sketch.line(centre().plus(new Point(0, -past)), centre().plus(new Point(0, past)), LineClass.CENTRE);
        }
    }

    /// The idler on a sleeve that stands on the plate; in line with the drive pulley's teeth while nobody measured it.
    void plan(Sketch sketch, Stations across) {
        if (!any()) {
            return;
        }
        var idler = drive.idler();
        double plate = at.plateOuterMm().nominal();
        double flange =
                idler.flangeThicknessMm().known() ? idler.flangeThicknessMm().nominal() : 0;
        double half = idler.faceWidthMm().nominal() / 2;
        double middle = idler.standoffMm().known()
                ? plate + idler.standoffMm().nominal() + flange + half
                : at.driveRimMiddleMm().nominal();
        double head = plate + idler.screwGripMm().nominal();
        double bore = idler.screwThread().majorMm() / 2 + CLEARANCE;
        double sleeve = Math.min(runsOnMm() * 0.75, bore + 2);
        double counterbore = drive.idlerScrew().head().diameterMm(idler.screwThread()) / 2 + CLEARANCE;
        double y = at.idlerXMm();
        double root =
                idler.runs() == Idler.Runs.INSIDE ? runsOnMm() - idler.profile().toothHeightMm() : runsOnMm();
        sketch.of(drive.seat(Role.IDLER));
        for (int sign = -1; sign <= 1; sign += 2) {
            var near = y + sign * bore;
            sketch.rectangle(across.x(plate), near, across.x(head), y + sign * sleeve, Fill.STEEL, sign > 0);
            double inside = head < middle + half ? Math.max(sleeve, Math.min(counterbore, root - 1)) : sleeve;
            sketch.rectangle(
                    across.x(middle - half),
                    y + sign * inside,
                    across.x(middle + half),
                    y + sign * root,
                    Fill.STEEL,
                    sign < 0);
            if (root < runsOnMm()) {
                sketch.rectangle(
                        across.x(middle - half),
                        y + sign * root,
                        across.x(middle + half),
                        y + sign * runsOnMm(),
                        LineClass.EDGE,
                        Fill.PAPER);
            }
            if (flanged()) {
                for (int end = -1; end <= 1; end += 2) {
                    sketch.rectangle(
                            across.x(middle + end * half),
                            y + sign * inside,
                            across.x(middle + end * (half + flange)),
                            y + sign * reach(),
                            Fill.STEEL,
                            sign < 0);
                }
            }
        }
        sketch.of(drive.seat(Role.IDLER_SCREW));
        new ScrewFigure(drive.idlerScrew(), new Point(across.x(head), y), across.inward()).draw(sketch);
    }
}
