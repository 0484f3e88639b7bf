package beltwright.check;

import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/// How a belt is set, in order: the same steps on the card and in the assembly guide.
///
/// - Source: common practice, no source; the numbers are the card's.
final class TensionSteps {
    private TensionSteps() {}

    /// @param idler whether one of the spans runs over an idler
    static List<String> of(TensionCard card, boolean idler) {
        var steps = new ArrayList<String>();
        steps.add(
                "Battery disconnected, wheel off the ground, motor screws just loose enough that the motor slides: push it"
                        + " outward along its slots until both spans are taut, and hold it there.");
        steps.add(
                "Roll the wheel by hand, a few turns, and stop at the loosest wheel angle, where the belt sounds lowest:"
                        + " pulleys out of round make it swing.");
        if (Double.isNaN(card.setN())) {
            steps.add("The tension cannot be told: a number is missing in this kit's data.");
            return steps;
        }
        double hertz = card.frequencyHz(card.setN());
        boolean heard = !Double.isNaN(hertz);
        var span = idler ? "the span that the idler does not touch" : "either span";
        var force = "a pull of " + Numbers.fixed(card.forceN(card.setN()), 1) + " N deflects it by "
                + Numbers.fixed(card.deflectionMm(), 1) + " mm at mid-span.";
        if (heard) {
            steps.add("Pluck " + span
                    + " at its middle, between the pulleys, beside a phone with a tuner app that shows"
                    + " hertz: " + Numbers.fixed(hertz, 0) + " Hz is a tension of " + Numbers.fixed(card.setN(), 0)
                    + " N to start with. Take the middle of five readings, no more than 5 % apart. Or without a phone: "
                    + force);
        } else {
            steps.add("Measure at " + span + " with a spring scale and a rule: " + force + " That is a tension of "
                    + Numbers.fixed(card.setN(), 0) + " N to start with.");
        }
        steps.add(band(card));
        if (card.band()) {
            double cold = card.coldMostN();
            steps.add("Roll on to where it sounds highest. Over "
                    + (heard ? Numbers.atMost(card.frequencyHz(cold), 0) + " Hz, " : "") + Numbers.atMost(cold, 0)
                    + " N there" + (cold < card.mostN() ? ", the most less what warmth adds," : "")
                    + " loosen it, but never below the least at the loosest angle. Where both cannot be met, turn the"
                    + " pulleys truer before anybody rides.");
        }
        steps.add(
                "Tighten the motor screws crosswise and measure again: tightening moves the motor. Again after the first"
                        + " ride, after 10 km, then every 100 km.");
        return steps;
    }

    /// {@return between which readings the belt may be left, or why there are none}
    private static String band(TensionCard card) {
        if (!card.known()) {
            return "What it may be at least and at most cannot be told: a number is missing in this kit's data.";
        }
        if (!card.band()) {
            return "N" + card.why().substring(1) + ". Do not ride it before that is mended.";
        }
        var heard = Double.isNaN(card.frequencyHz(card.leastN()))
                ? ""
                : "between " + card.hertz().low() + " and " + card.hertz().high() + " Hz, ";
        return "Leave it " + heard + card.newtons().low() + " and "
                + card.newtons().high()
                + " N" + (card.sure() ? "" : ", at nominal only")
                + ": below it teeth may jump or a span go slack, above it"
                + " is too much for " + card.because() + ".";
    }
}
