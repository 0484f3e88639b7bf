package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.layout.DriveLayout;
import beltwright.layout.EndLayout;
import beltwright.part.Sleeve;
import java.util.ArrayList;
import java.util.List;

/// Points on the parts of one drive in the plan, where their names are hung.
final class PartNames {
    private PartNames() {}

    static List<Callout> of(Kit kit, Drive drive, DriveLayout at, EndLayout end) {
        var across = new Stations(kit, drive.side());
        double axis = at.motorXMm();
        double toward = axis < 0 ? -1 : 1;
        double plate = middle(at.plateInnerMm().nominal(), at.plateOuterMm().nominal());
        double root = drive.drivePulley().rim().outsideDiameterMm() / 2
                - drive.drivePulley().rim().profile().toothHeightMm();
        double bore = drive.drivePulley().boreDiameterMm().nominal() / 2;
        double big = drive.wheelPulley().rim().outsideDiameterMm() / 2;
        var ends = drive.end();
        double bearing = ends.innerBearing().widthMm().nominal();
        double spacer = end.innerBearingOuterMm().nominal()
                + ends.coreSpacer().lengthMm().nominal() / 2;
        double tyre = ends.wheel().diameterMm().nominal() / 2;
        double ring = middle(
                ends.innerBearing().boreMm().nominal() / 2,
                ends.innerBearing().outsideMm().nominal() / 2);
        var names = new ArrayList<>(List.of(
                Callout.of(
                        drive.seat(Role.MOTOR),
                        new Point(
                                across.x(middle(
                                        at.motorEndMm().nominal(),
                                        at.plateInnerMm().nominal())),
                                axis + toward * bore * 3)),
                Callout.of(drive.seat(Role.MOUNT), new Point(across.x(plate), toward * big * 0.9)),
                Callout.of(
                        drive.seat(Role.DRIVE_PULLEY),
                        new Point(across.x(at.driveRimMiddleMm().nominal()), axis + toward * middle(bore, root))),
                Callout.of(drive.seat(Role.BELT), belt(drive, at, across)),
                Callout.of(
                        drive.seat(Role.WHEEL_PULLEY),
                        new Point(across.x(at.wheelRimMiddleMm().nominal()), -toward * big * 0.8)),
                Callout.of(
                        drive.seat(Role.WHEEL),
                        new Point(
                                across.x(middle(
                                        end.wheelInnerMm().nominal(),
                                        end.wheelOuterMm().nominal())),
                                -tyre * 0.85)),
                Callout.of(
                        seat(drive, Role.INNER_RING),
                        new Point(
                                across.x(end.ringOuterMm().nominal()
                                        - ends.innerRing().lengthMm().nominal() / 2),
                                -sleeve(ends.innerRing()))),
                Callout.of(
                        seat(drive, Role.INNER_BEARING),
                        new Point(across.x(end.innerBearingOuterMm().nominal() - bearing / 2), -ring)),
                Callout.of(seat(drive, Role.CORE_SPACER), new Point(across.x(spacer), sleeve(ends.coreSpacer()))),
                Callout.of(
                        seat(drive, Role.AXLE_NUT),
                        new Point(
                                across.x(end.stackMm().nominal()
                                        + ends.nut().heightMm().nominal() / 2),
                                ends.nut().thread().hexagonMm() * 0.4))));
        var idler = new IdlerDrawing(drive, at);
        if (idler.any()) {
            double face = at.driveRimMiddleMm().nominal()
                    + drive.idler().faceWidthMm().nominal() / 4;
            names.add(Callout.of(
                    drive.seat(Role.IDLER),
                    new Point(across.x(face), at.idlerXMm() + toward * idler.runsOnMm() * 0.65)));
        }
        if (!drive.cover().blank()) {
            double face = at.plateOuterMm().nominal()
                    + drive.cover().depthMm().nominal()
                    + drive.cover().wallMm().nominal() / 2;
            names.add(Callout.of(
                    drive.seat(Role.COVER),
                    new Point(
                            across.x(face),
                            axis + toward * drive.cover().radiusMm().nominal() * 0.8)));
        }
        if (!ends.spacer().blank()) {
            double half = ends.spacer().lengthMm().nominal() / 2;
            names.add(Callout.of(seat(drive, Role.AXLE_SPACER), new Point(across.x(half), -sleeve(ends.spacer()))));
        }
        if (!ends.washer().blank()) {
            double station =
                    end.stackMm().nominal() - ends.washer().thicknessMm().nominal() / 2;
            double radius = middle(
                            ends.washer().holeMm().nominal(),
                            ends.washer().outsideMm().nominal())
                    / 2;
            names.add(Callout.of(seat(drive, Role.AXLE_WASHER), new Point(across.x(station), -radius)));
        }
        return names;
    }

    /// Between the pulleys; with an idler there, where the belt is cut on the far side of the wheel pulley.
    private static Point belt(Drive drive, DriveLayout at, Stations across) {
        var wheel = drive.wheelPulley().rim();
        double toward = at.motorXMm() < 0 ? -1 : 1;
        if (!drive.idler().blank()) {
            double half = drive.belt().widthMm().nominal() / 2;
            return new Point(
                    across.x(at.wheelRimMiddleMm().nominal() - half / 2), -toward * wheel.outsideDiameterMm() / 2);
        }
        var small = drive.drivePulley().rim();
        double root = small.outsideDiameterMm() / 2 - small.profile().toothHeightMm();
        return new Point(
                across.x(middle(
                        at.driveRimMiddleMm().nominal(), at.wheelRimMiddleMm().nominal())),
                middle(toward * wheel.outsideDiameterMm() / 2, at.motorXMm() - toward * root));
    }

    private static double sleeve(Sleeve sleeve) {
        return middle(sleeve.boreMm().nominal(), sleeve.outsideMm().nominal()) / 2;
    }

    private static SeatName seat(Drive drive, Role role) {
        return new SeatName(drive.side(), role);
    }

    private static double middle(double a, double b) {
        return (a + b) / 2;
    }
}
