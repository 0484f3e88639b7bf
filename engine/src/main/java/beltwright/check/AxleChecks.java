package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.Sleeve;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does the wheel end go together on the axle, and stay there? The outer ring turns with the wheel and sits firm; the
/// inner ring stands still on the axle and may slide.
final class AxleChecks {
    private static final String HABIT = "common practice, no source";

    private AxleChecks() {}

    static List<Check> all() {
        return List.of(
                new OnAxle("inner"),
                new OnAxle("outer"),
                new InSeat("inner"),
                new InSeat("outer"),
                new SeatDepth(),
                new SleeveOnAxle("core-spacer-bore", "Core spacer on the axle", Role.CORE_SPACER),
                new SleeveOnAxle("inner-ring-bore", "Inner speed ring on the axle", Role.INNER_RING),
                new SleeveOnAxle("outer-ring-bore", "Outer speed ring on the axle", Role.OUTER_RING),
                new RingsClearShields(),
                new CoreSpacer(),
                new ThreadPastNut(),
                new NutClamps());
    }

    private static Sleeve sleeve(Subject s, Role role) {
        return switch (role) {
            case CORE_SPACER -> s.end().coreSpacer();
            case INNER_RING -> s.end().innerRing();
            default -> s.end().outerRing();
        };
    }

    /// The inner ring slides on the standing axle without slop.
    static final class OnAxle extends Fit {
        private final boolean inner;

        OnAxle(String which) {
            super(
                    which + "-bearing-axle",
                    (which.equals("inner") ? "Inner" : "Outer") + " bearing on the axle",
                    Scope.END,
                    0,
                    0.05,
                    "standing axle, inner ring may slide, " + HABIT,
                    which.equals("inner") ? Role.INNER_BEARING : Role.OUTER_BEARING,
                    Role.HANGER);
            this.inner = which.equals("inner");
        }

        @Override
        Dimension hole(Subject s) {
            return (inner ? s.end().innerBearing() : s.end().outerBearing()).boreMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.kit().hanger().axleDiameterMm();
        }
    }

    /// The outer ring sits firm in the turning wheel.
    static final class InSeat extends Fit {
        private final boolean inner;

        InSeat(String which) {
            super(
                    which + "-bearing-seat",
                    (which.equals("inner") ? "Inner" : "Outer") + " bearing in its seat",
                    Scope.END,
                    -0.06,
                    0,
                    "turning wheel, outer ring firm, " + HABIT,
                    which.equals("inner") ? Role.INNER_BEARING : Role.OUTER_BEARING,
                    Role.WHEEL);
            this.inner = which.equals("inner");
        }

        @Override
        Dimension hole(Subject s) {
            return s.end().wheel().bearingSeatMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return (inner ? s.end().innerBearing() : s.end().outerBearing()).outsideMm();
        }
    }

    /// The seat supports most of the bearing's width.
    static final class SeatDepth extends ChainGap {
        SeatDepth() {
            super(
                    "seat-depth",
                    "Bearing seats deep enough",
                    Scope.END,
                    -1.5,
                    "the ring may stand out by up to 1.5 mm, " + HABIT,
                    Role.WHEEL,
                    Role.INNER_BEARING,
                    Role.OUTER_BEARING);
        }

        private static Dimension wider(Subject s) {
            var a = s.end().innerBearing().widthMm();
            var b = s.end().outerBearing().widthMm();
            return a.upper() >= b.upper() ? a : b;
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(plus("t_seat", s.end().wheel().bearingSeatDepthMm()), minus("b_bearing", wider(s)));
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacity() < 0
                    ? "the ring stands " + Numbers.fixed(-r.capacity(), 2) + " mm out of its seat; 1.5 at most"
                    : "the ring is inside its seat";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a deeper seat or a narrower bearing";
        }
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

    /// Rings and spacer press on the inner ring only.
    static final class RingsClearShields extends Check {
        RingsClearShields() {
            super(
                    "rings-shields",
                    "Rings and spacer on the inner ring only",
                    "mm",
                    Scope.END,
                    "shoulder of the inner ring taken as bore + 0.35·(outside − bore), " + HABIT,
                    Role.INNER_RING,
                    Role.OUTER_RING,
                    Role.CORE_SPACER,
                    Role.INNER_BEARING,
                    Role.OUTER_BEARING);
        }

        static double shoulder(double bore, double outside) {
            return bore + 0.35 * (outside - bore);
        }

        private static Range shoulder(Subject s) {
            var in = s.end().innerBearing();
            var out = s.end().outerBearing();
            return Range.exact(Math.min(
                    shoulder(in.boreMm().nominal(), in.outsideMm().nominal()),
                    shoulder(out.boreMm().nominal(), out.outsideMm().nominal())));
        }

        private static Range widest(Subject s) {
            var a = s.end().innerRing().outsideMm();
            var b = s.end().outerRing().outsideMm();
            var c = s.end().coreSpacer().outsideMm();
            return new Range(
                    Math.max(Math.max(a.lower(), b.lower()), c.lower()),
                    Math.max(Math.max(a.nominal(), b.nominal()), c.nominal()),
                    Math.max(Math.max(a.upper(), b.upper()), c.upper()));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(widest(s), shoulder(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("d1", s.end().innerBearing().boreMm());
            w.given("D1", s.end().innerBearing().outsideMm());
            w.given("d2", s.end().outerBearing().boreMm());
            w.given("D2", s.end().outerBearing().outsideMm());
            w.given("o1", s.end().innerRing().outsideMm());
            w.given("o2", s.end().outerRing().outsideMm());
            w.given("o3", s.end().coreSpacer().outsideMm());
            var widest = widest(s);
            var shoulder = shoulder(s);
            w.line("o", "max(max(o1, o2), o3)", widest.nominal(), "mm", "the widest sleeve");
            w.line("o_max", "max(max(o1_max, o2_max), o3_max)", widest.high(), "mm", "at its upper limit");
            w.line(
                    "a",
                    "min(d1 + 0.35·(D1 − d1), d2 + 0.35·(D2 − d2))",
                    shoulder.nominal(),
                    "mm",
                    "shoulder of the inner ring");
            out.set(widest, shoulder);
        }

        @Override
        public String says(Subject s, Reading r) {
            return "widest sleeve " + r.demandText() + " mm; " + r.capacityText() + " allowed";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "sleeves of at most " + mm(r.capacity()) + " outside diameter";
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
                    0.13,
                    0.25,
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
            return strict == Verdict.FAILS && over.nominal() >= 0 && over.nominal() <= LOOSE
                    ? Verdict.MARGINAL
                    : strict;
        }

        @Override
        public String says(Subject s, Reading r) {
            var over = clearance(s);
            return Numbers.fixed(over.nominal(), 2) + " mm longer ("
                    + Numbers.fixed(over.low(), 2) + " to "
                    + Numbers.fixed(over.high(), 2) + "); 0.13 to 0.25 wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a spacer of " + Numbers.fixed(shaft(s).nominal() + 0.19, 2)
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
                    Role.HANGER);
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
            return "a stack " + mm(r.demand() - r.capacityWorst())
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
            super("nut-clamps", "Nut reaches the stack", Scope.END, 0.5, HABIT, Role.AXLE_NUT, Role.HANGER);
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
            return "a ring " + mm(r.demand() - r.capacityWorst()) + " thicker under the nut, or a longer thread";
        }
    }
}
