package beltwright.spread;

import beltwright.check.Verdict;

/// What a thousand kits say; sums are kept by block and added in the order of blocks, so threads change no bit.
final class Block {
    static final int KITS = 1000;

    final int[] holds;
    final int[] untold;
    final int[] finite;
    final double[] sum;
    final double[] squares;
    final double[][] products;
    final double[] draws;
    final float[][] slack;
    private final int kits;
    private final boolean[] silent;
    int together;

    Block(int questions, int inputs, int kits) {
        this.kits = kits;
        silent = new boolean[questions];
        holds = new int[questions];
        untold = new int[questions];
        finite = new int[questions];
        sum = new double[questions];
        squares = new double[questions];
        products = new double[questions][inputs];
        draws = new double[inputs];
        slack = new float[questions][kits];
    }

    /// {@return whether every kit so far gave the answer that nominal gives}
    boolean unmoved(int question) {
        return squares[question] == 0
                && allOrNone(holds[question])
                && allOrNone(untold[question])
                && (finite[question] == 0 || allOrNone(finite[question]));
    }

    /// These have their answer already: kits are counted, nothing else is kept of them.
    void unasked(boolean[] which) {
        System.arraycopy(which, 0, silent, 0, silent.length);
        for (int q = 0; q < silent.length; q++) {
            if (silent[q]) {
                slack[q] = new float[0];
            }
        }
    }

    boolean asked(int question) {
        return !silent[question];
    }

    /// {@return whether every kit gave the same answer, and none left less or more than the limits do}
    boolean within(int question, boolean hold, double worst, double best) {
        boolean within = holds[question] == (hold ? kits : 0) && untold[question] == 0;
        for (float left : slack[question]) {
            double rounding = Math.ulp(left);
            within &= left >= worst - rounding && left <= best + rounding;
        }
        return within;
    }

    private boolean allOrNone(int count) {
        return count == 0 || count == kits;
    }

    /// Takes one kit.
    ///
    /// @param z the draws, each less its mean and over its standard deviation
    /// @param from what is left at nominal: sums are kept from there
    void add(int kit, Asking asking, double[] z, double[] from, boolean[] counts) {
        for (int i = 0; i < z.length; i++) {
            draws[i] += z[i];
        }
        boolean whole = true;
        for (int q = 0; q < holds.length; q++) {
            var verdict = asking.verdict(q);
            if (verdict == Verdict.CANNOT_TELL) {
                untold[q]++;
            } else if (verdict != Verdict.FAILS) {
                holds[q]++;
            }
            whole &= !counts[q] || verdict.compareTo(Verdict.CANNOT_TELL) > 0;
            if (silent[q]) {
                continue;
            }
            double left = asking.slack(q);
            slack[q][kit] = (float) left;
            double moved = left - from[q];
            if (Double.isFinite(moved)) {
                finite[q]++;
                if (moved != 0) {
                    sum[q] += moved;
                    squares[q] += moved * moved;
                    var product = products[q];
                    for (int i = 0; i < z.length; i++) {
                        product[i] += moved * z[i];
                    }
                }
            }
        }
        if (whole) {
            together++;
        }
    }
}
