package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.LayoutSolver;
import beltwright.part.ShaftForm;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does the drive pulley go on the motor shaft, hold by its form, and run in one plane with the wheel pulley?
final class ShaftChecks {
    private static final String HABIT = "common practice, no source";

    private ShaftChecks() {}

    static List<Check> all() {
        return List.of(
                new Form(), new Bore(), new Flat(), new Reach(), new BeltPlaneCheck(), new KeyWidth(), new KeyHeight());
    }

    /// Shaft and bore hold by their form, or by screws alone, or not at all.
    static final class Form extends Check {
        private static final double BY_FORM = 2;
        private static final double BY_CLAMP = 1.5;
        private static final double BY_SCREWS = 1;

        Form() {
            super(
                    "shaft-form",
                    "Drive pulley held on the shaft",
                    "",
                    Scope.DRIVE,
                    "a screw on a flat does not make a D bore; " + HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR);
        }

        /// {@return 2 where the form carries the torque, 1.5 where a clamped hub does, 1 where set screws alone do, 0
        /// where
        /// it cannot go together}
        private static double hold(Subject s) {
            var shaft = s.drive().motor().shaftForm();
            var pulley = s.drive().drivePulley();
            var bore = pulley.boreForm();
            boolean oneFlatOfTwo = shaft == ShaftForm.TWO_FLATS && bore == ShaftForm.FLAT;
            if ((shaft == bore && shaft != ShaftForm.ROUND) || oneFlatOfTwo) {
                return BY_FORM;
            }
            boolean goesOn = bore == ShaftForm.ROUND && shaft != ShaftForm.KEYED;
            if (goesOn && pulley.hubScrews() > 0) {
                return BY_CLAMP;
            }
            return goesOn && pulley.setScrews() > 0 ? BY_SCREWS : 0;
        }

        /// {@return whether the form of shaft and bore carries the torque}
        static boolean byForm(Subject s) {
            return hold(s) == BY_FORM;
        }

        /// {@return whether a split hub that is clamped on the shaft carries the torque}
        static boolean byClamp(Subject s) {
            return hold(s) == BY_CLAMP;
        }

        /// {@return whether set screws alone carry the torque}
        static boolean byScrews(Subject s) {
            return hold(s) == BY_SCREWS;
        }

        /// {@return what is wanted: form, or a clamp where the hub has one}
        private static double wanted(Subject s) {
            return s.drive().drivePulley().hubScrews() > 0 && !byForm(s) ? BY_CLAMP : BY_FORM;
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(wanted(s), Range.exact(hold(s)));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var pulley = s.drive().drivePulley();
            var shaft = s.drive().motor().shaftForm();
            w.given("n", pulley.id() + ".setScrews", pulley.setScrews(), "", "count");
            boolean clamps = pulley.hubScrews() > 0;
            if (clamps) {
                w.given("n_hub", pulley.id() + ".hubScrews", pulley.hubScrews(), "", "count");
            }
            double hold = w.given(
                    "hold",
                    shaft + " shaft in a " + pulley.boreForm() + " bore (2 by form, "
                            + (clamps ? "1.5 by a clamped hub, " : "") + "1 by screws alone, 0 not at all)",
                    hold(s),
                    "",
                    "compared");
            out.set(wanted(s), Range.exact(hold));
        }

        @Override
        public Verdict verdict(Subject s, Reading r) {
            return r.capacity() == BY_SCREWS ? Verdict.MARGINAL : r.verdict();
        }

        @Override
        public String says(Subject s, Reading r) {
            var how = byForm(s)
                    ? "held by form"
                    : byClamp(s)
                            ? "held by a hub clamped on it"
                            : byScrews(s) ? "held by set screws alone" : "does not go together";
            return s.drive().motor().shaftForm() + " shaft, "
                    + s.drive().drivePulley().boreForm() + " bore: " + how;
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a pulley with a " + s.drive().motor().shaftForm()
                    + " bore; set screws alone work loose under drive and brake";
        }
    }

    /// The bore slides over the shaft without slop.
    static final class Bore extends Fit {
        Bore() {
            super(
                    "shaft-bore",
                    "Drive pulley bore on the shaft",
                    Scope.DRIVE,
                    0,
                    0.05,
                    HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR);
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().drivePulley().boreDiameterMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().motor().shaftDiameterMm();
        }
    }

    /// The flat of a D bore clears the flat of the shaft.
    static final class Flat extends Fit {
        Flat() {
            super(
                    "shaft-flat",
                    "Flat of the bore on the flat of the shaft",
                    Scope.DRIVE,
                    0,
                    0.15,
                    HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR);
        }

        @Override
        public boolean applies(Subject s) {
            var form = s.drive().motor().shaftForm();
            var bore = s.drive().drivePulley().boreForm();
            return (form == ShaftForm.FLAT && bore == ShaftForm.FLAT)
                    || (form == ShaftForm.TWO_FLATS && (bore == ShaftForm.TWO_FLATS || bore == ShaftForm.FLAT));
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().drivePulley().boreFlatMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().motor().shaftFlatMm();
        }
    }

    /// The shaft fills most of the pulley's bore.
    static final class Reach extends Check {
        static final double SHARE = 0.8;

        Reach() {
            super(
                    "shaft-reach",
                    "Shaft fills the drive pulley",
                    "mm",
                    Scope.DRIVE,
                    "at least 80 % of the pulley's length, " + HABIT,
                    Role.MOTOR,
                    Role.DRIVE_PULLEY,
                    Role.MOUNT);
            placed();
        }

        static Range length(Subject s) {
            return LayoutSolver.lengthMm(s.drive().drivePulley());
        }

        static double filled(double reach, double length) {
            return Math.min(reach, length);
        }

        static List<Term> reachTerms(Subject s) {
            return List.of(
                    plus("l_shaft", s.drive().motor().shaftLengthMm()),
                    minus("t", s.drive().mount().plateThicknessMm()),
                    minus("s_pulley", s.drive().placement().pulleyStandoffMm()));
        }

        static Range reach(Subject s) {
            return Term.sum(reachTerms(s));
        }

        static Range filled(Subject s) {
            var reach = reach(s);
            var length = length(s);
            return new Range(
                    filled(reach.low(), length.low()),
                    filled(reach.nominal(), length.nominal()),
                    filled(reach.high(), length.high()));
        }

        /// {@return what a shaft that reaches so far fills of a pulley of this length beyond the share wanted (mm)}
        private static double spare(double reach, double length) {
            return filled(reach, length) - SHARE * length;
        }

        /// {@return the length of the pulley that leaves a short shaft the least to spare: the longest, or, where the
        ///     shaft reaches through, the shortest (mm)}
        private static double worstLength(Subject s) {
            double reach = reach(s).low();
            var length = length(s);
            return spare(reach, length.low()) < spare(reach, length.high()) ? length.low() : length.high();
        }

        private static double bestLength(Subject s) {
            var length = length(s);
            return Math.min(Math.max(reach(s).high(), length.low()), length.high()); // NaN where a number is missing
        }

        @Override
        public void measure(Subject s, Reading out) {
            double worst = worstLength(s);
            double best = bestLength(s);
            var reach = reach(s);
            double nominal = length(s).nominal();
            out.set(
                    new Range(SHARE * best, SHARE * nominal, SHARE * worst),
                    new Range(
                            filled(reach.low(), worst), filled(reach.nominal(), nominal), filled(reach.high(), best)));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.chain("l_reach", "mm", "shaft beyond the near end of the pulley", reachTerms(s));
            w.given("l_pulley", "length of the drive pulley, hub and rim", length(s), "layout");
            w.line(
                    "l_filled",
                    "min(l_reach, l_pulley)",
                    filled(s).nominal(),
                    "mm",
                    "length of bore that the shaft fills");
            w.given("share", "share that is wanted", SHARE, "", HABIT);
            measure(s, out);
            w.line("l_wanted", "share·l_pulley", out.demand, "mm", "wanted");
            w.given("filled_worst", "filled, every number at its worse limit", out.capacityWorst, "mm", "worst case");
            w.given("wanted_worst", "wanted of that same pulley", out.demandWorst, "mm", "worst case");
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm of " + Numbers.fixed(length(s).nominal(), 1) + " filled; " + r.demandText()
                    + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a shaft " + leastMm(r.demandWorst - r.capacityWorst())
                    + " longer, or the pulley that much nearer the plate";
        }
    }

    private static boolean keyed(Subject s) {
        return s.drive().motor().shaftForm() == ShaftForm.KEYED
                && s.drive().drivePulley().boreForm() == ShaftForm.KEYED;
    }

    /// The key fills its keyway: play hammers it out under drive and brake.
    static final class KeyWidth extends Fit {
        KeyWidth() {
            super(
                    "shaft-key",
                    "Key in the keyway",
                    Scope.DRIVE,
                    0,
                    0.06,
                    "goes in by hand, no knocking on reversal, " + HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR);
        }

        @Override
        public boolean applies(Subject s) {
            return keyed(s);
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().drivePulley().keywayWidthMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().motor().keyWidthMm();
        }
    }

    /// The keyway is deep enough that the key does not carry the pulley.
    static final class KeyHeight extends Fit {
        KeyHeight() {
            super(
                    "shaft-key-height",
                    "Keyway over the key",
                    Scope.DRIVE,
                    0.05,
                    0.6,
                    HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR);
        }

        @Override
        public boolean applies(Subject s) {
            return keyed(s);
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().drivePulley().overKeywayMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().motor().overKeyMm();
        }
    }
}
