package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.ShaftForm;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Does the drive pulley go on the motor shaft, hold by its form, and run in one plane with the wheel pulley?
final class ShaftChecks {
    private static final String HABIT = "common practice, no source";

    private ShaftChecks() {}

    static List<Check> all() {
        return List.of(
                new Form(), new Bore(), new Flat(), new Reach(), new BeltPlane(), new KeyWidth(), new KeyHeight());
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
            return s.at().drivePulleyFarMm().minus(s.at().drivePulleyNearMm());
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
            double length = length(s).nominal();
            return new Range(
                    filled(reach.low(), length), filled(reach.nominal(), length), filled(reach.high(), length));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(SHARE * length(s).nominal(), filled(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.chain("l_reach", "mm", "shaft beyond the near end of the pulley", reachTerms(s));
            double length = w.given(
                    "l_pulley",
                    "length of the drive pulley, hub and rim",
                    length(s).nominal(),
                    "mm",
                    "layout");
            var filled = filled(s);
            w.line("l_filled", "min(l_reach, l_pulley)", filled.nominal(), "mm", "length of bore that the shaft fills");
            w.given("share", "share that is wanted", SHARE, "", HABIT);
            out.set(w.line("l_wanted", "share·l_pulley", SHARE * length, "mm", "wanted"), filled);
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm of " + Numbers.fixed(length(s).nominal(), 1) + " filled; " + r.demandText()
                    + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a shaft " + leastMm(r.demand() - r.capacityWorst())
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

    /// Both rims lie in one plane, within a quarter of a degree over the centre distance: at nominal
    /// as drawn. What the limits of all parts add is taken up when the pulley is aligned, as far as it
    /// can slide on its shaft.
    static final class BeltPlane extends Check {
        private static final double ALLOWED_DEG = 0.25;

        BeltPlane() {
            super(
                    "belt-plane",
                    "Pulleys in one plane",
                    "mm",
                    Scope.DRIVE,
                    "a quarter of a degree in all, a belt maker's technical manual",
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.BELT,
                    Role.INNER_BEARING,
                    Role.INNER_RING,
                    Role.WHEEL,
                    Role.MOTOR,
                    Role.MOUNT);
            placed();
        }

        static double allowed(double centreDistance) {
            return Math.tan(Math.toRadians(ALLOWED_DEG)) * centreDistance;
        }

        private static final double FROM_PLATE_MM = 0.5;

        private static Range offset(Subject s) {
            return s.at().driveRimMiddleMm().minus(s.at().wheelRimMiddleMm());
        }

        private static double inward(Subject s) {
            return s.drive().placement().pulleyStandoffMm().nominal() - FROM_PLATE_MM;
        }

        private static double outward(Subject s) {
            return Reach.reach(s).nominal() - Reach.SHARE * Reach.length(s).nominal();
        }

        static double travel(double inward, double outward) {
            return Math.max(0, Math.min(inward, outward));
        }

        static double left(double nominal, double highest, double travel) {
            return Math.max(nominal, highest - travel);
        }

        private static Range left(Subject s) {
            var offset = offset(s).absolute();
            double travel = travel(inward(s), outward(s));
            return new Range(offset.low(), offset.nominal(), left(offset.nominal(), offset.high(), travel));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(left(s), Range.exact(allowed(s.at().centreDistanceMm().nominal())));
        }

        @Override
        public void measureDrawn(Subject drawn, Subject designed, Reading out) {
            double travel = travel(inward(drawn), outward(drawn));
            double kept = offset(designed).absolute().nominal();
            out.set(
                    Range.exact(left(kept, offset(drawn).absolute().nominal(), travel)),
                    Range.exact(allowed(drawn.at().centreDistanceMm().nominal())));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.chain("y_drive", "mm", "middle of the drive pulley's rim", Stack.driveRim(s));
            Stack.tread(s, w);
            var rim = s.drive().wheelPulley().rim();
            var terms = new ArrayList<>(List.of(
                    plus("y_tread", "inner edge of the tread", s.endAt().wheelInnerMm()),
                    plus("f", s.end().wheel().coreFaceInsetMm()),
                    minus("q", s.drive().wheelPulley().rimStandoffMm())));
            if (rim.flanges().onWheelSide()) {
                terms.add(minus("t_flange2", rim.flangeThicknessMm()));
            }
            terms.add(minus("b_face2", rim.faceWidthMm()).half());
            w.chain("y_wheel", "mm", "middle of the wheel pulley's rim", terms);
            var offset = offset(s);
            w.chain(
                    "o_belt",
                    "mm",
                    "offset of the belt planes",
                    List.of(
                            plus("y_drive", "middle of the drive pulley's rim", s.at().driveRimMiddleMm()),
                            minus("y_wheel", "middle of the wheel pulley's rim", s.at().wheelRimMiddleMm())));
            w.given("s_pulley", s.drive().placement().pulleyStandoffMm());
            w.given("s_least", "least gap from the plate", FROM_PLATE_MM, "mm", HABIT);
            w.line("a_in", "s_pulley − s_least", inward(s), "mm", "the pulley can slide inward");
            w.chain("l_reach", "mm", "shaft beyond the near end of the pulley", Reach.reachTerms(s));
            w.given(
                    "l_pulley",
                    "length of the drive pulley, hub and rim",
                    Reach.length(s).nominal(),
                    "mm",
                    "layout");
            w.given("share", "share of it that the shaft must fill", Reach.SHARE, "", HABIT);
            w.line("a_out", "l_reach − share·l_pulley", outward(s), "mm", "the pulley can slide outward");
            w.line(
                    "travel",
                    "max(0, min(a_in, a_out))",
                    travel(inward(s), outward(s)),
                    "mm",
                    "either way, when it is aligned");
            w.given(
                    "o_most_limits",
                    "offset at the limits of all parts",
                    offset.absolute().high(),
                    "mm",
                    "worst case");
            w.line(
                    "o_left",
                    "max(abs(o_belt), o_most_limits − travel)",
                    left(s).high(),
                    "mm",
                    "left after aligning, at worst");
            w.given("C", "centre distance", s.at().centreDistanceMm(), "layout");
            w.given("δ", "allowed in all", ALLOWED_DEG, "°", source());
            double allowed = w.line(
                    "o_most",
                    "tan(δ·π/180)·C",
                    allowed(s.at().centreDistanceMm().nominal()),
                    "mm",
                    "allowed offset");
            out.set(left(s), Range.exact(allowed));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "offset " + Numbers.fixed(r.demand, 1) + " mm as drawn, up to "
                    + Numbers.fixed(offset(s).absolute().high(), 1) + " by the limits, of which aligning takes "
                    + Numbers.fixed(travel(inward(s), outward(s)), 1) + "; " + r.capacityText() + " allowed";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double stand = s.drive().placement().pulleyStandoffMm().nominal()
                    - offset(s).nominal();
            return "set the drive pulley by a straightedge across both rims, about " + mm(stand) + " from the plate";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double x = s.at().motorXMm();
            return List.of(new DrawnDimension(
                    "plate to drive pulley",
                    View.PLAN,
                    s.side(),
                    x,
                    s.plan(s.at().plateOuterMm().nominal()),
                    x,
                    s.plan(s.at().drivePulleyNearMm().nominal()),
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }
}
