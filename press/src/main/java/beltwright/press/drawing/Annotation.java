package beltwright.press.drawing;

import beltwright.layout.DrawnDimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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
    private static final double BESIDE = 1; // from the foot of a leader to its word (mm)
    private static final double DOT = 0.5; // radius of the dot that ends a leader on a surface (mm)

    private static final double REACH = 90; // how far from the drawing anything is placed
    private static final double FARTHEST = 200; // where the search for a free place ends (mm on the sheet)

    private final double scale;
    private final InkGrid ink;
    private final List<Segment.Straight> leaders = new ArrayList<>();
    private final List<TextBox> texts = new ArrayList<>();
    private final List<Bounds> aroundTexts = new ArrayList<>();
    private final List<Entity> placed = new ArrayList<>();
    private Bounds bounds = Bounds.EMPTY;

    /// @param entities what is drawn (real mm)
    Annotation(List<Entity> entities, double scale) {
        this.scale = scale;
        for (var entity : entities) {
            bounds = bounds.with(entity.bounds().times(scale));
        }
        ink = new InkGrid(bounds.grown(REACH));
        entities.forEach(this::trace);
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
                double cost = offset
                        + 6 * covered(candidate.text().box(atOrigin()))
                        + ink.along(
                                candidate.lineFrom().times(scale),
                                candidate.lineTo().times(scale));
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

    private void lanes(List<Wanted> wanted, DrawnDimension.Along axis) {
        boolean level = axis == DrawnDimension.Along.HORIZONTAL;
        var core = bounds;
        var low = new Lanes();
        var high = new Lanes();
        var mine = wanted.stream().filter(w -> w.axis() == axis).toList();
        for (var w : mine) {
            (below(w, core, level) ? low : high).witness(place(w.from(), level), place(w.to(), level));
        }
        for (var w : mine) {
            boolean below = below(w, core, level);
            double text = Lettering.widthMm(w.text(), SIZE, w.chosen());
            var stand = (below ? low : high).stand(place(w.from(), level), place(w.to(), level), text);
            double away = FIRST_LANE + stand.lane() * LANE;
            double at = level
                    ? (below ? core.bottom() - away : core.top() + away)
                    : (below ? core.left() - away : core.right() + away);
            keep(inLane(w, level, at, stand, text));
        }
    }

    private double place(Point p, boolean level) {
        return (level ? p.x() : p.y()) * scale;
    }

    private boolean below(Wanted w, Bounds core, boolean level) {
        var middle = w.from().middle(w.to()).times(scale).minus(core.middle());
        return (level ? middle.y() : middle.x()) < 0;
    }

    /// @param at where the lane lies, across the dimension line
    private Entity.Dimension inLane(Wanted w, boolean level, double at, Lanes.Stand stand, double text) {
        double a = place(w.from(), level);
        double b = place(w.to(), level);
        var words = on(level, stand.textAt(), level ? at + ABOVE : at - ABOVE);
        boolean onTo = stand.outside() && (stand.textAt() > Math.max(a, b)) == b > a;
        return dimension(
                w,
                on(level, a, at),
                on(level, b, at),
                stand.outside(),
                onTo ? text : -text,
                words,
                level ? 0 : 90,
                !stand.outside()
                        ? Entity.Text.Anchor.MIDDLE
                        : stand.textAt() > Math.max(a, b) ? Entity.Text.Anchor.START : Entity.Text.Anchor.END);
    }

    private static Point on(boolean level, double along, double across) {
        return level ? new Point(along, across) : new Point(across, along);
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
        standing(box);
        bounds = bounds.with(box.bounds());
        for (var line : DimensionFigure.of(d, scale).lines()) {
            bounds = bounds.with(line.bounds().times(scale));
            ink.trace(line, scale);
            leaders.add(new Segment.Straight(line.from().times(scale), line.to().times(scale)));
        }
    }

    /// Sets each word near its point, nearest first, where it touches no other text and covers least of the drawing.
    void callouts(List<Callout> callouts) {
        for (var c : callouts) {
            if (c.at().finite()) {
                best(c).ifPresent(text -> keep(c, text));
            }
        }
    }

    /// {@return where a name finds room; empty where a drawing is so full or so odd that it finds none}
    private Optional<Entity.Text> best(Callout c) {
        var at = c.at().times(scale);
        double width = Lettering.widthMm(c.words(), SMALL, false);
        Point best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double away = 5; away < (best == null ? FARTHEST : Math.min(least, REACH)); away += 2.5) {
            for (int i = 0; i < 24; i++) {
                var foot = at.plus(Point.polar(away, (i + 0.5) * Math.PI / 12));
                double cost = away + cost(room(at, foot, width), at, foot, least - away);
                if (cost < least) {
                    least = cost;
                    best = foot;
                }
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        boolean leftward = best.x() < at.x();
        return Optional.of(new Entity.Text(
                best.plus(new Point(leftward ? -BESIDE : BESIDE, -SMALL / 3)).times(1 / scale),
                c.words(),
                SMALL,
                leftward ? Entity.Text.Anchor.END : Entity.Text.Anchor.START,
                0,
                false,
                c.tag()));
    }

    /// What a word covers beside the foot of its leader.
    private static Bounds room(Point at, Point foot, double width) {
        double start = foot.x() < at.x() ? foot.x() - BESIDE - width : foot.x() + BESIDE;
        return TextBox.level(start, foot.y() - SMALL / 3, width, SMALL);
    }

    /// @param most what it may cost; beyond that nobody needs to know exactly
    private double cost(Bounds room, Point at, Point foot, double most) {
        double cost = 5 * ink.in(room.grown(0.5), most / 5 + 1) + (room.within(bounds) ? 0 : 12);
        if (cost >= most) {
            return cost;
        }
        var leader = new Segment.Straight(at, foot);
        var box = TextBox.of(room);
        var around = leader.bounds();
        for (int i = 0; i < texts.size(); i++) {
            var text = texts.get(i);
            var covers = aroundTexts.get(i);
            if ((room.meets(covers) && box.overlaps(text)) || (around.meets(covers) && text.meets(leader))) {
                return Double.POSITIVE_INFINITY;
            }
        }
        for (var line : leaders) {
            var on = line.bounds();
            if (room.meets(on) && box.meets(line)) {
                return Double.POSITIVE_INFINITY;
            }
            cost += around.meets(on) && line.crosses(leader) ? 30 : 0;
        }
        return cost + 0.3 * ink.along(at, foot);
    }

    private void keep(Callout c, Entity.Text text) {
        var box = text.box(atOrigin());
        standing(box);
        bounds = bounds.with(box.bounds());
        var at = c.at().times(scale);
        boolean end = text.anchor() == Entity.Text.Anchor.END;
        var leader =
                new Segment.Straight(at, text.at().times(scale).plus(new Point(end ? BESIDE : -BESIDE, SMALL / 3)));
        leaders.add(leader);
        placed.add(new Entity.Line(c.at(), leader.to().times(1 / scale), LineClass.DIMENSION, c.tag()));
        if (c.surface()) {
            placed.add(new Entity.Circle(c.at(), DOT / scale, LineClass.DIMENSION, Fill.INK, false, c.tag()));
        }
        placed.add(text);
        ink.trace(leader, 1);
    }

    private Placing atOrigin() {
        return new Placing(scale, Point.ORIGIN);
    }

    /// {@return how much ink a text would cover}
    private double covered(TextBox box) {
        return ink.in(box.bounds().grown(0.5)) + (texts.stream().anyMatch(box::overlaps) ? 1000 : 0);
    }

    private void standing(TextBox text) {
        texts.add(text);
        aroundTexts.add(text.bounds());
    }

    private void trace(Entity entity) {
        switch (entity) {
            case Entity.Line l -> ink.trace(new Segment.Straight(l.from(), l.to()), scale);
            case Entity.Arc a -> ink.trace(a.bow(), scale);
            case Entity.Circle c -> ink.trace(new Segment.Bow(c.centre(), c.radius(), 0, 2 * Math.PI), scale);
            case Entity.Path p -> {
                p.contours().forEach(c -> c.segments().forEach(s -> ink.trace(s, scale)));
                if (p.fill().hatched()) {
                    p.contours().forEach(c -> ink.hatch(c, scale));
                }
            }
            case Entity.Text t -> standing(t.box(atOrigin()));
            case Entity.Dimension d -> standing(d.text().box(atOrigin()));
        }
    }
}
