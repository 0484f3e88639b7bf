package beltwright.press.chart;

import beltwright.press.drawing.Contour;
import beltwright.press.drawing.Entity;
import beltwright.press.drawing.Entity.Text.Anchor;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.Tag;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// A field of a chart with its two scales: what is drawn in it is given in its own units and cut off at its edges.
final class Plot {
    static final double SMALL = 2.8; // letters (mm on the sheet)
    static final double LETTERS = 3.2;
    private static final double LETTER_WIDE = 0.52; // of a letter, as a share of its size, on the average
    private static final double LANE = 4.6; // between two rows of words (mm on the sheet)
    private static final double APART = 3.8; // least distance between two words at the edge (mm on the sheet)

    private final Sketch sketch;
    private final double left;
    private final double bottom;
    private final double wide;
    private final double high;
    private final Scale x;
    private final Scale y;

    /// From where to where a scale goes, and how far apart its marks are.
    record Scale(double from, double to, double step) {
        /// {@return a scale that begins and ends on a mark, with about so many of them}
        static Scale over(double from, double to, int marks) {
            double rough = Math.max(to - from, 1e-9) / marks;
            double ten = Math.pow(10, Math.floor(Math.log10(rough)));
            double step = 10 * ten;
            for (double nice : new double[] {1, 2, 5}) {
                if (nice * ten >= rough * 0.999) {
                    step = nice * ten;
                    break;
                }
            }
            return new Scale(Math.floor(from / step + 1e-9) * step, Math.ceil(to / step - 1e-9) * step, step);
        }

        /// {@return the same marks, ending between two of them}
        Scale endingAt(double other) {
            return new Scale(from, other, step);
        }

        /// {@return the same marks, beginning between two of them}
        Scale from(double other) {
            return new Scale(other, to, step);
        }

        /// {@return the first mark}
        double first() {
            return Math.ceil(from / step - 1e-9) * step;
        }

        double share(double value) {
            return (value - from) / (to - from);
        }
    }

    Plot(Sketch sketch, double left, double bottom, double wide, double high, Scale x, Scale y) {
        this.sketch = sketch;
        this.left = left;
        this.bottom = bottom;
        this.wide = wide;
        this.high = high;
        this.x = x;
        this.y = y;
    }

    double px(double value) {
        return left + wide * x.share(value);
    }

    double py(double value) {
        return bottom + high * y.share(value);
    }

    double top() {
        return bottom + high;
    }

    double right() {
        return left + wide;
    }

    /// The edge of the field, and marks with their numbers along both scales.
    void frame(String xWords, String yWords) {
        for (double v = y.first(); v <= y.to() + y.step() * 1e-6; v += y.step()) {
            if (v > y.from() && py(v) < top() - 1e-6) {
                hair(left, py(v), right(), py(v));
            }
            sketch.line(left - 1.5, py(v), left, py(v), LineClass.DIMENSION);
            sketch.text(new Point(left - 2.5, py(v) - 1), said(v, y.step()), SMALL, Anchor.END);
        }
        for (double v = x.first(); v <= x.to() + x.step() * 1e-6; v += x.step()) {
            sketch.line(px(v), bottom - 1.5, px(v), bottom, LineClass.DIMENSION);
            sketch.text(new Point(px(v), bottom - 5), said(v, x.step()), SMALL, Anchor.MIDDLE);
        }
        sketch.rectangle(left, bottom, right(), top(), LineClass.EDGE, Fill.OPEN);
        sketch.text(new Point(right(), bottom - 9.5), xWords, SMALL, Anchor.END);
        sketch.text(new Point(left + 2, top() - 4), yWords, SMALL, Anchor.START);
    }

    private void hair(double x1, double y1, double x2, double y2) {
        sketch.add(new Entity.Line(
                new Point(x1, y1), new Point(x2, y2), LineClass.DIMENSION, Tag.NONE.with(Tag.Emphasis.QUIET)));
    }

    /// The lower scale alone, with a fine line up from every mark.
    void across(String words) {
        for (double v = x.first(); v <= x.to() + x.step() * 1e-6; v += x.step()) {
            hair(px(v), bottom - 1.5, px(v), top());
            sketch.text(new Point(px(v), bottom - 5), said(v, x.step()), SMALL, Anchor.MIDDLE);
        }
        sketch.text(new Point(right(), bottom - 9.5), words, SMALL, Anchor.END);
    }

    private static String said(double value, double step) {
        return Numbers.fixed(value, (int) Math.clamp(Math.ceil(-Math.log10(step) - 1e-9), 0, 3));
    }

    /// A line through these points, cut off at the edges of the field.
    void curve(double[] xs, double[] ys, LineClass line) {
        for (int i = 1; i < xs.length; i++) {
            piece(xs[i - 1], ys[i - 1], xs[i], ys[i], line);
        }
    }

    private void piece(double x1, double y1, double x2, double y2, LineClass line) {
        double from = 0;
        double to = 1;
        double[][] edges = {{x2 - x1, x.from() - x1, x.to() - x1}, {y2 - y1, y.from() - y1, y.to() - y1}};
        for (var edge : edges) {
            if (edge[0] == 0) {
                if (edge[1] > 0 || edge[2] < 0) {
                    return;
                }
                continue;
            }
            double a = edge[1] / edge[0];
            double b = edge[2] / edge[0];
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        }
        if (from < to) {
            sketch.line(
                    px(x1 + from * (x2 - x1)),
                    py(y1 + from * (y2 - y1)),
                    px(x1 + to * (x2 - x1)),
                    py(y1 + to * (y2 - y1)),
                    line);
        }
    }

    /// The ground under a line, tinted.
    void ground(double[] xs, double[] ys) {
        var corners = new ArrayList<Point>();
        corners.add(new Point(px(xs[0]), bottom));
        for (int i = 0; i < xs.length; i++) {
            corners.add(new Point(px(xs[i]), py(ys[i])));
        }
        corners.add(new Point(px(xs[xs.length - 1]), bottom));
        sketch.path(Contour.polygon(corners.toArray(Point[]::new)), LineClass.EDGE, Fill.TINT);
    }

    /// The whole height of the field, tinted from here to there; at least a hair wide.
    void tint(double from, double to) {
        double a = px(from);
        sketch.rectangle(a, bottom, Math.max(px(to), a + 0.4), top(), LineClass.DIMENSION, Fill.TINT);
    }

    void dot(double xAt, double yAt) {
        sketch.circle(new Point(px(xAt), py(yAt)), 1.1, LineClass.EDGE, Fill.PAPER);
    }

    void words(double xAt, double yAt, double right, double up, String words, Anchor anchor) {
        sketch.text(new Point(px(xAt) + right, py(yAt) + up), words, LETTERS, anchor);
    }

    /// A line across the field at one place of the lower scale, named at its foot.
    void upright(double at, String words) {
        sketch.line(px(at), bottom, px(at), top() - 7, LineClass.PHANTOM);
        sketch.text(new Point(px(at) + 1.4, bottom + 2.2), words, SMALL, Anchor.START);
    }

    /// Words beside the right edge, each at the height of its line, pushed apart where they would run into each other.
    void beside(List<Beside> all) {
        var sorted =
                all.stream().sorted(Comparator.comparingDouble(Beside::value)).toList();
        double last = Double.NEGATIVE_INFINITY;
        for (var one : sorted) {
            double at = py(one.value());
            double put = Math.max(at, last + APART);
            last = put;
            sketch.line(right(), at, right() + 4, put, LineClass.DIMENSION);
            sketch.text(new Point(right() + 5, put - 1.1), one.words(), LETTERS, Anchor.START);
        }
    }

    /// Words at the height of a value.
    record Beside(double value, String words) {}

    /// From where to where something holds, and its words.
    record Span(double from, double to, String words) {}

    /// {@return how many rows of words these spans need above the field}
    int lanes(List<Span> spans) {
        return 1 + (int) spans.stream().filter(s -> !fits(s)).count();
    }

    private boolean fits(Span span) {
        return px(span.to()) - px(span.from()) > 3 + span.words().length() * LETTERS * LETTER_WIDE;
    }

    /// Spans above the field as a row of dimensions; words that have no room there stand in a row of their own above,
    /// stepped so that no leader crosses words.
    void spans(List<Span> spans) {
        double y0 = top() + 4;
        int early = (int) spans.stream().filter(s -> !fits(s) && !late(s)).count();
        int down = early;
        int up = early + 1;
        for (var span : spans) {
            double a = px(span.from());
            double b = px(span.to());
            hair(a, bottom, a, y0);
            sketch.line(a, y0 - 1.5, a, y0 + 1.5, LineClass.DIMENSION);
            sketch.line(b, y0 - 1.5, b, y0 + 1.5, LineClass.DIMENSION);
            sketch.line(a, y0, b, y0, LineClass.DIMENSION);
            double middle = (a + b) / 2;
            if (fits(span)) {
                sketch.text(new Point(middle, y0 + 1.4), span.words(), LETTERS, Anchor.MIDDLE);
                continue;
            }
            double y = y0 + 1.4 + LANE * (late(span) ? up++ : down--);
            sketch.line(middle, y0, middle, y + 1, LineClass.DIMENSION);
            sketch.text(
                    new Point(middle + (late(span) ? -1.2 : 1.2), y),
                    span.words(),
                    LETTERS,
                    late(span) ? Anchor.END : Anchor.START);
        }
    }

    /// {@return whether it lies in the right half, so that its words end at it}
    private boolean late(Span span) {
        return px(span.from()) + px(span.to()) > 2 * left + wide;
    }

    /// {@return how much room the rows of words above a field take (mm on the sheet)}
    static double above(int lanes) {
        return 5 + LANE * lanes;
    }
}
