package beltwright.layout;

import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.Side;
import beltwright.kit.WheelEnd;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import java.util.ArrayList;
import java.util.List;

/// The sizes that a reader looks for on any drawing of a kit, whether or not a check turns on them.
public final class MainDimensions {
    private MainDimensions() {}

    public static List<DrawnDimension> of(Kit kit, Layout layout) {
        var all = new ArrayList<DrawnDimension>();
        double half = kit.hanger().widthMm().nominal() / 2;
        all.add(new DrawnDimension(
                "hanger width",
                View.PLAN,
                kit.drives().getFirst().side(),
                0,
                -half,
                0,
                half,
                Along.VERTICAL,
                false,
                ""));
        for (var end : kit.ends()) {
            all.addAll(end(kit, end, layout.end(end.side())));
        }
        for (int i = 0; i < kit.drives().size(); i++) {
            all.addAll(drive(kit, kit.drives().get(i), layout.drives().get(i)));
        }
        return all.stream().filter(d -> !Double.isNaN(d.valueMm())).toList();
    }

    /// {@return y in the plan view (mm, left positive) of a station outward from this side's end face}
    public static double plan(Kit kit, Side side, double station) {
        double fromMiddle = kit.hanger().widthMm().nominal() / 2 + station;
        return side == Side.LEFT ? fromMiddle : -fromMiddle;
    }

    private static List<DrawnDimension> end(Kit kit, WheelEnd end, EndLayout at) {
        var side = end.side();
        return List.of(
                across(
                        kit,
                        "tread width",
                        side,
                        0,
                        at.wheelInnerMm().nominal(),
                        at.wheelOuterMm().nominal()),
                across(
                        kit,
                        "axle beyond the hanger",
                        side,
                        0,
                        0,
                        kit.hanger().axleLengthMm().nominal()));
    }

    private static List<DrawnDimension> drive(Kit kit, Drive drive, DriveLayout at) {
        double can = drive.motor().canDiameterMm().nominal() / 2;
        return List.of(
                across(
                        kit,
                        "plate thickness",
                        drive.side(),
                        at.motorXMm(),
                        at.plateOuterMm().nominal(),
                        at.plateInnerMm().nominal()),
                new DrawnDimension(
                        "motor can diameter",
                        View.SIDE,
                        drive.side(),
                        at.motorXMm(),
                        at.motorZMm() - can,
                        at.motorXMm(),
                        at.motorZMm() + can,
                        Along.VERTICAL,
                        true,
                        ""));
    }

    private static DrawnDimension across(Kit kit, String name, Side side, double x, double from, double to) {
        return new DrawnDimension(
                name, View.PLAN, side, x, plan(kit, side, from), x, plan(kit, side, to), Along.VERTICAL, false, "");
    }
}
