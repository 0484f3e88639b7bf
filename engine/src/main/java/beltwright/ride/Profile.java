package beltwright.ride;

import beltwright.quantity.Refusal;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialFunction;

/// A route as a ride needs it: a smooth height, and the speed that the rider allows at every metre.
///
/// Recorded heights jump from point to point, and a jump is a slope. Heights are therefore averaged twice over a
/// stretch
/// of road, then joined by Akima's curve, which does not overshoot at a bend.
///
/// - Source: H. Akima, _J. ACM_ 17 (1970) 589, as implemented by the numeric library; running mean, common practice.
/// - Valid: slopes up to 60 %.
/// - Neglects: bends; a hill shorter than the averaged stretch is flattened.
public final class Profile {
    public static final double STEEPEST = 0.6;

    private static final double FINEST_M = 5;
    private static final int MOST_KNOTS = 20_000;
    private static final int FEWEST_FOR_AKIMA = 5;

    private final Route route;
    private final double[] at;
    private final PolynomialFunction[] height;
    private final double[] knotAt;
    private final double[] knotSquared;
    private final double[] limit;
    private final double brakingMps2;
    private int segment;
    private int knot;

    /// @param smoothM stretch of road over which heights are averaged (m); 0 takes them as they are
    /// @param cruiseMps speed where the route leaves it to the rider (m/s)
    /// @param brakingMps2 how hard the rider likes to brake ahead of a slower stretch (m/s²)
    public Profile(Route route, double smoothM, double cruiseMps, double brakingMps2) {
        if (!(smoothM >= 0 && smoothM <= 1000)) {
            throw new Refusal("smooth", smoothM + " m", "0 to 1000 m, 0 for heights as they are", "give another");
        }
        if (!(cruiseMps > 0) || !(brakingMps2 > 0)) {
            throw new Refusal(
                    "rider",
                    "speed " + cruiseMps + " m/s, braking " + brakingMps2 + " m/s²",
                    "above zero",
                    "give others");
        }
        this.route = route;
        this.brakingMps2 = brakingMps2;
        double[] x = route.points().stream().mapToDouble(Route.Point::distanceM).toArray();
        double[] h =
                route.points().stream().mapToDouble(Route.Point::elevationM).toArray();
        if (smoothM > 0) {
            double step = Math.max(Math.min(FINEST_M, smoothM / 4), route.lengthM() / MOST_KNOTS);
            int n = Math.max(FEWEST_FOR_AKIMA, (int) Math.ceil(route.lengthM() / step) + 1);
            var grid = new double[n];
            for (int i = 0; i < n; i++) {
                grid[i] = route.lengthM() * i / (n - 1);
            }
            var lined = onGrid(grid, x, h);
            int half = (int) Math.round(smoothM / 2 / (route.lengthM() / (n - 1)));
            at = grid;
            h = averaged(averaged(lined, half), half);
        } else if (x.length < FEWEST_FOR_AKIMA) {
            at = spread(x);
            h = onGrid(at, x, h);
        } else {
            at = x;
        }
        height = new AkimaSplineInterpolator().interpolate(at, h).getPolynomials();
        steepness();
        int n = route.points().size();
        knotAt = x;
        knotSquared = new double[n];
        limit = new double[n];
        envelope(cruiseMps, n);
    }

    /// The same points with one more between each two, until there are enough for a curve.
    private static double[] spread(double[] x) {
        var wider = x;
        while (wider.length < FEWEST_FOR_AKIMA) {
            var next = new double[2 * wider.length - 1];
            for (int i = 0; i < wider.length; i++) {
                next[2 * i] = wider[i];
                if (i > 0) {
                    next[2 * i - 1] = (wider[i - 1] + wider[i]) / 2;
                }
            }
            wider = next;
        }
        return wider;
    }

    private static double[] onGrid(double[] grid, double[] x, double[] h) {
        var on = new double[grid.length];
        int j = 1;
        for (int i = 0; i < grid.length; i++) {
            while (j < x.length - 1 && x[j] < grid[i]) {
                j++;
            }
            double t = (grid[i] - x[j - 1]) / (x[j] - x[j - 1]);
            on[i] = h[j - 1] + Math.clamp(t, 0, 1) * (h[j] - h[j - 1]);
        }
        return on;
    }

    /// Running mean; near the ends over the shorter stretch that is there on both sides, so the ends stay as they are.
    private static double[] averaged(double[] h, int half) {
        var sums = new double[h.length + 1];
        for (int i = 0; i < h.length; i++) {
            sums[i + 1] = sums[i] + h[i];
        }
        var mean = new double[h.length];
        for (int i = 0; i < h.length; i++) {
            int k = Math.min(half, Math.min(i, h.length - 1 - i));
            mean[i] = (sums[i + k + 1] - sums[i - k]) / (2 * k + 1);
        }
        return mean;
    }

    private void steepness() {
        for (int i = 0; i < at.length; i++) {
            if (Math.abs(sine(at[i])) > STEEPEST) {
                throw new Refusal(
                        route.id(),
                        "slope of " + Math.round(100 * sine(at[i])) + " % at " + Math.round(at[i]) + " m",
                        "at most " + Math.round(100 * STEEPEST) + " %",
                        "look at the heights there, or average them over a longer stretch");
            }
        }
    }

    /// Speeds that can be slowed down from in time: backwards from the end.
    private void envelope(double cruiseMps, int n) {
        for (int i = 0; i < n; i++) {
            double wish = route.points().get(i).speedKmh() / 3.6;
            limit[i] = Double.isNaN(wish) || wish == 0 ? cruiseMps : wish;
        }
        for (int i = n - 1; i >= 0; i--) {
            boolean stop = route.points().get(i).stop();
            double here = i == n - 1 ? (i > 0 ? limit[i - 1] : limit[i]) : limit[i];
            double before = i == 0 ? here : Math.min(here, limit[i - 1]);
            double squared = stop && i > 0 ? 0 : before * before;
            if (i < n - 1) {
                squared = Math.min(squared, knotSquared[i + 1] + 2 * brakingMps2 * (knotAt[i + 1] - knotAt[i]));
            }
            knotSquared[i] = squared;
        }
    }

    public Route route() {
        return route;
    }

    public double lengthM() {
        return route.lengthM();
    }

    private PolynomialFunction curve(double distanceM) {
        int i = Math.min(segment, height.length - 1);
        while (i > 0 && distanceM < at[i]) {
            i--;
        }
        while (i < height.length - 1 && distanceM >= at[i + 1]) {
            i++;
        }
        segment = i;
        return height[i];
    }

    /// {@return height above the sea (m)}
    public double elevationM(double distanceM) {
        double x = Math.clamp(distanceM, 0, lengthM());
        var curve = curve(x);
        return curve.value(x - at[segment]);
    }

    /// {@return sine of the slope: metres up for each metre along the road}
    public double sine(double distanceM) {
        double x = Math.clamp(distanceM, 0, lengthM());
        var c = curve(x).getCoefficients();
        double t = x - at[segment];
        double slope = 0;
        for (int k = c.length - 1; k > 0; k--) {
            slope = slope * t + k * c[k];
        }
        return slope;
    }

    /// The speed that the rider allows here, and how it changes along the road.
    ///
    /// @param out speed (m/s) and the slowing down that it asks for at that speed (m/s², zero or less)
    void allowed(double distanceM, double[] out) {
        double x = Math.clamp(distanceM, 0, lengthM());
        int i = knot;
        while (i > 0 && x < knotAt[i]) {
            i--;
        }
        while (i < knotAt.length - 2 && x >= knotAt[i + 1]) {
            i++;
        }
        knot = i;
        double ahead = knotSquared[i + 1] + 2 * brakingMps2 * (knotAt[i + 1] - x);
        double wish = limit[i] * limit[i];
        if (ahead < wish) {
            out[0] = Math.sqrt(Math.max(0, ahead));
            out[1] = -brakingMps2;
        } else {
            out[0] = limit[i];
            out[1] = 0;
        }
    }
}
