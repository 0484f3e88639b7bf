package beltwright.published;

import static java.util.Map.entry;

import beltwright.power.Pulls;
import beltwright.published.PublishedCase.Inputs;
import beltwright.strength.Axle;
import beltwright.strength.BearingLife;
import beltwright.strength.Fatigue;
import beltwright.strength.ShaftStress;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Bearings, shafts and axles.
final class ShaftAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("axial limit of a bearing", i -> BearingLife.axialLimit(i.number("axialShare"))),
            entry("radial factor of a bearing", i -> BearingLife.RADIAL_FACTOR),
            entry("axial factor of a bearing", i -> BearingLife.axialFactor(i.number("axialShare"))),
            entry("life of a bearing in turns", i -> BearingLife.millionTurns(i.number("ratingN"), load(i))),
            entry("life of a bearing", i -> BearingLife.hours(i.number("ratingN"), load(i), i.number("speedRpm"))),
            entry("equivalent load of a bearing", ShaftAnswers::load),
            entry("stress of bending at a step", i -> i.number("formFactor") * bending(i)),
            entry(
                    "stress of bending and pull",
                    i -> bending(i) + Axle.axialMpa(i.number("axialN"), i.number("diameterMm"))),
            entry("largest stress", i -> ShaftStress.largestMpa(i.number("bendingMpa"), i.number("twistMpa"))),
            entry(
                    "factor against yielding",
                    i -> Axle.yieldFactor(
                            i.number("yieldMpa"), i.number("bendingMpa"), i.number("axialMpa"), i.number("twistMpa"))),
            entry(
                    "factor of a bar bent from one side",
                    i -> Fatigue.standingFactor(0, bending(i), 1, i.number("limitMpa"), i.number("tensileMpa"))),
            entry("rating wanted", i -> BearingLife.ratingN(load(i), turns(i))),
            entry(
                    "heat of a bearing",
                    i -> BearingLife.frictionW(
                            load(i), i.number("friction"), i.number("boreMm"), i.number("speedRpm"))),
            entry("stress of twisting", i -> ShaftStress.twistMpa(i.number("torqueNm"), i.number("diameterMm"))),
            entry("largest stress under a chain midway between bearings", i -> {
                double torqueNm = i.number("powerW") / (i.number("speedRpm") * Math.PI / 30);
                double bendingNm =
                        Pulls.effectiveN(torqueNm, i.number("sprocketMm")) * i.number("betweenBearingsMm") / 4000;
                double d = i.number("diameterMm");
                return ShaftStress.largestMpa(ShaftStress.bendingMpa(bendingNm, d), ShaftStress.twistMpa(torqueNm, d));
            }),
            entry("notch constant", i -> Fatigue.notchConstant(i.number("tensileMpa"))),
            entry("notch sensitivity", ShaftAnswers::sensitivity),
            entry("notch factor", i -> Fatigue.notchFactor(i.number("formFactor"), sensitivity(i))),
            entry("limit of a test bar", i -> Fatigue.barLimitMpa(i.number("tensileMpa"))),
            entry("factor of surface", i -> Fatigue.surfaceFactor(i.number("tensileMpa"))),
            entry("factor of size", i -> Fatigue.sizeFactor(i.number("diameterMm"))),
            entry(
                    "amplitude for a life",
                    i -> Fatigue.amplitudeMpa(
                            i.number("tensileMpa"), i.number("share"), i.number("limitMpa"), i.number("turns"))),
            entry(
                    "turns at an amplitude",
                    i -> Fatigue.turns(
                            i.number("tensileMpa"), i.number("share"), i.number("limitMpa"), i.number("amplitudeMpa"))),
            entry(
                    "factor on the Goodman line",
                    i -> Fatigue.goodman(
                            i.number("amplitudeMpa"),
                            i.number("meanMpa"),
                            i.number("limitMpa"),
                            i.number("tensileMpa"))));

    private ShaftAnswers() {}

    private static double bending(Inputs i) {
        return ShaftStress.bendingMpa(i.number("bendingNm"), i.number("diameterMm"));
    }

    private static double sensitivity(Inputs i) {
        return Fatigue.notchSensitivity(i.number("tensileMpa"), i.number("radiusMm"));
    }

    private static double load(Inputs i) {
        return i.has("loadN")
                ? i.number("loadN")
                : BearingLife.equivalentN(
                        i.number("radialN"), i.number("axialN"), i.number("v"), i.number("x"), i.number("y"));
    }

    private static double turns(Inputs i) {
        return i.has("reliability")
                ? BearingLife.ratedTurns(i.number("millionTurns"), i.number("reliability"), i.number("spread"))
                : i.number("millionTurns");
    }
}
