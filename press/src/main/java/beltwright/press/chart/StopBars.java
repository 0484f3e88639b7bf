package beltwright.press.chart;

import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity.Text.Anchor;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.quantity.Numbers;
import beltwright.ride.PowerSheet;
import java.util.List;

/// The way to a stop from cruise as bars to one scale: open while the rider reacts, filled while the brake works under
/// a
/// rider who leans back, hatched the rest of the way under one who stands stiff and upright.
public final class StopBars {
    private static final double LEFT = 58;
    private static final double WIDE = 80;
    private static final double ROW = 10;
    private static final double BAR = 4;
    private static final double BOTTOM = 13;
    private static final double RIGHT = 16;

    private StopBars() {}

    /// {@return the chart of a sheet that needs nothing}
    public static Drawing of(PowerSheet sheet) {
        double most = sheet.left().stream()
                .mapToDouble(r -> r.stop().wholeM())
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        var x = Plot.Scale.over(0, most, 4);
        double high = ROW * sheet.left().size() + 2;
        var sketch = new Sketch();
        var plot = new Plot(sketch, LEFT, BOTTOM, WIDE, high, x, new Plot.Scale(0, 1, 2));
        plot.across("metres from the moment the rider sees the need");
        double y = BOTTOM + high - ROW / 2 - 1;
        var tells = new StringBuilder();
        for (var row : sheet.left()) {
            var stop = row.stop();
            double bite = plot.px(stop.reactionM());
            double end = plot.px(stop.wholeM());
            double leaning = Math.min(end, plot.px(row.leaningBack().wholeM()));
            sketch.text(new Point(LEFT - 3, y - 1.1), row.what(), Plot.LETTERS, Anchor.END);
            sketch.rectangle(LEFT, y - BAR / 2, bite, y + BAR / 2, LineClass.EDGE, Fill.PAPER);
            sketch.rectangle(bite, y - BAR / 2, leaning, y + BAR / 2, LineClass.EDGE, Fill.INK);
            if (end - leaning > 0.3) {
                sketch.rectangle(leaning, y - BAR / 2, end, y + BAR / 2, LineClass.EDGE, Fill.STEEL);
            }
            var metres = Numbers.fixed(stop.wholeM(), 1) + " m";
            sketch.text(new Point(end + 2, y - 1.1), metres, Plot.LETTERS, Anchor.START);
            tells.append(' ').append(row.what()).append(": ").append(metres).append('.');
            y -= ROW;
        }
        return new Drawing(
                "stops-" + sheet.kit().id(),
                "Way to a stop from "
                        + Numbers.significant(PushChart.KMH * sheet.board().cruiseMps(), 3) + " km/h",
                "Way to a stop, reaction included, rider stiff and upright." + tells,
                LEFT + WIDE + RIGHT,
                BOTTOM + high + 3,
                1,
                List.of(new View("stops", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }
}
