package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Where does an idler stand along the axle: in the belt's plane, clear of plate and wheel, and what does its screw
/// meet
/// behind the plate?
final class IdlerPlaceChecks {
    private static final String HABIT = "common practice, no source";

    private IdlerPlaceChecks() {}

    static List<Check> all() {
        return List.of(new Plane(), new Carried(), new Plate(), new WheelSide());
    }

    /// {@return the chain from the plate to the middle of the belt, which runs in the middle of the drive pulley's
    /// face}
    private static List<Term> belt(Subject s) {
        var terms = Stack.driveRim(s);
        return terms.subList(1, terms.size()); // without the plate's inset
    }

    /// {@return the same chain taken away}
    private static List<Term> lessBelt(Subject s) {
        return belt(s).stream()
                .map(t -> new Term(-1, t.symbol(), t.of(), t.told(), t.range(), t.divisor()))
                .toList();
    }

    /// {@return how far the idler's axis is from a point on the line from axle to motor (mm), exact at the limits}
    static Range away(Subject s, Range along) {
        var x = Range.of(s.drive().placement().idlerAlongMm()).minus(along).absolute();
        var y = Range.of(s.drive().placement().idlerAsideMm()).absolute();
        return new Range(
                Math.hypot(x.low(), y.low()), Math.hypot(x.nominal(), y.nominal()), Math.hypot(x.high(), y.high()));
    }

    static Range lesser(Range a, Range b) {
        return new Range(Math.min(a.low(), b.low()), Math.min(a.nominal(), b.nominal()), Math.min(a.high(), b.high()));
    }

    /// {@return by how much at least, for a remedy; what limits alone take away is hundredths}
    static String length(double value) {
        return Numbers.plain(Numbers.up(value, value < 1 ? 2 : 1)) + " mm";
    }

    /// The face lies under the whole belt. What the belt wanders on its pulley is left out.
    static final class Plane extends Check {
        private static final double WANTED = 0;

        Plane() {
            super(
                    "idler-plane",
                    "Idler in the belt's plane",
                    "mm",
                    Scope.DRIVE,
                    "worst case over two chains of dimensions",
                    Role.IDLER,
                    Role.DRIVE_PULLEY,
                    Role.BELT);
            placed();
        }

        private static List<Term> near(Subject s) {
            var terms = new ArrayList<>(belt(s));
            terms.add(minus("b_belt", s.drive().belt().widthMm()).half());
            terms.add(minus("s_idler", s.drive().idler().standoffMm()));
            terms.add(minus("t_idler", s.drive().idler().flangeThicknessMm()));
            return terms;
        }

        private static List<Term> far(Subject s) {
            var terms = new ArrayList<>(List.of(
                    plus("s_idler", s.drive().idler().standoffMm()),
                    plus("t_idler", s.drive().idler().flangeThicknessMm()),
                    plus("b_idler", s.drive().idler().faceWidthMm())));
            terms.addAll(lessBelt(s));
            terms.add(minus("b_belt", s.drive().belt().widthMm()).half());
            return terms;
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, lesser(Term.sum(near(s)), Term.sum(far(s))));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var near = w.chain("g_near", "mm", "belt inside the face, at the plate", near(s));
            var far = w.chain("g_far", "mm", "belt inside the face, at the wheel", far(s));
            var gap = lesser(near, far);
            w.line("g", "min(g_near, g_far)", gap.nominal(), "mm", "the nearer edge");
            if (w.has("g_near_min") && w.has("g_far_min")) {
                w.line("g_min", "min(g_near_min, g_far_min)", gap.low(), "mm", "at worst limits");
            }
            out.set(w.given("g_wanted", "required", WANTED, "mm", "the whole belt on the face"), gap);
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacity() < 0
                    ? "the belt hangs " + length(-r.capacity()) + " over the idler's edge"
                    : "the face reaches " + length(r.capacity()) + " past the belt";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double off = Term.sum(far(s)).nominal() - Term.sum(near(s)).nominal(); // positive: it stands too far out
            double missing = r.demand() - r.capacityWorst();
            return missing > Math.abs(off) / 2
                    ? "an idler face " + length(2 * missing) + " wider, in line with the belt, or closer limits"
                    : "the idler " + length(Math.abs(off) / 2)
                            + (off > 0 ? " nearer the plate" : " further from the plate");
        }
    }

    /// The screw clamps what the roller turns on: where that ends before the middle of the belt, the roller stands
    /// beside it and tips.
    static final class Carried extends ChainGap {
        Carried() {
            super(
                    "idler-carried",
                    "Idler carried as far as the belt's middle",
                    Scope.DRIVE,
                    0,
                    HABIT,
                    Role.IDLER,
                    Role.DRIVE_PULLEY);
            placed();
        }

        @Override
        List<Term> terms(Subject s) {
            var terms = new ArrayList<>(List.of(plus("t_grip", s.drive().idler().screwGripMm())));
            terms.addAll(lessBelt(s));
            return terms;
        }

        @Override
        public String says(Subject s, Reading r) {
            return "what its screw clamps ends " + length(Math.abs(r.capacity()))
                    + (r.capacity() < 0 ? " before" : " past") + " the middle of the belt";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "an idler whose screw passes through " + length(r.demand() - r.capacityWorst()) + " more";
        }
    }

    /// It turns beside the plate.
    static final class Plate extends ChainGap {
        Plate() {
            super("idler-plate", "Idler clear of the mount plate", Scope.DRIVE, 0.5, HABIT, Role.IDLER);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(plus("s_idler", s.drive().idler().standoffMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a spacer of " + length(r.demand() - r.capacityWorst()) + " more under the idler";
        }
    }

    /// The roller and the head of its screw stay clear of the wheel's side and tread.
    static final class WheelSide extends Check {
        private static final double WANTED = 1;

        WheelSide() {
            super(
                    "idler-wheel",
                    "Idler clear of the wheel",
                    "mm",
                    Scope.DRIVE,
                    "distance between simple outlines, worst limits; wanted: " + HABIT,
                    Role.IDLER,
                    Role.WHEEL,
                    Role.IDLER_SCREW,
                    Role.INNER_BEARING,
                    Role.INNER_RING);
            placed();
        }

        private static List<Term> rollerAlong(Subject s) {
            var idler = s.drive().idler();
            return List.of(
                    tread(s),
                    plus("i", s.drive().placement().plateInsetMm()),
                    minus("s_idler", idler.standoffMm()),
                    minus("t_idler", idler.flangeThicknessMm()),
                    minus("t_idler", idler.flangeThicknessMm()),
                    minus("b_idler", idler.faceWidthMm()));
        }

        private static List<Term> headAlong(Subject s) {
            return List.of(
                    tread(s),
                    plus("i", s.drive().placement().plateInsetMm()),
                    minus("t_grip", s.drive().idler().screwGripMm()),
                    minus("k_head", "height of the screw head", Range.exact(headMm(s))));
        }

        private static Term tread(Subject s) {
            return plus(
                    "y_tread",
                    "inner edge of the tread from the hanger's end face",
                    s.endAt().wheelInnerMm());
        }

        private static double headMm(Subject s) {
            var screw = s.drive().idlerScrew();
            return screw.head().heightMm(screw.thread());
        }

        private static Term beside(Subject s) {
            return plus("c_axle", "axle to the idler's axis", away(s, Range.ZERO));
        }

        private static List<Term> rollerAcross(Subject s) {
            return List.of(
                    beside(s),
                    minus("D_wheel", s.end().wheel().diameterMm()).half(),
                    minus("d_idler", s.drive().idler().reachDiameterMm()).half());
        }

        private static List<Term> headAcross(Subject s) {
            var screw = s.drive().idlerScrew();
            return List.of(
                    beside(s),
                    minus("D_wheel", s.end().wheel().diameterMm()).half(),
                    minus(
                                    "d_head",
                                    "diameter of the screw head",
                                    Range.exact(screw.head().diameterMm(screw.thread())))
                            .half());
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(
                    WANTED,
                    lesser(
                            Apart.apart(Term.sum(rollerAlong(s)), Term.sum(rollerAcross(s))),
                            Apart.apart(Term.sum(headAlong(s)), Term.sum(headAcross(s)))));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            Stack.tread(s, w);
            w.given("x_i", s.drive().placement().idlerAlongMm());
            w.given("y_i", s.drive().placement().idlerAsideMm());
            var roller = part(w, "roller", rollerAlong(s), rollerAcross(s));
            var head = part(w, "head", headAlong(s), headAcross(s));
            var gap = lesser(roller, head);
            w.line("g", "min(g_roller, g_head)", gap.nominal(), "mm", "the nearer");
            w.given("g_worst", "the same with every dimension at its worse limit", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        private static Range part(Working w, String what, List<Term> along, List<Term> across) {
            var a = w.chain("a_" + what, "mm", "apart along the axle", along);
            var b = w.chain("b_" + what, "mm", "apart across it", across);
            var gap = Apart.apart(a, b);
            w.line(
                    "g_" + what,
                    a.nominal() > 0 && b.nominal() > 0
                            ? "√(a_" + what + "^2 + b_" + what + "^2)"
                            : "max(a_" + what + ", b_" + what + ")",
                    gap.nominal(),
                    "mm",
                    "distance");
            return gap;
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "an idler that ends " + length(r.demand() - r.capacityWorst())
                    + " nearer the plate, or further from the axle";
        }
    }
}
