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

/// Does the motor touch anything? The can against hanger, wheel and the other motor.
final class MotorChecks {
    private static final String HABIT = "common practice, no source";

    private MotorChecks() {}

    static List<Check> all() {
        return List.of(new MotorHanger(), new MotorBody(), new MotorWheel(), new MotorsApart());
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
                    Role.HANGER,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
        }

        static double gap(Hanger.Section section, double c, double angleRad, double can, double height, double depth) {
            double x = c * Math.cos(angleRad);
            double z = c * Math.sin(angleRad);
            double to = section == Hanger.Section.ROUND
                    ? Clearance.toCircle(x, z, height / 2)
                    : Clearance.toRectangle(x, z, depth / 2, height / 2);
            return to - can / 2;
        }

        static Range gap(Subject s) {
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
            var gap = write(s, w);
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        static Range write(Subject s, Working w) {
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
            return gap;
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a longer belt with a longer slot, or a smaller motor: " + leastMm(r.demand() - r.capacityWorst())
                    + " more room";
        }
    }

    /// The far end of the motor stays out of the hanger's middle body.
    static final class MotorBody extends Apart {
        MotorBody() {
            super(
                    "motor-body",
                    "Motor clear of the hanger's middle body",
                    Scope.DRIVE,
                    2,
                    Role.MOTOR,
                    Role.HANGER,
                    Role.MOUNT,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
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
            return "a motor " + leastMm(r.demand() - r.capacityWorst())
                    + " shorter, a wider hanger, or a mount nearer the wheel";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double face = s.plan(s.at().plateInnerMm().nominal());
            double end = s.plan(s.at().motorEndMm().nominal());
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
            super(
                    "motor-wheel",
                    "Motor can clear of the wheel",
                    Scope.DRIVE,
                    2,
                    Role.MOTOR,
                    Role.WHEEL,
                    Role.MOUNT,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.INNER_BEARING,
                    Role.INNER_RING);
            placed();
        }

        @Override
        void before(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
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
            return "a smaller wheel, or the mount " + leastMm(r.demand() - r.capacityWorst()) + " further from it";
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
                    Role.HANGER,
                    Role.MOUNT,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
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

        /// {@return how far one motor axis is ahead of the axle, + or − (mm)}
        private static Range ahead(Subject s, int drive) {
            var d = s.kit().drives().get(drive);
            var away = Ground.away(d, s.layout().drives().get(drive));
            return d.placement().motor().sign() < 0 ? away.negated() : away;
        }

        private static Range above(Subject s, int drive) {
            return Ground.above(s.kit().drives().get(drive), s.layout().drives().get(drive));
        }

        /// {@return between the two axes (mm)}
        private static Range axes(Subject s) {
            var a = s.layout().drives().get(0);
            var b = s.layout().drives().get(1);
            var x = ahead(s, 0).minus(ahead(s, 1)).absolute();
            var z = above(s, 0).minus(above(s, 1)).absolute();
            return new Range(
                    Math.hypot(x.low(), z.low()),
                    Math.hypot(a.motorXMm() - b.motorXMm(), a.motorZMm() - b.motorZMm()),
                    Math.hypot(x.high(), z.high()));
        }

        private static Range across(Subject s) {
            var a = s.kit().drives().get(0).motor().canDiameterMm();
            var b = s.kit().drives().get(1).motor().canDiameterMm();
            return axes(s).minus(Range.of(a).times(0.5)).minus(Range.of(b).times(0.5));
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
            return "motors " + leastMm((r.demand() - r.capacityWorst()) / 2)
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
}
