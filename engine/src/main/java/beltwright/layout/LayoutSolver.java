package beltwright.layout;

import beltwright.belt.BeltLoop;
import beltwright.belt.PitchLine;
import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.WheelEnd;
import beltwright.part.DrivePulley;
import beltwright.part.Idler;
import beltwright.part.ToothedRim;
import beltwright.quantity.Dimension;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.function.ToDoubleBiFunction;

/// Puts a kit in space: the belt sets the centre distance, the axle stack and the mount set the stations along the
/// axle.
///
/// A kit whose belt does not close is laid out all the same, the motor in the middle of its slot, so that it can be
/// drawn.
public final class LayoutSolver {
    private LayoutSolver() {}

    public static Layout solve(Kit kit) {
        var ends = new ArrayList<EndLayout>(2);
        for (var end : kit.ends()) {
            ends.add(end(kit, end));
        }
        var drives = new ArrayList<DriveLayout>(2);
        for (var drive : kit.drives()) {
            for (var end : ends) {
                if (end.side() == drive.side()) {
                    drives.add(drive(drive, end));
                }
            }
        }
        return new Layout(drives, ends);
    }

    static EndLayout end(Kit kit, WheelEnd end) {
        var hanger = kit.hanger();
        var wheel = end.wheel();
        var ring = Range.of(end.innerRing().lengthMm());
        if (!end.spacer().blank()) {
            ring = ring.plus(end.spacer().lengthMm());
        }
        var bearing = ring.plus(end.innerBearing().widthMm());
        var core = bearing.plus(Range.of(wheel.coreSpacingMm()).times(0.5));
        var tread = core.plus(wheel.coreOffsetMm());
        var half = Range.of(wheel.widthMm()).times(0.5);
        var stack = bearing.plus(end.coreSpacer().lengthMm())
                .plus(end.outerBearing().widthMm())
                .plus(end.outerRing().lengthMm());
        if (!end.washer().blank()) {
            stack = stack.plus(end.washer().thicknessMm());
        }
        var axle = Range.of(hanger.axleLengthMm());
        return new EndLayout(
                end.side(),
                ring,
                bearing,
                core,
                tread.minus(half),
                tread.plus(half),
                stack,
                axle.minus(hanger.axleThreadLengthMm()),
                axle.minus(stack).minus(end.nut().heightMm()));
    }

    static DriveLayout drive(Drive drive, EndLayout end) {
        var mount = drive.mount();
        var place = drive.placement();
        var loop = loop(drive);
        var centre = centreDistance(drive, loop);
        boolean closed = centre.known();
        double drawn = closed
                ? centre.nominal()
                : (mount.slotMinMm().nominal() + mount.slotMaxMm().nominal()) / 2;
        var wrap = driveWrapRad(drive, centre);
        double angle = Math.toRadians(place.aboveAxleDeg().nominal());
        double along = place.idlerAlongMm().nominal();
        double aside = place.idlerAsideMm().nominal();
        double ahead = along * Math.cos(angle) - aside * Math.sin(angle);

        var plateOuter = Range.of(place.plateInsetMm()).negated();
        var plateInner = plateOuter.minus(mount.plateThicknessMm());
        var near = plateOuter.plus(place.pulleyStandoffMm());
        var seat = end.wheelInnerMm().plus(drive.end().wheel().coreFaceInsetMm());
        var wheelRimFar = seat.minus(drive.wheelPulley().rimStandoffMm());
        return new DriveLayout(
                drive.side(),
                closed,
                centre,
                centre.minus(mount.slotMinMm()),
                Range.of(mount.slotMaxMm()).minus(centre),
                teethInMesh(drive.drivePulley().rim().teeth(), wrap),
                Math.toDegrees(wrap.nominal()),
                loop.spanMm(centre.nominal()),
                place.motor().sign() * drawn * Math.cos(angle),
                drawn * Math.sin(angle),
                drive.idler().blank() ? Double.NaN : place.motor().sign() * ahead,
                drive.idler().blank() ? Double.NaN : along * Math.sin(angle) + aside * Math.cos(angle),
                plateOuter,
                plateInner,
                plateInner.minus(drive.motor().canLengthMm()),
                plateInner.plus(drive.motor().shaftLengthMm()),
                near,
                driveRimMiddle(drive.drivePulley(), near),
                drivePulleyFar(drive.drivePulley(), near),
                wheelRimNear(drive.wheelPulley().rim(), wheelRimFar),
                wheelRimMiddle(drive.wheelPulley().rim(), wheelRimFar),
                wheelRimFar,
                seat);
    }

    /// {@return from the middle of a wheel's inner bearing out to that of its outer one (mm)}
    public static Range bearingSpanMm(WheelEnd end) {
        return Range.of(end.innerBearing().widthMm())
                .plus(end.outerBearing().widthMm())
                .times(0.5)
                .plus(end.coreSpacer().lengthMm());
    }

    /// {@return from the middle of a wheel's inner bearing out to the middle of its tread (mm)}
    public static Range treadFromBearingMm(WheelEnd end) {
        return Range.of(end.innerBearing().widthMm())
                .plus(end.wheel().coreSpacingMm())
                .times(0.5)
                .plus(end.wheel().coreOffsetMm());
    }

    /// {@return from the middle of a wheel's inner bearing out to the middle of the belt (mm)}
    public static Range beltFromBearingMm(Drive drive) {
        var wheel = drive.end().wheel();
        var seat = treadFromBearingMm(drive.end())
                .minus(Range.of(wheel.widthMm()).times(0.5))
                .plus(wheel.coreFaceInsetMm());
        return wheelRimMiddle(
                drive.wheelPulley().rim(), seat.minus(drive.wheelPulley().rimStandoffMm()));
    }

    public static PitchLine pitchLine(Drive drive) {
        return new PitchLine(
                drive.drivePulley().rim().pitchDiameterMm(),
                drive.wheelPulley().rim().pitchDiameterMm());
    }

    /// {@return the way of the belt with every dimension at nominal}
    public static BeltLoop loop(Drive drive) {
        var place = drive.placement();
        return loop(drive, place.idlerAlongMm().nominal(), place.idlerAsideMm().nominal(), Double.NaN);
    }

    /// @param idlerMm pitch diameter of the idler (mm), NaN for its nominal
    private static BeltLoop loop(Drive drive, double along, double aside, double idlerMm) {
        var line = pitchLine(drive);
        var idler = drive.idler();
        if (idler.blank()) {
            return new BeltLoop(line, null);
        }
        double diameter = Double.isNaN(idlerMm)
                ? idler.pitchDiameterMm(drive.belt().profile()).nominal()
                : idlerMm;
        return new BeltLoop(line, new BeltLoop.Idling(along, aside, diameter, idler.runs() == Idler.Runs.BACK));
    }

    private static Range centreDistance(Drive drive, BeltLoop loop) {
        var deviation = drive.belt().lengthDeviationMm();
        double length = drive.belt().teeth() * drive.belt().profile().pitchMm();
        if (!drive.idler().blank()) {
            return withIdler(drive, loop, length, deviation);
        }
        return new Range(
                loop.centreDistanceMm(length + deviation.lower()),
                loop.centreDistanceMm(length + deviation.nominal()),
                loop.centreDistanceMm(length + deviation.upper()));
    }

    /// With an idler the centre distance is taken at every corner of belt length, idler place and idler diameter.
    private static Range withIdler(Drive drive, BeltLoop loop, double length, Dimension deviation) {
        double nominal = loop.centreDistanceMm(length + deviation.nominal());
        return atCorners(drive, nominal, (corner, c) -> c);
    }

    /// {@return the wrap on the drive pulley (rad) over the limits of belt length and, with one, idler}
    private static Range driveWrapRad(Drive drive, Range centreDistanceMm) {
        if (!drive.idler().blank()) {
            return atCorners(drive, centreDistanceMm.nominal(), BeltLoop::driveWrapRad);
        }
        var line = pitchLine(drive);
        double near = line.driveWrapRad(centreDistanceMm.low());
        double far = line.driveWrapRad(centreDistanceMm.high());
        return new Range(Math.min(near, far), line.driveWrapRad(centreDistanceMm.nominal()), Math.max(near, far));
    }

    private static Range teethInMesh(int teeth, Range wrapRad) {
        return new Range(
                PitchLine.teethInMesh(teeth, wrapRad.low()),
                PitchLine.teethInMesh(teeth, wrapRad.nominal()),
                PitchLine.teethInMesh(teeth, wrapRad.high()));
    }

    /// {@return the wrap on the idler (rad) over the limits of belt length, idler place and idler diameter}
    public static Range idlerWrapRad(Drive drive, Range centreDistanceMm) {
        return atCorners(drive, centreDistanceMm.nominal(), BeltLoop::idlerWrapRad);
    }

    private static Range atCorners(Drive drive, double nominalMm, ToDoubleBiFunction<BeltLoop, Double> read) {
        var along = drive.placement().idlerAlongMm();
        var aside = drive.placement().idlerAsideMm();
        var round = drive.idler().pitchDiameterMm(drive.belt().profile());
        var deviation = drive.belt().lengthDeviationMm();
        double length = drive.belt().teeth() * drive.belt().profile().pitchMm();
        double nominal = read.applyAsDouble(loop(drive), nominalMm);
        double least = nominal;
        double most = nominal;
        for (int corner = 0; corner < 16; corner++) {
            var loop = loop(
                    drive,
                    (corner & 1) == 0 ? along.lower() : along.upper(),
                    (corner & 2) == 0 ? aside.lower() : aside.upper(),
                    (corner & 4) == 0 ? round.lower() : round.upper());
            double c = loop.centreDistanceMm(
                    length + ((corner & 8) == 0 ? deviation.lower() : deviation.upper()), nominalMm);
            double value = read.applyAsDouble(loop, c);
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return new Range(least, nominal, most);
    }

    private static Range driveRimMiddle(DrivePulley pulley, Range near) {
        var rim = pulley.rim();
        var start = pulley.hubSide() == DrivePulley.HubSide.MOTOR ? near.plus(pulley.hubLengthMm()) : near;
        if (rim.flanges().onMotorSide()) {
            start = start.plus(rim.flangeThicknessMm());
        }
        return start.plus(Range.of(rim.faceWidthMm()).times(0.5));
    }

    private static Range drivePulleyFar(DrivePulley pulley, Range near) {
        return near.plus(lengthMm(pulley));
    }

    /// {@return the whole length of a drive pulley, hub and rim (mm)}
    public static Range lengthMm(DrivePulley pulley) {
        return Range.of(pulley.hubLengthMm()).plus(overallWidth(pulley.rim()));
    }

    private static Range wheelRimMiddle(ToothedRim rim, Range far) {
        var start = rim.flanges().onWheelSide() ? far.minus(rim.flangeThicknessMm()) : far;
        return start.minus(Range.of(rim.faceWidthMm()).times(0.5));
    }

    private static Range wheelRimNear(ToothedRim rim, Range far) {
        return far.minus(overallWidth(rim));
    }

    private static Range overallWidth(ToothedRim rim) {
        var face = Range.of(rim.faceWidthMm());
        Dimension flange = rim.flangeThicknessMm();
        return rim.flanges() == ToothedRim.Flanges.NONE
                ? face
                : face.plus(Range.of(flange).times(rim.flanges().count()));
    }
}
