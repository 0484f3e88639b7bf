package beltwright.app.geometry;

import beltwright.kit.Kit;
import beltwright.part.DrivePulley.HubSide;
import beltwright.part.Motor;
import beltwright.part.Mount;
import beltwright.part.ToothedRim;
import beltwright.part.WheelPulley;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/// The geometric questions asked of the bodies of a kit, by the key of the engine's finding.
final class Answers {
    private static final double DECK_MM = 0.05; // a wheel's edge is sampled every two degrees
    private static final double CREST_MM_PER_DEG = 0.01; // the engine takes small angles

    private static final double LUG_OFF_MM = 0.5;
    private static final double LUG_GOES_IN_MM = 0.05;
    private static final double LUG_KNOCKS_MM = 0.8;

    private final Kit kit;
    private final Draw draw;
    private final Map<String, Answer> all = new TreeMap<>();

    private Answers(Kit kit, Draw draw) {
        this.kit = kit;
        this.draw = draw;
    }

    /// @param leaning whether the deck is asked too, which takes long
    static Map<String, Answer> of(Kit kit, Draw draw, boolean leaning) {
        var answers = new Answers(kit, draw);
        var drives = new ArrayList<DriveModel>();
        for (var end : kit.ends()) {
            var model = new EndModel(kit, end, draw);
            answers.end(model);
            if (leaning && !kit.deck().blank()) {
                answers.deck(model);
            }
            for (var drive : kit.drives()) {
                if (drive.side() == end.side()) {
                    var m = new DriveModel(kit, drive, model, draw);
                    drives.add(m);
                    answers.drive(m);
                    if (leaning && !kit.deck().blank() && !Double.isNaN(m.centre)) {
                        answers.deck(m);
                    }
                }
            }
        }
        double width = draw.of(kit.hanger().widthMm());
        for (var m : drives) {
            if (m.drive.motor().wireExit() == Motor.WireExit.END) {
                var others =
                        drives.stream().filter(o -> o != m).map(o -> o.can().acrossTheHanger(width));
                answers.wires(
                        m,
                        others.mapToDouble(o -> (o.to() + m.canEnd()) / 2)
                                .findAny()
                                .orElse(-width));
            }
        }
        if (drives.size() == 2) {
            var one = drives.get(0).can();
            var other = drives.get(1).can().acrossTheHanger(width);
            if (one.to() > other.to()) { // not pushed past each other
                answers.all.put("motors-apart.kit", Answer.between(one.apart(other)));
            }
        }
        return answers.all;
    }

    private void end(EndModel m) {
        var side = "." + m.end.side();
        all.put("thread-past-nut" + side, Answer.exact(m.axleTo - m.nutTo));
        all.put("nut-clamps" + side, Answer.exact(m.stackTo - m.threadFrom));
        all.put("bearing-thread" + side, Answer.exact(m.threadFrom - (m.coreSpacerTo + m.outerBearingTo) / 2));
        double deep = draw.of(m.end.wheel().bearingSeatDepthMm());
        all.put(
                "seat-depth" + side,
                Answer.exact(
                        Math.min(deep - (m.innerBearingTo - m.ringTo), deep - (m.outerBearingTo - m.coreSpacerTo))));
        double over = m.coreSpacerTo - m.innerBearingTo - draw.of(m.end.wheel().coreSpacingMm());
        all.put("core-spacer" + side, Answer.exact(over, 1e-6));
    }

    private void deck(EndModel m) {
        var deck = DeckModel.of(kit, draw);
        double half = draw.of(kit.hanger().widthMm()) / 2;
        double well = draw.of(kit.deck().wheelWellMm());
        all.put(
                "deck-wheel." + m.end.side(),
                new Answer(
                        deck.least(0, 0, m.wheelRadius, half + m.treadFrom, half + m.treadTo, well),
                        DECK_MM,
                        Answer.Claim.EXACT_OUTSIDE));
    }

    private void deck(DriveModel m) {
        var deck = DeckModel.of(kit, draw);
        double half = draw.of(kit.hanger().widthMm()) / 2;
        double can = draw.of(m.drive.motor().canDiameterMm()) / 2;
        double plate = draw.of(m.drive.mount().plateRadiusMm());
        // the engine takes the larger radius over the length of both
        all.put(
                "deck-motor." + m.drive.side(),
                Answer.atLeast(Math.min(
                        deck.least(m.x, m.z, can, half + m.canEnd(), half + m.plateInner, 0),
                        deck.least(m.x, m.z, plate, half + m.plateInner, half + m.plateOuter, 0))));
    }

    private void ground(DriveModel m, String side) {
        var ground = GroundModel.of(m);
        all.put("motor-ground" + side, Answer.exact(ground.overFlat()));
        double kerb = draw.of(kit.task().kerbMm());
        if (kerb < m.end.wornRadius) {
            all.put("kerb-edge" + side, Answer.between(ground.overKerb(kerb)));
        }
        all.put(
                "ramp-crest" + side,
                Answer.exact(
                        m.x > 0 ? ground.overCrest(kit.task(), draw) : ground.overFlat(),
                        CREST_MM_PER_DEG * draw.of(kit.task().crestDeg())));
    }

    /// Slots and opening as long as the motor travels; everything along and beside the line from axle to motor.
    private void plate(DriveModel m, String side) {
        var mount = m.drive.mount();
        double near = draw.of(mount.slotMinMm());
        double far = draw.of(mount.slotMaxMm());
        if (near > far) {
            return;
        }
        double circle = draw.of(mount.boltCircleMm()) / 2;
        var opening = travelled(near, far, 0, draw.of(mount.openingMm()) / 2);
        double web = Double.POSITIVE_INFINITY;
        double washer = Double.POSITIVE_INFINITY;
        for (int i = 0; i < mount.slots(); i++) {
            double a = Math.PI * (2 * i + 1) / mount.slots();
            double along = circle * Math.cos(a);
            double aside = circle * Math.sin(a);
            web = Math.min(
                    web, opening.apart(travelled(near + along, far + along, aside, draw.of(mount.slotWidthMm()) / 2)));
            washer = Math.min(
                    washer,
                    opening.apart(travelled(
                            m.centre + along,
                            m.centre + along,
                            aside,
                            draw.of(m.drive.motorWasher().outsideMm()) / 2)));
        }
        // the engine takes slots and opening without their ends
        all.put("slot-web" + side, Answer.atLeast(web));
        if (near <= m.centre && m.centre <= far) {
            all.put("washer-opening" + side, Answer.atLeast(washer)); // the engine asks over the whole slot
        }
    }

    private static Outline travelled(double near, double far, double aside, double radius) {
        return new Outline.Taut(new Outline.Disc(near, aside, radius), new Outline.Disc(far, aside, radius));
    }

    private void drive(DriveModel m) {
        var side = "." + m.drive.side();
        belt(m, side);
        motor(m, side);
        pulleys(m, side);
        screws(m, side);
        plate(m, side);
        if (!Double.isNaN(m.centre)) {
            ground(m, side);
        }
        if (!m.drive.cover().blank()) {
            cover(m, side);
        }
        if (!m.drive.idler().blank()) {
            idler(m, side);
        }
    }

    private void belt(DriveModel m, String side) {
        var lying = m.belt.at(m.centre);
        all.put("take-up" + side, Answer.exact(draw.of(m.drive.mount().slotMaxMm()) - m.centre));
        all.put(
                "fitting-travel" + side,
                Answer.exact(m.centre - draw.of(m.drive.mount().slotMinMm())));
        all.put(
                "teeth-in-mesh" + side,
                Answer.exact(m.drive.drivePulley().rim().teeth() * lying.onDrive() / (2 * Math.PI), 0.02));
        double offset = (m.faceNear + m.faceFar) / 2 - (m.wheelFaceNear + m.wheelFaceFar) / 2;
        all.put("belt-plane" + side, Answer.exact(Math.tan(Math.toRadians(0.25)) * m.centre - Math.abs(offset)));
    }

    private void motor(DriveModel m, String side) {
        if (Double.isNaN(m.centre)) {
            for (var slug : List.of("motor-hanger", "motor-body", "motor-wheel")) {
                all.put(slug + side, Answer.exact(Double.NaN));
            }
            return;
        }
        var can = m.can();
        all.put("motor-hanger" + side, Answer.between(can.outline().apart(m.hangerSection())));
        all.put("motor-body" + side, Answer.between(can.apart(m.hangerBody())));
        all.put("motor-wheel" + side, Answer.between(can.apart(m.end.wheel())));
    }

    private static double reach(List<Solid> bodies) {
        return bodies.stream()
                .flatMap(b -> b.outline().edge().stream())
                .mapToDouble(p -> Math.hypot(p[0], p[1]))
                .max()
                .orElseThrow();
    }

    private void pulleys(DriveModel m, String side) {
        var wheelPulley = m.wheelPulley();
        all.put(
                "wheel-pulley-plate" + side,
                Answer.exact(wheelPulley.stream().mapToDouble(Solid::from).min().orElseThrow() - m.plateOuter));
        all.put("wheel-pulley-hanger" + side, Answer.between(Solid.apart(wheelPulley, List.of(m.hanger()))));
        all.put("belt-wheel" + side, Answer.exact(m.end.treadFrom - m.wheelFaceFar));
        all.put("pulley-ground" + side, Answer.exact(m.end.wornRadius - reach(wheelPulley)));
        if (Double.isNaN(m.centre)) {
            all.put("pulleys-clear" + side, Answer.exact(Double.NaN));
            all.put("pulley-wheel" + side, Answer.exact(Double.NaN));
            return;
        }
        double clear = Double.POSITIVE_INFINITY;
        for (var a : wheelPulley) {
            for (var b : m.drivePulley()) {
                clear = Math.min(clear, a.outline().apart(b.outline()));
            }
        }
        all.put("pulleys-clear" + side, Answer.exact(clear));
        // the engine takes the widest of the pulley all the way to its far end
        var running = new ArrayList<>(m.drivePulley());
        running.add(m.shaft());
        all.put("pulley-wheel" + side, Answer.atLeast(Solid.apart(running, List.of(m.end.wheel()))));
    }

    private void screws(DriveModel m, String side) {
        var motor = m.drive.motor();
        double tip = m.plateOuter
                + draw.of(m.drive.motorWasher().thicknessMm())
                - draw.of(m.drive.motorScrew().lengthMm());
        all.put("motor-screw-reach" + side, Answer.exact(tip - (m.plateInner - draw.of(motor.threadDepthMm()))));
        all.put(
                "shaft-reach" + side,
                Answer.exact(Math.min(m.shaftEnd(), m.pulleyFar) - Math.max(m.plateInner, m.pulleyNear)));
        var pulley = m.drive.drivePulley();
        if (pulley.setScrews() > 0) {
            double hub = draw.of(pulley.hubLengthMm());
            double middle = pulley.hubSide() == HubSide.MOTOR ? m.pulleyNear + hub / 2 : m.pulleyFar - hub / 2;
            all.put(
                    "set-screws-shaft" + side,
                    Answer.exact(m.shaftEnd() - middle - pulley.setScrewThread().majorMm() / 2));
        }
        if (m.drive.wheelPulley().holding() == WheelPulley.Holding.LUGS
                && m.end.end.wheel().openings() > 0) {
            lugs(m, side);
        }
        if (m.drive.mount().fixing() == Mount.Fixing.CLAMP) {
            double clampEnd = m.plateInner - draw.of(m.drive.mount().clampLengthMm());
            all.put("clamp-room" + side, Answer.exact(clampEnd - m.hangerBody().to()));
        }
        if (Double.isNaN(m.centre)) {
            return;
        }
        double off =
                Math.abs(draw.of(motor.boltCircleMm()) - draw.of(m.drive.mount().boltCircleMm())) / 2;
        var flanges = m.drive.drivePulley().rim().flanges();
        boolean widestFirst = pulley.hubSide() == HubSide.WHEEL
                && (flanges == ToothedRim.Flanges.NONE || m.motorSideFlangeIsWidest());
        double heads = Solid.apart(m.heads(), m.drivePulley());
        all.put(
                "heads-pulley" + side,
                new Answer(heads, Answer.SAMPLED_MM + off, widestFirst ? Answer.Claim.EXACT : Answer.Claim.AT_MOST));
        // the engine looks along the axle only
        all.put("heads-belt" + side, Answer.atLeast(Solid.apart(m.heads(), List.of(m.beltStrands()))));
    }

    private void lugs(DriveModel m, String side) {
        var pulley = m.drive.wheelPulley();
        var wheel = m.end.end.wheel();
        double floor = m.end.seat + draw.of(wheel.openingDepthMm());
        all.put("lug-depth" + side, Answer.exact(floor - (m.end.seat + draw.of(pulley.lugLengthMm()))));
        if (wheel.openings() % pulley.lugs() == 0) { // else no turning brings every lug before an opening
            var openings = onCircle(wheel.openings(), draw.of(wheel.openingCircleMm()));
            double off = 0;
            for (double[] lug : onCircle(pulley.lugs(), draw.of(pulley.lugCircleMm()))) {
                off = Math.max(off, nearest(lug, openings));
            }
            all.put("lug-circle" + side, Answer.exact(LUG_OFF_MM - off));
        }
        double play = draw.of(wheel.openingWidthMm()) - draw.of(pulley.lugWidthMm());
        all.put("lug-width" + side, Answer.exact(Math.min(play - LUG_GOES_IN_MM, LUG_KNOCKS_MM - play)));
    }

    private static List<double[]> onCircle(int count, double diameter) {
        return IntStream.range(0, count)
                .mapToDouble(i -> 2 * Math.PI * i / count)
                .mapToObj(a -> new double[] {diameter / 2 * Math.cos(a), diameter / 2 * Math.sin(a)})
                .toList();
    }

    private static double nearest(double[] point, List<double[]> others) {
        return others.stream()
                .mapToDouble(o -> Math.hypot(o[0] - point[0], o[1] - point[1]))
                .min()
                .orElseThrow();
    }

    /// The bundle leaves the end of the can, turns, and lies across.
    ///
    /// @param border the other end of the hanger, or the middle between two motors
    private void wires(DriveModel m, double border) {
        var motor = m.drive.motor();
        double bundle = m.canEnd() - draw.of(motor.wireBendMm()) - draw.of(motor.wireDiameterMm()) / 2;
        all.put("wire-room." + m.drive.side(), Answer.exact(bundle - border));
    }

    private void cover(DriveModel m, String side) {
        if (Double.isNaN(m.centre)) {
            return;
        }
        var cover = CoverModel.of(m);
        var pulley = m.drivePulley();
        double aside = Double.POSITIVE_INFINITY;
        for (var piece : cover.round()) {
            for (var body : pulley) {
                aside = Math.min(aside, piece.outline().apart(body.outline()));
            }
        }
        // the engine lets the motor stand off the cover's middle in any direction
        all.put("cover-belt" + side, Answer.atLeast(aside));
        all.put("cover-heads" + side, Answer.atLeast(Solid.apart(cover.round(), m.washers())));
        double far = Math.max(m.pulleyFar, m.shaftEnd());
        all.put("cover-pulley" + side, Answer.exact(cover.inside() - far));
        double stone = cover.inner().stream()
                .mapToDouble(p -> m.beltStrands().outline().outside(p[0], p[1]))
                .max()
                .orElseThrow();
        // with the motor beyond the cover's middle the widest gap lies between the strands, where no stone is caught
        boolean nearer = m.centre <= cover.middle();
        all.put(
                "cover-stones" + side,
                new Answer(
                        draw.of(m.drive.cover().stoneOpeningMm()) - stone,
                        Answer.SAMPLED_MM,
                        nearer ? Answer.Claim.EXACT : Answer.Claim.AT_MOST));
        all.put("cover-wheel" + side, Answer.between(cover.face().apart(m.end.wheel())));
        var wheelPulley = m.wheelPulley();
        double rim = Double.POSITIVE_INFINITY;
        for (var arm : cover.arms()) {
            for (var body : wheelPulley) {
                rim = Math.min(rim, arm.outline().apart(body.outline()));
            }
        }
        // the engine takes the middle of the open end, where there is no wall
        all.put("cover-rim" + side, Answer.atLeast(rim));
        if (cover.reach() > cover.radius() / 2) { // a shorter one ends before its round is at its lowest
            // the engine takes the whole round, of which half is there
            all.put(
                    "cover-ground" + side,
                    Answer.atLeast(m.end.wornRadius + cover.outline().lowest()));
        }
    }

    private void idler(DriveModel m, String side) {
        var lying = m.belt.at(m.centre);
        all.put("idler-wrap" + side, Answer.exact(Math.toDegrees(lying.onIdler()), 0.25));
        double middle = (m.faceNear + m.faceFar) / 2;
        double half = draw.of(m.drive.belt().widthMm()) / 2;
        all.put(
                "idler-plane" + side,
                Answer.exact(Math.min(middle - half - m.idlerFaceNear(), m.idlerFaceFar() - middle - half)));
        all.put("idler-carried" + side, Answer.exact(m.idlerSeat() - middle));
        all.put("idler-plate" + side, Answer.exact(m.idler().from() - m.plateOuter));
        if (Double.isNaN(m.centre)) {
            return;
        }
        var idler = m.idler().outline();
        all.put("idler-wheel-pulley" + side, Answer.between(nearest(idler, m.wheelPulley())));
        all.put("idler-drive-pulley" + side, Answer.between(nearest(idler, m.drivePulley())));
        all.put(
                "idler-wheel" + side,
                Answer.between(Solid.apart(List.of(m.idler(), m.idlerHead()), List.of(m.end.wheel()))));
        var screw = m.idlerScrew();
        all.put("idler-screw-motor" + side, Answer.between(screw.apart(m.can())));
        all.put("idler-screw-body" + side, Answer.between(screw.apart(m.hangerBody())));
        double beside = screw.outline().apart(m.hangerSection());
        if (m.drive.mount().fixing() == Mount.Fixing.FLANGE) {
            double flange = draw.of(kit.hanger().flangeCircleMm())
                    + kit.hanger().flangeThread().majorMm();
            beside = Math.min(beside, screw.outline().apart(Outline.circle(0, 0, flange / 2)));
        }
        all.put("idler-screw-hanger" + side, Answer.between(beside));
    }

    private static double nearest(Outline outline, List<Solid> bodies) {
        return bodies.stream()
                .mapToDouble(b -> outline.apart(b.outline()))
                .min()
                .orElseThrow();
    }
}
