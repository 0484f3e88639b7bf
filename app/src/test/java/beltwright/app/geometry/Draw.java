package beltwright.app.geometry;

import beltwright.quantity.Dimension;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;

/// Picks one value for every dimension of a kit: all at nominal, or each somewhere between its limits.
interface Draw {
    double of(Dimension d);

    static Draw nominal() {
        return Dimension::nominal;
    }

    /// Half of the dimensions at one of their limits, the others anywhere between; the same dimension always the same.
    static Draw between(Random random) {
        Map<String, Double> drawn = new HashMap<>();
        return d -> drawn.computeIfAbsent(d.of(), of -> switch (random.nextInt(4)) {
            case 0 -> d.lower();
            case 1 -> d.upper();
            default -> d.lower() + random.nextDouble() * (d.upper() - d.lower());
        });
    }
}
