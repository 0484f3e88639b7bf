package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Hardware;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.layout.DriveLayout;
import beltwright.part.DrivePulley;
import beltwright.part.Motor;
import beltwright.part.Screw;
import beltwright.part.ShaftForm;
import beltwright.part.ToothedRim;
import java.util.ArrayList;
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
    private final MountSection mount;
    private final IdlerDrawing idler;
    private final CoverDrawing cover;

    DriveSection(Sketch sketch, Kit kit, Drive drive, DriveLayout at, Materials materials) {
        this.sketch = sketch;
        this.kit = kit;
        this.drive = drive;
        this.at = at;
        this.materials = materials;
        across = new Stations(kit, drive.side());
        axis = at.motorXMm();
        toward = axis < 0 ? -1 : 1;
        mount = new MountSection(sketch, kit, drive, at, materials);
        idler = new IdlerDrawing(drive, at);
        cover = new CoverDrawing(drive, at);
    }

    MountSection mount() {
        return mount;
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
        mount.draw();
        cover.planInside(sketch, across);
        beltSpan();
        boolean above = at.idlerZMm() > at.motorZMm();
        if (!above) {
            idler.plan(sketch, across);
        }
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
        if (above) {
            idler.plan(sketch, across);
        }
        cover.plan(sketch, across);
        centreLine();
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
        double boss = boss(root);
        var hatch = materials.hatch(pulley.material());
        sketch.of(seat(Role.WHEEL_PULLEY));
        for (int sign = -1; sign <= 1; sign += 2) {
            var outline = new ArrayList<>(List.of(p(near, sign * bore)));
            switch (pulley.holding()) {
                case LUGS -> {
                    outline.add(p(seat, sign * bore));
                    if (sign > 0) {
                        double circle = pulley.lugCircleMm().nominal() / 2;
                        double lug = pulley.lugWidthMm().nominal() / 2;
                        double tip = seat + pulley.lugLengthMm().nominal();
                        outline.add(p(seat, circle - lug));
                        outline.add(p(tip, circle - lug));
                        outline.add(p(tip, circle + lug));
                        outline.add(p(seat, circle + lug));
                    }
                }
                case PRESS_FIT -> {
                    double spigot = pulley.spigotDiameterMm().nominal() / 2;
                    double tip = seat + pulley.spigotLengthMm().nominal();
                    outline.add(p(tip, sign * bore));
                    outline.add(p(tip, sign * spigot));
                    outline.add(p(seat, sign * spigot));
                }
                case SCREWS -> outline.add(p(seat, sign * bore));
            }
            outline.addAll(
                    List.of(p(seat, sign * boss), p(far, sign * boss), p(far, sign * root), p(near, sign * root)));
            sketch.path(List.of(Contour.polygon(outline.toArray(Point[]::new))), LineClass.OUTLINE, hatch, true);
        }
        flanges(rim, 0, near, far, root, hatch);
    }

    /// {@return radius of the face that seats on the core: around what holds the pulley, its edge not measured (mm)}
    private double boss(double root) {
        var pulley = drive.wheelPulley();
        return switch (pulley.holding()) {
            case LUGS ->
                Math.min(
                        root,
                        (pulley.lugCircleMm().nominal() + pulley.lugWidthMm().nominal()) / 2 + 2);
            case PRESS_FIT ->
                Math.max(
                        root,
                        Math.min(
                                pulley.rim().reachDiameterMm() / 2,
                                pulley.spigotDiameterMm().nominal() / 2 + 2));
            case SCREWS ->
                Math.min(
                        root,
                        pulley.screwCircleMm().nominal() / 2
                                + pulley.screwThread().majorMm());
        };
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

    /// A screw through the core into the pulley, on the side of the axle where no lug is cut.
    private void pulleyScrew() {
        if (Hardware.needed(kit, seat(Role.PULLEY_SCREWS)) == 0) {
            return;
        }
        double seat = at.pulleySeatMm().nominal();
        double head = seat + drive.end().wheel().screwGripMm().nominal();
        double circle = drive.wheelPulley().screwCircleMm().nominal() / 2;
        screw(Role.PULLEY_SCREWS, drive.pulleyScrew(), -circle, head);
    }

    /// A screw lengthwise, pointing inward along the axle.
    ///
    /// @param headSeat station of the face under the head
    private void screw(Role role, Screw screw, double y, double headSeat) {
        sketch.of(seat(role));
        new ScrewFigure(screw, p(headSeat, y), across.inward()).draw(sketch);
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
            double half = washer.outsideMm().nominal() / 2;
            if (idler.coversInPlan(y, half)) {
                continue; // turned into the section plane it would stand in the idler; in truth it stands beside it
            }
            sketch.of(seat(Role.MOTOR_WASHERS));
            sketch.rectangle(across.x(outer), y - half, across.x(outer + thick), y + half, Fill.STEEL, false);
            screw(Role.MOTOR_SCREWS, drive.motorScrew(), y, outer + thick);
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
        if (pulley.boreForm() == ShaftForm.KEYED) {
            double keyway = axis + toward * (pulley.overKeywayMm().nominal() - bore);
            sketch.rectangle(
                    across.x(near), axis + toward * bore, across.x(far), keyway, LineClass.OUTLINE, Fill.PAPER);
        }
        shaftForm(near, Math.min(shaftEnd, far));
        if (pulley.setScrews() > 0) {
            setScrew(hubFirst ? near + hub / 2 : far - hub / 2, hub > 0 ? hub : 0, (rimNear + rimFar) / 2, root);
        }
    }

    /// The flat or the key that the section shows, as far as the pulley reaches: their own length is not measured.
    private void shaftForm(double from, double to) {
        var motor = drive.motor();
        double r = motor.shaftDiameterMm().nominal() / 2;
        sketch.of(seat(Role.MOTOR));
        switch (motor.shaftForm()) {
            case ROUND -> {}
            case FLAT, TWO_FLATS -> {
                double flat = axis + toward * (motor.shaftFlatMm().nominal() - r);
                sketch.line(across.x(from), flat, across.x(to), flat, LineClass.EDGE);
            }
            case KEYED -> {
                double out = motor.overKeyMm().nominal() - 2 * r;
                sketch.rectangle(
                        across.x(from),
                        axis + toward * (r - out),
                        across.x(to),
                        axis + toward * (r + out),
                        LineClass.OUTLINE,
                        Fill.PAPER);
            }
        }
    }

    /// {@return how far from the motor axis a set screw stands: on the shaft, its flat or its key (mm)}
    static double setScrewFoot(Motor motor) {
        double half = motor.shaftDiameterMm().nominal() / 2;
        return switch (motor.shaftForm()) {
            case ROUND -> half;
            case FLAT, TWO_FLATS -> motor.shaftFlatMm().nominal() - half;
            case KEYED -> motor.overKeyMm().nominal() - half;
        };
    }

    /// The set screw stands on the shaft, on its flat or its key where there is one.
    private void setScrew(double inHub, double hub, double inRim, double root) {
        var screw = drive.setScrew();
        var motor = drive.motor();
        double r = screw.thread().majorMm() / 2;
        double core = screw.thread().minorDiameterMm() / 2;
        double station = hub > 0 ? inHub : inRim;
        double foot = setScrewFoot(motor);
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
