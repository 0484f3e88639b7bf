package beltwright.press.drawing;

/// A word about a point of the drawing, set beside it with a leader line where there is room.
record Callout(Point at, String words, Tag tag) {}
