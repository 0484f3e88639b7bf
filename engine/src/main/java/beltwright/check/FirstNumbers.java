package beltwright.check;

import beltwright.belt.SpanFrequency;
import beltwright.belt.SpanTension;
import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.Task;
import beltwright.layout.DriveLayout;
import beltwright.layout.Layout;
import beltwright.part.Controller;
import beltwright.part.HungWeights;
import beltwright.part.Motor;
import beltwright.power.MotorModel;
import beltwright.power.Pulls;
import beltwright.power.RoadLoad;
import beltwright.power.TopSpeed;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/// The first numbers of a kit, in closed form with their working: pulls, a tension to start with, hill current, speeds.
public final class FirstNumbers {

    private final Subject subject;
    private final Kit kit;
    private final Drive drive;
    private final DriveLayout at;
    private final Task task;
    private final List<FirstNumber> numbers = new ArrayList<>();

    private FirstNumbers(Subject subject) {
        this.subject = subject;
        this.kit = subject.kit();
        this.drive = subject.drive();
        this.at = subject.at();
        this.task = kit.task();
    }

    public static List<FirstNumber> of(Kit kit, Layout layout) {
        var all = new ArrayList<FirstNumber>();
        for (var subject : Subject.of(kit, layout)) {
            if (subject.scope() == Scope.DRIVE) {
                all.addAll(new FirstNumbers(subject).work());
            }
        }
        return all;
    }

    private List<FirstNumber> work() {
        var driving = new Working();
        add("pull-driving", "Belt pull, driving", "Te", driving(driving), "N", "", driving);

        var braking = new Working();
        add("pull-braking", "Belt pull, braking", "Te", braking(braking), "N", "", braking);

        tension();
        hill();
        speeds();
        return numbers;
    }

    private double torqueConstant(Working w) {
        w.given("Kv", drive.motor().kvRpmPerV());
        return w.line(
                "Kt",
                "60/(2·π·Kv)",
                MotorModel.torqueConstantNmA(drive.motor().kvRpmPerV().nominal()),
                "N·m/A",
                "definition");
    }

    private double direct(Working w, String symbol, double current) {
        var controller = kit.controller();
        return controller.currentIs() == Controller.CurrentIs.DIRECT
                ? w.line(
                        symbol,
                        "I_c",
                        MotorModel.directCurrentA(current, controller.currentIs()),
                        "A",
                        "controller states direct current")
                : w.line(
                        symbol,
                        "I_c·√(3)/2",
                        MotorModel.directCurrentA(current, controller.currentIs()),
                        "A",
                        "controller states the peak of a sine");
    }

    private double driving(Working w) {
        double kt = torqueConstant(w);
        w.given("I_c", kit.controller().driveCurrentA());
        double current = direct(w, "I", kit.controller().driveCurrentA().nominal());
        double torque = w.line("M", "Kt·I", kt * current, "N·m", "motor torque");
        Closure.pitchDiameters(drive, w);
        return w.line(
                "Te",
                "2·M/(d/1000)",
                Pulls.effectiveN(torque, drive.drivePulley().rim().pitchDiameterMm()),
                "N",
                "effective tension");
    }

    private double braking(Working w) {
        w.given("m", task.allUpMassKg());
        w.given("a", task.brakingMps2());
        w.given("n", "drives that share the braking", kit.drives().size(), "", "count");
        w.given("D_wheel", drive.end().wheel().diameterMm());
        double asked = w.line(
                "M_asked",
                "m·a/n·D_wheel/2000",
                Pulls.brakingWheelNm(
                        task.allUpMassKg().nominal(),
                        task.brakingMps2().nominal(),
                        drive.end().wheel().diameterMm().nominal(),
                        kit.drives().size()),
                "N·m",
                "wheel torque for this deceleration; rolling and air drag neglected");
        double kt = torqueConstant(w);
        w.given("I_c", kit.controller().brakeCurrentA());
        double current = direct(w, "I_brake", kit.controller().brakeCurrentA().nominal());
        w.given("i", "ratio, wheel teeth over motor teeth", drive.ratio(), "", "count");
        double most = w.line(
                "M_most",
                "Kt·I_brake·i",
                kt * current * drive.ratio(),
                "N·m",
                "wheel torque at the controller's brake limit");
        double torque = w.line("M_wheel", "min(M_asked, M_most)", Math.min(asked, most), "N·m", "whichever is less");
        Closure.pitchDiameters(drive, w);
        return w.line(
                "Te",
                "2·M_wheel/(D/1000)",
                Pulls.effectiveN(torque, drive.wheelPulley().rim().pitchDiameterMm()),
                "N",
                "effective tension");
    }

    private void tension() {
        var habit =
                "0.55 of the worst belt pull, as a belt maker's technical manual asks, and a quarter more for the first"
                        + " hours; that no tooth jumps is habit, without a published rule: the workshop's own jump tests"
                        + " come first";
        var w = new Working();
        double start = Tension.writeSet(subject, w);
        add("tension", "Tension to start with", "T", start, "N", habit, w);

        w = begun(w);
        double span = w.given("l_s", "free span", at.spanMm(), "mm", "layout");
        var tone = Tension.tone(subject);
        if (HungWeights.tell(drive.belt().hungWeights())) {
            var tried = HungWeights.parse(drive.belt().hungWeights()).toString();
            w.given("k", "T = k·f^2 − T_0, carried to this span", tone.factor(), "N/Hz²", tried);
            w.given("T_0", "what stiffness adds", tone.offsetN(), "N", tried);
        } else {
            w.given("m_b", drive.belt().massGPerM());
            w.line("k", "4·m_b/1000·(l_s/1000)^2", tone.factor(), "N/Hz²", "string formula; stiffness reads high");
            w.given("T_0", "what stiffness adds", 0, "N", "not known: no weights hung on this belt");
        }
        add(
                "span-frequency",
                "Span frequency",
                "f",
                w.line("f", "√((T + T_0)/k)", tone.frequencyHz(start), "Hz", "pluck frequency of the free span"),
                "Hz",
                habit,
                w);

        w = begun(w);
        double deflection = w.line("s", "l_s/50", SpanFrequency.mostDeflectionMm(span), "mm", "deflection at mid-span");
        add(
                "deflection-force",
                "Force at mid-span for " + Numbers.fixed(deflection, 1) + " mm",
                "F",
                w.line(
                        "F",
                        "4·T·s/l_s",
                        SpanTension.deflectionForceN(start, deflection, span),
                        "N",
                        "deflection method"),
                "N",
                habit,
                w);
    }

    private void hill() {
        var w = new Working();
        w.given("m", task.allUpMassKg());
        w.given("s", task.gradePercent());
        w.given("c", task.rollingPercent());
        w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
        w.line("β", "atan(s/100)", Math.atan(task.gradePercent().nominal() / 100), "rad", "slope");
        double force = w.line(
                "F",
                "m·g·(sin(β) + c/100·cos(β))",
                RoadLoad.climbN(
                        task.allUpMassKg().nominal(),
                        task.gradePercent().nominal(),
                        task.rollingPercent().nominal()),
                "N",
                "weight along the slope and rolling");
        w.given("D_wheel", drive.end().wheel().diameterMm());
        w.given("n", "drives", kit.drives().size(), "", "count");
        w.given("i", "ratio, wheel teeth over motor teeth", drive.ratio(), "", "count");
        w.given("η", task.beltEfficiencyPercent());
        double torque = w.line(
                "M",
                "F·D_wheel/2000/(n·i·η/100)",
                force
                        * drive.end().wheel().diameterMm().nominal()
                        / 2000
                        / (kit.drives().size()
                                * drive.ratio()
                                * task.beltEfficiencyPercent().nominal()
                                / 100),
                "N·m",
                "torque of one motor");
        double kt = torqueConstant(w);
        w.given("I_c", kit.controller().driveCurrentA());
        direct(w, "I_most", kit.controller().driveCurrentA().nominal());
        w.given("I_0", drive.motor().noLoadCurrentA());
        double current = torque / kt + drive.motor().noLoadCurrentA().nominal();
        add(
                "hill-current",
                "Current of one motor on the hill",
                "I",
                w.line(
                        "I",
                        "M/Kt + I_0",
                        current,
                        "A",
                        "direct current; above I_most, the controller's limit in direct amperes, it will not climb"),
                "A",
                "",
                w);

        w = begun(w);
        w.given("R_w", drive.motor().resistanceOhm());
        double lead = lead(w);
        add(
                "hill-heat",
                "Copper heat of one motor on the hill",
                "P",
                w.line(
                        "P",
                        "I^2·R",
                        MotorModel.copperLossW(current, lead),
                        "W",
                        "at the temperature the resistance was measured"),
                "W",
                "",
                w);
    }

    private double lead(Working w) {
        var motor = drive.motor();
        return w.line(
                "R",
                motor.resistanceIs() == Motor.Winding.PHASE ? "2·R_w" : "R_w",
                MotorModel.leadResistanceOhm(motor.resistanceOhm().nominal(), motor.resistanceIs()),
                "Ω",
                "between two leads; stated " + motor.resistanceIs());
    }

    private void speeds() {
        var pack = kit.pack();
        var speed = new TopSpeed(
                pack.cellsInSeries() * pack.cellVoltageV().nominal(),
                pack.resistanceOhm().nominal(),
                kit.controller().dutyPercent().nominal() / 100,
                drive.motor().kvRpmPerV().nominal(),
                MotorModel.leadResistanceOhm(
                        drive.motor().resistanceOhm().nominal(), drive.motor().resistanceIs()),
                drive.motor().noLoadCurrentA().nominal(),
                drive.ratio(),
                drive.end().wheel().diameterMm().nominal(),
                kit.drives().size(),
                task.allUpMassKg().nominal(),
                task.rollingPercent().nominal(),
                task.airDensityKgM3().nominal(),
                task.dragAreaM2().nominal(),
                task.beltEfficiencyPercent().nominal() / 100);
        // The power sheet takes the voltage of a charge, so each number says which it takes.
        var cell = pack.cellVoltageV().known()
                ? ", " + Numbers.significant(pack.cellVoltageV().nominal(), 3) + " V a cell"
                : "";
        var w = new Working();
        w.given("n_s", pack.id() + ".cellsInSeries", pack.cellsInSeries(), "", "count");
        w.given("U_c", pack.cellVoltageV());
        w.line("U", "n_s·U_c", speed.packV(), "V", "working voltage of the pack");
        w.given("δ", kit.controller().dutyPercent());
        w.given("Kv", drive.motor().kvRpmPerV());
        w.given("i", "ratio, wheel teeth over motor teeth", drive.ratio(), "", "count");
        w.given("D_wheel", drive.end().wheel().diameterMm());
        double free = w.line(
                "v_0", "U·δ/100·Kv/i·π·D_wheel/60000", speed.withoutLoadMps(), "m/s", "back-EMF equals the voltage");
        add(
                "speed-no-load",
                "Top speed without load" + cell,
                "v0",
                w.line("v_0h", "3.6·v_0", 3.6 * free, "km/h", "no rider gets there"),
                "km/h",
                "",
                w);

        w = begun(w);
        w.given("m", task.allUpMassKg());
        w.given("c", task.rollingPercent());
        w.given("ρ", task.airDensityKgM3());
        w.given("A", task.dragAreaM2());
        w.given("n", "drives", kit.drives().size(), "", "count");
        w.given("η", task.beltEfficiencyPercent());
        w.given("I_0", drive.motor().noLoadCurrentA());
        w.given("R_p", pack.resistanceOhm());
        w.given("R_w", drive.motor().resistanceOhm());
        lead(w);
        w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
        w.line(
                "Kt",
                "60/(2·π·Kv)",
                MotorModel.torqueConstantNmA(drive.motor().kvRpmPerV().nominal()),
                "N·m/A",
                "definition");
        double loaded =
                w.given("v", "speed at which no voltage is left", speed.loadedMps(), "m/s", "root of U_left(v) = 0");
        w.line(
                "F",
                "m·g·c/100 + ρ/2·A·v^2",
                RoadLoad.climbN(
                                task.allUpMassKg().nominal(),
                                0,
                                task.rollingPercent().nominal())
                        + RoadLoad.dragN(
                                task.airDensityKgM3().nominal(),
                                task.dragAreaM2().nominal(),
                                loaded),
                "N",
                "rolling and air, level, still air");
        w.line("I", "F·D_wheel/2000/(n·i·η/100)/Kt + I_0", speed.currentA(loaded), "A", "motor current");
        w.line(
                "U_left",
                "δ/100·(U − n·δ/100·I·R_p) − v·60000/(π·D_wheel)·i/Kv − I·R",
                speed.voltageLeftV(loaded),
                "V",
                "zero at top speed");
        add(
                "speed-loaded",
                "Top speed on the flat, loaded" + cell,
                "v",
                w.line("v_h", "3.6·v", 3.6 * loaded, "km/h", "level, still air, pack at working voltage"),
                "km/h",
                "",
                w);
    }

    private static Working begun(Working before) {
        return before.copy();
    }

    private void add(String key, String name, String symbol, double value, String unit, String habit, Working w) {
        numbers.add(new FirstNumber(
                key + "." + drive.side(),
                name,
                symbol,
                value,
                unit,
                List.copyOf(w.needs()),
                List.copyOf(w.estimates()),
                habit,
                w.lines()));
    }
}
