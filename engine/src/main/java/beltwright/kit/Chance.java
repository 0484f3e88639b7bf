package beltwright.kit;

import beltwright.quantity.Dimension;
import java.util.Map;

/// What chance makes of one drawn kit beside its parts: what its estimating rules came to, and by how much each joint's
/// preload misses its aim. A kit as it was designed has none of that.
///
/// @param rules drawn values by the field that the rule stands in for, such as `task.jointFriction`
/// @param missesPercent how far the preload of all screws in a seat lies above its aim (%)
public record Chance(Map<String, Dimension> rules, Map<SeatName, Double> missesPercent) {
    public static final Chance NONE = new Chance(Map.of(), Map.of());

    public Chance {
        rules = Map.copyOf(rules);
        missesPercent = Map.copyOf(missesPercent);
    }

    /// {@return what this rule came to; the rule itself where it was not drawn}
    public Dimension of(Dimension rule) {
        return rules.getOrDefault(rule.of(), rule);
    }

    /// {@return preload of each screw in this seat over the preload aimed at (1)}
    public double tightened(SeatName seat) {
        return 1 + missesPercent.getOrDefault(seat, 0.0) / 100;
    }
}
