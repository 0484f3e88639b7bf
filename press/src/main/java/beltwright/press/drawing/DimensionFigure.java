package beltwright.press.drawing;

import java.util.ArrayList;
import java.util.List;

/// The lines and arrow heads of one dimension: witness lines with a gap and an overshoot, the dimension line, two
/// arrows.
public record DimensionFigure(List<Segment.Straight> lines, List<Contour> arrows) {
    static final double GAP = 1; // from the point to its witness line (mm on the sheet)
    static final double OVERSHOOT = 1.5; // of the witness line past the dimension line (mm on the sheet)
    public static final double ARROW = 2.5; // length of an arrow head (mm on the sheet)
    private static final double ARROW_HALF = 0.42; // half its width (mm on the sheet)

    public DimensionFigure {
        lines = List.copyOf(lines);
        arrows = List.copyOf(arrows);
    }

    /// @param scale mm on the sheet for one real mm
    public static DimensionFigure of(Entity.Dimension d, double scale) {
        var lines = new ArrayList<Segment.Straight>();
        witness(d.from(), d.lineFrom(), scale, lines);
        witness(d.to(), d.lineTo(), scale, lines);
        var along = d.lineTo().minus(d.lineFrom()).unit();
        var arrow = along.times(ARROW / scale);
        var start = d.lineFrom();
        var end = d.lineTo();
        if (d.outside()) {
            start = start.minus(arrow.times(2)).minus(along.times(Math.max(0, -d.tail()) / scale));
            end = end.plus(arrow.times(2)).plus(along.times(Math.max(0, d.tail()) / scale));
        }
        lines.add(new Segment.Straight(start, end));
        var inward = d.outside() ? arrow.times(-1) : arrow;
        return new DimensionFigure(lines, List.of(head(d.lineFrom(), inward), head(d.lineTo(), inward.times(-1))));
    }

    private static void witness(Point point, Point line, double scale, List<Segment.Straight> lines) {
        double length = point.distance(line);
        if (length * scale > GAP) {
            var along = line.minus(point).unit();
            lines.add(new Segment.Straight(
                    point.plus(along.times(GAP / scale)), line.plus(along.times(OVERSHOOT / scale))));
        }
    }

    /// {@return an arrow head}
    ///
    /// @param shaft from the tip to the foot of the head
    public static Contour head(Point tip, Point shaft) {
        var foot = tip.plus(shaft);
        var aside = shaft.left().times(ARROW_HALF / ARROW);
        return Contour.polygon(tip, foot.plus(aside), foot.minus(aside));
    }
}
