package beltwright.check;

import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.layout.LayoutSolver;
import beltwright.power.RoadLoad;
import beltwright.quantity.Range;
import beltwright.strength.Axle;
import beltwright.strength.Tightening;

/// What presses, tips and pulls one end of the axle: the wheel's share of the weight at the middle of the tread, a side
/// force in a corner at the tread's radius, and the belt's pull towards the motor at its own station.
///
///     W = m·g·q/100/2        landing: k·W        corner: W and a couple ±c·W·D/2        belt: P at the angle β
///
/// The side force of a corner tips the wheel of one side up and that of the other down. Rider and board lean, so both
/// wheels keep their load. A belt on a pulley beside the hanger can lift what the wheel presses: where that is so, more
/// pull or more weight is not worse. So the worst is sought over both limits of either, and over both limits of where
/// bearings, tread and belt stand: loads are linear in these and in one over the distance of the bearings, so nothing
/// between the limits is worse. The best leaves those stations at nominal and is never above the nominal.
///
/// - Source: statics.
/// - Neglects: the push along the road, which the motor makes and which is less than the belt's pull.
final class AxleLoad {
    /// What the wheel does.
    enum Case {
        LANDING("landing"),
        TIPPED_UP("in a corner that tips the wheel up"),
        TIPPED_DOWN("in a corner that tips the wheel down"),
        RIDING("riding");

        private final String words;

        Case(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// All there is on the wheel, at one end of its limits.
    private record Wheel(double weightN, double landing, double coupleNm) {
        static Wheel of(Subject s, At at) {
            double weight = AxleLoad.weightN(s, at);
            return new Wheel(
                    weight,
                    at.most(Assumed.landing(s.kit())),
                    at.most(Assumed.cornering(s.kit()))
                            * weight
                            * at.most(s.end().wheel().diameterMm())
                            / 2000);
        }

        double upN(Case load) {
            return load == Case.LANDING ? landing * weightN : weightN;
        }

        double coupleNm(Case load) {
            return switch (load) {
                case TIPPED_UP -> coupleNm;
                case TIPPED_DOWN -> -coupleNm;
                default -> 0;
            };
        }
    }

    private final At at;
    private final boolean belted;
    private final Wheel wheel;
    private final Wheel otherWheel;
    private final double pullN;
    private final double otherPullN;
    private final Ends inner;
    private final Ends span;
    private final Ends tread;
    private final Ends belt;
    private final double sinFrom;
    private final double sinTo;

    /// The two ends of a station's limits, where the worst is sought; twice the nominal elsewhere.
    private record Ends(double fromMm, double toMm) {
        static final Ends NONE = new Ends(0, 0);

        static Ends of(At at, Range r) {
            return at == At.WORST ? new Ends(r.low(), r.high()) : new Ends(r.nominal(), r.nominal());
        }

        double mm(int end) {
            return end == 0 ? fromMm : toMm;
        }

        int count() {
            return fromMm == toMm ? 1 : 2;
        }
    }

    /// @param motorNm torque of the motor; without meaning where no belt is asked for
    AxleLoad(Subject s, At at, double motorNm) {
        this.at = at;
        belted = belted(s);
        var other = at == At.WORST ? At.BEST : At.NOMINAL;
        wheel = Wheel.of(s, at);
        otherWheel = belted ? Wheel.of(s, other) : wheel;
        inner = Ends.of(at, inner(s));
        span = Ends.of(at, LayoutSolver.bearingSpanMm(s.end()));
        tread = Ends.of(at, LayoutSolver.treadFromBearingMm(s.end()));
        if (belted) {
            pullN = Tension.pullN(s, at, motorNm);
            otherPullN = at == At.NOMINAL ? pullN : Tension.pullN(s, other, DrivePull.worstNm(s, other));
            belt = Ends.of(at, LayoutSolver.beltFromBearingMm(s.drive()));
            var above = s.drive().placement().aboveAxleDeg();
            sinFrom = Math.sin(Math.toRadians(at == At.NOMINAL ? above.nominal() : above.lower()));
            sinTo = Math.sin(Math.toRadians(at == At.NOMINAL ? above.nominal() : above.upper()));
        } else {
            pullN = 0;
            otherPullN = 0;
            belt = Ends.NONE;
            sinFrom = 0;
            sinTo = 0;
        }
    }

    static boolean belted(Subject s) {
        return s.scope() == Scope.DRIVE;
    }

    /// {@return whether no belt turns the wheel at this end}
    static boolean undriven(Subject s) {
        return s.kit().drives().stream().noneMatch(d -> d.side() == s.side());
    }

    /// {@return weight on one wheel (N)}
    static double weightN(Subject s, At at) {
        return at.most(s.kit().task().allUpMassKg()) * RoadLoad.G * at.most(Assumed.axleShare(s.kit())) / 200;
    }

    /// {@return side force on the wheel in a corner (N)}
    static double sideN(Subject s, At at) {
        return at.most(Assumed.cornering(s.kit())) * weightN(s, at);
    }

    private static Range tread(Subject s) {
        return s.endAt().coreMiddleMm().plus(s.end().wheel().coreOffsetMm());
    }

    /// {@return middle of the inner bearing from the end face (mm)}
    static Range inner(Subject s) {
        return s.endAt()
                .ringOuterMm()
                .plus(Range.of(s.end().innerBearing().widthMm()).times(0.5));
    }

    /// {@return middle of the outer bearing from the end face (mm)}
    private static Range outer(Subject s) {
        return s.endAt()
                .innerBearingOuterMm()
                .plus(s.end().coreSpacer().lengthMm())
                .plus(Range.of(s.end().outerBearing().widthMm()).times(0.5));
    }

    /// {@return tension of the axle (N) by its nut, the more the worse}
    static double nutN(Subject s, At at) {
        var thread = s.kit().hanger().axleThread();
        double scatter = Assumed.scatter(s.kit()).upper() / 100;
        double factor = switch (at) {
            case WORST -> 1 + scatter;
            case NOMINAL -> s.kit().chance().tightened(new SeatName(s.side(), Role.AXLE_NUT));
            case BEST -> 1 - scatter;
        };
        return factor
                * Tightening.preloadByTorqueN(
                        thread, Tightening.axleNutNm(thread), Tightening.FRICTION, Tightening.nutFrictionMm(thread));
    }

    /// {@return bending (N·m) at a section of the axle, whose station counts from the end face (mm)}
    double bendingNm(Range sectionMm, Case load) {
        return bending(beyondBearing(sectionMm), load);
    }

    /// {@return bending (N·m) at the inner bearing, wherever it sits}
    double bendingAtBearingNm(Case load) {
        return bending(Ends.NONE, load);
    }

    /// {@return bending (N·m) at a section by the wheel alone, without a sign}
    double wheelNm(Range sectionMm, Case load) {
        var section = beyondBearing(sectionMm);
        double most = 0;
        for (int i = 0; i < section.count(); i++) {
            for (int k = 0; k < span.count(); k++) {
                for (int t = 0; t < tread.count(); t++) {
                    most = Math.max(most, Math.abs(upNm(section.mm(i), load, wheel, tread.mm(t), span.mm(k))));
                }
            }
        }
        return most;
    }

    /// {@return stations of a section beyond the inner bearing}
    private Ends beyondBearing(Range sectionMm) {
        var y = Ends.of(at, sectionMm);
        return new Ends(y.fromMm() - inner.toMm(), y.toMm() - inner.fromMm());
    }

    private double bending(Ends section, Case load) {
        var worst = new Joined();
        for (int i = 0; i < section.count(); i++) {
            double x = section.mm(i);
            for (int k = 0; k < span.count(); k++) {
                double between = span.mm(k);
                for (int t = 0; t < tread.count(); t++) {
                    worst.up(upNm(x, load, wheel, tread.mm(t), between));
                    if (belted) {
                        worst.up(upNm(x, load, otherWheel, tread.mm(t), between));
                    }
                }
                for (int b = 0; b < belt.count(); b++) {
                    double perN = momentNm(x, 1, outerN(1, 0, belt.mm(b), between), between);
                    worst.pull(perN * pullN);
                    worst.pull(perN * otherPullN);
                }
                worst.join();
            }
        }
        return worst.root();
    }

    /// {@return radial load (N) of one of the two bearings}
    double bearingN(boolean outer, Case load) {
        var worst = new Joined();
        for (int k = 0; k < span.count(); k++) {
            double between = span.mm(k);
            for (int t = 0; t < tread.count(); t++) {
                worst.up(upN(outer, load, wheel, tread.mm(t), between));
                if (belted) {
                    worst.up(upN(outer, load, otherWheel, tread.mm(t), between));
                }
            }
            for (int b = 0; b < belt.count(); b++) {
                double perN = outerN(1, 0, belt.mm(b), between);
                perN = outer ? perN : 1 - perN;
                worst.pull(perN * pullN);
                worst.pull(perN * otherPullN);
            }
            worst.join();
        }
        return worst.root();
    }

    /// What the outer bearing takes (N) of a force and a couple on the wheel.
    private static double outerN(double forceN, double coupleNm, double atMm, double spanMm) {
        return Axle.outerN(forceN, atMm, 0, spanMm) + Axle.coupleN(coupleNm, 0, spanMm);
    }

    /// Bending (N·m) at a section so far beyond the inner bearing.
    private static double momentNm(double sectionMm, double forceN, double outerN, double spanMm) {
        return ((forceN - outerN) * Math.max(0, -sectionMm) + outerN * Math.max(0, spanMm - sectionMm)) / 1000;
    }

    private static double upNm(double sectionMm, Case load, Wheel by, double treadMm, double spanMm) {
        return momentNm(sectionMm, by.upN(load), outerN(by.upN(load), by.coupleNm(load), treadMm, spanMm), spanMm);
    }

    private static double upN(boolean outer, Case load, Wheel by, double treadMm, double spanMm) {
        double taken = outerN(by.upN(load), by.coupleNm(load), treadMm, spanMm);
        return outer ? taken : by.upN(load) - taken;
    }

    /// What decides of wheel and belt together, over both ends of either. The length of a vector has no peak between
    /// two ends, so the greatest and the least of each are enough.
    private final class Joined {
        private double upLeast = Double.POSITIVE_INFINITY;
        private double upMost = Double.NEGATIVE_INFINITY;
        private double pullLeast = Double.POSITIVE_INFINITY;
        private double pullMost = Double.NEGATIVE_INFINITY;
        private double square = at == At.BEST ? Double.POSITIVE_INFINITY : 0;

        void up(double up) {
            upLeast = Math.min(upLeast, up);
            upMost = Math.max(upMost, up);
        }

        void pull(double pull) {
            pullLeast = Math.min(pullLeast, pull);
            pullMost = Math.max(pullMost, pull);
        }

        /// These were the ends at one place of section and bearings.
        void join() {
            decided(squared(upLeast, pullLeast));
            decided(squared(upLeast, pullMost));
            decided(squared(upMost, pullLeast));
            decided(squared(upMost, pullMost));
            upLeast = Double.POSITIVE_INFINITY;
            upMost = Double.NEGATIVE_INFINITY;
            pullLeast = Double.POSITIVE_INFINITY;
            pullMost = Double.NEGATIVE_INFINITY;
        }

        private void decided(double other) {
            square = at == At.BEST ? Math.min(square, other) : Math.max(square, other);
        }

        double root() {
            return Math.sqrt(square);
        }

        /// The belt pulls at a right angle to what is up only where the motor is level with the axle.
        private double squared(double up, double pull) {
            double sin = up * pull >= 0 == (at != At.BEST) ? sinTo : sinFrom;
            double along = up + pull * sin;
            return along * along + pull * pull * (1 - sin * sin);
        }
    }

    /// Writes the lines up to what is on the wheel in this case: F_w up, and the couple M_s; and what the bearings
    /// take.
    static void write(Subject s, Working w, Case load) {
        w.given("m", s.kit().task().allUpMassKg());
        w.given("q", Assumed.axleShare(s.kit()));
        w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
        w.line("W", "m·g·q/100/2", weightN(s, At.NOMINAL), "N", "weight on one wheel");
        var wheel = Wheel.of(s, At.NOMINAL);
        if (load == Case.LANDING) {
            w.given("k_land", Assumed.landing(s.kit()));
            w.line("F_w", "k_land·W", wheel.upN(load), "N", "on the wheel as it lands");
        } else {
            w.line("F_w", "W", wheel.upN(load), "N", "on the wheel");
        }
        if (load == Case.TIPPED_UP || load == Case.TIPPED_DOWN) {
            w.given("k_side", Assumed.cornering(s.kit()));
            w.line("F_s", "k_side·W", sideN(s, At.NOMINAL), "N", "side force at the tread");
            w.given("D_wheel", s.end().wheel().diameterMm());
            w.line(
                    "M_s",
                    (load == Case.TIPPED_UP ? "" : "−") + "F_s·D_wheel/2000",
                    wheel.coupleNm(load),
                    "N·m",
                    "tips the wheel");
        } else {
            w.given("M_s", "no side force here", 0, "N·m", "statics");
        }
        w.given("y_w", "middle of the tread from the end face", tread(s), "layout");
        w.given("y_1", "middle of the inner bearing from the end face", inner(s), "layout");
        w.given("y_2", "middle of the outer bearing from the end face", outer(s), "layout");
        var nominal = new AxleLoad(s, At.NOMINAL, 0);
        w.line(
                "R_2",
                "(F_w·(y_w − y_1) + 1000·M_s)/(y_2 − y_1)",
                nominal.upN(true, load),
                "N",
                "up, by the outer bearing");
        w.line("R_1", "F_w − R_2", nominal.upN(false, load), "N", "up, by the inner bearing");
    }

    /// Writes the lines of the belt's pull on the two bearings, along its own direction.
    void writeBelt(Subject s, Working w) {
        if (!belted) {
            return;
        }
        Tension.writePull(s, w);
        w.given("β", s.drive().placement().aboveAxleDeg());
        w.given("y_b", "middle of the belt from the end face", s.at().wheelRimMiddleMm(), "layout");
        w.line(
                "B_2",
                "P·(y_b − y_1)/(y_2 − y_1)",
                outerN(pullN, 0, belt.fromMm(), span.fromMm()),
                "N",
                "towards the motor, by the outer bearing");
        w.line(
                "B_1",
                "P − B_2",
                pullN - outerN(pullN, 0, belt.fromMm(), span.fromMm()),
                "N",
                "towards the motor, by the inner bearing");
    }

    /// Writes the lines up to the bending M_x at the section y, this load being at nominal.
    void writeBending(Working w, double sectionMm, Case load) {
        double x = sectionMm - inner.fromMm();
        var up = upNm(x, load, wheel, tread.fromMm(), span.fromMm());
        w.line("M_up", "(R_1·max(0, y_1 − y) + R_2·max(0, y_2 − y))/1000", up, "N·m", "bending by the wheel");
        double all = bending(new Ends(x, x), load);
        if (!belted) {
            w.line("M_x", "abs(M_up)", all, "N·m", "bending of the axle");
            return;
        }
        w.line(
                "M_b",
                "(B_1·max(0, y_1 − y) + B_2·max(0, y_2 − y))/1000",
                momentNm(x, pullN, outerN(pullN, 0, belt.fromMm(), span.fromMm()), span.fromMm()),
                "N·m",
                "bending by the belt");
        w.line("M_x", "√((M_up + M_b·sin(β·π/180))^2 + (M_b·cos(β·π/180))^2)", all, "N·m", "both, as vectors");
    }

    private double upN(boolean outer, Case load) {
        return upN(outer, load, wheel, tread.fromMm(), span.fromMm());
    }

    /// Writes the line of what a bearing bears, F_r.
    void writeBearing(Working w, boolean outer, Case load) {
        var r = outer ? "R_2" : "R_1";
        var b = outer ? "B_2" : "B_1";
        w.line(
                "F_r",
                belted ? "√((" + r + " + " + b + "·sin(β·π/180))^2 + (" + b + "·cos(β·π/180))^2)" : "abs(" + r + ")",
                bearingN(outer, load),
                "N",
                (outer ? "outer" : "inner") + " bearing, the worse off");
    }

    /// Writes the tension F_n of the axle by its nut.
    static void writeNut(Subject s, Working w) {
        var thread = s.kit().hanger().axleThread();
        w.given("d_s", "thread " + thread, thread.majorMm(), "mm", "ISO 261");
        w.given("p_s", "its pitch", thread.pitchMm(), "mm", "ISO 261");
        double torque = w.given(
                "M_n",
                "tightening torque of the axle nut",
                Tightening.axleNutNm(thread),
                "N·m",
                "common practice, no source; as the guide says");
        if (Double.isNaN(torque)) {
            w.needs("a tightening torque for an axle nut " + thread);
        }
        w.given("μ_s", "friction of thread and nut", Tightening.FRICTION, "", "common practice, no source");
        w.given("D_k", "mean friction diameter under the nut", Tightening.nutFrictionMm(thread), "mm", "hexagon");
        w.line(
                "F_n",
                "1000·M_n/(0.159·p_s + 0.577·μ_s·(d_s − 0.649519·p_s) + μ_s·D_k/2)",
                nutN(s, At.NOMINAL),
                "N",
                "tension of the axle by its nut, VDI 2230-1");
        w.given("s_F", Assumed.scatter(s.kit()));
    }
}
