package beltwright.check;

import beltwright.power.RoadLoad;
import beltwright.quantity.Range;
import beltwright.strength.Plate;

/// What pulls at a motor mount: the overhung belt bends its plate out of its plane and tips the motor on its screws,
/// the wheel's torque and the jolting motor turn it about the axle, a kerb strikes the motor.
///
///     M_o = P·x_p + F_jolt·x_m          M_t = M_w + F_jolt·C          M_strike = k_strike·m·g·(C + d_can/2)
///
/// - Source: statics. The load of a kerb is a stated case and no measurement: common practice, no source.
/// - Valid: the motor's centre of mass in the middle of its length; a plate as wide as its round, down to the clamp.
/// - Neglects: that the jolt comes from one side at a time: it counts in full along the plate and across it, which is
///   safe. All is taken about the motor's mounting face.
final class MountLoad {
    private MountLoad() {}

    /// {@return mounting face to the middle of the belt}
    static Range overhang(Subject s) {
        return s.at().driveRimMiddleMm().minus(s.at().plateInnerMm());
    }

    /// {@return mounting face to the motor's centre of mass (mm)}
    private static double massMm(Subject s, At at) {
        return at.most(s.drive().motor().canLengthMm()) / 2;
    }

    /// {@return moment by the pull that hangs over (N·m)}
    static double pullNm(Subject s, At at, double motorNm) {
        return Tension.pullN(s, at, motorNm) * at.most(overhang(s)) / 1000;
    }

    /// {@return moment by the jolting motor that hangs over (N·m)}
    static double joltNm(Subject s, At at) {
        return Tension.joltN(s, at) * massMm(s, at) / 1000;
    }

    /// {@return M_o, moment that bends the plate out of its plane (N·m)}
    static double overhungNm(Subject s, At at, double motorNm) {
        return pullNm(s, at, motorNm) + joltNm(s, at);
    }

    /// {@return M_t, moment about the axle (N·m)}
    static double turningNm(Subject s, At at, double motorNm) {
        return DrivePull.wheelNm(s, motorNm) + Tension.joltN(s, at) * at.most(s.at().centreDistanceMm()) / 1000;
    }

    /// {@return the can's outermost reach from the axle (mm)}
    static double reachMm(Subject s, At at) {
        return at.most(s.at().centreDistanceMm()) + at.most(s.drive().motor().canDiameterMm()) / 2;
    }

    /// {@return M_strike, moment about the axle as a kerb strikes the can (N·m)}
    static double strikeNm(Subject s, At at) {
        return at.most(Assumed.strike(s.kit()))
                * at.most(s.kit().task().allUpMassKg())
                * RoadLoad.G
                * reachMm(s, at)
                / 1000;
    }

    /// {@return moment about the axle of a kerb's strike at which the plate yields, bent and twisted (N·m)}
    static double plateNm(Subject s, At at) {
        double edge = edgewiseMpa(s, at, 1);
        double lever = massMm(s, at) / reachMm(s, at.mirrored()); // a strike farther in twists more for each N·m
        double twist = Plate.twistMpa(lever, netMm(s, at), thickMm(s, at));
        return PlateStrength.yieldMpa(s, at) / Math.sqrt(edge * edge + 3 * twist * twist);
    }

    static double thickMm(Subject s, At at) {
        return at.least(s.drive().mount().plateThicknessMm());
    }

    static double widthMm(Subject s, At at) {
        return 2 * at.least(s.drive().mount().plateRadiusMm());
    }

    /// {@return width that slots and opening leave (mm); NaN where they leave none}
    static double netMm(Subject s, At at) {
        var mount = s.drive().mount();
        double net = Plate.netMm(widthMm(s, at), 2, at.most(mount.slotWidthMm())) - at.most(mount.openingMm());
        return net > 0 ? net : Double.NaN;
    }

    /// {@return stress (MPa) across the slots of a plate bent in its plane; NaN where a slot runs out of it}
    static double edgewiseMpa(Subject s, At at, double bendingNm) {
        var mount = s.drive().mount();
        double stress = Plate.edgewiseMpa(
                bendingNm,
                widthMm(s, at),
                thickMm(s, at),
                at.most(mount.slotWidthMm()),
                at.most(MountChecks.SlotWeb.slotAside(s)),
                at.most(mount.openingMm()));
        return stress > 0 ? stress : Double.NaN;
    }

    /// {@return stress (MPa) beside the slots of a plate bent in its plane, before any notch factor}
    static double besideSlotMpa(Subject s, At at, double bendingNm) {
        var mount = s.drive().mount();
        return Plate.besideSlotMpa(
                bendingNm,
                widthMm(s, at),
                thickMm(s, at),
                at.most(mount.slotWidthMm()),
                at.most(MountChecks.SlotWeb.slotAside(s)),
                at.most(mount.openingMm()));
    }

    /// Writes the lines up to M_o.
    static void writeOverhung(Subject s, Working w) {
        Tension.writePull(s, w);
        Tension.writeJolt(s, w);
        w.given("x_p", "mounting face to the middle of the belt", overhang(s), "layout");
        w.given("l_can", s.drive().motor().canLengthMm());
        w.line("x_m", "l_can/2", massMm(s, At.NOMINAL), "mm", "mounting face to the motor's centre of mass");
        w.line(
                "M_o",
                "(P·x_p + F_jolt·x_m)/1000",
                overhungNm(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                "N·m",
                "belt and motor hang over the mounting face");
    }

    /// Writes the lines up to M_t.
    static void writeTurning(Subject s, Working w) {
        DrivePull.writeWheel(s, w);
        Tension.writeJolt(s, w);
        writeCentre(s, w);
        w.line(
                "M_t",
                "M_w + F_jolt·C/1000",
                turningNm(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                "N·m",
                "turns the mount about the axle");
    }

    private static void writeCentre(Subject s, Working w) {
        if (!s.at().closed()) {
            w.needs("a belt that closes around its pulleys");
        }
        w.given("C", "centre distance", s.at().centreDistanceMm(), "layout");
    }

    /// Writes the lines up to M_strike.
    static void writeStrike(Subject s, Working w) {
        writeCentre(s, w);
        w.given("d_can", s.drive().motor().canDiameterMm());
        w.line("r_strike", "C + d_can/2", reachMm(s, At.NOMINAL), "mm", "the can's outermost reach");
        w.given("k_strike", Assumed.strike(s.kit()));
        w.given("m", s.kit().task().allUpMassKg());
        w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
        w.line(
                "M_strike",
                "k_strike·m·g·r_strike/1000",
                strikeNm(s, At.NOMINAL),
                "N·m",
                "a stated load case, no measurement");
    }

    /// Writes the lines up to T_plate.
    static double writePlate(Subject s, Working w) {
        w.given("l_can", s.drive().motor().canLengthMm());
        w.line("x_m", "l_can/2", massMm(s, At.NOMINAL), "mm", "mounting face to the middle of the motor");
        writeSection(s, w);
        w.line(
                "s_e",
                "1000·b_p/2/I_n",
                edgewiseMpa(s, At.NOMINAL, 1),
                "MPa per N·m",
                "edgewise bending across the slots, for each N·m about the axle");
        w.line(
                "s_t",
                "3000·(x_m/r_strike)/(b_net·t^2)",
                Plate.twistMpa(
                        massMm(s, At.NOMINAL) / reachMm(s, At.NOMINAL), netMm(s, At.NOMINAL), thickMm(s, At.NOMINAL)),
                "MPa per N·m",
                "twist by a force beside the plate");
        PlateStrength.writeYield(s, w);
        return w.line("T_plate", "R_y/√(s_e^2 + 3·s_t^2)", plateNm(s, At.NOMINAL), "N·m", "the plate yields");
    }

    /// Writes the section that slots and opening leave: b_p, t, b_net, I_n.
    static void writeSection(Subject s, Working w) {
        var mount = s.drive().mount();
        w.given("r_plate", mount.plateRadiusMm());
        w.line("b_p", "2·r_plate", widthMm(s, At.NOMINAL), "mm", "as wide as its round, down to the clamp");
        w.given("t", mount.plateThicknessMm());
        w.given("b_slot", mount.slotWidthMm());
        w.given("d_opening", mount.openingMm());
        w.given("s_slot", "slot beside the centre line", MountChecks.SlotWeb.slotAside(s), "layout");
        w.line(
                "b_net",
                "b_p − 2·b_slot − d_opening",
                netMm(s, At.NOMINAL),
                "mm",
                "what two slots and the opening leave");
        if (Double.isNaN(netMm(s, At.NOMINAL)) || Double.isNaN(edgewiseMpa(s, At.NOMINAL, 1))) {
            w.needs("a plate that its slots and its opening leave whole");
        }
        double b = widthMm(s, At.NOMINAL);
        double slot = mount.slotWidthMm().nominal();
        double opening = mount.openingMm().nominal();
        double off = MountChecks.SlotWeb.slotAside(s).nominal();
        w.line(
                "I_n",
                "t·((b_p^3 − d_opening^3)/12 − 2·(b_slot^3/12 + b_slot·s_slot^2))",
                thickMm(s, At.NOMINAL)
                        * ((b * b * b - opening * opening * opening) / 12
                                - 2 * (slot * slot * slot / 12 + slot * off * off)),
                "mm⁴",
                "of that section, bent in its plane");
    }
}
