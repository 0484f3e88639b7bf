package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.BeltProfile;
import beltwright.part.GrooveForm;
import beltwright.part.Material.Property;
import beltwright.part.ToothedRim;
import beltwright.part.WheelPulley;
import beltwright.strength.FrictionGrip;
import beltwright.strength.HeadPressure;
import beltwright.strength.PressFit;
import beltwright.strength.ToothShear;
import java.util.List;

/// Do the teeth of both pulleys stand the pull, and does the wheel turn with its pulley under it: by lugs, by the
/// friction of screws, or by a press fit? Every strength is asked warm, of a plastic for months.
final class PulleyStrengthChecks {
    private static final String HABIT = "common practice, no source";
    private static final Role[] PULLED = {Role.WHEEL_PULLEY, Role.WHEEL, Role.DRIVE_PULLEY, Role.MOTOR, Role.CONTROLLER
    };

    private PulleyStrengthChecks() {}

    static List<Check> all() {
        return List.of(
                new Teeth("drive-pulley-teeth", "Teeth of the drive pulley stand the pull", true),
                new Teeth("wheel-pulley-teeth", "Teeth of the wheel pulley stand the pull", false),
                new LugShear(),
                new LugBearing(),
                new ScrewsGrip(),
                new PressHolds());
    }

    private static double warmC(Subject s, At at) {
        return at.most(Assumed.warm(s.kit()));
    }

    private static double warm(Subject s, At at, String material, Property property) {
        return Made.of(s, material, property) * Made.warmShare(s, material, warmC(s, at));
    }

    private static String core(Subject s) {
        return s.end().wheel().coreMaterial();
    }

    /// A tooth of a pulley is not sheared off, nor its flank crushed: fewer whole teeth in mesh, more for each.
    ///
    ///     F_t = k_u·k_peak·Te/z     F_holds = k_hot·b·min(k_creep·τ·s, p·h)
    static final class Teeth extends StrengthCheck {
        /// Worst tooth over the mean: how unevenly teeth share nobody has published.
        private static final double UNEVEN = 2;

        private final boolean onMotor;

        Teeth(String slug, String name, boolean onMotor) {
            super(
                    slug,
                    name,
                    "N",
                    Scope.DRIVE,
                    "statics, tooth at its narrowest; uneven share, peak, heat and creep: " + HABIT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.BELT,
                    Role.MOTOR,
                    Role.CONTROLLER,
                    Role.WHEEL);
            this.onMotor = onMotor;
        }

        @Override
        boolean torqued() {
            return true;
        }

        private ToothedRim rim(Subject s) {
            return onMotor
                    ? s.drive().drivePulley().rim()
                    : s.drive().wheelPulley().rim();
        }

        private String material(Subject s) {
            return onMotor
                    ? s.drive().drivePulley().material()
                    : s.drive().wheelPulley().material();
        }

        private String field(Subject s) {
            return (onMotor
                            ? s.drive().drivePulley().id()
                            : s.drive().wheelPulley().id()) + ".material";
        }

        /// The wheel pulley has more teeth in mesh; those of the drive pulley are counted for both.
        private static double teeth(Subject s) {
            return Math.floor(s.at().teethInMesh());
        }

        private double toothMm(Subject s) {
            return rim(s).profile() == BeltProfile.H5M
                    ? GrooveForm.toothMm(rim(s).outsideDiameterMm(), rim(s).teeth())
                    : Double.NaN;
        }

        private double widthMm(Subject s, At at) {
            return Math.min(at.least(s.drive().belt().widthMm()), at.least(rim(s).faceWidthMm()));
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return ToothShear.toothN(
                    at.most(Assumed.peak(s.kit())) * DrivePull.effectiveN(s, motorNm), teeth(s), UNEVEN);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            double sheared = Made.lastingShare(s, material(s)) * Made.of(s, material(s), Property.SHEAR) * toothMm(s);
            double crushed =
                    Made.of(s, material(s), Property.HEAD) * rim(s).profile().toothHeightMm();
            return Made.warmShare(s, material(s), warmC(s, at)) * widthMm(s, at) * Math.min(sheared, crushed);
        }

        @Override
        void write(Subject s, Working w) {
            DrivePull.writeTension(s, w);
            var rim = rim(s);
            w.given("k_peak", Assumed.peak(s.kit()));
            w.given("k_u", "pull on the worst tooth over the mean", UNEVEN, "", HABIT);
            w.given("z_m", "teeth in mesh on the drive pulley", s.at().teethInMesh(), "", "layout");
            w.line(
                    "F_t",
                    "k_u·k_peak·Te/floor(z_m)",
                    demand(s, At.NOMINAL, motorNm(s, At.NOMINAL)),
                    "N",
                    "on the worst tooth");
            w.given(
                    "D_o",
                    "outside diameter of the pulley",
                    rim.outsideDiameterMm(),
                    "mm",
                    rim.profile().standard());
            w.given("z_p", "its teeth", rim.teeth(), "", "count");
            w.given(
                    "b_r",
                    "width of a groove",
                    rim.profile() == BeltProfile.H5M ? GrooveForm.OPENING_MM : Double.NaN,
                    "mm",
                    "a public table of the cutter's form, 5M H alone");
            if (Double.isNaN(toothMm(s))) {
                w.needs("the groove's width of a pulley " + rim.profile());
            }
            w.line("s_t", "π·D_o/z_p − b_r", toothMm(s), "mm", "tooth at its narrowest");
            w.given(
                    "h_t",
                    "height of a belt's tooth",
                    rim.profile().toothHeightMm(),
                    "mm",
                    rim.profile().standard());
            w.given("b_b", s.drive().belt().widthMm());
            w.given("b_face", rim.faceWidthMm());
            Made.given(w, "τ", s, field(s), material(s), Property.SHEAR);
            Made.given(w, "p_most", s, field(s), material(s), Property.HEAD);
            Made.writeLasting(w, s, field(s), material(s), warmC(s, At.NOMINAL));
            w.line(
                    "F_holds",
                    "k_hot·min(b_b, b_face)·min(k_creep·τ·s_t, p_most·h_t)",
                    capacity(s, At.NOMINAL, 0),
                    "N",
                    "a tooth shears, or its flank is crushed");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "more teeth in mesh, a wider belt, a pulley of metal rather than printed, or lower current limits; a "
                    + "printed tooth gives without warning, so keep fingers and clothes off a belt that turns";
        }
    }

    /// Peak torque of the wheel shared by the lugs that touch.
    private abstract static class Lugs extends StrengthCheck {
        Lugs(String slug, String name, String source) {
            super(slug, name, "MPa", Scope.DRIVE, source, PULLED);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().wheelPulley().holding() == WheelPulley.Holding.LUGS;
        }

        @Override
        boolean torqued() {
            return true;
        }

        /// Where play differs, one lug of several does not touch.
        static double touching(Subject s) {
            return Math.max(1, s.drive().wheelPulley().lugs() - 1);
        }

        static double lugN(Subject s, At at, double motorNm) {
            return ToothShear.lugN(
                    at.most(Assumed.peak(s.kit())) * DrivePull.wheelNm(s, motorNm),
                    touching(s),
                    at.least(s.drive().wheelPulley().lugCircleMm()) / 2);
        }

        static void writeLug(Subject s, Working w) {
            var pulley = s.drive().wheelPulley();
            DrivePull.writeWheel(s, w);
            w.given("k_peak", Assumed.peak(s.kit()));
            w.given("n_lugs", pulley.id() + ".lugs", pulley.lugs(), "", "count");
            w.given("k_lug", pulley.lugCircleMm());
            w.line(
                    "F_lug",
                    "1000·k_peak·M_w/(max(1, n_lugs − 1)·k_lug/2)",
                    lugN(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                    "N",
                    "on each lug, one of them not touching");
            w.given("b_lug", pulley.lugWidthMm());
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "more or wider lugs on a larger circle, a stronger core, or lower current limits";
        }
    }

    /// No lug is sheared off the pulley.
    static final class LugShear extends Lugs {
        LugShear() {
            super("lug-shear", "Drive lugs stay on the pulley", "statics; lug as deep as wide, peak: " + HABIT);
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            double width = at.least(s.drive().wheelPulley().lugWidthMm());
            return ToothShear.shearMpa(lugN(s, at, motorNm), width, width);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            var material = s.drive().wheelPulley().material();
            return warm(s, at, material, Property.SHEAR) * Made.lastingShare(s, material);
        }

        @Override
        void write(Subject s, Working w) {
            var pulley = s.drive().wheelPulley();
            writeLug(s, w);
            w.line(
                    "τ_lug",
                    "F_lug/b_lug^2",
                    demand(s, At.NOMINAL, motorNm(s, At.NOMINAL)),
                    "MPa",
                    "across its root, taken as deep radially as it is wide");
            Made.given(w, "τ", s, pulley.id() + ".material", pulley.material(), Property.SHEAR);
            Made.writeLasting(w, s, pulley.id() + ".material", pulley.material(), warmC(s, At.NOMINAL));
            w.line("τ_most", "τ·k_hot·k_creep", capacity(s, At.NOMINAL, 0), "MPa", "it stands");
        }
    }

    /// Neither lug nor core is crushed where they touch.
    static final class LugBearing extends Lugs {
        LugBearing() {
            super(
                    "lug-bearing",
                    "Drive lugs do not crush the core",
                    "statics; lug as deep as wide, peak, pressure that a plastic bears: " + HABIT);
        }

        private static double bears(Subject s, At at, String material) {
            return warm(s, at, material, Property.HEAD);
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            var pulley = s.drive().wheelPulley();
            return ToothShear.bearingMpa(
                    lugN(s, at, motorNm), at.least(pulley.lugWidthMm()), at.least(pulley.lugLengthMm()));
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Math.min(bears(s, at, s.drive().wheelPulley().material()), bears(s, at, core(s)));
        }

        @Override
        void write(Subject s, Working w) {
            var pulley = s.drive().wheelPulley();
            writeLug(s, w);
            w.given("l_lug", pulley.lugLengthMm());
            w.line(
                    "p_lug",
                    "F_lug/(b_lug·l_lug)",
                    demand(s, At.NOMINAL, motorNm(s, At.NOMINAL)),
                    "MPa",
                    "on its flank, taken as deep radially as it is wide");
            boolean ofCore = !(bears(s, At.NOMINAL, core(s)) > bears(s, At.NOMINAL, pulley.material()));
            var field = ofCore ? s.end().wheel().id() + ".coreMaterial" : pulley.id() + ".material";
            var material = ofCore ? core(s) : pulley.material();
            Made.given(w, "p_most", s, field, material, Property.HEAD);
            Made.writeWarm(w, s, field, material, warmC(s, At.NOMINAL));
            w.line(
                    "p_bears",
                    "p_most·k_hot",
                    capacity(s, At.NOMINAL, 0),
                    "MPa",
                    (ofCore ? "core" : "lug") + ", the weaker of the two");
        }
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

        private static double headMm2(Subject s, At at) {
            var screw = s.drive().pulleyScrew();
            return HeadPressure.overHoleMm2(
                    screw.head().diameterMm(screw.thread()),
                    at.most(s.end().wheel().screwHoleMm()));
        }

        private static double preloadN(Subject s, At at) {
            var screw = s.drive().pulleyScrew();
            return Tension.preloadN(s, at, screw.thread(), screw.strength());
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
                    PULLED);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().wheelPulley().holding() == WheelPulley.Holding.PRESS_FIT;
        }

        @Override
        boolean torqued() {
            return true;
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
