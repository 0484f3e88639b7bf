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
final class RootSumSquare {
    private final double[] middle;
    private final double[] down;
    private final double[] up;

    RootSumSquare(Kit kit, Pieces pieces, List<Asking.Question> questions) {
        int n = questions.size();
        middle = new double[n];
        down = new double[n];
        up = new double[n];
        var inputs = pieces.inputs();
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
            var least = new double[n];
            var most = new double[n];
            for (double limit : new double[] {d.lower(), d.upper()}) {
                values[i] = limit;
                asking.askFirst(values);
                for (int q = 0; q < n; q++) {
                    least[q] = Math.min(least[q], asking.slack(q) - middle[q]);
                    most[q] = Math.max(most[q], asking.slack(q) - middle[q]);
                }
            }
            values[i] = inputs.get(i).distribution().middle();
            for (int q = 0; q < n; q++) {
                down[q] += least[q] * least[q];
                up[q] += most[q] * most[q];
            }
        }
    }

    /// {@return what is left with every dimension in the middle of its limits}
    double middle(int question) {
        return middle[question];
    }

    double down(int question) {
        return Math.sqrt(down[question]);
    }

    double up(int question) {
        return Math.sqrt(up[question]);
    }
}
