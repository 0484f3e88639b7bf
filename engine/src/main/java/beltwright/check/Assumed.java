package beltwright.check;

import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Task;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import beltwright.strength.FrictionGrip;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/// The estimating rules of strength: what stands in for a load or a friction that the task does not give, each with its
/// reason. `docs/theory.md` lists them; `--no-estimates` turns them off. Habits of the trade, without a published
/// source.
public final class Assumed {
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

    private static final List<Rule> RULES = List.of(
            new Rule(Task::landingFactor, LANDING),
            new Rule(Task::roadFactor, ROAD),
            new Rule(Task::drivenBrakingPercent, LEANING),
            new Rule(Task::corneringFactor, CORNERING),
            new Rule(Task::motorJoltFactor, JOLT),
            new Rule(Task::strikeFactor, STRIKE),
            new Rule(Task::peakFactor, PEAK),
            new Rule(Task::jointFriction, FRICTION),
            new Rule(Task::lifeKm, LIFE),
            new Rule(Task::mountC, WARM));

    /// Seats whose screws or nut are asked what they press, and so for their preload.
    private static final Set<Role> TIGHTENED = Set.of(
            Role.MOTOR_SCREWS,
            Role.CLAMP_SCREWS,
            Role.FLANGE_SCREWS,
            Role.HUB_SCREWS,
            Role.PULLEY_SCREWS,
            Role.AXLE_NUT);

    private Assumed() {}

    private record Rule(Function<Task, Dimension> typed, Dimension instead) {}

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
        return typed.known() || !kit.reference().estimating()
                ? typed
                : kit.chance().of(rule);
    }

    /// {@return the rules with limits that stand in for what this kit's task does not give}
    public static List<Dimension> standingIn(Kit kit) {
        return kit.reference().estimating()
                ? RULES.stream()
                        .filter(r -> !r.typed().apply(kit.task()).known())
                        .map(Rule::instead)
                        .filter(Dimension::toleranced)
                        .toList()
                : List.of();
    }

    /// {@return by how much preload misses its aim (%), for each seat whose preload a check asks for; none where
    /// that is unknown or nothing}
    public static SortedMap<SeatName, Dimension> misses(Kit kit) {
        var scatter = scatter(kit);
        double most = scatter.upper();
        var misses = new TreeMap<SeatName, Dimension>();
        if (most > 0) {
            var miss = new Dimension(scatter.of(), scatter.text(), 0, -most, most, scatter.provenance());
            kit.seats().keySet().stream()
                    .filter(seat -> TIGHTENED.contains(seat.role()))
                    .forEach(seat -> misses.put(seat, miss));
        }
        return misses;
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
