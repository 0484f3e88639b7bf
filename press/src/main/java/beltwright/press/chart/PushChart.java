package beltwright.press.chart;

import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity.Text.Anchor;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.quantity.Numbers;
import beltwright.ride.PowerSheet;
import beltwright.ride.Steady;
import java.util.ArrayList;
import java.util.List;

/// The hardest push of a kit over speed, against what the road asks for on level ground and on grades, with the limit
/// that governs named above each stretch of the curve.
public final class PushChart {
    static final double KMH = 3.6; // km/h in a metre each second
    private static final double LEFT = 12;
    private static final double BOTTOM = 13;
    private static final double WIDE = 172;
    private static final double HIGH = 90;
    private static final double RIGHT = 22;
    private static final double HEADROOM = 1.12;
    private static final double NAMED_AT = 0.93; // of the height, where a line that leaves above is named
    private static final int THIN = 4; // of the points of the sheet, enough for the smooth lines of the road

    private PushChart() {}

    /// {@return the chart of a sheet that needs nothing}
    public static Drawing of(PowerSheet sheet) {
        var curve = sheet.curve();
        double[] kmh = speeds(curve);
        double[] push = curve.stream().mapToDouble(Steady.Push::pushN).toArray();
        double most = java.util.Arrays.stream(push).max().orElse(1);
        var y = Plot.Scale.over(0, most * HEADROOM, 6);
        var x = Plot.Scale.over(0, kmh[kmh.length - 1], 8).endingAt(kmh[kmh.length - 1]);
        var spans = spans(curve);
        var sketch = new Sketch();
        var plot = new Plot(sketch, LEFT, BOTTOM, WIDE, HIGH, x, y);
        double height = BOTTOM + HIGH + Plot.above(plot.lanes(spans)) + 3;
        plot.frame("speed, km/h", "push at the tread and what the road asks for, N");
        loads(plot, sheet, kmh, y);
        plot.curve(kmh, push, LineClass.GROUND);
        plot.spans(spans);
        plot.upright(KMH * sheet.board().cruiseMps(), "cruise");
        top(plot, sheet);
        return new Drawing(
                "push-" + sheet.kit().id(),
                "Push over speed",
                tells(sheet, spans),
                LEFT + WIDE + RIGHT,
                height,
                1,
                List.of(new View("push", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    static double[] speeds(List<Steady.Push> points) {
        return points.stream().mapToDouble(p -> KMH * p.speedMps()).toArray();
    }

    /// {@return the stretches over which the same limit governs}
    static List<Plot.Span> spans(List<Steady.Push> points) {
        var spans = new ArrayList<Plot.Span>();
        int first = 0;
        for (int i = 1; i <= points.size(); i++) {
            if (i == points.size()
                    || points.get(i).governs() != points.get(first).governs()) {
                double to = points.get(Math.min(i, points.size() - 1)).speedMps();
                spans.add(new Plot.Span(
                        KMH * points.get(first).speedMps(),
                        KMH * to,
                        points.get(first).governs().toString()));
                first = i;
            }
        }
        spans.removeIf(s -> s.to() <= s.from());
        return spans;
    }

    private static void loads(Plot plot, PowerSheet sheet, double[] kmh, Plot.Scale y) {
        var named = new ArrayList<Plot.Beside>();
        for (var load : sheet.loads()) {
            double[] asks =
                    load.pushN().stream().mapToDouble(Double::doubleValue).toArray();
            if (asks[0] >= y.to()) {
                continue;
            }
            plot.curve(thinned(kmh, THIN), thinned(asks, THIN), LineClass.EDGE);
            var words = load.gradePercent() == 0 ? "level" : Numbers.significant(load.gradePercent(), 3) + " %";
            double last = asks[asks.length - 1];
            if (last <= y.to()) {
                named.add(new Plot.Beside(last, words));
            } else {
                int i = 0;
                while (asks[i + 1] <= NAMED_AT * y.to()) {
                    i++;
                }
                plot.words(kmh[i], asks[i], -1.5, 0.8, words, Anchor.END);
            }
        }
        plot.beside(named);
    }

    private static double[] thinned(double[] all, int every) {
        var few = new ArrayList<Double>();
        for (int i = 0; i < all.length - 1; i += every) {
            few.add(all[i]);
        }
        few.add(all[all.length - 1]);
        return few.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void top(Plot plot, PowerSheet sheet) {
        double kmh = answer(sheet, "top-speed").value().nominal();
        double asks = sheet.board().road().loadN(kmh / KMH, 0);
        if (Double.isFinite(kmh) && kmh > 0) {
            plot.dot(kmh, asks);
            var top = answer(sheet, "top-speed");
            plot.words(kmh, asks, -2.4, 1.6, "top speed " + top.nominal() + " " + top.unit(), Anchor.END);
        }
    }

    private static PowerSheet.Answer answer(PowerSheet sheet, String key) {
        return sheet.answers().stream()
                .filter(a -> a.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static String tells(PowerSheet sheet, List<Plot.Span> spans) {
        var text = new StringBuilder("Hardest push over speed.");
        for (var span : spans) {
            text.append(" From ")
                    .append(Numbers.fixed(span.from(), 0))
                    .append(" to ")
                    .append(Numbers.fixed(span.to(), 0))
                    .append(" km/h ")
                    .append(span.words())
                    .append(" governs.");
        }
        return text + " Top speed " + answer(sheet, "top-speed").text() + ".";
    }
}
