package beltwright.press.table;

import beltwright.check.TensionCard;
import beltwright.check.WeakestLink;
import beltwright.kit.JumpTests;
import beltwright.part.HungWeights;
import beltwright.part.Signed;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// A tension card and the links of a drive in words.
public final class TensionTables {
    private TensionTables() {}

    /// {@return a card line by line: what, and how much}
    public static Table card(TensionCard card) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("Target", target(card)));
        rows.add(List.of("Band", band(card)));
        rows.add(List.of("Too tight for", stands(card)));
        rows.add(List.of("Under load", load(card)));
        rows.add(List.of("By sound", sound(card)));
        rows.add(List.of("By force", force(card)));
        rows.add(List.of("Run-out", ripple(card)));
        rows.add(List.of("Warm", warm(card)));
        rows.add(List.of("First hours", hours(card)));
        return new Table(List.of("", ""), rows);
    }

    /// {@return how the belt is set, step by step}
    public static List<String> steps(TensionCard card) {
        var steps = new ArrayList<String>();
        for (var step : card.steps()) {
            steps.add(steps.size() + 1 + ". " + step);
        }
        return steps;
    }

    /// {@return the tension to set, and how it sounds}
    public static String target(TensionCard card) {
        if (Double.isNaN(card.setN())) {
            return "cannot tell: needs " + String.join(", ", card.needs());
        }
        return newtons(card.setN()) + " in each span at rest" + heard(card, card.setN()) + "; "
                + (card.chosen()
                        ? "chosen for this kit"
                        : "a quarter over " + newtons(card.freshOverN()) + ", the least at nominal")
                + (card.outside() ? ", outside the band" : "");
    }

    private static String heard(TensionCard card, double tensionN) {
        double hertz = card.frequencyHz(tensionN);
        return Double.isNaN(hertz) ? "" : ", " + Numbers.fixed(hertz, 0) + " Hz";
    }

    /// {@return from where to where, or why there is no band}
    public static String band(TensionCard card) {
        if (!card.why().isEmpty()) {
            return card.why();
        }
        return card.newtons() + " N"
                + (Double.isNaN(card.frequencyHz(card.leastN())) ? "" : ", " + card.hertz() + " Hz")
                + (card.sure() ? " with every number at its worse limit" : " at nominal only") + "; the lower end by "
                + card.leastBecause() + ", the upper end by " + card.because();
    }

    /// {@return how much each part stands, the first to end leading}
    public static String stands(TensionCard card) {
        var ends = card.stands().stream()
                .filter(TensionCard.Stands::ends)
                .map(p -> p.part() + " over " + Numbers.atMost(p.tensionN(), 0) + " N")
                .toList();
        return ends.isEmpty() ? "nothing that is known" : String.join(", ", ends);
    }

    /// {@return tight and slack side as the worst torque pulls; which span is which changes from driving to braking}
    public static String load(TensionCard card) {
        double set = card.setN();
        return Double.isNaN(set)
                ? "cannot tell: needs " + String.join(", ", card.needs())
                : "tight side " + newtons(card.tightN(set)) + ", slack side " + newtons(card.slackN(set))
                        + " under the worst pull of " + newtons(card.effectiveN()) + ", "
                        + newtons(card.effectiveWorstN())
                        + " with every number at its worse limit; braking, the other span is the tight one";
    }

    /// {@return what a new belt gives up}
    public static String hours(TensionCard card) {
        return card.chosen() || Double.isNaN(card.setN())
                ? "a new belt gives some up: measure again"
                : "a new belt gives some up: " + newtons(card.setN() * (1 - 1 / TensionCard.FRESH))
                        + " of the target are for that (habit)";
    }

    /// {@return how a frequency becomes a tension}
    public static String sound(TensionCard card) {
        if (Double.isNaN(card.factor()) || card.unheard()) {
            return "cannot tell: needs " + String.join(", ", card.needs());
        }
        boolean offset = card.offsetN() != 0;
        return "the tighter, the higher the free span of " + Numbers.fixed(card.spanMm(), 1)
                + " mm sounds: tension T (N) from what you hear, f (Hz), by T = k·f²" + (offset ? " − T_0" : "")
                + " with k = " + Numbers.significant(card.factor(), 4) + " N/Hz²"
                + (offset ? " and T_0 = " + newtons(card.offsetN()) + " for the belt's own stiffness" : "") + "; "
                + (card.calibrated().isEmpty()
                        ? "taken as a string, without the belt's stiffness"
                        : "found by " + card.calibrated()
                                + ": known weights hung on a span of this belt that long, plucked one after the other");
    }

    /// {@return how a force at mid-span tells the tension}
    public static String force(TensionCard card) {
        if (Double.isNaN(card.setN())) {
            return "cannot tell: needs " + String.join(", ", card.needs());
        }
        return Numbers.fixed(card.forceN(card.setN()), 1) + " N at mid-span deflects it by "
                + Numbers.fixed(card.deflectionMm(), 1) + " mm"
                + (card.band() ? "; band " + card.force() + " N" : "");
    }

    /// {@return how far pulleys out of round make it swing}
    public static String ripple(TensionCard card) {
        return Double.isNaN(card.rippleN())
                ? "cannot tell how far pulleys out of round make it swing: needs the belt's stiffness"
                : "swings by ±" + newtons(card.rippleN())
                        + " over a turn, pulleys as far out of round as a maker allows";
    }

    /// {@return what heat does to it}
    public static String warm(TensionCard card) {
        return Double.isNaN(card.warmerN())
                ? "cannot tell what heat adds: needs the belt's stiffness"
                : newtons(card.warmerN()) + " more with the mount at " + Numbers.fixed(card.warmC(), 0)
                        + " °C; set it cold";
    }

    /// {@return what was tried of a belt on its pulley, a test a row}
    ///
    /// @param card the card of today, by which a sound that was kept may be another tension
    public static Table jumps(JumpTests tests, TensionCard card) {
        return signed(
                List.of("tension at rest", "motor torque, N·m", "a tooth"),
                tests.tests().stream()
                        .map(t -> List.of(
                                Numbers.plain(t.tensionN()) + " N"
                                        + (t.heardHz() > 0 ? ", by " + Numbers.plain(t.heardHz()) + " Hz" : "")
                                        + (card.hearsAnother(t)
                                                ? "; by this card " + Numbers.fixed(card.tensionN(t.heardHz()), 1)
                                                        + " N"
                                                : ""),
                                Numbers.plain(t.torqueNm())
                                        + (t.amperes() > 0 ? ", by " + Numbers.plain(t.amperes()) + " A" : ""),
                                t.jumped() ? "jumped" : "did not jump up to it"))
                        .toList(),
                tests.tests().stream().map(JumpTests.Test::signed).toList());
    }

    /// {@return this table with who read and when, where anybody signed}
    private static Table signed(List<String> heads, List<List<String>> rows, List<Signed> by) {
        if (by.stream().allMatch(Signed.NOT::equals)) {
            return new Table(heads, rows);
        }
        var wider = new ArrayList<List<String>>();
        for (int i = 0; i < rows.size(); i++) {
            wider.add(Stream.concat(
                            rows.get(i).stream(),
                            Stream.of(by.get(i).by(), by.get(i).when()))
                    .toList());
        }
        return new Table(Stream.concat(heads.stream(), Stream.of("by", "when")).toList(), wider);
    }

    /// {@return what these tests tell, or what they lack to tell anything}
    public static String told(JumpTests tests) {
        int lacking = tests.lacking();
        if (lacking > 0) {
            return "A tooth jumped at " + (JumpTests.ENOUGH - lacking) + " of " + JumpTests.ENOUGH
                    + " different tensions: " + lacking + " more " + (lacking == 1 ? "is" : "are")
                    + " needed. Tensions less than a tenth apart count as one (habit). Until then the least tension is told by habit.";
        }
        return "The least tension is told by a line through " + tests + ": "
                + Numbers.significant(tests.torqueNm(tests.leastN()), 2) + " N·m at "
                + Numbers.plain(tests.leastN()) + " N to " + Numbers.significant(tests.torqueNm(tests.mostN()), 2)
                + " N·m at " + Numbers.plain(tests.mostN())
                + " N, taken down to the lowest test, with a quarter of the torque to spare, and no further than that. Below what keeps the slack span taut no test"
                + " takes it.";
    }

    /// {@return what was hung on a belt and heard, a reading a row}
    public static Table hung(HungWeights hung) {
        return signed(
                List.of("pull, N", "sound, Hz"),
                hung.readings().stream()
                        .map(r -> List.of(Numbers.plain(r.tensionN()), Numbers.plain(r.frequencyHz())))
                        .toList(),
                hung.readings().stream().map(HungWeights.Reading::signed).toList());
    }

    /// {@return what these weights tell of the belt's sound, or what they lack}
    public static String told(HungWeights hung) {
        var on = "On a span of " + Numbers.plain(hung.spanMm()) + " mm";
        return hung.tell()
                ? on + ", carried to the free span of this kit: the sound is told by them, from "
                        + Numbers.plain(hung.leastN()) + " to " + Numbers.plain(hung.mostN()) + " N."
                : on + ": one more weight is needed. Until then the belt is taken as a string.";
    }

    /// {@return fields by their last words, those of one part or task told together: for a card that goes in a box}
    public static String shortened(List<String> fields) {
        var byPart = new LinkedHashMap<String, List<String>>();
        for (var field : fields) {
            var words = field.split("\\.");
            var of = words.length > 1 ? words[words.length - 2] : "";
            byPart.computeIfAbsent(of, key -> new ArrayList<>()).add(words[words.length - 1]);
        }
        return String.join(
                "; ",
                byPart.entrySet().stream()
                        .map(e -> e.getKey() + ": " + String.join(", ", e.getValue()))
                        .toList());
    }

    private static String newtons(double value) {
        return Numbers.fixed(value, 0) + " N";
    }

    /// {@return the links of one drive, weakest when driving first}
    public static Table links(WeakestLink.Chain chain) {
        var rows = new ArrayList<List<String>>();
        for (var link : chain.links()) {
            rows.add(List.of(
                    link.name(),
                    torque(link.driveNm(), link.driveWorstNm()),
                    torque(link.brakeNm(), link.brakeWorstNm()),
                    link.kind() + (chain.early(link) ? ", before the worst torque" : ""),
                    link.under() + (link.nominalOnly() ? "; nominal only: no number it rests on has limits" : "")));
        }
        return new Table(List.of("as torque rises", "driving N·m", "braking N·m", "then", "rests on"), rows);
    }

    /// {@return nominal, and in brackets with every number at its worse limit}
    public static String torque(double nominal, double worst) {
        if (Double.isNaN(nominal)) {
            return "unknown";
        }
        var text = Numbers.fixed(nominal, 1);
        return worst == nominal ? text : text + " (" + Numbers.fixed(worst, 1) + ")";
    }

    /// {@return what slips or breaks first in one direction}
    public static String givesFirst(WeakestLink.Chain chain, boolean braking) {
        return said(chain.firstToGive(braking), chain, braking);
    }

    /// {@return what keeps the torque down first in one direction}
    public static String limitsFirst(WeakestLink.Chain chain, boolean braking) {
        return said(chain.firstToLimit(braking), chain, braking);
    }

    private static String said(Optional<WeakestLink.Link> link, WeakestLink.Chain chain, boolean braking) {
        return link.map(l -> l.name() + ", " + torque(l.atNm(braking), l.atWorstNm(braking)) + " N·m: " + l.kind())
                .orElse("cannot tell: needs " + String.join(", ", chain.needs()));
    }
}
