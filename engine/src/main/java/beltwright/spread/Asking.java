package beltwright.spread;

import beltwright.check.Check;
import beltwright.check.Checks;
import beltwright.check.Reading;
import beltwright.check.Subject;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.layout.Layout;
import beltwright.layout.LayoutSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/// Every question that is asked of one kit, and its answers for one drawn kit after the other. For one thread.
///
/// A drawn kit has no limits, so `holds` and `marginal` say the same of it: the finding does not fail.
final class Asking {
    /// Units of what meets or does not meet when a kit is put together.
    private static final Set<String> OF_FITS = Set.of("mm", "°", "teeth", "");

    /// @param subject its place among the subjects of the kit
    /// @param fit whether a kit that fails it does not go together
    /// @param several whether it reads a seat of several pieces that vary
    record Question(Check check, int subject, String key, boolean fit, boolean several) {}

    private final Pieces pieces;
    private final List<Question> questions;
    private final List<Subject> designed;
    private final Reading reading = new Reading();
    private final double[] slack;
    private final Verdict[] verdicts;
    private final boolean[] settled;
    private boolean several;

    Asking(Kit kit, Pieces pieces, List<Question> questions) {
        this.pieces = pieces;
        this.questions = questions;
        this.designed = Subject.of(kit, LayoutSolver.solve(kit));
        this.slack = new double[questions.size()];
        this.verdicts = new Verdict[questions.size()];
        this.settled = new boolean[questions.size()];
        this.several = questions.stream().anyMatch(Question::several);
    }

    /// From here on these questions keep their last answer.
    void settle(boolean[] which) {
        System.arraycopy(which, 0, settled, 0, settled.length);
        several = false;
        for (int i = 0; i < settled.length; i++) {
            several |= !settled[i] && questions.get(i).several();
        }
    }

    static List<Question> questions(Kit kit, Pieces pieces) {
        var questions = new ArrayList<Question>();
        var subjects = Subject.of(kit, LayoutSolver.solve(kit));
        for (int i = 0; i < subjects.size(); i++) {
            for (var check : Checks.ALL) {
                if (check.concerns(subjects.get(i))) {
                    questions.add(new Question(
                            check,
                            i,
                            check.key(subjects.get(i)),
                            OF_FITS.contains(check.unit()) && !check.readsTask(),
                            check.reads().stream().anyMatch(pieces::several)));
                }
            }
        }
        return List.copyOf(questions);
    }

    /// Asks everything of the kit with these values; where a seat holds several pieces, the worst of them answers.
    void ask(double[] values) {
        var kit = pieces.kit(values);
        var layout = LayoutSolver.solve(kit);
        ask(kit, layout, 0);
        for (int piece = 1; several && piece < pieces.most(); piece++) {
            ask(pieces.other(kit, values, piece), layout, piece);
        }
    }

    /// As above, with the first piece of each seat only.
    void askFirst(double[] values) {
        var kit = pieces.kit(values);
        ask(kit, LayoutSolver.solve(kit), 0);
    }

    private void ask(Kit kit, Layout layout, int piece) {
        var subjects = Subject.of(kit, layout);
        for (int i = 0; i < slack.length; i++) {
            var q = questions.get(i);
            if (settled[i] || (piece > 0 && !q.several())) {
                continue;
            }
            var subject = subjects.get(q.subject());
            q.check().measureDrawn(subject, designed.get(q.subject()), reading);
            double left = reading.capacity() - reading.demand();
            var verdict = q.check().verdict(subject, reading);
            if (piece == 0) {
                slack[i] = left;
                verdicts[i] = verdict;
            } else {
                slack[i] = Math.min(slack[i], left);
                verdicts[i] = verdicts[i].compareTo(verdict) <= 0 ? verdicts[i] : verdict;
            }
        }
    }

    /// {@return capacity less demand}
    double slack(int question) {
        return slack[question];
    }

    Verdict verdict(int question) {
        return verdicts[question];
    }
}
