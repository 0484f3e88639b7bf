package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.Thread;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does the cover clear what runs under it and beside it, stay on, and let stones out?
final class CoverChecks {
    private static final String HABIT = "common practice, no source";

    private CoverChecks() {}

    static List<Check> all() {
        return List.of(new Count(), new Circle(), new Belt(), new Heads(), new Pulley(), new Stones());
    }

    /// {@return the radius of the belt's back around the drive pulley, or of its flange, whichever is larger (mm)}
    private static Term running(Subject s) {
        return minus(
                        "d_reach",
                        "largest diameter of the drive pulley, flange or belt",
                        s.drive().drivePulley().rim().reachMm())
                .half();
    }

    /// {@return how far the motor stands from the middle of the cover, which stays on the plate while the motor slides:
    ///     its middle is taken at the middle of the slot (mm)}
    private static Range beside(Subject s) {
        return s.at().centreDistanceMm().minus(middle(s)).absolute();
    }

    /// {@return the axle to the middle of the cover, which is the middle of the slot (mm)}
    static Range middle(Subject s) {
        var mount = s.drive().mount();
        return Range.of(mount.slotMinMm()).plus(mount.slotMaxMm()).times(0.5);
    }

    /// {@return what lies between a wall and a line beside it, on whichever side it lies (mm): inside of the wall by
    ///     `inward`, or outside, its thickness further}
    ///
    /// @param inward from the line out to the inside of the wall
    static Range offWall(Range inward, Dimension thickness) {
        double t = thickness.upper();
        double middle = -t / 2; // nowhere does it lie deeper in the wall
        return new Range(
                inward.low() <= middle && middle <= inward.high()
                        ? middle
                        : Math.min(offWall(inward.low(), t), offWall(inward.high(), t)),
                offWall(inward.nominal(), thickness.nominal()),
                Math.max(offWall(inward.low(), thickness.lower()), offWall(inward.high(), thickness.lower())));
    }

    private static double offWall(double inward, double thickness) {
        return Math.max(inward, -inward - thickness);
    }

    private static void beside(Subject s, Working w) {
        Closure.centreDistance(s.drive(), s.at(), w);
        w.given("C_near", s.drive().mount().slotMinMm());
        w.given("C_slot", s.drive().mount().slotMaxMm());
        w.given("e_cover", "motor off the middle of the cover, abs(C − (C_near + C_slot)/2)", beside(s), "layout");
    }

    /// Every screw hole has a thread in the mount.
    static final class Count extends YesNo {
        Count() {
            super("cover-count", "Every cover hole has a thread", Scope.DRIVE, "count", Role.COVER, Role.MOUNT);
        }

        @Override
        boolean met(Subject s) {
            int holes = s.drive().cover().screwHoles();
            int threads = s.drive().mount().coverHoles();
            return holes > 0 && threads > 0 && threads % holes == 0;
        }

        @Override
        String asked(Subject s) {
            return "threads in the mount are a multiple of holes in the cover";
        }

        @Override
        void before(Subject s, Working w) {
            var cover = s.drive().cover();
            var mount = s.drive().mount();
            w.given("n_cover", cover.id() + ".screwHoles", cover.screwHoles(), "", "count");
            w.given("n_mount", mount.id() + ".coverHoles", mount.coverHoles(), "", "count");
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.drive().cover().screwHoles() + " holes, "
                    + s.drive().mount().coverHoles() + " threads";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return s.drive().mount().coverHoles() == 0
                    ? "a mount with threads for a cover"
                    : "a cover with " + s.drive().mount().coverHoles() + " holes";
        }
    }

    /// Holes of the cover meet the threads of the mount.
    static final class Circle extends HolesMeet {
        Circle() {
            super("cover-circle", "Cover holes meet the mount", Role.COVER, Role.MOUNT);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().cover().screwHoles() > 0 && s.drive().mount().coverHoles() > 0;
        }

        @Override
        Dimension threaded(Subject s) {
            return s.drive().mount().coverCircleMm();
        }

        @Override
        Dimension open(Subject s) {
            return s.drive().cover().screwCircleMm();
        }

        @Override
        Dimension width(Subject s) {
            return s.drive().cover().screwHoleMm();
        }

        @Override
        Thread thread(Subject s) {
            return s.drive().mount().coverThread();
        }

        @Override
        String otherCircle(Subject s) {
            return "a cover with its holes on a "
                    + mm(s.drive().mount().coverCircleMm().nominal()) + " circle";
        }
    }

    /// The belt whips and carries grit: it needs air to the wall.
    static final class Belt extends ChainGap {
        Belt() {
            super(
                    "cover-belt",
                    "Belt clear of the cover's wall",
                    Scope.DRIVE,
                    2,
                    HABIT,
                    Role.COVER,
                    Role.DRIVE_PULLEY,
                    Role.MOUNT,
                    Role.BELT,
                    Role.WHEEL_PULLEY);
        }

        @Override
        void before(Subject s, Working w) {
            beside(s, w);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("r_cover", s.drive().cover().radiusMm()),
                    running(s),
                    minus("e_cover", "motor off the middle of the cover", beside(s)));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a cover " + leastMm(2 * (r.demand() - r.capacityWorst())) + " wider inside";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double x = s.at().motorXMm();
            double z = s.at().motorZMm();
            double r = s.drive().cover().radiusMm().nominal();
            return List.of(new DrawnDimension(
                    "belt to cover",
                    View.SIDE,
                    s.side(),
                    x,
                    z + r - gap(s).nominal(),
                    x,
                    z + r,
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// The wall stands on the plate beside the washers of the motor screws: around all of them, or inside.
    static final class Heads extends Check {
        private static final double WANTED = 0.5;

        Heads() {
            super(
                    "cover-heads",
                    "Cover's wall clear of the motor screws",
                    "mm",
                    Scope.DRIVE,
                    "washers on their circle, inside the wall or outside it, worst over the slot; wanted: " + HABIT,
                    Role.COVER,
                    Role.MOUNT,
                    Role.MOTOR_WASHERS,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
        }

        private static Range gap(Subject s) {
            var inward = Range.of(s.drive().cover().radiusMm())
                    .minus(Range.of(s.drive().mount().boltCircleMm()).times(0.5));
            return CoverChecks.offWall(inward, s.drive().cover().wallMm())
                    .minus(Range.of(s.drive().motorWasher().outsideMm()).times(0.5))
                    .minus(beside(s));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            CoverChecks.beside(s, w);
            w.given("e_cover", "motor off the middle of the cover, abs(C − (C_near + C_slot)/2)", beside(s), "layout");
            w.given("r_cover", s.drive().cover().radiusMm());
            w.given("t_wall", s.drive().cover().wallMm());
            w.given("k2", s.drive().mount().boltCircleMm());
            w.given("D_washer", s.drive().motorWasher().outsideMm());
            var gap = gap(s);
            w.line(
                    "g",
                    "max(r_cover − k2/2 − D_washer/2 − e_cover, k2/2 − D_washer/2 − e_cover − r_cover − t_wall)",
                    gap.nominal(),
                    "mm",
                    "around all washers, or inside them");
            w.given("g_worst", "the same at the worst corner of all limits", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double around = s.drive().mount().boltCircleMm().upper() / 2
                    + s.drive().motorWasher().outsideMm().upper() / 2
                    + beside(s).high()
                    + WANTED;
            return "a cover at least " + leastMm(around) + " in inside radius";
        }
    }

    /// The cover's face stands clear of pulley and shaft end.
    static final class Pulley extends ChainGap {
        Pulley() {
            super(
                    "cover-pulley",
                    "Drive pulley clear of the cover's face",
                    Scope.DRIVE,
                    1,
                    HABIT,
                    Role.COVER,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR,
                    Role.MOUNT);
            placed();
        }

        private static boolean shaftLeads(Subject s) {
            return s.at().shaftEndMm().nominal() > s.at().drivePulleyFarMm().nominal();
        }

        @Override
        List<Term> terms(Subject s) {
            var depth = plus("t_depth", s.drive().cover().depthMm());
            if (shaftLeads(s)) {
                return List.of(
                        depth,
                        minus("l_shaft", s.drive().motor().shaftLengthMm()),
                        plus("t", s.drive().mount().plateThicknessMm()));
            }
            var pulley = s.drive().drivePulley();
            return List.of(
                    depth,
                    minus("s_pulley", s.drive().placement().pulleyStandoffMm()),
                    minus("l_hub", pulley.hubLengthMm()),
                    minus("b_rim", "rim with its flanges", rim(s)));
        }

        private static Range rim(Subject s) {
            var rim = s.drive().drivePulley().rim();
            var width = Range.of(rim.faceWidthMm());
            return rim.flanges().count() == 0
                    ? width
                    : width.plus(Range.of(rim.flangeThicknessMm())
                            .times(rim.flanges().count()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a cover " + leastMm(r.demand() - r.capacityWorst())
                    + " deeper, or the pulley that much nearer the plate";
        }
    }

    /// A stone small enough to get between belt and wall must find its way out.
    static final class Stones extends ChainGap {
        Stones() {
            super(
                    "cover-stones",
                    "Stones can leave the cover",
                    Scope.DRIVE,
                    1,
                    "the opening is wider than the largest stone that fits between belt and wall, " + HABIT,
                    Role.COVER,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.BELT,
                    Role.MOUNT);
        }

        /// {@return the back of the belt around the drive pulley, between its flanges (mm)}
        private static Range back(Subject s) {
            var rim = s.drive().drivePulley().rim();
            var profile = rim.profile();
            return Range.exact(rim.outsideDiameterMm() / 2 + profile.heightMm() - profile.toothHeightMm());
        }

        @Override
        void before(Subject s, Working w) {
            CoverChecks.beside(s, w);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("b_opening", s.drive().cover().stoneOpeningMm()),
                    minus("r_cover", s.drive().cover().radiusMm()),
                    plus("r_back", "back of the belt around the drive pulley, radius", back(s)),
                    minus("e_cover", "motor off the middle of the cover", CoverChecks.beside(s)));
        }

        @Override
        public String says(Subject s, Reading r) {
            return "the opening is " + Numbers.fixed(Math.abs(r.capacity()), 1) + " mm "
                    + (r.capacity() < 0 ? "narrower" : "wider")
                    + " than the gap between belt and wall; "
                    + r.demandText() + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "an opening " + leastMm(r.demand() - r.capacityWorst()) + " wider at the lowest point";
        }
    }
}
