package beltwright.press.drawing;

import beltwright.part.Hanger;
import beltwright.part.Mount;
import java.util.ArrayList;
import java.util.List;

/// The outline of a mount's plate in the side view: around the hanger, along the slot, around its far end.
///
/// @param along direction from axle to motor
record MountPlate(Mount mount, Hanger hanger, Point along) {

    Contour outline() {
        return mount.fixing() == Mount.Fixing.CLAMP ? aroundClamp() : aroundHub();
    }

    /// {@return half the size of what holds the plate to the hanger, in this direction (mm)}
    ///
    /// The walls around clamp and flange holes are not measured: two screw diameters, one hole, one plate.
    double half(Point direction) {
        return switch (mount.fixing()) {
            case CLAMP -> opening(direction) + 2 * mount.clampThread().majorMm();
            case FLANGE ->
                mount.flangeCircleMm().nominal() / 2 + mount.flangeHoleMm().nominal();
            case ONE_PIECE -> opening(direction) + mount.plateThicknessMm().nominal();
        };
    }

    /// {@return half the opening around the hanger in this direction; without a clamp, half the hanger (mm)}
    double opening(Point direction) {
        boolean clamp = mount.fixing() == Mount.Fixing.CLAMP;
        var section = clamp ? mount.clampSection() : hanger.section();
        var high = clamp ? mount.clampHeightMm() : hanger.sectionHeightMm();
        var deep = clamp ? mount.clampDepthMm() : hanger.sectionDepthMm();
        return section == Hanger.Section.ROUND
                ? high.nominal() / 2
                : Math.abs(direction.x()) * deep.nominal() / 2 + Math.abs(direction.y()) * high.nominal() / 2;
    }

    /// The clamp's split, on both sides of the hanger; nothing where there is no clamp.
    List<Segment> split() {
        if (mount.fixing() != Mount.Fixing.CLAMP) {
            return List.of();
        }
        var aside = along.left();
        var at = along.times(mount.clampGripMm().nominal() - half(along));
        var inner = aside.times(opening(aside));
        var outer = aside.times(half(aside));
        return List.of(
                new Segment.Straight(at.plus(inner), at.plus(outer)),
                new Segment.Straight(at.minus(inner), at.minus(outer)));
    }

    /// {@return where the flange screws stand, spread evenly; their clocking is not measured}
    List<Point> flangeScrews() {
        var at = new ArrayList<Point>();
        for (int i = 0; i < mount.flangeHoles(); i++) {
            at.add(Point.polar(
                    mount.flangeCircleMm().nominal() / 2,
                    along.angle() + Math.PI + 2 * Math.PI * i / mount.flangeHoles()));
        }
        return at;
    }

    /// {@return where the dowel pins stand, spread evenly about the axle from the line across; their clocking is not
    /// measured}
    List<Point> dowelPins() {
        var at = new ArrayList<Point>();
        for (int i = 0; i < mount.dowels(); i++) {
            at.add(Point.polar(
                    mount.dowelArmMm().nominal(), along.angle() + Math.PI / 2 + 2 * Math.PI * i / mount.dowels()));
        }
        return at;
    }

    private Point near() {
        return along.times(mount.slotMinMm().nominal());
    }

    private Point far() {
        return along.times(mount.slotMaxMm().nominal());
    }

    /// The clamp block, tangents from its shoulders to the round around the near end of the slot, and the round around
    /// the far end.
    private Contour aroundClamp() {
        double r = mount.plateRadiusMm().nominal();
        var near = near();
        var far = far();
        var aside = along.left();
        var out = aside.times(half(aside));
        var back = along.times(-half(along)).minus(out);
        var shoulder = along.times(half(along)).minus(out);
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
        return closed(flank, far, r, new Segment.Straight(mirrored(back), back));
    }

    /// A round hub about the axle, and tangents from it to the round around the slot.
    private Contour aroundHub() {
        double r = mount.plateRadiusMm().nominal();
        double hub = half(along);
        var far = far();
        double toward = along.angle();
        var round = r > hub ? near() : far;
        double tangent = Math.acos((hub - r) / round.length());
        var touch = new Segment.Bow(round, r, toward - tangent, tangent - Math.PI / 2);
        var around = new Segment.Bow(Point.ORIGIN, hub, toward + tangent, 2 * (Math.PI - tangent));
        var flank = new ArrayList<Segment>();
        flank.add(new Segment.Straight(around.to(), touch.from()));
        if (r > hub) {
            flank.add(touch);
            flank.add(new Segment.Straight(touch.to(), far.minus(along.left().times(r))));
            return closed(flank, far, r, around);
        }
        var outline = new ArrayList<>(flank);
        outline.add(new Segment.Bow(far, r, toward - tangent, 2 * tangent));
        outline.add(mirrored(flank.getFirst()).reversed());
        outline.add(around);
        return new Contour(outline);
    }

    /// The flank, the round at the far end, the flank on the other side, and what lies around the hanger.
    private Contour closed(List<Segment> flank, Point far, double r, Segment last) {
        var outline = new ArrayList<>(flank);
        outline.add(new Segment.Bow(far, r, along.angle() - Math.PI / 2, Math.PI));
        flank.reversed().forEach(piece -> outline.add(mirrored(piece).reversed()));
        outline.add(last);
        return new Contour(outline);
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
}
