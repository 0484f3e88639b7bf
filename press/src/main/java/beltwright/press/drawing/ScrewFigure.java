package beltwright.press.drawing;

import beltwright.part.Screw;

/// A screw as a drawing shows it: lengthwise with head, shank, thread lines and socket, or its head from above.
///
/// @param seat middle of the face under the head; of the top of a countersunk head
/// @param into the direction in which it points
record ScrewFigure(Screw screw, Point seat, Point into) {
    private static final double PAST = 2; // of the centre line past head and tip (mm)

    /// The screw in a section, where it is not cut.
    void draw(Sketch sketch) {
        double core = screw.thread().minorDiameterMm() / 2;
        double tip = screw.lengthMm().nominal();
        double high = screw.head().heightMm(screw.thread());
        double key = screw.head().keyMm(screw.thread()) / 2;
        sketch.path(shank(), LineClass.OUTLINE, Fill.PAPER);
        sketch.line(p(0, core), p(tip, core), LineClass.EDGE);
        sketch.line(p(0, -core), p(tip, -core), LineClass.EDGE);
        sketch.path(head(), LineClass.OUTLINE, Fill.PAPER);
        if (high > 0) {
            var socket = Contour.polygon(p(-high, -key), p(-high / 2, -key), p(-high / 2, key), p(-high, key));
            sketch.path(socket, LineClass.HIDDEN, Fill.OPEN);
        }
        sketch.line(p(-high - PAST, 0), p(tip + PAST, 0), LineClass.CENTRE);
    }

    /// Only its outline, of a screw in front of what is shown.
    void outline(Sketch sketch, LineClass line) {
        sketch.path(shank(), line, Fill.OPEN);
        sketch.path(head(), line, Fill.OPEN);
    }

    private Contour shank() {
        double r = screw.thread().majorMm() / 2;
        double core = screw.thread().minorDiameterMm() / 2;
        double tip = screw.lengthMm().nominal();
        double chamfer = (r - core) * 1.2;
        return Contour.polygon(
                p(0, -r), p(tip - chamfer, -r), p(tip, -core), p(tip, core), p(tip - chamfer, r), p(0, r));
    }

    private Contour head() {
        double r = screw.thread().majorMm() / 2;
        double wide = screw.head().diameterMm(screw.thread()) / 2;
        double high = screw.head().heightMm(screw.thread());
        return high > 0
                ? Contour.polygon(p(0, -wide), p(-high, -wide), p(-high, wide), p(0, wide))
                : Contour.polygon(p(0, -wide), p(wide - r, -r), p(wide - r, r), p(0, wide));
    }

    /// Its head seen from above, the hexagon with one corner in this direction (rad).
    static void fromAbove(Sketch sketch, Screw screw, Point centre, double corner) {
        sketch.circle(centre, screw.head().diameterMm(screw.thread()) / 2, LineClass.OUTLINE, Fill.PAPER);
        sketch.path(Contour.hexagon(centre, screw.head().keyMm(screw.thread()), corner), LineClass.EDGE, Fill.OPEN);
    }

    private Point p(double along, double aside) {
        return seat.plus(into.times(along)).plus(into.left().times(aside));
    }
}
