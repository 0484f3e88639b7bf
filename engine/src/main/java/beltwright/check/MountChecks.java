package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.Thread;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does the motor bolt to the mount?
final class MountChecks {
    private static final String HABIT = "common practice, no source";

    private MountChecks() {}

    static List<Check> all() {
        return List.of(
                new BoltPattern(),
                new HoleCount(),
                new Boss(),
                new SlotWeb(),
                new WasherCovers(),
                new WasherHole(),
                new WasherOpening());
    }

    /// Holes of the motor meet the slots of the plate.
    static final class BoltPattern extends HolesMeet {
        BoltPattern() {
            super("bolt-pattern", "Motor holes meet the slots", Role.MOTOR, Role.MOUNT);
        }

        @Override
        Dimension threaded(Subject s) {
            return s.drive().motor().boltCircleMm();
        }

        @Override
        Dimension open(Subject s) {
            return s.drive().mount().boltCircleMm();
        }

        @Override
        Dimension width(Subject s) {
            return s.drive().mount().slotWidthMm();
        }

        @Override
        Thread thread(Subject s) {
            return s.drive().motor().thread();
        }

        @Override
        String otherCircle(Subject s) {
            return "a mount for a " + mm(s.drive().motor().boltCircleMm().nominal())
                    + " circle; do not file slots wider";
        }
    }

    /// Every slot meets a hole.
    static final class HoleCount extends YesNo {
        HoleCount() {
            super("bolt-count", "Every slot has a motor hole", Scope.DRIVE, "count", Role.MOTOR, Role.MOUNT);
        }

        static boolean meet(int holes, int slots) {
            return holes % slots == 0;
        }

        @Override
        boolean met(Subject s) {
            return s.drive().motor().boltHoles() % s.drive().mount().slots() == 0;
        }

        @Override
        String asked(Subject s) {
            return "holes are a multiple of slots";
        }

        @Override
        void before(Subject s, Working w) {
            w.given(
                    "n_holes",
                    s.drive().motor().id() + ".boltHoles",
                    s.drive().motor().boltHoles(),
                    "",
                    "count");
            w.given(
                    "n_slots",
                    s.drive().mount().id() + ".slots",
                    s.drive().mount().slots(),
                    "",
                    "count");
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().motor().boltHoles() + " holes, "
                    + s.drive().mount().slots() + " slots";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a mount with " + s.drive().motor().boltHoles() + " slots";
        }
    }

    /// The boss of the motor enters the plate's opening.
    static final class Boss extends ChainGap {
        Boss() {
            super("boss-opening", "Motor boss in the plate's opening", Scope.DRIVE, 0.2, HABIT, Role.MOTOR, Role.MOUNT);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("d_opening", s.drive().mount().openingMm()),
                    minus("d_boss", s.drive().motor().bossDiameterMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "an opening " + leastMm(r.demand() - r.capacityWorst()) + " wider";
        }
    }

    /// The slots must not run into the opening: plate is left between them.
    static final class SlotWeb extends ChainGap {
        SlotWeb() {
            super(
                    "slot-web",
                    "Plate left between slots and opening",
                    Scope.DRIVE,
                    1,
                    "slots evenly spaced on their circle, half a pitch beside the centre line; " + HABIT,
                    Role.MOUNT);
        }

        static Range slotAside(Subject s) {
            double aside = Math.sin(Math.PI / s.drive().mount().slots()) / 2;
            return Range.of(s.drive().mount().boltCircleMm()).times(aside);
        }

        @Override
        void before(Subject s, Working w) {
            slotAside(s, w);
        }

        static void slotAside(Subject s, Working w) {
            var mount = s.drive().mount();
            w.given("k2", mount.boltCircleMm());
            w.given("n_slots", mount.id() + ".slots", mount.slots(), "", "count");
            w.given("s_slot", "slot beside the centre line, k2/2·sin(180°/n_slots)", slotAside(s), "geometry");
        }

        /// With an odd number one slot lies on the centre line, in line with the opening that runs along with it.
        static boolean inLine(Subject s) {
            return s.drive().mount().slots() % 2 == 1;
        }

        @Override
        List<Term> terms(Subject s) {
            var mount = s.drive().mount();
            if (inLine(s)) {
                return List.of(
                        plus("k2", mount.boltCircleMm()).half(),
                        minus("b_slot", mount.slotWidthMm()).half(),
                        minus("d_opening", mount.openingMm()).half(),
                        minus("C_slot", mount.slotMaxMm()),
                        plus("C_near", mount.slotMinMm()));
            }
            return List.of(
                    plus("s_slot", "slot beside the centre line", slotAside(s)),
                    minus("b_slot", mount.slotWidthMm()).half(),
                    minus("d_opening", mount.openingMm()).half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "an opening " + leastMm(2 * (r.demand() - r.capacityWorst())) + " narrower, or a larger bolt circle";
        }
    }

    /// The washer bridges the slot: a head over a slot keeps less than half of its area.
    static final class WasherCovers extends ChainGap {
        WasherCovers() {
            super("washer-covers", "Washer bridges the slot", Scope.DRIVE, 2, HABIT, Role.MOTOR_WASHERS, Role.MOUNT);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("D_washer", s.drive().motorWasher().outsideMm()),
                    minus("b_slot", s.drive().mount().slotWidthMm()));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "the washer is " + r.capacityText() + " mm wider than the slot; " + r.demandText() + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a washer of at least "
                    + leastMm(s.drive().mount().slotWidthMm().upper() + r.demand());
        }
    }

    /// The washer goes over its screw.
    static final class WasherHole extends Fit {
        WasherHole() {
            super(
                    "washer-hole",
                    "Washer over its screw",
                    Scope.DRIVE,
                    0,
                    1,
                    HABIT,
                    Role.MOTOR_WASHERS,
                    Role.MOTOR_SCREWS);
        }

        @Override
        Dimension hole(Subject s) {
            return s.drive().motorWasher().holeMm();
        }

        @Override
        Dimension shaft(Subject s) {
            var screw = s.drive().motorScrew();
            return Dimension.exact(
                    screw.id() + ".thread",
                    screw.thread().majorMm(),
                    screw.lengthMm().provenance());
        }
    }

    /// The washer beside the centre line must not hang over the plate's opening.
    static final class WasherOpening extends ChainGap {
        WasherOpening() {
            super(
                    "washer-opening",
                    "Washer clear of the plate's opening",
                    Scope.DRIVE,
                    -1,
                    "a millimetre of its edge may hang over the opening, which runs along with the slots, " + HABIT,
                    Role.MOTOR_WASHERS,
                    Role.MOUNT);
        }

        @Override
        void before(Subject s, Working w) {
            SlotWeb.slotAside(s, w);
        }

        @Override
        List<Term> terms(Subject s) {
            var mount = s.drive().mount();
            if (SlotWeb.inLine(s)) {
                return List.of(
                        plus("k2", mount.boltCircleMm()).half(),
                        minus("D_washer", s.drive().motorWasher().outsideMm()).half(),
                        minus("d_opening", mount.openingMm()).half(),
                        minus("C_slot", mount.slotMaxMm()),
                        plus("C_near", mount.slotMinMm()));
            }
            return List.of(
                    plus("s_slot", "slot beside the centre line", SlotWeb.slotAside(s)),
                    minus("D_washer", s.drive().motorWasher().outsideMm()).half(),
                    minus("d_opening", mount.openingMm()).half());
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacity() < 0
                    ? "its edge hangs " + Numbers.fixed(-r.capacity(), 1) + " mm over the opening; 1 mm at most"
                    : "all of it on the plate";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a washer " + leastMm(2 * (r.demand() - r.capacityWorst())) + " smaller, or a smaller opening";
        }
    }
}
