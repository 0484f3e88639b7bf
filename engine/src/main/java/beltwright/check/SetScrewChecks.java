package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.DrivePulley;
import beltwright.part.ShaftForm;
import beltwright.part.StandardSizes;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Do the set screws fit their holes, meet the shaft and its flats, and have the right length?
final class SetScrewChecks {
    private static final String HABIT = "common practice, no source";

    private SetScrewChecks() {}

    static List<Check> all() {
        return List.of(new SetScrewsOnShaft(), new SetScrewsOnFlats(), new SetScrewThread(), new SetScrewLength());
    }

    /// The set screws, taken in the middle of the hub, meet the shaft and not the air behind its end.
    static final class SetScrewsOnShaft extends ChainGap {
        SetScrewsOnShaft() {
            super(
                    "set-screws-shaft",
                    "Set screws on the shaft",
                    Scope.DRIVE,
                    0.5,
                    "screws in the middle of the hub, " + HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR,
                    Role.MOUNT);
            placed();
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().drivePulley().setScrews() > 0;
        }

        @Override
        List<Term> terms(Subject s) {
            var pulley = s.drive().drivePulley();
            var terms = new ArrayList<>(List.of(
                    plus("l_shaft", s.drive().motor().shaftLengthMm()),
                    minus("t", s.drive().mount().plateThicknessMm()),
                    minus("s_pulley", s.drive().placement().pulleyStandoffMm())));
            if (pulley.hubSide() == DrivePulley.HubSide.WHEEL) {
                terms.add(minus("b_face1", pulley.rim().faceWidthMm()));
                for (int i = 0; i < pulley.rim().flanges().count(); i++) {
                    terms.add(minus("t_flange1", pulley.rim().flangeThicknessMm()));
                }
            }
            terms.add(minus("l_hub", pulley.hubLengthMm()).half());
            terms.add(minus(
                            "d_screw",
                            "set screw " + pulley.setScrewThread(),
                            Range.exact(pulley.setScrewThread().majorMm()))
                    .half());
            return terms;
        }

        @Override
        public String says(Subject s, Reading r) {
            return "the shaft ends " + r.capacityText() + " mm beyond them; " + r.demandText() + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a shaft " + leastMm(r.demand() - r.capacityWorst())
                    + " longer, or a pulley with its hub towards the motor";
        }
    }

    /// Two set screws on a shaft with two flats: each meets a flat only where the angles agree.
    static final class SetScrewsOnFlats extends Check {
        private static final double ALLOWED_DEG = 3;

        SetScrewsOnFlats() {
            super(
                    "set-screws-flats",
                    "Both set screws on flats",
                    "°",
                    Scope.DRIVE,
                    "angle between the screws against the angle between the flats; allowed: " + HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().motor().shaftForm() == ShaftForm.TWO_FLATS
                    && s.drive().drivePulley().setScrews() > 1;
        }

        private static Range off(Subject s) {
            return Range.of(s.drive().drivePulley().setScrewsApartDeg())
                    .minus(s.drive().motor().flatsApartDeg())
                    .absolute();
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(off(s), Range.exact(ALLOWED_DEG));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("α_screws", s.drive().drivePulley().setScrewsApartDeg());
            w.given("α_flats", s.drive().motor().flatsApartDeg());
            var off = off(s);
            w.line("o", "abs(α_screws − α_flats)", off.nominal(), "°", "the second screw off its flat");
            out.set(off, Range.exact(w.given("o_most", "allowed", ALLOWED_DEG, "°", HABIT)));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "the second screw is " + r.demandText() + "° off its flat; " + r.capacityText() + "° allowed";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a pulley whose set screws stand "
                    + Numbers.significant(s.drive().motor().flatsApartDeg().nominal(), 3) + "° apart";
        }
    }

    /// Set screws fit the holes of the drive pulley.
    static final class SetScrewThread extends YesNo {
        SetScrewThread() {
            super(
                    "set-screw-thread",
                    "Thread of the set screws",
                    Scope.DRIVE,
                    "ISO 261",
                    Role.SET_SCREWS,
                    Role.DRIVE_PULLEY);
        }

        @Override
        boolean met(Subject s) {
            return s.drive().setScrew().thread() == s.drive().drivePulley().setScrewThread();
        }

        @Override
        String asked(Subject s) {
            return s.drive().setScrew().thread() + " in "
                    + s.drive().drivePulley().setScrewThread();
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().setScrew().thread() + " screw, "
                    + s.drive().drivePulley().setScrewThread() + " hole";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return s.drive().drivePulley().setScrewThread() + " set screws";
        }
    }

    /// A set screw reaches the shaft, has thread to hold, and does not stand out of its hub.
    static final class SetScrewLength extends Fit {
        SetScrewLength() {
            super(
                    "set-screw-length",
                    "Length of the set screws",
                    Scope.DRIVE,
                    -2,
                    0.5,
                    "up to 2 mm shorter than the hub's wall, up to 0.5 mm longer, " + HABIT,
                    Role.SET_SCREWS,
                    Role.DRIVE_PULLEY);
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().setScrew().lengthMm();
        }

        @Override
        Dimension shaft(Subject s) {
            var pulley = s.drive().drivePulley();
            var hub = pulley.hubDiameterMm();
            var bore = pulley.boreDiameterMm();
            if (!hub.known() || !bore.known()) {
                return hub.known() ? bore : hub;
            }
            double low = (hub.lower() - bore.upper()) / 2;
            double high = (hub.upper() - bore.lower()) / 2;
            return new Dimension(
                    pulley.id() + ".wallMm",
                    Numbers.plain(low) + ".." + Numbers.plain(high),
                    (hub.nominal() - bore.nominal()) / 2,
                    low,
                    high,
                    new Provenance(hub.provenance().source(), "half of hub less bore"));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            var wall = shaft(s);
            double best = 0;
            for (double length : StandardSizes.SCREW_LENGTHS_MM) {
                if (length - wall.lower() <= 0.5 && length - wall.upper() >= -2) {
                    best = length;
                }
            }
            if (best == 0) {
                return "a hub with a wall of 4 mm or more";
            }
            return "set screws " + Numbers.fixed(best, 0) + " long";
        }
    }
}
