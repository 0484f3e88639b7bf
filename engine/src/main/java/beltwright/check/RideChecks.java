package beltwright.check;

import beltwright.kit.Role;
import beltwright.kit.Task;
import beltwright.part.Controller;
import beltwright.power.MotorModel;
import beltwright.power.RoadLoad;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// What a kit is asked for on the road, where the answer is a line of arithmetic: starting on the hill, and whether the
/// treads hold. Speed, heat, range and stops need more than a line; the power sheet works them out.
final class RideChecks {
    private RideChecks() {}

    static List<Check> all() {
        return List.of(new HillStart(), new HillGrip(), new BrakeGrip());
    }

    /// Push asked for on the hill, in percent of the weight that presses on the road: grade and rolling.
    private static Range asked(Task task) {
        return Range.of(task.gradePercent()).plus(task.rollingPercent());
    }

    private static double askedLine(Task task, Working w) {
        w.given("s", task.gradePercent());
        w.given("c", task.rollingPercent());
        return w.line(
                "p_asked",
                "s + c",
                task.gradePercent().nominal() + task.rollingPercent().nominal(),
                "%",
                "grade and rolling, of the weight that presses on the road; bearings neglected");
    }

    /// Does the board start on the hill from rest, at the controller's limit?
    ///
    ///     p = 100·n·Kt·I·i·η/(r·m·g·cos β)
    private static final class HillStart extends Check {
        HillStart() {
            super(
                    "hill-start",
                    "Starts on the hill",
                    "%",
                    Scope.DRIVE,
                    "statics at the controller's drive limit; heat and grip are asked elsewhere",
                    Role.CONTROLLER,
                    Role.MOTOR,
                    Role.WHEEL,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            tasked();
        }

        private static double push(
                Subject s, double kv, double current, double wheelMm, double share, double kg, double grade) {
            double direct =
                    MotorModel.directCurrentA(current, s.kit().controller().currentIs());
            double torque =
                    MotorModel.torqueConstantNmA(kv) * direct * s.drive().ratio() * share / 100;
            double weight = kg * RoadLoad.G * Math.cos(Math.atan(grade / 100));
            return 100 * s.kit().drives().size() * torque / (wheelMm / 2000) / weight;
        }

        private static Range push(Subject s) {
            var kv = s.drive().motor().kvRpmPerV();
            var current = s.kit().controller().driveCurrentA();
            var wheel = s.drive().end().wheel().diameterMm();
            var task = s.kit().task();
            var share = task.beltEfficiencyPercent();
            var kg = task.allUpMassKg();
            var grade = task.gradePercent();
            return new Range(
                    push(s, kv.upper(), current.lower(), wheel.upper(), share.lower(), kg.upper(), grade.lower()),
                    push(
                            s,
                            kv.nominal(),
                            current.nominal(),
                            wheel.nominal(),
                            share.nominal(),
                            kg.nominal(),
                            grade.nominal()),
                    push(s, kv.lower(), current.upper(), wheel.lower(), share.upper(), kg.lower(), grade.upper()));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(asked(s.kit().task()), push(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var task = s.kit().task();
            var controller = s.kit().controller();
            w.given("Kv", s.drive().motor().kvRpmPerV());
            w.line(
                    "Kt",
                    "60/(2·π·Kv)",
                    MotorModel.torqueConstantNmA(s.drive().motor().kvRpmPerV().nominal()),
                    "N·m/A",
                    "definition");
            w.given("I_c", controller.driveCurrentA());
            w.line(
                    "I",
                    controller.currentIs() == Controller.CurrentIs.DIRECT ? "I_c" : "I_c·√(3)/2",
                    MotorModel.directCurrentA(controller.driveCurrentA().nominal(), controller.currentIs()),
                    "A",
                    "direct current of equal torque; the controller states " + controller.currentIs());
            w.given("i", "ratio, wheel teeth over motor teeth", s.drive().ratio(), "", "count");
            w.given("n", "drives", s.kit().drives().size(), "", "count");
            w.given("η", task.beltEfficiencyPercent());
            w.given("D_wheel", s.drive().end().wheel().diameterMm());
            w.given("m", task.allUpMassKg());
            w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
            askedLine(task, w);
            w.line("β", "atan(s/100)", Math.atan(task.gradePercent().nominal() / 100), "rad", "slope");
            var range = push(s);
            w.line(
                    "p",
                    "100·n·Kt·I·i·η/100/(D_wheel/2000)/(m·g·cos(β))",
                    range.nominal(),
                    "%",
                    "push from rest, of the weight that presses on the road");
            w.given("p_worst", "the same with every number at its worse limit", range.low(), "%", "worst case");
            out.set(asked(task), range);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a drive limit of "
                    + Numbers.fixed(
                            Math.ceil(s.kit().controller().driveCurrentA().nominal() * r.demandWorst / r.capacityWorst),
                            0)
                    + " A if motor, pack and belt allow it; more teeth on the wheel pulley; a gentler hill";
        }
    }

    /// Do the driven treads hold what the hill asks?
    private static final class HillGrip extends Check {
        HillGrip() {
            super(
                    "hill-grip",
                    "Treads hold on the hill",
                    "%",
                    Scope.KIT,
                    "Coulomb friction; the share of the weight on the driven axle is an input");
            tasked();
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(
                    asked(s.kit().task()),
                    held(s.kit().task().gripShare(), s.kit().task().drivenPercent(), 1));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var task = s.kit().task();
            askedLine(task, w);
            w.given("μ", task.gripShare());
            w.given("q", task.drivenPercent());
            var range = held(task.gripShare(), task.drivenPercent(), 1);
            w.line("p", "μ·q", range.nominal(), "%", "push that the driven treads hold");
            w.given("p_worst", "the same with every number at its worse limit", range.low(), "%", "worst case");
            out.set(asked(task), range);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "stand further over the driven axle, take wheels with more grip, or a gentler hill";
        }
    }

    private static Range held(Dimension grip, Dimension share, double factor) {
        return new Range(
                grip.lower() * share.lower() * factor,
                grip.nominal() * share.nominal() * factor,
                grip.upper() * share.upper() * factor);
    }

    /// Do the driven treads hold the braking that is asked?
    private static final class BrakeGrip extends Check {
        BrakeGrip() {
            super(
                    "brake-grip",
                    "Treads hold when braking",
                    "m/s²",
                    Scope.KIT,
                    "Coulomb friction; the share of the weight on the driven axle is an input: a rider leans back");
            tasked();
        }

        @Override
        public void measure(Subject s, Reading out) {
            var task = s.kit().task();
            out.set(
                    Range.of(task.brakingMps2()),
                    held(task.gripShare(), task.drivenBrakingPercent(), RoadLoad.G / 100));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var task = s.kit().task();
            w.given("a_asked", task.brakingMps2());
            w.given("μ", task.gripShare());
            w.given("q", task.drivenBrakingPercent());
            w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
            var range = held(task.gripShare(), task.drivenBrakingPercent(), RoadLoad.G / 100);
            w.line("a", "μ·q·(g/100)", range.nominal(), "m/s²", "slowing down that the driven treads hold");
            w.given("a_worst", "the same with every number at its worse limit", range.low(), "m/s²", "worst case");
            out.set(Range.of(task.brakingMps2()), range);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "ask for less of the drive, lean further back, or take wheels with more grip; sand and water halve it";
        }
    }
}
