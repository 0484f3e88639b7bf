package beltwright.check;

import beltwright.kit.Drive;
import beltwright.kit.Role;
import beltwright.part.Controller;
import beltwright.power.MotorModel;
import beltwright.power.Pulls;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;

/// Does the controller's brake limit give the deceleration that is asked of the drive?
///
///     a = n·Kt·I·i/(m·r)
///
/// Grip, a full pack or a broken belt may leave less; those belong to the ride.
final class BrakingCheck extends Check {
    BrakingCheck() {
        super(
                "braking",
                "Braking at the controller's limit",
                "m/s²",
                Scope.DRIVE,
                "statics at the controller's brake limit; grip and the pack's acceptance not considered",
                Role.CONTROLLER,
                Role.MOTOR,
                Role.WHEEL,
                Role.DRIVE_PULLEY,
                Role.WHEEL_PULLEY);
        tasked();
    }

    private static double deceleration(Subject s, double kv, double current, double massKg, double wheelDiameterMm) {
        var controller = s.kit().controller();
        double direct = MotorModel.directCurrentA(current, controller.currentIs());
        double wheel = MotorModel.torqueConstantNmA(kv) * direct * s.drive().ratio();
        return Pulls.decelerationMps2(
                wheel, massKg, wheelDiameterMm, s.kit().drives().size());
    }

    private static Range deceleration(Subject s) {
        Drive d = s.drive();
        var kv = d.motor().kvRpmPerV();
        var current = s.kit().controller().brakeCurrentA();
        var mass = s.kit().task().allUpMassKg();
        var wheel = d.end().wheel().diameterMm();
        return new Range(
                deceleration(s, kv.upper(), current.lower(), mass.upper(), wheel.upper()),
                deceleration(s, kv.nominal(), current.nominal(), mass.nominal(), wheel.nominal()),
                deceleration(s, kv.lower(), current.upper(), mass.lower(), wheel.lower()));
    }

    @Override
    public void measure(Subject s, Reading out) {
        out.set(Range.of(s.kit().task().brakingMps2()), deceleration(s));
    }

    @Override
    public void explain(Subject s, Working w, Reading out) {
        var d = s.drive();
        var controller = s.kit().controller();
        w.given("Kv", d.motor().kvRpmPerV());
        w.line(
                "Kt",
                "60/(2·π·Kv)",
                MotorModel.torqueConstantNmA(d.motor().kvRpmPerV().nominal()),
                "N·m/A",
                "definition");
        w.given("I_c", controller.brakeCurrentA());
        double direct = MotorModel.directCurrentA(controller.brakeCurrentA().nominal(), controller.currentIs());
        w.line(
                "I",
                controller.currentIs() == Controller.CurrentIs.DIRECT ? "I_c" : "I_c·√(3)/2",
                direct,
                "A",
                "direct current of equal torque; the controller states " + controller.currentIs());
        w.given("i", "ratio, wheel teeth over motor teeth", d.ratio(), "", "count");
        w.given("n", "drives that share the braking", s.kit().drives().size(), "", "count");
        w.given("m", s.kit().task().allUpMassKg());
        w.given("D_wheel", d.end().wheel().diameterMm());
        var range = deceleration(s);
        w.line("a", "n·Kt·I·i/m/(D_wheel/2000)", range.nominal(), "m/s²", "deceleration at the brake limit");
        w.given("a_worst", "the same with every number at its worse limit", range.low(), "m/s²", "worst case");
        w.given("a_asked", s.kit().task().brakingMps2());
        out.set(Range.of(s.kit().task().brakingMps2()), range);
    }

    @Override
    public String says(Subject s, Reading r) {
        return Numbers.fixed(r.capacity(), 2) + " m/s²; " + Numbers.fixed(r.demand(), 2)
                + " asked; a full or cold pack gives less";
    }

    @Override
    public String remedy(Subject s, Reading r) {
        return "a brake limit of "
                + Numbers.fixed(
                        Math.ceil(s.kit().controller().brakeCurrentA().nominal() * r.demandWorst / r.capacityWorst), 0)
                + " A if motor, pack and belt allow it; else a second, independent means of stopping";
    }
}
