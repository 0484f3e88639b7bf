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

    /// {@return a circle with a flat: the flat lies `across` from the opposite side, facing `angle` (rad)}
    public static Contour flatted(Point centre, double diameter, double across, double angle) {
        double half = Math.acos((across - diameter / 2) / (diameter / 2));
        if (!(half > 0)) {
            return circle(centre, diameter / 2);
        }
        var arc = new Segment.Bow(centre, diameter / 2, angle + half, 2 * (Math.PI - half));
        return new Contour(List.of(arc, new Segment.Straight(arc.to(), arc.from())));
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
