package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.Hanger;
import beltwright.part.Mount;
import beltwright.part.Thread;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Is the mount held to the hanger: clamped on its section, screwed to its end face, or made in one piece with it?
final class FixingChecks {
    private static final String HABIT = "common practice, no source";

    private FixingChecks() {}

    static List<Check> all() {
        return List.of(
                new ClampForm(),
                new ClampHeight(),
                new ClampDepth(),
                new FlangeCount(),
                new FlangeCircle(),
                new FlangeSeat(),
                new FlangeHeads(),
                new Clocking(),
                new OnePiece());
    }

    static boolean clamped(Subject s) {
        return s.drive().mount().fixing() == Mount.Fixing.CLAMP;
    }

    /// A round clamp for a round hanger, a rectangular one for a rectangular.
    static final class ClampForm extends YesNo {
        ClampForm() {
            super("clamp-form", "Clamp and hanger of one section", Scope.DRIVE, "compared", Role.MOUNT, Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return clamped(s);
        }

        @Override
        boolean met(Subject s) {
            return s.drive().mount().clampSection() == s.kit().hanger().section();
        }

        @Override
        String asked(Subject s) {
            return s.drive().mount().clampSection() + " clamp on a "
                    + s.kit().hanger().section() + " hanger";
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().mount().clampSection() + " clamp, "
                    + s.kit().hanger().section() + " hanger";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a mount with a " + s.kit().hanger().section() + " clamp";
        }
    }

    /// The clamp closes on the hanger's height.
    static final class ClampHeight extends Fit {
        ClampHeight() {
            super(
                    "clamp-height",
                    "Clamp on the hanger, height",
                    Scope.DRIVE,
                    0,
                    0.35,
                    "what the clamp screws can still close, " + HABIT,
                    Role.MOUNT,
                    Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return clamped(s);
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().mount().clampHeightMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.kit().hanger().sectionHeightMm();
        }
    }

    /// The clamp closes on the hanger's depth.
    static final class ClampDepth extends Fit {
        ClampDepth() {
            super(
                    "clamp-depth",
                    "Clamp on the hanger, depth",
                    Scope.DRIVE,
                    0,
                    0.35,
                    "what the clamp screws can still close, " + HABIT,
                    Role.MOUNT,
                    Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return clamped(s) && s.kit().hanger().section() == Hanger.Section.RECTANGULAR;
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().mount().clampDepthMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.kit().hanger().sectionDepthMm();
        }
    }

    /// A flanged mount finds a threaded hole behind each of its own.
    static final class FlangeCount extends YesNo {
        FlangeCount() {
            super("flange-count", "Every flange hole has a thread", Scope.DRIVE, "count", Role.MOUNT, Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().mount().fixing() == Mount.Fixing.FLANGE;
        }

        @Override
        boolean met(Subject s) {
            int threads = s.kit().hanger().flangeHoles();
            return threads > 0 && threads % s.drive().mount().flangeHoles() == 0;
        }

        @Override
        String asked(Subject s) {
            return "threads in the hanger are a multiple of holes in the flange";
        }

        @Override
        void before(Subject s, Working w) {
            var mount = s.drive().mount();
            w.given("n_flange", mount.id() + ".flangeHoles", mount.flangeHoles(), "", "count");
            w.given(
                    "n_hanger",
                    s.kit().hanger().id() + ".flangeHoles",
                    s.kit().hanger().flangeHoles(),
                    "",
                    "count");
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().mount().flangeHoles() + " holes, "
                    + s.kit().hanger().flangeHoles() + " threads";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return s.kit().hanger().flangeHoles() == 0
                    ? "a hanger with threads in its end face, or a mount that clamps"
                    : "a mount whose flange holes divide " + s.kit().hanger().flangeHoles()
                            + ": as many, or a half or third of them";
        }
    }

    /// Flange holes and threads lie on one circle.
    static final class FlangeCircle extends HolesMeet {
        FlangeCircle() {
            super("flange-circle", "Flange holes meet the hanger", Role.MOUNT, Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return flanged(s) && s.kit().hanger().flangeHoles() > 0;
        }

        @Override
        Dimension threaded(Subject s) {
            return s.kit().hanger().flangeCircleMm();
        }

        @Override
        Dimension open(Subject s) {
            return s.drive().mount().flangeCircleMm();
        }

        @Override
        Dimension width(Subject s) {
            return s.drive().mount().flangeHoleMm();
        }

        @Override
        Thread thread(Subject s) {
            return s.kit().hanger().flangeThread();
        }

        @Override
        String otherCircle(Subject s) {
            return "a flange with its holes on a "
                    + mm(s.kit().hanger().flangeCircleMm().nominal()) + " circle";
        }
    }

    private static boolean flanged(Subject s) {
        return s.drive().mount().fixing() == Mount.Fixing.FLANGE;
    }

    /// The plate of a flanged mount stands where the hanger's flange is, nowhere else.
    static final class FlangeSeat extends Check {
        private static final double ALLOWED = 0.2;

        FlangeSeat() {
            super(
                    "flange-seat",
                    "Plate on the hanger's flange",
                    "mm",
                    Scope.DRIVE,
                    "typed place of the plate against the face of the flange; allowed: " + HABIT,
                    Role.MOUNT,
                    Role.HANGER);
            placed();
        }

        @Override
        public boolean applies(Subject s) {
            return flanged(s);
        }

        private static List<Term> terms(Subject s) {
            return List.of(
                    plus("i", s.drive().placement().plateInsetMm()),
                    plus("t", s.drive().mount().plateThicknessMm()),
                    minus("i_flange", s.kit().hanger().flangeInsetMm()));
        }

        @Override
        public void measure(Subject s, Reading out) {
            double off = Math.abs(Term.sum(terms(s)).nominal());
            out.set(Range.exact(off), Range.exact(ALLOWED));
        }

        @Override
        public void measureDrawn(Subject drawn, Subject designed, Reading out) {
            measure(designed, out); // the screws close the rest
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var off = w.chain("o_flange", "mm", "inner face of the plate off the flange", terms(s));
            double size = w.line(
                    "m", "abs(o_flange)", Math.abs(off.nominal()), "mm", "at nominal; the screws close the rest");
            out.set(Range.exact(size), Range.exact(w.given("m_most", "allowed", ALLOWED, "mm", HABIT)));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "the plate stands " + r.demandText() + " mm off the flange; " + r.capacityText() + " allowed";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double inset = s.kit().hanger().flangeInsetMm().nominal()
                    - s.drive().mount().plateThicknessMm().nominal();
            return "a plate inset of " + mm(inset);
        }
    }

    /// The heads of the flange screws stand under the turning wheel pulley.
    static final class FlangeHeads extends ChainGap {
        FlangeHeads() {
            super(
                    "flange-heads",
                    "Flange screw heads clear of the wheel pulley",
                    Scope.DRIVE,
                    1,
                    "along the axle only, " + HABIT,
                    Role.FLANGE_SCREWS,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL,
                    Role.INNER_BEARING,
                    Role.INNER_RING);
            placed();
        }

        @Override
        void before(Subject s, Working w) {
            Stack.wheelPulley(s, w);
        }

        @Override
        List<Term> terms(Subject s) {
            var screw = s.drive().flangeScrew();
            return List.of(
                    plus("y_rim", "near side of the wheel pulley from the hanger's end face", s.at().wheelRimNearMm()),
                    plus("i", s.drive().placement().plateInsetMm()),
                    minus(
                            "k_head",
                            "height of the screw head, " + screw.head().standard(),
                            Range.exact(screw.head().heightMm(screw.thread()))));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "countersunk or lower heads, or a thicker inner speed ring: "
                    + leastMm(r.demand() - r.capacityWorst()) + " more room";
        }
    }

    /// A flange can only stand where its holes meet, a mount in one piece where it was made.
    static final class Clocking extends Check {
        private static final double ALLOWED_DEG = 0.5;

        Clocking() {
            super(
                    "clocking",
                    "Mount angle at a clocking position",
                    "°",
                    Scope.DRIVE,
                    "positions one hole pitch apart, one only in one piece; allowed: " + HABIT,
                    Role.MOUNT,
                    Role.HANGER);
            placed();
        }

        @Override
        public boolean applies(Subject s) {
            return !clamped(s);
        }

        private static double pitchDeg(Subject s) {
            int holes = s.kit().hanger().flangeHoles();
            return clockedByHoles(s) && holes > 0 ? 360.0 / holes : 360;
        }

        private static boolean clockedByHoles(Subject s) {
            return s.drive().mount().fixing() == Mount.Fixing.FLANGE;
        }

        static double off(double angle, double first, double pitch) {
            double turns = (angle - first) / pitch;
            return Math.abs(turns - Math.round(turns)) * pitch;
        }

        private static Range off(Subject s) {
            var angle = s.drive().placement().aboveAxleDeg();
            var first = s.drive().mount().firstPositionDeg();
            double pitch = pitchDeg(s);
            var beyond = Range.of(angle).minus(first);
            double atLow = off(beyond.low(), 0, pitch);
            double atHigh = off(beyond.high(), 0, pitch);
            return new Range(
                    passes(beyond, 0, pitch) ? 0 : Math.min(atLow, atHigh),
                    off(angle.nominal(), first.nominal(), pitch),
                    passes(beyond, pitch / 2, pitch) ? pitch / 2 : Math.max(atLow, atHigh));
        }

        /// {@return whether some angle of this range lies a whole number of pitches from this one}
        private static boolean passes(Range angles, double from, double pitch) {
            return Math.floor((angles.high() - from) / pitch) >= Math.ceil((angles.low() - from) / pitch);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(off(s), Range.exact(ALLOWED_DEG));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("β", s.drive().placement().aboveAxleDeg());
            w.given("β_1", s.drive().mount().firstPositionDeg());
            if (clockedByHoles(s)) {
                w.given(
                        "n",
                        s.kit().hanger().id() + ".flangeHoles",
                        s.kit().hanger().flangeHoles(),
                        "",
                        "count");
            }
            w.given("β_h", "from one position to the next", pitchDeg(s), "°", "geometry");
            double nearest = Math.round((s.drive().placement().aboveAxleDeg().nominal()
                            - s.drive().mount().firstPositionDeg().nominal())
                    / pitchDeg(s));
            w.given("k", "the nearest position", nearest, "", "rounded");
            var off = off(s);
            w.line("o", "abs(β − β_1 − k·β_h)", off.nominal(), "°", "off the nearest position");
            w.given("o_worst", "the same at the worse limits of β and β_1", off.high(), "°", "worst case");
            out.set(off, Range.exact(w.given("o_most", "allowed", ALLOWED_DEG, "°", HABIT)));
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.demandText() + "° off the "
                    + (clockedByHoles(s)
                            ? "nearest position, " + Numbers.significant(pitchDeg(s), 4) + "° from one to the next"
                            : "only position")
                    + "; " + r.capacityText() + "° allowed";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double pitch = pitchDeg(s);
            double first = s.drive().mount().firstPositionDeg().nominal();
            double k = Math.round((s.drive().placement().aboveAxleDeg().nominal() - first) / pitch);
            return "a mount angle of " + Numbers.significant(first + k * pitch, 4) + "°";
        }
    }

    /// A mount in one piece with its hanger belongs to that hanger only.
    static final class OnePiece extends YesNo {
        OnePiece() {
            super("one-piece", "Mount made with this hanger", Scope.DRIVE, "compared", Role.MOUNT, Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().mount().fixing() == Mount.Fixing.ONE_PIECE;
        }

        @Override
        boolean met(Subject s) {
            return s.drive().mount().madeWith().equals(s.kit().hanger().id());
        }

        @Override
        String asked(Subject s) {
            return "made with " + s.drive().mount().madeWith() + ", used with "
                    + s.kit().hanger().id();
        }

        @Override
        public String says(Subject s, Reading r) {
            return "made with " + s.drive().mount().madeWith();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the hanger " + s.drive().mount().madeWith() + ", or a mount that is clamped or screwed on";
        }
    }
}
