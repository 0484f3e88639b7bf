package beltwright.app.bench;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import org.jspecify.annotations.Nullable;

/// One rung of the ladder as the page shows it: the finding, and its bar to the scale that all rungs share.
///
/// The bar's length is capacity over demand; the dashed line stands where they are equal. An arrowhead at either end
/// says
/// that the bar would go on.
///
/// @param odds how often it holds, where a spread was asked for; else empty
public record Rung(Finding finding, boolean chosen, String odds) {
    /// Where demand is met (px).
    public static final double MET = 60;

    private static final double LONGEST = 190;

    public String mark() {
        return switch (finding.verdict()) {
            case FAILS -> "fails";
            case CANNOT_TELL -> "cannot-tell";
            case MARGINAL -> "marginal";
            case HOLDS -> "holds";
        };
    }

    public boolean standing() {
        return finding.verdict() != Verdict.HOLDS;
    }

    public boolean bar() {
        return finding.margin() != null && finding.marginWorst() != null && finding.marginBest() != null;
    }

    public String nominal() {
        return at(finding.margin());
    }

    public String worst() {
        return at(finding.marginWorst());
    }

    public String band() {
        double from = length(finding.marginWorst());
        double to = length(finding.marginBest());
        return number(Math.max(2, to - from));
    }

    /// {@return whether the capacity is more than the bar can show}
    public boolean beyond() {
        return wanted(finding.margin()) > LONGEST;
    }

    /// {@return whether there is less than nothing, so that the bar would run out to the left}
    public boolean below() {
        return wanted(finding.margin()) < 0;
    }

    public String seats() {
        return String.join("|", finding.subjects());
    }

    public String side() {
        return finding.side().equals("kit") ? "" : finding.side();
    }

    private static String at(@Nullable Double margin) {
        return number(length(margin));
    }

    private static double length(@Nullable Double margin) {
        return Math.clamp(wanted(margin), 0, LONGEST);
    }

    private static double wanted(@Nullable Double margin) {
        return margin == null ? 0 : (1 + margin) * MET;
    }

    private static String number(double px) {
        return String.valueOf(Math.round(px * 10) / 10.0);
    }
}
