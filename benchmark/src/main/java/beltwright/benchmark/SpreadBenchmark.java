package beltwright.benchmark;

import beltwright.app.bench.Hands;
import beltwright.check.Ladder;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.spread.Sampling;
import beltwright.spread.Spread;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

/// What a spread costs: a hundred thousand kits of the two-motor demo kit on one thread and on two, a page's ten
/// thousand of a kit with a deck, and beside them the yardstick: a kit made anew the way an edit makes it, through its
/// draft, and measured once. Prints rows of a table, by the clock and in processor time.
public final class SpreadBenchmark {
    private static final String KIT = "steep-street";
    private static final String DECKED = "quarry-road-load";
    private static final int MANY = Integer.getInteger("spread.many", 100_000);
    private static final int RUNS = 3;
    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private final Shelf shelf;

    private SpreadBenchmark(Shelf shelf) {
        this.shelf = shelf;
    }

    public static void main(String[] args) throws Exception {
        var demo = Path.of(System.getProperty("beltwright.root", ".")).resolve("demo");
        new SpreadBenchmark(Workshop.shelfOf(
                        Stream.of("parts", "kits", "measurements")
                                .map(demo::resolve)
                                .toList(),
                        ReferenceFile.bundled()))
                .run();
    }

    /// The median run of some.
    private record Took(double seconds, double processorSeconds, int kits) {
        double each() {
            return processorSeconds / kits;
        }
    }

    private void run() throws Exception {
        var kit = shelf.kit(KIT);
        spread(kit, MANY / 10, 1);
        spread(shelf.kit(DECKED), 2000, 1);
        resolved(500);
        var edit = took(2000, () -> resolved(2000));
        var one = took(MANY, () -> spread(kit, MANY, 1));
        var two = took(MANY, () -> spread(kit, MANY, 2));
        var page = took(Sampling.USUAL, () -> spread(shelf.kit(DECKED), Sampling.USUAL, 2));
        row("a kit edited, resolved through its draft and measured once (yardstick)", edit, edit);
        row(MANY + " kits of `" + KIT + "`, 1 thread", one, edit);
        row("the same, 2 threads (wanted: under 5 s)", two, edit);
        row(Sampling.USUAL + " kits of `" + DECKED + "`, which has a deck, 2 threads (wanted: under 2 s)", page, edit);
        IO.println("| two threads against one, by the clock | | | "
                + String.format(Locale.ROOT, "%.2f", one.seconds / two.seconds) + " times as fast |");
    }

    private static Spread spread(Kit kit, int kits, int threads) {
        return Sampling.of(kit, kits, 1, new Hands(threads), () -> false);
    }

    private int resolved(int times) {
        int told = 0;
        for (int i = 0; i < times; i++) {
            var edited = shelf.with(List.of(new Edit("screw-m4x14", "lengthMm", 14 + i % 20 / 100.0 + " ±0.35")));
            var kit = edited.kit(KIT);
            told += Ladder.measure(kit, LayoutSolver.solve(kit)).length;
        }
        return told;
    }

    private static Took took(int kits, Callable<?> work) throws Exception {
        var runs = new Took[RUNS];
        for (int i = 0; i < RUNS; i++) {
            long clock = System.nanoTime();
            long processor = PROCESS.getProcessCpuTime();
            work.call();
            runs[i] =
                    new Took((System.nanoTime() - clock) / 1e9, (PROCESS.getProcessCpuTime() - processor) / 1e9, kits);
        }
        Arrays.sort(runs, (a, b) -> Double.compare(a.seconds, b.seconds));
        return runs[RUNS / 2];
    }

    private static void row(String what, Took took, Took yardstick) {
        IO.println("| " + what + " | " + String.format(Locale.ROOT, "%.2f s", took.seconds) + " | "
                + String.format(Locale.ROOT, "%.1f µs", 1e6 * took.each()) + " | "
                + String.format(Locale.ROOT, "%.3f", took.each() / yardstick.each()) + " |");
    }
}
