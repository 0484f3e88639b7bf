package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.Clearance;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.DrivePulley;
import beltwright.part.Hanger;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Does anything on the drive touch that must not? Pulleys, plate, screw heads and clamp.
final class ClearanceChecks {
    private static final String HABIT = "common practice, no source";

    private ClearanceChecks() {}

    static List<Check> all() {
        return List.of(
                new DriveWheel(),
                new WheelPulleyPlate(),
                new WheelPulleyHanger(),
                new BeltWheel(),
                new HeadsPulley(),
                new HeadsBelt(),
                new ClampRoom());
    }

    /// Drive pulley and shaft end stay clear of the wheel's side.
    static final class DriveWheel extends Check {
        private static final double WANTED = 1;

        DriveWheel() {
            super(
                    "pulley-wheel",
                    "Drive pulley and shaft end clear of the wheel",
                    "mm",
                    Scope.DRIVE,
                    "distance between simple outlines, worst limits; wanted: " + HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR,
                    Role.WHEEL,
                    Role.BELT,
                    Role.WHEEL_PULLEY,
                    Role.INNER_BEARING,
                    Role.INNER_RING,
                    Role.MOUNT);
            placed();
        }

        private static Range gap(Subject s, Range end, double radiusHigh, double radius, double radiusLow) {
            var axial = s.endAt().wheelInnerMm().minus(end);
            var c = s.at().centreDistanceMm();
            var wheel = s.end().wheel().diameterMm();
            return new Range(
                    Clearance.apart(axial.low(), c.low() - wheel.upper() / 2 - radiusHigh),
                    Clearance.apart(axial.nominal(), c.nominal() - wheel.nominal() / 2 - radius),
                    Clearance.apart(axial.high(), c.high() - wheel.lower() / 2 - radiusLow));
        }

        private static Range pulley(Subject s) {
            var d = s.drive().drivePulley().rim().reachMm();
            return gap(s, s.at().drivePulleyFarMm(), d.high() / 2, d.nominal() / 2, d.low() / 2);
        }

        private static Range shaft(Subject s) {
            var d = s.drive().motor().shaftDiameterMm();
            return gap(s, s.at().shaftEndMm(), d.upper() / 2, d.nominal() / 2, d.lower() / 2);
        }

        static Range smaller(Range a, Range b) {
            return new Range(
                    Math.min(a.low(), b.low()), Math.min(a.nominal(), b.nominal()), Math.min(a.high(), b.high()));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, smaller(pulley(s), shaft(s)));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            Closure.centreDistance(s.drive(), s.at(), w);
            w.given(
                    "y_tread",
                    "inner edge of the tread from the hanger's end face",
                    s.endAt().wheelInnerMm(),
                    "layout");
            w.given("D_wheel", s.end().wheel().diameterMm());
            w.given("y_pulley", "far end of the drive pulley", s.at().drivePulleyFarMm(), "layout");
            w.given(
                    "d_reach",
                    "largest diameter of the drive pulley",
                    s.drive().drivePulley().rim().reachMm(),
                    "flange or belt");
            w.given("y_shaft", "shaft end", s.at().shaftEndMm(), "layout");
            w.given("d_shaft", s.drive().motor().shaftDiameterMm());
            var pulley = pulley(s);
            var shaft = shaft(s);
            part(
                    s,
                    w,
                    "pulley",
                    "d_reach",
                    s.at().drivePulleyFarMm(),
                    s.drive().drivePulley().rim().reachMm().nominal(),
                    pulley);
            part(
                    s,
                    w,
                    "shaft",
                    "d_shaft",
                    s.at().shaftEndMm(),
                    s.drive().motor().shaftDiameterMm().nominal(),
                    shaft);
            var gap = smaller(pulley, shaft);
            w.line("g", "min(g_pulley, g_shaft)", gap.nominal(), "mm", "the nearer");
            w.given("g_worst", "the same with every dimension at its worse limit", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        private static void part(Subject s, Working w, String what, String diameter, Range end, double d, Range gap) {
            double a = w.line(
                    "a_" + what,
                    "y_tread − y_" + what,
                    s.endAt().wheelInnerMm().nominal() - end.nominal(),
                    "mm",
                    "along the axle");
            double b = w.line(
                    "b_" + what,
                    "C − D_wheel/2 − " + diameter + "/2",
                    s.at().centreDistanceMm().nominal()
                            - s.end().wheel().diameterMm().nominal() / 2
                            - d / 2,
                    "mm",
                    "across it");
            w.line(
                    "g_" + what,
                    a > 0 && b > 0 ? "√(a_" + what + "^2 + b_" + what + "^2)" : "max(a_" + what + ", b_" + what + ")",
                    gap.nominal(),
                    "mm",
                    "distance");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a shorter shaft or pulley, or a longer belt: " + leastMm(r.demand() - r.capacityWorst())
                    + " more room";
        }
    }

    /// The wheel pulley turns past the plate.
    static final class WheelPulleyPlate extends ChainGap {
        WheelPulleyPlate() {
            super(
                    "wheel-pulley-plate",
                    "Wheel pulley clear of the mount plate",
                    Scope.DRIVE,
                    1,
                    HABIT,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL,
                    Role.INNER_BEARING,
                    Role.INNER_RING);
            placed();
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("y_rim", "near side of the wheel pulley from the hanger's end face", s.at().wheelRimNearMm()),
                    plus("i", s.drive().placement().plateInsetMm()));
        }

        @Override
        void before(Subject s, Working w) {
            Stack.wheelPulley(s, w);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the mount " + leastMm(r.demand() - r.capacityWorst())
                    + " further in, or a thicker inner speed ring";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            return List.of(new DrawnDimension(
                    "plate to wheel pulley",
                    View.PLAN,
                    s.side(),
                    0,
                    s.plan(s.at().plateOuterMm().nominal()),
                    0,
                    s.plan(s.at().wheelRimNearMm().nominal()),
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// The belt leaves its pulley across the side of the tyre, so it must run inboard of the tread's edge.
    static final class BeltWheel extends ChainGap {
        BeltWheel() {
            super("belt-wheel", "Belt clear of the wheel's side", Scope.DRIVE, 1, HABIT, Role.WHEEL_PULLEY, Role.WHEEL);
        }

        @Override
        List<Term> terms(Subject s) {
            var pulley = s.drive().wheelPulley();
            var standoff = plus("q", pulley.rimStandoffMm());
            var inset = minus("f", s.end().wheel().coreFaceInsetMm());
            return pulley.rim().flanges().onWheelSide()
                    ? List.of(standoff, plus("t_flange", pulley.rim().flangeThicknessMm()), inset)
                    : List.of(standoff, inset);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a wheel pulley whose rim stands " + leastMm(r.demand() - r.capacityWorst())
                    + " further from the core";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double tread = s.endAt().wheelInnerMm().nominal();
            double x = -s.end().wheel().diameterMm().nominal() / 2;
            return List.of(new DrawnDimension(
                    "belt to wheel",
                    View.PLAN,
                    s.side(),
                    x,
                    s.plan(tread - gap(s).nominal()),
                    x,
                    s.plan(tread),
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// Where the wheel pulley reaches inward over the hanger, the hanger stands in its bore.
    static final class WheelPulleyHanger extends Apart {
        WheelPulleyHanger() {
            super(
                    "wheel-pulley-hanger",
                    "Wheel pulley clear of the hanger",
                    Scope.DRIVE,
                    1,
                    Role.WHEEL_PULLEY,
                    Role.HANGER,
                    Role.WHEEL,
                    Role.INNER_BEARING,
                    Role.INNER_RING);
        }

        @Override
        void before(Subject s, Working w) {
            Stack.wheelPulley(s, w);
            var h = s.kit().hanger();
            w.given("h", h.sectionHeightMm());
            if (h.section() == Hanger.Section.RECTANGULAR) {
                w.given("b_h", h.sectionDepthMm());
                w.line("d_hanger", "√(h^2 + b_h^2)", across(h).nominal(), "mm", "across the corners of the section");
            } else {
                w.line("d_hanger", "h", across(h).nominal(), "mm", "round section");
            }
        }

        private static Range across(Hanger h) {
            var height = h.sectionHeightMm();
            var depth = h.sectionDepthMm();
            return h.section() == Hanger.Section.ROUND
                    ? Range.of(height)
                    : new Range(
                            Math.hypot(height.lower(), depth.lower()),
                            Math.hypot(height.nominal(), depth.nominal()),
                            Math.hypot(height.upper(), depth.upper()));
        }

        @Override
        List<Term> along(Subject s) {
            return List.of(
                    plus("y_rim", "near side of the wheel pulley from the hanger's end face", s.at().wheelRimNearMm()));
        }

        @Override
        List<Term> across(Subject s) {
            return List.of(
                    plus("d_bore", s.drive().wheelPulley().boreDiameterMm()).half(),
                    minus(
                                    "d_across",
                                    "largest size of the hanger's section",
                                    across(s.kit().hanger()))
                            .half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a bore " + leastMm(2 * (r.demand() - r.capacityWorst())) + " wider, or a longer inner speed ring";
        }
    }

    /// The belt passes over the heads nearest the axle, so it must run clear of them along the axle.
    static final class HeadsBelt extends ChainGap {
        HeadsBelt() {
            super(
                    "heads-belt",
                    "Belt clear of the motor screw heads",
                    Scope.DRIVE,
                    0.5,
                    HABIT,
                    Role.MOTOR_SCREWS,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR_WASHERS);
            placed();
        }

        @Override
        List<Term> terms(Subject s) {
            var screw = s.drive().motorScrew();
            var pulley = s.drive().drivePulley();
            var terms = new ArrayList<>(
                    List.of(plus("s_pulley", s.drive().placement().pulleyStandoffMm())));
            if (pulley.hubSide() == DrivePulley.HubSide.MOTOR) {
                terms.add(plus("l_hub", pulley.hubLengthMm()));
            }
            if (pulley.rim().flanges().onMotorSide()) {
                terms.add(plus("t_flange1", pulley.rim().flangeThicknessMm()));
            }
            terms.add(minus("t_washer", s.drive().motorWasher().thicknessMm()));
            terms.add(minus(
                    "k_head",
                    "height of the screw head, " + screw.head().standard(),
                    Range.exact(screw.head().heightMm(screw.thread()))));
            return terms;
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the drive pulley " + leastMm(r.demand() - r.capacityWorst())
                    + " further from the plate with the mount that much further in, or lower heads";
        }
    }

    /// The heads of the motor screws stand under the drive pulley.
    static final class HeadsPulley extends Apart {
        HeadsPulley() {
            super(
                    "heads-pulley",
                    "Motor screw heads clear of the drive pulley",
                    Scope.DRIVE,
                    0.5,
                    Role.MOTOR_SCREWS,
                    Role.DRIVE_PULLEY,
                    Role.MOUNT,
                    Role.MOTOR_WASHERS);
            placed();
        }

        @Override
        List<Term> along(Subject s) {
            var screw = s.drive().motorScrew();
            return List.of(
                    plus("s_pulley", s.drive().placement().pulleyStandoffMm()),
                    minus("t_washer", s.drive().motorWasher().thicknessMm()),
                    minus(
                            "k_head",
                            "height of the screw head, " + screw.head().standard(),
                            Range.exact(screw.head().heightMm(screw.thread()))));
        }

        @Override
        List<Term> across(Subject s) {
            var screw = s.drive().motorScrew();
            return List.of(
                    plus("k_bolt", s.drive().mount().boltCircleMm()).half(),
                    minus(
                                    "d_head",
                                    "diameter of the screw head, "
                                            + screw.head().standard(),
                                    Range.exact(screw.head().diameterMm(screw.thread())))
                            .half(),
                    minus(
                                    "d_reach",
                                    "largest diameter of the drive pulley",
                                    s.drive().drivePulley().rim().reachMm())
                            .half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the drive pulley " + leastMm(r.demand() - r.capacityWorst())
                    + " further out on the shaft, or lower heads";
        }
    }

    /// The clamp finds enough hanger between end face and middle body.
    static final class ClampRoom extends ChainGap {
        ClampRoom() {
            super("clamp-room", "Room for the mount on the hanger", Scope.DRIVE, 0.5, HABIT, Role.MOUNT, Role.HANGER);
            placed();
        }

        @Override
        List<Term> terms(Subject s) {
            var terms = new ArrayList<>(List.of(
                    plus("B", s.kit().hanger().widthMm()).half(),
                    minus("i", s.drive().placement().plateInsetMm()),
                    minus("t", s.drive().mount().plateThicknessMm()),
                    minus("b_body", s.kit().hanger().bodyWidthMm()).half()));
            if (FixingChecks.clamped(s)) {
                terms.add(minus("l_clamp", s.drive().mount().clampLengthMm()));
            }
            return terms;
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return (FixingChecks.clamped(s) ? "a clamp " : "a plate ") + leastMm(r.demand() - r.capacityWorst())
                    + (FixingChecks.clamped(s) ? " shorter" : " thinner or further out") + ", or a wider hanger";
        }
    }
}
