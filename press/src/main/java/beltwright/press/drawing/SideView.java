package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.DriveLayout;
import beltwright.part.Hanger;
import beltwright.part.ShaftForm;
import beltwright.part.ToothedRim;
import java.util.ArrayList;
import java.util.List;

/// One drive seen from outside, the wheel taken off and shown in front of it, the hanger cut where the mount clamps.
///
/// It is drawn x forward, z up, as seen from the right; the left drive is mirrored at the end, because from outside its
/// nose points left.
final class SideView {
    private final Kit kit;
    private final Drive drive;
    private final DriveLayout at;
    private final Materials materials;
    private final Sketch sketch = new Sketch();
    private final Point motor;
    private final Point along;
    private final BeltPath belt;
    private final double pulleyReach;

    SideView(Kit kit, Drive drive, DriveLayout at, Materials materials) {
        this.kit = kit;
        this.drive = drive;
        this.at = at;
        this.materials = materials;
        motor = new Point(at.motorXMm(), at.motorZMm());
        along = motor.unit();
        belt = new BeltPath(
                Point.ORIGIN,
                drive.wheelPulley().rim().pitchDiameterMm() / 2,
                motor,
                drive.drivePulley().rim().pitchDiameterMm() / 2);
        pulleyReach = drive.wheelPulley().rim().reachDiameterMm() / 2;
    }

    /// How points of this projection stand on the sheet.
    static Placing facing(Side side) {
        return side == Side.LEFT ? Placing.MIRROR : new Placing(1, Point.ORIGIN);
    }

    Sketch draw() {
        ground();
        mount();
        motorScrews();
        wheelPulley();
        hanger();
        clampScrews();
        drivePulley();
        belt();
        motor();
        wheel();
        centreLines();
        return sketch;
    }

    private void ground() {
        var wheel = drive.end().wheel();
        double r = wheel.diameterMm().nominal() / 2;
        double can = drive.motor().canDiameterMm().nominal() / 2;
        double margin = 12;
        double left = Math.min(-r, motor.x() - can) - margin;
        double right = Math.max(r, motor.x() + can) + margin;
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

    private void mount() {
        var mount = drive.mount();
        var near = along.times(mount.slotMinMm().nominal());
        var far = along.times(mount.slotMaxMm().nominal());
        sketch.of(seat(Role.MOUNT));
        sketch.path(plate(), LineClass.OUTLINE, Fill.PAPER);
        sketch.path(Contour.slot(near, far, mount.openingMm().nominal()), LineClass.OUTLINE, Fill.PAPER);
        for (int i = 0; i < mount.slots(); i++) {
            var out = Point.polar(mount.boltCircleMm().nominal() / 2, slotDirection(i));
            var width = mount.slotWidthMm().nominal();
            sketch.path(Contour.slot(near.plus(out), far.plus(out), width), LineClass.OUTLINE, Fill.PAPER);
        }
    }

    /// The plate's outline: the clamp block, tangents from its shoulders to the round around the near end of the slot,
    /// and the round around the far end.
    private Contour plate() {
        var mount = drive.mount();
        var near = along.times(mount.slotMinMm().nominal());
        var far = along.times(mount.slotMaxMm().nominal());
        double r = mount.plateRadiusMm().nominal();
        var aside = along.left();
        var out = aside.times(blockHalf(aside));
        var back = along.times(-blockHalf(along)).minus(out);
        var shoulder = along.times(blockHalf(along)).minus(out);
        var flank = new ArrayList<Segment>();
        flank.add(new Segment.Straight(back, shoulder));
        var round = near.minus(aside.times(r));
        if (near.distance(shoulder) > r) {
            var toShoulder = shoulder.minus(near);
            double touches = toShoulder.angle() + Math.acos(r / toShoulder.length());
            var touch = new Segment.Bow(near, r, touches, positive(along.angle() - Math.PI / 2 - touches));
            flank.add(new Segment.Straight(shoulder, touch.from()));
            flank.add(touch);
        } else {
            flank.add(new Segment.Straight(shoulder, round));
        }
        flank.add(new Segment.Straight(round, far.minus(aside.times(r))));
        var outline = new ArrayList<>(flank);
        outline.add(new Segment.Bow(far, r, along.angle() - Math.PI / 2, Math.PI));
        flank.reversed().forEach(piece -> outline.add(mirrored(piece).reversed()));
        outline.add(new Segment.Straight(mirrored(back), back));
        return new Contour(outline);
    }

    /// {@return half the size of the clamp block in this direction; its wall is not measured, so two screw diameters}
    private double blockHalf(Point direction) {
        return opening(direction) + 2 * drive.mount().clampThread().majorMm();
    }

    /// The clamp's split, on both sides of the hanger.
    private List<Segment> split() {
        var aside = along.left();
        var at = along.times(drive.mount().clampGripMm().nominal() - blockHalf(along));
        var inner = aside.times(opening(aside));
        var outer = aside.times(blockHalf(aside));
        return List.of(
                new Segment.Straight(at.plus(inner), at.plus(outer)),
                new Segment.Straight(at.minus(inner), at.minus(outer)));
    }

    private void wheelPulley() {
        var pulley = drive.wheelPulley();
        var rim = pulley.rim();
        sketch.of(seat(Role.WHEEL_PULLEY));
        if (rim.flanges() != ToothedRim.Flanges.NONE) {
            sketch.circle(Point.ORIGIN, rim.flangeDiameterMm().nominal() / 2, LineClass.OUTLINE, Fill.PAPER);
        }
        double groove = belt.exists() ? belt.wheelGroove(drive.belt().teeth()) : 0;
        sketch.path(BeltPath.rim(Point.ORIGIN, rim, groove), LineClass.OUTLINE, Fill.PAPER);

        sketch.of(seat(Role.MOUNT));
        plate().segments().forEach(this::hidden);
        split().forEach(this::hidden);

        sketch.of(seat(Role.WHEEL_PULLEY));
        double circle = pulley.lugCircleMm().nominal() / 2;
        double half = pulley.lugWidthMm().nominal() / 2;
        for (int i = 0; i < pulley.lugs(); i++) {
            sketch.circle(
                    Point.polar(circle, Math.PI / 2 + 2 * Math.PI * i / pulley.lugs()),
                    half,
                    LineClass.EDGE,
                    Fill.PAPER);
        }
        sketch.circle(Point.ORIGIN, circle, LineClass.CENTRE);
        sketch.circle(Point.ORIGIN, pulley.boreDiameterMm().nominal() / 2, LineClass.OUTLINE);
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
        double groove = belt.exists() ? belt.driveGroove(drive.belt().teeth()) : along.angle();
        sketch.path(BeltPath.rim(motor, rim, groove), LineClass.OUTLINE, Fill.PAPER);
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

    private void motor() {
        var can = drive.motor();
        sketch.of(seat(Role.MOTOR));
        sketch.circle(motor, can.canDiameterMm().nominal() / 2, LineClass.HIDDEN);
        double d = can.shaftDiameterMm().nominal();
        var shaft = can.shaftForm() == ShaftForm.FLAT
                ? Contour.flatted(motor, d, can.shaftFlatMm().nominal(), along.angle())
                : Contour.circle(motor, d / 2);
        sketch.path(shaft, LineClass.OUTLINE, Fill.PAPER);
    }

    private void motorScrews() {
        var screw = drive.motorScrew();
        var slots = drive.mount().slots();
        double circle = drive.motor().boltCircleMm().nominal() / 2;
        double key = screw.head().keyMm(screw.thread());
        for (int i = 0; i < slots; i++) {
            var centre = motor.plus(Point.polar(circle, slotDirection(i)));
            sketch.of(seat(Role.MOTOR_WASHERS));
            sketch.circle(centre, drive.motorWasher().outsideMm().nominal() / 2, LineClass.OUTLINE, Fill.PAPER);
            sketch.of(seat(Role.MOTOR_SCREWS));
            sketch.circle(centre, screw.head().diameterMm(screw.thread()) / 2, LineClass.OUTLINE, Fill.PAPER);
            sketch.path(Contour.hexagon(centre, key, along.angle()), LineClass.EDGE, Fill.OPEN);
        }
    }

    /// The clamp screws beside the hanger, from the cap into the mount.
    private void clampScrews() {
        var screw = drive.clampScrew();
        double d = screw.thread().majorMm();
        double half = blockHalf(along);
        var aside = along.left();
        double head = screw.head().heightMm(screw.thread());
        double wide = screw.head().diameterMm(screw.thread()) / 2;
        sketch.of(seat(Role.CLAMP_SCREWS));
        for (int sign = -1; sign <= 1; sign += 2) {
            var axis = aside.times(sign * (opening(aside) + d));
            bar(axis, -half, -half + screw.lengthMm().nominal(), d / 2);
            bar(axis, -half - head, -half, wide);
            sketch.line(
                    axis.plus(along.times(-half - head - 2)),
                    axis.plus(along.times(-half + screw.lengthMm().nominal() + 2)),
                    LineClass.CENTRE);
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

    /// {@return half the clamp's opening in this direction (mm)}
    private double opening(Point direction) {
        var mount = drive.mount();
        double height = mount.clampHeightMm().nominal() / 2;
        return mount.clampSection() == Hanger.Section.ROUND
                ? height
                : Math.abs(direction.x()) * mount.clampDepthMm().nominal() / 2 + Math.abs(direction.y()) * height;
    }

    /// The slots stand symmetrically about the line from axle to motor.
    private double slotDirection(int i) {
        return along.angle() + Math.PI * (2 * i + 1) / drive.mount().slots();
    }

    private static double positive(double angle) {
        double turn = angle % (2 * Math.PI);
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }

    /// {@return the same piece on the other side of the line from axle to motor}
    private Segment mirrored(Segment piece) {
        return switch (piece) {
            case Segment.Straight s -> new Segment.Straight(mirrored(s.from()), mirrored(s.to()));
            case Segment.Bow b ->
                new Segment.Bow(mirrored(b.centre()), b.radius(), 2 * along.angle() - b.start(), -b.sweep());
        };
    }

    private Point mirrored(Point p) {
        return along.times(2 * p.dot(along)).minus(p);
    }

    private SeatName seat(Role role) {
        return drive.seat(role);
    }
}
