package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.BeltProfile;
import beltwright.part.GrooveForm;
import beltwright.part.Material.Property;
import beltwright.part.ToothedRim;
import beltwright.part.WheelPulley;
import beltwright.strength.ToothShear;
import java.util.List;

/// Do the teeth of both pulleys and the drive lugs in the core stand the pull? Every strength is asked warm, of a
/// plastic
/// for months.
final class PulleyStrengthChecks {
    private static final String HABIT = "common practice, no source";
    static final Role[] PULLED = {Role.WHEEL_PULLEY, Role.WHEEL, Role.DRIVE_PULLEY, Role.MOTOR, Role.CONTROLLER};

    private PulleyStrengthChecks() {}

    static List<Check> all() {
        return List.of(
                new Teeth("drive-pulley-teeth", "Teeth of the drive pulley stand the pull", true),
                new Teeth("wheel-pulley-teeth", "Teeth of the wheel pulley stand the pull", false),
                new LugShear(),
                new LugBearing());
    }

    static double warmC(Subject s, At at) {
        return at.most(Assumed.warm(s.kit()));
    }

    static double warm(Subject s, At at, String material, Property property) {
        return Made.of(s, material, property) * Made.warmShare(s, material, warmC(s, at));
    }

    static String core(Subject s) {
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

        @Override
        String gives() {
            return onMotor ? "the drive pulley's teeth shear off" : "the wheel pulley's teeth shear off";
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
        private static double teeth(Subject s, At at) {
            return Math.floor(at.least(s.at().teethInMesh()));
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
                    at.most(Assumed.peak(s.kit())) * DrivePull.effectiveN(s, motorNm), teeth(s, at), UNEVEN);
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
            w.given(
                    "z_m",
                    "teeth in mesh on the drive pulley",
                    s.at().teethInMesh().nominal(),
                    "",
                    "layout");
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
        String gives() {
            return "the drive lugs shear off";
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

        @Override
        String gives() {
            return "the drive lugs crush the core";
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
}
