package beltwright.published;

import static beltwright.published.Answers.named;
import static java.util.Map.entry;

import beltwright.part.PropertyClass;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import beltwright.published.PublishedCase.Inputs;
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
            entry("coarse clearance hole", i -> thread(i).clearanceHoleMm(Thread.Series.COARSE)));

    private ScrewAnswers() {}

    private static PropertyClass strength(Inputs i) {
        return named(PropertyClass.values(), i.text("class"));
    }

    private static Thread thread(Inputs i) {
        return named(Thread.values(), i.text("thread"));
    }
}
