package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Do the dowel pins between mount and hanger find their holes, without play, deep enough and with room? How many pins
/// there are is counted with the rest of the hardware.
final class DowelChecks {
    private static final String HABIT = "common practice, no source";

    private DowelChecks() {}

    static List<Check> all() {
        return List.of(new Holes(), new PinFit(true), new PinFit(false), new Reach(), new Room());
    }

    private static boolean pinned(Subject s) {
        return s.drive().mount().dowels() > 0;
    }

    /// {@return whether pins go from mount to hanger: without holes in one of them nothing more is asked}
    private static boolean holed(Subject s) {
        return pinned(s) && s.kit().hanger().dowelHoles() > 0;
    }

    /// The hanger has a hole for each pin of the mount.
    static final class Holes extends YesNo {
        Holes() {
            super("dowel-holes", "Every dowel pin has a hole", Scope.DRIVE, "count", Role.MOUNT, Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return pinned(s);
        }

        @Override
        boolean met(Subject s) {
            return s.kit().hanger().dowelHoles() >= s.drive().mount().dowels();
        }

        @Override
        String asked(Subject s) {
            return "dowel holes of the hanger are no fewer than those of the mount";
        }

        @Override
        void before(Subject s, Working w) {
            var mount = s.drive().mount();
            var hanger = s.kit().hanger();
            w.given("n_pin", mount.id() + ".dowels", mount.dowels(), "", "count");
            w.given("n_dowel", hanger.id() + ".dowelHoles", hanger.dowelHoles(), "", "count");
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().mount().dowels() + " pins, " + s.kit().hanger().dowelHoles()
                    + " dowel holes at this end of the hanger";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a hanger with dowel holes, or a mount without; a hanger that was drilled and reamed with its mount"
                    + " has its holes entered as measured";
        }
    }

    /// A pin sits without play, yet goes in by hand or a light press: torque that reverses works a loose one out.
    ///
    /// m6 in H7 is 0.018 mm firm to 0.011 mm loose up to 12 mm, and the bounds take it with some room.
    static final class PinFit extends Fit {
        private final boolean inMount;

        PinFit(boolean inMount) {
            super(
                    inMount ? "dowel-fit-mount" : "dowel-fit-hanger",
                    "Dowel pin in its hole in the " + (inMount ? "mount" : "hanger"),
                    Scope.DRIVE,
                    -0.02,
                    0.02,
                    HABIT,
                    Role.DOWEL_PINS,
                    inMount ? Role.MOUNT : Role.HANGER);
            this.inMount = inMount;
        }

        @Override
        public boolean applies(Subject s) {
            return inMount ? pinned(s) : s.kit().hanger().dowelHoles() > 0;
        }

        @Override
        Dimension hole(Subject s) {
            return inMount ? s.drive().mount().dowelMm() : s.kit().hanger().dowelMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return HangerForm.pin(s).diameterMm();
        }
    }

    /// A pin that stands on the bottom of its hole in the hanger reaches into both parts by its own diameter.
    static final class Reach extends Check {
        Reach() {
            super(
                    "dowel-reach",
                    "Dowel pins reach into mount and hanger",
                    "mm",
                    Scope.DRIVE,
                    "the shorter of both lengths against the pin's diameter: " + HABIT,
                    Role.DOWEL_PINS,
                    Role.MOUNT,
                    Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return holed(s);
        }

        private static Range reach(Subject s) {
            return new Range(
                    HangerForm.depthMm(s, At.WORST), HangerForm.depthMm(s, At.NOMINAL), HangerForm.depthMm(s, At.BEST));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(Range.of(HangerForm.pin(s).diameterMm()), reach(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("d_pin", HangerForm.pin(s).diameterMm());
            HangerForm.writeDepth(s, w);
            measure(s, out);
            w.given(
                    "capacity_worst",
                    "there is, every number at its worse limit",
                    out.capacityWorst,
                    "mm",
                    "worst case");
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm of pin in the part that holds less of it; its diameter, " + r.demandText()
                    + ", wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "longer pins, or a deeper hole in the part that holds less of them";
        }
    }

    /// Both holes together are deeper than the pin is long: else it holds mount and hanger apart, or stands out.
    static final class Room extends ChainGap {
        Room() {
            super(
                    "dowel-room",
                    "Dowel pins do not hold mount and hanger apart",
                    Scope.DRIVE,
                    0.2,
                    HABIT,
                    Role.DOWEL_PINS,
                    Role.MOUNT,
                    Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return holed(s);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("b_hanger", s.kit().hanger().dowelHoleDepthMm()),
                    plus("b_mount", s.drive().mount().dowelHoleDepthMm()),
                    minus("L_pin", HangerForm.pin(s).lengthMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "pins " + Numbers.fixed(Math.max(0.1, r.demand() - r.capacityWorst()), 1)
                    + " mm shorter, or holes as much deeper";
        }
    }
}
