package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.DriveLayout;
import beltwright.part.Hanger;
import beltwright.part.Mount;
import beltwright.part.ShaftForm;
import beltwright.part.ToothedRim;
import java.util.List;

/// One drive seen from outside, the wheel taken off and shown in front of it, the hanger cut where the mount clamps.
///
/// It is drawn x forward, z up, as seen from the right; the left drive is mirrored at the end, because from outside its
/// nose points left.
final class SideView {
    private static final double MARGIN = 12; // of the road past wheel and motor (mm)

    private final Kit kit;
    private final Drive drive;
    private final DriveLayout at;
    private final Materials materials;
    private final Sketch sketch = new Sketch();
    private final Point motor;
    private final Point along;
    private final BeltPath belt;
    private final double pulleyReach;
    private final MountPlate plate;
    private final IdlerDrawing idler;
    private final CoverDrawing cover;
    private final DeckDrawing deck;

    SideView(Kit kit, Drive drive, DriveLayout at, Materials materials) {
        this.kit = kit;
        this.drive = drive;
        this.at = at;
        this.materials = materials;
        motor = new Point(at.motorXMm(), at.motorZMm());
        along = motor.unit();
        belt = BeltPath.of(drive, at);
        pulleyReach = drive.wheelPulley().rim().reachDiameterMm() / 2;
        plate = new MountPlate(drive.mount(), kit.hanger(), along);
        idler = new IdlerDrawing(drive, at);
        cover = new CoverDrawing(drive, at);
        deck = new DeckDrawing(kit);
    }

    /// How points of this projection stand on the sheet.
    static Placing facing(Side side) {
        return side == Side.LEFT ? Placing.MIRROR : new Placing(1, Point.ORIGIN);
    }

    Sketch draw() {
        ground();
        mount();
        cover.sideFeet(sketch);
        motorScrews();
        wheelPulley();
        hanger();
        clampScrews();
        flangeScrews();
        dowelPins();
        drivePulley();
        idler.side(sketch, belt, along.angle());
        belt();
        idler.sideFront(sketch);
        cover.sideWall(sketch);
        motor();
        setScrews();
        hubScrews();
        wheel();
        deck.side(sketch, ahead());
        centreLines();
        return sketch;
    }

    private void ground() {
        var wheel = drive.end().wheel();
        double r = wheel.diameterMm().nominal() / 2;
        double can = drive.motor().canDiameterMm().nominal() / 2;
        double left = Math.min(-r, motor.x() - can) - MARGIN;
        double right = ahead();
        sketch.of(seat(Role.WHEEL));
        sketch.line(left, -r, right, -r, LineClass.GROUND);
        for (double x = left + 4; x <= right; x += 4) {
            sketch.line(x, -r, x - 4, -r - 4, LineClass.EDGE);
        }
        double worn = wheel.wornDiameterMm().nominal() / 2;
        if (r - worn > 0.2) {
            sketch.line(left, -worn, right, -worn, LineClass.PHANTOM);
        }
    }

    /// {@return how far ahead of the axle road and deck are shown}
    private double ahead() {
        double r = drive.end().wheel().diameterMm().nominal() / 2;
        return Math.max(r, motor.x() + drive.motor().canDiameterMm().nominal() / 2) + MARGIN;
    }

    private void mount() {
        var mount = drive.mount();
        var near = along.times(mount.slotMinMm().nominal());
        var far = along.times(mount.slotMaxMm().nominal());
        sketch.of(seat(Role.MOUNT));
        sketch.path(plate.outline(), LineClass.OUTLINE, Fill.PAPER);
        sketch.path(Contour.slot(near, far, mount.openingMm().nominal()), LineClass.OUTLINE, Fill.PAPER);
        for (int i = 0; i < mount.slots(); i++) {
            var out = Point.polar(mount.boltCircleMm().nominal() / 2, slotDirection(i));
            var width = mount.slotWidthMm().nominal();
            sketch.path(Contour.slot(near.plus(out), far.plus(out), width), LineClass.OUTLINE, Fill.PAPER);
        }
    }

    private void wheelPulley() {
        var pulley = drive.wheelPulley();
        var rim = pulley.rim();
        sketch.of(seat(Role.WHEEL_PULLEY));
        if (rim.flanges() != ToothedRim.Flanges.NONE) {
            sketch.circle(Point.ORIGIN, rim.flangeDiameterMm().nominal() / 2, LineClass.OUTLINE, Fill.PAPER);
        }
        double groove = belt.exists() ? belt.groove(Point.ORIGIN, drive.belt().teeth()) : 0;
        sketch.path(BeltPath.rim(Point.ORIGIN, rim.profile(), rim.teeth(), groove), LineClass.OUTLINE, Fill.PAPER);

        sketch.of(seat(Role.MOUNT));
        plate.outline().segments().forEach(this::hidden);
        plate.split().forEach(this::hidden);

        sketch.of(seat(Role.WHEEL_PULLEY));
        switch (pulley.holding()) {
            case LUGS -> lugs();
            case SCREWS -> threadedHoles();
            case PRESS_FIT ->
                sketch.circle(Point.ORIGIN, pulley.spigotDiameterMm().nominal() / 2, LineClass.PHANTOM);
        }
        sketch.circle(Point.ORIGIN, pulley.boreDiameterMm().nominal() / 2, LineClass.OUTLINE);
    }

    private void lugs() {
        var pulley = drive.wheelPulley();
        double circle = pulley.lugCircleMm().nominal() / 2;
        for (int i = 0; i < pulley.lugs(); i++) {
            double half = pulley.lugWidthMm().nominal() / 2;
            sketch.circle(around(circle, i, pulley.lugs()), half, LineClass.EDGE, Fill.PAPER);
        }
        sketch.circle(Point.ORIGIN, circle, LineClass.CENTRE);
    }

    private void threadedHoles() {
        var pulley = drive.wheelPulley();
        double circle = pulley.screwCircleMm().nominal() / 2;
        for (int i = 0; i < pulley.screwHoles(); i++) {
            var hole = around(circle, i, pulley.screwHoles());
            var thread = pulley.screwThread();
            sketch.circle(hole, thread.minorDiameterMm() / 2, LineClass.OUTLINE, Fill.PAPER);
            // the outside of a thread seen from its end: three quarters of a turn, narrow
            sketch.segment(new Segment.Bow(hole, thread.majorMm() / 2, Math.PI / 2, 1.5 * Math.PI), LineClass.EDGE);
        }
        sketch.circle(Point.ORIGIN, circle, LineClass.CENTRE);
    }

    private static Point around(double radius, int i, int count) {
        return Point.polar(radius, Math.PI / 2 + 2 * Math.PI * i / count);
    }

    /// Draws what the wheel pulley covers of a piece.
    private void hidden(Segment piece) {
        for (var part : piece.cut(Point.ORIGIN, pulleyReach)) {
            if (part.halfway().length() < pulleyReach) {
                sketch.segment(part, LineClass.HIDDEN);
            }
        }
    }

    private void hanger() {
        var hanger = kit.hanger();
        sketch.of(SeatName.of(Role.HANGER));
        var section = hanger.section() == Hanger.Section.ROUND
                ? Contour.circle(Point.ORIGIN, hanger.sectionHeightMm().nominal() / 2)
                : Contour.rectangle(
                        -hanger.sectionDepthMm().nominal() / 2,
                        -hanger.sectionHeightMm().nominal() / 2,
                        hanger.sectionDepthMm().nominal() / 2,
                        hanger.sectionHeightMm().nominal() / 2);
        var axle = Contour.circle(Point.ORIGIN, hanger.axleDiameterMm().nominal() / 2);
        sketch.path(List.of(section), LineClass.OUTLINE, materials.hatch(hanger.material()), false);
        sketch.path(axle, LineClass.OUTLINE, Fill.PAPER);
        sketch.circle(Point.ORIGIN, hanger.axleThread().minorDiameterMm() / 2, LineClass.EDGE);
    }

    private void drivePulley() {
        var pulley = drive.drivePulley();
        var rim = pulley.rim();
        sketch.of(seat(Role.DRIVE_PULLEY));
        if (rim.flanges() == ToothedRim.Flanges.BOTH || rim.flanges() == ToothedRim.Flanges.MOTOR_SIDE) {
            sketch.circle(motor, rim.flangeDiameterMm().nominal() / 2, LineClass.OUTLINE, Fill.PAPER);
        }
        double groove = belt.exists() ? belt.groove(motor, drive.belt().teeth()) : along.angle();
        sketch.path(BeltPath.rim(motor, rim.profile(), rim.teeth(), groove), LineClass.OUTLINE, Fill.PAPER);
        if (pulley.boreForm() == ShaftForm.KEYED) {
            double top =
                    pulley.overKeywayMm().nominal() - pulley.boreDiameterMm().nominal() / 2;
            sketch.path(block(0, top, pulley.keywayWidthMm().nominal() / 2), LineClass.OUTLINE, Fill.PAPER);
        }
    }

    private void belt() {
        if (belt.exists()) {
            sketch.of(seat(Role.BELT));
            sketch.path(belt.belt(drive.belt().profile(), drive.belt().teeth()), LineClass.BELT, Fill.TINT, false);
            for (var stretch : belt.stretches(0)) {
                sketch.segment(stretch, LineClass.CENTRE);
            }
        }
        var rim = drive.drivePulley().rim();
        if (rim.flanges().onWheelSide()) {
            sketch.of(seat(Role.DRIVE_PULLEY));
            sketch.circle(motor, rim.flangeDiameterMm().nominal() / 2, LineClass.PHANTOM);
        }
    }

    /// The set screws, behind the face of the pulley: the first on the side away from the axle.
    private void setScrews() {
        var pulley = drive.drivePulley();
        var screw = drive.setScrew();
        sketch.of(seat(Role.SET_SCREWS));
        for (int i = 0; i < pulley.setScrews(); i++) {
            double apart =
                    i == 0 ? 0 : Math.toRadians(pulley.setScrewsApartDeg().nominal());
            var out = Point.polar(1, along.angle() + i * apart);
            double foot = DriveSection.setScrewFoot(drive.motor());
            var aside = out.left().times(screw.thread().majorMm() / 2);
            var inner = motor.plus(out.times(foot));
            var outer = motor.plus(out.times(foot + screw.lengthMm().nominal()));
            sketch.line(inner.minus(aside), outer.minus(aside), LineClass.HIDDEN);
            sketch.line(inner.plus(aside), outer.plus(aside), LineClass.HIDDEN);
            sketch.line(outer.minus(aside), outer.plus(aside), LineClass.HIDDEN);
        }
    }

    /// The screws across the slit of a clamped hub, one behind the other, on the side away from the axle.
    private void hubScrews() {
        var pulley = drive.drivePulley();
        if (pulley.hubScrews() == 0 || drive.hubScrew().blank()) {
            return;
        }
        var screw = drive.hubScrew();
        var out = Point.polar(1, along.angle());
        var at = motor.plus(out.times(pulley.hubScrewArmMm().nominal()));
        var head = at.plus(out.left().times(pulley.hubScrewGripMm().nominal()));
        var end = head.minus(out.left().times(screw.lengthMm().nominal()));
        var aside = out.times(screw.thread().majorMm() / 2);
        sketch.of(seat(Role.HUB_SCREWS));
        sketch.line(head.minus(aside), end.minus(aside), LineClass.HIDDEN);
        sketch.line(head.plus(aside), end.plus(aside), LineClass.HIDDEN);
        sketch.line(end.minus(aside), end.plus(aside), LineClass.HIDDEN);
        sketch.line(head.minus(aside), head.plus(aside), LineClass.HIDDEN);
    }

    private void motor() {
        var can = drive.motor();
        sketch.of(seat(Role.MOTOR));
        sketch.circle(motor, can.canDiameterMm().nominal() / 2, LineClass.HIDDEN);
        double d = can.shaftDiameterMm().nominal();
        double flat = can.shaftFlatMm().nominal();
        double facing = along.angle();
        var shaft = switch (can.shaftForm()) {
            case ROUND, KEYED -> Contour.circle(motor, d / 2);
            case FLAT -> Contour.flatted(motor, d, flat, facing);
            case TWO_FLATS ->
                Contour.flatted(
                        motor,
                        d,
                        flat,
                        facing,
                        facing + Math.toRadians(can.flatsApartDeg().nominal()));
        };
        sketch.path(shaft, LineClass.OUTLINE, Fill.PAPER);
        if (can.shaftForm() == ShaftForm.KEYED) {
            double top = can.overKeyMm().nominal() - d / 2;
            double floor = d - can.overKeyMm().nominal() + d / 2; // as deep in the shaft as it stands out of it
            sketch.path(block(floor, top, can.keyWidthMm().nominal() / 2), LineClass.OUTLINE, Fill.PAPER);
        }
    }

    /// {@return a rectangle on the motor axis, from one distance along the line away from the axle to another}
    private Contour block(double from, double to, double half) {
        var a = motor.plus(along.times(from));
        var b = motor.plus(along.times(to));
        var aside = along.left().times(half);
        return Contour.polygon(a.minus(aside), b.minus(aside), b.plus(aside), a.plus(aside));
    }

    private void motorScrews() {
        var screw = drive.motorScrew();
        var slots = drive.mount().slots();
        double circle = drive.motor().boltCircleMm().nominal() / 2;
        for (int i = 0; i < slots; i++) {
            var centre = motor.plus(Point.polar(circle, slotDirection(i)));
            sketch.of(seat(Role.MOTOR_WASHERS));
            sketch.circle(centre, drive.motorWasher().outsideMm().nominal() / 2, LineClass.OUTLINE, Fill.PAPER);
            sketch.of(seat(Role.MOTOR_SCREWS));
            ScrewFigure.fromAbove(sketch, screw, centre, along.angle());
        }
    }

    /// The clamp screws beside the hanger, from the cap into the mount.
    private void clampScrews() {
        if (drive.mount().fixing() != Mount.Fixing.CLAMP) {
            return;
        }
        var screw = drive.clampScrew();
        double d = screw.thread().majorMm();
        double half = plate.half(along);
        var aside = along.left();
        double head = screw.head().heightMm(screw.thread());
        double wide = screw.head().diameterMm(screw.thread()) / 2;
        sketch.of(seat(Role.CLAMP_SCREWS));
        for (int sign = -1; sign <= 1; sign += 2) {
            var axis = aside.times(sign * (plate.opening(aside) + d));
            bar(axis, -half, -half + screw.lengthMm().nominal(), d / 2);
            bar(axis, -half - head, -half, wide);
            sketch.line(
                    axis.plus(along.times(-half - head - 2)),
                    axis.plus(along.times(-half + screw.lengthMm().nominal() + 2)),
                    LineClass.CENTRE);
        }
    }

    /// The heads of the flange screws, behind the wheel pulley.
    private void flangeScrews() {
        if (drive.mount().fixing() != Mount.Fixing.FLANGE) {
            return;
        }
        var screw = drive.flangeScrew();
        sketch.of(seat(Role.FLANGE_SCREWS));
        for (var centre : plate.flangeScrews()) {
            sketch.circle(centre, screw.head().diameterMm(screw.thread()) / 2, LineClass.HIDDEN);
        }
        sketch.circle(Point.ORIGIN, drive.mount().flangeCircleMm().nominal() / 2, LineClass.CENTRE);
    }

    /// The dowel pins of a flange, behind the plate. How pins lie in a clamp is not measured.
    private void dowelPins() {
        if (drive.dowelPin().blank() || drive.mount().fixing() != Mount.Fixing.FLANGE) {
            return;
        }
        double r = drive.dowelPin().diameterMm().nominal() / 2;
        sketch.of(seat(Role.DOWEL_PINS));
        for (var centre : plate.dowelPins()) {
            var past = new Point(r + 1.5, 0);
            sketch.circle(centre, r, LineClass.HIDDEN);
            sketch.line(centre.minus(past), centre.plus(past), LineClass.CENTRE);
            sketch.line(centre.minus(past.left()), centre.plus(past.left()), LineClass.CENTRE);
        }
    }

    private void bar(Point axis, double from, double to, double half) {
        var aside = along.left().times(half);
        var a = axis.plus(along.times(from));
        var b = axis.plus(along.times(to));
        for (var side : Contour.polygon(a.minus(aside), b.minus(aside), b.plus(aside), a.plus(aside))
                .segments()) {
            sketch.segment(side, LineClass.HIDDEN);
        }
    }

    private void wheel() {
        var wheel = drive.end().wheel();
        sketch.of(seat(Role.WHEEL));
        sketch.circle(Point.ORIGIN, wheel.diameterMm().nominal() / 2, LineClass.PHANTOM);
        sketch.circle(Point.ORIGIN, wheel.wornDiameterMm().nominal() / 2, LineClass.PHANTOM);
    }

    private void centreLines() {
        sketch.ofNothing();
        double r = drive.end().wheel().diameterMm().nominal() / 2 + 5;
        double can = drive.motor().canDiameterMm().nominal() / 2 + 5;
        sketch.line(-r, 0, r, 0, LineClass.CENTRE);
        sketch.line(0, -r - 2, 0, r, LineClass.CENTRE);
        sketch.line(motor.plus(new Point(-can, 0)), motor.plus(new Point(can, 0)), LineClass.CENTRE);
        sketch.line(motor.plus(new Point(0, -can)), motor.plus(new Point(0, can)), LineClass.CENTRE);
        sketch.line(Point.ORIGIN, motor, LineClass.CENTRE);
        sketch.circle(motor, drive.motor().boltCircleMm().nominal() / 2, LineClass.CENTRE);
    }

    /// The slots stand symmetrically about the line from axle to motor.
    private double slotDirection(int i) {
        return along.angle() + Math.PI * (2 * i + 1) / drive.mount().slots();
    }

    private SeatName seat(Role role) {
        return drive.seat(role);
    }
}
