package beltwright.ride;

import beltwright.quantity.Refusal;
import java.util.List;

/// A way to ride, as it was recorded or drawn: how high the road is after so many metres, and how fast one wants to go.
///
/// @param source where it was read: "measured, ...", "estimate, ..."
/// @param points at least two, from distance 0 on, each further than the one before
public record Route(String id, String name, boolean invented, String note, String source, List<Point> points) {
    public static final double LONGEST_M = 1_000_000;
    public static final double LOWEST_M = -500;
    public static final double HIGHEST_M = 9000;
    public static final double FASTEST_KMH = 120;
    public static final int MOST_POINTS = 50_000;

    /// One point of the road.
    ///
    /// @param distanceM from the start, along the road
    /// @param elevationM above the sea
    /// @param speedKmh wished for from here to the next point; 0 asks for a stop here, NaN leaves it to the rider
    /// @param waitS how long a stop lasts; 0 elsewhere
    public record Point(double distanceM, double elevationM, double speedKmh, double waitS) {
        public boolean stop() {
            return speedKmh == 0;
        }
    }

    public Route {
        points = List.copyOf(points);
        if (points.size() < 2 || points.size() > MOST_POINTS) {
            throw new Refusal(
                    id + ".points",
                    "has " + points.size() + (points.size() == 1 ? " point" : " points"),
                    "2 to " + MOST_POINTS + " points",
                    "give at least start and end, or thin the points out");
        }
        if (points.getFirst().distanceM() != 0) {
            throw at(id, 0, "distance " + points.getFirst().distanceM() + " m", "0 m at the first point");
        }
        for (int i = 0; i < points.size(); i++) {
            var p = points.get(i);
            if (i > 0 && !(p.distanceM() > points.get(i - 1).distanceM())) {
                throw at(id, i, "distance " + p.distanceM() + " m", "further than the point before");
            }
            if (!(p.distanceM() <= LONGEST_M)) {
                throw at(id, i, "distance " + p.distanceM() + " m", "at most " + LONGEST_M + " m");
            }
            if (!(p.elevationM() >= LOWEST_M && p.elevationM() <= HIGHEST_M)) {
                throw at(id, i, "elevation " + p.elevationM() + " m", LOWEST_M + " to " + HIGHEST_M + " m");
            }
            if (p.speedKmh() < 0 || p.speedKmh() > FASTEST_KMH) {
                throw at(id, i, "speed " + p.speedKmh() + " km/h", "0 to " + FASTEST_KMH + " km/h, 0 for a stop");
            }
            if (!(p.waitS() >= 0 && p.waitS() <= 86_400)) {
                throw at(id, i, "wait " + p.waitS() + " s", "0 to 86400 s");
            }
            if (p.waitS() > 0 && !p.stop()) {
                throw at(id, i, "wait " + p.waitS() + " s without a stop", "speed 0 where the board waits");
            }
        }
    }

    public double lengthM() {
        return points.getLast().distanceM();
    }

    private static Refusal at(String id, int i, String wrong, String allowed) {
        return new Refusal(id + ".points[" + (i + 1) + "]", wrong, allowed, "correct this point");
    }
}
