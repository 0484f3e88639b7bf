package beltwright.published;

import static beltwright.published.Answers.named;
import static java.util.Map.entry;

import beltwright.belt.BeltRating;
import beltwright.belt.PitchLine;
import beltwright.belt.SpanTension;
import beltwright.part.Belt;
import beltwright.part.BeltGrade;
import beltwright.part.BeltProfile;
import beltwright.part.BeltTolerance;
import beltwright.part.GrooveForm;
import beltwright.part.Label;
import beltwright.part.PulleyFace;
import beltwright.part.PulleyTolerance;
import beltwright.part.StockLengths;
import beltwright.part.ToothedRim;
import beltwright.power.Pulls;
import beltwright.published.PublishedCase.Inputs;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import beltwright.quantity.Tolerance;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Belts and pulleys.
final class BeltAnswers {
    private static final Provenance PRINTED = new Provenance(Source.STANDARD, "");

    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("belt length", i -> circles(i).lengthMm(i.number("centreMm"))),
            entry("belt length over teeth", i -> pulleys(i).lengthMm(i.number("centreMm"))),
            entry("wrap of the drive pulley", i -> circles(i).driveWrapRad(i.number("centreMm"))),
            entry("wrap of the driven pulley", i -> 2 * Math.PI - circles(i).driveWrapRad(i.number("centreMm"))),
            entry("centre distance", BeltAnswers::centre),
            entry(
                    "shift of centre distance",
                    i -> pulleys(i).centreDistanceMm(i.number("lengthMm") + i.number("longerMm")) - centre(i)),
            entry("wrap over teeth", i -> pulleys(i).driveWrapRad(centre(i))),
            entry("teeth in mesh", BeltAnswers::mesh),
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
            entry("tension of each span at rest", i -> SpanTension.leastN(i.number("effectiveN"))),
            entry(
                    "span frequency",
                    i -> SpanTension.frequencyHz(i.number("tensionN"), i.number("massKgM"), i.number("spanMm"))),
            entry(
                    "deflection force",
                    i -> SpanTension.deflectionForceN(
                            i.number("tensionN"), i.number("deflectionMm"), i.number("spanMm"))),
            entry("shortest advised centre distance", i -> circles(i).nearestAdvisedMm()),
            entry("longest advised centre distance", i -> circles(i).farthestAdvisedMm()),
            entry("belt speed", i -> Pulls.beltSpeedMps(i.number("pitchDiameterMm"), i.number("speedRpm"))),
            entry("pull on the shaft", i -> SpanTension.shaftForceN(i.number("tightN"), i.number("slackN"))),
            entry("factor of teeth in mesh", i -> BeltRating.meshFactor(i.number("teethInMesh"))),
            entry("factor of length", i -> BeltRating.lengthFactor(i.number("lengthMm"))),
            entry("factor of width", i -> BeltRating.widthFactor(i.number("widthMm"))),
            entry("factor of speeding up", i -> BeltRating.speedUpFactor(i.number("slowDown"))),
            entry("factor of load", i -> load(i).factor()),
            entry("power wanted", i -> BeltRating.wantedW(i.number("loadW"), load(i), 0)),
            entry(
                    "power in the table",
                    i -> BeltRating.tableW(
                            BeltGrade.PUBLISHED.get(i.text("grade")), i.count("teeth"), i.number("speedRpm"))),
            entry(
                    "power rated",
                    i -> BeltRating.ratedW(
                            i.number("tableW"),
                            i.number("widthFactor"),
                            i.number("lengthFactor"),
                            BeltRating.meshFactor(i.number("teethInMesh")))),
            entry("mass of a belt", i -> profile(i).usualMassGPerM(i.number("widthMm")) / 1000),
            entry("reach of a flange", i -> profile(i).flangeReachMm()),
            entry("centre distance by length tolerance", i -> BeltTolerance.centreDistanceMm(i.number("lengthMm"))),
            entry("width over", i -> width(i).upper()),
            entry("width under", i -> width(i).lower()),
            entry("shortest stocked length from", i -> StockLengths.atLeastMm(i.number("lengthMm"))),
            entry("groove", i -> {
                var groove = GrooveForm.of(i.count("teeth"));
                return switch (i.text("of")) {
                    case "depth" -> groove.depthMm();
                    case "floor radius" -> groove.floorRadiusMm();
                    case "tip radius" -> groove.tipRadiusMm();
                    default -> throw new IllegalArgumentException("a groove has no " + i.text("of"));
                };
            }),
            entry(
                    "least face width",
                    i -> PulleyFace.leastMm(
                            i.number("beltMm"), i.text("flanges").equals("both"))),
            entry(
                    "outside diameter over",
                    i -> PulleyTolerance.outsideMm(i.number("outsideMm")).upper()),
            entry(
                    "outside diameter under",
                    i -> PulleyTolerance.outsideMm(i.number("outsideMm")).lower()),
            entry("groove to groove", i -> PulleyTolerance.neighbouringGroovesMm(i.number("outsideMm"))),
            entry("grooves over a quarter turn", i -> PulleyTolerance.quarterTurnMm(i.number("outsideMm"))),
            entry("axial run-out", i -> PulleyTolerance.AXIAL_RUN_OUT_MM),
            entry("radial run-out", i -> PulleyTolerance.RADIAL_RUN_OUT_MM),
            entry("taper of the face", i -> PulleyTolerance.TAPER_PER_MM * i.number("widthMm")));

    private BeltAnswers() {}

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
                exact("belt.massGPerM", 50),
                "",
                Dimension.unknown("belt.stiffnessN", PRINTED),
                "");
    }

    private static Dimension exact(String of, double value) {
        return Dimension.exact(of, value, PRINTED);
    }

    private static BeltRating.Load load(Inputs i) {
        return named(BeltRating.Load.values(), i.text("load").replace(' ', '_').toUpperCase(Locale.ROOT));
    }

    private static Tolerance width(Inputs i) {
        return BeltTolerance.widthMm(i.number("widthMm"), i.number("lengthMm"));
    }
}
