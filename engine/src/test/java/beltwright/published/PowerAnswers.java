package beltwright.published;

import static java.util.Map.entry;

import beltwright.power.MotorModel;
import beltwright.power.Pulls;
import beltwright.power.RoadLoad;
import beltwright.published.PublishedCase.Inputs;
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
}
