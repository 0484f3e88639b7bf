package beltwright.published;

import static java.util.Map.entry;

import beltwright.part.Thread;
import beltwright.published.PublishedCase.Inputs;
import beltwright.strength.Axle;
import beltwright.strength.BearingLife;
import beltwright.strength.BoltedJoint;
import beltwright.strength.ClampGrip;
import beltwright.strength.Fatigue;
import beltwright.strength.Key;
import beltwright.strength.Plate;
import beltwright.strength.PressFit;
import beltwright.strength.PressFit.Stuff;
import beltwright.strength.ShaftStress;
import beltwright.strength.ShoulderFillet;
import beltwright.strength.StaticBearing;
import beltwright.strength.ThreadStrip;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Where a part gives: steps, pulled joints, clamps, keys, press fits, plates.
final class StrengthAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry(
                    "form factor of a step in bending",
                    i -> ShoulderFillet.bending(i.number("largeMm"), i.number("smallMm"), i.number("radiusMm"))),
            entry(
                    "form factor of a step in twisting",
                    i -> ShoulderFillet.twisting(i.number("largeMm"), i.number("smallMm"), i.number("radiusMm"))),
            entry("notch sensitivity in twisting", StrengthAnswers::twistSensitivity),
            entry("notch factor in twisting", i -> Fatigue.notchFactor(i.number("formFactor"), twistSensitivity(i))),
            entry(
                    "factor of a turning shaft with steady twist",
                    i -> Fatigue.goodman(
                            i.number("notch") * bending(i),
                            ShaftStress.misesMpa(0, i.number("twistNotch") * twist(i)),
                            i.number("limitMpa"),
                            i.number("tensileMpa"))),
            entry("yield factor of a shaft", i -> Axle.yieldFactor(i.number("yieldMpa"), bending(i), 0, twist(i))),
            entry("factor of a shaft whose twist comes and goes", i -> {
                double low = ShaftStress.twistMpa(i.number("lowNm"), i.number("diameterMm"));
                double high = ShaftStress.twistMpa(i.number("highNm"), i.number("diameterMm"));
                return Fatigue.goodman(
                        i.number("notch") * (high - low) / 2,
                        (high + low) / 2,
                        i.number("limitMpa"),
                        i.number("strengthMpa"));
            }),
            entry("form factor of a hole", i -> Plate.holeFactor(i.number("holeMm"), i.number("widthMm"))),
            entry(
                    "bending of an axle",
                    i -> Axle.bendingNm(
                            i.number("sectionMm"),
                            i.number("forceN"),
                            i.number("atMm"),
                            i.number("innerMm"),
                            i.number("outerMm"))),
            entry(
                    "force of screws by stiffness",
                    i -> BoltedJoint.screwForceN(i.number("preloadN"), share(i), i.number("pullN"))),
            entry(
                    "fatigue factor of a screw",
                    i -> BoltedJoint.fatigueFactor(
                            i.number("limitMpa"),
                            i.number("tensileMpa"),
                            i.number("areaMm2"),
                            i.number("preloadN"),
                            share(i),
                            i.number("pullN"))),
            entry(
                    "force that strips a screw's thread",
                    i -> ThreadStrip.externalAreaPerMm(
                                    thread(i).pitchMm(),
                                    thread(i).minorDiameterMm(),
                                    thread(i).pitchDiameterMm())
                            * i.number("engagementMm")
                            * i.number("shearMpa")),
            entry(
                    "torque of an evenly pressed clamp",
                    i -> ClampGrip.evenNm(
                            ClampGrip.pressN(i.number("screws"), i.number("preloadN"), 1, 1),
                            i.number("friction"),
                            i.number("diameterMm"))),
            entry("core diameter of a clamp's screws", i -> {
                double press = i.number("torqueNm") / ClampGrip.evenNm(1, i.number("friction"), i.number("diameterMm"));
                return Math.sqrt(4 * press / i.number("screws") / (Math.PI * i.number("stressMpa")));
            }),
            entry(
                    "length of a key on its side",
                    i -> Key.bearingLengthMm(
                            i.number("torqueNm"), i.number("depthMm"), i.number("pressureMpa"), i.number("shaftMm"))),
            entry(
                    "length of a key in shear",
                    i -> Key.shearLengthMm(
                            i.number("torqueNm"), i.number("widthMm"), i.number("shearMpa"), i.number("shaftMm"))),
            entry(
                    "torque that shears a key",
                    i -> Key.shearNm(
                            i.number("widthMm"), i.number("lengthMm"), i.number("shearMpa"), i.number("shaftMm"))),
            entry(
                    "torque for a stress of twisting",
                    i -> i.number("stressMpa") / ShaftStress.twistMpa(1, i.number("diameterMm"))),
            entry("pressure of a press fit", StrengthAnswers::pressure),
            entry(
                    "hoop stress of a press fit",
                    i -> PressFit.hubHoopMpa(pressure(i), i.number("diameterMm"), i.number("outerMm"))),
            entry(
                    "hoop stress at a bore",
                    i -> PressFit.hubHoopMpa(i.number("pressureMpa"), i.number("diameterMm"), i.number("outerMm"))),
            entry(
                    "force that a press fit holds",
                    i -> PressFit.axialN(
                            i.number("pressureMpa"),
                            i.number("friction"),
                            i.number("diameterMm"),
                            i.number("lengthMm"))),
            entry(
                    "torque that a press fit holds",
                    i -> PressFit.torqueNm(
                            i.number("pressureMpa"),
                            i.number("friction"),
                            i.number("diameterMm"),
                            i.number("lengthMm"))),
            entry(
                    "share of the radial load in P0",
                    i -> StaticBearing.equivalentN(2, 10) - StaticBearing.equivalentN(1, 10)),
            entry(
                    "share of the axial load in P0",
                    i -> StaticBearing.equivalentN(1, 11) - StaticBearing.equivalentN(1, 10)),
            entry(
                    "standing load of a bearing",
                    i -> StaticBearing.equivalentN(i.number("radialN"), i.number("axialN"))),
            entry("speed factor of a bearing", i -> Math.cbrt(BearingLife.hours(1, 1, i.number("speedRpm")) / 500)));

    private StrengthAnswers() {}

    private static Thread thread(Inputs i) {
        return Thread.valueOf(i.text("thread"));
    }

    private static double share(Inputs i) {
        return BoltedJoint.screwShare(i.number("screwStiffness"), i.number("partsStiffness"));
    }

    private static double twistSensitivity(Inputs i) {
        return Fatigue.twistNotchSensitivity(i.number("tensileMpa"), i.number("radiusMm"));
    }

    private static double bending(Inputs i) {
        return ShaftStress.bendingMpa(i.number("bendingNm"), i.number("diameterMm"));
    }

    private static double twist(Inputs i) {
        return ShaftStress.twistMpa(i.number("twistNm"), i.number("diameterMm"));
    }

    private static double pressure(Inputs i) {
        return PressFit.pressureMpa(
                i.number("interferenceMm"),
                i.number("innerMm"),
                i.number("diameterMm"),
                i.number("outerMm"),
                new Stuff(i.number("shaftMpa"), i.number("shaftPoisson"), 0),
                new Stuff(i.number("hubMpa"), i.number("hubPoisson"), 0));
    }
}
