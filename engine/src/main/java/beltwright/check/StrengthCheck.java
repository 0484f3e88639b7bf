package beltwright.check;

import beltwright.kit.Role;
import beltwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/// A question of strength: what is demanded and what there is, worked out by one formula with every number at nominal,
/// at the limit that hurts and at the limit that helps.
///
/// The formula must rise or fall with each of its numbers over their limits, so that the three enclose whatever lies
/// between.
abstract class StrengthCheck extends Check {
    StrengthCheck(String slug, String name, String unit, Scope scope, String source, Role... about) {
        super(slug, name, unit, scope, source, about);
        tasked();
    }

    /// {@return what is demanded}
    ///
    /// @param motorNm torque of the motor that the kit must stand (N·m)
    abstract double demand(Subject s, At at, double motorNm);

    /// {@return what there is}
    ///
    /// @param motorNm torque of the motor that the kit must stand (N·m)
    abstract double capacity(Subject s, At at, double motorNm);

    /// Writes the lines of demand and capacity at nominal.
    abstract void write(Subject s, Working w);

    /// {@return whether this gives as the motor's torque rises, so that it can be the weakest link}
    boolean torqued() {
        return false;
    }

    /// {@return what gives, in the table of the weakest link}
    String gives() {
        return name();
    }

    /// {@return what it asks about that the tension of the belt pulls on at rest, and so ends the band; null where the
    /// tension does not reach it}
    TensionLimit.@Nullable Bearer bearer() {
        return null;
    }

    /// {@return what it does when it gives}
    WeakestLink.Kind kind(Subject s) {
        return WeakestLink.Kind.BREAKS;
    }

    /// {@return torque that must be stood (N·m); 0 where the motor has no part in it}
    double motorNm(Subject s, At at) {
        return scope() == Scope.DRIVE ? DrivePull.worstNm(s, at) : 0;
    }

    @Override
    public final void measure(Subject s, Reading out) {
        double worst = motorNm(s, At.WORST);
        double nominal = motorNm(s, At.NOMINAL);
        double best = motorNm(s, At.BEST);
        out.set(
                new Range(demand(s, At.BEST, best), demand(s, At.NOMINAL, nominal), demand(s, At.WORST, worst)),
                new Range(capacity(s, At.WORST, worst), capacity(s, At.NOMINAL, nominal), capacity(s, At.BEST, best)));
    }

    @Override
    public final void measureDrawn(Subject drawn, Subject designed, Reading out) {
        double motorNm = motorNm(drawn, At.NOMINAL);
        out.set(Range.exact(demand(drawn, At.NOMINAL, motorNm)), Range.exact(capacity(drawn, At.NOMINAL, motorNm)));
    }

    @Override
    public final void explain(Subject s, Working w, Reading out) {
        write(s, w);
        measure(s, out);
        w.given("demand_worst", "demanded, every number at its worse limit", out.demandWorst, unit(), "worst case");
        w.given("capacity_worst", "there is, every number at its worse limit", out.capacityWorst, unit(), "worst case");
    }
}
