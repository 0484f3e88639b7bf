package beltwright.layout;

import beltwright.belt.PitchLine;
import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.WheelEnd;
import beltwright.part.DrivePulley;
import beltwright.part.ToothedRim;
import beltwright.quantity.Dimension;
import beltwright.quantity.Range;
import java.util.ArrayList;

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
        var bearing = ring.plus(end.innerBearing().widthMm());
        var core = bearing.plus(Range.of(wheel.coreSpacingMm()).times(0.5));
        var tread = core.plus(wheel.coreOffsetMm());
        var half = Range.of(wheel.widthMm()).times(0.5);
        var stack = bearing.plus(end.coreSpacer().lengthMm())
                .plus(end.outerBearing().widthMm())
                .plus(end.outerRing().lengthMm());
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
        var pitchLine = pitchLine(drive);
        var centre = centreDistance(drive, pitchLine);
        boolean closed = centre.known();
        double drawn = closed
                ? centre.nominal()
                : (mount.slotMinMm().nominal() + mount.slotMaxMm().nominal()) / 2;
        double wrap = pitchLine.driveWrapRad(centre.nominal());
        double angle = Math.toRadians(place.aboveAxleDeg().nominal());

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
                PitchLine.teethInMesh(drive.drivePulley().rim().teeth(), wrap),
                Math.toDegrees(wrap),
                pitchLine.spanMm(centre.nominal()),
                place.motor().sign() * drawn * Math.cos(angle),
                drawn * Math.sin(angle),
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

    public static PitchLine pitchLine(Drive drive) {
        return new PitchLine(
                drive.drivePulley().rim().pitchDiameterMm(),
                drive.wheelPulley().rim().pitchDiameterMm());
    }

    private static Range centreDistance(Drive drive, PitchLine pitchLine) {
        var deviation = drive.belt().lengthDeviationMm();
        double length = drive.belt().teeth() * drive.belt().profile().pitchMm();
        return new Range(
                pitchLine.centreDistanceMm(length + deviation.lower()),
                pitchLine.centreDistanceMm(length + deviation.nominal()),
                pitchLine.centreDistanceMm(length + deviation.upper()));
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
        return near.plus(pulley.hubLengthMm()).plus(overallWidth(pulley.rim()));
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
