package beltwright.check;

import beltwright.belt.SpanFrequency;
import beltwright.part.Belt;
import beltwright.part.HungWeights;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/// What speaks against the weights that were hung on a belt, though they can be read.
///
/// - Source: stiffness raises a frequency, so T_0 is not below 0, and k of a stiff string is 4·m′·L² still, as in
///   `SpanFrequency`. From where on that is said is habit, as wide as a tuner and a spring scale are apart.
/// - Neglects: that a toothed span ends nowhere exactly, so that its k is not quite that of a string.
final class HungDoubt {
    /// T_0 below 0 by more than this share of the least pull that was hung.
    static final double BELOW = 0.1;

    /// How far k may be from that of a string, either way. An octave is a factor of 4.
    static final double APART = 2;

    private HungDoubt() {}

    /// {@return what a builder must be told; nothing where no weights were hung}
    static List<String> of(TensionCard card, Belt belt) {
        var doubts = new ArrayList<String>();
        if (card.calibrated().isEmpty()) {
            return doubts;
        }
        var hung = HungWeights.parse(belt.hungWeights());
        double share = card.spanMm() / hung.spanMm();
        if (card.offsetN() * share * share < -BELOW * hung.leastN()) {
            doubts.add("T_0 is below 0, but stiffness only ever adds: weigh and pluck again");
        }
        double times = card.factor() / SpanFrequency.factor(belt.massGPerM().nominal() / 1000, card.spanMm());
        if (times > APART || times < 1 / APART) {
            doubts.add("k is " + Numbers.significant(times, 2) + " times that of a string of this mass and span (said"
                    + " from a factor of 2 on, habit): an octave away? plucked the other span, or a harmonic?");
        }
        return doubts;
    }
}
