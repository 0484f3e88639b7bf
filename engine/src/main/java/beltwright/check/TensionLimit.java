package beltwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.stream.Stream;

/// The most tension at rest that everything stands on which the belt pulls: the slots that hold it, and the
/// bearings, shaft, plate and axle that carry it.
///
/// Every question of strength that is asked of one of these is asked again at other tensions, until demand meets
/// capacity: the band ends where the first of them does. Below half of the effective tension the pull falls no
/// further, so what does not stand that much stands no tension at all.
///
/// - Source: the working of each of those questions; the root by the bracketing method of Brent, of higher order.
/// - Valid: more tension is never better for any of them.
/// - Neglects: what has no number: a part that is not known sets no end, and the working says so.
final class TensionLimit {
    /// What the belt pulls on, the symbol of the most that it stands, and how a builder calls it; those that often end
    /// first lead, for what comes after is then asked once and no more.
    enum Bearer {
        SLOTS("T_slots", "the slot screws"),
        WHEEL_BEARINGS("T_wheel", "the wheel's bearings"),
        MOTOR_SCREWS("T_screws", "the motor screws"),
        MOTOR_SHAFT("T_shaft", "the motor's shaft"),
        MOTOR_BEARING("T_motor", "the motor's bearing"),
        PLATE("T_mount", "the mount plate"),
        AXLE("T_axle", "the axle");

        private final String symbol;
        private final String words;

        Bearer(String symbol, String words) {
            this.symbol = symbol;
            this.words = words;
        }

        String symbol() {
            return symbol;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// How much one of them stands.
    ///
    /// @param by what stands it
    /// @param asked the question that ends it
    /// @param tensionN tension at rest (N): 0 where it stands none, NaN where it is not known
    record Limit(Bearer by, StrengthCheck asked, double tensionN) {}

    /// Far beyond every belt of this trade (N): what stands so much sets no end.
    static final double HIGHEST_N = 2000;

    private static final double[] WITHIN = {1e-12, 1e-9, 1e-9}; // share, N, room
    private static final double FAR = 50;

    private TensionLimit() {}

    /// A question that the tension at rest reaches, and what it asks about.
    private record Pulled(Bearer by, StrengthCheck check) {
        static final List<Pulled> ALL = Checks.ALL.stream()
                .filter(StrengthCheck.class::isInstance)
                .map(StrengthCheck.class::cast)
                .flatMap(c -> Stream.ofNullable(c.bearer()).map(by -> new Pulled(by, c)))
                .sorted(Comparator.comparing(Pulled::by))
                .toList();
    }

    /// {@return what ends first, by which question, at what tension; NaN where the slots are not known}
    static Limit of(Subject s, At at) {
        return of(s, at, DrivePull.worstNm(s, at));
    }

    static Limit of(Subject s, At at, double motorNm) {
        double slots = Tension.bySlotsN(s, at);
        var least = new Limit(Bearer.SLOTS, Pulled.ALL.getFirst().check(), slots);
        if (Double.isNaN(slots)) {
            return least;
        }
        for (var pulled : Pulled.ALL) {
            if (pulled.check().concerns(s)) {
                double stands = standsN(s, pulled.check(), at, motorNm, Math.max(0, least.tensionN()));
                if (stands < least.tensionN()) {
                    least = new Limit(pulled.by(), pulled.check(), stands);
                }
            }
        }
        return least;
    }

    /// {@return how much each of them stands, by the one of its questions that ends first; NaN where none can be told}
    static List<Limit> each(Subject s, At at) {
        var all = new EnumMap<Bearer, Limit>(Bearer.class);
        for (var pulled : Pulled.ALL) {
            if (pulled.check().concerns(s)) {
                double stands = standsN(s, pulled.check(), at, DrivePull.worstNm(s, at), HIGHEST_N);
                all.merge(
                        pulled.by(),
                        new Limit(pulled.by(), pulled.check(), stands),
                        (a, b) -> b.tensionN() < a.tensionN() || Double.isNaN(a.tensionN()) ? b : a);
            }
        }
        return new ArrayList<>(all.values());
    }

    /// {@return the questions that set no end because a number is missing}
    static List<StrengthCheck> untold(Subject s) {
        return Pulled.ALL.stream()
                .map(Pulled::check)
                .filter(c -> c.concerns(s))
                .filter(c -> Double.isNaN(standsN(s, c, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL), HIGHEST_N)))
                .toList();
    }

    /// {@return the most tension up to `high` at which this question is still answered well}
    private static double standsN(Subject s, StrengthCheck check, At at, double motorNm, double high) {
        double atHigh = room(s, check, at, motorNm, high);
        if (Double.isNaN(atHigh)) {
            return Double.NaN;
        }
        if (atHigh >= 0) {
            return high;
        }
        double low = Math.min(high, DrivePull.effectiveN(s, motorNm) / 2);
        double atLow = room(s, check, at, motorNm, low);
        if (Double.isNaN(atLow)) {
            return Double.NaN;
        }
        if (low == high || atLow < 0) {
            return 0;
        }
        return WeakestLink.zero(tension -> room(s, check, at, motorNm, tension), low, high, WITHIN);
    }

    /// {@return logarithm of capacity over demand, which is nearly straight for stress and for life}
    private static double room(Subject s, StrengthCheck check, At at, double motorNm, double tensionN) {
        var set = s.tensioned(tensionN);
        double share = check.capacity(set, at, motorNm) / check.demand(set, at, motorNm);
        return Math.clamp(Math.log(share), -FAR, FAR);
    }
}
