package beltwright.press.chart;

import beltwright.power.Governs;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.quantity.Numbers;
import beltwright.ride.PowerSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// The hardest electric braking over speed, a line for each charge of the pack; the full pack drawn wide.
public final class BrakeChart {
    private static final double LEFT = 12;
    private static final double BOTTOM = 13;
    private static final double WIDE = 116;
    private static final double HIGH = 80;
    private static final double RIGHT = 34;
    private static final double HEADROOM = 1.08;

    private BrakeChart() {}

    /// {@return the chart of a sheet that needs nothing}
    public static Drawing of(PowerSheet sheet) {
        var usual = sheet.braking().stream()
                .min(Comparator.comparingDouble(
                        c -> Math.abs(c.charge() - sheet.board().charge())))
                .orElseThrow();
        double most = sheet.braking().stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(p -> -p.pushN())
                .max()
                .orElse(1);
        double[] kmh = PushChart.speeds(usual.points());
        var x = Plot.Scale.over(0, kmh[kmh.length - 1], 8).endingAt(kmh[kmh.length - 1]);
        var y = Plot.Scale.over(0, Math.max(1, most * HEADROOM), 6);
        var sketch = new Sketch();
        var plot = new Plot(sketch, LEFT, BOTTOM, WIDE, HIGH, x, y);
        var spans = PushChart.spans(usual.points());
        plot.frame("speed, km/h", "braking at the tread, electric brake alone, N");
        var named = new ArrayList<Plot.Beside>();
        for (var curve : sheet.braking()) {
            double[] force =
                    curve.points().stream().mapToDouble(p -> -p.pushN()).toArray();
            plot.curve(kmh, force, curve.charge() == 1 ? LineClass.GROUND : LineClass.EDGE);
            boolean overRun = curve.points().getLast().governs() == Governs.OVER_RUN;
            var words = percent(curve) + (curve.charge() == 1 ? " full" : "") + (overRun ? ", over-run" : "");
            named.add(new Plot.Beside(force[force.length - 1], words));
        }
        plot.beside(named);
        plot.spans(spans);
        plot.upright(PushChart.KMH * sheet.board().cruiseMps(), "cruise");
        return new Drawing(
                "brakes-" + sheet.kit().id(),
                "Braking over speed, by charge",
                "Hardest electric braking over speed for packs of "
                        + String.join(
                                ", ",
                                sheet.braking().stream()
                                        .map(BrakeChart::percent)
                                        .toList())
                        + ". Named above: what holds it back at " + percent(usual) + ".",
                LEFT + WIDE + RIGHT,
                BOTTOM + HIGH + Plot.above(plot.lanes(spans)) + 3,
                1,
                List.of(new View("brakes", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    private static String percent(PowerSheet.BrakeCurve curve) {
        return Numbers.significant(100 * curve.charge(), 3) + " %";
    }
}
