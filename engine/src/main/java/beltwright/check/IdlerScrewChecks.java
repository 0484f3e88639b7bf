package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.Hanger;
import beltwright.part.Mount;
import beltwright.quantity.Range;
import java.util.List;

/// What does an idler's screw meet where it comes out behind the plate: motor can, hanger, middle body? Its hole is
/// open.
final class IdlerScrewChecks {
    private static final String HABIT = "common practice, no source";

    private IdlerScrewChecks() {}

    static List<Check> all() {
        return List.of(new ScrewMotor(), new ScrewHanger(), new ScrewBody());
    }

    private static Range screw(Subject s) {
        return Range.exact(s.drive().idlerScrew().thread().majorMm());
    }

    private static String back(Reading r, List<Term> along, List<Term> across) {
        return "an idler screw "
                + IdlerPlaceChecks.length(r.demand() - Term.sum(along).low()) + " shorter, or the idler "
                + IdlerPlaceChecks.length(r.demand() - Term.sum(across).low()) + " further away";
    }

    /// Behind the plate its screw ends short of the motor can, or beside it.
    static final class ScrewMotor extends Apart {
        ScrewMotor() {
            super(
                    "idler-screw-motor",
                    "End of the idler screw clear of the motor can",
                    Scope.DRIVE,
                    1,
                    Role.IDLER_SCREW,
                    Role.IDLER,
                    Role.MOUNT,
                    Role.MOTOR,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
        }

        @Override
        void before(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
        }

        @Override
        List<Term> along(Subject s) {
            return List.of(
                    plus("t_grip", s.drive().idler().screwGripMm()),
                    plus("t", s.drive().mount().plateThicknessMm()),
                    minus("l", s.drive().idlerScrew().lengthMm()));
        }

        @Override
        List<Term> across(Subject s) {
            return List.of(
                    plus(
                            "c_motor",
                            "motor axis to the idler's axis",
                            IdlerPlaceChecks.away(s, s.at().centreDistanceMm())),
                    minus("d_can", s.drive().motor().canDiameterMm()).half(),
                    minus("d_screw", "thread of the idler's screw", screw(s)).half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return back(r, along(s), across(s));
        }
    }

    /// Through the plate and behind it the screw passes beside the hanger, and beside the flange that holds the mount.
    static final class ScrewHanger extends Check {
        private static final double WANTED = 0.5;

        ScrewHanger() {
            super(
                    "idler-screw-hanger",
                    "Idler screw clear of the hanger",
                    "mm",
                    Scope.DRIVE,
                    "plane geometry, worst over the idler's place and mount angle; wanted: " + HABIT,
                    Role.IDLER_SCREW,
                    Role.HANGER,
                    Role.MOUNT);
            placed();
        }

        private static boolean flanged(Subject s) {
            return s.drive().mount().fixing() == Mount.Fixing.FLANGE;
        }

        private static double section(Subject s, double x, double y, double deg, double height, double depth) {
            return MotorChecks.MotorHanger.gap(
                    s.kit().hanger().section(),
                    Math.hypot(x, y),
                    Math.toRadians(deg) + Math.atan2(y, x),
                    screw(s).nominal(),
                    height,
                    depth);
        }

        private static Range section(Subject s) {
            var x = s.drive().placement().idlerAlongMm();
            var y = s.drive().placement().idlerAsideMm();
            var a = s.drive().placement().aboveAxleDeg();
            var h = s.kit().hanger().sectionHeightMm();
            var d = s.kit().hanger().sectionDepthMm();
            double worst = Double.POSITIVE_INFINITY;
            double best = Double.NEGATIVE_INFINITY;
            for (int corner = 0; corner < 8; corner++) {
                double along = (corner & 1) == 0 ? x.lower() : x.upper();
                double aside = (corner & 2) == 0 ? y.lower() : y.upper();
                double deg = (corner & 4) == 0 ? a.lower() : a.upper();
                worst = Math.min(worst, section(s, along, aside, deg, h.upper(), d.upper()));
                best = Math.max(best, section(s, along, aside, deg, h.lower(), d.lower()));
            }
            return new Range(worst, section(s, x.nominal(), y.nominal(), a.nominal(), h.nominal(), d.nominal()), best);
        }

        private static List<Term> flange(Subject s) {
            return List.of(
                    plus("c_axle", "axle to the idler's axis", IdlerPlaceChecks.away(s, Range.ZERO)),
                    minus("k_flange", s.kit().hanger().flangeCircleMm()).half(),
                    minus(
                                    "d_thread",
                                    "thread of the flange, which is that much wider at least",
                                    Range.exact(s.kit().hanger().flangeThread().majorMm()))
                            .half(),
                    minus("d_screw", "thread of the idler's screw", screw(s)).half());
        }

        private static Range gap(Subject s) {
            return flanged(s) ? IdlerPlaceChecks.lesser(section(s), Term.sum(flange(s))) : section(s);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(WANTED, gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("β", s.drive().placement().aboveAxleDeg());
            w.given("x_i", s.drive().placement().idlerAlongMm());
            w.given("y_i", s.drive().placement().idlerAsideMm());
            w.given("d_screw", "thread of the idler's screw", screw(s), "ISO 261");
            var h = s.kit().hanger();
            w.given("h", h.sectionHeightMm());
            var place = s.drive().placement();
            double angle = Math.toRadians(place.aboveAxleDeg().nominal());
            double x = place.idlerAlongMm().nominal();
            double y = place.idlerAsideMm().nominal();
            double ahead = w.line(
                    "x",
                    "x_i·cos(β·π/180) − y_i·sin(β·π/180)",
                    x * Math.cos(angle) - y * Math.sin(angle),
                    "mm",
                    "idler's axis from the axle, towards the motor");
            double above = w.line(
                    "z",
                    "x_i·sin(β·π/180) + y_i·cos(β·π/180)",
                    x * Math.sin(angle) + y * Math.cos(angle),
                    "mm",
                    "above it");
            var section = section(s);
            var name = flanged(s) ? "g_section" : "g";
            if (h.section() == Hanger.Section.ROUND) {
                w.line(name, "√(x^2 + z^2) − h/2 − d_screw/2", section.nominal(), "mm", "circle to circle");
            } else {
                w.given("b_h", h.sectionDepthMm());
                double u = w.line(
                        "u",
                        "abs(x) − b_h/2",
                        Math.abs(ahead) - h.sectionDepthMm().nominal() / 2,
                        "mm",
                        "beyond the section, fore and aft");
                double v = w.line(
                        "v",
                        "abs(z) − h/2",
                        Math.abs(above) - h.sectionHeightMm().nominal() / 2,
                        "mm",
                        "beyond the section, up and down");
                w.line(
                        name,
                        (u > 0 && v > 0 ? "√(u^2 + v^2)" : "max(u, v)") + " − d_screw/2",
                        section.nominal(),
                        "mm",
                        "circle to rectangle");
            }
            var gap = section;
            if (flanged(s)) {
                gap = IdlerPlaceChecks.lesser(section, w.chain("g_flange", "mm", "circle to the flange", flange(s)));
                w.line("g", "min(g_section, g_flange)", gap.nominal(), "mm", "the nearer");
            }
            w.given("g_worst", "the same with every dimension at its worse limit", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", WANTED, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the idler " + IdlerPlaceChecks.length(r.demand() - r.capacityWorst()) + " further from the axle";
        }
    }

    /// Its end stays out of the hanger's middle body.
    static final class ScrewBody extends Apart {
        ScrewBody() {
            super(
                    "idler-screw-body",
                    "End of the idler screw clear of the hanger's middle body",
                    Scope.DRIVE,
                    0.5,
                    Role.IDLER_SCREW,
                    Role.IDLER,
                    Role.HANGER);
            placed();
        }

        /// {@return how far the idler's axis lies fore or aft of the axle}
        private static Range fore(Subject s) {
            var x = s.drive().placement().idlerAlongMm();
            var y = s.drive().placement().idlerAsideMm();
            var a = s.drive().placement().aboveAxleDeg();
            double worst = Double.POSITIVE_INFINITY;
            double best = Double.NEGATIVE_INFINITY;
            for (int corner = 0; corner < 8; corner++) {
                double fore = fore(
                        (corner & 1) == 0 ? x.lower() : x.upper(),
                        (corner & 2) == 0 ? y.lower() : y.upper(),
                        (corner & 4) == 0 ? a.lower() : a.upper());
                worst = Math.min(worst, fore);
                best = Math.max(best, fore);
            }
            return new Range(worst, fore(x.nominal(), y.nominal(), a.nominal()), best).absolute();
        }

        private static double fore(double along, double aside, double deg) {
            return along * Math.cos(Math.toRadians(deg)) - aside * Math.sin(Math.toRadians(deg));
        }

        @Override
        void before(Subject s, Working w) {
            w.given("β", s.drive().placement().aboveAxleDeg());
            w.given("x_i", s.drive().placement().idlerAlongMm());
            w.given("y_i", s.drive().placement().idlerAsideMm());
        }

        @Override
        List<Term> along(Subject s) {
            return List.of(
                    plus("B", s.kit().hanger().widthMm()).half(),
                    minus("i", s.drive().placement().plateInsetMm()),
                    plus("t_grip", s.drive().idler().screwGripMm()),
                    minus("l", s.drive().idlerScrew().lengthMm()),
                    minus("b_body", s.kit().hanger().bodyWidthMm()).half());
        }

        @Override
        List<Term> across(Subject s) {
            return List.of(
                    plus("x_away", "idler's axis fore or aft of the axle", fore(s)),
                    minus("r_body", s.kit().hanger().bodyReachMm()),
                    minus("d_screw", "thread of the idler's screw", screw(s)).half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return back(r, along(s), across(s));
        }
    }
}
