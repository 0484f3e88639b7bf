package beltwright.press.chart;

import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Sketch;
import beltwright.press.drawing.View;
import beltwright.press.table.Ridden;
import beltwright.ride.Channel;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/// A ride on paper: the height of the road, and under it the speed over the same metres. Where a limit governed the
/// first ride, the speed is tinted. A second ride is drawn thin.
public final class RideChart {
    private static final double LEFT = 12;
    private static final double WIDE = 186;
    private static final double RIGHT = 6;
    private static final double BOTTOM = 13;
    private static final double SPEED_HIGH = 46;
    private static final double BETWEEN = 16;
    private static final double ROAD_HIGH = 28;
    private static final double HEADROOM = 1.08;
    private static final int MOST_POINTS = 400;

    private RideChart() {}

    public static Drawing of(List<Ridden> rides) {
        var first = rides.getFirst().ride();
        double end = first.route().lengthM();
        var x = Plot.Scale.over(0, end, 8).endingAt(end);
        double fastest = rides.stream()
                .flatMapToDouble(r -> Arrays.stream(r.ride().of(Channel.SPEED)))
                .max()
                .orElse(1);
        var sketch = new Sketch();
        var speed = new Plot(
                sketch, LEFT, BOTTOM, WIDE, SPEED_HIGH, x, Plot.Scale.over(0, Math.max(1, HEADROOM * fastest), 4));
        first.spans().forEach(s -> speed.tint(s.fromM(), s.toM()));
        speed.frame("distance, m", "speed, km/h");
        for (int i = 0; i < rides.size(); i++) {
            var ride = rides.get(i).ride();
            speed.curve(
                    thinned(ride.of(Channel.DISTANCE)),
                    thinned(ride.of(Channel.SPEED)),
                    i == 0 ? LineClass.OUTLINE : LineClass.EDGE);
        }
        var points = first.route().points();
        double[] metres = points.stream().mapToDouble(p -> p.distanceM()).toArray();
        double[] heights = points.stream().mapToDouble(p -> p.elevationM()).toArray();
        double low = Arrays.stream(heights).min().orElse(0);
        double high = Math.max(low + 1, Arrays.stream(heights).max().orElse(1));
        var road = new Plot(
                sketch, LEFT, BOTTOM + SPEED_HIGH + BETWEEN, WIDE, ROAD_HIGH, x, Plot.Scale.over(low, high, 3));
        road.ground(thinned(metres), thinned(heights));
        road.frame("", "height of the road, m");
        return new Drawing(
                "ride-" + first.kit() + "-" + first.route().id(),
                "Ride over " + first.route().name(),
                "Height of the road and speed over distance. The ride " + first.ending() + ".",
                LEFT + WIDE + RIGHT,
                BOTTOM + SPEED_HIGH + BETWEEN + ROAD_HIGH + 4,
                1,
                List.of(new View("ride", sketch.entities(), new Placing(1, Point.ORIGIN), null)));
    }

    /// Every so many readings, first and last always.
    private static double[] thinned(double[] all) {
        int every = Math.max(1, all.length / MOST_POINTS);
        return IntStream.range(0, all.length)
                .filter(i -> i % every == 0 || i == all.length - 1)
                .mapToDouble(i -> all[i])
                .toArray();
    }
}
