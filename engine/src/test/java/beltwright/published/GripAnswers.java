package beltwright.published;

import static java.util.Map.entry;

import beltwright.published.PublishedCase.Inputs;
import beltwright.strength.ClampGrip;
import beltwright.strength.Key;
import beltwright.strength.Plate;
import beltwright.strength.PressFit;
import beltwright.strength.SetScrewHold;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// What holds a hub on its shaft, and plates.
final class GripAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("pressure of a press fit", GripAnswers::pressureMpa),
            entry(
                    "hoop stress of a pressed hub",
                    i -> PressFit.hubHoopMpa(pressureMpa(i), i.number("fitMm"), i.number("outerMm"))),
            entry(
                    "force that pushes a fit apart",
                    i -> PressFit.axialN(
                            i.number("pressureMpa"), i.number("friction"), i.number("fitMm"), i.number("lengthMm"))),
            entry(
                    "torque of a split clamp",
                    i -> ClampGrip.evenNm(
                            ClampGrip.pressN(i.number("screws"), i.number("preloadN"), 1, 1),
                            i.number("friction"),
                            i.number("shaftMm"))),
            entry(
                    "torque of a key in shear",
                    i -> Key.shearNm(
                            i.number("widthMm"), i.number("lengthMm"), i.number("shearMpa"), i.number("shaftMm"))),
            entry(
                    "length of a key by shear",
                    i -> Key.shearLengthMm(
                            i.number("torqueNm"), i.number("widthMm"), i.number("shearMpa"), i.number("shaftMm"))),
            entry(
                    "length of a key by its side",
                    i -> Key.bearingLengthMm(
                            i.number("torqueNm"), i.number("depthMm"), i.number("pressureMpa"), i.number("shaftMm"))),
            entry(
                    "pressure of a screw in its hole",
                    i -> Plate.bearingMpa(i.number("forceN"), i.number("screwMm"), i.number("thickMm"))),
            entry("form factor of a hole", i -> Plate.holeFactor(i.number("holeMm"), i.number("widthMm"))),
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
            entry("flat point over cup point", i -> SetScrewHold.FLAT_POINT));

    private GripAnswers() {}

    private static double pressureMpa(Inputs i) {
        return PressFit.pressureMpa(
                i.number("interferenceMm"),
                i.number("innerMm"),
                i.number("fitMm"),
                i.number("outerMm"),
                new PressFit.Stuff(i.number("youngMpa"), i.number("poisson"), 0),
                new PressFit.Stuff(i.number("youngMpa"), i.number("poisson"), 0));
    }
}
