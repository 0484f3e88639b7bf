package beltwright.press.caliper;

import beltwright.part.Kinds;
import beltwright.press.drawing.Bounds;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.View;
import java.util.ArrayList;
import java.util.List;

/// A figure while it is being drawn: rows of views, side by side with their axes at one height.
final class Figure {
    private static final double EDGE = 5; // around the whole figure (mm)
    private static final double BETWEEN = 9; // from view to view (mm)

    private final Kinds kind;
    private final Fields fields;
    private final List<List<Pane>> rows = new ArrayList<>(List.of(new ArrayList<>()));

    Figure(Kinds kind) {
        this.kind = kind;
        fields = new Fields(kind);
    }

    /// A new view, to the right of the one before.
    Pane view() {
        var pane = new Pane(fields);
        rows.getLast().add(pane);
        return pane;
    }

    /// {@return the letter of a field, for the words under a view}
    String letter(String field) {
        return fields.letter(field);
    }

    /// From here on, views stand in a new row below.
    Figure row() {
        rows.add(new ArrayList<>());
        return this;
    }

    /// Puts every view into a row of its own.
    Figure stacked() {
        var panes = rows.stream().flatMap(List::stream).toList();
        rows.clear();
        panes.forEach(pane -> rows.add(List.of(pane)));
        return this;
    }

    Drawing drawing() {
        double width = 0;
        double height = 2 * EDGE + BETWEEN * (rows.size() - 1);
        for (var row : rows) {
            width = Math.max(width, widthOf(row));
            height += reach(row).height();
        }
        var views = new ArrayList<View>();
        double top = height - EDGE;
        for (var row : rows) {
            double left = EDGE + (width - widthOf(row)) / 2;
            for (var pane : row) {
                var covers = pane.bounds();
                var by = new Point(left - covers.left(), top - reach(row).top());
                views.add(new View("measure-" + (views.size() + 1), pane.entities(), new Placing(1, by), null));
                left += covers.width() + BETWEEN;
            }
            top -= reach(row).height() + BETWEEN;
        }
        return new Drawing(
                "measure-" + kind.words().replace(' ', '-'),
                "Where to measure: " + kind.words(),
                fields.tells(),
                width + 2 * EDGE,
                height,
                1,
                views);
    }

    private static double widthOf(List<Pane> row) {
        return row.stream().mapToDouble(p -> p.bounds().width()).sum() + BETWEEN * (row.size() - 1);
    }

    private static Bounds reach(List<Pane> row) {
        return row.stream().map(Pane::bounds).reduce(Bounds.EMPTY, Bounds::with);
    }
}
