package beltwright.workshop.route;

import beltwright.quantity.Refusal;
import beltwright.ride.Route;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// The points of a road as they are read, one after the other; at the end a route.
///
/// A place that asks for a stop and for a speed becomes two points, the speed a metre behind the stop. Points beyond
/// what a route holds are thinned out: both ends, stops and every change of the wished speed stay, and of the others
/// the
/// lowest and the highest of each of many equal lengths.
final class Road {
    static final double LONGEST_WAIT_S = 86_400;
    static final double SAME_PLACE_M = 0.002; // distances are kept to a millimetre
    private static final double BEHIND_STOP_M = 1;

    private final String name;
    private double[] distance = new double[1024];
    private double[] elevation = new double[1024];
    private double[] speed = new double[1024];
    private double[] wait = new double[1024]; // NaN where nobody stops
    private int size;
    private int read;

    /// @param name of what is read, in messages
    Road(String name) {
        this.name = name;
    }

    /// @param speedKmh wished for from here on; NaN leaves it open
    /// @param stopS how long a stop here lasts; NaN for none
    void add(double distanceM, double elevationM, double speedKmh, double stopS) {
        read++;
        if (size > 0 && distanceM - distance[size - 1] < SAME_PLACE_M) {
            merge(speedKmh, stopS);
            return;
        }
        if (size == distance.length) {
            distance = Arrays.copyOf(distance, 2 * size);
            elevation = Arrays.copyOf(elevation, 2 * size);
            speed = Arrays.copyOf(speed, 2 * size);
            wait = Arrays.copyOf(wait, 2 * size);
        }
        distance[size] = distanceM;
        elevation[size] = elevationM;
        speed[size] = speedKmh;
        wait[size] = stopS;
        size++;
    }

    /// Notes a point at the place of the one before.
    void addHere(double speedKmh, double stopS) {
        read++;
        merge(speedKmh, stopS);
    }

    /// Says how fast to go on from the last point.
    void wish(double speedKmh) {
        merge(speedKmh, Double.NaN);
    }

    private void merge(double speedKmh, double stopS) {
        if (!Double.isNaN(speedKmh)) {
            speed[size - 1] = speedKmh;
        }
        if (!Double.isNaN(stopS)) {
            wait[size - 1] = Double.isNaN(wait[size - 1]) ? stopS : wait[size - 1] + stopS;
        }
    }

    boolean isEmpty() {
        return size == 0;
    }

    double lengthM() {
        return size == 0 ? 0 : distance[size - 1];
    }

    double lastElevationM() {
        return elevation[size - 1];
    }

    Route route(RouteFiles.About about, List<String> remarks) {
        if (size < 2) {
            throw new Refusal(
                    name,
                    read < 2
                            ? "holds " + (read == 0 ? "no point" : "1 point")
                            : "has no length: its " + read + " points are all at one place",
                    "2 points or more, at different places",
                    "give at least start and end");
        }
        var said = new ArrayList<String>();
        if (!about.note().isBlank()) {
            said.add(about.note());
        }
        said.addAll(remarks);
        if (read > size) {
            int merged = read - size;
            said.add(merged + (merged == 1 ? " point" : " points") + " at the place of the one before merged with it");
        }
        var points = points();
        if (points.size() > Route.MOST_POINTS) {
            points = thinned(points);
            said.add("thinned from " + read + " points");
        }
        return new Route(about.id(), about.name(), about.invented(), String.join("; ", said), about.source(), points);
    }

    private List<Route.Point> points() {
        var points = new ArrayList<Route.Point>(size);
        for (int i = 0; i < size; i++) {
            boolean stop = !Double.isNaN(wait[i]);
            double at = rounded(distance[i] - distance[0]);
            points.add(new Route.Point(at, rounded(elevation[i]), stop ? 0 : speed[i], stop ? capped(wait[i]) : 0));
            if (stop && !Double.isNaN(speed[i]) && i + 1 < size) {
                double gap = distance[i + 1] - distance[i];
                double on = Math.min(BEHIND_STOP_M, gap / 2);
                double rise = (elevation[i + 1] - elevation[i]) * on / gap;
                points.add(new Route.Point(rounded(at + on), rounded(elevation[i] + rise), speed[i], 0));
            }
        }
        return points;
    }

    private double capped(double seconds) {
        if (seconds > LONGEST_WAIT_S) {
            throw new Refusal(
                    name,
                    "waits " + seconds + " s at one place",
                    "at most " + LONGEST_WAIT_S + " s",
                    "shorten the stop");
        }
        return seconds;
    }

    private static double rounded(double metres) {
        return Math.rint(metres * 1000) / 1000;
    }

    private List<Route.Point> thinned(List<Route.Point> all) {
        boolean[] stay = new boolean[all.size()];
        int kept = 0;
        for (int i = 0; i < stay.length; i++) {
            stay[i] = i == 0
                    || i == stay.length - 1
                    || all.get(i).stop()
                    || Double.compare(all.get(i).speedKmh(), all.get(i - 1).speedKmh()) != 0;
            kept += stay[i] ? 1 : 0;
        }
        if (kept > Route.MOST_POINTS) {
            throw new Refusal(
                    name,
                    "has " + kept + " stops and changes of speed, which cannot be thinned out",
                    "at most " + Route.MOST_POINTS + " points",
                    "cut the route in two, or take wishes out");
        }
        int lengths = (Route.MOST_POINTS - kept) / 2;
        int[] lowest = new int[lengths];
        int[] highest = new int[lengths];
        Arrays.fill(lowest, -1);
        Arrays.fill(highest, -1);
        double each = all.getLast().distanceM() / Math.max(lengths, 1);
        for (int i = 0; i < stay.length && lengths > 0; i++) {
            if (!stay[i]) {
                int at = (int) Math.min(lengths - 1.0, all.get(i).distanceM() / each);
                double height = all.get(i).elevationM();
                lowest[at] = lowest[at] < 0 || height < all.get(lowest[at]).elevationM() ? i : lowest[at];
                highest[at] = highest[at] < 0 || height > all.get(highest[at]).elevationM() ? i : highest[at];
            }
        }
        for (int at = 0; at < lengths; at++) {
            if (lowest[at] >= 0) {
                stay[lowest[at]] = true;
                stay[highest[at]] = true;
            }
        }
        var thinned = new ArrayList<Route.Point>();
        for (int i = 0; i < stay.length; i++) {
            if (stay[i]) {
                thinned.add(all.get(i));
            }
        }
        return thinned;
    }
}
