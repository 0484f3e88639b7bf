package beltwright.spread;

import beltwright.quantity.Dimension;

/// One number that is drawn: a toleranced dimension of one piece in one seat, a value of placement, task or reference
/// that is drawn once a kit, or by how much the preload of a joint misses its aim.
///
/// @param where the seat, `left placement`, `task`, `reference` or `preload of left motor screws`
/// @param piece from 0; the second of four screws is 1
public record Input(String where, int piece, Dimension dimension, Distribution distribution) {
    static Input of(String where, int piece, Dimension dimension) {
        return new Input(where, piece, dimension, Distribution.of(dimension));
    }

    /// {@return the name that its random numbers hang on}
    String stream() {
        return where + "#" + piece + "/" + dimension.of();
    }
}
