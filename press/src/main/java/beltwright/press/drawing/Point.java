package beltwright.press.drawing;

/// A point, or a step from one point to another: x to the right, y upwards (mm).
public record Point(double x, double y) {
    public static final Point ORIGIN = new Point(0, 0);

    /// {@return the point at this distance from the origin in this direction, counter-clockwise from x (rad)}
    public static Point polar(double radius, double angle) {
        return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    public Point plus(Point o) {
        return new Point(x + o.x, y + o.y);
    }

    public Point minus(Point o) {
        return new Point(x - o.x, y - o.y);
    }

    public Point times(double by) {
        return new Point(x * by, y * by);
    }

    /// {@return this step turned a quarter to the left}
    public Point left() {
        return new Point(-y, x);
    }

    public Point unit() {
        return times(1 / length());
    }

    public double dot(Point o) {
        return x * o.x + y * o.y;
    }

    public double cross(Point o) {
        return x * o.y - y * o.x;
    }

    public double length() {
        return Math.hypot(x, y);
    }

    public double distance(Point o) {
        return minus(o).length();
    }

    public double angle() {
        return Math.atan2(y, x);
    }

    public Point middle(Point o) {
        return new Point((x + o.x) / 2, (y + o.y) / 2);
    }

    public boolean finite() {
        return Double.isFinite(x) && Double.isFinite(y);
    }
}
