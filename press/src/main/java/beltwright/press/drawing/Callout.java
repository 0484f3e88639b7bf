package beltwright.press.drawing;

import beltwright.kit.SeatName;

/// A word about a point of the drawing, set beside it with a leader line where there is room.
///
/// @param surface whether the point lies on a surface, where a leader ends in a dot, or on an edge
record Callout(Point at, String words, boolean surface, Tag tag) {

    /// {@return the name of a part, on its surface}
    static Callout of(SeatName seat, Point at) {
        return face(seat, at, seat.role().toString());
    }

    /// {@return words about a surface}
    static Callout face(SeatName seat, Point at, String words) {
        return new Callout(at, words, true, new Tag(seat.toString(), "", Tag.Emphasis.NORMAL));
    }

    static Callout edge(SeatName seat, Point at, String words) {
        return new Callout(at, words, false, new Tag(seat.toString(), "", Tag.Emphasis.NORMAL));
    }
}
