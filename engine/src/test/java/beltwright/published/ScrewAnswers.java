package beltwright.published;

import static beltwright.published.Answers.named;
import static java.util.Map.entry;

import beltwright.part.PropertyClass;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import beltwright.published.PublishedCase.Inputs;
import beltwright.strength.BoltedJoint;
import beltwright.strength.ThreadStrip;
import beltwright.strength.Tightening;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Screws and threads.
final class ScrewAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("strength of class", i -> switch (i.text("of")) {
                case "proof" -> strength(i).proofMpa();
                case "tensile" -> strength(i).tensileMpa();
                case "yield" -> strength(i).yieldMpa();
                default -> throw new IllegalArgumentException("a class has no " + i.text("of"));
            }),
            entry("stress area", i -> thread(i).stressAreaMm2()),
            entry("thread pitch diameter", i -> thread(i).pitchDiameterMm()),
            entry("thread minor diameter", i -> thread(i).minorDiameterMm()),
            entry("clearance hole", i -> thread(i).clearanceHoleMm()),
            entry("tap drill", i -> thread(i).tapDrillMm()),
            entry(
                    "tightening torque",
                    i -> Tightening.torqueNm(
                            thread(i),
                            i.number("preloadN"),
                            i.number("friction"),
                            Tightening.headFrictionMm(thread(i), ScrewHead.CAP))),
            entry("close clearance hole", i -> thread(i).clearanceHoleMm(Thread.Series.CLOSE)),
            entry("coarse clearance hole", i -> thread(i).clearanceHoleMm(Thread.Series.COARSE)),
            entry(
                    "torque by nut factor",
                    i -> Tightening.torqueByNutFactorNm(i.number("nutFactor"), preload(i), i.number("majorMm"))),
            entry(
                    "stress of preload",
                    i -> BoltedJoint.screwForceN(i.number("preloadN"), i.number("screwShare"), 0)
                            / i.number("areaMm2")),
            entry(
                    "stress of a pulled screw",
                    i -> BoltedJoint.screwForceN(i.number("preloadN"), i.number("screwShare"), i.number("pullN"))
                            / i.number("areaMm2")),
            entry("stiffness of a screw", ScrewAnswers::screwStiffness),
            entry("stiffness of the clamped parts", ScrewAnswers::partsStiffness),
            entry("force in pulled screws", i -> {
                double n = i.number("screws");
                double screw = n * bar(i, "screwMm2");
                double share = BoltedJoint.screwShare(screw, bar(i, "partsMm2"));
                return BoltedJoint.screwForceN(n * preload(i), share, i.number("pullN"));
            }),
            entry(
                    "factor of a pulled screw",
                    i -> BoltedJoint.screwFactor(
                            i.number("strengthMpa"), i.number("areaMm2"), preload(i), share(i), i.number("pullN"))),
            entry(
                    "factor of the pull",
                    i -> BoltedJoint.loadFactor(
                            i.number("proofMpa"), i.number("areaMm2"), preload(i), share(i), i.number("pullN"))),
            entry(
                    "force that strips a tapped thread",
                    i -> ThreadStrip.forceN(thread(i), i.number("engagementMm"), i.number("shearMpa"))),
            entry(
                    "engagement wanted",
                    i -> ThreadStrip.engagementMm(thread(i), i.number("forceN"), i.number("shearMpa"))),
            entry("share of the screw", i -> BoltedJoint.screwShare(screwStiffness(i), partsStiffness(i))));

    private ScrewAnswers() {}

    private static PropertyClass strength(Inputs i) {
        return named(PropertyClass.values(), i.text("class"));
    }

    private static Thread thread(Inputs i) {
        return named(Thread.values(), i.text("thread"));
    }

    private static double preload(Inputs i) {
        return i.has("preloadN")
                ? i.number("preloadN")
                : Tightening.preloadN(i.number("share"), i.number("proofMpa"), i.number("areaMm2"));
    }

    private static double screwStiffness(Inputs i) {
        return BoltedJoint.screwStiffness(
                i.number("shankMm2"),
                i.number("threadMm2"),
                i.number("shankMm"),
                i.number("threadMm"),
                i.number("screwMpa"));
    }

    /// {@return stiffness (N/mm) of a plain bar as long as the grip}
    private static double bar(Inputs i, String area) {
        double half = i.number("gripMm") / 2;
        return BoltedJoint.screwStiffness(i.number(area), i.number(area), half, half, i.number("youngMpa"));
    }

    /// The share that two given stiffnesses make, in any unit.
    private static double share(Inputs i) {
        return BoltedJoint.screwShare(i.number("screwStiffness"), i.number("partsStiffness"));
    }

    private static double partsStiffness(Inputs i) {
        return BoltedJoint.partsStiffness(i.number("majorMm"), i.number("gripMm"), i.number("partsMpa"));
    }
}
