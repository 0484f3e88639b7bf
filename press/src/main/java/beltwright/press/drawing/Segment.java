package beltwright.press.drawing;

import java.util.ArrayList;
import java.util.List;

/// One piece of an outline: exactly a straight line or exactly an arc.
public sealed interface Segment {
    Point from();

    Point to();

    /// {@return the same piece in the other direction}
    Segment reversed();

    Bounds bounds();

    double length();

    /// {@return this piece cut wherever it crosses the circle, in order}
    List<Segment> cut(Point centre, double radius);

    /// {@return the point halfway along}
    Point halfway();

    Segment mapped(Placing placing);

    /// A straight line.
    record Straight(Point from, Point to) implements Segment {
        @Override
        public Segment reversed() {
            return new Straight(to, from);
        }

        @Override
        public Bounds bounds() {
            return Bounds.of(from, to);
        }

        @Override
        public double length() {
            return from.distance(to);
        }

        @Override
        public Point halfway() {
            return from.middle(to);
        }

        /// {@return whether the two lines cross between their ends}
        boolean crosses(Straight o) {
            return aside(o.from) * aside(o.to) < 0 && o.aside(from) * o.aside(to) < 0;
        }

        private double aside(Point p) {
            return to.minus(from).cross(p.minus(from));
        }

        @Override
        public List<Segment> cut(Point centre, double radius) {
            var along = to.minus(from).unit();
            double foot = centre.minus(from).dot(along);
            double aside = centre.minus(from).cross(along);
            double half = Math.sqrt(radius * radius - aside * aside); // NaN where it passes by
            var pieces = new ArrayList<Segment>(3);
            var start = from;
            for (double at : new double[] {foot - half, foot + half}) {
                if (at > 0 && at < to.distance(from)) {
                    var there = from.plus(along.times(at));
                    pieces.add(new Straight(start, there));
                    start = there;
                }
            }
            pieces.add(new Straight(start, to));
            return pieces;
        }

        @Override
        public Segment mapped(Placing placing) {
            return new Straight(placing.of(from), placing.of(to));
        }
    }

    /// An arc about a centre; the sweep is positive counter-clockwise (rad).
    record Bow(Point centre, double radius, double start, double sweep) implements Segment {
        @Override
        public Point from() {
            return at(start);
        }

        @Override
        public Point to() {
            return at(start + sweep);
        }

        @Override
        public Segment reversed() {
            return new Bow(centre, radius, start + sweep, -sweep);
        }

        @Override
        public double length() {
            return radius * Math.abs(sweep);
        }

        @Override
        public Point halfway() {
            return at(start + sweep / 2);
        }

        private Point at(double angle) {
            return centre.plus(Point.polar(radius, angle));
        }

        @Override
        public Bounds bounds() {
            var all = Bounds.of(from(), to());
            double low = Math.min(start, start + sweep);
            double high = Math.max(start, start + sweep);
            for (double quarter = Math.ceil(low / (Math.PI / 2)); quarter * Math.PI / 2 <= high; quarter++) {
                all = all.with(at(quarter * Math.PI / 2));
            }
            return all;
        }

        @Override
        public List<Segment> cut(Point other, double otherRadius) {
            var to = other.minus(centre);
            double apart = to.length();
            double half = Math.acos((apart * apart + radius * radius - otherRadius * otherRadius)
                    / (2 * apart * radius)); // NaN where they do not meet
            var pieces = new ArrayList<Segment>(3);
            if (Double.isNaN(half)) {
                pieces.add(this);
                return pieces;
            }
            double a = along(to.angle() - half);
            double b = along(to.angle() + half);
            double done = 0;
            for (double at : new double[] {Math.min(a, b), Math.max(a, b)}) {
                if (at < Math.abs(sweep)) {
                    pieces.add(new Bow(
                            centre, radius, start + done * Math.signum(sweep), (at - done) * Math.signum(sweep)));
                    done = at;
                }
            }
            pieces.add(new Bow(centre, radius, start + done * Math.signum(sweep), sweep - done * Math.signum(sweep)));
            return pieces;
        }

        /// {@return how far along the sweep this direction lies, 0 to 2π}
        private double along(double angle) {
            double turn = (angle - start) * Math.signum(sweep) % (2 * Math.PI);
            return turn < 0 ? turn + 2 * Math.PI : turn;
        }

        @Override
        public Segment mapped(Placing placing) {
            return placing.mirrored()
                    ? new Bow(placing.of(centre), radius * placing.scale(), Math.PI - start, -sweep)
                    : new Bow(placing.of(centre), radius * placing.scale(), start, sweep);
        }
    }

    /// {@return the arc from a over b to c; a straight line where they lie on one}
    static Segment through(Point a, Point b, Point c) {
        var ab = b.minus(a);
        var ac = c.minus(a);
        double d = 2 * ab.cross(ac);
        if (Math.abs(d) < 1e-9) {
            return new Straight(a, c);
        }
        var centre =
                a.plus(new Point(ac.y() * ab.dot(ab) - ab.y() * ac.dot(ac), ab.x() * ac.dot(ac) - ac.x() * ab.dot(ab))
                        .times(1 / d));
        double start = a.minus(centre).angle();
        double sweep = c.minus(centre).angle() - start;
        if (d > 0 && sweep < 0) {
            sweep += 2 * Math.PI;
        } else if (d < 0 && sweep > 0) {
            sweep -= 2 * Math.PI;
        }
        return new Bow(centre, a.distance(centre), start, sweep);
    }
}
