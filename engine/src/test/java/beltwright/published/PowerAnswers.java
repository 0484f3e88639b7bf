package beltwright.published;

import static java.util.Map.entry;

import beltwright.power.MotorModel;
import beltwright.power.Pulls;
import beltwright.power.RoadLoad;
import beltwright.power.Stopping;
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

    private static Warming.Leg leg(Object leg) {
        var numbers = (List<?>) leg;
        return new Warming.Leg(number(numbers.get(0)), number(numbers.get(1)), number(numbers.get(2)));
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }
}
