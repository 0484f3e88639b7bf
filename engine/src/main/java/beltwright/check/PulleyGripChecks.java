package beltwright.check;

import static beltwright.check.PulleyStrengthChecks.core;
import static beltwright.check.PulleyStrengthChecks.warm;
import static beltwright.check.PulleyStrengthChecks.warmC;

import beltwright.kit.Role;
import beltwright.part.Material.Property;
import beltwright.part.WheelPulley;
import beltwright.strength.FrictionGrip;
import beltwright.strength.HeadPressure;
import beltwright.strength.PressFit;
import java.util.List;

/// Does the wheel turn with a pulley that only friction holds: under the heads of its screws, or in a press fit? Asked
/// warm, of a plastic for months.
final class PulleyGripChecks {
    private static final String HABIT = "common practice, no source";

    private PulleyGripChecks() {}

    static List<Check> all() {
        return List.of(new ScrewsGrip(), new PressHolds());
    }

    /// A pulley that is screwed to the core is held by friction under its screws.
    ///
    ///     M_holds = n·μ·F·r     F no more than what the core bears under a screw's head
    static final class ScrewsGrip extends StrengthCheck {
        ScrewsGrip() {
            super(
                    "pulley-screws-grip",
                    "Pulley screws hold by friction",
                    "N·m",
                    Scope.DRIVE,
                    "friction grip as in VDI 2230-1; friction, scatter, pressure that a plastic bears: " + HABIT,
                    Role.WHEEL_PULLEY,
                    Role.PULLEY_SCREWS,
                    Role.WHEEL,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR,
                    Role.CONTROLLER);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().wheelPulley().holding() == WheelPulley.Holding.SCREWS
                    && s.drive().wheelPulley().screwHoles() > 0;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the wheel pulley slips under its screws";
        }

        @Override
        WeakestLink.Kind kind(Subject s) {
            return WeakestLink.Kind.SLIPS;
        }

        private static double headMm2(Subject s, At at) {
            var screw = s.drive().pulleyScrew();
            return HeadPressure.overHoleMm2(
                    screw.head().diameterMm(screw.thread()),
                    at.most(s.end().wheel().screwHoleMm()));
        }

        private static double preloadN(Subject s, At at) {
            var screw = s.drive().pulleyScrew();
            return Tension.preloadN(s, at, Role.PULLEY_SCREWS, screw.thread(), screw.strength());
        }

        private static double headN(Subject s, At at) {
            return headMm2(s, at) * warm(s, at, core(s), Property.HEAD);
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return DrivePull.wheelNm(s, motorNm);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            var pulley = s.drive().wheelPulley();
            double press = Math.min(preloadN(s, at), headN(s, at));
            return FrictionGrip.slipN(pulley.screwHoles(), press, at.least(Assumed.friction(s.kit())), 1)
                    * at.least(pulley.screwCircleMm())
                    / 2000;
        }

        @Override
        void write(Subject s, Working w) {
            var pulley = s.drive().wheelPulley();
            var wheel = s.end().wheel();
            var screw = s.drive().pulleyScrew();
            DrivePull.writeWheel(s, w);
            Tension.writePreload(s, w, screw.thread(), screw.strength());
            w.given("d_head", "head of the screw", screw.head().diameterMm(screw.thread()), "mm", "ISO");
            w.given("d_hole", wheel.screwHoleMm());
            Made.given(w, "p_most", s, wheel.id() + ".coreMaterial", core(s), Property.HEAD);
            Made.writeWarm(w, s, wheel.id() + ".coreMaterial", core(s), warmC(s, At.NOMINAL));
            w.line(
                    "F_head",
                    "p_most·k_hot·π/4·(d_head^2 − d_hole^2)",
                    headN(s, At.NOMINAL),
                    "N",
                    "the core bears no more under a head");
            w.given("n_t", pulley.id() + ".screwHoles", pulley.screwHoles(), "", "count");
            w.given("μ_j", Assumed.friction(s.kit()));
            w.given("k1", pulley.screwCircleMm());
            w.line(
                    "M_holds",
                    "n_t·μ_j·min(F, F_head)·k1/2000",
                    capacity(s, At.NOMINAL, 0),
                    "N·m",
                    "before it slips on its screws");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "more or larger screws on a larger circle, washers under their heads, a stronger core, or a pulley with "
                    + "lugs; tightening harder crushes a plastic core";
        }
    }

    /// A pulley that is pressed into the core is held by friction alone: at the loosest limits, warm, for months.
    ///
    ///     p = δ/(d·(K_h/E_h + K_s/E_s))     M_holds = μ·p·k_creep·π·d²·l/2
    static final class PressHolds extends StrengthCheck {
        private static final double ROOM_C = 23;

        PressHolds() {
            super(
                    "pulley-press-holds",
                    "Pressed pulley holds by friction",
                    "N·m",
                    Scope.DRIVE,
                    "Lamé, Shigley, Mechanical Engineering Design, eq. 7-39; friction, heat and creep: " + HABIT,
                    PulleyStrengthChecks.PULLED);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().wheelPulley().holding() == WheelPulley.Holding.PRESS_FIT;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the pressed pulley turns in its wheel";
        }

        @Override
        WeakestLink.Kind kind(Subject s) {
            return WeakestLink.Kind.SLIPS;
        }

        private static PressFit.Stuff stuff(Subject s, At at, String material) {
            return new PressFit.Stuff(
                    warm(s, at, material, Property.YOUNG),
                    Made.of(s, material, Property.POISSON),
                    Made.of(s, material, Property.EXPANSION) / 1e6);
        }

        private static double interferenceMm(Subject s, At at) {
            return at.least(s.drive().wheelPulley().spigotDiameterMm())
                    - at.most(s.end().wheel().recessDiameterMm());
        }

        private static double warmMm(Subject s, At at) {
            return PressFit.interferenceMm(
                    interferenceMm(s, at),
                    s.drive().wheelPulley().spigotDiameterMm().nominal(),
                    stuff(s, at, s.drive().wheelPulley().material()),
                    stuff(s, at, core(s)),
                    warmC(s, at) - ROOM_C);
        }

        private static double pressureMpa(Subject s, At at) {
            var pulley = s.drive().wheelPulley();
            return PressFit.pressureMpa(
                    warmMm(s, at),
                    at.most(pulley.boreDiameterMm()),
                    pulley.spigotDiameterMm().nominal(),
                    at.least(s.end().wheel().coreDiameterMm()),
                    stuff(s, at, pulley.material()),
                    stuff(s, at, core(s)));
        }

        private static double lasting(Subject s) {
            return Math.min(
                    Made.lastingShare(s, core(s)),
                    Made.lastingShare(s, s.drive().wheelPulley().material()));
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return DrivePull.wheelNm(s, motorNm);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            var pulley = s.drive().wheelPulley();
            return PressFit.torqueNm(
                    lasting(s) * pressureMpa(s, at),
                    at.least(Assumed.friction(s.kit())),
                    pulley.spigotDiameterMm().nominal(),
                    at.least(pulley.spigotLengthMm()));
        }

        @Override
        void write(Subject s, Working w) {
            var pulley = s.drive().wheelPulley();
            var wheel = s.end().wheel();
            DrivePull.writeWheel(s, w);
            w.given("d_sp", pulley.spigotDiameterMm());
            w.given("d_rec", wheel.recessDiameterMm());
            writeStuff(s, w, "_s", pulley.id() + ".material", pulley.material());
            writeStuff(s, w, "_h", wheel.id() + ".coreMaterial", core(s));
            w.given("t_warm", Assumed.warm(s.kit()));
            w.line(
                    "δ_w",
                    "d_sp − d_rec + (α_s − α_h)/1000000·d_sp·(t_warm − 23)",
                    warmMm(s, At.NOMINAL),
                    "mm",
                    "interference when warm");
            w.given("d_bore", pulley.boreDiameterMm());
            w.given("D_core", wheel.coreDiameterMm());
            w.line(
                    "p_f",
                    "max(0, δ_w)/(d_sp·(((D_core^2 + d_sp^2)/(D_core^2 − d_sp^2) + ν_h)/E_h + ((d_sp^2 + d_bore^2)/(d_sp^2 − "
                            + "d_bore^2) − ν_s)/E_s))",
                    pressureMpa(s, At.NOMINAL),
                    "MPa",
                    "pressure of the fit, Lamé");
            w.given("k_last", "share of the pressure that is left after months", lasting(s), "", HABIT);
            w.given("μ_j", Assumed.friction(s.kit()));
            w.given("l_spigot", pulley.spigotLengthMm());
            w.line(
                    "M_holds",
                    "μ_j·k_last·p_f·π·d_sp^2·l_spigot/2000",
                    capacity(s, At.NOMINAL, 0),
                    "N·m",
                    "before it slips in the core");
        }

        private static void writeStuff(Subject s, Working w, String side, String field, String material) {
            Made.given(w, "E0" + side, s, field, material, Property.YOUNG);
            Made.given(w, "ν" + side, s, field, material, Property.POISSON);
            Made.given(w, "α" + side, s, field, material, Property.EXPANSION);
            double share = Made.warmShare(s, material, warmC(s, At.NOMINAL));
            if (!Made.steel(s, material)) {
                Made.given(w, "t_half" + side, s, field, material, Property.HALF_AT);
            }
            w.given("k_hot" + side, "share of its stiffness that is left warm", share, "", "as of its strength, habit");
            w.line(
                    "E" + side,
                    "E0" + side + "·k_hot" + side,
                    stuff(s, At.NOMINAL, material).youngMpa(),
                    "MPa",
                    side.equals("_h") ? "core" : "pulley");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "more interference, a longer spigot, a core that neither creeps nor softens, or lugs; a pulley that slips "
                    + "in its core leaves no brake";
        }
    }
}
