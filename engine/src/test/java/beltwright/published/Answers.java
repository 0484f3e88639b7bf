package beltwright.published;

import static java.util.Map.entry;

import beltwright.belt.PitchLine;
import beltwright.belt.SpanTension;
import beltwright.part.Belt;
import beltwright.part.BeltProfile;
import beltwright.part.Label;
import beltwright.part.PropertyClass;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import beltwright.part.ToothedRim;
import beltwright.power.MotorModel;
import beltwright.power.Pulls;
import beltwright.power.RoadLoad;
import beltwright.published.PublishedCase.Inputs;
import beltwright.published.PublishedCase.Value;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import beltwright.quantity.Range;
import beltwright.quantity.Source;
import beltwright.quantity.Tolerance;
import beltwright.strength.Tightening;
import java.util.Arrays;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Which engine function answers which `what` of a case file.
final class Answers {
    private static final Provenance PRINTED = new Provenance(Source.STANDARD, "");

    /// What one printed unit is in the engine's unit.
    private static final Map<String, Double> UNIT =
            Map.of("in", 25.4, "lbf", 4.4482216152605, "µm", 0.001, "°", Math.PI / 180);

    private static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("belt length", i -> circles(i).lengthMm(i.number("centreMm"))),
            entry("belt length over teeth", i -> pulleys(i).lengthMm(i.number("centreMm"))),
            entry("wrap of the drive pulley", i -> circles(i).driveWrapRad(i.number("centreMm"))),
            entry("wrap of the driven pulley", i -> 2 * Math.PI - circles(i).driveWrapRad(i.number("centreMm"))),
            entry("centre distance", Answers::centre),
            entry(
                    "shift of centre distance",
                    i -> pulleys(i).centreDistanceMm(i.number("lengthMm") + i.number("longerMm")) - centre(i)),
            entry("wrap over teeth", i -> pulleys(i).driveWrapRad(centre(i))),
            entry("teeth in mesh", Answers::mesh),
            entry("whole teeth in mesh", i -> Math.floor(mesh(i))),
            entry("free span", i -> pulleys(i).spanMm(centre(i))),
            entry("profile dimension", i -> switch (i.text("of")) {
                case "pitch" -> profile(i).pitchMm();
                case "height" -> profile(i).heightMm();
                case "tooth height" -> profile(i).toothHeightMm();
                case "pitch line differential" -> profile(i).pitchLineDifferentialMm();
                default -> throw new IllegalArgumentException("a profile has no " + i.text("of"));
            }),
            entry("twice the pitch line differential", i -> 2 * profile(i).pitchLineDifferentialMm()),
            entry("pitch diameter of a rim", i -> rim(i, "teeth").pitchDiameterMm()),
            entry("outside diameter of a rim", i -> rim(i, "teeth").outsideDiameterMm()),
            entry("nominal belt length", i -> belt(i).lengthMm()),
            entry(
                    "effective tension of a power",
                    i -> Pulls.effectiveN(
                            i.number("powerW") / (i.number("speedRpm") * Math.PI / 30), i.number("pitchDiameterMm"))),
            entry(
                    "tight side",
                    i -> i.number("slackN") + Pulls.effectiveN(i.number("torqueNm"), i.number("pitchDiameterMm"))),
            entry("tension of each span at rest", i -> SpanTension.startN(i.number("effectiveN"))),
            entry(
                    "span frequency",
                    i -> SpanTension.frequencyHz(i.number("tensionN"), i.number("massKgM"), i.number("spanMm"))),
            entry(
                    "deflection force",
                    i -> SpanTension.deflectionForceN(
                            i.number("tensionN"), i.number("deflectionMm"), i.number("spanMm"))),
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
            entry("width of grade", i -> {
                var h = Tolerance.iso286(i.number("sizeMm"), "h" + i.count("grade"));
                return h.upper() - h.lower();
            }),
            entry("upper deviation", i -> deviation(i).upper()),
            entry("lower deviation", i -> deviation(i).lower()),
            entry("upper limit", i -> i.number("sizeMm") + deviation(i).upper()),
            entry("lower limit", i -> i.number("sizeMm") + deviation(i).lower()),
            entry("half width of a worst-case chain", i -> {
                var chain = Range.ZERO;
                for (int member = 0; member < i.count("members"); member++) {
                    chain = chain.plus(new Range(-i.number("half"), 0, i.number("half")));
                }
                return (chain.high() - chain.low()) / 2;
            }),
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

    private Answers() {}

    /// {@return the engine's answer in the printed unit}
    static double to(Value value) {
        var function = ENGINE.get(value.what());
        if (function == null) {
            throw new IllegalArgumentException("no engine function answers '" + value.what() + "'");
        }
        return function.applyAsDouble(value.inputs()) / UNIT.getOrDefault(value.unit(), 1.0);
    }

    private static PitchLine circles(Inputs i) {
        return new PitchLine(i.number("driveMm"), i.number("drivenMm"));
    }

    private static PitchLine pulleys(Inputs i) {
        return new PitchLine(
                rim(i, "driveTeeth").pitchDiameterMm(), rim(i, "drivenTeeth").pitchDiameterMm());
    }

    private static double centre(Inputs i) {
        return pulleys(i).centreDistanceMm(i.number("lengthMm"));
    }

    private static double mesh(Inputs i) {
        return PitchLine.teethInMesh(i.count("driveTeeth"), pulleys(i).driveWrapRad(centre(i)));
    }

    private static BeltProfile profile(Inputs i) {
        return named(BeltProfile.values(), i.text("profile"));
    }

    private static PropertyClass strength(Inputs i) {
        return named(PropertyClass.values(), i.text("class"));
    }

    private static Thread thread(Inputs i) {
        return named(Thread.values(), i.text("thread"));
    }

    private static <E extends Enum<E>> E named(E[] values, String words) {
        return Arrays.stream(values)
                .filter(v -> v.toString().equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + words + "' is none of " + Arrays.asList(values)));
    }

    private static Tolerance deviation(Inputs i) {
        return Tolerance.iso286(i.number("sizeMm"), i.text("code"));
    }

    private static ToothedRim rim(Inputs i, String teeth) {
        return new ToothedRim(
                profile(i),
                i.count(teeth),
                exact("rim.faceWidthMm", 16),
                ToothedRim.Flanges.NONE,
                exact("rim.flangeDiameterMm", 0),
                exact("rim.flangeThicknessMm", 0));
    }

    private static Belt belt(Inputs i) {
        return new Belt(
                new Label("belt", "belt", "A", Dimension.unknown("belt.massKg", PRINTED), ""),
                profile(i),
                i.count("teeth"),
                exact("belt.widthMm", 15),
                exact("belt.lengthDeviationMm", 0),
                exact("belt.massGPerM", 50));
    }

    private static Dimension exact(String of, double value) {
        return Dimension.exact(of, value, PRINTED);
    }
}
