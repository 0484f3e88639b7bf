package beltwright.check;

import beltwright.quantity.Numbers;
import org.jspecify.annotations.Nullable;

/// One check answered in short: what is left over what is needed, with its limits, and no working.
///
/// @param key `check.subject`
/// @param wanted demand at nominal, in `unit`
/// @param slack capacity less demand at nominal, in `unit`; NaN where it cannot be told and for a yes-or-no question
/// @param slackWorst at the worst limits
/// @param slackBest at the best limits
/// @param off what the demand is where more of it is worse and the capacity is what may be of it; empty where what is
///     left is a room or a reserve
/// @param marginWorst worst capacity over worst demand minus one; null where there is no margin
public record Answer(
        String key,
        String check,
        Verdict verdict,
        String unit,
        double wanted,
        double slack,
        double slackWorst,
        double slackBest,
        String off,
        @Nullable Double marginWorst) {

    static Answer of(Check check, Subject subject, Reading r) {
        boolean counted = !check.unit().isEmpty();
        return new Answer(
                check.key(subject),
                check.name(),
                check.verdict(subject, r),
                check.unit(),
                r.demand,
                counted ? r.capacity - r.demand : Double.NaN,
                counted ? r.capacityWorst - r.demandWorst : Double.NaN,
                counted ? r.capacityBest - r.demandBest : Double.NaN,
                check.off(),
                Ladder.margin(check, r.capacityWorst, r.demandWorst));
    }

    /// {@return what is left with its limits, `0.30 ± 0.4 mm`, or how far it is off, `0.02 ± 0.05 mm off`, or how many
    /// there are of how many; empty for a
    /// yes-or-no question}
    public String slackText() {
        if (verdict == Verdict.CANNOT_TELL) {
            return verdict.toString();
        }
        if (unit.isEmpty() || Double.isNaN(slack)) {
            return "";
        }
        if (!off.isEmpty()) {
            double may = wanted + slack;
            return within(wanted, may - slackBest, may - slackWorst) + " " + off + ", " + Numbers.significant(may, 3)
                    + " allowed";
        }
        return within(slack, slackWorst, slackBest);
    }

    private String within(double slack, double slackWorst, double slackBest) {
        double below = slack - slackWorst;
        double above = slackBest - slack;
        double band = Math.max(below, above);
        switch (unit) {
            case "teeth", "pieces" -> {
                var there = Numbers.fixed(slack + wanted, 0);
                return there + (unit.equals("teeth") ? " whole" : " pieces") + " of " + Numbers.fixed(wanted, 0)
                        + " wanted";
            }
            case "pins" -> {
                return Numbers.fixed(-slack, 0) + (slack == -1 ? " pin apart" : " pins apart");
            }
            default -> {}
        }
        if (!(band > 0)) {
            return Numbers.within(slack, slack, slack) + " " + unit;
        }
        int decimals = band >= 10 ? 0 : Math.clamp((int) Math.ceil(-Math.log10(band)), 1, 3);
        if (Math.abs(below - above) <= 0.1 * band) {
            return Numbers.fixed(slack, decimals) + " ± " + Numbers.fixed(band, decimals) + " " + unit;
        }
        return Numbers.fixed(slack, decimals) + " (" + Numbers.fixed(slackWorst, decimals) + " to "
                + Numbers.fixed(slackBest, decimals) + ") " + unit;
    }
}
