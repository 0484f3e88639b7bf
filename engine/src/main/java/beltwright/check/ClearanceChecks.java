package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.Clearance;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.Hanger;
import beltwright.quantity.Range;
import java.util.List;

/// Does anything touch that must not? Motor, pulleys, plate, wheel and hanger against each other.
final class ClearanceChecks {
    private static final String HABIT = "common practice, no source";

    private ClearanceChecks() {}

    static List<Check> all() {
        return List.of(
                new MotorHanger(),
                new MotorBody(),
                new MotorWheel(),
                new DriveWheel(),
                new WheelPulleyPlate(),
                new HeadsPulley(),
                new MotorsApart(),
                new ClampRoom());
    }

    /// Two bodies that are apart along the axle and across it: `√(a² + b²)` where both are apart, else the larger.
    abstract static class Apart extends Check {
        private final double wanted;

        Apart(String slug, String name, Scope scope, double wanted, Role... about) {
            super(slug, name, "mm", scope, "distance between simple outlines, worst limits; wanted: " + HABIT, about);
            this.wanted = wanted;
        }

        abstract List<Term> along(Subject s);

        abstract List<Term> across(Subject s);

        static Range sum(List<Term> terms) {
            var sum = Range.ZERO;
            for (var term : terms) {
                sum = term.onto(sum);
            }
            return sum;
        }

        static Range apart(Range a, Range b) {
            return new Range(
                    Clearance.apart(a.low(), b.low()),
                    Clearance.apart(a.nominal(), b.nominal()),
                    Clearance.apart(a.high(), b.high()));
        }

        void before(Subject s, Working w) {}

        @Override
        public final void measure(Subject s, Reading out) {
            out.set(wanted, apart(sum(along(s)), sum(across(s))));
        }

        @Override
        public final void explain(Subject s, Working w, Reading out) {
            before(s, w);
            var a = w.chain("a", "mm", "apart along the axle", along(s));
            var b = w.chain("b", "mm", "apart across it", across(s));
            var gap = apart(a, b);
            w.line("g", written(a.nominal(), b.nominal(), ""), gap.nominal(), "mm", "distance");
            if (w.has("a_min") || w.has("b_min")) {
                String am = w.has("a_min") ? "a_min" : "a";
                String bm = w.has("b_min") ? "b_min" : "b";
                w.line(
                        "g_min",
                        a.low() > 0 && b.low() > 0 ? "√(" + am + "^2 + " + bm + "^2)" : "max(" + am + ", " + bm + ")",
                        gap.low(),
                        "mm",
                        "at worst limits");
            }
            out.set(w.given("g_wanted", "required clearance", wanted, "mm", HABIT), gap);
        }

        private static String written(double a, double b, String end) {
            return a > 0 && b > 0 ? "√(a" + end + "^2 + b" + end + "^2)" : "max(a" + end + ", b" + end + ")";
        }
    }

    /// The motor can turns beside the hanger.
    static final class MotorHanger extends Check {
        private static final double WANTED = 2;

        MotorHanger() {
            super(
                    "motor-hanger",
                    "Motor can clear of the hanger",
                    "mm",
                    Scope.DRIVE,
                    "plane geometry; wanted: " + HABIT,
                    Role.MOTOR,
                    Role.HANGER);
        }

        static double gap(Hanger.Section section, double c, double angleRad, double can, double height, double depth) {
            double x = c * Math.cos(angleRad);
            double z = c * Math.sin(angleRad);
            double to = section == Hanger.Section.ROUND
                    ? Clearance.toCircle(x, z, height / 2)
                    : Clearance.toRectangle(x, z, depth / 2, height / 2);
            return to - can / 2;
        }

        private static Range gap(Subject s) {
            var h = s.kit().hanger();
            var c = s.at().centreDistanceMm();
            var a = s.drive().placement().aboveAxleDeg();
            var can = s.drive().motor().canDiameterMm();
            double low = Math.toRadians(a.lower());
            double high = Math.toRadians(a.upper());
            double worst = Math.min(
                    gap(
                            h.section(),
                            c.low(),
                            low,
                            can.upper(),
                            h.sectionHeightMm().upper(),
                            h.sectionDepthMm().upper()),
                    gap(
                            h.section(),
                            c.low(),
                            high,
                            can.upper(),
                            h.sectionHeightMm().upper(),
                            h.sectionDepthMm().upper()));
            double best = Math.max(
                    gap(
                            h.section(),
                            c.high(),
                            low,
                            can.lower(),
                            h.sectionHeightMm().lower(),
                            h.sectionDepthMm().lower()),
                    gap(
                            h.section(),
                            c.high(),
                            high,
                            can.lower(),
                            h.sectionHeightMm().lower(),
                            h.sectionDepthMm().lower()));
            double nominal = gap(
                    h.section(),
                    c.nominal(),
                    Math.toRadians(a.nominal()),
                    can.nominal(),
                    h.sectionHeightMm().nominal(),
                    h.sectionDepthMm().nominal());
            return new Range(worst, nominal, best);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            Closure.centreDistance(s.drive(), s.at(), w);
            Ground.motorPosition(s, w);
            w.given("d_can", s.drive().motor().canDiameterMm());
            var h = s.kit().hanger();
            w.given("h", h.sectionHeightMm());
            var gap = gap(s);
            if (h.section() == Hanger.Section.ROUND) {
                w.line("g", "√(x^2 + z^2) − h/2 − d_can/2", gap.nominal(), "mm", "circle to circle");
            } else {
                w.given("b", h.sectionDepthMm());
                double a = w.line(
                        "u",
                        "abs(x) − b/2",
                        Math.abs(s.at().motorXMm()) - h.sectionDepthMm().nominal() / 2,
                        "mm",
                        "beyond the section, fore and aft");
                double v = w.line(
                        "v",
                        "abs(z) − h/2",
                        Math.abs(s.at().motorZMm()) - h.sectionHeightMm().nominal() / 2,
                        "mm",
                        "beyond the section, up and down");
                w.line(
                        "g",
                        (a > 0 && v > 0 ? "√(u^2 + v^2)" : "max(u, v)") + " − d_can/2",
                        gap.nominal(),
                        "mm",
                        "circle to rectangle");
            }
            w.given("g_worst", "the same with every dimension at its worse limit", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a longer belt with a longer slot, or a smaller motor: " + mm(r.demand() - r.capacityWorst())
                    + " more room";
        }
    }

    /// The far end of the motor stays out of the hanger's middle body.
    static final class MotorBody extends Apart {
        MotorBody() {
            super("motor-body", "Motor clear of the hanger's middle body", Scope.DRIVE, 2, Role.MOTOR, Role.HANGER);
        }

        @Override
        List<Term> along(Subject s) {
            return List.of(
                    plus("B", s.kit().hanger().widthMm()).half(),
                    minus("i", s.drive().placement().plateInsetMm()),
                    minus("t", s.drive().mount().plateThicknessMm()),
                    minus("l_can", s.drive().motor().canLengthMm()),
                    minus("b_body", s.kit().hanger().bodyWidthMm()).half());
        }

        @Override
        void before(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
            Ground.motorPosition(s, w);
        }

        @Override
        List<Term> across(Subject s) {
            return List.of(
                    plus("x_away", "motor axis fore or aft of the axle", Ground.away(s)),
                    minus("d_can", s.drive().motor().canDiameterMm()).half(),
                    minus("r_body", s.kit().hanger().bodyReachMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a motor " + mm(r.demand() - r.capacityWorst())
                    + " shorter, a wider hanger, or a mount nearer the wheel";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double face = Places.plan(s, s.at().plateInnerMm().nominal());
            double end = Places.plan(s, s.at().motorEndMm().nominal());
            return List.of(new DrawnDimension(
                    "motor length",
                    View.PLAN,
                    s.side(),
                    s.at().motorXMm(),
                    face,
                    s.at().motorXMm(),
                    end,
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// The motor can lies inboard of the wheel.
    static final class MotorWheel extends Apart {
        MotorWheel() {
            super("motor-wheel", "Motor can clear of the wheel", Scope.DRIVE, 2, Role.MOTOR, Role.WHEEL);
        }

        @Override
        List<Term> along(Subject s) {
            return List.of(
                    plus(
                            "y_tread",
                            "inner edge of the tread from the hanger's end face",
                            s.endAt().wheelInnerMm()),
                    plus("i", s.drive().placement().plateInsetMm()),
                    plus("t", s.drive().mount().plateThicknessMm()));
        }

        @Override
        List<Term> across(Subject s) {
            return List.of(
                    plus("C", "centre distance", s.at().centreDistanceMm()),
                    minus("D_wheel", s.end().wheel().diameterMm()).half(),
                    minus("d_can", s.drive().motor().canDiameterMm()).half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a smaller wheel, or the mount " + mm(r.demand() - r.capacityWorst()) + " further from it";
        }
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
                    Role.WHEEL);
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
            double r = s.drive().drivePulley().rim().reachDiameterMm() / 2;
            return gap(s, s.at().drivePulleyFarMm(), r, r, r);
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
                    s.drive().drivePulley().rim().reachDiameterMm(),
                    "mm",
                    "flange or belt, upper limit");
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
                    s.drive().drivePulley().rim().reachDiameterMm(),
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
            return "a shorter shaft or pulley, or a longer belt: " + mm(r.demand() - r.capacityWorst()) + " more room";
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
                    Role.MOUNT);
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
            return "the mount " + mm(r.demand() - r.capacityWorst()) + " further in, or a thicker inner speed ring";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            return List.of(new DrawnDimension(
                    "plate to wheel pulley",
                    View.PLAN,
                    s.side(),
                    0,
                    Places.plan(s, s.at().plateOuterMm().nominal()),
                    0,
                    Places.plan(s, s.at().wheelRimNearMm().nominal()),
                    Along.VERTICAL,
                    false,
                    key(s)));
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
                    Role.DRIVE_PULLEY);
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
                                    Range.exact(s.drive().drivePulley().rim().reachDiameterMm()))
                            .half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the drive pulley " + mm(r.demand() - r.capacityWorst())
                    + " further out on the shaft, or lower heads";
        }
    }

    /// Two motors on one hanger.
    static final class MotorsApart extends Check {
        private static final double WANTED = 3;

        MotorsApart() {
            super(
                    "motors-apart",
                    "Motors clear of each other",
                    "mm",
                    Scope.KIT,
                    "distance between two cylinders, worst limits; wanted: " + HABIT,
                    Role.MOTOR,
                    Role.HANGER);
        }

        @Override
        public boolean applies(Subject s) {
            return s.kit().drives().size() == 2;
        }

        private static Range end(Subject s) {
            var a = s.layout().drives().get(0).motorEndMm();
            var b = s.layout().drives().get(1).motorEndMm();
            return Range.of(s.kit().hanger().widthMm()).plus(a).plus(b);
        }

        private static double axes(Subject s) {
            var a = s.layout().drives().get(0);
            var b = s.layout().drives().get(1);
            return Math.hypot(a.motorXMm() - b.motorXMm(), a.motorZMm() - b.motorZMm());
        }

        private static Range across(Subject s) {
            var a = s.kit().drives().get(0).motor().canDiameterMm();
            var b = s.kit().drives().get(1).motor().canDiameterMm();
            double axes = axes(s);
            return new Range(
                    axes - a.upper() / 2 - b.upper() / 2,
                    axes - a.nominal() / 2 - b.nominal() / 2,
                    axes - a.lower() / 2 - b.lower() / 2);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, Apart.apart(end(s), across(s)));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var left = s.layout().drives().get(0);
            var right = s.layout().drives().get(1);
            w.given("B", s.kit().hanger().widthMm());
            w.given("y_left", "far end of the left motor from its end face", left.motorEndMm(), "layout");
            w.given("y_right", "far end of the right motor from its end face", right.motorEndMm(), "layout");
            var end = end(s);
            w.line("a", "B + y_left + y_right", end.nominal(), "mm", "between the far ends");
            w.given("x_left", "left motor ahead of the axle", left.motorXMm(), "mm", "layout");
            w.given("z_left", "left motor above the axle", left.motorZMm(), "mm", "layout");
            w.given("x_right", "right motor ahead of the axle", right.motorXMm(), "mm", "layout");
            w.given("z_right", "right motor above the axle", right.motorZMm(), "mm", "layout");
            w.given("d_left", s.kit().drives().get(0).motor().canDiameterMm());
            double second = s.kit().drives().get(1).motor().canDiameterMm().nominal();
            w.given("d_right", s.kit().drives().get(1).motor().id() + ".canDiameterMm", second, "mm", "second motor");
            var across = across(s);
            w.line(
                    "b",
                    "√((x_left − x_right)^2 + (z_left − z_right)^2) − d_left/2 − d_right/2",
                    across.nominal(),
                    "mm",
                    "between the cans, side view");
            var gap = Apart.apart(end, across);
            w.line(
                    "g",
                    end.nominal() > 0 && across.nominal() > 0 ? "√(a^2 + b^2)" : "max(a, b)",
                    gap.nominal(),
                    "mm",
                    "distance");
            w.given("g_worst", "the same with every dimension at its worse limit", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "motors " + mm((r.demand() - r.capacityWorst()) / 2)
                    + " shorter, a hanger that much wider on each side, or one motor ahead and one behind";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            var left = s.layout().drives().get(0);
            var right = s.layout().drives().get(1);
            double half = s.kit().hanger().widthMm().nominal() / 2;
            return List.of(new DrawnDimension(
                    "between the motors",
                    View.PLAN,
                    left.side(),
                    left.motorXMm(),
                    half + left.motorEndMm().nominal(),
                    right.motorXMm(),
                    -half - right.motorEndMm().nominal(),
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// The clamp finds enough hanger between end face and middle body.
    static final class ClampRoom extends ChainGap {
        ClampRoom() {
            super("clamp-room", "Room for the clamp on the hanger", Scope.DRIVE, 0.5, HABIT, Role.MOUNT, Role.HANGER);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("B", s.kit().hanger().widthMm()).half(),
                    minus("i", s.drive().placement().plateInsetMm()),
                    minus("t", s.drive().mount().plateThicknessMm()),
                    minus("l_clamp", s.drive().mount().clampLengthMm()),
                    minus("b_body", s.kit().hanger().bodyWidthMm()).half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a clamp " + mm(r.demand() - r.capacityWorst()) + " shorter, or a wider hanger";
        }
    }
}
