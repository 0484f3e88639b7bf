package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Hanger;
import beltwright.part.Mount;
import beltwright.part.Screw;
import beltwright.strength.ClampGrip;
import beltwright.strength.FlangeGrip;
import java.util.ArrayList;
import java.util.List;

/// Does the mount stay where it is on the hanger, and what gives when a kerb strikes the motor?
final class HangerJointChecks {
    private static final String HABIT = "common practice, no source";

    private HangerJointChecks() {}

    static List<Check> all() {
        return List.of(
                new Joint(Mount.Fixing.CLAMP),
                new Joint(Mount.Fixing.FLANGE),
                new Strike(Mount.Fixing.CLAMP),
                new Strike(Mount.Fixing.FLANGE),
                new Strike(Mount.Fixing.ONE_PIECE));
    }

    private static String word(Mount.Fixing fixing) {
        return fixing.toString().replace(' ', '-');
    }

    private static Role[] roles(Mount.Fixing fixing, Role... rest) {
        var roles = new ArrayList<Role>();
        if (fixing == Mount.Fixing.CLAMP) {
            roles.addAll(List.of(Role.CLAMP_SCREWS, Role.HANGER));
        } else if (fixing == Mount.Fixing.FLANGE) {
            roles.addAll(List.of(Role.FLANGE_SCREWS, Role.HANGER));
        }
        roles.addAll(List.of(Role.MOUNT, Role.MOTOR, Role.BELT, Role.DRIVE_PULLEY, Role.WHEEL_PULLEY));
        roles.addAll(List.of(rest));
        return roles.toArray(Role[]::new);
    }

    /// What holds a clamp on its hanger.
    private static final class Clamp {
        private Clamp() {}

        static boolean round(Subject s) {
            return s.kit().hanger().section() == Hanger.Section.ROUND;
        }

        private static Screw screw(Subject s) {
            return s.drive().clampScrew();
        }

        private static double pressN(Subject s, At at) {
            double preload = Tension.preloadN(s, at, Role.CLAMP_SCREWS, screw(s).thread(), screw(s).strength());
            return ClampGrip.pressN(s.drive().mount().clampScrews(), preload, 1, 1);
        }

        /// {@return torque at which it turns on a round section (N·m)}
        static double slipsNm(Subject s, At at) {
            return ClampGrip.roundNm(
                    pressN(s, at),
                    at.least(Assumed.friction(s.kit())),
                    at.least(s.kit().hanger().sectionHeightMm()));
        }

        /// {@return the narrower side of a rectangular section (mm): which side the jaws press is not known}
        private static double flatMm(Subject s, At at) {
            return Math.min(
                    at.least(s.kit().hanger().sectionHeightMm()),
                    at.least(s.kit().hanger().sectionDepthMm()));
        }

        private static double crushesNm(Subject s, At at) {
            return ClampGrip.crushNm(
                    flatMm(s, at), at.least(s.drive().mount().clampLengthMm()), HangerForm.softerMpa(s));
        }

        private static double liftsNm(Subject s, At at) {
            return ClampGrip.liftNm(pressN(s, at), flatMm(s, at));
        }

        private static double proofN(Subject s) {
            return s.drive().mount().clampScrews()
                    * screw(s).strength().proofMpa()
                    * screw(s).thread().stressAreaMm2();
        }

        /// {@return torque that a rectangular section is held against without lifting off or sinking in (N·m)}
        static double formNm(Subject s, At at) {
            return Math.min(liftsNm(s, at), crushesNm(s, at));
        }

        /// {@return torque at which a rectangular section stretches the screws or sinks in (N·m)}
        static double givesNm(Subject s, At at) {
            return Math.min(2 * ClampGrip.liftNm(proofN(s), flatMm(s, at)), crushesNm(s, at));
        }

        private static void writePress(Subject s, Working w) {
            Tension.writePreload(s, w, screw(s).thread(), screw(s).strength());
            var mount = s.drive().mount();
            w.given("n_c", mount.id() + ".clampScrews", mount.clampScrews(), "", "count");
            w.line("W", "n_c·F", pressN(s, At.NOMINAL), "N", "the jaws press; screws on both sides of the section");
        }

        /// Writes the lines up to T_slip.
        static void writeSlip(Subject s, Working w) {
            writePress(s, w);
            w.given("μ_j", Assumed.friction(s.kit()));
            w.given("h", s.kit().hanger().sectionHeightMm());
            w.line(
                    "T_slip",
                    "μ_j·W·h/1000",
                    slipsNm(s, At.NOMINAL),
                    "N·m",
                    "a round section touched along two lines, the less that it can be");
        }

        private static void writeFlat(Subject s, Working w) {
            var hanger = s.kit().hanger();
            w.given("h", hanger.sectionHeightMm());
            w.given("b_h", hanger.sectionDepthMm());
            w.line("b_f", "min(h, b_h)", flatMm(s, At.NOMINAL), "mm", "the narrower side, to be safe");
            w.given("l_clamp", s.drive().mount().clampLengthMm());
            HangerForm.writeSofter(s, w);
            w.line("T_crush", "p_c·b_f^2·l_clamp/6000", crushesNm(s, At.NOMINAL), "N·m", "its edges sink in");
        }

        /// Writes the lines up to T_form.
        static void writeForm(Subject s, Working w) {
            writePress(s, w);
            writeFlat(s, w);
            w.line("T_lift", "W·b_f/3000", liftsNm(s, At.NOMINAL), "N·m", "the section begins to tilt out of the jaws");
            w.line("T_form", "min(T_lift, T_crush)", formNm(s, At.NOMINAL), "N·m", "held by form, whichever is less");
        }

        /// Writes the lines up to T_joint.
        static void writeGives(Subject s, Working w) {
            Tension.writePreload(s, w, screw(s).thread(), screw(s).strength());
            var mount = s.drive().mount();
            w.given("n_c", mount.id() + ".clampScrews", mount.clampScrews(), "", "count");
            w.line("W_proof", "n_c·S_p·A_t", proofN(s), "N", "screws at proof strength");
            writeFlat(s, w);
            w.line(
                    "T_joint",
                    "min(2·W_proof·b_f/3000, T_crush)",
                    givesNm(s, At.NOMINAL),
                    "N·m",
                    "tilted to its edges it stretches the screws, or sinks in");
        }
    }

    /// What holds a flange on its hanger.
    private static final class Flange {
        /// Shear strength of a screw over its tensile strength (1): 0.58 to 0.6 in textbooks.
        private static final double SHEAR_SHARE = 0.6;

        private Flange() {}

        private static Screw screw(Subject s) {
            return s.drive().flangeScrew();
        }

        static double slipsNm(Subject s, At at) {
            var mount = s.drive().mount();
            return FlangeGrip.frictionNm(
                    mount.flangeHoles(),
                    Tension.preloadN(s, at, Role.FLANGE_SCREWS, screw(s).thread(), screw(s).strength()),
                    at.least(Assumed.friction(s.kit())),
                    at.least(mount.flangeCircleMm()));
        }

        /// {@return torque at which its screws shear off, once it has slipped until they bear (N·m)}
        static double shearsNm(Subject s, At at) {
            var mount = s.drive().mount();
            double area = screw(s).thread().stressAreaMm2();
            double ofArea = Math.sqrt(4 * area / Math.PI);
            return FlangeGrip.shearNm(
                    mount.flangeHoles(),
                    ofArea,
                    SHEAR_SHARE * screw(s).strength().tensileMpa(),
                    at.least(mount.flangeCircleMm()));
        }

        static void writeSlip(Subject s, Working w) {
            var mount = s.drive().mount();
            Tension.writePreload(s, w, screw(s).thread(), screw(s).strength());
            w.given("n_flange", mount.id() + ".flangeHoles", mount.flangeHoles(), "", "count");
            w.given("μ_j", Assumed.friction(s.kit()));
            w.given("k2", mount.flangeCircleMm());
            w.line(
                    "T_slip",
                    "n_flange·μ_j·F·k2/2000",
                    slipsNm(s, At.NOMINAL),
                    "N·m",
                    "friction under the screws, on their circle");
        }

        /// {@return force across all of the screws (N): the belt pulls motor and wheel together, and the joint between}
        private static double sideN(Subject s, At at, double motorNm) {
            return Tension.pullN(s, at, motorNm) + Tension.joltN(s, at);
        }

        /// {@return how far from the axle axis what holds it stands at most (mm)}
        private static double armMm(Subject s, At at) {
            return Math.max(at.most(s.drive().mount().flangeCircleMm()) / 2, HangerForm.armMm(s, at));
        }

        /// {@return torque that takes as much of the worst screw as wheel torque, jolt and pull together (N·m)}
        static double turningNm(Subject s, At at, double motorNm) {
            return FlangeGrip.withSideNm(MountLoad.turningNm(s, at, motorNm), sideN(s, at, motorNm), armMm(s, at));
        }

        /// Writes the lines up to M_screws.
        static void writeTurning(Subject s, Working w) {
            MountLoad.writeTurning(s, w);
            Tension.writePull(s, w);
            double worst = DrivePull.worstNm(s, At.NOMINAL);
            w.line("S", "P + F_jolt", sideN(s, At.NOMINAL, worst), "N", "straight across the screws");
            w.given("k2", s.drive().mount().flangeCircleMm());
            var arm = new StringBuilder("k2/2");
            if (HangerForm.pinned(s)) {
                w.given("r_pin", s.drive().mount().dowelArmMm());
                arm.append(", r_pin");
            }
            if (HangerForm.stopped(s)) {
                w.given("r_stop", s.drive().mount().stopArmMm());
                arm.append(", r_stop");
            }
            var written = HangerForm.given(s) ? "max(" + arm + ")" : arm.toString();
            w.line("r_S", written, armMm(s, At.NOMINAL), "mm", "what holds, furthest from the axle axis");
            w.line(
                    "M_screws",
                    "M_t + S·r_S/1000",
                    turningNm(s, At.NOMINAL, worst),
                    "N·m",
                    "as if it turned alone: the worst screw feels torque and pull in one direction");
        }

        static void writeShears(Subject s, Working w) {
            var mount = s.drive().mount();
            var screw = screw(s);
            w.given(
                    "A_t",
                    "stress area of thread " + screw.thread(),
                    screw.thread().stressAreaMm2(),
                    "mm²",
                    "ISO 898-1");
            w.given(
                    "R_m",
                    "tensile strength, class " + screw.strength(),
                    screw.strength().tensileMpa(),
                    "MPa",
                    "ISO 898-1");
            w.given("k_τ", "shear strength over tensile strength", SHEAR_SHARE, "", "textbooks, from memory");
            w.given("n_flange", mount.id() + ".flangeHoles", mount.flangeHoles(), "", "count");
            w.given("k2", mount.flangeCircleMm());
            w.line(
                    "T_joint",
                    "n_flange·k_τ·R_m·A_t·k2/2000",
                    shearsNm(s, At.NOMINAL),
                    "N·m",
                    "screws that bear in their holes shear off");
        }
    }

    /// Wheel torque and a jolting motor turn the mount about the axle.
    static final class Joint extends StrengthCheck {
        private final Mount.Fixing fixing;

        Joint(Mount.Fixing fixing) {
            super(
                    "hanger-joint-" + word(fixing),
                    fixing == Mount.Fixing.CLAMP ? "Clamp holds on the hanger" : "Flange holds on the hanger",
                    "N·m",
                    Scope.DRIVE,
                    "statics; friction, preload and its scatter: " + HABIT,
                    roles(fixing, Role.CONTROLLER, Role.WHEEL));
            this.fixing = fixing;
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().mount().fixing() == fixing;
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return fixing == Mount.Fixing.CLAMP ? "the clamp turns on the hanger" : "the flange turns on the hanger";
        }

        @Override
        WeakestLink.Kind kind(Subject s) {
            boolean form = byForm(s) || fixing == Mount.Fixing.CLAMP && !Clamp.round(s);
            return form ? WeakestLink.Kind.BREAKS : WeakestLink.Kind.SLIPS;
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return fixing == Mount.Fixing.FLANGE
                    ? Flange.turningNm(s, at, motorNm)
                    : MountLoad.turningNm(s, at, motorNm);
        }

        /// {@return what holds without pins or a stop (N·m)}
        private double aloneNm(Subject s, At at) {
            if (fixing == Mount.Fixing.FLANGE) {
                return Flange.slipsNm(s, at);
            }
            return Clamp.round(s) ? Clamp.slipsNm(s, at) : Clamp.formNm(s, at);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            double alone = aloneNm(s, at);
            return HangerForm.given(s) ? Math.max(alone, HangerForm.holdsNm(s, at)) : alone;
        }

        @Override
        void write(Subject s, Working w) {
            if (fixing == Mount.Fixing.FLANGE) {
                Flange.writeTurning(s, w);
                Flange.writeSlip(s, w);
            } else {
                MountLoad.writeTurning(s, w);
                if (Clamp.round(s)) {
                    Clamp.writeSlip(s, w);
                } else {
                    Clamp.writeForm(s, w);
                }
            }
            if (HangerForm.given(s)) {
                var alone = fixing == Mount.Fixing.CLAMP && !Clamp.round(s) ? "T_form" : "T_slip";
                HangerForm.write(s, w, alone, "T_holds", capacity(s, At.NOMINAL, 0), false);
            }
        }

        /// {@return whether pins or a stop hold more than what there is without them}
        private boolean byForm(Subject s) {
            return HangerForm.given(s) && HangerForm.holdsNm(s, At.NOMINAL) > aloneNm(s, At.NOMINAL);
        }

        @Override
        public String says(Subject s, Reading r) {
            boolean rectangular = fixing == Mount.Fixing.CLAMP && !Clamp.round(s);
            var how = byForm(s)
                    ? "held by " + (HangerForm.pinned(s) ? HangerForm.stopped(s) ? "pins or stop" : "pins" : "a stop")
                            + ", friction not added, "
                    : rectangular ? "held by form, " : "held by friction, ";
            var load = fixing == Mount.Fixing.FLANGE
                    ? " N·m; wheel torque, a jolt and the belt's pull take "
                    : " N·m; wheel torque and a jolt turn it with ";
            return how + r.capacityText() + load + r.demandText();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return fixing == Mount.Fixing.CLAMP
                    ? "more or larger clamp screws, a dry clamp without paint, or a stop or dowels against turning; never"
                            + " a screw tip pressed into the hanger"
                    : "more or larger flange screws, dowels or a stop, or a larger flange circle";
        }
    }

    /// A kerb strikes the motor at its outermost reach. A round clamp turns first, which is kinder than breaking; then
    /// no more than it holds reaches the plate.
    static final class Strike extends StrengthCheck {
        private final Mount.Fixing fixing;

        Strike(Mount.Fixing fixing) {
            super(
                    "hanger-strike-" + word(fixing),
                    "Mount stands a kerb against the motor",
                    "N·m",
                    Scope.DRIVE,
                    "statics; the load is a stated case, times the weight of board and rider: " + HABIT,
                    roles(fixing));
            this.fixing = fixing;
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().mount().fixing() == fixing;
        }

        @Override
        double motorNm(Subject s, At at) {
            return 0;
        }

        private boolean turns(Subject s) {
            return fixing == Mount.Fixing.CLAMP && Clamp.round(s) && !HangerForm.given(s);
        }

        /// {@return what gives without pins or a stop (N·m); nothing but the plate where a clamp turns}
        private double aloneNm(Subject s, At at) {
            return switch (fixing) {
                case FLANGE -> Flange.shearsNm(s, at);
                case CLAMP -> Clamp.round(s) ? Clamp.slipsNm(s, at) : Clamp.givesNm(s, at);
                case ONE_PIECE -> Double.POSITIVE_INFINITY;
            };
        }

        private double jointNm(Subject s, At at) {
            if (turns(s)) {
                return Double.POSITIVE_INFINITY;
            }
            double alone = aloneNm(s, at);
            return HangerForm.given(s) ? Math.max(alone, HangerForm.givesNm(s, at)) : alone;
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            double strike = MountLoad.strikeNm(s, at);
            return turns(s) ? Math.min(strike, Clamp.slipsNm(s, at.mirrored())) : strike;
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Math.min(MountLoad.plateNm(s, at), jointNm(s, at));
        }

        @Override
        void write(Subject s, Working w) {
            MountLoad.writeStrike(s, w);
            if (turns(s)) {
                Clamp.writeSlip(s, w);
                w.line(
                        "M_reach",
                        "min(M_strike, T_slip)",
                        demand(s, At.NOMINAL, 0),
                        "N·m",
                        "reaches the plate; at worst the clamp holds more before it turns");
            }
            double plate = MountLoad.writePlate(s, w);
            if (turns(s) || fixing == Mount.Fixing.ONE_PIECE) {
                w.line("T_gives", "T_plate", plate, "N·m", "what gives");
                return;
            }
            var joint = "T_joint";
            if (fixing == Mount.Fixing.FLANGE) {
                Flange.writeShears(s, w);
            } else if (Clamp.round(s)) {
                Clamp.writeSlip(s, w);
                joint = "T_slip";
            } else {
                Clamp.writeGives(s, w);
            }
            if (HangerForm.given(s)) {
                HangerForm.write(s, w, joint, "T_holds", jointNm(s, At.NOMINAL), true);
                joint = "T_holds";
            }
            w.line("T_gives", "min(T_plate, " + joint + ")", capacity(s, At.NOMINAL, 0), "N·m", "what gives first");
        }

        @Override
        public String says(Subject s, Reading r) {
            double strike = MountLoad.strikeNm(s, At.NOMINAL);
            var gives = MountLoad.plateNm(s, At.NOMINAL) <= jointNm(s, At.NOMINAL) ? "the plate bends" : breaks(s);
            if (turns(s) && r.demand() < strike && r.demand() <= r.capacity()) {
                return "the clamp turns at " + r.demandText() + " N·m, before " + gives + " at " + r.capacityText()
                        + ": kinder than breaking; set angle and belt anew after a strike";
            }
            return gives + " at " + r.capacityText() + " N·m; a kerb strikes with " + r.demandText();
        }

        private String breaks(Subject s) {
            if (HangerForm.given(s) && HangerForm.givesNm(s, At.NOMINAL) > aloneNm(s, At.NOMINAL)) {
                return "what keeps it from turning gives";
            }
            return switch (fixing) {
                case FLANGE -> "the flange screws shear";
                case CLAMP -> Clamp.round(s) ? "the clamp turns" : "the clamp opens";
                case ONE_PIECE -> "it breaks";
            };
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a higher mount angle or a smaller motor that no kerb reaches, a guard, or a thicker plate; look the"
                    + " mount over after every strike and bend nothing back";
        }
    }
}
