package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Hardware;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.layout.DriveLayout;
import beltwright.part.DrivePulley;
import beltwright.part.Hanger;
import beltwright.part.Screw;
import beltwright.part.ShaftForm;
import beltwright.part.ToothedRim;
import java.util.List;

/// One drive in the plan, cut through its shaft: mount, motor, screws, both pulleys and the belt.
final class DriveSection {
    private final Sketch sketch;
    private final Kit kit;
    private final Drive drive;
    private final DriveLayout at;
    private final Materials materials;
    private final Stations across;
    private final double toward;
    private final double axis;

    DriveSection(Sketch sketch, Kit kit, Drive drive, DriveLayout at, Materials materials) {
        this.sketch = sketch;
        this.kit = kit;
        this.drive = drive;
        this.at = at;
        this.materials = materials;
        across = new Stations(kit, drive.side());
        axis = at.motorXMm();
        toward = axis < 0 ? -1 : 1;
    }

    void drawOnAxle() {
        wheelPulley();
        pulleyScrew();
        cut(
                Role.WHEEL_PULLEY,
                drive.wheelPulley().rim(),
                0,
                at.wheelRimMiddleMm().nominal(),
                -toward);
    }

    void drawOnMotor() {
        mount();
        beltSpan();
        can();
        motorScrews();
        shaft();
        drivePulley();
        cut(
                Role.DRIVE_PULLEY,
                drive.drivePulley().rim(),
                axis,
                at.driveRimMiddleMm().nominal(),
                toward);
        centreLine();
    }

    /// Plate and clamp: hatched around the slot and the opening, and around the hanger, which runs through it.
    private void mount() {
        var mount = drive.mount();
        double outer = at.plateOuterMm().nominal();
        double inner = at.plateInnerMm().nominal();
        double middle = (mount.slotMinMm().nominal() + mount.slotMaxMm().nominal()) / 2;
        double travel = (mount.slotMaxMm().nominal() - mount.slotMinMm().nominal()) / 2;
        double plan = Math.abs(axis) / Math.hypot(axis, at.motorZMm());
        double centre = toward * middle * plan;
        double tip = mount.plateRadiusMm().nominal() + travel * plan;
        double opening = mount.clampSection() == Hanger.Section.ROUND
                ? mount.clampHeightMm().nominal() / 2
                : mount.clampDepthMm().nominal() / 2;
        double wall = opening + 2 * mount.clampThread().majorMm();
        double hole = mount.openingMm().nominal() / 2 + travel * plan;
        double slot = mount.boltCircleMm().nominal() / 2;
        double slotHalf = mount.slotWidthMm().nominal() / 2 + travel * plan;
        var hatch = materials.hatch(mount.material());
        sketch.of(seat(Role.MOUNT));
        sketch.rectangle(
                across.x(inner),
                centre - toward * tip,
                across.x(outer),
                centre + toward * tip,
                LineClass.OUTLINE,
                Fill.PAPER);
        // from the tip back to the axle: solid, slot, solid, opening, solid, slot, solid up to the clamp
        solid(inner, outer, centre + toward * tip, centre + toward * (slot + slotHalf), hatch);
        solid(inner, outer, centre + toward * (slot - slotHalf), centre + toward * hole, hatch);
        solid(inner, outer, centre - toward * hole, centre - toward * (slot - slotHalf), hatch);
        solid(inner, outer, centre - toward * (slot + slotHalf), toward * opening, hatch);
        solid(inner, outer, -toward * opening, -toward * wall, hatch);
        double clamp = inner - mount.clampLengthMm().nominal();
        solid(clamp, inner, toward * wall, toward * opening, hatch);
        solid(clamp, inner, -toward * opening, -toward * wall, hatch);
    }

    /// One hatched piece, where there is any of it.
    private void solid(double from, double to, double near, double far, Fill hatch) {
        if ((near - far) * toward > 0) {
            sketch.rectangle(across.x(from), near, across.x(to), far, hatch, true);
        }
    }

    /// The lower span, seen between the pulleys.
    private void beltSpan() {
        double half = drive.belt().widthMm().nominal() / 2;
        double rim = at.driveRimMiddleMm().nominal();
        double wheel = at.wheelRimMiddleMm().nominal();
        double start = toward * drive.wheelPulley().rim().outsideDiameterMm() / 2;
        double stop = axis - toward * drive.drivePulley().rim().outsideDiameterMm() / 2;
        if ((stop - start) * toward <= 0) {
            return; // seen from above, the pulleys cover each other
        }
        sketch.of(seat(Role.BELT));
        sketch.path(
                Contour.polygon(
                        new Point(across.x(wheel - half), start),
                        new Point(across.x(rim - half), stop),
                        new Point(across.x(rim + half), stop),
                        new Point(across.x(wheel + half), start)),
                LineClass.EDGE,
                Fill.TINT);
    }

    private void wheelPulley() {
        var pulley = drive.wheelPulley();
        var rim = pulley.rim();
        double root = rim.outsideDiameterMm() / 2 - rim.profile().toothHeightMm();
        double bore = pulley.boreDiameterMm().nominal() / 2;
        double near = at.wheelRimNearMm().nominal();
        double far = at.wheelRimFarMm().nominal();
        double seat = at.pulleySeatMm().nominal();
        double circle = pulley.lugCircleMm().nominal() / 2;
        double lug = pulley.lugWidthMm().nominal() / 2;
        double boss = Math.min(root, circle + lug + 2);
        double tip = seat + pulley.lugLengthMm().nominal();
        var hatch = materials.hatch(pulley.material());
        sketch.of(seat(Role.WHEEL_PULLEY));
        sketch.path(
                List.of(Contour.polygon(
                        p(near, bore),
                        p(seat, bore),
                        p(seat, circle - lug),
                        p(tip, circle - lug),
                        p(tip, circle + lug),
                        p(seat, circle + lug),
                        p(seat, boss),
                        p(far, boss),
                        p(far, root),
                        p(near, root))),
                LineClass.OUTLINE,
                hatch,
                true);
        sketch.path(
                List.of(Contour.polygon(
                        p(near, -bore), p(seat, -bore), p(seat, -boss), p(far, -boss), p(far, -root), p(near, -root))),
                LineClass.OUTLINE,
                hatch,
                true);
        flanges(rim, 0, near, far, root, hatch);
    }

    private void flanges(ToothedRim rim, double centre, double near, double far, double root, Fill hatch) {
        double flange = rim.flangeDiameterMm().nominal() / 2;
        double thick = rim.flangeThicknessMm().nominal();
        var flanges = rim.flanges();
        for (int sign = -1; sign <= 1; sign += 2) {
            double s = sign;
            if (flanges == ToothedRim.Flanges.BOTH || flanges == ToothedRim.Flanges.MOTOR_SIDE) {
                sketch.rectangle(
                        across.x(near), centre + s * root, across.x(near + thick), centre + s * flange, hatch, false);
            }
            if (flanges.onWheelSide()) {
                sketch.rectangle(
                        across.x(far - thick), centre + s * root, across.x(far), centre + s * flange, hatch, false);
            }
        }
    }

    /// A screw through the core into the pulley, on the circle of the lugs, below the axle.
    private void pulleyScrew() {
        if (Hardware.needed(kit, seat(Role.PULLEY_SCREWS)) == 0) {
            return;
        }
        double seat = at.pulleySeatMm().nominal();
        double head = seat + drive.end().wheel().screwGripMm().nominal();
        screw(
                Role.PULLEY_SCREWS,
                drive.pulleyScrew(),
                -drive.wheelPulley().lugCircleMm().nominal() / 2,
                head,
                -1);
    }

    /// A screw lengthwise: head, shank with its thread lines, socket.
    ///
    /// @param headSeat station of the face under the head
    /// @param way −1 where the screw points inward along the axle
    private void screw(Role role, Screw screw, double y, double headSeat, int way) {
        sketch.of(seat(role));
        var thread = screw.thread();
        double r = thread.majorMm() / 2;
        double core = thread.minorDiameterMm() / 2;
        double wide = screw.head().diameterMm(thread) / 2;
        double high = screw.head().heightMm(thread);
        double tip = headSeat + way * screw.lengthMm().nominal();
        double chamfer = (r - core) * 1.2;
        sketch.path(
                Contour.polygon(
                        new Point(across.x(headSeat), y - r),
                        new Point(across.x(tip - way * chamfer), y - r),
                        new Point(across.x(tip), y - core),
                        new Point(across.x(tip), y + core),
                        new Point(across.x(tip - way * chamfer), y + r),
                        new Point(across.x(headSeat), y + r)),
                LineClass.OUTLINE,
                Fill.PAPER);
        sketch.line(across.x(headSeat), y + core, across.x(tip), y + core, LineClass.EDGE);
        sketch.line(across.x(headSeat), y - core, across.x(tip), y - core, LineClass.EDGE);
        double key = screw.head().keyMm(thread) / 2;
        if (high > 0) {
            double top = headSeat - way * high;
            sketch.rectangle(across.x(headSeat), y - wide, across.x(top), y + wide, LineClass.OUTLINE, Fill.PAPER);
            sketch.rectangle(
                    across.x(top), y - key, across.x(headSeat - way * high / 2), y + key, LineClass.HIDDEN, Fill.OPEN);
        } else {
            sketch.path(
                    Contour.polygon(
                            new Point(across.x(headSeat), y - wide),
                            new Point(across.x(headSeat + way * (wide - r)), y - r),
                            new Point(across.x(headSeat + way * (wide - r)), y + r),
                            new Point(across.x(headSeat), y + wide)),
                    LineClass.OUTLINE,
                    Fill.PAPER);
        }
        sketch.line(across.x(headSeat - way * (high + 2)), y, across.x(tip + way * 2), y, LineClass.CENTRE);
    }

    private void can() {
        var motor = drive.motor();
        double face = at.plateInnerMm().nominal();
        double end = at.motorEndMm().nominal();
        double r = motor.canDiameterMm().nominal() / 2;
        double depth = face - motor.threadDepthMm().nominal();
        double bevel = Math.min(2, r / 8);
        sketch.of(seat(Role.MOTOR));
        sketch.path(
                Contour.polygon(
                        new Point(across.x(face), axis - r + bevel),
                        new Point(across.x(face - bevel), axis - r),
                        new Point(across.x(end + bevel), axis - r),
                        new Point(across.x(end), axis - r + bevel),
                        new Point(across.x(end), axis + r - bevel),
                        new Point(across.x(end + bevel), axis + r),
                        new Point(across.x(face - bevel), axis + r),
                        new Point(across.x(face), axis + r - bevel)),
                LineClass.OUTLINE,
                Fill.PAPER);
        sketch.line(across.x(depth), axis - r, across.x(depth), axis + r, LineClass.HIDDEN);
        // the threaded holes, to the depth where the windings begin
        double hole = motor.thread().majorMm() / 2;
        for (int sign = -1; sign <= 1; sign += 2) {
            double y = axis + sign * motor.boltCircleMm().nominal() / 2;
            sketch.line(across.x(face), y - hole, across.x(depth), y - hole, LineClass.HIDDEN);
            sketch.line(across.x(face), y + hole, across.x(depth), y + hole, LineClass.HIDDEN);
        }
    }

    private void motorScrews() {
        double outer = at.plateOuterMm().nominal();
        var washer = drive.motorWasher();
        double thick = washer.thicknessMm().nominal();
        for (int sign = -1; sign <= 1; sign += 2) {
            double y = axis + sign * drive.motor().boltCircleMm().nominal() / 2;
            sketch.of(seat(Role.MOTOR_WASHERS));
            double half = washer.outsideMm().nominal() / 2;
            sketch.rectangle(across.x(outer), y - half, across.x(outer + thick), y + half, Fill.STEEL, false);
            screw(Role.MOTOR_SCREWS, drive.motorScrew(), y, outer + thick, -1);
        }
    }

    private void shaft() {
        var motor = drive.motor();
        double r = motor.shaftDiameterMm().nominal() / 2;
        double from = at.plateInnerMm().nominal();
        double end = at.shaftEndMm().nominal();
        sketch.of(seat(Role.MOTOR));
        double boss = motor.bossDiameterMm().nominal() / 2;
        if (boss > r) {
            double high = (at.plateOuterMm().nominal() - from) / 2; // its height is not measured
            sketch.rectangle(
                    across.x(from), axis - boss, across.x(from + high), axis + boss, LineClass.EDGE, Fill.PAPER);
        }
        sketch.rectangle(across.x(from), axis - r, across.x(end), axis + r, LineClass.OUTLINE, Fill.PAPER);
    }

    private void drivePulley() {
        var pulley = drive.drivePulley();
        var rim = pulley.rim();
        double near = at.drivePulleyNearMm().nominal();
        double far = at.drivePulleyFarMm().nominal();
        double hub = pulley.hubLengthMm().nominal();
        boolean hubFirst = pulley.hubSide() == DrivePulley.HubSide.MOTOR;
        double rimNear = hubFirst ? near + hub : near;
        double rimFar = hubFirst ? far : far - hub;
        double root = rim.outsideDiameterMm() / 2 - rim.profile().toothHeightMm();
        double bore = pulley.boreDiameterMm().nominal() / 2;
        double shaftEnd = at.shaftEndMm().nominal();
        sketch.of(seat(Role.DRIVE_PULLEY));
        for (int sign = -1; sign <= 1; sign += 2) {
            sketch.rectangle(
                    across.x(near), axis + sign * bore, across.x(far), axis + sign * root, Fill.STEEL, sign > 0);
        }
        flanges(rim, axis, rimNear, rimFar, root, Fill.STEEL);
        if (shaftEnd < far) {
            sketch.line(across.x(far), axis - bore, across.x(far), axis + bore, LineClass.OUTLINE);
        }
        sketch.of(seat(Role.MOTOR));
        var motor = drive.motor();
        double r = motor.shaftDiameterMm().nominal() / 2;
        if (motor.shaftForm() == ShaftForm.FLAT) {
            double flat = axis + toward * (motor.shaftFlatMm().nominal() - r);
            sketch.line(across.x(near), flat, across.x(shaftEnd), flat, LineClass.EDGE);
        }
        if (pulley.setScrews() > 0) {
            setScrew(hubFirst ? near + hub / 2 : far - hub / 2, hub > 0 ? hub : 0, (rimNear + rimFar) / 2, root);
        }
    }

    /// The set screw stands on the shaft, on its flat where there is one.
    private void setScrew(double inHub, double hub, double inRim, double root) {
        var screw = drive.setScrew();
        var motor = drive.motor();
        double r = screw.thread().majorMm() / 2;
        double core = screw.thread().minorDiameterMm() / 2;
        double station = hub > 0 ? inHub : inRim;
        double foot = motor.shaftForm() == ShaftForm.FLAT
                ? motor.shaftFlatMm().nominal() - motor.shaftDiameterMm().nominal() / 2
                : motor.shaftDiameterMm().nominal() / 2;
        double top = foot + screw.lengthMm().nominal();
        sketch.of(seat(Role.SET_SCREWS));
        double hole = Math.max(root, top);
        double side = axis + toward * foot;
        sketch.rectangle(
                across.x(station - r), side, across.x(station + r), axis + toward * hole, LineClass.EDGE, Fill.PAPER);
        double end = axis + toward * top;
        sketch.rectangle(across.x(station - r), side, across.x(station + r), end, LineClass.OUTLINE, Fill.PAPER);
        sketch.line(across.x(station - core), side, across.x(station - core), end, LineClass.EDGE);
        sketch.line(across.x(station + core), side, across.x(station + core), end, LineClass.EDGE);
    }

    /// The belt where it is cut on the far side of a pulley; on the other side no tooth lies in the groove.
    private void cut(Role pulley, ToothedRim rim, double centre, double middle, double away) {
        double outside = rim.outsideDiameterMm() / 2;
        double root = outside - rim.profile().toothHeightMm();
        double back = outside + rim.profile().heightMm() - rim.profile().toothHeightMm();
        double half = drive.belt().widthMm().nominal() / 2;
        sketch.of(seat(Role.BELT));
        sketch.rectangle(
                across.x(middle - half),
                centre + away * root,
                across.x(middle + half),
                centre + away * back,
                Fill.RUBBER,
                false);
        double face = rim.faceWidthMm().nominal() / 2;
        sketch.of(seat(pulley));
        sketch.line(
                across.x(middle - face),
                centre - away * outside,
                across.x(middle + face),
                centre - away * outside,
                LineClass.EDGE);
        sketch.line(
                across.x(middle - face),
                centre - away * root,
                across.x(middle - face),
                centre - away * outside,
                LineClass.EDGE);
        sketch.line(
                across.x(middle + face),
                centre - away * root,
                across.x(middle + face),
                centre - away * outside,
                LineClass.EDGE);
    }

    private void centreLine() {
        sketch.of(seat(Role.MOTOR));
        double from = Math.min(at.motorEndMm().nominal(), at.plateInnerMm().nominal()) - 5;
        double to = Math.max(at.shaftEndMm().nominal(), at.drivePulleyFarMm().nominal()) + 5;
        sketch.line(across.x(from), axis, across.x(to), axis, LineClass.CENTRE);
    }

    private Point p(double station, double y) {
        return new Point(across.x(station), y);
    }

    private SeatName seat(Role role) {
        return drive.seat(role);
    }
}
