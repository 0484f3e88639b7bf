package beltwright.press.drawing;

import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.WheelEnd;
import beltwright.layout.EndLayout;
import beltwright.part.Bearing;
import beltwright.part.Sleeve;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/// One end of the axle in section: wheel, bearings, core spacer, speed rings and nut.
final class EndSection {
    private static final double SHOULDER = 2; // least height of a bearing shoulder as drawn (mm)
    private static final double WALL = 3; // of the core outside its openings as drawn (mm)

    private final Sketch sketch;
    private final Kit kit;
    private final WheelEnd end;
    private final EndLayout at;
    private final OptionalDouble pulleySeat;
    private final Materials materials;
    private final Stations across;

    EndSection(Sketch sketch, Kit kit, WheelEnd end, EndLayout at, OptionalDouble pulleySeat, Materials materials) {
        this.sketch = sketch;
        this.kit = kit;
        this.end = end;
        this.at = at;
        this.pulleySeat = pulleySeat;
        this.materials = materials;
        across = new Stations(kit, end.side());
    }

    void draw() {
        wheel();
        double ring = at.ringOuterMm().nominal();
        double bearing = at.innerBearingOuterMm().nominal();
        double spacer = bearing + end.coreSpacer().lengthMm().nominal();
        double outer = spacer + end.outerBearing().widthMm().nominal();
        double inner = 0;
        if (!end.spacer().blank()) {
            inner = end.spacer().lengthMm().nominal();
            sleeve(Role.AXLE_SPACER, end.spacer(), 0, inner);
        }
        sleeve(Role.INNER_RING, end.innerRing(), inner, ring);
        bearing(Role.INNER_BEARING, end.innerBearing(), ring, bearing);
        sleeve(Role.CORE_SPACER, end.coreSpacer(), bearing, spacer);
        bearing(Role.OUTER_BEARING, end.outerBearing(), spacer, outer);
        sleeve(
                Role.OUTER_RING,
                end.outerRing(),
                outer,
                outer + end.outerRing().lengthMm().nominal());
        washer();
        nut();
    }

    private void washer() {
        var washer = end.washer();
        if (washer.blank()) {
            return;
        }
        double stack = at.stackMm().nominal();
        double from = stack - washer.thicknessMm().nominal();
        sketch.of(end(Role.AXLE_WASHER));
        for (int sign = -1; sign <= 1; sign += 2) {
            double hole = washer.holeMm().nominal() / 2;
            double outside = washer.outsideMm().nominal() / 2;
            sketch.rectangle(across.x(from), sign * hole, across.x(stack), sign * outside, Fill.STEEL, true);
        }
    }

    /// Tyre and core. The border between them and the shoulder's bore are not measured anywhere, so they are narrow.
    private void wheel() {
        var wheel = end.wheel();
        double middle = at.coreMiddleMm().nominal();
        double half = wheel.coreSpacingMm().nominal() / 2;
        double depth = wheel.bearingSeatDepthMm().nominal();
        double seat = wheel.bearingSeatMm().nominal() / 2;
        double shoulder = Math.min(
                seat - SHOULDER / 2, Math.max(end.coreSpacer().outsideMm().nominal() / 2 + 0.5, seat - SHOULDER));
        double inset = wheel.coreFaceInsetMm().nominal();
        double from = at.wheelInnerMm().nominal();
        double to = at.wheelOuterMm().nominal();
        double tyre = wheel.diameterMm().nominal() / 2;
        boolean recessed = wheel.recessDiameterMm().known();
        double recess = recessed ? wheel.recessDiameterMm().nominal() / 2 : 0;
        double core = Math.min(
                tyre - WALL,
                Math.max(
                                recess,
                                (wheel.openingCircleMm().nominal()
                                                + wheel.openingWidthMm().nominal())
                                        / 2)
                        + WALL);
        double face = from + inset;
        double back = Math.max(to - inset, face + WALL);
        double hub = seat + WALL;
        double floor = recessed ? face + wheel.recessDepthMm().nominal() : face;
        double nearHub = Math.min(middle - half - depth, floor);
        double farHub = Math.max(middle + half + depth, back);
        sketch.of(end(Role.WHEEL));
        for (int sign = -1; sign <= 1; sign += 2) {
            double s = sign;
            sketch.path(
                    List.of(Contour.polygon(
                            p(from, s * tyre - s * WALL),
                            p(from + WALL, s * tyre),
                            p(to - WALL, s * tyre),
                            p(to, s * tyre - s * WALL),
                            p(to, s * core),
                            p(from, s * core))),
                    LineClass.OUTLINE,
                    Fill.RUBBER,
                    sign < 0);
            var corners = new ArrayList<>(List.of(
                    p(nearHub, s * seat),
                    p(middle - half, s * seat),
                    p(middle - half, s * shoulder),
                    p(middle + half, s * shoulder),
                    p(middle + half, s * seat),
                    p(farHub, s * seat),
                    p(farHub, s * hub),
                    p(back, s * hub),
                    p(back, s * core),
                    p(face, s * core)));
            if (recessed) {
                corners.add(p(face, s * recess));
                corners.add(p(floor, s * recess));
            }
            corners.add(p(floor, s * hub));
            corners.add(p(nearHub, s * hub));
            sketch.path(
                    List.of(Contour.polygon(corners.toArray(Point[]::new))),
                    LineClass.OUTLINE,
                    materials.hatch(wheel.coreMaterial()),
                    sign < 0);
        }
        if (wheel.openings() > 0) {
            pulleySeat.ifPresent(s -> openings(s, recessed ? floor : s, back));
        }
        if (wheel.screwHoles() > 0) {
            screwHole(face, floor);
        }
        sketch.line(across.x(from), core, across.x(from), -core, LineClass.EDGE);
        sketch.line(across.x(to), core, across.x(to), -core, LineClass.EDGE);
    }

    /// A hole for a pulley screw, as far as the screw passes through the core, on the side without an opening.
    private void screwHole(double face, double floor) {
        var wheel = end.wheel();
        double circle = -wheel.screwCircleMm().nominal() / 2;
        double half = wheel.screwHoleMm().nominal() / 2;
        double head = face + wheel.screwGripMm().nominal();
        sketch.rectangle(across.x(floor), circle - half, across.x(head), circle + half, LineClass.EDGE, Fill.PAPER);
    }

    /// An opening that a lug enters, drawn where the section shows one.
    private void openings(double seat, double from, double back) {
        var wheel = end.wheel();
        double circle = wheel.openingCircleMm().nominal() / 2;
        double half = wheel.openingWidthMm().nominal() / 2;
        double floor = Math.min(seat + wheel.openingDepthMm().nominal(), back);
        if (from < floor) {
            sketch.rectangle(
                    across.x(from), circle - half, across.x(floor), circle + half, LineClass.OUTLINE, Fill.PAPER);
        }
    }

    private void sleeve(Role role, Sleeve sleeve, double from, double to) {
        sketch.of(end(role));
        double bore = sleeve.boreMm().nominal() / 2;
        double outside = sleeve.outsideMm().nominal() / 2;
        boolean turned = role == Role.CORE_SPACER || role == Role.AXLE_SPACER;
        sketch.rectangle(across.x(from), bore, across.x(to), outside, Fill.STEEL, turned);
        sketch.rectangle(across.x(from), -outside, across.x(to), -bore, Fill.STEEL, turned);
    }

    private void bearing(Role role, Bearing bearing, double from, double to) {
        sketch.of(end(role));
        double bore = bearing.boreMm().nominal() / 2;
        double outside = bearing.outsideMm().nominal() / 2;
        double ring = (outside - bore) * 0.28;
        double ball = Math.min((outside - bore) * 0.3, (to - from) * 0.4);
        for (int sign = -1; sign <= 1; sign += 2) {
            sketch.rectangle(across.x(from), sign * bore, across.x(to), sign * outside, Fill.PAPER, false);
            sketch.rectangle(across.x(from), sign * bore, across.x(to), sign * (bore + ring), Fill.STEEL, sign < 0);
            sketch.rectangle(
                    across.x(from), sign * (outside - ring), across.x(to), sign * outside, Fill.STEEL, sign > 0);
            sketch.circle(p((from + to) / 2, sign * (bore + outside) / 2), ball, LineClass.OUTLINE, Fill.PAPER);
        }
    }

    /// A hexagon seen with one corner towards the reader: two edges across it.
    private void nut() {
        sketch.of(end(Role.AXLE_NUT));
        double from = at.stackMm().nominal();
        double to = from + end.nut().heightMm().nominal();
        double corner = end.nut().thread().hexagonMm() / Math.sqrt(3);
        sketch.rectangle(across.x(from), -corner, across.x(to), corner, LineClass.OUTLINE, Fill.PAPER);
        sketch.line(p(from, corner / 2), p(to, corner / 2), LineClass.OUTLINE);
        sketch.line(p(from, -corner / 2), p(to, -corner / 2), LineClass.OUTLINE);
    }

    private Point p(double station, double radius) {
        return new Point(across.x(station), radius);
    }

    private SeatName end(Role role) {
        return new SeatName(end.side(), role);
    }
}
