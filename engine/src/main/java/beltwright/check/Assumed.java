package beltwright.check;

import beltwright.kit.Kit;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import beltwright.strength.FrictionGrip;

/// The estimating rules of strength: what stands in for a load or a friction that the task does not give, each with its
/// reason. `docs/theory.md` lists them; `--no-estimates` turns them off. Habits of the trade, without a published
/// source.
final class Assumed {
    private static final Dimension LANDING = rule("landingFactor", 2, 3, 4, "a kerb's drop on stiff legs");
    private static final Dimension ROAD = rule("roadFactor", 1.3, 1.5, 1.7, "hard wheels on rough asphalt");
    private static final Dimension LEANING = rule("drivenBrakingPercent", 50, 55, 60, "a rider who leans back");
    private static final Dimension CORNERING = rule("corneringFactor", 0.3, 0.5, 0.6, "as much as urethane grips");
    private static final Dimension JOLT = rule("motorJoltFactor", 8, 10, 12, "rough road on hard wheels");
    private static final Dimension STRIKE = rule("strikeFactor", 0.5, 1, 1.5, "a kerb that stops the board");
    private static final Dimension PEAK = rule("peakFactor", 1.5, 1.5, 1.5, "reversing drive with jolts");
    private static final Dimension FRICTION = rule("jointFriction", 0.10, 0.12, 0.15, "dry to lightly oiled metal");
    private static final Dimension SCATTER = rule("preloadScatterPercent", 35, 35, 35, "hand key without a torque");
    private static final Dimension BY_WRENCH = scatter(FrictionGrip.TORQUE_KEY, "torque wrench, α_A 1.6");
    private static final Dimension BY_ANGLE = scatter(FrictionGrip.ANGLE, "tightened by angle, α_A 1.2");
    private static final Dimension LIFE = rule("lifeKm", 5000, 5000, 5000, "some years of commuting");
    private static final Dimension WARM = rule("mountC", 60, 60, 60, "beside a motor that works");

    private Assumed() {}

    private static Dimension rule(String field, double low, double nominal, double high, String reason) {
        var text = low == high
                ? Numbers.plain(nominal)
                : Numbers.plain(nominal) + " +" + Numbers.significant(high - nominal, 3) + "/-"
                        + Numbers.significant(nominal - low, 3);
        return new Dimension(
                "task." + field,
                text,
                nominal,
                low,
                high,
                new Provenance(Source.ESTIMATE, reason + ", common practice, no source"));
    }

    private static Dimension scatter(double share, String reason) {
        return Dimension.exact(
                "task.preloadScatterPercent",
                100 * share,
                new Provenance(Source.ESTIMATE, reason + " of VDI 2230-1, from memory"));
    }

    private static Dimension or(Kit kit, Dimension typed, Dimension rule) {
        return typed.known() || !kit.reference().estimating() ? typed : rule;
    }

    static Dimension landing(Kit kit) {
        return or(kit, kit.task().landingFactor(), LANDING);
    }

    static Dimension road(Kit kit) {
        return or(kit, kit.task().roadFactor(), ROAD);
    }

    /// {@return the greater share of the weight that this axle carries (%)}
    static Dimension axleShare(Kit kit) {
        return or(kit, kit.task().drivenBrakingPercent(), LEANING);
    }

    static Dimension cornering(Kit kit) {
        return or(kit, kit.task().corneringFactor(), CORNERING);
    }

    static Dimension jolt(Kit kit) {
        return or(kit, kit.task().motorJoltFactor(), JOLT);
    }

    static Dimension strike(Kit kit) {
        return or(kit, kit.task().strikeFactor(), STRIKE);
    }

    static Dimension peak(Kit kit) {
        return or(kit, kit.task().peakFactor(), PEAK);
    }

    static Dimension friction(Kit kit) {
        return or(kit, kit.task().jointFriction(), FRICTION);
    }

    static Dimension scatter(Kit kit) {
        return or(
                kit,
                kit.task().preloadScatterPercent(),
                switch (kit.task().tightening()) {
                    case BY_HAND -> SCATTER;
                    case TORQUE_WRENCH -> BY_WRENCH;
                    case ANGLE -> BY_ANGLE;
                });
    }

    static Dimension life(Kit kit) {
        return or(kit, kit.task().lifeKm(), LIFE);
    }

    static Dimension warm(Kit kit) {
        return or(kit, kit.task().mountC(), WARM);
    }
}
