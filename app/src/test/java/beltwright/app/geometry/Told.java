package beltwright.app.geometry;

import beltwright.check.Finding;
import beltwright.check.Line;
import beltwright.check.Verdict;
import java.util.Locale;

/// What the engine told and what the model measured, held against each other.
record Told(Finding finding, Answer own) {
    private static final double LOOSE_SPACER_MM = 0.4;

    String slug() {
        return finding.key().substring(0, finding.key().indexOf('.'));
    }

    /// {@return the engine's number, in the terms of the model's}
    double number() {
        return switch (slug()) {
            case "belt-plane", "lug-circle" -> finding.capacity() - finding.demand();
            case "teeth-in-mesh" -> line("z_mesh");
            case "core-spacer" -> line("s");
            default -> finding.capacity();
        };
    }

    private double line(String symbol) {
        return finding.working().stream()
                .filter(l -> l.symbol().equals(symbol))
                .mapToDouble(Line::value)
                .findFirst()
                .orElse(Double.NaN);
    }

    /// {@return whether a value drawn between the limits lies below what the engine calls the worst}
    boolean undercutsTheWorst() {
        double worst = switch (slug()) {
            case "belt-plane", "lug-circle" -> finding.capacityWorst() - finding.demandWorst();
            case "core-spacer" -> Double.NEGATIVE_INFINITY; // a fit between two bounds: no single worst
            default -> finding.capacityWorst();
        };
        boolean overlapping = own.engine() == Answer.Claim.EXACT_OUTSIDE && worst < 0;
        return !overlapping && own.value() < worst - own.within();
    }

    /// {@return below which number it fails}
    private double wanted() {
        return switch (slug()) {
            case "belt-plane", "lug-circle" -> 0;
            case "teeth-in-mesh" -> 5;
            case "core-spacer" -> 0; // below it the bearings are pinched
            default -> finding.demand();
        };
    }

    boolean tooNearToTell() {
        return Math.abs(own.value() - wanted()) <= own.within();
    }

    private boolean fails() {
        return Double.isNaN(own.value())
                || own.value() < wanted()
                || (slug().equals("core-spacer") && own.value() > LOOSE_SPACER_MM);
    }

    boolean verdictAgrees() {
        if (finding.verdict() == Verdict.CANNOT_TELL) {
            return Double.isNaN(own.value());
        }
        boolean engineFails = finding.verdict() == Verdict.FAILS;
        return own.engine() == Answer.Claim.AT_MOST ? engineFails || !fails() : fails() == engineFails;
    }

    boolean numberAgrees() {
        if (Double.isNaN(own.value()) || Double.isNaN(number())) {
            return Double.isNaN(own.value()) && Double.isNaN(number());
        }
        double over = own.value() - number();
        return switch (own.engine()) {
            case EXACT -> Math.abs(over) <= own.within();
            case EXACT_OUTSIDE -> Math.abs(over) <= own.within() || (own.value() < 0 && number() < 0);
            case AT_MOST -> over >= -own.within();
        };
    }

    boolean engineFindsMore() {
        return number() > own.value() + own.within();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s %s: engine %.4f, measured %.4f, wanted %.3f",
                finding.key(),
                finding.verdict(),
                number(),
                own.value(),
                wanted());
    }
}
