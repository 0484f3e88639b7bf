package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.Clearance;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does anything hit the ground: flat, at a kerb edge, over a ramp crest? Always with the worn wheel.
///
/// The hanger stays level while both wheels touch, so leaning does not lower the motor.
final class GroundChecks {
    private static final String HABIT = "common practice, no source";
    private static final double FLAT_MM = 10;
    private static final double KERB_MM = 3;
    private static final double CREST_MM = 5;

    private GroundChecks() {}

    static List<Check> all() {
        return List.of(new MotorFlat(), new PulleyFlat(), new Kerb(), new Crest());
    }

    /// {@return the larger of motor can and plate outline, which hang lowest at the motor (radius, mm)}
    private static Range hanging(Subject s) {
        var can = Range.of(s.drive().motor().canDiameterMm()).times(0.5);
        var plate = Range.of(s.drive().mount().plateRadiusMm());
        return new Range(
                Math.max(can.low(), plate.low()),
                Math.max(can.nominal(), plate.nominal()),
                Math.max(can.high(), plate.high()));
    }

    private static void hanging(Subject s, Working w) {
        w.given("d_can", s.drive().motor().canDiameterMm());
        w.given("r_plate", s.drive().mount().plateRadiusMm());
        w.line("r", "max(d_can/2, r_plate)", hanging(s).nominal(), "mm", "whichever hangs lower");
    }

    /// On flat ground.
    static final class MotorFlat extends ChainGap {
        MotorFlat() {
            super(
                    "motor-ground",
                    "Motor and plate above flat ground",
                    Scope.DRIVE,
                    FLAT_MM,
                    "worn wheel, " + HABIT,
                    Role.MOTOR,
                    Role.MOUNT,
                    Role.WHEEL,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
        }

        @Override
        void before(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
            Ground.motorPosition(s, w);
            hanging(s, w);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("D_worn", s.end().wheel().wornDiameterMm()).half(),
                    plus("z_m", "motor axis above the axle", Ground.above(s)),
                    minus("r_low", "radius of what hangs lowest", hanging(s)));
        }

        @Override
        public String says(Subject s, Reading r) {
            double fresh = (s.end().wheel().diameterMm().nominal()
                            - s.end().wheel().wornDiameterMm().nominal())
                    / 2;
            return r.capacityText() + " mm with the worn wheel, " + Numbers.fixed(r.capacity() + fresh, 1) + " new; "
                    + r.demandText() + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double limit = s.end().wheel().wornDiameterMm().nominal() + 2 * (r.demand() - r.capacityWorst());
            return limit < s.end().wheel().diameterMm().nominal()
                    ? "a steeper mount angle, a larger wheel, or replace the wheel at " + leastMm(limit) + " diameter"
                    : "a steeper mount angle, or a wheel at least " + leastMm(limit) + " in diameter when worn";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double r = hanging(s).nominal();
            double ground = -s.end().wheel().wornDiameterMm().nominal() / 2;
            return List.of(
                    new DrawnDimension(
                            "ground clearance, worn wheel",
                            View.SIDE,
                            s.side(),
                            s.at().motorXMm(),
                            s.at().motorZMm() - r,
                            s.at().motorXMm(),
                            ground,
                            Along.VERTICAL,
                            false,
                            key(s)),
                    new DrawnDimension(
                            "wheel diameter",
                            View.SIDE,
                            s.side(),
                            0,
                            -s.end().wheel().diameterMm().nominal() / 2,
                            0,
                            s.end().wheel().diameterMm().nominal() / 2,
                            Along.VERTICAL,
                            true,
                            ""));
        }
    }

    /// The wheel pulley's flange on flat ground.
    static final class PulleyFlat extends ChainGap {
        PulleyFlat() {
            super(
                    "pulley-ground",
                    "Wheel pulley above flat ground",
                    Scope.DRIVE,
                    FLAT_MM,
                    "worn wheel, " + HABIT,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("D_worn", s.end().wheel().wornDiameterMm()).half(),
                    minus(
                                    "D_reach",
                                    "largest diameter of the wheel pulley, flange or belt",
                                    s.drive().wheelPulley().rim().reachMm())
                            .half());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "fewer teeth on the wheel pulley, or a larger wheel";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double r = s.drive().wheelPulley().rim().reachDiameterMm() / 2;
            double ground = -s.end().wheel().wornDiameterMm().nominal() / 2;
            return List.of(new DrawnDimension(
                    "wheel pulley to ground", View.SIDE, s.side(), 0, -r, 0, ground, Along.VERTICAL, false, key(s)));
        }
    }

    /// A motor position and the shape of the ground: the same question at every corner of the limits.
    private abstract static class Uneven extends Check {
        private final double wanted;

        Uneven(String slug, String name, double wanted, String geometry) {
            super(
                    slug,
                    name,
                    "mm",
                    Scope.DRIVE,
                    geometry + "; wanted: " + HABIT,
                    Role.MOTOR,
                    Role.MOUNT,
                    Role.WHEEL,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
            tasked();
            this.wanted = wanted;
        }

        abstract double gap(
                Subject s,
                double away,
                double above,
                double radius,
                double wheelRadius,
                double shape,
                double wheelbase);

        abstract Dimension shape(Subject s);

        private double atNominal(Subject s) {
            return gap(
                    s,
                    Ground.away(s).nominal(),
                    Ground.above(s).nominal(),
                    hanging(s).nominal(),
                    s.end().wheel().wornDiameterMm().nominal() * 0.5,
                    shape(s).nominal(),
                    s.kit().task().wheelbaseMm().nominal());
        }

        private Range gap(Subject s) {
            var x = Ground.away(s);
            var z = Ground.above(s);
            var r = hanging(s);
            var wheel = Range.of(s.end().wheel().wornDiameterMm()).times(0.5);
            double worst = Double.POSITIVE_INFINITY;
            double best = Double.NEGATIVE_INFINITY;
            var wheelbase = s.kit().task().wheelbaseMm();
            for (int corner = 0; corner < (wheelbase.toleranced() ? 32 : 16); corner++) {
                double base = (corner & 16) == 0 ? wheelbase.lower() : wheelbase.upper();
                double away = (corner & 1) == 0 ? x.low() : x.high();
                double above = (corner & 2) == 0 ? z.low() : z.high();
                double round = (corner & 4) == 0 ? wheel.low() : wheel.high();
                double shape = (corner & 8) == 0 ? shape(s).lower() : shape(s).upper();
                worst = Math.min(worst, gap(s, away, above, r.high(), round, shape, base));
                best = Math.max(best, gap(s, away, above, r.low(), round, shape, base));
            }
            return new Range(worst, atNominal(s), best);
        }

        @Override
        public final void measure(Subject s, Reading out) {
            out.set(wanted, gap(s));
        }

        @Override
        public final void measureDrawn(Subject drawn, Subject designed, Reading out) {
            out.set(wanted, Range.exact(atNominal(drawn)));
        }

        @Override
        public final void explain(Subject s, Working w, Reading out) {
            Closure.centreDistance(s.drive(), s.at(), w);
            Ground.motorPosition(s, w);
            hanging(s, w);
            w.given("D_worn", s.end().wheel().wornDiameterMm());
            w.line("R", "D_worn/2", s.end().wheel().wornDiameterMm().nominal() / 2, "mm", "worn wheel");
            w.given("x_away", "motor axis fore or aft of the axle", Ground.away(s), "layout");
            w.given("z_m", "motor axis above the axle", Ground.above(s), "layout");
            var gap = gap(s);
            write(s, w, gap.nominal());
            w.given("g_worst", "the same at the worst corner of all limits", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", wanted, "mm", HABIT), gap);
        }

        abstract void write(Subject s, Working w, double gap);

        @Override
        public String remedy(Subject s, Reading r) {
            return "a steeper mount angle, a larger wheel, or say a lower " + shape(s).of() + " in the guide";
        }
    }

    /// The wheel just touches a kerb edge: the motor must not have met it before.
    static final class Kerb extends Uneven {
        Kerb() {
            super("kerb-edge", "Motor clear of a kerb edge", KERB_MM, "plane geometry, the wheel touching the edge");
        }

        @Override
        Dimension shape(Subject s) {
            return s.kit().task().kerbMm();
        }

        @Override
        double gap(
                Subject s,
                double away,
                double above,
                double radius,
                double wheelRadius,
                double kerb,
                double wheelbase) {
            return Clearance.toKerb(away, above, radius, wheelRadius, kerb);
        }

        @Override
        void write(Subject s, Working w, double gap) {
            w.given("h", shape(s));
            double wheel = s.end().wheel().wornDiameterMm().nominal() / 2;
            double kerb = shape(s).nominal();
            if (kerb >= wheel) {
                w.line("g", "R − h − r", gap, "mm", "no wheel rolls over a kerb as high as its axle");
                return;
            }
            double edge = w.line(
                    "x_e",
                    "√(R^2 − (R − h)^2)",
                    Math.sqrt(wheel * wheel - (wheel - kerb) * (wheel - kerb)),
                    "mm",
                    "edge from the axle when it touches the wheel");
            double a = w.line("a", "x_e − x_away", edge - Ground.away(s).nominal(), "mm", "edge beyond the motor axis");
            double b = w.line(
                    "b",
                    "z_m − (h − R)",
                    Ground.above(s).nominal() - (kerb - wheel),
                    "mm",
                    "motor axis above the kerb");
            w.line("g", (a > 0 && b > 0 ? "√(a^2 + b^2)" : "max(a, b)") + " − r", gap, "mm", "circle to edge");
        }
    }

    /// A ramp crest passes between the axles.
    static final class Crest extends Uneven {
        Crest() {
            super("ramp-crest", "Motor clear of a ramp crest", CREST_MM, "plane geometry, small angles");
        }

        @Override
        Dimension shape(Subject s) {
            return s.kit().task().crestDeg();
        }

        private static int inward(Subject s) {
            return s.drive().placement().motor().sign();
        }

        @Override
        double gap(
                Subject s,
                double away,
                double above,
                double radius,
                double wheelRadius,
                double crestDeg,
                double wheelbase) {
            return Clearance.toCrest(inward(s) * away, above, radius, wheelRadius, Math.toRadians(crestDeg), wheelbase);
        }

        @Override
        void write(Subject s, Working w, double gap) {
            w.given("γ", shape(s));
            w.given("w", s.kit().task().wheelbaseMm());
            double x = s.at().motorXMm();
            if (x > 0) {
                w.line(
                        "α",
                        "γ·π/180·(1 − x/w)",
                        Math.toRadians(shape(s).nominal())
                                * (1 - x / s.kit().task().wheelbaseMm().nominal()),
                        "rad",
                        "tilt of the ground under the motor");
            } else {
                w.given("α", "a motor behind the rear axle never meets the crest", 0, "rad", "geometry");
            }
            w.line("g", "R − x·sin(α) + z·cos(α) − r", gap, "mm", "circle to slope");
        }
    }
}
