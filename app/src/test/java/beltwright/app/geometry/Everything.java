package beltwright.app.geometry;

import beltwright.kit.Kit;
import beltwright.kit.Side;
import beltwright.part.Mount;
import java.util.ArrayList;
import java.util.List;

/// Every body of a kit whose size is measured, at nominal, where it stands: along the axle from the middle of the
/// hanger,
/// left positive.
final class Everything {
    private final Kit kit;
    private final List<Solid> all = new ArrayList<>();

    private Everything(Kit kit) {
        this.kit = kit;
    }

    static List<Solid> of(Kit kit) {
        var everything = new Everything(kit);
        double half = kit.hanger().widthMm().nominal() / 2;
        everything.all.add(new Solid("hanger", DriveModel.section(kit.hanger(), Draw.nominal()), -half, half));
        double body = kit.hanger().bodyWidthMm().nominal() / 2;
        double reach = kit.hanger().bodyReachMm().nominal();
        everything.all.add(new Solid("middle body", Outline.circle(0, 0, reach), -body, body));
        for (var end : kit.ends()) {
            var model = new EndModel(kit, end, Draw.nominal());
            everything.end(model);
            for (var drive : kit.drives()) {
                if (drive.side() == end.side()) {
                    everything.drive(new DriveModel(kit, drive, model, Draw.nominal()));
                }
            }
        }
        return everything.all;
    }

    private void add(Side side, Solid solid, String name) {
        double half = kit.hanger().widthMm().nominal() / 2;
        all.add(
                side == Side.LEFT
                        ? new Solid("left " + name, solid.outline(), half + solid.from(), half + solid.to())
                        : new Solid("right " + name, solid.outline(), -half - solid.to(), -half - solid.from()));
    }

    private void ring(Side side, String name, double outside, double hole, double from, double to) {
        // a sleeve narrower than its bore is no body
        if (to > from && outside > hole) {
            add(side, new Solid(name, Outline.ring(0, 0, outside / 2, hole / 2), from, to), name);
        }
    }

    private void end(EndModel m) {
        var side = m.end.side();
        var end = m.end;
        double axle = kit.hanger().axleDiameterMm().nominal();
        add(side, new Solid("axle", Outline.circle(0, 0, axle / 2), 0, m.axleTo), "axle");
        if (!end.spacer().blank()) {
            ring(
                    side,
                    "axle spacer",
                    end.spacer().outsideMm().nominal(),
                    end.spacer().boreMm().nominal(),
                    0,
                    m.spacerTo);
        }
        ring(
                side,
                "inner ring",
                end.innerRing().outsideMm().nominal(),
                end.innerRing().boreMm().nominal(),
                m.spacerTo,
                m.ringTo);
        ring(
                side,
                "inner bearing",
                end.innerBearing().outsideMm().nominal(),
                end.innerBearing().boreMm().nominal(),
                m.ringTo,
                m.innerBearingTo);
        ring(
                side,
                "core spacer",
                end.coreSpacer().outsideMm().nominal(),
                end.coreSpacer().boreMm().nominal(),
                m.innerBearingTo,
                m.coreSpacerTo);
        ring(
                side,
                "outer bearing",
                end.outerBearing().outsideMm().nominal(),
                end.outerBearing().boreMm().nominal(),
                m.coreSpacerTo,
                m.outerBearingTo);
        ring(
                side,
                "outer ring",
                end.outerRing().outsideMm().nominal(),
                end.outerRing().boreMm().nominal(),
                m.outerBearingTo,
                m.outerRingTo);
        ring(side, "nut", kit.hanger().axleThread().hexagonMm(), axle, m.stackTo, m.nutTo);
        var wheel = end.wheel();
        // the core ends where its openings or its recess do, as far as anyone measured it
        double core = Math.max(
                wheel.openingCircleMm().nominal() + wheel.openingWidthMm().nominal(),
                wheel.recessDiameterMm().known() ? wheel.recessDiameterMm().nominal() : 0);
        ring(side, "tyre", 2 * m.wheelRadius, core, m.treadFrom, m.treadTo);
        ring(side, "core", core, wheel.bearingSeatMm().nominal(), m.seat, m.treadTo - (m.seat - m.treadFrom));
    }

    private void drive(DriveModel m) {
        var side = m.drive.side();
        var mount = m.drive.mount();
        add(side, m.can(), "motor can");
        add(side, m.shaft(), "shaft");
        add(side, new Solid("plate", m.wholePlate(), m.plateInner, m.plateOuter), "plate");
        m.drivePulley().forEach(s -> add(side, s, "drive pulley"));
        m.wheelPulley().forEach(s -> add(side, s, "wheel pulley"));
        m.heads().forEach(s -> add(side, s, "motor screws"));
        add(side, m.beltStrands(), "belt");
        var pulley = m.drive.wheelPulley();
        if (pulley.screwHoles() > 0) {
            // between rim and core it is at least as thick as its screws need
            ring(
                    side,
                    "wheel pulley",
                    pulley.screwCircleMm().nominal() + pulley.screwThread().majorMm(),
                    pulley.boreDiameterMm().nominal(),
                    m.wheelRimFar,
                    m.end.seat);
        }
        if (mount.fixing() == Mount.Fixing.FLANGE) {
            var screw = m.drive.flangeScrew();
            for (int i = 0; i < mount.flangeHoles(); i++) {
                double a = Math.toRadians(mount.firstPositionDeg().nominal() + 360.0 * i / mount.flangeHoles());
                double r = mount.flangeCircleMm().nominal() / 2;
                add(
                        side,
                        new Solid(
                                "",
                                Outline.circle(
                                        r * Math.cos(a),
                                        r * Math.sin(a),
                                        screw.head().diameterMm(screw.thread()) / 2),
                                m.plateOuter,
                                m.plateOuter + screw.head().heightMm(screw.thread())),
                        "flange screws");
            }
        }
        if (!m.drive.cover().blank()) {
            var cover = CoverModel.of(m);
            cover.wholeWall().forEach(s -> add(side, s, "cover"));
            add(side, cover.face(), "cover");
        }
        if (!m.drive.idler().blank()) {
            add(side, m.idler(), "idler");
            add(side, m.idlerScrew(), "idler screw");
            add(side, m.idlerHead(), "idler screw");
        }
    }
}
