package beltwright.published;

import static java.util.Map.entry;

import beltwright.power.MotorModel;
import beltwright.power.Outrunner;
import beltwright.power.Pulls;
import beltwright.power.RoadLoad;
import beltwright.power.Stopping;
import beltwright.power.TopSpeed;
import beltwright.power.Warming;
import beltwright.published.PublishedCase.Inputs;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Motor and road.
final class PowerAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("torque constant", i -> MotorModel.torqueConstantNmA(i.number("kvRpmPerV"))),
            entry(
                    "torque constant of a run without load",
                    i -> MotorModel.torqueConstantNmA(i.number("speedRpm")
                            / (i.number("voltageV") - i.number("currentA") * i.number("resistanceOhm")))),
            entry(
                    "loss without load",
                    i -> MotorModel.noLoadLossW(i.number("voltageV"), i.number("currentA"), i.number("resistanceOhm"))),
            entry("back-EMF of a run", i -> workW(i) / i.number("currentA")),
            entry("power that a run turns into work", PowerAnswers::workW),
            entry("torque of a run", i -> run(i).shaftNm(i.number("currentA"), i.number("speedRpm") * Math.PI / 30)),
            entry("turns per second at another current", PowerAnswers::turnsPerS),
            entry(
                    "resistance when warm",
                    i -> MotorModel.resistanceOhm(
                            i.number("resistanceOhm"),
                            i.number("measuredAtC"),
                            i.number("perKelvin"),
                            i.number("statedAtC"),
                            i.number("temperatureC"))),
            entry(
                    "power for a while",
                    i -> i.number("steadyW") * Warming.onceFactor(i.number("onMin"), i.number("onConstantMin"))),
            entry(
                    "power on and off",
                    i -> i.number("steadyW")
                            * Warming.repeatedFactor(
                                    i.number("onMin"),
                                    i.number("onConstantMin"),
                                    i.number("offMin"),
                                    i.number("offConstantMin"))),
            entry(
                    "steady power of a course",
                    i -> Warming.rootMeanSquare(((List<?>) i.of("legs"))
                            .stream().map(PowerAnswers::leg).toList())),
            entry("energy of a stop", i -> Stopping.energyJ(i.number("massKg"), i.number("speedMps"))),
            entry("time to stop", i -> Stopping.timeS(i.number("speedMps"), i.number("decelerationMps2"))),
            entry("torque of one motor", i -> {
                double climb = RoadLoad.climbN(i.number("massKg"), i.number("gradePercent"), i.number("rollingPercent"))
                        * i.number("wheelDiameterMm")
                        / 2000
                        / i.number("drives");
                double speedUp = Pulls.brakingWheelNm(
                        i.number("turningMassKg"),
                        i.number("accelerationMps2"),
                        i.number("wheelDiameterMm"),
                        i.count("drives"));
                return (climb + speedUp) / (i.number("ratio") * i.number("efficiency"));
            }));

    private PowerAnswers() {}

    private static double workW(Inputs i) {
        return MotorModel.noLoadLossW(i.number("voltageV"), i.number("currentA"), i.number("resistanceOhm"));
    }

    private static double rpmPerV(Inputs i) {
        return i.number("speedRpm") * i.number("currentA") / workW(i);
    }

    private static Outrunner run(Inputs i) {
        return new Outrunner(MotorModel.torqueConstantNmA(rpmPerV(i)), i.number("resistanceOhm"), 20, 0, 0);
    }

    /// The speed that this current leaves, by the top speed of a board whose rolling asks for its torque.
    private static double turnsPerS(Inputs i) {
        double wheelM = 0.2;
        double torque = run(i).shaftNm(i.number("thenA"), 0);
        double massKg = torque / (wheelM / 2) / RoadLoad.climbN(1, 0, 100);
        var top = new TopSpeed(
                i.number("voltageV"),
                0,
                1,
                rpmPerV(i),
                i.number("resistanceOhm"),
                0,
                1,
                1000 * wheelM,
                1,
                massKg,
                100,
                0,
                0,
                1);
        return top.loadedMps() / (Math.PI * wheelM);
    }

    private static Warming.Leg leg(Object leg) {
        var numbers = (List<?>) leg;
        return new Warming.Leg(number(numbers.get(0)), number(numbers.get(1)), number(numbers.get(2)));
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }
}
