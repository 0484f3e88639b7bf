package beltwright.check;

import beltwright.quantity.Dimension;
import beltwright.quantity.Range;

/// Where between its limits every number of a strength question stands: all at the limit that hurts, all at nominal, or
/// all at the limit that helps.
enum At {
    WORST,
    NOMINAL,
    BEST;

    /// {@return the other end, for what hurts where everything else helps}
    At mirrored() {
        return switch (this) {
            case WORST -> BEST;
            case NOMINAL -> NOMINAL;
            case BEST -> WORST;
        };
    }

    /// {@return this number, of which less is worse}
    double least(Dimension d) {
        return switch (this) {
            case WORST -> d.lower();
            case NOMINAL -> d.nominal();
            case BEST -> d.upper();
        };
    }

    /// {@return this number, of which more is worse}
    double most(Dimension d) {
        return switch (this) {
            case WORST -> d.upper();
            case NOMINAL -> d.nominal();
            case BEST -> d.lower();
        };
    }

    /// {@return this number, of which less is worse}
    double least(Range r) {
        return switch (this) {
            case WORST -> r.low();
            case NOMINAL -> r.nominal();
            case BEST -> r.high();
        };
    }

    /// {@return this number, of which more is worse}
    double most(Range r) {
        return switch (this) {
            case WORST -> r.high();
            case NOMINAL -> r.nominal();
            case BEST -> r.low();
        };
    }
}
