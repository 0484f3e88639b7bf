package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Material.Property;
import beltwright.strength.ClampGrip;
import java.util.List;

/// Does a split hub that screws clamp on the motor shaft hold, and does it stand its own screws?
final class ClampHubChecks {
    private ClampHubChecks() {}

    static List<Check> all() {
        return List.of(new Holds(), new Stands());
    }

    private static int screws(Subject s) {
        return s.drive().drivePulley().hubScrews();
    }

    /// Writes the lines up to the preload F of one screw, and how many there are.
    private static void writeScrews(Subject s, Working w) {
        var screw = s.drive().hubScrew();
        Tension.writePreload(s, w, screw.thread(), screw.strength());
        w.given("n_hub", s.drive().drivePulley().id() + ".hubScrews", screws(s), "", "count");
    }

    /// Friction between hub and shaft carries torque that reverses with every stop.
    static final class Holds extends StrengthCheck {
        Holds() {
            super(
                    "hub-clamp",
                    "Clamped hub holds on the shaft",
                    "N·m",
                    Scope.DRIVE,
                    "statics, two lines of contact; friction, preload and its scatter: common practice, no source",
                    Role.HUB_SCREWS,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR,
                    Role.CONTROLLER,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        @Override
        public boolean applies(Subject s) {
            return ShaftChecks.Form.byClamp(s);
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the drive pulley slips on its shaft";
        }

        @Override
        WeakestLink.Kind kind(Subject s) {
            return WeakestLink.Kind.SLIPS;
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return ShaftJointChecks.peakNm(s, at, motorNm);
        }

        private static double pressN(Subject s, At at) {
            var screw = s.drive().hubScrew();
            return ClampGrip.pressN(
                    screws(s), Tension.preloadN(s, at, Role.HUB_SCREWS, screw.thread(), screw.strength()), 1, 1);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return ClampGrip.roundNm(
                    pressN(s, at),
                    at.least(Assumed.friction(s.kit())),
                    at.least(s.drive().motor().shaftDiameterMm()));
        }

        @Override
        void write(Subject s, Working w) {
            ShaftJointChecks.writePeak(s, w);
            writeScrews(s, w);
            w.line(
                    "W",
                    "n_hub·F",
                    pressN(s, At.NOMINAL),
                    "N",
                    "presses hub on shaft; what more the screws' arm makes of it goes into bending the hub");
            w.given("μ_j", Assumed.friction(s.kit()));
            w.given("d_shaft", s.drive().motor().shaftDiameterMm());
            w.line(
                    "T_hold",
                    "μ_j·W·d_shaft/1000",
                    capacity(s, At.NOMINAL, 0),
                    "N·m",
                    "touched along two lines, the less that it can be: even pressure would hold π/2 of it");
        }

        @Override
        public String says(Subject s, Reading r) {
            return "held by a clamped hub, " + r.capacityText() + " N·m; peaks of " + r.demandText() + " either way";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "more, larger or stronger hub screws, tightened with a torque wrench; a dry shaft; or a keyed bore";
        }
    }

    /// The screws pull the wall behind the slit and press the hub on the shaft.
    ///
    /// The jaw is a lever: hinged in the middle of the wall across from the slit, pressed by the shaft in its
    /// middle, pulled by the screws. The moment that a stiff wall bears itself is left out; with it the wall pulls
    /// less, and bends.
    static final class Stands extends StrengthCheck {
        Stands() {
            super(
                    "hub-clamp-stress",
                    "Split hub stands its screws",
                    "MPa",
                    Scope.DRIVE,
                    "statics of a hinged jaw, wall and bore pressed evenly; preload and its scatter: common practice, no source",
                    Role.HUB_SCREWS,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR);
        }

        @Override
        public boolean applies(Subject s) {
            return screws(s) > 0;
        }

        @Override
        double motorNm(Subject s, At at) {
            return 0;
        }

        private static double forceN(Subject s, At at) {
            var screw = s.drive().hubScrew();
            return screws(s) * Tension.tightestN(s, at, Role.HUB_SCREWS, screw.thread(), screw.strength());
        }

        private static double wallMm(Subject s, At at) {
            var pulley = s.drive().drivePulley();
            return (at.least(pulley.hubDiameterMm()) - at.most(pulley.boreDiameterMm())) / 2;
        }

        /// {@return from the axis of the bore to the middle of the wall (mm)}
        private static double hingeMm(Subject s, At at) {
            var pulley = s.drive().drivePulley();
            return (at.least(pulley.hubDiameterMm()) + at.least(pulley.boreDiameterMm())) / 4;
        }

        private static double share(Subject s, At at) {
            return at.most(s.drive().drivePulley().hubScrewArmMm()) / hingeMm(s, at);
        }

        private static double wallMpa(Subject s, At at) {
            double length = at.least(s.drive().drivePulley().hubLengthMm());
            return forceN(s, at) * share(s, at) / (wallMm(s, at) * length);
        }

        private static double boreMpa(Subject s, At at) {
            double area = at.least(s.drive().motor().shaftDiameterMm())
                    * at.least(s.drive().drivePulley().hubLengthMm());
            return forceN(s, at) * (1 + share(s, at)) / area;
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return Math.max(wallMpa(s, at), boreMpa(s, at));
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Math.min(
                    Made.of(s, s.drive().motor().shaftMaterial(), Property.YIELD),
                    Made.of(s, s.drive().drivePulley().material(), Property.YIELD));
        }

        @Override
        void write(Subject s, Working w) {
            var pulley = s.drive().drivePulley();
            var motor = s.drive().motor();
            writeScrews(s, w);
            w.line("F_high", "n_hub·F", forceN(s, At.NOMINAL), "N", "all screws; at worst above it by s_F");
            w.given("D_hub", pulley.hubDiameterMm());
            w.given("d_bore", pulley.boreDiameterMm());
            w.given("l_hub", pulley.hubLengthMm());
            w.given("e_hub", pulley.hubScrewArmMm());
            w.given("d_shaft", motor.shaftDiameterMm());
            w.line("s_wall", "(D_hub − d_bore)/2", wallMm(s, At.NOMINAL), "mm", "wall of the hub");
            w.line("r_wall", "(D_hub + d_bore)/4", hingeMm(s, At.NOMINAL), "mm", "its middle, where the jaw hinges");
            w.line(
                    "σ_wall",
                    "F_high·e_hub/r_wall/(s_wall·l_hub)",
                    wallMpa(s, At.NOMINAL),
                    "MPa",
                    "pull in the wall across from the slit");
            w.line(
                    "p_bore",
                    "F_high·(1 + e_hub/r_wall)/(d_shaft·l_hub)",
                    boreMpa(s, At.NOMINAL),
                    "MPa",
                    "pressure of hub on shaft, over the width of the shaft");
            w.line("σ_hub", "max(σ_wall, p_bore)", demand(s, At.NOMINAL, 0), "MPa", "whichever is more");
            Made.given(w, "p_shaft", s, motor.id() + ".shaftMaterial", motor.shaftMaterial(), Property.YIELD);
            Made.given(w, "p_hub", s, pulley.id() + ".material", pulley.material(), Property.YIELD);
            w.line("p_f", "min(p_shaft, p_hub)", capacity(s, At.NOMINAL, 0), "MPa", "the softer of shaft and pulley");
        }

        @Override
        public String says(Subject s, Reading r) {
            var what = wallMpa(s, At.NOMINAL) >= boreMpa(s, At.NOMINAL)
                    ? " MPa in the wall of the hub; "
                    : " MPa between hub and shaft; ";
            return r.demandText() + what + "the softer yields at " + r.capacityText();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a longer hub, a thicker wall, hub screws nearer the shaft, or smaller ones";
        }
    }
}
