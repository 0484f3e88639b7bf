package beltwright.check;

import beltwright.part.Controller;
import beltwright.power.MotorModel;
import beltwright.power.Pulls;
import beltwright.power.RoadLoad;

/// How hard one drive is pulled at most, driving and braking: by the controller's limit or by the grip of its tread,
/// whichever comes first.
///
///     M_controller = Kt·I          M_grip = μ·q·m·g/n·r/i          M = min(M_controller, M_grip)      Te = 2·M/d
///
/// - Source: statics; Coulomb friction with the share q of the weight on the driven axle as an input.
/// - Neglects: loss in the belt, the inertia of motor and wheel, one tread that carries more than the other.
final class DrivePull {
    private DrivePull() {}

    /// {@return torque of the motor (N·m) at the controller's limit}
    static double controllerNm(Subject s, At at, boolean braking) {
        var controller = s.kit().controller();
        var stated = braking ? controller.brakeCurrentA() : controller.driveCurrentA();
        double direct = MotorModel.directCurrentA(at.most(stated), controller.currentIs());
        return MotorModel.torqueConstantNmA(at.least(s.drive().motor().kvRpmPerV())) * direct;
    }

    /// {@return torque of the motor (N·m) at which its tread slips; infinite where the grip is not known}
    static double gripNm(Subject s, At at, boolean braking) {
        var task = s.kit().task();
        var share = braking ? task.drivenBrakingPercent() : task.drivenPercent();
        if (!task.gripShare().known() || !share.known()) {
            return Double.POSITIVE_INFINITY;
        }
        double push = at.most(task.gripShare())
                * at.most(share)
                / 100
                * at.most(task.allUpMassKg())
                * RoadLoad.G
                / s.kit().drives().size();
        return push * at.most(s.end().wheel().diameterMm()) / 2000 / s.drive().ratio();
    }

    /// {@return most torque at the motor (N·m) in one direction}
    static double motorNm(Subject s, At at, boolean braking) {
        return Math.min(controllerNm(s, at, braking), gripNm(s, at, braking));
    }

    /// {@return most torque at the motor (N·m), driving or braking}
    static double worstNm(Subject s, At at) {
        return Math.max(motorNm(s, at, false), motorNm(s, at, true));
    }

    /// {@return effective tension of the belt (N) at this torque of the motor}
    static double effectiveN(Subject s, double motorNm) {
        return Pulls.effectiveN(motorNm, s.drive().drivePulley().rim().pitchDiameterMm());
    }

    /// {@return torque of the wheel about the axle (N·m) at this torque of the motor}
    static double wheelNm(Subject s, double motorNm) {
        return motorNm * s.drive().ratio();
    }

    /// Writes the lines up to the worst torque M of the motor.
    static void write(Subject s, Working w) {
        w.given("Kv", s.drive().motor().kvRpmPerV());
        double kt = w.line(
                "Kt",
                "60/(2·π·Kv)",
                MotorModel.torqueConstantNmA(s.drive().motor().kvRpmPerV().nominal()),
                "N·m/A",
                "definition");
        double driving = one(s, w, kt, false);
        double braking = one(s, w, kt, true);
        w.line("M", "max(M_drive, M_brake)", Math.max(driving, braking), "N·m", "worst torque of the motor");
    }

    /// Writes the effective tension Te that belongs to M.
    static void writeTension(Subject s, Working w) {
        write(s, w);
        var rim = s.drive().drivePulley().rim();
        w.given("p", "belt pitch", rim.profile().pitchMm(), "mm", rim.profile().standard());
        w.given("z1", s.drive().drivePulley().id() + ".rim.teeth", rim.teeth(), "", "count");
        w.line("d", "z1·p/π", rim.pitchDiameterMm(), "mm", "pitch diameter of the drive pulley");
        w.line(
                "Te",
                "2·M/(d/1000)",
                effectiveN(s, worstNm(s, At.NOMINAL)),
                "N",
                "effective tension, tight side less slack side");
    }

    /// Writes the torque M_w of the wheel that belongs to M.
    static void writeWheel(Subject s, Working w) {
        write(s, w);
        w.given("i", "ratio, wheel teeth over motor teeth", s.drive().ratio(), "", "count");
        w.line("M_w", "M·i", wheelNm(s, worstNm(s, At.NOMINAL)), "N·m", "torque of the wheel about the axle");
    }

    private static double one(Subject s, Working w, double kt, boolean braking) {
        var controller = s.kit().controller();
        var task = s.kit().task();
        var word = braking ? "brake" : "drive";
        var stated = braking ? controller.brakeCurrentA() : controller.driveCurrentA();
        w.given("I_" + word, stated);
        boolean direct = controller.currentIs() == Controller.CurrentIs.DIRECT;
        double limit = w.line(
                "M_" + word + "0",
                direct ? "Kt·I_" + word : "Kt·(I_" + word + "·√(3)/2)",
                kt * MotorModel.directCurrentA(stated.nominal(), controller.currentIs()),
                "N·m",
                "at the controller's limit, stated as " + controller.currentIs());
        var share = braking ? task.drivenBrakingPercent() : task.drivenPercent();
        if (!task.gripShare().known() || !share.known()) {
            return w.line("M_" + word, "M_" + word + "0", limit, "N·m", "grip is not known, so not counted on");
        }
        w.given("μ", task.gripShare());
        w.given("q_" + word, share);
        w.given("m", task.allUpMassKg());
        w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
        w.given("n", "drives", s.kit().drives().size(), "", "count");
        w.given("D_wheel", s.end().wheel().diameterMm());
        w.given("i", "ratio, wheel teeth over motor teeth", s.drive().ratio(), "", "count");
        double grip = w.line(
                "M_" + word + "1",
                "μ·q_" + word + "/100·m·g/n·D_wheel/2000/i",
                gripNm(s, At.NOMINAL, braking),
                "N·m",
                "at which the tread slips");
        return w.line(
                "M_" + word,
                "min(M_" + word + "0, M_" + word + "1)",
                Math.min(limit, grip),
                "N·m",
                "whichever is less");
    }
}
