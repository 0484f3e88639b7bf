package beltwright.press.drawing;

import java.util.List;

/// The sloping rectangle that a text covers on the sheet (mm): corners in order.
public record TextBox(List<Point> corners) {
    private static final double ASCENT = 0.78; // of the type size, above the base line
    private static final double DESCENT = 0.22;

    public TextBox {
        corners = List.copyOf(corners);
    }

    static TextBox of(
            Point at, String words, double sizeMm, Entity.Text.Anchor anchor, double angleDeg, boolean strong) {
        double width = Lettering.widthMm(words, sizeMm, strong);
        double start = switch (anchor) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        var along = Point.polar(1, Math.toRadians(angleDeg));
        var up = along.left();
        var foot = at.plus(along.times(start)).plus(up.times(-DESCENT * sizeMm));
        var side = along.times(width);
        var rise = up.times((ASCENT + DESCENT) * sizeMm);
        return new TextBox(List.of(foot, foot.plus(side), foot.plus(side).plus(rise), foot.plus(rise)));
    }

    /// {@return what a level text covers whose base line begins here}
    static Bounds level(double x, double y, double width, double sizeMm) {
        return new Bounds(x, y - DESCENT * sizeMm, x + width, y + ASCENT * sizeMm);
    }

    static TextBox of(Bounds b) {
        return new TextBox(List.of(
                new Point(b.left(), b.bottom()),
                new Point(b.right(), b.bottom()),
                new Point(b.right(), b.top()),
                new Point(b.left(), b.top())));
    }

    public Bounds bounds() {
        return Bounds.of(corners.toArray(Point[]::new));
    }

    /// {@return whether the two share any area}: two convex shapes are apart if a side of one of them parts them.
    public boolean overlaps(TextBox other) {
        return !parts(this, other) && !parts(other, this);
    }

    private static boolean parts(TextBox a, TextBox b) {
        for (int i = 0; i < 4; i++) {
            var corner = a.corners.get(i);
            var side = a.corners.get((i + 1) % 4).minus(corner);
            boolean beyond = true;
            for (var p : b.corners) {
                beyond &= side.cross(p.minus(corner)) <= 1e-9;
            }
            if (beyond) {
                return true;
            }
        }
        return false;
    }

    /// {@return whether a line touches it}
    public boolean meets(Segment.Straight line) {
        for (int i = 0; i < 4; i++) {
            if (line.crosses(new Segment.Straight(corners.get(i), corners.get((i + 1) % 4)))) {
                return true;
            }
        }
        return inside(line.from());
    }

    private boolean inside(Point p) {
        for (int i = 0; i < 4; i++) {
            if (corners.get((i + 1) % 4).minus(corners.get(i)).cross(p.minus(corners.get(i))) < 0) {
                return false;
            }
        }
        return true;
    }
}
