package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.BearingSize;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Do the bearings run: firm in the turning wheel, sliding on the standing axle, touched on their inner rings only?
final class BearingChecks {
    private static final String HABIT = "common practice, no source";

    private BearingChecks() {}

    static List<Check> all() {
        return List.of(
                new OnAxle("inner"),
                new OnAxle("outer"),
                new InSeat("inner"),
                new InSeat("outer"),
                new SeatDepth(),
                new StandardBearing(),
                new BearingOffThread(),
                new RingsClearShields());
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

    /// Axle and wheel can only meet over a bearing that is made.
    static final class StandardBearing extends Check {
        private static final double ALLOWED = 0.15;

        StandardBearing() {
            super(
                    "standard-bearing",
                    "A standard bearing between axle and wheel",
                    "mm",
                    Scope.END,
                    "nearest deep groove bearing of the standard sizes; allowed: " + HABIT,
                    Role.WHEEL,
                    Role.HANGER);
        }

        private static double off(Subject s, BearingSize size) {
            return off(
                    size,
                    s.kit().hanger().axleDiameterMm().nominal(),
                    s.end().wheel().bearingSeatMm().nominal());
        }

        private static double off(BearingSize size, double axle, double seat) {
            return Math.max(Math.abs(size.boreMm() - axle), Math.abs(size.outsideMm() - seat));
        }

        private static Range offAtLimits(Subject s, BearingSize size) {
            var axle = s.kit().hanger().axleDiameterMm();
            var seat = s.end().wheel().bearingSeatMm();
            double worst = Math.max(off(size, axle.lower(), seat.lower()), off(size, axle.upper(), seat.upper()));
            double best = Math.min(off(size, axle.lower(), seat.lower()), off(size, axle.upper(), seat.upper()));
            return new Range(Math.min(best, off(s, size)), off(s, size), Math.max(worst, off(s, size)));
        }

        private static BearingSize nearest(Subject s) {
            var nearest = BearingSize.values()[0];
            for (var size : BearingSize.values()) {
                if (off(s, size) < off(s, nearest)) {
                    nearest = size;
                }
            }
            return nearest;
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(offAtLimits(s, nearest(s)), Range.exact(ALLOWED));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("d", s.kit().hanger().axleDiameterMm());
            w.given("D_seat", s.end().wheel().bearingSeatMm());
            var size = nearest(s);
            w.given("d_std", "bore of " + size, size.boreMm(), "mm", "ISO 15 sizes");
            w.given("D_std", "outside of " + size, size.outsideMm(), "mm", "ISO 15 sizes");
            double off =
                    w.line("m", "max(abs(d_std − d), abs(D_std − D_seat))", off(s, size), "mm", "the worse of the two");
            out.set(offAtLimits(s, size), Range.exact(w.given("m_most", "allowed", ALLOWED, "mm", HABIT)));
        }

        @Override
        public String says(Subject s, Reading r) {
            var size = nearest(s);
            return (r.capacity() >= r.demand() ? "a " + size + " fits: " : "the nearest is a " + size + ": ")
                    + Numbers.plain(size.boreMm()) + " × " + Numbers.plain(size.outsideMm()) + " × "
                    + Numbers.plain(size.widthMm()) + " mm";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a wheel with a seat, or a hanger with an axle, of a standard size";
        }

        @Override
        protected String off() {
            return "off a standard size";
        }
    }

    /// The outer bearing runs on plain axle: a thread under it cuts the ring loose.
    static final class BearingOffThread extends ChainGap {
        BearingOffThread() {
            super(
                    "bearing-thread",
                    "Outer bearing on plain axle",
                    Scope.END,
                    0,
                    "at least half of the ring on plain axle, " + HABIT,
                    Role.HANGER,
                    Role.OUTER_BEARING,
                    Role.INNER_BEARING,
                    Role.CORE_SPACER,
                    Role.INNER_RING);
        }

        @Override
        List<Term> terms(Subject s) {
            var terms = new ArrayList<>(List.of(
                    plus("l_axle", s.kit().hanger().axleLengthMm()),
                    minus("l_thread", s.kit().hanger().axleThreadLengthMm()),
                    minus("t_ring1", s.end().innerRing().lengthMm()),
                    minus("b1", s.end().innerBearing().widthMm()),
                    minus("l_spacer", s.end().coreSpacer().lengthMm()),
                    minus("b2", s.end().outerBearing().widthMm()).half()));
            if (s.filled(Role.AXLE_SPACER)) {
                terms.add(minus("t_spacer", s.end().spacer().lengthMm()));
            }
            return terms;
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacity() < 0
                    ? "the thread begins inside the ring, " + Numbers.fixed(-r.capacity(), 1) + " mm before its middle"
                    : "the thread begins " + r.capacityText() + " mm beyond the middle of the ring";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a stack " + leastMm(r.demand() - r.capacityWorst()) + " shorter, or an axle with a shorter thread";
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
            return new Range(
                    Math.min(
                            shoulder(in.boreMm().lower(), in.outsideMm().lower()),
                            shoulder(out.boreMm().lower(), out.outsideMm().lower())),
                    Math.min(
                            shoulder(in.boreMm().nominal(), in.outsideMm().nominal()),
                            shoulder(out.boreMm().nominal(), out.outsideMm().nominal())),
                    Math.min(
                            shoulder(in.boreMm().upper(), in.outsideMm().upper()),
                            shoulder(out.boreMm().upper(), out.outsideMm().upper())));
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
            w.line(
                    "a_min",
                    "min(d1_min + 0.35·(D1_min − d1_min), d2_min + 0.35·(D2_min − d2_min))",
                    shoulder.low(),
                    "mm",
                    "of the smallest bearing");
            out.set(widest, shoulder);
        }

        @Override
        public String says(Subject s, Reading r) {
            return "widest sleeve " + r.demandText() + " mm; " + r.capacityText() + " allowed";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "sleeves of at most " + mostMm(r.capacityWorst()) + " outside diameter";
        }
    }
}
