package beltwright.press.drawing;

/// Where something stands: scaled about the origin, then moved; or first mirrored left to right.
public record Placing(double scale, boolean mirrored, Point by) {
    public static final Placing MIRROR = new Placing(1, true, Point.ORIGIN);

    public Placing(double scale, Point by) {
        this(scale, false, by);
    }

    public Point of(Point p) {
        return new Point((mirrored ? -p.x() : p.x()) * scale + by.x(), p.y() * scale + by.y());
    }

    public Bounds of(Bounds b) {
        return Bounds.of(of(new Point(b.left(), b.bottom())), of(new Point(b.right(), b.top())));
    }
}
