package beltwright.spread;

import beltwright.kit.Kit;
import java.util.List;

/// What each dimension alone moves a finding by, from the middle of all limits to its own limits, and the root of the
/// sum of their squares. Of a seat with several pieces the first is taken.
///
///     s = s_middle ± √(Σ(Δs_i)²)
///
/// - Source: root-sum-square of tolerances, as in textbooks of machine design.
/// - Valid: dimensions that vary on their own, answers that move in proportion.
/// - Neglects: how a dimension is spread between its limits.
public final class RootSumSquare {
    private final double[] middle;
    private final double[][] down;
    private final double[][] up;

    RootSumSquare(Kit kit, Pieces pieces, List<Asking.Question> questions) {
        int n = questions.size();
        var inputs = pieces.inputs();
        middle = new double[n];
        down = new double[n][inputs.size()];
        up = new double[n][inputs.size()];
        var values = inputs.stream().mapToDouble(i -> i.distribution().middle()).toArray();
        var asking = new Asking(kit, pieces, questions);
        asking.askFirst(values);
        for (int q = 0; q < n; q++) {
            middle[q] = asking.slack(q);
        }
        for (int i = 0; i < values.length; i++) {
            if (inputs.get(i).piece() > 0) {
                continue;
            }
            var d = inputs.get(i).dimension();
            for (double limit : new double[] {d.lower(), d.upper()}) {
                values[i] = limit;
                asking.askFirst(values);
                for (int q = 0; q < n; q++) {
                    double moved = asking.slack(q) - middle[q];
                    down[q][i] = Math.min(down[q][i], moved);
                    up[q][i] = Math.max(up[q][i], moved);
                }
            }
            values[i] = inputs.get(i).distribution().middle();
        }
    }

    /// {@return the root of the sum of the squares of these}
    public static double of(double... moves) {
        double squares = 0;
        for (double moved : moves) {
            squares += moved * moved;
        }
        return Math.sqrt(squares);
    }

    /// {@return what is left with every dimension in the middle of its limits}
    double middle(int question) {
        return middle[question];
    }

    double down(int question) {
        return of(down[question]);
    }

    double up(int question) {
        return of(up[question]);
    }
}
