package beltwright.published;

import static java.util.Map.entry;

import beltwright.belt.SpanFrequency;
import beltwright.belt.SpanTension;
import beltwright.part.Thread;
import beltwright.published.PublishedCase.Inputs;
import beltwright.strength.Axle;
import beltwright.strength.BearingLife;
import beltwright.strength.BoltedJoint;
import beltwright.strength.ClampGrip;
import beltwright.strength.Fatigue;
import beltwright.strength.FlangeGrip;
import beltwright.strength.Key;
import beltwright.strength.Plate;
import beltwright.strength.PressFit;
import beltwright.strength.PressFit.Stuff;
import beltwright.strength.SetScrewHold;
import beltwright.strength.ShaftStress;
import beltwright.strength.ShoulderFillet;
import beltwright.strength.StaticBearing;
import beltwright.strength.ThreadStrip;
import beltwright.strength.Tightening;
import beltwright.strength.ToothShear;
import java.util.Arrays;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Where a part gives: steps, pulled joints, clamps, keys, press fits, plates.
final class StrengthAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry(
                    "engagement of full strength over diameter",
                    i -> ThreadStrip.fullStrengthMm(thread(i), i.number("screwMpa"), i.number("partMpa"))
                            / thread(i).majorMm()),
            entry("rise of a stiff steel string", i -> {
                double d = i.number("diameterMm");
                double span = i.number("spanMm");
                double f = i.number("frequencyHz");
                double massKgM = i.number("densityKgM3") * Math.PI / 4 * d * d * 1e-6;
                double bending = i.number("youngMpa") * Math.PI / 64 * Math.pow(d, 4);
                double stiff = SpanFrequency.stiffHz(SpanTension.tensionN(f, massKgM, span), massKgM, span, bending);
                double cents = 1200 * Math.log(stiff / f) / Math.log(2);
                return cents * f * f * Math.pow(span / 10, 4) / (d * d / 100) / 1e13;
            }),
            entry("share of the screw by stiffness", StrengthAnswers::share),
            entry(
                    "preload at a share of proof",
                    i -> Tightening.preloadN(i.number("share"), i.number("proofMpa"), i.number("areaMm2"))),
            entry(
                    "load factor of a screw",
                    i -> BoltedJoint.loadFactor(
                            i.number("strengthMpa"),
                            i.number("areaMm2"),
                            i.number("preloadN"),
                            i.number("screwShare"),
                            i.number("pullN"))),
            entry(
                    "strength of a screw over its force",
                    i -> BoltedJoint.screwFactor(
                            i.number("strengthMpa"),
                            i.number("areaMm2"),
                            i.number("preloadN"),
                            i.number("screwShare"),
                            i.number("pullN"))),
            entry(
                    "factor against parting",
                    i -> BoltedJoint.separationFactor(i.number("preloadN"), i.number("screwShare"), i.number("pullN"))),
            entry(
                    "stiffness of a cone",
                    i -> BoltedJoint.coneStiffness(
                            i.number("coneMm"), i.number("holeMm"), i.number("thickMm"), i.number("youngMpa"))),
            entry(
                    "stiffness of three parts",
                    i -> BoltedJoint.inSeries(
                            BoltedJoint.inSeries(i.number("one"), i.number("two")), i.number("three"))),
            entry(
                    "force across the worst screw",
                    i -> FlangeGrip.worstScrewN(
                            i.number("screws"), i.number("torqueNm"), i.number("circleMm"), i.number("sideN"))),
            entry(
                    "bearing stress of a screw",
                    i -> Plate.bearingMpa(i.number("forceN"), i.number("screwMm"), i.number("thickMm"))),
            entry(
                    "bending stress of a plate edgewise",
                    i -> Plate.edgewiseMpa(
                            i.number("bendingNm"),
                            i.number("widthMm"),
                            i.number("thickMm"),
                            i.number("slotMm"),
                            i.number("offMm"))),
            entry(
                    "bending stress of a plate flatwise",
                    i -> Plate.flatwiseMpa(i.number("bendingNm"), i.number("netMm"), i.number("thickMm"))),
            entry("resultant", i -> Axle.resultant(i.number("one"), i.number("other"))),
            entry(
                    "pull stress of a plate",
                    i -> Plate.pullMpa(
                            i.number("forceN"),
                            Plate.netMm(i.number("widthMm"), i.number("slots"), i.number("slotMm")),
                            i.number("thickMm"))),
            entry(
                    "force that shears a pin", // on a circle of 2 m a torque in N·m is a force in N
                    i -> FlangeGrip.shearNm(1, i.number("diameterMm"), i.number("shearMpa"), 2000)),
            entry("shear stress of pins", i -> {
                double force = Axle.resultant(i.number("forceN"), i.has("otherN") ? i.number("otherN") : 0);
                // torque for a stress of 1 MPa on a circle of 2 m is the sheared area
                return force / FlangeGrip.shearNm(i.number("pins"), i.number("diameterMm"), 1, 2000);
            }),
            entry(
                    "pressure on lugs",
                    i -> ToothShear.bearingMpa(
                            ToothShear.lugN(i.number("torqueNm"), i.number("lugs"), i.number("atMm")),
                            i.number("heightMm"),
                            i.number("faceMm"))),
            entry("factor of a notched plate that reverses", i -> {
                double surface = i.number("surfaceA") * Math.pow(i.number("tensileMpa"), i.number("surfaceB"));
                double limit = i.number("axial")
                        * Fatigue.limitMpa(i.number("tensileMpa"), surface, i.number("size"), i.number("reliability"));
                double stress = Plate.pullMpa(
                        i.number("forceN"),
                        Plate.netMm(i.number("widthMm"), 1, i.number("slotMm")),
                        i.number("thickMm"));
                return Fatigue.turningFactor(
                        stress, Fatigue.notchFactor(i.number("formFactor"), i.number("sensitivity")), limit);
            }),
            entry("axial stress of an axle", i -> Axle.axialMpa(i.number("forceN"), i.number("diameterMm"))),
            entry("factor of a shaft bent and twisted", i -> {
                double d = i.number("diameterMm");
                double notch = i.number("notch");
                double twistNotch = i.number("twistNotch");
                return Fatigue.goodman(
                        ShaftStress.misesMpa(
                                notch * ShaftStress.bendingMpa(i.number("amplitudeNm"), d),
                                twistNotch * ShaftStress.twistMpa(i.number("twistAmplitudeNm"), d)),
                        ShaftStress.misesMpa(
                                notch * ShaftStress.bendingMpa(i.number("meanNm"), d),
                                twistNotch * ShaftStress.twistMpa(i.number("twistMeanNm"), d)),
                        i.number("limitMpa"),
                        i.number("tensileMpa"));
            }),
            entry(
                    "limit of a part",
                    i -> Fatigue.limitMpa(
                            i.number("tensileMpa"), i.number("surface"), i.number("size"), i.number("reliability"))),
            entry("factor of size standing still", i -> Fatigue.standingSizeFactor(i.number("diameterMm"))),
            entry("notch factor from q", i -> Fatigue.notchFactor(i.number("formFactor"), i.number("sensitivity"))),
            entry("rating wanted under a mixed load", i -> {
                double load = BearingLife.meanLoadN(i.numbers("turns"), i.numbers("loadsN"));
                return BearingLife.ratingN(
                        load,
                        60
                                * i.number("hours")
                                * Arrays.stream(i.numbers("turns")).sum()
                                / 1e6);
            }),
            entry("life of a bearing under a mixed load", i -> {
                double load = BearingLife.meanLoadN(i.numbers("turns"), i.numbers("loadsN"));
                return BearingLife.hours(
                        i.number("ratingN"),
                        load,
                        Arrays.stream(i.numbers("turns")).sum());
            }),
            entry(
                    "torque that a set screw holds",
                    i -> SetScrewHold.steadyNm(SetScrewHold.holdingN(i.number("screwMm")), i.number("shaftMm"))),
            entry("holding power of a set screw", i -> SetScrewHold.holdingN(i.number("screwMm"))),
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
                    "pressure of a screw in its hole",
                    i -> Plate.bearingMpa(i.number("forceN"), i.number("screwMm"), i.number("thickMm"))),
            entry(
                    "stress of a bent plate",
                    i -> Plate.flatwiseMpa(i.number("bendingNm"), i.number("widthMm"), i.number("thickMm"))),
            entry(
                    "amplitude by two points",
                    i -> Plate.fatigueMpa(
                            i.number("turns"),
                            i.number("oneTurns"),
                            i.number("oneMpa"),
                            i.number("otherTurns"),
                            i.number("otherMpa"))),
            entry("seating torque of a set screw", i -> SetScrewHold.seatingNm(i.number("screwMm"))),
            entry("flat point over cup point", i -> SetScrewHold.FLAT_POINT),
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
