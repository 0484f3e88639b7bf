package beltwright.press.drawing;

import java.util.ArrayList;
import java.util.List;

/// A closed outline of lines and arcs, each beginning where the one before ends.
public record Contour(List<Segment> segments) {
    public Contour {
        segments = List.copyOf(segments);
    }

    public static Contour polygon(Point... corners) {
        var sides = new ArrayList<Segment>();
        for (int i = 0; i < corners.length; i++) {
            sides.add(new Segment.Straight(corners[i], corners[(i + 1) % corners.length]));
        }
        return new Contour(sides);
    }

    public static Contour rectangle(double x1, double y1, double x2, double y2) {
        return polygon(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2));
    }

    public static Contour circle(Point centre, double radius) {
        return new Contour(List.of(
                new Segment.Bow(centre, radius, 0, Math.PI), new Segment.Bow(centre, radius, Math.PI, Math.PI)));
    }

    /// {@return a slot: every point within half the width of the line between the two centres}
    public static Contour slot(Point a, Point b, double width) {
        if (a.distance(b) < 1e-9) {
            return circle(a, width / 2);
        }
        double angle = b.minus(a).angle();
        var aside = Point.polar(width / 2, angle + Math.PI / 2);
        return new Contour(List.of(
                new Segment.Bow(a, width / 2, angle + Math.PI / 2, Math.PI),
                new Segment.Straight(a.minus(aside), b.minus(aside)),
                new Segment.Bow(b, width / 2, angle - Math.PI / 2, Math.PI),
                new Segment.Straight(b.plus(aside), a.plus(aside))));
    }

    /// {@return a circle with flats: each lies `across` from the opposite side and faces one of the directions (rad)}
    public static Contour flatted(Point centre, double diameter, double across, double... directions) {
        double r = diameter / 2;
        double half = Math.acos((across - r) / r);
        if (!(half > 0)) {
            return circle(centre, r);
        }
        var outline = new ArrayList<Segment>();
        var flats = new ArrayList<Segment.Straight>();
        for (int i = 0; i < directions.length; i++) {
            double next = i + 1 < directions.length ? directions[i + 1] : directions[0] + 2 * Math.PI;
            double before = i > 0 ? directions[i - 1] : directions[directions.length - 1] - 2 * Math.PI;
            flats.add(new Segment.Straight(
                    endOfFlat(centre, r, half, directions[i], before),
                    endOfFlat(centre, r, half, directions[i], next)));
        }
        for (int i = 0; i < directions.length; i++) {
            outline.add(flats.get(i));
            double next = i + 1 < directions.length ? directions[i + 1] : directions[0] + 2 * Math.PI;
            double left = next - directions[i] - 2 * half;
            if (left > 0) {
                outline.add(new Segment.Bow(centre, r, directions[i] + half, left));
            }
        }
        return new Contour(outline);
    }

    /// A flat ends on the circle, or where it meets its neighbour.
    private static Point endOfFlat(Point centre, double r, double half, double direction, double neighbour) {
        double apart = neighbour - direction;
        double turn = Math.min(half, Math.abs(apart) / 2);
        double reach = r * Math.cos(half) / Math.cos(turn);
        return centre.plus(Point.polar(reach, direction + Math.signum(apart) * turn));
    }

    /// {@return a regular hexagon by its width across flats, one corner in this direction (rad)}
    public static Contour hexagon(Point centre, double acrossFlats, double angle) {
        var corners = new Point[6];
        for (int i = 0; i < 6; i++) {
            corners[i] = centre.plus(Point.polar(acrossFlats / Math.sqrt(3), angle + i * Math.PI / 3));
        }
        return polygon(corners);
    }

    public Bounds bounds() {
        return segments.stream().map(Segment::bounds).reduce(Bounds.EMPTY, Bounds::with);
    }

    public boolean finite() {
        return segments.stream().allMatch(s -> s.from().finite() && s.to().finite());
    }

    /// {@return whether a point lies inside, arcs taken as their chords}
    boolean holds(Point p) {
        boolean inside = false;
        for (var s : segments) {
            var a = s.from();
            var b = s.to();
            if (a.y() > p.y() != b.y() > p.y() && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    public Contour mapped(Placing placing) {
        return new Contour(segments.stream().map(s -> s.mapped(placing)).toList());
    }
}
