package beltwright.spread;

import beltwright.check.Finding;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.quantity.Refusal;
import beltwright.ride.GivenUp;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/// Draws a kit many times and counts.
///
/// Every number is drawn by its [Distribution], every piece on its own; the drawn kit is laid out and asked everything
/// that the kit itself is asked. Of a check only its answers are looked at, so a new one needs no code here.
public final class Sampling {
    public static final int USUAL = 10_000;
    public static final int MOST = 200_000;

    /// Blocks in which everything is asked.
    private static final int EARLY = 5;

    private final Kit kit;
    private final int kits;
    private final long seed;
    private final Pieces pieces;
    private final List<Input> inputs;
    private final List<Asking.Question> questions;
    private final Distribution[] distributions;
    private final double[] perDeviation;
    private final long[] streams;
    private final double[] nominal;
    private final boolean[] counts;
    private final Finding[] findings;
    private final boolean[] settled;
    private final boolean[] decided;

    private Sampling(Kit kit, int kits, long seed) {
        if (kits < 1 || kits > MOST) {
            throw new Refusal("kits", kits + " kits", "1 to " + MOST, "ask for another number of kits");
        }
        this.kit = kit;
        this.kits = kits;
        this.seed = seed;
        pieces = new Pieces(kit);
        inputs = pieces.inputs();
        questions = Asking.questions(kit, pieces);
        distributions = inputs.stream().map(Input::distribution).toArray(Distribution[]::new);
        perDeviation = inputs.stream()
                .mapToDouble(i -> 1 / Math.sqrt(i.distribution().variance()))
                .toArray();
        streams = inputs.stream().mapToLong(i -> Draws.stream(seed, i.stream())).toArray();
        settled = new boolean[questions.size()];
        decided = new boolean[questions.size()];
        var byKey =
                Ladder.findings(kit, LayoutSolver.solve(kit)).stream().collect(Collectors.toMap(Finding::key, f -> f));
        findings = questions.stream()
                .map(q -> Objects.requireNonNull(byKey.get(q.key())))
                .toArray(Finding[]::new);
        var asking = new Asking(kit, pieces, questions);
        asking.ask(atNominal());
        nominal = new double[questions.size()];
        counts = new boolean[questions.size()];
        for (int q = 0; q < nominal.length; q++) {
            nominal[q] = asking.slack(q);
            counts[q] = questions.get(q).fit() && asking.verdict(q) != Verdict.CANNOT_TELL;
        }
    }

    private double[] atNominal() {
        return inputs.stream().mapToDouble(i -> i.dimension().nominal()).toArray();
    }

    /// As below, alone and to the end.
    public static Spread of(Kit kit, int kits, long seed) {
        return of(kit, kits, seed, Crew.ALONE, () -> false);
    }

    /// {@return what comes of drawing a kit so many times; the same bits for the same seed, whatever the crew}
    ///
    /// @param crew who does the blocks of a thousand kits
    /// @param cancelled asked before each hundred kits; also a place to count them
    /// @throws GivenUp once `cancelled` says so
    public static Spread of(Kit kit, int kits, long seed, Crew crew, BooleanSupplier cancelled) {
        var sampling = new Sampling(kit, kits, seed);
        var blocks = new Block[(kits + Block.KITS - 1) / Block.KITS];
        blocks[0] = sampling.block(0, cancelled);
        sampling.settle(blocks[0]);
        int early = Math.min(EARLY, blocks.length);
        crew.all(early - 1, b -> blocks[b + 1] = sampling.block(b + 1, cancelled));
        if (blocks.length > early) {
            sampling.decide(Arrays.copyOf(blocks, early));
            crew.all(blocks.length - early, b -> blocks[b + early] = sampling.block(b + early, cancelled));
        }
        return sampling.spread(blocks);
    }

    /// What has no limits of its own, and not one kit of the first block moved, is not asked again.
    private void settle(Block first) {
        for (int q = 0; q < settled.length; q++) {
            settled[q] = worst(q) == best(q) && first.unmoved(q);
        }
    }

    /// What holds at the worst limits or fails at the best ones, and what no early kit took outside those, is the same
    /// in every later kit and is not asked there.
    private void decide(Block[] early) {
        for (int q = 0; q < settled.length; q++) {
            boolean holds = findings[q].verdict() == Verdict.HOLDS;
            boolean fails = findings[q].verdict() == Verdict.FAILS && best(q) < 0;
            boolean within = true;
            for (var b : early) {
                within &= b.within(q, holds, worst(q), best(q));
            }
            decided[q] = !settled[q] && (holds || fails) && within;
            settled[q] |= decided[q];
        }
    }

    /// {@return what is left at the worst limits}
    private double worst(int q) {
        return findings[q].capacityWorst() - findings[q].demandWorst();
    }

    private double best(int q) {
        return findings[q].capacityBest() - findings[q].demandBest();
    }

    private boolean anythingToAsk() {
        for (boolean s : settled) {
            if (!s) {
                return true;
            }
        }
        return false;
    }

    private Block block(int b, BooleanSupplier cancelled) {
        int first = b * Block.KITS;
        int size = Math.min(Block.KITS, kits - first);
        var block = new Block(questions.size(), inputs.size(), size);
        var asking = new Asking(kit, pieces, questions);
        asking.ask(atNominal());
        asking.settle(settled);
        block.unasked(decided);
        boolean draws = anythingToAsk();
        var values = new double[inputs.size()];
        var z = new double[inputs.size()];
        for (int k = 0; k < size; k++) {
            if (k % 100 == 0 && cancelled.getAsBoolean()) {
                throw new GivenUp();
            }
            for (int i = 0; draws && i < values.length; i++) {
                values[i] = distributions[i].at(Draws.even(streams[i], first + k));
                z[i] = (values[i] - distributions[i].mean()) * perDeviation[i];
            }
            if (draws) {
                asking.ask(values);
            }
            block.add(k, asking, z, nominal, counts);
        }
        return block;
    }

    private Spread spread(Block[] blocks) {
        var sums = new RootSumSquare(kit, pieces, questions);
        var odds = new ArrayList<Odds>();
        for (int q = 0; q < questions.size(); q++) {
            odds.add(odds(q, findings[q], blocks, sums));
        }
        odds.sort(Comparator.comparing((Odds o) -> !o.told())
                .thenComparingInt(Odds::holds)
                .thenComparing(o -> o.finding().marginWorst(), Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(o -> o.finding().key()));
        return new Spread(
                kit.id(),
                kits,
                seed,
                inputs.size(),
                Arrays.stream(blocks).mapToInt(b -> b.together).sum(),
                keys(true),
                keys(false),
                odds);
    }

    private List<String> keys(boolean told) {
        var keys = new ArrayList<String>();
        for (int q = 0; q < counts.length; q++) {
            if (questions.get(q).fit() && counts[q] == told) {
                keys.add(questions.get(q).key());
            }
        }
        return keys;
    }

    private Odds odds(int q, Finding finding, Block[] blocks, RootSumSquare sums) {
        int holds = 0;
        int untold = 0;
        int n = 0;
        double sum = 0;
        double squares = 0;
        for (var b : blocks) {
            holds += b.holds[q];
            untold += b.untold[q];
            n += b.finite[q];
            sum += b.sum[q];
            squares += b.squares[q];
        }
        double moved = n == 0 ? 0 : sum / n;
        double variance = n < 2 ? 0 : Math.max(0, (squares - sum * moved) / (n - 1));
        boolean varies = variance > 0;
        return new Odds(
                finding,
                questions.get(q).fit(),
                kits,
                asked(q),
                holds,
                untold,
                varies && !finding.unit().isEmpty()
                        ? scatter(q, finding, nominal[q] + moved, Math.sqrt(variance), blocks, sums)
                        : null,
                varies ? matters(q, n, moved, Math.sqrt(variance), blocks) : List.of());
    }

    /// {@return in how many kits this was asked}
    private int asked(int q) {
        return decided[q] ? EARLY * Block.KITS : kits;
    }

    private Odds.Scatter scatter(int q, Finding f, double mean, double deviation, Block[] blocks, RootSumSquare sums) {
        var all = new float[kits];
        int n = 0;
        for (var b : blocks) {
            for (float left : b.slack[q]) {
                if (Float.isFinite(left)) {
                    all[n++] = left;
                }
            }
        }
        var sorted = Arrays.copyOf(all, n);
        Arrays.sort(sorted);
        var percentiles = Odds.Scatter.PERCENT.stream()
                .map(p -> (double) sorted[Math.max(0, (int) Math.ceil(p / 100.0 * sorted.length) - 1)])
                .toList();
        return new Odds.Scatter(
                mean,
                deviation,
                percentiles,
                f.capacityWorst() - f.demandWorst(),
                f.capacityBest() - f.demandBest(),
                sums.middle(q),
                sums.middle(q) - sums.down(q),
                sums.middle(q) + sums.up(q),
                histogram(sorted));
    }

    private static Odds.Histogram histogram(float[] sorted) {
        double low = sorted[0];
        double high = sorted[sorted.length - 1];
        var counts = new int[24];
        for (float left : sorted) {
            counts[Math.min(counts.length - 1, (int) ((left - low) / (high - low) * counts.length))]++;
        }
        return new Odds.Histogram(low, high, Arrays.stream(counts).boxed().toList());
    }

    /// Shares below what chance alone gives, 16/n (four standard errors), are left out.
    private List<Odds.Influence> matters(int q, int n, double moved, double deviation, Block[] blocks) {
        record Group(String where, String dimension) {}
        var shares = new HashMap<Group, Odds.Influence>();
        for (int i = 0; i < inputs.size(); i++) {
            double product = 0;
            double draws = 0;
            for (var b : blocks) {
                product += b.products[q][i];
                draws += b.asked(q) ? b.draws[i] : 0;
            }
            double correlation = (product / n - moved * draws / asked(q)) / deviation;
            double share = correlation * correlation;
            if (share > 16.0 / n) {
                var input = inputs.get(i);
                shares.merge(
                        new Group(input.where(), input.dimension().of()),
                        new Odds.Influence(
                                input.where(),
                                input.dimension().of(),
                                input.dimension().text(),
                                pieces.pieces(input),
                                input.distribution(),
                                share,
                                correlation > 0),
                        (a, one) -> a.plus(one.share()));
            }
        }
        return shares.values().stream()
                .sorted(Comparator.comparingDouble((Odds.Influence i) -> -i.share())
                        .thenComparing(Odds.Influence::where)
                        .thenComparing(Odds.Influence::dimension))
                .toList();
    }
}
