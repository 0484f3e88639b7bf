package beltwright.check;

import beltwright.kit.JumpTests;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/// Jump tests whose tension was told by a sound, and which the card of today hears as another tension: weights were
/// hung on the belt since, or a pulley, a belt or the centre distance is another.
///
/// - Source: T = k·f² − T_0, as in `SpanFrequency`. From where on that is said is habit: as far as five readings of a
///   tuner may take a tension apart.
final class HeardDoubt {
    /// How far the two tensions may be apart, as a share of the one that was kept.
    static final double APART = 0.05;

    private HeardDoubt() {}

    /// {@return whether this test would be kept with another tension today}
    static boolean stale(TensionCard card, JumpTests.Test test) {
        return test.heardHz() > 0 && Math.abs(card.tensionN(test.heardHz()) / test.tensionN() - 1) > APART;
    }

    /// {@return what a builder must be told; nothing where every sound still tells the tension that was kept}
    static List<String> of(TensionCard card, String jumpTests) {
        var doubts = new ArrayList<String>();
        if (jumpTests.isBlank()) {
            return doubts;
        }
        for (var test : JumpTests.parse(jumpTests).tests()) {
            if (stale(card, test)) {
                doubts.add("the jump test heard at " + Numbers.plain(test.heardHz()) + " Hz was kept as "
                        + Numbers.plain(test.tensionN()) + " N, but by this card " + Numbers.plain(test.heardHz())
                        + " Hz is " + Numbers.fixed(card.tensionN(test.heardHz()), 1)
                        + " N: if belt, pulleys and centre distance are still those of the test, take it out and record it"
                        + " again with the hertz; if they are not, test again");
            }
        }
        return doubts;
    }
}
