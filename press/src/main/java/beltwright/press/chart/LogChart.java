package beltwright.press.chart;

import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.ride.Calibration;
import beltwright.ride.Log;
import java.util.List;
import java.util.stream.IntStream;

/// A measured ride over its computed one: readings as dots, the computed line through them, and below what is left over
/// on a scale of its own.
public final class LogChart {
    private static final double LEFT = 14;
    private static final double WIDE = 186;
    private static final double RIGHT = 6;
    private static final double BOTTOM = 13;
    private static final double LEFT_OVER_HIGH = 26;
    private static final double BETWEEN = 10;
    private static final double HIGH = 78;
    private static final double HEADROOM = 1.1;
    private static final int MOST_POINTS = 240;

    private LogChart() {}

    public static Drawing of(Calibration.Result result) {
        boolean heat = result.found().getFirst().what().heat();
        var what = heat ? Log.Reading.WINDING : Log.Reading.SPEED;
        int[] some = some(result.rows());
        double[] time = picked(result.log().of(Log.Reading.TIME), some);
        double[] measured = picked(result.log().of(what), some);
        double[] computed = picked(result.computed(), some);
        double[] over = IntStream.range(0, some.length)
                .mapToDouble(i -> measured[i] - computed[i])
                .toArray();
        double most = Math.max(1e-3, largest(over));
        var x = Plot.Scale.over(time[0], time[time.length - 1], 8).from(time[0]).endingAt(time[time.length - 1]);
        var sketch = new Sketch();
        var below = new Plot(
                sketch, LEFT, BOTTOM, WIDE, LEFT_OVER_HIGH, x, Plot.Scale.over(-HEADROOM * most, HEADROOM * most, 3));
        below.frame("time, s", "measured less computed, " + (heat ? "K" : "m/s"));
        dots(sketch, below, time, over);
        double low = Math.min(least(measured), least(computed));
        double high = HEADROOM * Math.max(largest(measured), largest(computed));
        var above = new Plot(
                sketch,
                LEFT,
                BOTTOM + LEFT_OVER_HIGH + BETWEEN,
                WIDE,
                HIGH,
                x,
                Plot.Scale.over(Math.min(low, heat ? low : 0), high, 6));
        above.frame("", what + ", " + what.unit() + "; dots: measured, line: computed");
        dots(sketch, above, time, measured);
        above.curve(time, computed, LineClass.OUTLINE);
        return new Drawing(
                "log-" + result.log().id(),
                "Measured and computed " + what,
                "Measured and computed " + what + " over time, and the difference of the two.",
                LEFT + WIDE + RIGHT,
                BOTTOM + LEFT_OVER_HIGH + BETWEEN + HIGH + 4,
                1,
                List.of(new View("log", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    private static void dots(Sketch sketch, Plot plot, double[] xs, double[] ys) {
        for (int i = 0; i < xs.length; i++) {
            sketch.circle(new Point(plot.px(xs[i]), plot.py(ys[i])), 0.55, LineClass.EDGE, Fill.PAPER);
        }
    }

    private static int[] some(int rows) {
        int every = Math.max(1, rows / MOST_POINTS);
        return IntStream.range(0, rows)
                .filter(i -> i % every == 0 || i == rows - 1)
                .toArray();
    }

    private static double[] picked(List<Double> values, int[] some) {
        return java.util.Arrays.stream(some).mapToDouble(values::get).toArray();
    }

    private static double largest(double[] values) {
        return java.util.Arrays.stream(values).map(Math::abs).max().orElse(1);
    }

    private static double least(double[] values) {
        return java.util.Arrays.stream(values).min().orElse(0);
    }
}
