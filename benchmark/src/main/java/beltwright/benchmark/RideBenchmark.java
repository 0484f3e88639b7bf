package beltwright.benchmark;

import beltwright.quantity.Refusal;
import beltwright.ride.Board;
import beltwright.ride.Channel;
import beltwright.ride.Ride;
import beltwright.ride.RideSolver;
import beltwright.ride.Road;
import beltwright.ride.Route;
import beltwright.workshop.Shelf;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;

/// What a ride costs: one, ten thousand varied ones on one core and on two, and beside the same equations in a
/// general-purpose solver (scipy) at equal error. Prints rows of a table, in processor time, which other work on
/// the machine moves little.
///
/// Arguments: the twin's script, a file with its rides of which the first is this one, the Python to run it with;
/// none of them leaves the twin out.
public final class RideBenchmark {
    private static final String KIT = "steep-street";
    private static final String ROUTE = "mill-hill";
    private static final int MANY = Integer.getInteger("rides.many", 10_000);
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final RideSolver.Options USUAL = RideSolver.Options.USUAL;

    private final Board board;
    private final Route route;

    private RideBenchmark(Shelf shelf) {
        board = Board.of(shelf.kit(KIT));
        route = shelf.route(ROUTE);
    }

    public static void main(String[] args) throws Exception {
        var demo = Path.of(System.getProperty("beltwright.root", ".")).resolve("demo");
        var shelf = Workshop.shelfOf(
                Stream.of("parts", "kits", "measurements", "routes")
                        .map(demo::resolve)
                        .toList(),
                ReferenceFile.bundled());
        new RideBenchmark(shelf).run(args);
    }

    private void run(String[] args) throws Exception {
        for (int i = 0; i < 300; i++) {
            ride(USUAL.tolerance());
        }
        double one = median(41, () -> ride(USUAL.tolerance()));
        var exact = ride(1e-11);
        double error = error(ride(USUAL.tolerance()), exact);
        row("one ride of " + Math.round(exact.distanceM()) + " m, " + exact.steps() + " steps at 1e-11", one, "ms", 1);
        IO.println("| its error: the largest of time, energy and warmth | " + share(error) + " | |");
        double[] rates = new double[2];
        for (int cores = 1; cores <= 2; cores++) {
            try (var executor = Executors.newFixedThreadPool(cores)) {
                many(executor, MANY / 20);
                long begin = System.nanoTime();
                double processorMs = many(executor, MANY) / 1e6;
                double seconds = (System.nanoTime() - begin) / 1e9;
                rates[cores - 1] = MANY / seconds;
                row(
                        MANY + " varied rides on " + cores + (cores == 1 ? " core" : " cores") + ", " + number(seconds)
                                + " s by the clock",
                        processorMs / 1000,
                        "s",
                        processorMs / one);
            }
        }
        IO.println("| two cores against one, by the clock | | " + number(rates[1] / rates[0]) + " times as many |");
        if (args.length == 3) {
            twin(args, one, error, exact);
        } else {
            IO.println(
                    "| the same equations in a general-purpose solver | not run: needs the package python3-scipy | |");
        }
    }

    private Ride ride(double tolerance) {
        return RideSolver.ride(KIT, board, route, USUAL.withTolerance(tolerance));
    }

    private static double median(int times, Callable<Ride> ride) throws Exception {
        var ms = new double[times];
        for (int i = 0; i < times; i++) {
            long begin = THREADS.getCurrentThreadCpuTime();
            ride.call();
            ms[i] = (THREADS.getCurrentThreadCpuTime() - begin) / 1e6;
        }
        Arrays.sort(ms);
        return ms[times / 2];
    }

    /// Other riders, winds and charges over the same road; {@return processor time of all of them (ns)}
    private long many(ExecutorService executor, int rides) throws Exception {
        var random = new SplittableRandom(7);
        var asked = new ArrayList<Callable<Long>>();
        for (int i = 0; i < rides; i++) {
            var r = board.road();
            var other = new Road(
                    random.nextDouble(65, 125),
                    r.inertiaKg(),
                    random.nextDouble(0.01, 0.022),
                    random.nextDouble(0.35, 0.65),
                    r.airKgM3(),
                    r.bearingN(),
                    random.nextDouble(-3, 5),
                    r.gripShare(),
                    r.drivenShare(),
                    r.drivenBrakingShare(),
                    r.massHeightM(),
                    r.wheelbaseM());
            asked.add(() -> {
                long begin = THREADS.getCurrentThreadCpuTime();
                RideSolver.ride(KIT, board.with(other), route, USUAL);
                return THREADS.getCurrentThreadCpuTime() - begin;
            });
        }
        long all = 0;
        for (var done : executor.invokeAll(asked)) {
            all += done.get();
        }
        return all;
    }

    private static double error(Ride ride, Ride exact) {
        return error(exact, ride.timeS(), ride.usedWh() * 3600, last(ride, Channel.WINDING), last(ride, Channel.CASE));
    }

    private static double error(Ride exact, double timeS, double usedJ, double windingC, double caseC) {
        return Math.max(
                Math.max(
                        Math.abs(timeS / exact.timeS() - 1),
                        Math.abs(usedJ - exact.usedWh() * 3600) / exact.energy().throughJ()),
                Math.max(
                        Math.abs(windingC / last(exact, Channel.WINDING) - 1),
                        Math.abs(caseC / last(exact, Channel.CASE) - 1)));
    }

    private static double last(Ride ride, Channel channel) {
        var all = ride.of(channel);
        return all[all.length - 1];
    }

    /// The loosest tolerance of each method at which the twin is no further off, and how long it takes then.
    private static void twin(String[] args, double one, double error, Ride exact) throws Exception {
        for (var method : List.of("DOP853", "RK45", "LSODA")) {
            for (int decade = 8; decade <= 22; decade++) {
                double tolerance = Math.pow(10, -decade / 2.0);
                var said = asked(args, method, tolerance);
                double off = error(
                        exact,
                        said.path("timeS").asDouble(),
                        said.path("usedJ").asDouble(),
                        said.path("windingC").asDouble(),
                        said.path("caseC").asDouble());
                if (off <= error) {
                    double ms = 1000 * said.path("seconds").asDouble();
                    row(
                            "the same in scipy, " + method + " at " + share(tolerance) + ", error " + share(off) + ", "
                                    + said.path("calls").asInt() + " calls",
                            ms,
                            "ms",
                            ms / one);
                    break;
                }
            }
        }
    }

    private static JsonNode asked(String[] args, String method, double tolerance)
            throws IOException, InterruptedException {
        var process = new ProcessBuilder(args[2], args[0], args[1], method, Double.toString(tolerance), "1")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        var said = new ObjectMapper().readTree(process.getInputStream());
        if (process.waitFor() != 0) {
            throw new Refusal("twin", "ended with " + process.exitValue(), "0", "see what it printed above");
        }
        return said.path(0);
    }

    private static void row(String what, double value, String unit, double ratio) {
        IO.println("| " + what + " | " + number(value) + " " + unit + " | " + number(ratio) + " |");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 100 ? "%.2f" : "%.0f", value);
    }

    private static String share(double value) {
        return String.format(Locale.ROOT, "%.1e", value);
    }
}
