package beltwright.press.drawing;

import beltwright.layout.DrawnDimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// Finds a place for every dimension and word of a view, so that no two texts overlap.
///
/// Horizontal and vertical dimension lines are stacked in lanes outside the view, the shortest nearest; a sloping one
/// moves aside until its text stands free; then words are set where they cover least. All of it is worked out in mm on
/// the sheet.
final class Annotation {
    static final double SIZE = 3.5; // type of a dimension (mm)
    static final double SMALL = 2.8; // type of a word (mm)
    private static final double FIRST_LANE = 9;
    private static final double LANE = 7.5;
    private static final double ABOVE = 1; // from the dimension line to the base line of its text
    private static final double ROOM = 1.5; // beside a text or an arrow, to its neighbour in the lane

    private final double scale;
    private final List<Point> ink = new ArrayList<>();
    private final List<TextBox> texts = new ArrayList<>();
    private final List<Entity> placed = new ArrayList<>();
    private Bounds bounds = Bounds.EMPTY;

    /// @param entities what is drawn (real mm)
    Annotation(List<Entity> entities, double scale) {
        this.scale = scale;
        for (var entity : entities) {
            bounds = bounds.with(entity.bounds().times(scale));
            trace(entity);
        }
    }

    /// One dimension to be placed, with its witness points as they stand on the sheet (real mm).
    record Wanted(DrawnDimension dimension, Point from, Point to, boolean chosen) {
        Point along() {
            var d = to.minus(from);
            return switch (axis()) {
                case POINTS -> d.unit();
                case HORIZONTAL -> new Point(1, 0);
                case VERTICAL -> new Point(0, 1);
            };
        }

        /// The axis on the sheet: the plan is turned, so it is read off the points.
        private DrawnDimension.Along axis() {
            if (dimension.along() == DrawnDimension.Along.POINTS) {
                return DrawnDimension.Along.POINTS;
            }
            boolean turned = dimension.view() == DrawnDimension.View.PLAN;
            boolean first = dimension.along() == DrawnDimension.Along.HORIZONTAL;
            return first == turned ? DrawnDimension.Along.VERTICAL : DrawnDimension.Along.HORIZONTAL;
        }

        double lengthMm() {
            return Math.abs(to.minus(from).dot(along()));
        }

        String text() {
            return (dimension.diameter() ? "⌀" : "") + Lettering.number(dimension.valueMm());
        }

        Tag tag() {
            return new Tag("", dimension.finding(), chosen ? Tag.Emphasis.CHOSEN : Tag.Emphasis.NORMAL);
        }
    }

    void dimensions(List<Wanted> all) {
        var wanted = new ArrayList<Wanted>();
        for (var w : all) {
            // a distance of nothing has no direction and nothing to point at
            if (w.from().finite() && w.to().finite() && w.lengthMm() > 1e-9) {
                wanted.add(w);
            }
        }
        wanted.sort(Comparator.comparingDouble(Wanted::lengthMm)
                .thenComparing(w -> w.dimension().name())
                .thenComparing(w -> w.dimension().side()));
        for (var w : wanted) {
            if (w.axis() == DrawnDimension.Along.POINTS) {
                sloping(w);
            }
        }
        lanes(wanted, DrawnDimension.Along.HORIZONTAL);
        lanes(wanted, DrawnDimension.Along.VERTICAL);
    }

    List<Entity> placed() {
        return List.copyOf(placed);
    }

    /// {@return what the view covers on the sheet, dimensions and words included (mm)}
    Bounds bounds() {
        return bounds;
    }

    private void sloping(Wanted w) {
        var from = w.from().times(scale);
        var to = w.to().times(scale);
        var along = to.minus(from).unit();
        var best = sloping(w, from, to, along.left().times(FIRST_LANE));
        double least = Double.POSITIVE_INFINITY;
        for (double offset = FIRST_LANE; offset < 140; offset += 1.5) {
            for (int side = 1; side >= -1; side -= 2) {
                var candidate = sloping(w, from, to, along.left().times(side * offset));
                double cost = offset + 6 * covered(candidate.text().box(atOrigin())) + crossing(candidate);
                if (cost < least) {
                    least = cost;
                    best = candidate;
                }
            }
        }
        keep(best);
    }

    private Entity.Dimension sloping(Wanted w, Point from, Point to, Point aside) {
        double angle = Math.toDegrees(to.minus(from).angle());
        double readable = angle > 90 + 1e-6 ? angle - 180 : angle <= -90 + 1e-6 ? angle + 180 : angle;
        var up = Point.polar(ABOVE, Math.toRadians(readable + 90));
        var middle = from.plus(aside).middle(to.plus(aside)).plus(up);
        return dimension(w, from.plus(aside), to.plus(aside), false, 0, middle, readable, Entity.Text.Anchor.MIDDLE);
    }

    private double crossing(Entity.Dimension d) {
        double sum = 0;
        var from = d.lineFrom().times(scale);
        var to = d.lineTo().times(scale);
        var along = to.minus(from).unit();
        for (var p : ink) {
            double at = p.minus(from).dot(along);
            if (at > 0 && at < to.distance(from) && Math.abs(p.minus(from).cross(along)) < 1) {
                sum++;
            }
        }
        return sum;
    }

    private void lanes(List<Wanted> wanted, DrawnDimension.Along axis) {
        boolean level = axis == DrawnDimension.Along.HORIZONTAL;
        var core = bounds;
        var low = new ArrayList<Lane>();
        var high = new ArrayList<Lane>();
        for (var w : wanted) {
            if (w.axis() != axis) {
                continue;
            }
            var from = w.from().times(scale);
            var to = w.to().times(scale);
            double across = level ? from.middle(to).y() - core.middle().y() : from.middle(to).x() - core.middle().x();
            var side = across < 0 ? low : high;
            double a = level ? from.x() : from.y();
            double b = level ? to.x() : to.y();
            double text = Lettering.widthMm(w.text(), SIZE, w.chosen());
            boolean outside = Math.abs(b - a) < text + 2 * DimensionFigure.ARROW + 1;
            // a narrow one carries its text past its upper end
            double upper = Math.max(a, b) + (outside ? 2 * DimensionFigure.ARROW + text : 0) + ROOM;
            double lower = Math.min(a, b) - (outside ? 2 * DimensionFigure.ARROW : 0) - ROOM;
            int lane = free(side, lower, upper);
            double away = FIRST_LANE + lane * LANE;
            double at = level
                    ? (across < 0 ? core.bottom() - away : core.top() + away)
                    : (across < 0 ? core.left() - away : core.right() + away);
            keep(level ? horizontal(w, from, to, at, outside, text) : vertical(w, from, to, at, outside, text));
        }
    }

    /// The stretches of one lane that are taken.
    private record Lane(List<double[]> taken) {
        boolean take(double lower, double upper) {
            if (taken.stream().anyMatch(t -> t[0] < upper && lower < t[1])) {
                return false;
            }
            taken.add(new double[] {lower, upper});
            return true;
        }
    }

    private static int free(List<Lane> lanes, double lower, double upper) {
        for (int i = 0; i < lanes.size(); i++) {
            if (lanes.get(i).take(lower, upper)) {
                return i;
            }
        }
        lanes.add(new Lane(new ArrayList<>()));
        lanes.getLast().take(lower, upper);
        return lanes.size() - 1;
    }

    private Entity.Dimension horizontal(Wanted w, Point from, Point to, double y, boolean outside, double text) {
        double right = Math.max(from.x(), to.x());
        var at = outside
                ? new Point(right + 2 * DimensionFigure.ARROW, y + ABOVE)
                : new Point((from.x() + to.x()) / 2, y + ABOVE);
        return dimension(
                w,
                new Point(from.x(), y),
                new Point(to.x(), y),
                outside,
                from.x() < to.x() ? text : -text,
                at,
                0,
                outside ? Entity.Text.Anchor.START : Entity.Text.Anchor.MIDDLE);
    }

    private Entity.Dimension vertical(Wanted w, Point from, Point to, double x, boolean outside, double text) {
        double top = Math.max(from.y(), to.y());
        var at = outside
                ? new Point(x - ABOVE, top + 2 * DimensionFigure.ARROW)
                : new Point(x - ABOVE, (from.y() + to.y()) / 2);
        return dimension(
                w,
                new Point(x, from.y()),
                new Point(x, to.y()),
                outside,
                from.y() < to.y() ? text : -text,
                at,
                90,
                outside ? Entity.Text.Anchor.START : Entity.Text.Anchor.MIDDLE);
    }

    private Entity.Dimension dimension(
            Wanted w,
            Point lineFrom,
            Point lineTo,
            boolean outside,
            double tail,
            Point textAt,
            double angleDeg,
            Entity.Text.Anchor anchor) {
        double real = 1 / scale;
        var text = new Entity.Text(textAt.times(real), w.text(), SIZE, anchor, angleDeg, w.chosen(), w.tag());
        return new Entity.Dimension(
                w.from(),
                w.to(),
                lineFrom.times(real),
                lineTo.times(real),
                outside,
                tail,
                text,
                w.dimension().name(),
                w.tag());
    }

    private void keep(Entity.Dimension d) {
        placed.add(d);
        var box = d.text().box(atOrigin());
        texts.add(box);
        bounds = bounds.with(box.bounds());
        for (var line : DimensionFigure.of(d, scale).lines()) {
            bounds = bounds.with(line.bounds().times(scale));
            trace(line);
        }
    }

    /// Sets each word near its point, nearest first, where it touches no other text and covers least of the drawing.
    void callouts(List<Callout> callouts) {
        for (var c : callouts) {
            if (!c.at().finite()) {
                continue;
            }
            var at = c.at().times(scale);
            Entity.Text best = null;
            double least = Double.POSITIVE_INFINITY;
            for (double away = 6; best == null || away < 60; away += 3) {
                for (int i = 0; i < 24; i++) {
                    var foot = at.plus(Point.polar(away, i * Math.PI / 12));
                    var anchor = foot.x() < at.x() ? Entity.Text.Anchor.END : Entity.Text.Anchor.START;
                    var text = new Entity.Text(
                            foot.plus(new Point(foot.x() < at.x() ? -1 : 1, -SMALL / 3)).times(1 / scale),
                            c.words(),
                            SMALL,
                            anchor,
                            0,
                            false,
                            c.tag());
                    var box = text.box(atOrigin());
                    if (texts.stream().noneMatch(box::overlaps)) {
                        double beyond = box.bounds().within(bounds) ? 0 : 12;
                        double cost = away + 4 * covered(box) + beyond + 2 * Math.abs(Math.sin(i * Math.PI / 6));
                        if (cost < least) {
                            least = cost;
                            best = text;
                        }
                    }
                }
            }
            keep(best, at, c.tag());
        }
    }

    private void keep(Entity.Text text, Point at, Tag tag) {
        var box = text.box(atOrigin());
        texts.add(box);
        bounds = bounds.with(box.bounds());
        boolean end = text.anchor() == Entity.Text.Anchor.END;
        var foot = text.at().times(scale).plus(new Point(end ? 1 : -1, SMALL / 3));
        var leader = new Segment.Straight(at, foot);
        placed.add(new Entity.Line(at.times(1 / scale), foot.times(1 / scale), LineClass.DIMENSION, tag));
        placed.add(text);
        trace(leader.mapped(new Placing(1 / scale, Point.ORIGIN)));
    }

    private Placing atOrigin() {
        return new Placing(scale, Point.ORIGIN);
    }

    /// {@return how much ink a text would cover}
    private double covered(TextBox box) {
        var outer = box.bounds().grown(1);
        long under = ink.stream()
                .filter(p -> p.x() > outer.left() && p.x() < outer.right() && p.y() > outer.bottom() && p.y() < outer.top())
                .count();
        return under + (texts.stream().anyMatch(box::overlaps) ? 1000 : 0);
    }

    private void trace(Entity entity) {
        switch (entity) {
            case Entity.Line l -> trace(new Segment.Straight(l.from(), l.to()));
            case Entity.Arc a -> trace(a.bow());
            case Entity.Circle c -> trace(new Segment.Bow(c.centre(), c.radius(), 0, 2 * Math.PI));
            case Entity.Path p -> p.contours().forEach(c -> c.segments().forEach(this::trace));
            case Entity.Text t -> texts.add(t.box(atOrigin()));
            case Entity.Dimension d -> texts.add(d.text().box(atOrigin()));
        }
    }

    private void trace(Segment segment) {
        switch (segment) {
            case Segment.Straight s -> {
                double length = s.from().distance(s.to()) * scale;
                int steps = (int) Math.ceil(length / 2);
                for (int i = 0; i <= steps; i++) {
                    double part = steps == 0 ? 0 : (double) i / steps;
                    ink.add(s.from().plus(s.to().minus(s.from()).times(part)).times(scale));
                }
            }
            case Segment.Bow b -> {
                int steps = (int) Math.ceil(Math.abs(b.sweep()) * b.radius() * scale / 2);
                for (int i = 0; i <= steps; i++) {
                    ink.add(b.centre()
                            .plus(Point.polar(b.radius(), b.start() + b.sweep() * i / Math.max(1, steps)))
                            .times(scale));
                }
            }
        }
    }
}
