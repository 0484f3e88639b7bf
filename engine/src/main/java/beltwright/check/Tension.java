package beltwright.check;

import beltwright.belt.SpanFrequency;
import beltwright.belt.SpanTension;
import beltwright.kit.JumpTests;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.part.HungWeights;
import beltwright.part.PropertyClass;
import beltwright.part.Thread;
import beltwright.power.RoadLoad;
import beltwright.strength.FrictionGrip;
import beltwright.strength.StaticBearing;
import beltwright.strength.Tightening;

/// How tight a belt must be and may be at rest, and how it then pulls on both shafts.
///
///     T_least = 0.55·Te, or max(T_jump, T_taut) by the workshop's own jump tests at 1.25 times the torque
///     T_taut = 1.05·Te/2
///     pull on a shaft = max(2·T, Te)
///
/// While the slack side is taut and the centres stand still, the two sides share: tight side less slack side is Te,
/// their sum stays 2·T. Both spans are taken as parallel, which makes the pull a little too large.
///
/// - Source: half of the 1.1 that a belt maker's technical manual, p. 44, asks of the shaft force. That it keeps teeth
///   from jumping is habit, without a published torque: the workshop's own jump tests come first. They may take the
///   habit down to where the slack span is just taut, and no lower: below that the sums above no longer hold.
final class Tension {
    /// How much more torque than the worst the belt must stand without a jump, where jump tests tell. Habit.
    static final double JUMP_MARGIN = 1.25;

    private Tension() {}

    /// What ends the band below.
    enum Floor {
        HABIT("habit, 0.55 of the worst pull"),
        JUMPS("the jump tests"),
        TAUT("the slack span, which must stay taut");

        private final String words;

        Floor(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// {@return least tension at rest (N) at this torque; NaN where the jump tests do not reach so far}
    static double leastN(Subject s, double motorNm) {
        double effectiveN = DrivePull.effectiveN(s, motorNm);
        return JumpTests.tell(s.drive().placement().jumpTests())
                ? Math.max(jumpN(s, motorNm), SpanTension.tautN(effectiveN))
                : SpanTension.leastN(effectiveN);
    }

    /// {@return least tension at rest (N) by the jump tests alone}
    private static double jumpN(Subject s, double motorNm) {
        return JumpTests.parse(s.drive().placement().jumpTests()).tensionN(JUMP_MARGIN * motorNm);
    }

    /// {@return what sets that least}
    static Floor floor(Subject s, double motorNm) {
        if (!JumpTests.tell(s.drive().placement().jumpTests())) {
            return Floor.HABIT;
        }
        return jumpN(s, motorNm) < SpanTension.tautN(DrivePull.effectiveN(s, motorNm)) ? Floor.TAUT : Floor.JUMPS;
    }

    /// {@return torque (N·m) up to which this tension at rest (N) is enough, where jump tests tell; NaN outside of
    /// them}
    static double enoughForNm(Subject s, double tensionN) {
        double jump = JumpTests.parse(s.drive().placement().jumpTests()).torqueNm(tensionN) / JUMP_MARGIN;
        return Math.min(jump, tensionN / SpanTension.tautN(DrivePull.effectiveN(s, 1)));
    }

    /// {@return tension at rest (N) that the drive is set to: as typed, else with a reserve for the first hours}
    static double setN(Subject s, At at) {
        if (!Double.isNaN(s.restN())) {
            return s.restN();
        }
        var typed = s.drive().placement().tensionN();
        return typed.known() ? at.most(typed) : SpanTension.FRESH * leastN(s, DrivePull.worstNm(s, at));
    }

    /// {@return how the tension of the free span is heard}
    static Tone tone(Subject s) {
        double span = s.at().spanMm();
        var hung = s.drive().belt().hungWeights();
        if (!HungWeights.tell(hung)) {
            return new Tone(SpanFrequency.factor(s.drive().belt().massGPerM().nominal() / 1000, span), 0);
        }
        var tried = HungWeights.parse(hung);
        var fit = SpanFrequency.fit(
                tried.readings().stream()
                        .mapToDouble(HungWeights.Reading::tensionN)
                        .toArray(),
                tried.readings().stream()
                        .mapToDouble(HungWeights.Reading::frequencyHz)
                        .toArray());
        double share = span / tried.spanMm();
        return new Tone(fit.factor() * share * share, fit.offsetN() / (share * share));
    }

    /// T = k·f² − T_0.
    ///
    /// @param factor k (N/Hz²)
    /// @param offsetN T_0, by how much the string alone would read high (N)
    record Tone(double factor, double offsetN) {
        double frequencyHz(double tensionN) {
            return Math.sqrt((tensionN + offsetN) / factor);
        }
    }

    /// {@return pull of both spans on either shaft (N)}
    static double pullN(Subject s, At at, double motorNm) {
        return Math.max(2 * setN(s, at), DrivePull.effectiveN(s, motorNm));
    }

    /// {@return force (N) that the screws in the slots hold against sliding}
    static double slotHoldsN(Subject s, At at) {
        var screw = s.drive().motorScrew();
        return FrictionGrip.slipN(
                s.drive().mount().slots(),
                preloadN(s, at, Role.MOTOR_SCREWS, screw.thread(), screw.strength()),
                at.least(Assumed.friction(s.kit())),
                1);
    }

    /// {@return preload of one screw (N), the less the worse}
    ///
    /// @param screws the seat that it sits in: a drawn kit has them all tightened alike
    static double preloadN(Subject s, At at, Role screws, Thread thread, PropertyClass strength) {
        double share = Assumed.scatter(s.kit()).upper() / 100;
        double aimed = Tightening.preloadN(thread, strength);
        return switch (at) {
            case WORST -> FrictionGrip.lowestN(aimed, share);
            case NOMINAL -> aimed * s.kit().chance().tightened(new SeatName(s.side(), screws));
            case BEST -> FrictionGrip.highestN(aimed, share);
        };
    }

    /// {@return preload of one screw (N), the more the worse}
    static double tightestN(Subject s, At at, Role screws, Thread thread, PropertyClass strength) {
        return preloadN(s, at.mirrored(), screws, thread, strength);
    }

    /// {@return highest preload of one screw (N) that its way of tightening makes}
    static double highestN(Subject s, At at, Thread thread, PropertyClass strength) {
        return FrictionGrip.highestN(Tightening.preloadN(thread, strength), at.most(Assumed.scatter(s.kit())) / 100);
    }

    /// {@return what the motor weighs in a jolt (N)}
    static double joltN(Subject s, At at) {
        return at.most(Assumed.jolt(s.kit()))
                * at.most(s.drive().motor().label().massKg())
                * RoadLoad.G;
    }

    /// {@return most tension at rest (N) that the slots hold against belt and a jolting motor}
    static double bySlotsN(Subject s, At at) {
        return (slotHoldsN(s, at) - joltN(s, at)) / 2;
    }

    /// {@return load of the motor's front bearing over the pull at its pulley (1): the pulley hangs over}
    static double overhang(Subject s, At at) {
        var motor = s.drive().motor();
        double out = at.most(s.at().driveRimMiddleMm().minus(s.at().plateInnerMm()));
        return StaticBearing.frontN(1, out + at.most(motor.frontBearingMm()), at.least(motor.bearingSpanMm()));
    }

    /// Writes the lines up to the least tension T_least.
    static void writeLeast(Subject s, Working w) {
        DrivePull.writeTension(s, w);
        var typed = s.drive().placement().jumpTests();
        double torque = DrivePull.worstNm(s, At.NOMINAL);
        if (JumpTests.tell(typed)) {
            var tests = JumpTests.parse(typed);
            w.given("k_jump", "torque to stand over the worst", JUMP_MARGIN, "", "habit");
            w.given(
                    "T_jump",
                    "tension at rest at which a tooth jumps at k_jump·M",
                    jumpN(s, torque),
                    "N",
                    "line through " + tests + ", taken down to the lowest");
            w.given(
                    "k_taut",
                    "tension to keep over half of the worst pull",
                    SpanTension.TAUT,
                    "",
                    "five readings may lie so far apart, habit");
            w.line(
                    "T_taut",
                    "k_taut·Te/2",
                    SpanTension.tautN(DrivePull.effectiveN(s, torque)),
                    "N",
                    "the slack span, T − Te/2, is taut from here on");
            w.line("T_least", "max(T_jump, T_taut)", leastN(s, torque), "N", "ended by " + floor(s, torque));
            if (Double.isNaN(leastN(s, torque))) {
                w.needs("a jump test at a higher tension");
            }
        } else {
            w.given(
                    "share",
                    "static tension as a share of the worst pull",
                    SpanTension.STATIC_SHARE,
                    "",
                    "a belt maker's technical manual, p. 44: half of 1.1 times the effective force");
            w.line(
                    "T_least",
                    "share·Te",
                    leastN(s, torque),
                    "N",
                    "least tension of each span at rest; the slack span is taut from Te/2 on");
        }
    }

    /// Writes the lines up to the tension at rest T.
    static double writeSet(Subject s, Working w) {
        writeLeast(s, w);
        var typed = s.drive().placement().tensionN();
        if (typed.known()) {
            return w.given("T", typed).nominal();
        }
        w.given(
                "k_fresh",
                "new belt over the least",
                SpanTension.FRESH,
                "",
                "it gives some up in its first hours, common practice, no source");
        return w.line("T", "k_fresh·T_least", setN(s, At.NOMINAL), "N", "tension of each span at rest");
    }

    /// Writes the lines up to the pull of both spans P on either shaft.
    static void writePull(Subject s, Working w) {
        writeSet(s, w);
        w.line(
                "P",
                "max(2·T, Te)",
                pullN(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                "N",
                "pull of both spans on either shaft");
    }

    /// Writes the lines up to F_hold, what the slots hold.
    static void writeSlots(Subject s, Working w) {
        var screw = s.drive().motorScrew();
        writePreload(s, w, screw.thread(), screw.strength());
        w.given("n_s", s.drive().mount().id() + ".slots", s.drive().mount().slots(), "", "count");
        w.given("μ_j", Assumed.friction(s.kit()));
        w.line("F_hold", "n_s·μ_j·F", slotHoldsN(s, At.NOMINAL), "N", "one face that rubs");
    }

    /// Writes the lines up to the preload F of one screw.
    static void writePreload(Subject s, Working w, Thread thread, PropertyClass strength) {
        w.given("d_s", "thread " + thread, thread.majorMm(), "mm", "ISO 261");
        w.given("p_s", "its pitch", thread.pitchMm(), "mm", "ISO 261");
        w.line("A_t", "π/4·(d_s − 0.938194·p_s)^2", thread.stressAreaMm2(), "mm²", "stress area, ISO 898-1");
        w.given("S_p", "proof strength, class " + strength, strength.proofMpa(), "MPa", "ISO 898-1");
        w.given(
                "k_p",
                "share of proof strength aimed at",
                Tightening.PROOF_SHARE,
                "",
                "common practice, no source; the guide's torque table aims there");
        w.line("F", "k_p·S_p·A_t", Tightening.preloadN(thread, strength), "N", "preload of one screw");
        w.given("s_F", Assumed.scatter(s.kit()));
    }

    /// Writes the jolt of the motor F_jolt.
    static void writeJolt(Subject s, Working w) {
        w.given("k_jolt", Assumed.jolt(s.kit()));
        w.given("m_motor", s.drive().motor().label().massKg());
        w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
        w.line("F_jolt", "k_jolt·m_motor·g", joltN(s, At.NOMINAL), "N", "the motor's own mass in a jolt");
    }
}
