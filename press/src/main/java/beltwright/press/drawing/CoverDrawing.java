package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Role;
import beltwright.layout.DriveLayout;
import java.util.ArrayList;
import java.util.List;

/// The cover of one drive, where it has one: from the side with its face cut away, in the plan cut through the motor
/// axis.
///
/// Its wall runs around the motor axis, then along both spans of the belt towards the axle, as far
/// off them as it stands off the drive pulley.
record CoverDrawing(Drive drive, DriveLayout at) {
    private static final double FOOT_WALL = 1; // around the head of a cover screw, as drawn (mm)

    boolean any() {
        return !drive.cover().blank();
    }

    private Point motor() {
        return new Point(at.motorXMm(), at.motorZMm());
    }

    private Point along() {
        return motor().unit();
    }

    /// The feet on the plate, and their screws, evenly on the half turned from the axle; where is not measured.
    void sideFeet(Sketch sketch) {
        if (!any()) {
            return;
        }
        var cover = drive.cover();
        double circle = cover.screwCircleMm().nominal() / 2;
        double wall = cover.radiusMm().nominal() + cover.wallMm().nominal() / 2;
        for (int i = 0; i < cover.screwHoles(); i++) {
            var screw = drive.coverScrew();
            double turn = cover.screwHoles() > 1 ? (double) i / (cover.screwHoles() - 1) - 0.5 : 0;
            double angle = along().angle() + Math.PI * turn;
            var centre = motor().plus(Point.polar(circle, angle));
            double wide = screw.head().diameterMm(screw.thread()) + 2 * FOOT_WALL;
            sketch.of(drive.seat(Role.COVER));
            sketch.path(foot(wall, centre, angle, wide / 2), LineClass.OUTLINE, Fill.PAPER);
            sketch.of(drive.seat(Role.COVER_SCREWS));
            ScrewFigure.fromAbove(sketch, screw, centre, angle);
        }
    }

    private Contour foot(double wall, Point centre, double angle, double half) {
        var base = motor().plus(Point.polar(wall, angle));
        var aside = Point.polar(half, angle + Math.PI / 2);
        return new Contour(List.of(
                new Segment.Straight(base.minus(aside), centre.minus(aside)),
                new Segment.Bow(centre, half, angle - Math.PI / 2, Math.PI),
                new Segment.Straight(centre.plus(aside), base.plus(aside)),
                new Segment.Straight(base.plus(aside), base.minus(aside))));
    }

    /// The wall, cut, with the opening where stones leave.
    void sideWall(Sketch sketch) {
        if (!any()) {
            return;
        }
        sketch.of(drive.seat(Role.COVER));
        if (Double.isNaN(farEnd().x())) {
            sketch.line(farEnd(), motor(), LineClass.OUTLINE); // remembered as unfinished
            return;
        }
        for (var piece : wall()) {
            sketch.path(List.of(piece), LineClass.OUTLINE, Fill.STEEL, true);
        }
    }

    /// {@return a point on the outside of the wall at its far end}
    Point farEnd() {
        var cover = drive.cover();
        return motor().plus(along().times(
                        cover.radiusMm().nominal() + cover.wallMm().nominal()));
    }

    /// {@return the wall in one piece, or in two with the opening between them}
    List<Contour> wall() {
        var cover = drive.cover();
        double r = cover.radiusMm().nominal();
        var inner = new Track(line(r));
        var outer = line(r + cover.wallMm().nominal());
        double total = inner.length();
        double half = cover.stoneOpeningMm().nominal() / 2;
        if (!(half > 0)) {
            return List.of(piece(inner, outer, 0, total));
        }
        if (!(total > 2 * half)) { // no wall is left, or its size is not known
            return List.of();
        }
        double middle = Math.clamp(lowest(r), half, total - half);
        var pieces = new ArrayList<Contour>();
        if (middle - half > 0) {
            pieces.add(piece(inner, outer, 0, middle - half));
        }
        if (middle + half < total) {
            pieces.add(piece(inner, outer, middle + half, total));
        }
        return pieces;
    }

    private static Contour piece(Track inner, List<Segment> outer, double from, double to) {
        var there = inner.between(from, to, inner.pieces());
        var back = inner.between(from, to, outer);
        var outline = new ArrayList<>(there);
        outline.add(new Segment.Straight(there.getLast().to(), back.getLast().to()));
        back.reversed().forEach(s -> outline.add(s.reversed()));
        outline.add(
                new Segment.Straight(back.getFirst().from(), there.getFirst().from()));
        return new Contour(outline);
    }

    /// {@return half the angle of the wall's arc: where the spans would leave the drive pulley without an idler}
    private double half() {
        double more = drive.wheelPulley().rim().pitchDiameterMm()
                - drive.drivePulley().rim().pitchDiameterMm();
        double tangent = Math.acos(more / 2 / motor().length());
        return Double.isNaN(tangent) ? Math.PI / 2 : tangent;
    }

    /// Counter-clockwise from the open end, seen with the motor to the right of the axle.
    private List<Segment> line(double radius) {
        var round = new Segment.Bow(motor(), radius, along().angle() - half(), 2 * half());
        double straight = straight(radius);
        var start = round.from().minus(motor()).left().unit().times(straight);
        var end = round.to().minus(motor()).left().unit().times(straight);
        return List.of(
                new Segment.Straight(round.from().minus(start), round.from()),
                round,
                new Segment.Straight(round.to(), round.to().plus(end)));
    }

    /// {@return the length of the wall beside a span}
    private double straight(double radius) {
        return (drive.cover().reachMm().nominal() + radius * Math.cos(half())) / Math.sin(half());
    }

    /// {@return how far along the wall it crosses the line straight down from the motor axis}
    private double lowest(double radius) {
        // from the beginning of the arc to straight down, a quarter before it to three quarters past it
        double quarter = Math.PI / 2;
        double turn = Math.IEEEremainder(half() - along().angle() - Math.PI, 2 * Math.PI) + quarter;
        double steepest = quarter - 0.01;
        double straight = straight(radius);
        if (turn < 0) {
            return straight - radius * Math.tan(Math.min(-turn, steepest));
        }
        double past = turn - 2 * half();
        return straight + (past > 0 ? radius * (2 * half() + Math.tan(Math.min(past, steepest))) : radius * turn);
    }

    /// What is seen of it behind the cut.
    void planInside(Sketch sketch, Stations across) {
        if (!any()) {
            return;
        }
        double plate = at.plateOuterMm().nominal();
        double depth = plate + drive.cover().depthMm().nominal();
        sketch.of(drive.seat(Role.COVER));
        sketch.rectangle(across.x(plate), open(), across.x(depth), inner(), LineClass.EDGE, Fill.PAPER);
    }

    private double toward() {
        return at.motorXMm() < 0 ? -1 : 1;
    }

    private double inner() {
        return at.motorXMm() + toward() * drive.cover().radiusMm().nominal();
    }

    /// Seen from above, the open end comes nearer to the motor as the drive stands steeper.
    private double open() {
        return at.motorXMm() - drive.cover().reachMm().nominal() * along().x();
    }

    /// Face and far wall, cut, with one foot and its screw.
    void plan(Sketch sketch, Stations across) {
        if (!any()) {
            return;
        }
        var cover = drive.cover();
        double wall = cover.wallMm().nominal();
        double plate = at.plateOuterMm().nominal();
        double depth = plate + cover.depthMm().nominal();
        double out = inner() + toward() * wall;
        double circle = at.motorXMm() + toward() * cover.screwCircleMm().nominal() / 2;
        sketch.of(drive.seat(Role.COVER));
        var corners = new ArrayList<>(List.of(
                new Point(across.x(plate), inner()),
                new Point(across.x(depth), inner()),
                new Point(across.x(depth), open()),
                new Point(across.x(depth + wall), open()),
                new Point(across.x(depth + wall), out)));
        if (cover.screwHoles() > 0) {
            var screw = drive.coverScrew();
            double foot = plate + cover.screwGripMm().nominal();
            double end = circle + toward() * (screw.head().diameterMm(screw.thread()) / 2 + FOOT_WALL);
            corners.add(new Point(across.x(foot), out));
            corners.add(new Point(across.x(foot), end));
            corners.add(new Point(across.x(plate), end));
            sketch.path(List.of(Contour.polygon(corners.toArray(Point[]::new))), LineClass.OUTLINE, Fill.STEEL, true);
            double hole = cover.screwHoleMm().nominal() / 2;
            sketch.rectangle(across.x(plate), circle - hole, across.x(foot), circle + hole, LineClass.EDGE, Fill.PAPER);
            sketch.of(drive.seat(Role.COVER_SCREWS));
            new ScrewFigure(screw, new Point(across.x(foot), circle), across.inward()).draw(sketch);
        } else {
            corners.add(new Point(across.x(plate), out));
            sketch.path(List.of(Contour.polygon(corners.toArray(Point[]::new))), LineClass.OUTLINE, Fill.STEEL, true);
        }
    }
}
