package beltwright.press.drawing;

/// An upright rectangle; empty until something is in it.
public record Bounds(double left, double bottom, double right, double top) {
    public static final Bounds EMPTY = new Bounds(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    public static Bounds of(Point... points) {
        var all = EMPTY;
        for (var p : points) {
            all = all.with(p);
        }
        return all;
    }

    public Bounds with(Point p) {
        return new Bounds(Math.min(left, p.x()), Math.min(bottom, p.y()), Math.max(right, p.x()), Math.max(top, p.y()));
    }

    public Bounds with(Bounds o) {
        return new Bounds(
                Math.min(left, o.left), Math.min(bottom, o.bottom), Math.max(right, o.right), Math.max(top, o.top));
    }

    public Bounds grown(double by) {
        return empty() ? this : new Bounds(left - by, bottom - by, right + by, top + by);
    }

    public Bounds times(double by) {
        return empty() ? this : new Bounds(left * by, bottom * by, right * by, top * by);
    }

    public boolean empty() {
        return left > right;
    }

    public boolean within(Bounds outer) {
        return left >= outer.left && right <= outer.right && bottom >= outer.bottom && top <= outer.top;
    }

    /// {@return whether the two share a point}
    boolean meets(Bounds o) {
        return left <= o.right && o.left <= right && bottom <= o.top && o.bottom <= top;
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return top - bottom;
    }

    public Point middle() {
        return new Point((left + right) / 2, (bottom + top) / 2);
    }
}
