package beltwright.spread;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// How often one finding holds, and what it rests on.
///
/// @param finding as the ladder has it
/// @param fit whether a kit that fails it does not go together
/// @param asked how many of them were asked; the others follow from the limits
/// @param holds how many of the drawn kits do not fail it
/// @param untold in how many of them it cannot be told; those do not hold
/// @param scatter of what is left (capacity less demand); null where nothing varies, or it is a yes-or-no question
/// @param matters what moves it, most first
public record Odds(
        Finding finding,
        boolean fit,
        int kits,
        int asked,
        int holds,
        int untold,
        @Nullable Scatter scatter,
        List<Influence> matters) {
    public Odds {
        matters = List.copyOf(matters);
    }

    /// {@return whether there is an answer at all}
    public boolean told() {
        return finding.verdict() != Verdict.CANNOT_TELL || untold < kits;
    }

    /// {@return whether it holds at the worst limits and in every kit}
    public boolean sure() {
        return finding.verdict() == Verdict.HOLDS && holds == kits;
    }

    /// {@return the share of kits in which it holds; only asked for where it can be told}
    public Spread.Share share() {
        return new Spread.Share(holds, kits);
    }

    /// What is left, in the unit of the finding.
    ///
    /// @param percentiles at [#PERCENT], the smallest value that this share of the draws does not exceed
    /// @param worst at the worst limits of everything
    /// @param best at the best limits
    /// @param middle with every dimension in the middle of its limits
    /// @param rssLow `middle` less the root-sum-square of what each dimension moves it by
    public record Scatter(
            double mean,
            double deviation,
            List<Double> percentiles,
            double worst,
            double best,
            double middle,
            double rssLow,
            double rssHigh,
            Histogram histogram) {
        public static final List<Integer> PERCENT = List.of(1, 5, 50, 95, 99);

        public Scatter {
            percentiles = List.copyOf(percentiles);
        }
    }

    /// How many draws fell into each of equal steps from `low` to `high`.
    public record Histogram(double low, double high, List<Integer> counts) {
        public Histogram {
            counts = List.copyOf(counts);
        }
    }

    /// What one dimension does to a finding.
    ///
    /// @param where the seat that the piece sits in, `task`, or where else it is drawn
    /// @param dimension part and field, as an edit names it
    /// @param typed its text with the limits
    /// @param pieces how many pieces of that seat are drawn
    /// @param share of the spread: the squared correlation of its draws with what is left, summed over its pieces
    /// @param rising whether more of it leaves more
    public record Influence(
            String where,
            String dimension,
            String typed,
            int pieces,
            Distribution distribution,
            double share,
            boolean rising) {
        Influence plus(double more) {
            return new Influence(where, dimension, typed, pieces, distribution, share + more, rising);
        }
    }
}
