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
        wheelPulley();
        hanger();
        drivePulley();
        belt();
        motor();
        screws();
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

    /// The plate around the slots, run together with the clamp: the tangents of the two end circles of the slot.
    private void mount() {
        var mount = drive.mount();
        var near = along.times(mount.slotMinMm().nominal());
        var far = along.times(mount.slotMaxMm().nominal());
        double r = mount.plateRadiusMm().nominal();
        double wall = 2 * mount.clampThread().majorMm();
        double half = opening(along) + wall;
        double wide = opening(along.left()) + wall;
        var aside = along.left();
        sketch.of(seat(Role.MOUNT));

        var back = along.times(-half);
        var foot = along.times(half);
        var left = new ArrayList<Segment>();
        left.add(new Segment.Straight(back.minus(aside.times(wide)), foot.minus(aside.times(wide))));
        // the flank runs from the clamp block to the circle around the near end of the slot
        double distance = near.distance(foot.plus(aside.times(wide)));
        double turn = near.minus(foot).cross(aside) == 0 ? 0 : Math.acos(Math.min(1, r / distance));
        double toCorner = foot.minus(aside.times(wide)).minus(near).angle();
        double touches = toCorner + turn;
        double heading = along.angle();
        if (distance > r) {
            var touch = near.plus(Point.polar(r, touches));
            left.add(new Segment.Straight(foot.minus(aside.times(wide)), touch));
            left.add(new Segment.Bow(near, r, touches, positive(heading - Math.PI / 2 - touches)));
        } else {
            left.add(new Segment.Straight(foot.minus(aside.times(wide)), near.minus(aside.times(r))));
        }
        left.add(new Segment.Straight(near.minus(aside.times(r)), far.minus(aside.times(r))));
        var outline = new ArrayList<>(left);
        outline.add(new Segment.Bow(far, r, heading - Math.PI / 2, Math.PI));
        for (var piece : left.reversed()) {
            outline.add(mirrored(piece).reversed());
        }
        outline.add(new Segment.Straight(back.plus(aside.times(wide)), back.minus(aside.times(wide))));

        var plate = new Contour(outline);
        sketch.path(plate, LineClass.OUTLINE, Fill.PAPER);
        var opening = Contour.slot(near, far, mount.openingMm().nominal());
        sketch.path(opening, LineClass.OUTLINE, Fill.PAPER);
        for (int i = 0; i < mount.slots(); i++) {
            var out = Point.polar(mount.boltCircleMm().nominal() / 2, slotDirection(i));
            sketch.path(
                    Contour.slot(
                            near.plus(out), far.plus(out), mount.slotWidthMm().nominal()),
                    LineClass.OUTLINE,
                    Fill.PAPER);
        }
        hiddenInPulley = plate;
        clamp(half, wide);
    }

    private Contour hiddenInPulley = new Contour(List.of());

    /// The clamp's split and its screws, behind the plate.
    private void clamp(double half, double wide) {
        var mount = drive.mount();
        var aside = along.left();
        double split = -half + mount.clampGripMm().nominal();
        double reach = opening(aside);
        for (int sign = -1; sign <= 1; sign += 2) {
            clampLines.add(new Segment.Straight(
                    along.times(split).plus(aside.times(sign * reach)),
                    along.times(split).plus(aside.times(sign * wide))));
        }
    }

    private final List<Segment> clampLines = new ArrayList<>();

    private void wheelPulley() {
        var pulley = drive.wheelPulley();
        var rim = pulley.rim();
        sketch.of(seat(Role.WHEEL_PULLEY));
        if (rim.flanges() != ToothedRim.Flanges.NONE) {
            sketch.circle(Point.ORIGIN, rim.flangeDiameterMm().nominal() / 2, LineClass.OUTLINE, Fill.PAPER);
        }
        double groove = belt.exists() ? belt.wheelGroove(drive.belt().teeth()) : 0;
        sketch.path(
                BeltPath.rim(Point.ORIGIN, rim, groove),
                LineClass.OUTLINE,
                Fill.PAPER);

        sketch.of(seat(Role.MOUNT));
        for (var piece : hiddenInPulley.segments()) {
            hidden(piece);
        }
        clampLines.forEach(this::hidden);

        sketch.of(seat(Role.WHEEL_PULLEY));
        double circle = pulley.lugCircleMm().nominal() / 2;
        double half = pulley.lugWidthMm().nominal() / 2;
        for (int i = 0; i < pulley.lugs(); i++) {
            sketch.circle(Point.polar(circle, Math.PI / 2 + 2 * Math.PI * i / pulley.lugs()), half, LineClass.EDGE, Fill.PAPER);
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
            sketch.path(
                    belt.belt(drive.belt().profile(), drive.belt().teeth()), LineClass.BELT, Fill.TINT, false);
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

    private void screws() {
        var screw = drive.motorScrew();
        var slots = drive.mount().slots();
        double circle = drive.motor().boltCircleMm().nominal() / 2;
        double cover = drive.drivePulley().rim().reachDiameterMm() / 2;
        for (int i = 0; i < slots; i++) {
            var centre = motor.plus(Point.polar(circle, slotDirection(i)));
            covered(Role.MOTOR_WASHERS, centre, drive.motorWasher().outsideMm().nominal() / 2, cover);
            covered(Role.MOTOR_SCREWS, centre, screw.head().diameterMm(screw.thread()) / 2, cover);
            if (centre.distance(motor) > cover + screw.head().keyMm(screw.thread())) {
                sketch.path(
                        Contour.hexagon(centre, screw.head().keyMm(screw.thread()), along.angle()),
                        LineClass.EDGE,
                        Fill.OPEN);
            }
        }
        clampScrews();
    }

    /// A round thing on the plate, dashed where the drive pulley stands in front of it.
    private void covered(Role role, Point centre, double radius, double cover) {
        sketch.of(seat(role));
        var ring = new Segment.Bow(centre, radius, centre.minus(motor).angle(), 2 * Math.PI);
        for (var part : ring.cut(motor, cover)) {
            sketch.segment(
                    part, part.halfway().distance(motor) < cover ? LineClass.HIDDEN : LineClass.OUTLINE);
        }
    }

    /// The clamp screws beside the hanger, from the cap into the mount.
    private void clampScrews() {
        var mount = drive.mount();
        var screw = drive.clampScrew();
        double d = screw.thread().majorMm();
        double half = opening(along) + 2 * mount.clampThread().majorMm();
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
