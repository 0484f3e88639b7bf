package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.Sleeve;
import beltwright.part.StandardSizes;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import java.util.List;

/// Does the wheel end go together on the axle, and stay there? The outer ring turns with the wheel and sits firm; the
/// inner ring stands still on the axle and may slide.
final class AxleChecks {
    private static final String HABIT = "common practice, no source";

    private AxleChecks() {}

    static List<Check> all() {
        return List.of(
                new SleeveOnAxle("core-spacer-bore", "Core spacer on the axle", Role.CORE_SPACER),
                new SleeveOnAxle("inner-ring-bore", "Inner speed ring on the axle", Role.INNER_RING),
                new SleeveOnAxle("outer-ring-bore", "Outer speed ring on the axle", Role.OUTER_RING),
                new SleeveOnAxle("axle-spacer-bore", "Axle spacer on the axle", Role.AXLE_SPACER),
                new WasherOnAxle(),
                new CoreSpacer(),
                new ThreadPastNut(),
                new NutClamps());
    }

    private static Sleeve sleeve(Subject s, Role role) {
        return switch (role) {
            case CORE_SPACER -> s.end().coreSpacer();
            case INNER_RING -> s.end().innerRing();
            case AXLE_SPACER -> s.end().spacer();
            default -> s.end().outerRing();
        };
    }

    /// A sleeve goes over the axle.
    static final class SleeveOnAxle extends Fit {
        private final Role role;

        SleeveOnAxle(String slug, String name, Role role) {
            super(slug, name, Scope.END, 0, 0.6, "centred by nothing, so not too loose, " + HABIT, role, Role.HANGER);
            this.role = role;
        }

        @Override
        Dimension hole(Subject s) {
            return sleeve(s, role).boreMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.kit().hanger().axleDiameterMm();
        }
    }

    /// The washer under the nut goes over the axle's thread.
    static final class WasherOnAxle extends Fit {
        WasherOnAxle() {
            super(
                    "axle-washer-hole",
                    "Axle washer over the axle",
                    Scope.END,
                    0,
                    1,
                    HABIT,
                    Role.AXLE_WASHER,
                    Role.HANGER);
        }

        @Override
        Dimension hole(Subject s) {
            return s.end().washer().holeMm();
        }

        @Override
        Dimension shaft(Subject s) {
            var hanger = s.kit().hanger();
            return Dimension.exact(
                    hanger.id() + ".axleThread",
                    hanger.axleThread().majorMm(),
                    hanger.axleDiameterMm().provenance());
        }
    }

    /// The spacer keeps the bearings apart: too short and the nut pinches them.
    static final class CoreSpacer extends Fit {
        private static final double LOOSE = 0.4; // more than this rattles (mm)

        CoreSpacer() {
            super(
                    "core-spacer",
                    "Core spacer against the core spacing",
                    Scope.END,
                    StandardSizes.CORE_SPACER_LEAST_OVER_MM,
                    StandardSizes.CORE_SPACER_MOST_OVER_MM,
                    "0.13 to 0.25 mm over is the target, none at all pinches the bearings, " + HABIT,
                    Role.CORE_SPACER,
                    Role.WHEEL);
        }

        @Override
        Dimension hole(Subject s) {
            return s.end().coreSpacer().lengthMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.end().wheel().coreSpacingMm();
        }

        @Override
        public Verdict verdict(Subject s, Reading r) {
            var over = clearance(s);
            var strict = r.verdict();
            boolean neverPinches = over.low() > 0;
            return strict == Verdict.FAILS && neverPinches && over.nominal() <= LOOSE ? Verdict.MARGINAL : strict;
        }

        @Override
        public String says(Subject s, Reading r) {
            var over = clearance(s);
            return Numbers.fixed(Math.abs(over.nominal()), 2) + (over.nominal() < 0 ? " mm shorter (" : " mm longer (")
                    + Numbers.fixed(over.low(), 2) + " to "
                    + Numbers.fixed(over.high(), 2) + "); 0.13 to 0.25 wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a spacer of "
                    + Numbers.fixed(StandardSizes.coreSpacerMm(s.end().wheel()), 2)
                    + " mm; measure this wheel, cores differ";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double mid = s.endAt().coreMiddleMm().nominal();
            double half = s.end().wheel().coreSpacingMm().nominal() / 2;
            return List.of(new DrawnDimension(
                    "core spacing",
                    View.PLAN,
                    s.side(),
                    0,
                    s.plan(mid - half),
                    0,
                    s.plan(mid + half),
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// At least one whole thread stands past the nut.
    static final class ThreadPastNut extends Check {
        ThreadPastNut() {
            super(
                    "thread-past-nut",
                    "Axle thread past the nut",
                    "mm",
                    Scope.END,
                    "at least one full thread beyond the nut, " + HABIT,
                    Role.AXLE_NUT,
                    Role.HANGER,
                    Role.INNER_RING,
                    Role.INNER_BEARING,
                    Role.CORE_SPACER,
                    Role.OUTER_BEARING,
                    Role.OUTER_RING);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(s.kit().hanger().axleThread().pitchMm(), s.endAt().threadPastNutMm());
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            Stack.stack(s, w);
            var past = w.chain(
                    "e",
                    "mm",
                    "axle end beyond the nut",
                    List.of(
                            plus("l_axle", s.kit().hanger().axleLengthMm()),
                            minus(
                                    "stack",
                                    "speed rings, bearings and core spacer",
                                    s.endAt().stackMm()),
                            minus("m", s.end().nut().heightMm())));
            out.set(
                    w.given(
                            "p",
                            "one thread, " + s.kit().hanger().axleThread(),
                            s.kit().hanger().axleThread().pitchMm(),
                            "mm",
                            "ISO 261"),
                    past);
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm past the nut; one thread of " + Numbers.fixed(r.demand(), 2) + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a stack " + leastMm(r.demand() - r.capacityWorst())
                    + " shorter (thinner rings, lower nut) or a longer axle; never ride with fewer threads";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double end = s.kit().hanger().axleLengthMm().nominal();
            double nut = end - s.endAt().threadPastNutMm().nominal();
            return List.of(new DrawnDimension(
                    "thread past the nut",
                    View.PLAN,
                    s.side(),
                    0,
                    s.plan(nut),
                    0,
                    s.plan(end),
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// The nut meets the stack before it runs out of thread.
    static final class NutClamps extends ChainGap {
        NutClamps() {
            super(
                    "nut-clamps",
                    "Nut reaches the stack",
                    Scope.END,
                    0.5,
                    HABIT,
                    Role.HANGER,
                    Role.INNER_RING,
                    Role.INNER_BEARING,
                    Role.CORE_SPACER,
                    Role.OUTER_BEARING,
                    Role.OUTER_RING);
        }

        @Override
        void before(Subject s, Working w) {
            Stack.stack(s, w);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus(
                            "stack",
                            "speed rings, bearings and core spacer",
                            s.endAt().stackMm()),
                    minus("l_axle", s.kit().hanger().axleLengthMm()),
                    plus("l_thread", s.kit().hanger().axleThreadLengthMm()));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "the thread begins " + r.capacityText() + " mm inside the stack; " + r.demandText() + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a ring " + leastMm(r.demand() - r.capacityWorst()) + " thicker under the nut, or a longer thread";
        }
    }
}
