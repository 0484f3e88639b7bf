package beltwright.press.drawing;

import beltwright.kit.SeatName;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/// A view while it is being drawn, from back to front. What lacks a dimension is left out and remembered.
public final class Sketch {
    private final List<Entity> entities = new ArrayList<>();
    private final Set<String> unfinished = new TreeSet<>();
    private Tag tag = Tag.NONE;

    /// From here on, everything drawn belongs to this seat.
    public void of(SeatName seat) {
        tag = new Tag(seat.toString(), "", Tag.Emphasis.NORMAL);
    }

    /// From here on, what is drawn belongs to no part.
    public void ofNothing() {
        tag = Tag.NONE;
    }

    public void add(Entity entity) {
        if (entity.finite()) {
            entities.add(entity);
        } else {
            unfinished.add(entity.tag().seat());
        }
    }

    public void line(double x1, double y1, double x2, double y2, LineClass line) {
        line(new Point(x1, y1), new Point(x2, y2), line);
    }

    public void line(Point from, Point to, LineClass line) {
        add(new Entity.Line(from, to, line, tag));
    }

    public void segment(Segment segment, LineClass line) {
        switch (segment) {
            case Segment.Straight s -> line(s.from(), s.to(), line);
            case Segment.Bow b -> add(new Entity.Arc(b, line, tag));
        }
    }

    public void circle(Point centre, double radius, LineClass line) {
        circle(centre, radius, line, Fill.OPEN);
    }

    public void circle(Point centre, double radius, LineClass line, Fill fill) {
        add(new Entity.Circle(centre, radius, line, fill, false, tag));
    }

    public void path(Contour contour, LineClass line, Fill fill) {
        path(List.of(contour), line, fill, false);
    }

    public void path(List<Contour> contours, LineClass line, Fill fill, boolean turned) {
        add(new Entity.Path(contours, line, fill, turned, tag));
    }

    public void rectangle(double x1, double y1, double x2, double y2, LineClass line, Fill fill) {
        path(Contour.rectangle(x1, y1, x2, y2), line, fill);
    }

    public void rectangle(double x1, double y1, double x2, double y2, Fill fill, boolean turned) {
        path(List.of(Contour.rectangle(x1, y1, x2, y2)), LineClass.OUTLINE, fill, turned);
    }

    public void text(Point at, String words, double sizeMm, Entity.Text.Anchor anchor) {
        add(new Entity.Text(at, words, sizeMm, anchor, 0, false, tag));
    }

    public List<Entity> entities() {
        return List.copyOf(entities);
    }

    /// {@return the seats whose part could not be drawn whole, because a dimension is unknown}
    List<String> unfinished() {
        return unfinished.stream().filter(s -> !s.isEmpty()).toList();
    }
}
