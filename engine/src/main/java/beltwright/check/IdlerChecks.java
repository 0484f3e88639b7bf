package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.LayoutSolver;
import beltwright.part.Idler;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does an idler help: locked, touching the belt, clear of the pulleys, and not bending the belt too hard?
final class IdlerChecks {
    private static final String HABIT = "common practice, no source";

    private IdlerChecks() {}

    static List<Check> all() {
        return List.of(new Locked(), new Touches(), new Clear("wheel"), new Clear("drive"), new Width(), new Bend());
    }

    /// A sprung idler gives way when the pull changes sides.
    static final class Locked extends YesNo {
        Locked() {
            super(
                    "idler-locked",
                    "Idler locked",
                    Scope.DRIVE,
                    "drive and brake pull through the same belt: the slack side of one is the tight side of the other",
                    Role.IDLER);
        }

        @Override
        boolean met(Subject s) {
            return s.drive().idler().seating() == Idler.Seating.LOCKED;
        }

        @Override
        String asked(Subject s) {
            return "locked in its place";
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacity() == 1
                    ? "locked: it stays where it was set, driving and braking"
                    : "sprung: when the board brakes the span beside it becomes the tight one, the spring gives way and"
                            + " the belt jumps";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "an idler that is locked after the belt is tensioned";
        }
    }

    /// Enough of the belt lies on the idler, at rest.
    static final class Touches extends Check {
        private static final double WANTED_DEG = 10;

        Touches() {
            super(
                    "idler-wrap",
                    "Belt lies on the idler",
                    "°",
                    Scope.DRIVE,
                    "wrap by common tangents; wanted: " + HABIT,
                    Role.IDLER,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.BELT);
            placed();
        }

        private static Range wrap(Subject s) {
            var wrap = LayoutSolver.idlerWrapRad(s.drive(), s.at().centreDistanceMm());
            return new Range(Math.toDegrees(wrap.low()), Math.toDegrees(wrap.nominal()), Math.toDegrees(wrap.high()));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED_DEG, wrap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            Closure.centreDistance(s.drive(), s.at(), w);
            var wrap = wrap(s);
            if (s.at().closed()) {
                w.line("wrap_deg", "wrap_i·180/π", wrap.nominal(), "°", "on the idler");
                w.given("wrap_worst", "the same at the worst corner of belt and idler", wrap.low(), "°", "worst case");
            }
            out.set(w.given("wrap_wanted", "wanted", WANTED_DEG, "°", HABIT), wrap);
        }

        @Override
        public Verdict verdict(Subject s, Reading r) {
            return Closure.known(s.drive()) && !s.at().closed() ? Verdict.FAILS : r.verdict();
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.at().closed()
                    ? r.capacityText() + "° of wrap; " + r.demandText() + "° wanted"
                    : "no motor position in which the belt is taut and lies on the idler";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "move the idler further into the belt, or choose another belt length";
        }
    }

    /// The idler turns clear of both pulleys.
    static final class Clear extends Check {
        private static final double WANTED_MM = 1;
        private final boolean wheel;

        Clear(String which) {
            super(
                    "idler-" + which + "-pulley",
                    "Idler clear of the " + which + " pulley",
                    "mm",
                    Scope.DRIVE,
                    "circle to circle, worst over idler place and centre distance; wanted: " + HABIT,
                    which.equals("wheel")
                            ? new Role[] {Role.IDLER, Role.WHEEL_PULLEY}
                            : new Role[] {Role.IDLER, Role.DRIVE_PULLEY, Role.WHEEL_PULLEY, Role.BELT});
            this.wheel = which.equals("wheel");
            placed();
        }

        private Range reach(Subject s) {
            return (wheel
                            ? s.drive().wheelPulley().rim()
                            : s.drive().drivePulley().rim())
                    .reachMm();
        }

        private double gap(double along, double aside, double c, double idler, double reach) {
            double from = wheel ? along : c - along;
            return Math.hypot(from, aside) - idler / 2 - reach / 2;
        }

        private Range gap(Subject s) {
            var along = s.drive().placement().idlerAlongMm();
            var aside = s.drive().placement().idlerAsideMm();
            var c = wheel ? Range.ZERO : s.at().centreDistanceMm();
            var idler = s.drive().idler().reachDiameterMm();
            var reach = reach(s);
            double worst = Double.POSITIVE_INFINITY;
            double best = Double.NEGATIVE_INFINITY;
            for (int corner = 0; corner < 8; corner++) {
                double x = (corner & 1) == 0 ? along.lower() : along.upper();
                double y = (corner & 2) == 0 ? aside.lower() : aside.upper();
                double at = (corner & 4) == 0 ? c.low() : c.high();
                worst = Math.min(worst, gap(x, y, at, idler.upper(), reach.high()));
                best = Math.max(best, gap(x, y, at, idler.lower(), reach.low()));
            }
            return new Range(
                    worst, gap(along.nominal(), aside.nominal(), c.nominal(), idler.nominal(), reach.nominal()), best);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED_MM, gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            if (wheel) {
                w.given("x_i", s.drive().placement().idlerAlongMm());
                w.given("y_i", s.drive().placement().idlerAsideMm());
            } else {
                Closure.centreDistance(s.drive(), s.at(), w);
            }
            w.given("d_idler", s.drive().idler().reachDiameterMm());
            w.given("d_pulley", "largest diameter of the pulley", reach(s), "flange or belt");
            var gap = gap(s);
            if (wheel || s.at().closed()) {
                w.line(
                        "g",
                        (wheel ? "√(x_i^2 + y_i^2)" : "√((C − x_i)^2 + y_i^2)") + " − d_idler/2 − d_pulley/2",
                        gap.nominal(),
                        "mm",
                        "circle to circle");
            }
            w.given("g_worst", "the same at the worst corner of all limits", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED_MM, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the idler " + leastMm(r.demand() - r.capacityWorst()) + " further away, or a smaller one";
        }
    }

    /// The belt runs between the idler's flanges.
    static final class Width extends ChainGap {
        Width() {
            super("idler-width", "Belt on the idler's face", Scope.DRIVE, 0.3, HABIT, Role.IDLER, Role.BELT);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("b_idler", s.drive().idler().faceWidthMm()),
                    minus("b_belt", s.drive().belt().widthMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "an idler face at least "
                    + leastMm(s.drive().belt().widthMm().upper() + r.demand()) + " wide";
        }
    }

    /// Bending tires the belt: a back idler bends it the wrong way and must be larger than the smallest pulley.
    static final class Bend extends Check {
        private static final int LEAST_TEETH = 12;
        private static final double BACK_FACTOR = 1.2;

        Bend() {
            super(
                    "idler-bend",
                    "Idler large enough for the belt",
                    "mm",
                    Scope.DRIVE,
                    "not below a pulley of 12 teeth (ISO 13050, transcribed), 1.2 times that on the back; factor: "
                            + HABIT,
                    Role.IDLER,
                    Role.BELT);
        }

        private static Dimension diameter(Subject s) {
            return s.drive().idler().pitchDiameterMm(s.drive().belt().profile());
        }

        private static double wanted(Subject s) {
            double least = LEAST_TEETH * s.drive().belt().profile().pitchMm() / Math.PI;
            return s.drive().idler().runs() == Idler.Runs.BACK ? BACK_FACTOR * least : least;
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(wanted(s), Range.of(diameter(s)));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            Closure.idlerDiameter(s.drive(), w);
            w.given(
                    "pb",
                    "pitch of the belt",
                    s.drive().belt().profile().pitchMm(),
                    "mm",
                    s.drive().belt().profile().standard());
            w.given("z_least", "teeth of the smallest pulley", LEAST_TEETH, "", "ISO 13050, transcribed");
            boolean back = s.drive().idler().runs() == Idler.Runs.BACK;
            if (back) {
                w.given("factor", "for a belt bent backwards", BACK_FACTOR, "", HABIT);
            }
            double wanted = w.line(
                    "d_wanted", (back ? "factor·" : "") + "z_least·pb/π", wanted(s), "mm", "least pitch diameter");
            out.set(wanted, Range.of(diameter(s)));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "pitch diameter " + r.capacityText() + " mm; " + Numbers.fixed(r.demand(), 1) + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double more = r.demand() - r.capacityWorst();
            return s.drive().idler().runs() == Idler.Runs.BACK
                    ? "a roller at least "
                            + leastMm(s.drive().idler().diameterMm().nominal() + more) + " in diameter"
                    : "an idler of at least " + LEAST_TEETH + " teeth";
        }
    }
}
