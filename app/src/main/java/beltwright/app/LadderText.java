package beltwright.app;

import static beltwright.app.Typesetting.hanging;
import static beltwright.app.Typesetting.outdented;
import static beltwright.app.Typesetting.padded;
import static beltwright.app.Typesetting.right;
import static beltwright.app.Typesetting.widest;

import beltwright.check.Finding;
import beltwright.check.FirstNumber;
import beltwright.check.Line;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// A dossier as a terminal shows it: the margin ladder weakest first, the counts, the first numbers, a working.
final class LadderText {
    private static final int LEAST_FOR_SAYS = 32;
    private static final int MARK = 2;

    private final Dossier dossier;
    private final int columns;
    private final Map<String, String> odds;

    LadderText(Dossier dossier, int columns) {
        this(dossier, columns, Map.of());
    }

    /// @param odds of findings by their key, a line for each rung
    LadderText(Dossier dossier, int columns, Map<String, String> odds) {
        this.odds = odds;
        this.dossier = dossier;
        this.columns = columns;
    }

    List<String> ladder() {
        return ladder(dossier.findings());
    }

    /// {@return the ladder down to the last rung that does not hold, of a kit that holds the weakest rung alone}
    List<String> top() {
        var findings = dossier.findings();
        long told = findings.stream().filter(f -> f.verdict() != Verdict.HOLDS).count();
        return ladder(findings.stream().limit(Math.max(1, told)).toList());
    }

    private List<String> ladder(List<Finding> rungs) {
        var lines = new ArrayList<String>();
        var draft = dossier.kit().draft();
        lines.addAll(
                hanging("", draft.name() + " (" + draft.id() + ")" + (draft.invented() ? ", invented" : ""), columns));
        lines.addAll(hanging("", "Margin ladder, weakest first; margins at the worst limits", columns));
        lines.add("");
        rungs.forEach(finding -> lines.addAll(rung(finding)));
        lines.add(rungs.size() < dossier.findings().size() ? "…" : "");
        lines.addAll(hanging("", counts(dossier), columns));
        return lines;
    }

    /// {@return how many findings fail, cannot be told, are marginal and hold, in words, worst first and none of none}
    static String counts(Dossier dossier) {
        var findings = dossier.findings();
        var counts = Stream.of(Verdict.values())
                .filter(v -> findings.stream().anyMatch(f -> f.verdict() == v))
                .map(v -> Mark.of(v) + " "
                        + findings.stream().filter(f -> f.verdict() == v).count() + " " + v)
                .collect(Collectors.joining(" · "));
        long estimates = findings.stream()
                .flatMap(f -> f.estimates().stream())
                .distinct()
                .count();
        return counts
                + (estimates == 0 ? "" : " · resting on " + estimates + (estimates == 1 ? " estimate" : " estimates"));
    }

    private List<String> rung(Finding f) {
        int verdicts = widest(Stream.of(Verdict.values()).map(Verdict::toString).toList());
        int names = widest(dossier.findings().stream().map(Finding::check).toList());
        int sides = widest(dossier.findings().stream().map(Finding::side).toList());
        int margins = widest(dossier.findings().stream().map(LadderText::margin).toList());
        var head = Mark.of(f.verdict()) + " " + padded(f.verdict().toString(), verdicts) + "  "
                + padded(f.check(), names) + "  " + padded(f.side(), sides) + "  " + right(margin(f), margins) + "  ";
        boolean wide = columns - head.length() >= LEAST_FOR_SAYS;
        var lines = new ArrayList<String>();
        int indent = wide ? head.length() : MARK;
        if (wide) {
            lines.addAll(hanging(head, f.says(), columns));
        } else {
            var margin = margin(f).isEmpty() ? "" : ", " + margin(f);
            lines.addAll(hanging(
                    Mark.of(f.verdict()) + " ", f.verdict() + ": " + f.check() + ", " + f.side() + margin, columns));
            lines.addAll(hanging(" ".repeat(indent), f.says(), columns));
        }
        var odds = this.odds.get(f.key());
        if (odds != null) {
            lines.addAll(hanging(" ".repeat(indent), odds, columns));
        }
        if (!f.remedy().isEmpty()) {
            lines.addAll(hanging(" ".repeat(indent) + "→ ", f.remedy(), columns));
        }
        return lines;
    }

    private static String margin(Finding f) {
        var margin = f.marginWorst();
        if (margin == null || f.verdict() == Verdict.CANNOT_TELL) {
            return "";
        }
        return (margin < 0 ? "" : "+") + Numbers.fixed(100 * margin, 0) + " %";
    }

    /// {@return pulls, speeds and tensions to start with}
    List<String> numbers() {
        var lines = new ArrayList<String>();
        lines.add("First numbers");
        lines.add("");
        int names = widest(dossier.numbers().stream().map(FirstNumber::name).toList());
        int sides = widest(dossier.numbers().stream().map(LadderText::side).toList());
        for (var n : dossier.numbers()) {
            var habit = n.habit().isEmpty() ? "" : " (habit)";
            var told = n.needs().isEmpty() ? value(n.value(), n.unit()) : "needs " + String.join(", ", n.needs());
            if (columns < names + sides + LEAST_FOR_SAYS) {
                lines.addAll(outdented(n.name() + ", " + side(n) + ": " + told + habit, columns));
            } else {
                lines.addAll(
                        hanging(padded(n.name(), names) + "  " + padded(side(n), sides) + "  ", told + habit, columns));
            }
        }
        var habits = dossier.numbers().stream()
                .map(FirstNumber::habit)
                .filter(h -> !h.isEmpty())
                .distinct()
                .toList();
        habits.forEach(habit -> lines.addAll(hanging("habit: ", habit, columns)));
        return lines;
    }

    private static String side(FirstNumber n) {
        return n.key().substring(n.key().lastIndexOf('.') + 1);
    }

    private static String value(double value, String unit) {
        return Numbers.significant(value, 4) + (unit.isEmpty() ? "" : " " + unit);
    }

    /// {@return the finding's rung and its working, line by line}
    List<String> working(Finding f) {
        var lines = new ArrayList<>(rung(f));
        lines.add("");
        lines.addAll(workings(f.working()));
        lines.addAll(restsOn(f.needs(), f.estimates()));
        if (!f.source().isEmpty()) {
            lines.addAll(hanging("  source: ", f.source(), columns));
        }
        return lines;
    }

    /// {@return the number and its working, line by line}
    List<String> working(FirstNumber n) {
        var lines =
                new ArrayList<>(hanging("", n.name() + ", " + side(n) + ": " + value(n.value(), n.unit()), columns));
        lines.add("");
        lines.addAll(workings(n.working()));
        lines.addAll(restsOn(n.needs(), n.estimates()));
        if (!n.habit().isEmpty()) {
            lines.addAll(hanging("  habit: ", n.habit(), columns));
        }
        return lines;
    }

    private List<String> restsOn(List<String> needs, List<String> estimates) {
        var lines = new ArrayList<String>();
        if (!needs.isEmpty()) {
            lines.addAll(hanging("  needs: ", String.join(", ", needs), columns));
        }
        if (!estimates.isEmpty()) {
            lines.addAll(hanging("  estimates: ", String.join(", ", estimates), columns));
        }
        return lines;
    }

    private List<String> workings(List<Line> working) {
        int symbols = widest(working.stream().map(Line::symbol).toList());
        var lines = new ArrayList<String>();
        for (var line : working) {
            boolean quoted = line.numbers().equals(Numbers.significant(line.value(), 9));
            var told = "= " + line.formula() + (quoted ? "" : " = " + line.numbers()) + " = "
                    + value(line.value(), line.unit());
            var head = "  " + padded(line.symbol(), symbols) + " ";
            var source = line.source().isEmpty() ? "" : "(" + line.source() + ")";
            if (head.length() + told.length() + 2 + source.length() <= columns) {
                lines.add((head + told + "  " + source).stripTrailing());
            } else {
                lines.addAll(hanging(head, told, columns));
                lines.addAll(hanging(" ".repeat(head.length() + 2), source, columns));
            }
        }
        return lines;
    }
}
