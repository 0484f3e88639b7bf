package beltwright.workshop.route;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.ride.GreatCircle;
import beltwright.ride.Route;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// Recorded places, one after the other: how far each is from the last along the road, its rise included.
///
/// Places less than half a metre apart on the map are one: a receiver that stands still wanders, and the noise of its
/// elevation would be a wall.
final class Trail {
    static final double WIDEST_GAP_M = 300;
    static final double LONGEST_STEP_M = 5000;
    static final double FASTEST_MPS = 60;
    private static final double SAME_PLACE_M = 0.5;
    private static final int MOST_NAMED = 8;

    private final String file;
    private final Road road;
    private final List<String> withoutElevation = new ArrayList<>();
    private int missing;
    private String lastWhere = "";
    private double lastLatitude;
    private double lastLongitude;
    private double seenLatitude;
    private double seenLongitude;
    private @Nullable Instant lastTime;
    private @Nullable Instant seenTime;

    Trail(String file, Road road) {
        this.file = file;
        this.road = road;
    }

    /// @param where the line or the number of the point
    /// @param elevationM NaN where there is none
    /// @param time when it was there, if that is known
    void add(
            String where,
            double latitude,
            double longitude,
            double elevationM,
            @Nullable Instant time,
            double speedKmh,
            double stopS) {
        within(where, "latitude", latitude, -90, 90, "°");
        within(where, "longitude", longitude, -180, 180, "°");
        if (Double.isNaN(elevationM)) {
            missing++;
            if (withoutElevation.size() < MOST_NAMED) {
                withoutElevation.add(where);
            }
            return;
        }
        within(where, "elevation", elevationM, Route.LOWEST_M, Route.HIGHEST_M, " m");
        if (!lastWhere.isEmpty()) {
            step(where, GreatCircle.distanceM(seenLatitude, seenLongitude, latitude, longitude), time);
        }
        place(latitude, longitude, elevationM, speedKmh, stopS);
        lastWhere = where;
        seenLatitude = latitude;
        seenLongitude = longitude;
        seenTime = time;
        lastTime = time == null ? lastTime : time;
    }

    private void place(double latitude, double longitude, double elevationM, double speedKmh, double stopS) {
        double flat = road.isEmpty() ? 0 : GreatCircle.distanceM(lastLatitude, lastLongitude, latitude, longitude);
        if (!road.isEmpty() && flat < SAME_PLACE_M) {
            road.addHere(speedKmh, stopS);
            return;
        }
        double rise = road.isEmpty() ? 0 : elevationM - road.lastElevationM();
        road.add(road.lengthM() + GreatCircle.slopeM(flat, rise), elevationM, speedKmh, stopS);
        lastLatitude = latitude;
        lastLongitude = longitude;
        if (road.lengthM() > Route.LONGEST_M) {
            throw new Refusal(
                    file + ": " + lastWhere,
                    "the route is longer than " + Numbers.plain(Route.LONGEST_M / 1000) + " km here",
                    "at most that",
                    "cut it in two");
        }
    }

    private void step(String where, double metres, @Nullable Instant time) {
        if (time != null && lastTime != null && time.isBefore(lastTime)) {
            throw new Refusal(
                    file + ": " + where,
                    "its time " + time + " is before " + lastTime + ", the last one before it",
                    "times that do not run backwards",
                    "sort the points, or take this one out");
        }
        // Times are often whole seconds: what took less counts as one.
        double seconds = time == null || seenTime == null
                ? Double.NaN
                : Math.max(1, Duration.between(seenTime, time).toMillis() / 1000.0);
        if (metres > LONGEST_STEP_M) {
            throw new Refusal(
                    file + ": " + where,
                    "jumps " + Numbers.significant(metres / 1000, 3) + " km from " + lastWhere,
                    "steps up to " + Numbers.plain(WIDEST_GAP_M) + " m",
                    "take this point out, or cut the route here");
        }
        if (metres / seconds > FASTEST_MPS) {
            throw new Refusal(
                    file + ": " + where,
                    "jumps " + Numbers.significant(metres, 3) + " m from " + lastWhere + " in "
                            + Numbers.significant(seconds, 3) + " s, " + Numbers.significant(metres / seconds, 3)
                            + " m/s",
                    "steps up to " + Numbers.plain(FASTEST_MPS) + " m/s",
                    "take this point out");
        }
        if (metres > WIDEST_GAP_M) {
            throw new Refusal(
                    file + ": " + where,
                    "is " + Numbers.significant(metres, 3) + " m from " + lastWhere + ": a gap in the record",
                    "gaps up to " + Numbers.plain(WIDEST_GAP_M) + " m",
                    "add points between them, or cut the route here");
        }
    }

    private void within(String where, String what, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new Refusal(
                    file + ": " + where,
                    what + " " + (Double.isNaN(value) ? "is no number" : Numbers.plain(value) + unit),
                    Numbers.plain(least) + " to " + Numbers.plain(most) + unit,
                    "correct this point, or take it out");
        }
    }

    /// @throws Refusal if an elevation was missing anywhere
    void end() {
        if (missing > 0) {
            var more = missing > withoutElevation.size() ? " and more" : "";
            throw new Refusal(
                    file,
                    missing + (missing == 1 ? " point has" : " points have") + " no elevation: "
                            + String.join(", ", withoutElevation) + more,
                    "an elevation (m) at every point",
                    "record it again with elevation, let a map program fill it in, or take these points out");
        }
    }
}
