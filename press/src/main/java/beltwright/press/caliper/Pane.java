package beltwright.press.caliper;

import beltwright.press.drawing.Bounds;
import beltwright.press.drawing.Contour;
import beltwright.press.drawing.DimensionFigure;
import beltwright.press.drawing.Entity;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.Lettering;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/// One view of a figure, in mm on the sheet: what is drawn, its dimensions, and a few words under it.
///
/// A dimension carries its letter on its line, or past the second of its two points where the line is too short.
final class Pane {
    private static final double SIZE = 4; // type of a letter (mm)
    private static final double CAPTION = 3.2; // type of the words under a view (mm)
    private static final double DROP = 0.3; // base line below the middle of a letter, of the type size
    private static final double ARROW = DimensionFigure.ARROW;
    private static final double PAST = 2; // from the end of a line to the middle of its letter (mm)
    private static final double GAP = 1; // from the apex or the edge to a witness line (mm)
    private static final double OVERSHOOT = 1.5; // of a witness line past its arc (mm)
    private static final double UNDER = 5; // from the view to the words under it (mm)
    private static final Placing HERE = new Placing(1, Point.ORIGIN);

    private final Sketch sketch = new Sketch();
    private final Fields fields;
    private String caption = "";

    Pane(Fields fields) {
        this.fields = fields;
    }

    static Point p(double x, double y) {
        return new Point(x, y);
    }

    Pane caption(String words) {
        caption = words;
        return this;
    }

    Sketch sketch() {
        return sketch;
    }

    // what is drawn

    /// An outline by its corners, x and y: `0 0, 10 0, 10 4`.
    void shape(Fill fill, String corners) {
        sketch.path(Contour.polygon(corners(corners, 1)), LineClass.OUTLINE, fill);
    }

    /// The section of something turned about the level axis: the corners, x and radius, drawn on both sides.
    void turned(Fill fill, String corners) {
        for (int side = -1; side <= 1; side += 2) {
            sketch.path(Contour.polygon(corners(corners, side)), LineClass.OUTLINE, fill);
        }
    }

    private static Point[] corners(String corners, int side) {
        return Pattern.compile(", ")
                .splitAsStream(corners)
                .map(c -> c.split(" ", 2))
                .map(c -> p(Double.parseDouble(c[0]), side * Double.parseDouble(c[1])))
                .toArray(Point[]::new);
    }

    void rectangle(double x1, double y1, double x2, double y2, Fill fill) {
        sketch.rectangle(x1, y1, x2, y2, LineClass.OUTLINE, fill);
    }

    void hidden(double x1, double y1, double x2, double y2) {
        sketch.line(x1, y1, x2, y2, LineClass.HIDDEN);
    }

    void outline(double x1, double y1, double x2, double y2) {
        sketch.line(x1, y1, x2, y2, LineClass.OUTLINE);
    }

    void edge(double x1, double y1, double x2, double y2) {
        sketch.line(x1, y1, x2, y2, LineClass.EDGE);
    }

    void centre(double x1, double y1, double x2, double y2) {
        sketch.line(x1, y1, x2, y2, LineClass.CENTRE);
    }

    /// A pitch circle, or a full one in another line.
    void ring(Point middle, double diameter, LineClass line) {
        sketch.circle(middle, diameter / 2, line);
    }

    void disc(Point middle, double diameter, Fill fill) {
        sketch.circle(middle, diameter / 2, LineClass.OUTLINE, fill);
    }

    /// The cross of two centre lines, this far to each side.
    void cross(Point middle, double reach) {
        centre(middle.x() - reach, middle.y(), middle.x() + reach, middle.y());
        centre(middle.x(), middle.y() - reach, middle.x(), middle.y() + reach);
    }

    /// A threaded hole seen from its end: the core hole, and three quarters of the thread.
    void threaded(Point middle, double diameter) {
        disc(middle, diameter * 0.8, Fill.PAPER);
        sketch.segment(new Segment.Bow(middle, diameter / 2, 0, 1.5 * Math.PI), LineClass.EDGE);
    }

    // where to measure

    /// A level distance between two points, its line at this height.
    void level(String field, Point a, Point b, double y) {
        distance(field, a, b, p(a.x(), y), p(b.x(), y));
    }

    /// An upright distance between two points, its line at this place.
    void upright(String field, Point a, Point b, double x) {
        distance(field, a, b, p(x, a.y()), p(x, b.y()));
    }

    /// The straight distance of two points, its line this far to the left of the way from a to b.
    void along(String field, Point a, Point b, double aside) {
        var step = b.minus(a).unit().left().times(aside);
        distance(field, a, b, a.plus(step), b.plus(step));
    }

    private void distance(String field, Point a, Point b, Point lineA, Point lineB) {
        var letter = fields.letter(field);
        var along = lineB.minus(lineA).unit();
        boolean outside = lineA.distance(lineB) < room(letter);
        var at = outside ? lineB.plus(along.times(2 * ARROW + PAST)) : lineA.middle(lineB);
        sketch.add(new Entity.Dimension(
                a, b, lineA, lineB, outside, 0, letter(field, letter, at), fields.words(field), Tag.field(field)));
    }

    /// An angle between two directions from the apex (degree, counter-clockwise), on an arc of this radius.
    ///
    /// @param from how far from the apex the witness lines begin; where it is the radius there are none
    void angle(String field, Point apex, double radius, double fromDeg, double toDeg, double from) {
        var tag = Tag.field(field);
        var letter = fields.letter(field);
        double start = Math.toRadians(fromDeg);
        double sweep = Math.toRadians(toDeg - fromDeg);
        double sign = Math.signum(sweep);
        boolean outside = radius * Math.abs(sweep) < room(letter);
        double more = outside ? sign * 2 * ARROW / radius : 0;
        var bow = new Segment.Bow(apex, radius, start - more, sweep + 2 * more);
        sketch.add(new Entity.Arc(bow, LineClass.DIMENSION, tag));
        for (double direction : new double[] {start, start + sweep}) {
            if (from + GAP < radius) {
                sketch.add(new Entity.Line(
                        apex.plus(Point.polar(from + GAP, direction)),
                        apex.plus(Point.polar(radius + OVERSHOOT, direction)),
                        LineClass.DIMENSION,
                        tag));
            }
        }
        double turn = sign * (outside ? -1 : 1) * ARROW / radius;
        head(apex, radius, start, start + turn, tag);
        head(apex, radius, start + sweep, start + sweep - turn, tag);
        double at = outside ? start + sweep + more + sign * PAST / radius : start + sweep / 2;
        sketch.add(letter(field, letter, apex.plus(Point.polar(radius, at))));
    }

    private void head(Point apex, double radius, double tip, double foot, Tag tag) {
        var end = apex.plus(Point.polar(radius, tip));
        var shaft = apex.plus(Point.polar(radius, foot)).minus(end);
        sketch.add(
                new Entity.Path(List.of(DimensionFigure.head(end, shaft)), LineClass.DIMENSION, Fill.INK, false, tag));
    }

    private static double room(String letter) {
        return Lettering.widthMm(letter, SIZE, false) + 2 * ARROW + 1;
    }

    private static Entity.Text letter(String field, String letter, Point middle) {
        return new Entity.Text(
                middle.minus(p(0, DROP * SIZE)), letter, SIZE, Entity.Text.Anchor.MIDDLE, 0, false, Tag.field(field));
    }

    // what it covers

    Bounds bounds() {
        var all = Bounds.EMPTY;
        for (var e : entities()) {
            all = all.with(e.bounds()).with(lettering(e));
        }
        return all;
    }

    private static Bounds lettering(Entity e) {
        return switch (e) {
            case Entity.Text t -> t.box(HERE).bounds();
            case Entity.Dimension d ->
                DimensionFigure.of(d, 1).lines().stream()
                        .map(Segment.Straight::bounds)
                        .reduce(d.text().box(HERE).bounds(), Bounds::with);
            default -> e.bounds();
        };
    }

    List<Entity> entities() {
        var drawn = sketch.entities();
        if (caption.isEmpty()) {
            return drawn;
        }
        var all = Bounds.EMPTY;
        for (var e : drawn) {
            all = all.with(e.bounds()).with(lettering(e));
        }
        var under = new ArrayList<>(drawn);
        under.add(new Entity.Text(
                p(all.middle().x(), all.bottom() - UNDER),
                caption,
                CAPTION,
                Entity.Text.Anchor.MIDDLE,
                0,
                false,
                Tag.NONE));
        return under;
    }
}
