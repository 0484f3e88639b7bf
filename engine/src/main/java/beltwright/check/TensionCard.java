package beltwright.check;

import beltwright.belt.SpanFrequency;
import beltwright.belt.SpanTension;
import beltwright.kit.JumpTests;
import beltwright.kit.Kit;
import beltwright.kit.Side;
import beltwright.layout.Layout;
import beltwright.part.HungWeights;
import beltwright.part.PulleyTolerance;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;

/// How tight the belt of one drive is to be, and how that is heard and felt.
///
/// The band holds with every number at its worse limit; where it then closes, the nominal one stands, and `sure` is
/// false. Without any band the card says why, and what it shows is no target. An end that cannot be told is NaN.
///
/// @param leastN least tension of each span at rest, that no tooth jumps (N)
/// @param mostN most that all stand on which the belt pulls (N)
/// @param leastBecause what sets the least
/// @param because what ends first
/// @param stands how much each of them stands, the first to end leading
/// @param band whether there is a tension between them
/// @param sure whether there still is with every number at its worse limit
/// @param effectiveN Te, worst pull of the belt at nominal: tight side less slack side (N)
/// @param effectiveWorstN the same with every number at its worse limit (N)
/// @param setN tension to set (N)
/// @param chosen whether the workshop chose it, or it follows from the least
/// @param spanMm free span that is plucked (mm)
/// @param factor k of T = k·f² − T_0 (N/Hz²)
/// @param offsetN T_0 (N)
/// @param calibrated hung weights of this belt, or empty
/// @param deflectionMm deflection at mid-span for the force method (mm)
/// @param rippleN half of the swing over a turn by pulleys out of round (N); NaN without the belt's stiffness
/// @param warmerN what the tension gains when the mount is warm (N); NaN without the belt's stiffness
/// @param warmC how warm that is (°C)
/// @param steps how it is set, in order
/// @param notes what a builder must know of it
public record TensionCard(
        Side side,
        double leastN,
        double mostN,
        String leastBecause,
        String because,
        List<Stands> stands,
        boolean band,
        boolean sure,
        double effectiveN,
        double effectiveWorstN,
        double setN,
        boolean chosen,
        double spanMm,
        double factor,
        double offsetN,
        String calibrated,
        double deflectionMm,
        double rippleN,
        double warmerN,
        double warmC,
        List<String> steps,
        List<String> notes,
        List<String> needs,
        List<String> estimates) {
    /// The usual cautions where a belt is set.
    ///
    /// - Source: common practice, no source.
    public static final List<String> CAUTIONS = List.of(
            "Battery disconnected, fingers out of the nip where the belt runs onto a pulley. Turn the wheel by hand only: a"
                    + " belt that runs takes fingers.",
            "Too loose and the belt skips under braking; too tight and motor and wheel bearings fail. The band is a place to"
                    + " start from, advice to a competent builder and no certificate; where plastic carries the belt's load it"
                    + " creeps, and the belt goes slack.");

    /// What a new belt is set to over the least, for what it gives up in its first hours.
    public static final double FRESH = SpanTension.FRESH;

    private static final double LOWEST_HZ = 100;
    private static final double HIGHEST_HZ = 1000;
    private static final double ROOM_C = 20;

    /// Of aluminium (1/K). Shigley, table of physical constants, from memory.
    private static final double EXPANSION = 23.6e-6;

    public TensionCard {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
        stands = List.copyOf(stands);
        needs = List.copyOf(needs);
        estimates = List.copyOf(estimates);
    }

    /// The most tension at rest that one of the parts stands on which the belt pulls.
    ///
    /// @param part as a builder calls it
    /// @param tensionN as much it stands (N): 0 where the pull at work is too much already, NaN where not known
    /// @param question the question that ends it, by its key in the ladder
    public record Stands(String part, double tensionN, String question) {
        /// {@return whether it ends within what any belt of this trade is set to}
        public boolean ends() {
            return tensionN < TensionLimit.HIGHEST_N;
        }

        /// {@return the same of the other side}
        private Stands on(Side was, Side is) {
            return new Stands(part, tensionN, question.replace("." + was, "." + is));
        }
    }

    /// {@return one card for each drive}
    public static List<TensionCard> of(Kit kit, Layout layout) {
        var cards = new ArrayList<TensionCard>();
        for (var subject : Subject.of(kit, layout)) {
            if (subject.scope() == Scope.DRIVE) {
                cards.add(of(subject));
            }
        }
        return cards;
    }

    private static TensionCard of(Subject s) {
        double nominal = DrivePull.worstNm(s, At.NOMINAL);
        double worst = DrivePull.worstNm(s, At.WORST);
        double least = Tension.leastN(s, worst);
        var end = TensionLimit.of(s, At.WORST);
        boolean reaches = !Double.isNaN(least);
        boolean sure = end.tensionN() >= least;
        if (!sure) {
            least = Tension.leastN(s, nominal);
            end = TensionLimit.of(s, At.NOMINAL);
        }
        boolean band = end.tensionN() >= least;
        var working = new Working();
        double set = Tension.writeSet(s, working);
        Tension.writeSlots(s, working);
        Tension.writeJolt(s, working);
        for (var limit : TensionLimit.each(s, At.NOMINAL)) {
            var asked = Working.untold();
            limit.asked().write(s, asked);
            working.rests(asked.estimates());
        }
        var tone = Tension.tone(s);
        double span = s.at().spanMm();
        var belt = s.drive().belt();
        var stiffness = belt.stiffnessN();
        double runOut = PulleyTolerance.RADIAL_RUN_OUT_MM;
        double warm = Assumed.warm(s.kit()).nominal() - ROOM_C;
        var hung = belt.hungWeights();
        var card = new TensionCard(
                s.side(),
                least,
                end.tensionN(),
                Tension.floor(s, sure ? worst : nominal).toString(),
                end.by().toString(),
                stands(s, sure ? At.WORST : At.NOMINAL),
                band,
                sure,
                DrivePull.effectiveN(s, nominal),
                DrivePull.effectiveN(s, worst),
                set,
                s.drive().placement().tensionN().known(),
                span,
                tone.factor(),
                tone.offsetN(),
                HungWeights.tell(hung) ? HungWeights.parse(hung).toString() : "",
                SpanFrequency.mostDeflectionMm(span),
                SpanFrequency.rippleN(stiffness.nominal(), runOut, span),
                stiffness.nominal()
                        * 2
                        * EXPANSION
                        * warm
                        * s.at().centreDistanceMm().nominal()
                        / belt.lengthMm(),
                warm + ROOM_C,
                List.of(),
                List.of(),
                needs(s, working, tone, Math.min(set, least)),
                estimates(s, working));
        return card.with(TensionSteps.of(card, !s.drive().idler().blank()), notes(s, card, reaches));
    }

    private static List<Stands> stands(Subject s, At at) {
        return TensionLimit.each(s, at).stream()
                .map(l -> new Stands(l.by().toString(), l.tensionN(), l.asked().key(s)))
                .sorted(Comparator.comparingDouble(Stands::tensionN))
                .toList();
    }

    /// {@return whether there is a band, and the target lies outside it}
    public boolean outside() {
        return band && (setN < leastN || setN > mostN);
    }

    /// {@return whether both ends can be told}
    public boolean known() {
        return !Double.isNaN(leastN) && !Double.isNaN(mostN);
    }

    /// {@return why there is no band, or that it cannot be told; empty where there is one}
    public String why() {
        if (!known()) {
            return "cannot tell: needs " + String.join(", ", needs);
        }
        if (!band && mostN <= 0) {
            return "no band: because the pull at work alone is too much for " + because;
        }
        return band
                ? ""
                : "no band: because " + Numbers.atMost(mostN, 0) + " N is the most, by " + because + ", and "
                        + Numbers.atLeast(leastN, 0) + " N is the least, by " + leastBecause;
    }

    /// {@return the band in newtons}
    public Ends newtons() {
        return Ends.of(leastN, mostN, 0);
    }

    /// {@return the band in hertz}
    public Ends hertz() {
        return Ends.of(frequencyHz(leastN), frequencyHz(mostN), 0);
    }

    /// {@return the band as a force at mid-span (N)}
    public Ends force() {
        return Ends.of(forceN(leastN), forceN(mostN), 1);
    }

    /// {@return the tension that a target which nobody chose lies a quarter over: the least at nominal (N)}
    public double freshOverN() {
        return setN / FRESH;
    }

    /// {@return what the tightest wheel angle may read while all is cold (N), where warmth leaves a band}
    double coldMostN() {
        double cold = mostN - Math.max(0, known(warmerN));
        return cold >= leastN ? cold : mostN;
    }

    private static List<String> needs(Subject s, Working working, Tension.Tone tone, double lowestN) {
        var needs = new ArrayList<>(working.needs());
        if (lowestN + tone.offsetN() <= 0) {
            needs.add("weights hung nearer to the target");
        }
        if (!HungWeights.tell(s.drive().belt().hungWeights())
                && !s.drive().belt().massGPerM().known()) {
            needs.add(s.drive().belt().massGPerM().of());
        }
        return needs;
    }

    private static List<String> estimates(Subject s, Working working) {
        var estimates = new LinkedHashSet<>(working.estimates());
        var belt = s.drive().belt();
        for (var d : List.of(belt.massGPerM(), belt.stiffnessN(), Assumed.warm(s.kit()))) {
            if (d.known() && d.estimated()) {
                estimates.add(d.of());
            }
        }
        return List.copyOf(estimates);
    }

    private static List<String> notes(Subject s, TensionCard card, boolean reaches) {
        var notes = new ArrayList<String>();
        if (card.band && !card.sure) {
            notes.add(
                    reaches
                            ? "there is a band at nominal only: at the worse limits it closes"
                            : "the band is at nominal: at the worse limits it needs a jump test at a higher tension");
        } else if (card.setN < Tension.leastN(s, DrivePull.worstNm(s, At.NOMINAL))) {
            notes.add("the target is less than the least: teeth may jump under braking");
        } else if (card.setN < card.leastN) {
            notes.add("with every number at its worse limit " + Numbers.atLeast(card.leastN, 0) + " N are needed");
        }
        double risesN = 2 * known(card.rippleN) + Math.max(0, known(card.warmerN));
        if (card.band && card.setN > card.mostN) {
            notes.add("the target is more than the most, by " + card.because);
        } else if (card.band && card.setN + risesN > card.mostN) {
            notes.add("set so at its loosest, it reaches " + Numbers.fixed(card.setN + risesN, 0)
                    + " N over a turn and warm, with pulleys as far out of round as a maker allows: more than the most, by "
                    + card.because
                    + ". Obey the least first, at the loosest wheel angle; then the most, at the tightest;"
                    + " the target last");
        }
        var untold = TensionLimit.untold(s);
        if (!untold.isEmpty()) {
            notes.add("for want of a number the upper end leaves out: "
                    + String.join("; ", untold.stream().map(Check::name).toList()));
        }
        notes.add(jumps(card, s.drive().placement().jumpTests()));
        if (card.calibrated.isEmpty()) {
            notes.add("a belt's stiffness makes the reading high, so it is looser than it sounds: "
                    + (s.drive().belt().hungWeights().isBlank() ? "hang weights once" : "hang one more weight"));
        } else {
            var hung = HungWeights.parse(s.drive().belt().hungWeights());
            if (card.setN < hung.leastN() || card.setN > hung.mostN()) {
                notes.add("weights were hung from " + Numbers.plain(hung.leastN()) + " to "
                        + Numbers.plain(hung.mostN()) + " N: at the target the frequency is carried on beyond them");
            }
            notes.addAll(HungDoubt.of(card, s.drive().belt()));
        }
        notes.addAll(HeardDoubt.of(card, s.drive().placement().jumpTests()));
        double hertz = card.frequencyHz(card.setN);
        if (hertz < LOWEST_HZ || hertz > HIGHEST_HZ) {
            notes.add("outside 100 to 1000 Hz a phone hears it badly: use the force");
        }
        return notes;
    }

    private static String jumps(TensionCard card, String text) {
        var tests = text.isBlank() ? null : JumpTests.parse(text);
        if (tests != null && tests.tell()) {
            return card.leastBecause.equals(Tension.Floor.TAUT.toString())
                    ? tests + " stand the torque at less than the least, but below " + Numbers.atLeast(card.leastN, 0)
                            + " N the slack span goes slack at the worst pull"
                    : "the least by " + tests + ", at " + Numbers.significant(Tension.JUMP_MARGIN, 3)
                            + " times the torque";
        }
        return "that no tooth jumps is habit, without a published torque: "
                + (tests == null
                        ? "a jump test at three tensions is better"
                        : "a jump at " + (tests.lacking() == 1 ? "one" : tests.lacking() == 2 ? "two" : "three")
                                + " more tension" + (tests.lacking() == 1 ? "" : "s") + " and the tests tell it");
    }

    private static double known(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    private TensionCard with(List<String> how, List<String> told) {
        return of(side, how, told);
    }

    /// {@return whether the other side is to be set just the same}
    public boolean alike(TensionCard other) {
        return of(other.side, steps, notes).equals(other);
    }

    private TensionCard of(Side on, List<String> how, List<String> told) {
        return new TensionCard(
                on,
                leastN,
                mostN,
                leastBecause,
                because,
                stands.stream().map(st -> st.on(side, on)).toList(),
                band,
                sure,
                effectiveN,
                effectiveWorstN,
                setN,
                chosen,
                spanMm,
                factor,
                offsetN,
                calibrated,
                deflectionMm,
                rippleN,
                warmerN,
                warmC,
                how,
                told,
                needs,
                estimates);
    }

    /// {@return whether the line through hung weights has no sound for so low a tension}
    public boolean unheard() {
        return Math.min(setN, leastN) + offsetN <= 0;
    }

    /// {@return how the free span sounds at this tension (Hz)}
    public double frequencyHz(double tensionN) {
        return Math.sqrt((tensionN + offsetN) / factor);
    }

    /// {@return tension at which the free span sounds so (N)}
    public double tensionN(double frequencyHz) {
        return factor * frequencyHz * frequencyHz - offsetN;
    }

    /// {@return whether a jump test was told by a sound that this card hears as another tension}
    public boolean hearsAnother(JumpTests.Test test) {
        return HeardDoubt.stale(this, test);
    }

    /// {@return tension of the tight side (N) under the worst pull, at this tension at rest}
    public double tightN(double tensionN) {
        return tensionN + effectiveN / 2;
    }

    /// {@return tension of the slack side (N) then; 0 where it is slack indeed}
    public double slackN(double tensionN) {
        return Math.max(0, tensionN - effectiveN / 2);
    }

    /// {@return force at mid-span (N) that deflects the free span by `deflectionMm` at this tension}
    public double forceN(double tensionN) {
        return SpanTension.deflectionForceN(tensionN, deflectionMm, spanMm);
    }
}
