package beltwright.press.drawing;

/// How much is drawn where on the sheet, counted in squares of one millimetre; it tells free room from crowded.
final class InkGrid {
    private static final double HATCH = 1.5; // from mark to mark in a hatch (mm)

    private final int left;
    private final int bottom;
    private final int width;
    private final int height;
    private final short[] marks;

    /// @param bounds what is drawn, with room around it for what will be (mm on the sheet)
    InkGrid(Bounds bounds) {
        left = (int) Math.floor(bounds.left());
        bottom = (int) Math.floor(bounds.bottom());
        width = (int) Math.ceil(bounds.width()) + 2;
        height = (int) Math.ceil(bounds.height()) + 2;
        marks = new short[width * height];
    }

    void mark(Point p) {
        int x = (int) Math.floor(p.x()) - left;
        int y = (int) Math.floor(p.y()) - bottom;
        if (x >= 0 && x < width && y >= 0 && y < height) {
            marks[y * width + x]++;
        }
    }

    void trace(Segment segment, double scale) {
        switch (segment) {
            case Segment.Straight s -> {
                int steps = (int) Math.ceil(s.from().distance(s.to()) * scale / 2);
                var step = s.to().minus(s.from()).times(1.0 / Math.max(1, steps));
                for (int i = 0; i <= steps; i++) {
                    mark(s.from().plus(step.times(i)).times(scale));
                }
            }
            case Segment.Bow b -> {
                int steps = (int) Math.ceil(Math.abs(b.sweep()) * b.radius() * scale / 2);
                for (int i = 0; i <= steps; i++) {
                    double angle = b.start() + b.sweep() * i / Math.max(1, steps);
                    mark(b.centre().plus(Point.polar(b.radius(), angle)).times(scale));
                }
            }
        }
    }

    /// Marks the inside of an outline, as a hatch does.
    void hatch(Contour outline, double scale) {
        var on = outline.bounds().times(scale);
        for (double y = on.bottom() + HATCH / 2; y < on.top(); y += HATCH) {
            for (double x = on.left() + HATCH / 2; x < on.right(); x += HATCH) {
                var p = new Point(x, y);
                if (outline.holds(p.times(1 / scale))) {
                    mark(p);
                }
            }
        }
    }

    /// {@return the marks within these bounds}
    int in(Bounds b) {
        return in(b, Double.POSITIVE_INFINITY);
    }

    /// {@return the marks within these bounds, counted no further than this many}
    int in(Bounds b, double most) {
        int x1 = Math.clamp((int) Math.floor(b.left()) - left, 0, width);
        int x2 = Math.clamp((int) Math.ceil(b.right()) - left, 0, width);
        int y1 = Math.clamp((int) Math.floor(b.bottom()) - bottom, 0, height);
        int y2 = Math.clamp((int) Math.ceil(b.top()) - bottom, 0, height);
        int sum = 0;
        for (int y = y1; y < y2 && sum < most; y++) {
            for (int x = x1; x < x2; x++) {
                sum += marks[y * width + x];
            }
        }
        return sum;
    }

    /// {@return the marks along a line, its ends left out}
    int along(Point from, Point to) {
        int steps = (int) Math.floor(from.distance(to));
        int sum = 0;
        for (int i = 2; i < steps; i++) {
            var p = from.plus(to.minus(from).times((double) i / steps));
            sum += in(new Bounds(p.x() - 0.5, p.y() - 0.5, p.x() + 0.5, p.y() + 0.5)) > 0 ? 1 : 0;
        }
        return sum;
    }
}
