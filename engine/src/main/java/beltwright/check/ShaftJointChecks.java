package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Material.Property;
import beltwright.part.ShaftForm;
import beltwright.quantity.Range;
import beltwright.strength.Key;
import beltwright.strength.SetScrewHold;
import java.util.List;

/// Does the drive pulley hold on the motor shaft while torque reverses with every stop?
final class ShaftJointChecks {
    private static final String HABIT = "common practice, no source";

    private ShaftJointChecks() {}

    /// {@return torque that the joint on the shaft must hold, either way (N·m)}
    static double peakNm(Subject s, At at, double motorNm) {
        return at.most(Assumed.peak(s.kit())) * motorNm;
    }

    /// Writes the lines up to M_peak.
    static void writePeak(Subject s, Working w) {
        DrivePull.write(s, w);
        w.given("k_peak", Assumed.peak(s.kit()));
        w.line(
                "M_peak",
                "k_peak·M",
                peakNm(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                "N·m",
                "a jolt, either way");
    }

    static List<Check> all() {
        return List.of(new Joint());
    }

    /// Flats and keys press, set screws grip; the length of a key is taken as the length of bore that the shaft fills.
    static final class Joint extends StrengthCheck {
        /// Diameter of a cup point's rim by thread, M3 to M12 (mm): ISO 4029, from memory.
        private static final double[] TIP_MM = {1.4, 2, 2.5, 3, 5, 6, 8};

        Joint() {
            super(
                    "shaft-joint",
                    "Drive pulley holds on the shaft",
                    "N·m",
                    Scope.DRIVE,
                    "flat and key: statics; set screws: Shigley, table 7-4 (from memory), a quarter under reversal: "
                            + HABIT,
                    Role.DRIVE_PULLEY,
                    Role.MOTOR,
                    Role.MOUNT,
                    Role.CONTROLLER,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
            placed();
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the drive pulley turns on its shaft";
        }

        @Override
        WeakestLink.Kind kind(Subject s) {
            return switch (form(s)) {
                case NONE, SCREWS -> WeakestLink.Kind.SLIPS;
                case KEY, FLAT -> WeakestLink.Kind.BREAKS;
            };
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return peakNm(s, at, motorNm);
        }

        private static Form form(Subject s) {
            if (ShaftChecks.Form.byForm(s)) {
                return s.drive().motor().shaftForm() == ShaftForm.KEYED ? Form.KEY : Form.FLAT;
            }
            return ShaftChecks.Form.byScrews(s) ? Form.SCREWS : Form.NONE;
        }

        @Override
        public boolean applies(Subject s) {
            return !ShaftChecks.Form.byClamp(s);
        }

        /// What carries the torque.
        private enum Form {
            NONE,
            SCREWS,
            FLAT,
            KEY
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return switch (form(s)) {
                case NONE -> 0;
                case SCREWS -> Math.max(gripNm(s, at), onFlatsNm(s));
                case FLAT -> flatNm(s, at);
                case KEY -> Math.min(keyShearNm(s, at), keySideNm(s, at));
            };
        }

        private static Range filledMm(Subject s) {
            return ShaftChecks.Reach.filled(s);
        }

        /// {@return pressure that the softer of shaft and pulley bears (MPa)}
        private static double pressureMpa(Subject s) {
            return Math.min(
                    Made.of(s, s.drive().motor().shaftMaterial(), Property.YIELD),
                    Made.of(s, s.drive().drivePulley().material(), Property.YIELD));
        }

        private static double flats(Subject s) {
            return s.drive().motor().shaftForm() == ShaftForm.TWO_FLATS
                            && s.drive().drivePulley().boreForm() == ShaftForm.TWO_FLATS
                    ? 2
                    : 1;
        }

        /// {@return torque of flat on flat, pressed in proportion over half of its width (N·m)}
        private static double flatNm(Subject s, At at) {
            double across = at.most(s.drive().motor().shaftFlatMm());
            double shaft = at.least(s.drive().motor().shaftDiameterMm());
            return flats(s) * pressureMpa(s) * at.least(filledMm(s)) * across * (shaft - across) / 3000;
        }

        private static double keyShearNm(Subject s, At at) {
            return Key.shearNm(
                    at.least(s.drive().motor().keyWidthMm()),
                    at.least(filledMm(s)),
                    Made.of(s, s.drive().motor().shaftMaterial(), Property.SHEAR),
                    at.least(s.drive().motor().shaftDiameterMm()));
        }

        private static double keySideNm(Subject s, At at) {
            var motor = s.drive().motor();
            double stands = at.least(motor.overKeyMm()) - at.most(motor.shaftDiameterMm());
            return Key.bearingNm(stands, at.least(filledMm(s)), pressureMpa(s), at.least(motor.shaftDiameterMm()));
        }

        /// {@return holding power of the set screws over that of one (1); closer than 60° they count as one}
        private static double screws(Subject s, At at) {
            var pulley = s.drive().drivePulley();
            if (pulley.setScrews() < 2) {
                return pulley.setScrews();
            }
            double apart = at.most(pulley.setScrewsApartDeg());
            return apart < 60 ? 1 : SetScrewHold.twoScrews(Math.min(apart, 180));
        }

        private static double holdingN(Subject s) {
            return SetScrewHold.holdingN(
                    s.drive().drivePulley().setScrewThread().majorMm());
        }

        private static double gripNm(Subject s, At at) {
            return SetScrewHold.reversingNm(
                    screws(s, at) * holdingN(s), at.least(s.drive().motor().shaftDiameterMm()));
        }

        private static double tipMm(Subject s) {
            return TIP_MM[s.drive().drivePulley().setScrewThread().ordinal()];
        }

        private static int screwsOnFlats(Subject s) {
            int screws = s.drive().drivePulley().setScrews();
            return switch (s.drive().motor().shaftForm()) {
                case FLAT -> Math.min(screws, 1);
                case TWO_FLATS -> Math.min(screws, 2);
                default -> 0;
            };
        }

        private static double onFlatsNm(Subject s) {
            int screws = screwsOnFlats(s);
            return screws == 0
                    ? 0
                    : screws
                            * SetScrewHold.onFlatNm(
                                    tipMm(s), Made.of(s, s.drive().motor().shaftMaterial(), Property.YIELD));
        }

        @Override
        void write(Subject s, Working w) {
            writePeak(s, w);
            switch (form(s)) {
                case NONE -> w.given("T_hold", "they do not go together", 0, "N·m", "see shaft-form");
                case SCREWS -> writeScrews(s, w);
                case FLAT -> writeFlat(s, w);
                case KEY -> writeKey(s, w);
            }
        }

        private static void writeFilled(Subject s, Working w) {
            w.given("l_filled", "length of bore that the shaft fills", filledMm(s), "layout");
            w.given("d_shaft", s.drive().motor().shaftDiameterMm());
        }

        private static void writePressure(Subject s, Working w) {
            quote(s, w, "p_shaft", "shaftMaterial", Property.YIELD);
            quote(s, w, "p_hub", "material", Property.YIELD);
            w.line("p_f", "min(p_shaft, p_hub)", pressureMpa(s), "MPa", "the softer of shaft and pulley");
        }

        private static void quote(Subject s, Working w, String symbol, String field, Property property) {
            boolean ofShaft = field.equals("shaftMaterial");
            var id = ofShaft
                    ? s.drive().motor().shaftMaterial()
                    : s.drive().drivePulley().material();
            var part =
                    ofShaft ? s.drive().motor().id() : s.drive().drivePulley().id();
            Made.given(w, symbol, s, part + "." + field, id, property);
        }

        private static void writeFlat(Subject s, Working w) {
            writeFilled(s, w);
            writePressure(s, w);
            w.given("f_shaft", s.drive().motor().shaftFlatMm());
            w.given("n_f", "flats that meet", flats(s), "", "compared");
            w.line(
                    "T_hold",
                    "n_f·p_f·l_filled·f_shaft·(d_shaft − f_shaft)/3000",
                    flatNm(s, At.NOMINAL),
                    "N·m",
                    "pressed over half of the flat's width, in proportion; play of the fit neglected");
        }

        private static void writeKey(Subject s, Working w) {
            writeFilled(s, w);
            var motor = s.drive().motor();
            writePressure(s, w);
            quote(s, w, "τ_k", "shaftMaterial", Property.SHEAR);
            w.given("w_k", motor.keyWidthMm());
            w.given("h_k", motor.overKeyMm());
            double shear = w.line(
                    "T_shear",
                    "τ_k·w_k·l_filled·d_shaft/2000",
                    keyShearNm(s, At.NOMINAL),
                    "N·m",
                    "key of the shaft's steel, as long as the bore that the shaft fills");
            double side = w.line(
                    "T_side",
                    "p_f·(h_k − d_shaft)·l_filled·d_shaft/2000",
                    keySideNm(s, At.NOMINAL),
                    "N·m",
                    "side of what stands out of the shaft");
            w.line("T_hold", "min(T_shear, T_side)", Math.min(shear, side), "N·m", "whichever is less");
        }

        private static void writeScrews(Subject s, Working w) {
            var pulley = s.drive().drivePulley();
            w.given("d_shaft", s.drive().motor().shaftDiameterMm());
            w.given(
                    "F_h",
                    "holding power of a cup point " + pulley.setScrewThread(),
                    holdingN(s),
                    "N",
                    "Shigley, table 7-4 (from memory)");
            if (pulley.setScrews() > 1) {
                w.given("α_screws", pulley.setScrewsApartDeg());
            }
            w.given(
                    "k_h",
                    "holding power of the screws over that of one",
                    screws(s, At.NOMINAL),
                    "",
                    "a screw maker's chart, by the angle between two (from memory)");
            w.given("k_r", "share that is left when torque reverses", SetScrewHold.REVERSING, "", HABIT);
            double grip = w.line("T_grip", "k_r·k_h·F_h·d_shaft/2000", gripNm(s, At.NOMINAL), "N·m", "grips");
            if (screwsOnFlats(s) == 0) {
                w.line("T_hold", "T_grip", grip, "N·m", "round where the screws meet it");
                return;
            }
            quote(s, w, "p_shaft", "shaftMaterial", Property.YIELD);
            w.given("n_f", "screws on flats", screwsOnFlats(s), "", "compared");
            w.given("d_t", "rim of the cup point", tipMm(s), "mm", "ISO 4029 (from memory)");
            double flat = w.line(
                    "T_flat",
                    "n_f·p_shaft·d_t^3/12000",
                    onFlatsNm(s),
                    "N·m",
                    "one half of the point pressed into the flat");
            w.line("T_hold", "max(T_grip, T_flat)", Math.max(grip, flat), "N·m", "not both at once");
        }

        @Override
        public String says(Subject s, Reading r) {
            var how = switch (form(s)) {
                case NONE -> "nothing holds";
                case SCREWS -> "held by set screws alone";
                case FLAT -> "held by the flat";
                case KEY -> "held by the key";
            };
            return how + ", " + r.capacityText() + " N·m; peaks of " + r.demandText() + " either way";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return form(s) == Form.SCREWS
                    ? "a D or keyed bore, or larger set screws with threadlocker, 90° apart; check them on every ride"
                    : "a longer bore, a harder pulley, or a larger shaft";
        }
    }
}
