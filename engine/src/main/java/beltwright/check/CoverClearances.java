package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.layout.LayoutSolver;
import beltwright.quantity.Range;
import java.util.List;

/// Does the cover clear what turns and lies around it: wheel, wheel pulley, idler, ground? Its middle is the middle of
/// the slot; its arms follow the belt's spans.
final class CoverClearances {
    private static final String HABIT = "common practice, no source";

    private CoverClearances() {}

    static List<Check> all() {
        return List.of(new WheelSide(), new WheelPulleyRim(), new IdlerBeside(), new Lowest());
    }

    /// {@return how far an arm lies beside the centre line where it ends, its outside (mm)}
    ///
    /// @param r inside of the wall around the motor axis, or its outside
    static double armBeside(double r, double reach, double spanAngle) {
        return (r + reach * Math.sin(spanAngle)) / Math.cos(spanAngle);
    }

    /// The cover's face stands clear of the wheel: inboard of its side, or ahead of its tread.
    static final class WheelSide extends Apart {
        WheelSide() {
            super(
                    "cover-wheel",
                    "Cover clear of the wheel",
                    Scope.DRIVE,
                    1.5,
                    Role.COVER,
                    Role.WHEEL,
                    Role.INNER_BEARING,
                    Role.INNER_RING,
                    Role.MOUNT);
            placed();
        }

        @Override
        void before(Subject s, Working w) {
            Stack.tread(s, w);
        }

        @Override
        List<Term> along(Subject s) {
            return List.of(
                    plus(
                            "y_tread",
                            "inner edge of the tread from the hanger's end face",
                            s.endAt().wheelInnerMm()),
                    plus("i", s.drive().placement().plateInsetMm()),
                    minus("t_depth", s.drive().cover().depthMm()),
                    minus("t_wall", s.drive().cover().wallMm()));
        }

        @Override
        List<Term> across(Subject s) {
            return List.of(
                    plus("C_middle", "axle to the middle of the slot", CoverChecks.middle(s)),
                    minus("l_reach", s.drive().cover().reachMm()),
                    minus("D_wheel", s.end().wheel().diameterMm()).half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double more = r.demand() - r.capacityWorst();
            return "a cover that ends " + leastMm(more) + " sooner towards the axle, or one that much shallower";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double c = s.at().centreDistanceMm().nominal();
            double middle = CoverChecks.middle(s).nominal();
            double wheel = s.end().wheel().diameterMm().nominal() / 2;
            double reach = middle - s.drive().cover().reachMm().nominal();
            double x = s.at().motorXMm() / c;
            double z = s.at().motorZMm() / c;
            return List.of(new DrawnDimension(
                    "cover to tread",
                    View.SIDE,
                    s.side(),
                    wheel * x,
                    wheel * z,
                    reach * x,
                    reach * z,
                    Along.POINTS,
                    false,
                    key(s)));
        }
    }

    /// The open end of the wall stays clear of the wheel pulley.
    static final class WheelPulleyRim extends ChainGap {
        WheelPulleyRim() {
            super(
                    "cover-rim",
                    "Cover's open end clear of the wheel pulley",
                    Scope.DRIVE,
                    2,
                    HABIT,
                    Role.COVER,
                    Role.WHEEL_PULLEY,
                    Role.MOUNT);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("C_middle", "axle to the middle of the slot", CoverChecks.middle(s)),
                    minus("l_reach", s.drive().cover().reachMm()),
                    minus(
                                    "D_reach",
                                    "largest diameter of the wheel pulley, flange or belt",
                                    s.drive().wheelPulley().rim().reachMm())
                            .half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a cover that ends " + leastMm(r.demand() - r.capacityWorst()) + " sooner towards the axle";
        }
    }

    /// An idler beside the cover's arm stays clear of it.
    static final class IdlerBeside extends Check {
        private static final double WANTED = 1;

        IdlerBeside() {
            super(
                    "cover-idler",
                    "Cover clear of the idler",
                    "mm",
                    Scope.DRIVE,
                    "disc against the arm, taken straight at the wall's radius; wanted: " + HABIT,
                    Role.COVER,
                    Role.IDLER,
                    Role.MOUNT);
            placed();
        }

        /// {@return distance of the idler from the arm on its side}
        static double gap(double before, double beside, double idler) {
            return (before > 0 ? Math.hypot(before, Math.max(0, beside)) : beside) - idler / 2;
        }

        /// {@return how far the idler stands before the arm's end; negative where it stands beside the arm (mm)}
        private static Range before(Subject s) {
            return CoverChecks.middle(s)
                    .minus(s.drive().cover().reachMm())
                    .minus(s.drive().placement().idlerAlongMm());
        }

        /// {@return how far it lies beside the arm, inside or outside of it (mm)}
        private static Range beside(Subject s) {
            var cover = s.drive().cover();
            var aside = Range.of(s.drive().placement().idlerAsideMm()).absolute();
            return CoverChecks.offWall(Range.of(cover.radiusMm()).minus(aside), cover.wallMm());
        }

        private static Range gap(Subject s) {
            var before = before(s);
            var beside = beside(s);
            var idler = s.drive().idler().reachDiameterMm();
            return new Range(
                    gap(before.low(), beside.low(), idler.upper()),
                    gap(before.nominal(), beside.nominal(), idler.nominal()),
                    gap(before.high(), beside.high(), idler.lower()));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("x_i", s.drive().placement().idlerAlongMm());
            w.given("y_i", s.drive().placement().idlerAsideMm());
            w.given("d_idler", s.drive().idler().reachDiameterMm());
            w.given("C_middle", "axle to the middle of the slot", CoverChecks.middle(s), "layout");
            w.given("l_reach", s.drive().cover().reachMm());
            w.given("r_cover", s.drive().cover().radiusMm());
            w.given("t_wall", s.drive().cover().wallMm());
            var gap = gap(s);
            double before = w.line(
                    "a",
                    "max(0, C_middle − l_reach − x_i)",
                    Math.max(0, before(s).nominal()),
                    "mm",
                    "before the arm's end");
            double beside = w.line(
                    "b",
                    "abs(abs(y_i) − r_cover − t_wall/2) − t_wall/2",
                    beside(s).nominal(),
                    "mm",
                    "beside the arm");
            w.line(
                    "g",
                    (before > 0 ? (beside > 0 ? "√(a^2 + b^2)" : "a") : "b") + " − d_idler/2",
                    gap.nominal(),
                    "mm",
                    "disc to arm");
            w.given("g_worst", "the same at the worst corner of all limits", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a cover that ends " + leastMm(r.demand() - r.capacityWorst())
                    + " sooner, or the idler that much nearer the axle";
        }
    }

    /// The round of the wall and the end of the lower arm over flat ground.
    static final class Lowest extends Check {
        private static final double WANTED = 10;

        Lowest() {
            super(
                    "cover-ground",
                    "Cover above flat ground",
                    "mm",
                    Scope.DRIVE,
                    "lower of wall and arm, worn wheel; wanted: " + HABIT,
                    Role.COVER,
                    Role.WHEEL,
                    Role.MOUNT,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
        }

        private static double spanAngle(Subject s, double centreDistance) {
            return LayoutSolver.pitchLine(s.drive()).spanAngleRad(centreDistance);
        }

        static double lowest(double middle, double angle, double outside, double reach, double spanAngle) {
            double round = middle * Math.sin(angle) - outside;
            double arm = (middle - reach) * Math.sin(angle) - armBeside(outside, reach, spanAngle) * Math.cos(angle);
            return Math.min(round, arm);
        }

        private static Range gap(Subject s) {
            var middle = CoverChecks.middle(s);
            var angle = s.drive().placement().aboveAxleDeg();
            var wall = s.drive().cover().radiusMm();
            var thickness = s.drive().cover().wallMm();
            var reach = s.drive().cover().reachMm();
            var worn = s.end().wheel().wornDiameterMm();
            var centre = s.at().centreDistanceMm();
            double span = spanAngle(s, centre.nominal());
            double worst = Double.POSITIVE_INFINITY;
            double best = Double.NEGATIVE_INFINITY;
            for (int corner = 0; corner < 8; corner++) {
                double c = (corner & 1) == 0 ? middle.low() : middle.high();
                double a = Math.toRadians((corner & 2) == 0 ? angle.lower() : angle.upper());
                double l = (corner & 4) == 0 ? reach.lower() : reach.upper();
                worst = Math.min(
                        worst,
                        worn.lower() / 2
                                + lowest(c, a, wall.upper() + thickness.upper(), l, spanAngle(s, centre.low())));
                best = Math.max(
                        best,
                        worn.upper() / 2
                                + lowest(c, a, wall.lower() + thickness.lower(), l, spanAngle(s, centre.high())));
            }
            return new Range(
                    worst,
                    worn.nominal() / 2
                            + lowest(
                                    middle.nominal(),
                                    Math.toRadians(angle.nominal()),
                                    wall.nominal() + thickness.nominal(),
                                    reach.nominal(),
                                    span),
                    best);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            Closure.centreDistance(s.drive(), s.at(), w);
            w.given("β", s.drive().placement().aboveAxleDeg());
            w.given("C_middle", "axle to the middle of the slot", CoverChecks.middle(s), "layout");
            w.given("r_cover", s.drive().cover().radiusMm());
            w.given("t_wall", s.drive().cover().wallMm());
            w.given("l_reach", s.drive().cover().reachMm());
            w.given("D_worn", s.end().wheel().wornDiameterMm());
            var gap = gap(s);
            if (s.at().closed()) {
                double angle =
                        Math.toRadians(s.drive().placement().aboveAxleDeg().nominal());
                double outside = s.drive().cover().radiusMm().nominal()
                        + s.drive().cover().wallMm().nominal();
                double middle = CoverChecks.middle(s).nominal();
                double reach = s.drive().cover().reachMm().nominal();
                double span = w.line(
                        "φ",
                        "asin((D − d)/(2·C))",
                        spanAngle(s, s.at().centreDistanceMm().nominal()),
                        "rad",
                        "span against the centre line");
                w.line(
                        "z_round",
                        "C_middle·sin(β·π/180) − r_cover − t_wall",
                        middle * Math.sin(angle) - outside,
                        "mm",
                        "lowest of the round");
                w.line(
                        "z_arm",
                        "(C_middle − l_reach)·sin(β·π/180) − (r_cover + t_wall + l_reach·sin(φ))/cos(φ)·cos(β·π/180)",
                        (middle - reach) * Math.sin(angle) - armBeside(outside, reach, span) * Math.cos(angle),
                        "mm",
                        "end of the lower arm");
                w.line("g", "D_worn/2 + min(z_round, z_arm)", gap.nominal(), "mm", "the lower above the ground");
            }
            w.given("g_worst", "the same at the worst corner of all limits", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a steeper mount angle, a smaller cover, or change the wheel "
                    + leastMm(2 * (r.demand() - r.capacityWorst())) + " of diameter earlier";
        }
    }
}
