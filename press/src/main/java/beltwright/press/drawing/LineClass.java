package beltwright.press.drawing;

/// What a line means; its weight and dashes follow from that (ISO 128 habits).
public enum LineClass {
    /// Edges and outlines that are seen: wide, continuous.
    OUTLINE,
    /// Edges seen but minor, and threads: narrow, continuous.
    EDGE,
    /// Edges behind something: narrow, dashed.
    HIDDEN,
    /// Axes and pitch circles: narrow, long dash and dot.
    CENTRE,
    /// Dimension, witness and leader lines: narrow, continuous.
    DIMENSION,
    /// Parts in front of what is shown, and other positions: narrow, long dash and two dots.
    PHANTOM,
    /// The outline of the belt.
    BELT,
    /// The road: wide, continuous.
    GROUND;

    /// {@return the name by which files know it}
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
