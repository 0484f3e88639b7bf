package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Material.Property;
import beltwright.part.PropertyClass;
import beltwright.part.Thread;
import beltwright.quantity.Numbers;
import beltwright.strength.BoltedJoint;
import beltwright.strength.FrictionGrip;
import beltwright.strength.HeadPressure;
import java.util.List;

/// Do the screws in the slots hold the belt's pull, what do they press on, and does the overhung pull tip the motor?
final class SlotStrengthChecks {
    private static final String HABIT = "common practice, no source";

    private SlotStrengthChecks() {}

    static List<Check> all() {
        return List.of(new Grip(), new Pressure(), new Opens(), new ScrewStress());
    }

    private static Thread thread(Subject s) {
        return s.drive().motorScrew().thread();
    }

    private static PropertyClass strength(Subject s) {
        return s.drive().motorScrew().strength();
    }

    /// The slots give nothing along themselves: friction alone keeps the motor where the belt is tight.
    static final class Grip extends StrengthCheck {
        Grip() {
            super(
                    "slot-grip",
                    "Slot screws hold the belt's pull",
                    "N",
                    Scope.DRIVE,
                    "friction of one face, VDI 2230-1 (from memory); friction and scatter of preload: " + HABIT
                            + "; what settles is taken back when the screws are tightened again",
                    Role.MOTOR_SCREWS,
                    Role.MOUNT,
                    Role.MOTOR,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.CONTROLLER,
                    Role.WHEEL);
            placed();
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.SLOTS;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the motor slides in its slots";
        }

        @Override
        WeakestLink.Kind kind(Subject s) {
            return WeakestLink.Kind.SLIPS;
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return Tension.pullN(s, at, motorNm) + Tension.joltN(s, at);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Tension.slotHoldsN(s, at);
        }

        @Override
        void write(Subject s, Working w) {
            Tension.writePull(s, w);
            Tension.writeJolt(s, w);
            w.line(
                    "F_slide",
                    "P + F_jolt",
                    demand(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                    "N",
                    "pull of both spans, and a jolt along the slots");
            Tension.writeSlots(s, w);
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " N held by friction; belt and a jolt pull " + r.demandText() + " N";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "serrated washers, a tension screw behind the motor, more slots, or screws one size larger or of a"
                    + " higher class; not more torque on the same screws";
        }
    }

    /// What lies under the head, over the slot, at the highest preload.
    static final class Pressure extends StrengthCheck {
        Pressure() {
            super(
                    "slot-pressure",
                    "Plate bears the heads over its slots",
                    "MPa",
                    Scope.DRIVE,
                    "plane geometry; a washer spreads as in VDI 2230-1 (from memory)",
                    Role.MOTOR_WASHERS,
                    Role.MOTOR_SCREWS,
                    Role.MOUNT);
        }

        private static double headMm(Subject s) {
            return s.drive().motorScrew().head().diameterMm(thread(s));
        }

        private static double spreadMm(Subject s, At at) {
            var washer = s.drive().motorWasher();
            return HeadPressure.spreadMm(headMm(s), at.least(washer.outsideMm()), at.least(washer.thicknessMm()));
        }

        private static double areaMm2(Subject s, At at) {
            return HeadPressure.overLongSlotMm2(
                    spreadMm(s, at), at.most(s.drive().mount().slotWidthMm()));
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return HeadPressure.pressureMpa(
                    Tension.tightestN(s, at, Role.MOTOR_SCREWS, thread(s), strength(s)), areaMm2(s, at));
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return PlateStrength.of(s, Property.HEAD);
        }

        @Override
        void write(Subject s, Working w) {
            Tension.writePreload(s, w, thread(s), strength(s));
            w.given("d_head", "head, " + s.drive().motorScrew().head().standard(), headMm(s), "mm", "standard");
            w.given("D_washer", s.drive().motorWasher().outsideMm());
            w.given("t_washer", s.drive().motorWasher().thicknessMm());
            w.line(
                    "D_e",
                    "min(D_washer, d_head + 1.6·t_washer)",
                    spreadMm(s, At.NOMINAL),
                    "mm",
                    "what the washer spreads the head's force on");
            w.given("b_slot", s.drive().mount().slotWidthMm());
            double area = areaMm2(s, At.NOMINAL);
            if (Double.isNaN(area)) {
                w.needs("a washer that is wider than the slot");
            }
            w.line(
                    "A_p",
                    "π/4·D_e^2 − 2·(b_slot/2·√(D_e^2/4 − b_slot^2/4) + D_e^2/4·asin(b_slot/D_e))",
                    area,
                    "mm²",
                    "that circle less what of it lies over the slot");
            w.line("p_head", "F/A_p", demand(s, At.NOMINAL, 0), "MPa", "at the preload aimed at; at worst s_F higher");
            PlateStrength.quote(w, "p_most", s, Property.HEAD);
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.demandText() + " MPa under a head over the slot; " + r.capacityText() + " borne, or it sinks in"
                    + " and comes loose";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a thicker or wider washer, a narrower slot, or a harder plate; do not tighten more";
        }
    }

    /// How one screw and the plate under it share what pulls the motor off the plate.
    private static final class Tipping {
        /// Modulus of elasticity of steel screws (MPa): Shigley, table A-5.
        private static final double STEEL_MPA = 207_000;

        private Tipping() {}

        /// {@return pull along the worst screw (N); NaN where fewer than three hold the motor}
        static double pullN(Subject s, At at, double motorNm) {
            var mount = s.drive().mount();
            return mount.slots() < 3
                    ? Double.NaN
                    : 4000 * MountLoad.overhungNm(s, at, motorNm) / (mount.slots() * at.least(mount.boltCircleMm()));
        }

        /// How stiff screw and plate are (N/mm), plate and washer being at one end of their limits.
        private record Pair(double screw, double plate) {
            static Pair of(Subject s, double plateMm, double washerMm, double acrossMm) {
                double area = thread(s).stressAreaMm2();
                return new Pair(
                        BoltedJoint.screwStiffness(area, area, 0, stretchMm(s, plateMm, washerMm), STEEL_MPA),
                        BoltedJoint.coneStiffness(
                                HeadPressure.spreadMm(Pressure.headMm(s), acrossMm, washerMm),
                                thread(s).majorMm(),
                                plateMm,
                                PlateStrength.of(s, Property.YOUNG)));
            }

            static Pair nominal(Subject s) {
                var washer = s.drive().motorWasher();
                return of(
                        s,
                        s.drive().mount().plateThicknessMm().nominal(),
                        washer.thicknessMm().nominal(),
                        washer.outsideMm().nominal());
            }

            double share() {
                return BoltedJoint.screwShare(screw, plate);
            }

            double settledN() {
                return FrictionGrip.lostN(settledUm(), screw, plate);
            }
        }

        private static double stretchMm(Subject s, double plateMm, double washerMm) {
            return plateMm + washerMm + thread(s).majorMm();
        }

        /// A wider or thicker washer stiffens the plate, a thicker one also softens the screw: both leave the screw
        /// less of a pull. A thicker plate softens both, so both its limits are tried.
        ///
        /// @param most whether the greatest share is asked for
        private static double shareEnd(Subject s, boolean most) {
            var plate = s.drive().mount().plateThicknessMm();
            var washer = s.drive().motorWasher();
            double thick =
                    most ? washer.thicknessMm().lower() : washer.thicknessMm().upper();
            double across =
                    most ? washer.outsideMm().lower() : washer.outsideMm().upper();
            double thin = Pair.of(s, plate.lower(), thick, across).share();
            if (!plate.toleranced()) {
                return thin;
            }
            double other = Pair.of(s, plate.upper(), thick, across).share();
            return most ? Math.max(thin, other) : Math.min(thin, other);
        }

        /// {@return share of a pull that the screw feels, the more the worse}
        static double share(Subject s, At at) {
            return at == At.NOMINAL ? Pair.nominal(s).share() : shareEnd(s, at == At.WORST);
        }

        /// {@return the same, the less the worse}
        static double leastShare(Subject s, At at) {
            return share(s, at.mirrored());
        }

        /// {@return preload that is lost as the joint beds in (N): the most where the plate is thin and the washer
        ///     wide; a thicker washer stiffens the plate and softens the screw, so both its limits are tried}
        static double settledN(Subject s, At at) {
            if (at == At.NOMINAL) {
                return Pair.nominal(s).settledN();
            }
            double plate = at.least(s.drive().mount().plateThicknessMm());
            var washer = s.drive().motorWasher();
            double across = at.most(washer.outsideMm());
            double thin =
                    Pair.of(s, plate, washer.thicknessMm().lower(), across).settledN();
            double thick =
                    Pair.of(s, plate, washer.thicknessMm().upper(), across).settledN();
            return at == At.WORST ? Math.max(thin, thick) : Math.min(thin, thick);
        }

        static double settledUm() {
            return FrictionGrip.settledUm(1, 2);
        }

        /// Writes the lines up to F_A and C_s.
        static void write(Subject s, Working w) {
            MountLoad.writeOverhung(s, w);
            var mount = s.drive().mount();
            w.given("n_s", mount.id() + ".slots", mount.slots(), "", "count");
            w.given("k2", mount.boltCircleMm());
            double pull = pullN(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL));
            if (mount.slots() < 3) {
                w.needs("three screws or more in the motor's face: two hold nothing about the line between them");
            } else {
                w.line("F_A", "4000·M_o/(n_s·k2)", pull, "N", "along the worst screw, evenly spaced on their circle");
            }
            Tension.writePreload(s, w, thread(s), strength(s));
            w.given("t", mount.plateThicknessMm());
            w.given("t_washer", s.drive().motorWasher().thicknessMm());
            w.line(
                    "l_k",
                    "t + t_washer + d_s",
                    stretchMm(
                            s,
                            mount.plateThicknessMm().nominal(),
                            s.drive().motorWasher().thicknessMm().nominal()),
                    "mm",
                    "what stretches, with half a diameter in head and thread each; VDI 2230-1 (from memory)");
            var pair = Pair.nominal(s);
            w.given("E_s", "modulus of elasticity, steel", STEEL_MPA, "MPa", "Shigley, table A-5");
            w.line("k_s", "A_t·E_s/l_k", pair.screw(), "N/mm", "stiffness of the screw, threaded all along");
            PlateStrength.quote(w, "E_p", s, Property.YOUNG);
            w.given(
                    "k_c",
                    "stiffness of the plate under head and washer",
                    pair.plate(),
                    "N/mm",
                    "a cone of 30° from what the washer spreads on, Shigley eq. 8-20 (from memory)");
            w.line("C_s", "k_s/(k_s + k_c)", pair.share(), "", "share of a pull that the screw feels");
        }
    }

    /// The overhung pull tips the motor: the worst screw must still press.
    static final class Opens extends StrengthCheck {
        Opens() {
            super(
                    "motor-joint-opens",
                    "Motor stays pressed on its plate",
                    "N",
                    Scope.DRIVE,
                    "VDI 2230-1 in short (from memory), with its settled lengths; preload and its scatter: " + HABIT,
                    Role.MOTOR_SCREWS,
                    Role.MOUNT,
                    Role.MOTOR,
                    Role.MOTOR_WASHERS,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.CONTROLLER,
                    Role.WHEEL);
            placed();
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.MOTOR_SCREWS;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the motor lifts off its plate";
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return (1 - Tipping.leastShare(s, at)) * Tipping.pullN(s, at, motorNm);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Tension.preloadN(s, at, Role.MOTOR_SCREWS, thread(s), strength(s)) - Tipping.settledN(s, at);
        }

        @Override
        void write(Subject s, Working w) {
            Tipping.write(s, w);
            if (s.drive().mount().slots() >= 3) {
                w.line(
                        "F_off",
                        "(1 − C_s)·F_A",
                        demand(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                        "N",
                        "takes the plate's pressure away");
            }
            w.given(
                    "δ_z",
                    "settles in thread, under the head and at two faces",
                    Tipping.settledUm(),
                    "µm",
                    "VDI 2230-1, table 5 (from memory)");
            w.line(
                    "F_z",
                    "δ_z/1000·k_s·k_c/(k_s + k_c)",
                    Tipping.settledN(s, At.NOMINAL),
                    "N",
                    "preload lost until it is tightened again");
            w.line("F_left", "F − F_z", capacity(s, At.NOMINAL, 0), "N", "presses");
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " N press under the worst screw after settling; the overhung pull takes "
                    + r.demandText();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the pulley nearer the plate, a larger bolt circle or larger screws; tighten again after the first"
                    + " ride";
        }
    }

    /// The highest preload and the screw's share of the pull, against proof strength.
    static final class ScrewStress extends StrengthCheck {
        ScrewStress() {
            super(
                    "motor-screw-stress",
                    "Motor screws below proof strength",
                    "MPa",
                    Scope.DRIVE,
                    "VDI 2230-1 in short (from memory): without the twist that tightening leaves; ISO 898-1",
                    Role.MOTOR_SCREWS,
                    Role.MOUNT,
                    Role.MOTOR,
                    Role.MOTOR_WASHERS,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.CONTROLLER,
                    Role.WHEEL);
            placed();
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.MOTOR_SCREWS;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the motor screws stretch";
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return BoltedJoint.screwForceN(
                            Tension.tightestN(s, at, Role.MOTOR_SCREWS, thread(s), strength(s)),
                            Tipping.share(s, at),
                            Tipping.pullN(s, at, motorNm))
                    / thread(s).stressAreaMm2();
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return strength(s).proofMpa();
        }

        @Override
        void write(Subject s, Working w) {
            Tipping.write(s, w);
            if (s.drive().mount().slots() >= 3) {
                w.line(
                        "σ_s",
                        "(F + C_s·F_A)/A_t",
                        demand(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                        "MPa",
                        "at the preload aimed at; at worst s_F higher");
            }
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.demandText() + " MPa in the worst screw; proof strength " + Numbers.fixed(r.capacity(), 0)
                    + " MPa";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a torque key, which misses its aim by less, screws of a higher class, or a larger bolt circle;"
                    + " a screw that was over-tightened goes in the bin";
        }
    }
}
