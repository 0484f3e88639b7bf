package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.Thread;
import beltwright.part.WheelPulley;
import beltwright.quantity.Dimension;
import beltwright.quantity.Range;
import java.util.List;

/// Does the wheel turn with its pulley: by lugs in the openings of the core, by screws, or by a press fit?
final class LugChecks {
    private static final String HABIT = "common practice, no source";

    private LugChecks() {}

    static List<Check> all() {
        return List.of(
                new Count(),
                new Width(),
                new Circle(),
                new Depth(),
                new BoreClearsRing(),
                new Pressed(),
                new PressDepth(),
                new ScrewCount(),
                new ScrewCircle());
    }

    private static boolean lugged(Subject s) {
        return s.drive().wheelPulley().holding() == WheelPulley.Holding.LUGS;
    }

    private static boolean opened(Subject s) {
        return lugged(s) && s.end().wheel().openings() > 0;
    }

    private static boolean pressed(Subject s) {
        return s.drive().wheelPulley().holding() == WheelPulley.Holding.PRESS_FIT;
    }

    /// Every lug finds an opening.
    static final class Count extends YesNo {
        Count() {
            super("lug-count", "Every lug has an opening", Scope.DRIVE, "count", Role.WHEEL_PULLEY, Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return lugged(s);
        }

        static boolean meet(int lugs, int openings) {
            return lugs > 0 && openings > 0 && openings % lugs == 0;
        }

        @Override
        boolean met(Subject s) {
            return meet(s.drive().wheelPulley().lugs(), s.end().wheel().openings());
        }

        @Override
        String asked(Subject s) {
            return "openings are a multiple of lugs";
        }

        @Override
        void before(Subject s, Working w) {
            w.given(
                    "n_lugs",
                    s.drive().wheelPulley().id() + ".lugs",
                    s.drive().wheelPulley().lugs(),
                    "",
                    "count");
            w.given(
                    "n_openings",
                    s.end().wheel().id() + ".openings",
                    s.end().wheel().openings(),
                    "",
                    "count");
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().wheelPulley().lugs() + " lugs, " + s.end().wheel().openings() + " openings";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return s.end().wheel().openings() == 0
                    ? "a wheel whose core has openings, or a pulley that is screwed on or pressed in"
                    : "a wheel pulley for a core with " + s.end().wheel().openings() + " openings";
        }
    }

    /// A lug slides into its opening without hammering in it.
    static final class Width extends Fit {
        Width() {
            super(
                    "lug-width",
                    "Lug in its opening",
                    Scope.DRIVE,
                    0.05,
                    0.8,
                    "goes in by hand, no knocking on reversal, " + HABIT,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return opened(s);
        }

        @Override
        Dimension hole(Subject s) {
            return s.end().wheel().openingWidthMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().wheelPulley().lugWidthMm();
        }
    }

    /// Lugs and openings lie on one circle.
    static final class Circle extends Check {
        private static final double ALLOWED = 0.5;

        Circle() {
            super(
                    "lug-circle",
                    "Lugs and openings on one circle",
                    "mm",
                    Scope.DRIVE,
                    "radial mismatch; allowed: " + HABIT,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return opened(s);
        }

        private static Range mismatch(Subject s) {
            return Range.of(s.drive().wheelPulley().lugCircleMm())
                    .minus(s.end().wheel().openingCircleMm())
                    .absolute()
                    .times(0.5);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(mismatch(s), Range.exact(ALLOWED));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("k_lug", s.drive().wheelPulley().lugCircleMm());
            w.given("k_opening", s.end().wheel().openingCircleMm());
            var mismatch = mismatch(s);
            w.line("m", "abs(k_lug − k_opening)/2", mismatch.nominal(), "mm", "each lug off its opening, radially");
            out.set(mismatch, Range.exact(w.given("m_most", "allowed mismatch", ALLOWED, "mm", HABIT)));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "lugs " + r.demandText() + " mm off; " + r.capacityText() + " allowed";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a wheel pulley with its lugs on a "
                    + mm(s.end().wheel().openingCircleMm().nominal()) + " circle";
        }
    }

    /// A lug does not bottom before the pulley is seated.
    static final class Depth extends ChainGap {
        Depth() {
            super(
                    "lug-depth",
                    "Lug clear of the opening's floor",
                    Scope.DRIVE,
                    0.5,
                    HABIT,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return opened(s);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("t_opening", s.end().wheel().openingDepthMm()),
                    minus("l_lug", s.drive().wheelPulley().lugLengthMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "lugs " + leastMm(r.demand() - r.capacityWorst()) + " shorter";
        }
    }

    /// The pulley turns; the speed ring in its bore stands still.
    static final class BoreClearsRing extends ChainGap {
        BoreClearsRing() {
            super(
                    "pulley-bore-ring",
                    "Wheel pulley bore clear of the speed ring",
                    Scope.DRIVE,
                    1,
                    HABIT,
                    Role.WHEEL_PULLEY,
                    Role.INNER_RING);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("d_bore", s.drive().wheelPulley().boreDiameterMm()),
                    minus("d_ring", s.end().innerRing().outsideMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a bore " + leastMm(r.demand() - r.capacityWorst()) + " wider";
        }
    }

    /// A pressed pulley is held by interference alone.
    static final class Pressed extends Fit {
        Pressed() {
            super(
                    "pulley-press",
                    "Wheel pulley pressed into the core",
                    Scope.DRIVE,
                    -0.25,
                    -0.05,
                    "0.05 to 0.25 mm of interference, plastic cores creep, " + HABIT,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return pressed(s);
        }

        @Override
        Dimension hole(Subject s) {
            return s.end().wheel().recessDiameterMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().wheelPulley().spigotDiameterMm();
        }
    }

    /// The spigot does not bottom before the pulley is seated.
    static final class PressDepth extends ChainGap {
        PressDepth() {
            super(
                    "pulley-press-depth",
                    "Spigot clear of the recess floor",
                    Scope.DRIVE,
                    0.2,
                    HABIT,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return pressed(s);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("t_recess", s.end().wheel().recessDepthMm()),
                    minus("l_spigot", s.drive().wheelPulley().spigotLengthMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a spigot " + leastMm(r.demand() - r.capacityWorst()) + " shorter";
        }
    }

    /// Every threaded hole of the pulley finds a hole in the core.
    static final class ScrewCount extends YesNo {
        ScrewCount() {
            super(
                    "pulley-screw-count",
                    "Every pulley thread has a hole in the core",
                    Scope.DRIVE,
                    "count",
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().wheelPulley().screwHoles() > 0
                    || s.drive().wheelPulley().holding() == WheelPulley.Holding.SCREWS;
        }

        @Override
        boolean met(Subject s) {
            int threads = s.drive().wheelPulley().screwHoles();
            return threads > 0
                    && s.end().wheel().screwHoles() > 0
                    && s.end().wheel().screwHoles() % threads == 0;
        }

        @Override
        String asked(Subject s) {
            return "holes in the core are a multiple of threads in the pulley";
        }

        @Override
        void before(Subject s, Working w) {
            var pulley = s.drive().wheelPulley();
            w.given("n_pulley", pulley.id() + ".screwHoles", pulley.screwHoles(), "", "count");
            w.given(
                    "n_core",
                    s.end().wheel().id() + ".screwHoles",
                    s.end().wheel().screwHoles(),
                    "",
                    "count");
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().wheelPulley().screwHoles() + " threads, "
                    + s.end().wheel().screwHoles() + " holes";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return s.end().wheel().screwHoles() == 0
                    ? "a wheel whose core has screw holes, or a pulley held another way"
                    : "a wheel pulley for a core with " + s.end().wheel().screwHoles() + " screw holes";
        }
    }

    /// Holes of the core and threads of the pulley lie on one circle.
    static final class ScrewCircle extends HolesMeet {
        ScrewCircle() {
            super("pulley-screw-circle", "Pulley screws meet the core", Role.WHEEL_PULLEY, Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().wheelPulley().screwHoles() > 0;
        }

        @Override
        Dimension threaded(Subject s) {
            return s.drive().wheelPulley().screwCircleMm();
        }

        @Override
        Dimension open(Subject s) {
            return s.end().wheel().screwCircleMm();
        }

        @Override
        Dimension width(Subject s) {
            return s.end().wheel().screwHoleMm();
        }

        @Override
        Thread thread(Subject s) {
            return s.drive().wheelPulley().screwThread();
        }

        @Override
        String otherCircle(Subject s) {
            return "a wheel pulley with its threads on a "
                    + mm(s.end().wheel().screwCircleMm().nominal()) + " circle";
        }
    }
}
