package beltwright.check;

import beltwright.kit.Kit;
import beltwright.kit.SeatName;
import beltwright.layout.DrawnDimension;
import beltwright.layout.Layout;
import beltwright.layout.MainDimensions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/// Asks a kit every question and stands the answers in a ladder, weakest first.
public final class Ladder {
    /// Weakest first: by verdict, then by the margin at the worst limits.
    public static final Comparator<Answer> WEAKEST = Comparator.comparing(Answer::verdict)
            .thenComparing(Answer::marginWorst, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(Answer::key);

    private static final Comparator<Finding> WEAKEST_FIRST = Comparator.comparing(Finding::verdict)
            .thenComparing(Finding::marginWorst, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(Finding::key);

    private Ladder() {}

    /// Measures everything without a word of explanation; what spreads and searches will call.
    ///
    /// @return how many answers fail, cannot be told, are marginal and hold, in the order of [Verdict]
    public static int[] measure(Kit kit, Layout layout) {
        var counts = new int[Verdict.values().length];
        var reading = new Reading();
        var subjects = Subject.of(kit, layout);
        for (var check : Checks.ALL) {
            for (var subject : subjects) {
                if (check.concerns(subject)) {
                    check.measure(subject, reading);
                    counts[check.verdict(subject, reading).ordinal()]++;
                }
            }
        }
        return counts;
    }

    /// {@return the answers of a kit in short, in no order, to those checks that `wanted` accepts}
    public static List<Answer> answers(Kit kit, Layout layout, Predicate<Check> wanted) {
        var answers = new ArrayList<Answer>();
        var reading = new Reading();
        for (var subject : Subject.of(kit, layout)) {
            for (var check : Checks.ALL) {
                if (check.concerns(subject) && wanted.test(check)) {
                    check.measure(subject, reading);
                    answers.add(Answer.of(check, subject, reading));
                }
            }
        }
        return answers;
    }

    /// {@return the findings of a kit with their workings, weakest first}
    public static List<Finding> findings(Kit kit, Layout layout) {
        return findings(kit, layout, check -> true);
    }

    /// {@return the findings of those checks that `wanted` accepts, with their workings, weakest first}
    public static List<Finding> findings(Kit kit, Layout layout, Predicate<Check> wanted) {
        var findings = new ArrayList<Finding>();
        for (var subject : Subject.of(kit, layout)) {
            for (var check : Checks.ALL) {
                if (check.concerns(subject) && wanted.test(check)) {
                    findings.add(finding(check, subject));
                }
            }
        }
        findings.sort(WEAKEST_FIRST);
        return findings;
    }

    /// {@return the distances that the drawings show: the main dimensions, and what the checks point at}
    public static List<DrawnDimension> dimensions(Kit kit, Layout layout) {
        var dimensions = new ArrayList<>(MainDimensions.of(kit, layout));
        for (var subject : Subject.of(kit, layout)) {
            for (var check : Checks.ALL) {
                if (check.concerns(subject)) {
                    check.places(subject).stream()
                            .filter(d -> !Double.isNaN(d.valueMm()))
                            .forEach(dimensions::add);
                }
            }
        }
        return dimensions;
    }

    private static Finding finding(Check check, Subject subject) {
        var measured = new Reading();
        check.measure(subject, measured);
        var working = new Working();
        var explained = new Reading();
        check.explain(subject, working, explained);
        var verdict = check.verdict(subject, measured);
        boolean told = verdict != Verdict.CANNOT_TELL;
        return new Finding(
                check.key(subject),
                check.name(),
                verdict,
                measured.demand,
                measured.capacity,
                measured.demandWorst,
                measured.capacityWorst,
                measured.demandBest,
                measured.capacityBest,
                check.unit(),
                margin(check, measured.capacity, measured.demand),
                margin(check, measured.capacityWorst, measured.demandWorst),
                margin(check, measured.capacityBest, measured.demandBest),
                check.seats(subject).stream().map(SeatName::toString).toList(),
                List.copyOf(working.needs()),
                List.copyOf(working.estimates()),
                told ? check.says(subject, measured) : "needs " + missing(working),
                verdict == Verdict.HOLDS
                        ? ""
                        : verdict == Verdict.CANNOT_TELL
                                ? (working.needs().isEmpty() ? "choose another belt" : "measure it and enter it")
                                : check.remedy(subject, measured),
                check.source(),
                working.lines());
    }

    private static String missing(Working working) {
        return working.needs().isEmpty() ? "a belt that goes around both pulleys" : String.join(", ", working.needs());
    }

    static @Nullable Double margin(Check check, double capacity, double demand) {
        double margin = capacity / demand - 1;
        return check.unit().isEmpty() || !(demand > 0) || Double.isNaN(margin) ? null : margin;
    }
}
