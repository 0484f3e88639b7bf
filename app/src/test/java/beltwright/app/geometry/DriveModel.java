package beltwright.app.geometry;

import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.part.DrivePulley.HubSide;
import beltwright.part.Hanger;
import beltwright.part.Idler;
import beltwright.part.ToothedRim;
import java.util.ArrayList;
import java.util.List;

/// One drive built from its parts and its placement as bodies in space, with nothing from the engine's layout.
///
/// x forward, z up from the axle, along the axle outward from the hanger's end face. Flanges stand at their upper
/// limit,
/// as the checks say they take them.
final class DriveModel {
    final Kit kit;
    final Drive drive;
    final Draw draw;
    final EndModel end;
    final TautBelt belt;
    final double centre;
    final double x;
    final double z;
    final double plateOuter;
    final double plateInner;
    final double pulleyNear;
    final double faceNear;
    final double faceFar;
    final double pulleyFar;
    final double wheelRimNear;
    final double wheelFaceNear;
    final double wheelFaceFar;
    final double wheelRimFar;
    final double backOfBelt;

    DriveModel(Kit kit, Drive drive, EndModel end, Draw draw) {
        this.kit = kit;
        this.drive = drive;
        this.draw = draw;
        this.end = end;
        var profile = drive.belt().profile();
        backOfBelt = profile.heightMm() - profile.toothHeightMm() - profile.pitchLineDifferentialMm();
        belt = taut();
        centre = belt.centreMm(
                drive.belt().teeth() * profile.pitchMm() + draw.of(drive.belt().lengthDeviationMm()));
        double angle = Math.toRadians(draw.of(drive.placement().aboveAxleDeg()));
        x = ahead() * centre * Math.cos(angle);
        z = centre * Math.sin(angle);

        plateOuter = -draw.of(drive.placement().plateInsetMm());
        plateInner = plateOuter - draw.of(drive.mount().plateThicknessMm());
        var pulley = drive.drivePulley();
        double hub = draw.of(pulley.hubLengthMm());
        pulleyNear = plateOuter + draw.of(drive.placement().pulleyStandoffMm());
        faceNear = pulleyNear
                + (pulley.hubSide() == HubSide.MOTOR ? hub : 0)
                + flange(pulley.rim(), pulley.rim().flanges().onMotorSide());
        faceFar = faceNear + draw.of(pulley.rim().faceWidthMm());
        pulleyFar = faceFar
                + flange(pulley.rim(), pulley.rim().flanges().onWheelSide())
                + (pulley.hubSide() == HubSide.WHEEL ? hub : 0);

        var rim = drive.wheelPulley().rim();
        wheelRimFar = end.seat - draw.of(drive.wheelPulley().rimStandoffMm());
        wheelFaceFar = wheelRimFar - flange(rim, rim.flanges().onWheelSide());
        wheelFaceNear = wheelFaceFar - draw.of(rim.faceWidthMm());
        wheelRimNear = wheelFaceNear - flange(rim, rim.flanges().onMotorSide());
    }

    /// {@return how far a span of the belt leans from the line between the axes (rad)}
    double spanAngle() {
        double difference = pitchRadius(drive.wheelPulley().rim())
                - pitchRadius(drive.drivePulley().rim());
        return Math.asin(difference / centre);
    }

    int ahead() {
        return drive.placement().motor().sign();
    }

    private double flange(ToothedRim rim, boolean there) {
        return there ? draw.of(rim.flangeThicknessMm()) : 0;
    }

    private static double pitchRadius(ToothedRim rim) {
        return rim.teeth() * rim.profile().pitchMm() / (2 * Math.PI);
    }

    private TautBelt taut() {
        double wheel = pitchRadius(drive.wheelPulley().rim());
        double small = pitchRadius(drive.drivePulley().rim());
        var idler = drive.idler();
        if (idler.blank()) {
            return new TautBelt(wheel, small, Double.NaN, Double.NaN, Double.NaN, false);
        }
        boolean back = idler.runs() == Idler.Runs.BACK;
        double round = back
                ? draw.of(idler.diameterMm()) / 2 + backOfBelt
                : idler.teeth() * idler.profile().pitchMm() / (2 * Math.PI);
        return new TautBelt(
                wheel,
                small,
                draw.of(drive.placement().idlerAlongMm()),
                draw.of(drive.placement().idlerAsideMm()),
                round,
                back);
    }

    /// {@return a point given along and beside the line from axle to motor, in the side view}
    double[] beside(double along, double aside) {
        double cos = x / centre * ahead();
        double sin = z / centre;
        return new double[] {ahead() * (along * cos - aside * sin), along * sin + aside * cos};
    }

    Solid can() {
        return aroundMotor("motor can", draw.of(drive.motor().canDiameterMm()) / 2, canEnd(), plateInner);
    }

    double canEnd() {
        return plateInner - draw.of(drive.motor().canLengthMm());
    }

    double shaftEnd() {
        return plateInner + draw.of(drive.motor().shaftLengthMm());
    }

    Solid shaft() {
        return aroundMotor("shaft", draw.of(drive.motor().shaftDiameterMm()) / 2, plateInner, shaftEnd());
    }

    private Solid aroundMotor(String name, double radius, double from, double to) {
        return new Solid(name, Outline.circle(x, z, radius), from, to);
    }

    /// {@return the plate where its outline is measured: around the motor axis}
    Solid plateAtMotor() {
        return aroundMotor("plate", draw.of(drive.mount().plateRadiusMm()), plateInner, plateOuter);
    }

    /// {@return the plate as it must at least be: from its round at the motor to the hanger that it holds}
    Outline wholePlate() {
        double radius = draw.of(drive.mount().plateRadiusMm());
        double at = draw.of(kit.hanger().sectionHeightMm()) / 2;
        return new Outline.Taut(new Outline.Disc(x, z, radius), new Outline.Disc(0, 0, at));
    }

    private double outsideRadius(ToothedRim rim) {
        return pitchRadius(rim) - rim.profile().pitchLineDifferentialMm();
    }

    /// {@return rim with the belt on it, flanges and hub}
    List<Solid> drivePulley() {
        var all = new ArrayList<Solid>();
        var pulley = drive.drivePulley();
        var rim = pulley.rim();
        all.add(aroundMotor("belt on the drive pulley", pitchRadius(rim) + backOfBelt, faceNear, faceFar));
        double flange = draw.of(rim.flangeDiameterMm()) / 2;
        double thick = draw.of(rim.flangeThicknessMm());
        if (rim.flanges().onMotorSide()) {
            all.add(aroundMotor("drive pulley's flange", flange, faceNear - thick, faceNear));
        }
        if (rim.flanges().onWheelSide()) {
            all.add(aroundMotor("drive pulley's flange", flange, faceFar, faceFar + thick));
        }
        double hub = draw.of(pulley.hubLengthMm());
        double round = draw.of(pulley.hubDiameterMm()) / 2;
        if (hub > 0) {
            boolean atMotor = pulley.hubSide() == HubSide.MOTOR;
            all.add(aroundMotor(
                    "drive pulley's hub",
                    round,
                    atMotor ? pulleyNear : pulleyFar - hub,
                    atMotor ? pulleyNear + hub : pulleyFar));
        }
        return all;
    }

    boolean motorSideFlangeIsWidest() {
        var rim = drive.drivePulley().rim();
        return rim.flanges().onMotorSide() && draw.of(rim.flangeDiameterMm()) / 2 >= pitchRadius(rim) + backOfBelt;
    }

    List<Solid> wheelPulley() {
        var all = new ArrayList<Solid>();
        var rim = drive.wheelPulley().rim();
        double bore = draw.of(drive.wheelPulley().boreDiameterMm()) / 2;
        all.add(new Solid(
                "belt on the wheel pulley",
                Outline.ring(0, 0, pitchRadius(rim) + backOfBelt, bore),
                wheelFaceNear,
                wheelFaceFar));
        double flange = draw.of(rim.flangeDiameterMm()) / 2;
        if (rim.flanges().onMotorSide() && flange > bore) {
            all.add(new Solid("wheel pulley's flange", Outline.ring(0, 0, flange, bore), wheelRimNear, wheelFaceNear));
        }
        if (rim.flanges().onWheelSide() && flange > bore) {
            all.add(new Solid("wheel pulley's flange", Outline.ring(0, 0, flange, bore), wheelFaceFar, wheelRimFar));
        }
        return all;
    }

    /// {@return everything the belt sweeps, its back included, anywhere on the drive pulley's face: what the pulleys
    /// stand out of one plane is a question of its own}
    Solid beltStrands() {
        double wheel = pitchRadius(drive.wheelPulley().rim()) + backOfBelt;
        double small = pitchRadius(drive.drivePulley().rim()) + backOfBelt;
        return new Solid(
                "belt",
                new Outline.Taut(new Outline.Disc(0, 0, wheel), new Outline.Disc(x, z, small)),
                faceNear,
                faceFar);
    }

    /// {@return the washers of the motor screws, on the circle of the slots}
    List<Solid> washers() {
        double round = draw.of(drive.motorWasher().outsideMm()) / 2;
        double thick = draw.of(drive.motorWasher().thicknessMm());
        return screwPlaces(draw.of(drive.mount().boltCircleMm()) / 2).stream()
                .map(at -> new Solid("washer", Outline.circle(at[0], at[1], round), plateOuter, plateOuter + thick))
                .toList();
    }

    /// {@return the heads of the motor screws: half a pitch beside the line to the axle, on the circle of the motor}
    List<Solid> heads() {
        var all = new ArrayList<Solid>();
        var screw = drive.motorScrew();
        double washer = draw.of(drive.motorWasher().thicknessMm());
        for (double[] at : screwPlaces(draw.of(drive.motor().boltCircleMm()) / 2)) {
            all.add(new Solid(
                    "motor screw's head",
                    Outline.circle(at[0], at[1], screw.head().diameterMm(screw.thread()) / 2),
                    plateOuter + washer,
                    plateOuter + washer + screw.head().heightMm(screw.thread())));
        }
        return all;
    }

    List<double[]> screwPlaces(double circle) {
        var all = new ArrayList<double[]>();
        int slots = drive.mount().slots();
        for (int i = 0; i < slots; i++) {
            double a = Math.PI * (2 * i + 1) / slots;
            all.add(beside(centre + circle * Math.cos(a), circle * Math.sin(a)));
        }
        return all;
    }

    private Solid aroundIdler(String name, double diameter, double from, double to) {
        var at = beside(
                draw.of(drive.placement().idlerAlongMm()),
                draw.of(drive.placement().idlerAsideMm()));
        return new Solid(name, Outline.circle(at[0], at[1], diameter / 2), from, to);
    }

    /// {@return the plate to where the idler's face begins}
    double idlerFaceNear() {
        return plateOuter
                + draw.of(drive.idler().standoffMm())
                + draw.of(drive.idler().flangeThicknessMm());
    }

    double idlerFaceFar() {
        return idlerFaceNear() + draw.of(drive.idler().faceWidthMm());
    }

    Solid idler() {
        double flange = draw.of(drive.idler().flangeThicknessMm());
        return aroundIdler(
                "idler", draw.of(drive.idler().reachDiameterMm()), idlerFaceNear() - flange, idlerFaceFar() + flange);
    }

    /// {@return where its screw's head sits}
    double idlerSeat() {
        return plateOuter + draw.of(drive.idler().screwGripMm());
    }

    Solid idlerScrew() {
        return aroundIdler(
                "idler screw",
                drive.idlerScrew().thread().majorMm(),
                idlerSeat() - draw.of(drive.idlerScrew().lengthMm()),
                idlerSeat());
    }

    Solid idlerHead() {
        var screw = drive.idlerScrew();
        return aroundIdler(
                "idler screw's head",
                screw.head().diameterMm(screw.thread()),
                idlerSeat(),
                idlerSeat() + screw.head().heightMm(screw.thread()));
    }

    Outline hangerSection() {
        return section(kit.hanger(), draw);
    }

    static Outline section(Hanger hanger, Draw draw) {
        double h = draw.of(hanger.sectionHeightMm()) / 2;
        if (hanger.section() == Hanger.Section.ROUND) {
            return Outline.circle(0, 0, h);
        }
        double d = draw.of(hanger.sectionDepthMm()) / 2;
        return Outline.corners(new double[] {-d, -h}, new double[] {d, -h}, new double[] {d, h}, new double[] {-d, h});
    }

    double halfHanger() {
        return draw.of(kit.hanger().widthMm()) / 2;
    }

    Solid hanger() {
        return new Solid("hanger", hangerSection(), -halfHanger(), 0);
    }

    /// {@return the middle body around the kingpin; its height is not measured, so it stands all the way up}
    Solid hangerBody() {
        double reach = draw.of(kit.hanger().bodyReachMm());
        double half = draw.of(kit.hanger().bodyWidthMm()) / 2;
        double tall = 300;
        return new Solid(
                "hanger's middle body",
                Outline.corners(
                        new double[] {-reach, -tall},
                        new double[] {reach, -tall},
                        new double[] {reach, tall},
                        new double[] {-reach, tall}),
                -halfHanger() - half,
                -halfHanger() + half);
    }
}
