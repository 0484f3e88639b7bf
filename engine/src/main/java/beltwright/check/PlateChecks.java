package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Material.Property;
import beltwright.quantity.Range;
import beltwright.strength.Fatigue;
import beltwright.strength.Plate;
import java.util.List;

/// Does the mount plate stand the overhung pull and the motor's jolts, once and again and again?
final class PlateChecks {
    private static final String HABIT = "common practice, no source";

    private PlateChecks() {}

    static List<Check> all() {
        return List.of(new Bending(), new Fatigued());
    }

    /// K_s of a slot's end as the plate is bent in its plane: a slot along a pull.
    private static double edgewiseNotch(Subject s, At at) {
        var mount = s.drive().mount();
        return Plate.slotAlongFactor(at.least(travelMm(s)), at.most(mount.slotWidthMm()));
    }

    /// K_o of a slot's end as the plate is bent out of its plane: a bent hole, milder as far as a slot along a pull is.
    private static double flatwiseNotch(Subject s, At at) {
        var mount = s.drive().mount();
        return Plate.bentSlotFactor(at.least(travelMm(s)), at.most(mount.slotWidthMm()), MountLoad.thickMm(s, at));
    }

    private static Range travelMm(Subject s) {
        var mount = s.drive().mount();
        return Range.of(mount.slotMaxMm()).minus(Range.of(mount.slotMinMm()));
    }

    private static double slotArmMm(Subject s, At at) {
        return at.most(s.drive().mount().boltCircleMm()) / 2;
    }

    private static double flatwiseMpa(Subject s, At at, double bendingNm) {
        return flatwiseNotch(s, at) * Plate.flatwiseMpa(bendingNm, MountLoad.netMm(s, at), MountLoad.thickMm(s, at));
    }

    /// At the end of a slot, or at the plate's own edge where slots lie near its middle.
    private static double edgewiseMpa(Subject s, At at, double bendingNm) {
        return Math.max(
                edgewiseNotch(s, at) * MountLoad.besideSlotMpa(s, at, bendingNm),
                MountLoad.edgewiseMpa(s, at, bendingNm));
    }

    /// Writes the section across the slots, its notch factors and what each N·m does there: s_o, s_s.
    private static void writeNotch(Subject s, Working w) {
        var mount = s.drive().mount();
        MountLoad.writeSection(s, w);
        if (!(travelMm(s).nominal() >= 0)) {
            w.needs("a slot that ends farther from the axle than it begins");
        }
        double wide = MountLoad.widthMm(s, At.NOMINAL);
        double opening = mount.openingMm().nominal();
        w.line(
                "I_o",
                "t·(b_p^3 − d_opening^3)/12",
                MountLoad.thickMm(s, At.NOMINAL) * (wide * wide * wide - opening * opening * opening) / 12,
                "mm⁴",
                "less the opening alone: what the slots take is in K_s");
        w.given("C_slot", mount.slotMaxMm());
        w.given("C_near", mount.slotMinMm());
        w.line(
                "K_s",
                "min(3, 2.1 + 0.3·√(b_slot/(C_slot − C_near)))",
                edgewiseNotch(s, At.NOMINAL),
                "",
                "end of a slot along a pull, fitted to finite elements");
        w.line(
                "x_b",
                "b_slot/t",
                mount.slotWidthMm().nominal() / MountLoad.thickMm(s, At.NOMINAL),
                "",
                "slot to plate");
        w.line(
                "K_o",
                "K_s/3·(1.79 + 0.25/(0.39 + x_b) + 0.81/(1 + x_b^2) − 0.26/(1 + x_b^3))",
                flatwiseNotch(s, At.NOMINAL),
                "",
                "the same bent out of its plane: Peterson's hole (from memory)");
        w.line("s_o", "6000·K_o/(b_net·t^2)", flatwiseMpa(s, At.NOMINAL, 1), "MPa per N·m", "bent out of its plane");
        w.line(
                "s_s",
                "1000·max(K_s·(s_slot + b_slot/2)/I_o, b_p/2/I_n)",
                edgewiseMpa(s, At.NOMINAL, 1),
                "MPa per N·m",
                "bent in its plane: at a slot's end or at the plate's own edge");
        w.given("k2", mount.boltCircleMm());
    }

    /// The worst pull and a full jolt, at the end of a slot and where the plate runs into its clamp.
    static final class Bending extends StrengthCheck {
        /// Notch factor of a sharp inside corner where plate and clamp meet (1).
        private static final double CORNER = 2;

        Bending() {
            super(
                    "plate-bending",
                    "Mount plate below yield",
                    "MPa",
                    Scope.DRIVE,
                    "elastic beam with notch factors; corner at the clamp, creep and warmth of plastics: " + HABIT,
                    Role.MOUNT,
                    Role.MOTOR,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.BELT,
                    Role.CONTROLLER,
                    Role.WHEEL);
            placed();
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.PLATE;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the mount plate bends";
        }

        private static double slotMpa(Subject s, At at, double motorNm) {
            double turning = DrivePull.wheelNm(s, motorNm) + Tension.joltN(s, at) * slotArmMm(s, at) / 1000;
            return flatwiseMpa(s, at, MountLoad.overhungNm(s, at, motorNm)) + edgewiseMpa(s, at, turning);
        }

        private static double clampMpa(Subject s, At at, double motorNm) {
            double width = MountLoad.widthMm(s, at);
            double thick = MountLoad.thickMm(s, at);
            return CORNER
                    * (Plate.flatwiseMpa(MountLoad.overhungNm(s, at, motorNm), width, thick)
                            + Plate.edgewiseMpa(MountLoad.turningNm(s, at, motorNm), width, thick, 0, 0));
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return Math.max(slotMpa(s, at, motorNm), clampMpa(s, at, motorNm));
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return PlateStrength.lastingMpa(s, at);
        }

        @Override
        void write(Subject s, Working w) {
            double torque = DrivePull.worstNm(s, At.NOMINAL);
            MountLoad.writeOverhung(s, w);
            MountLoad.writeTurning(s, w);
            writeNotch(s, w);
            w.line(
                    "M_s",
                    "M_w + F_jolt·k2/2000",
                    DrivePull.wheelNm(s, torque) + Tension.joltN(s, At.NOMINAL) * slotArmMm(s, At.NOMINAL) / 1000,
                    "N·m",
                    "bends the plate in its plane at the slots");
            w.line(
                    "σ_slot",
                    "s_o·M_o + s_s·M_s",
                    slotMpa(s, At.NOMINAL, torque),
                    "MPa",
                    "at the slots; as if both were highest at one place, which is safe");
            w.given("K_c", "notch factor of a sharp inside corner", CORNER, "", HABIT);
            w.line(
                    "σ_clamp",
                    "K_c·(6000·M_o/(b_p·t^2) + 6000·M_t/(t·b_p^2))",
                    clampMpa(s, At.NOMINAL, torque),
                    "MPa",
                    "at the edge of the clamp");
            w.line("σ_plate", "max(σ_slot, σ_clamp)", demand(s, At.NOMINAL, torque), "MPa", "whichever is more");
            PlateStrength.writeLasting(s, w);
        }

        @Override
        public String says(Subject s, Reading r) {
            var plastic = PlateStrength.plastic(s) ? ", warm and for months" : "";
            return r.demandText() + " MPa in the plate; it bears " + r.capacityText() + plastic;
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return PlateStrength.plastic(s)
                    ? "a metal plate: no printed or moulded part in the path of the belt's pull"
                    : "a thicker or wider plate, or the pulley nearer to it";
        }
    }

    /// Starts, stops and jolts that come again and again, as an even amplitude about nothing. While the slack side is
    /// taut the sum of both spans stays what it is at rest, so that the pull swings only as rims run out.
    static final class Fatigued extends StrengthCheck {
        /// Share of the worst jolt that comes again and again (1).
        private static final double OFTEN = 1.0 / 3;

        /// By how much of itself the pull swings either way: a rim that runs out by a tenth of a millimetre does that.
        private static final double SWING = 0.25;

        /// Milled surface with tool marks against a polished bar (1).
        private static final double SURFACE = 0.8;

        Fatigued() {
            super(
                    "plate-fatigue",
                    "Mount plate lasts",
                    "MPa",
                    Scope.DRIVE,
                    "Goodman's line, Shigley ch. 6; surface, swing of the pull, how much of a jolt comes often: "
                            + HABIT,
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
            return TensionLimit.Bearer.PLATE;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the mount plate cracks in time";
        }

        private static double meanMpa(Subject s, At at, double motorNm) {
            return flatwiseMpa(s, at, MountLoad.pullNm(s, at, motorNm));
        }

        private static double turningNm(Subject s, At at, double motorNm) {
            return DrivePull.wheelNm(s, motorNm) + OFTEN * Tension.joltN(s, at) * slotArmMm(s, at) / 1000;
        }

        private static double amplitudeMpa(Subject s, At at, double motorNm) {
            double overhung = SWING * MountLoad.pullNm(s, at, motorNm) + OFTEN * MountLoad.joltNm(s, at);
            return flatwiseMpa(s, at, overhung) + edgewiseMpa(s, at, turningNm(s, at, motorNm));
        }

        private static double tensileMpa(Subject s, At at) {
            return PlateStrength.of(s, Property.TENSILE) * PlateStrength.warmShare(s, at);
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            double left = 1 - meanMpa(s, at, motorNm) / tensileMpa(s, at);
            return left <= 0 ? Double.POSITIVE_INFINITY : amplitudeMpa(s, at, motorNm) / left;
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return SURFACE
                    * Fatigue.RELIABLE_99
                    * PlateStrength.of(s, Property.FATIGUE)
                    * PlateStrength.warmShare(s, at);
        }

        @Override
        void write(Subject s, Working w) {
            double torque = DrivePull.worstNm(s, At.NOMINAL);
            MountLoad.writeOverhung(s, w);
            DrivePull.writeWheel(s, w);
            writeNotch(s, w);
            w.given("k_often", "share of the worst jolt that comes again and again", OFTEN, "", HABIT);
            w.given("k_swing", "share by which the pull swings either way", SWING, "", HABIT);
            w.line(
                    "M_a",
                    "M_w + k_often·F_jolt·k2/2000",
                    turningNm(s, At.NOMINAL, torque),
                    "N·m",
                    "in the plane of the plate, driving and braking in turn");
            w.line(
                    "σ_a",
                    "s_o·(k_swing·P·x_p + k_often·F_jolt·x_m)/1000 + s_s·M_a",
                    amplitudeMpa(s, At.NOMINAL, torque),
                    "MPa",
                    "amplitude: the pull swings as rims run out, its mean stays");
            w.line("σ_m", "s_o·P·x_p/1000", meanMpa(s, At.NOMINAL, torque), "MPa", "mean");
            PlateStrength.quote(w, "R_m", s, Property.TENSILE);
            PlateStrength.writeWarm(s, w);
            double demand = demand(s, At.NOMINAL, torque);
            if (Double.isFinite(demand)) {
                w.line("σ_r", "σ_a/(1 − σ_m/(R_m·k_hot))", demand, "MPa", "the same about nothing, Goodman");
            } else {
                w.given("σ_r", "the mean alone is more than it stands", demand, "MPa", "Goodman");
            }
            PlateStrength.quote(w, "S_f", s, Property.FATIGUE);
            w.given("k_a", "milled surface against a polished bar", SURFACE, "", HABIT);
            w.given("k_e", "99 of 100 last", Fatigue.RELIABLE_99, "", "Shigley ch. 6 (from memory)");
            w.line("S_plate", "k_a·k_e·S_f·k_hot", capacity(s, At.NOMINAL, torque), "MPa", "amplitude that it lasts");
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.demandText() + " MPa of amplitude at a slot's end; it lasts " + r.capacityText();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return PlateStrength.plastic(s)
                    ? "a metal plate: no printed or moulded part in the path of the belt's pull"
                    : "a thicker or wider plate, smooth slot ends, or the pulley nearer to the plate";
        }
    }
}
