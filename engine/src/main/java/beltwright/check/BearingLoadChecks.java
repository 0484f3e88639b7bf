package beltwright.check;

import beltwright.check.AxleLoad.Case;
import beltwright.kit.Role;
import beltwright.part.Bearing;
import beltwright.part.BearingSize;
import beltwright.quantity.Dimension;
import beltwright.strength.BearingLife;
import beltwright.strength.StaticBearing;
import java.util.List;
import java.util.Optional;

/// Do the bearings of wheel and motor last, and do they stand a landing, a corner and a jolt without dents?
final class BearingLoadChecks {
    private static final String CATALOGUE = "as rolling-bearing general catalogues print it";

    private BearingLoadChecks() {}

    static List<Check> all() {
        return List.of(
                new WheelLife("wheel-bearing-life", "Wheel bearings last", Scope.DRIVE, Wheel.BELTED),
                new WheelLife("undriven-bearing-life", "Undriven wheel's bearings last", Scope.END, Wheel.ALONE),
                new WheelStatic("wheel-bearing-static", "Wheel bearings stand a landing", Scope.DRIVE, Wheel.BELTED),
                new WheelStatic(
                        "undriven-bearing-static", "Undriven wheel's bearings stand a landing", Scope.END, Wheel.ALONE),
                new MotorLife(),
                new MotorStatic());
    }

    /// What both questions of a wheel's two bearings share.
    private static final class Wheel {
        static final Role[] BELTED = {
            Role.INNER_BEARING,
            Role.OUTER_BEARING,
            Role.WHEEL,
            Role.WHEEL_PULLEY,
            Role.CORE_SPACER,
            Role.DRIVE_PULLEY,
            Role.MOTOR,
            Role.CONTROLLER
        };
        static final Role[] ALONE = {Role.INNER_BEARING, Role.OUTER_BEARING, Role.WHEEL, Role.CORE_SPACER};

        private Wheel() {}

        static boolean asked(Subject s) {
            return AxleLoad.belted(s) || AxleLoad.undriven(s);
        }

        static Bearing of(Subject s, boolean outer) {
            return outer ? s.end().outerBearing() : s.end().innerBearing();
        }

        private static Optional<BearingSize> size(Bearing b) {
            return BearingSize.of(
                    b.boreMm().nominal(), b.outsideMm().nominal(), b.widthMm().nominal());
        }

        /// {@return C (N): what the part says, else the lowest that a catalogue prints for its size}
        static double ratedN(Bearing b, At at) {
            return b.ratedN().known()
                    ? at.least(b.ratedN())
                    : size(b).map(BearingSize::ratedN).orElse(Double.NaN);
        }

        /// {@return C0 (N), likewise}
        static double staticN(Bearing b, At at) {
            return b.staticN().known()
                    ? at.least(b.staticN())
                    : size(b).map(BearingSize::staticN).orElse(Double.NaN);
        }

        static void writeRating(Working w, String symbol, Bearing b, Dimension said, double rating) {
            if (said.known()) {
                w.given(symbol, said);
                return;
            }
            w.given(
                    symbol,
                    "rating of a bearing " + size(b).map(BearingSize::toString).orElse("of no standard size"),
                    rating,
                    "N",
                    size(b).map(BearingSize::ratingSource).orElse("no catalogue"));
            if (Double.isNaN(rating)) {
                w.needs(said.of());
            }
        }
    }

    /// Both bearings of a wheel last as far as is asked.
    ///
    ///     km = (C/(V·F_r))³·π·D
    static final class WheelLife extends StrengthCheck {
        /// V where the outer ring turns.
        private static final double OUTER_TURNS = 1.2;

        WheelLife(String slug, String name, Scope scope, Role... about) {
            super(
                    slug,
                    name,
                    "km",
                    scope,
                    "ISO 281, " + CATALOGUE + "; V as in Jindal, machine design, ch. 18; water and grit end most first",
                    about);
            if (scope == Scope.DRIVE) {
                placed();
            }
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.WHEEL_BEARINGS;
        }

        @Override
        public boolean applies(Subject s) {
            return Wheel.asked(s);
        }

        @Override
        boolean torqued() {
            return false; // a belt is set as tight as the worst torque asks and stays so
        }

        @Override
        String gives() {
            return "the wheel's bearings wear out too soon";
        }

        private static double turns(Subject s, At at, AxleLoad load, boolean outer) {
            double equivalent = BearingLife.equivalentN(load.bearingN(outer, Case.RIDING), 0, OUTER_TURNS, 1, 0);
            return BearingLife.millionTurns(Wheel.ratedN(Wheel.of(s, outer), at), equivalent);
        }

        private static double km(Subject s, At at, AxleLoad load, boolean outer) {
            return StaticBearing.lifeKm(
                    turns(s, at, load, outer), at.least(s.end().wheel().wornDiameterMm()));
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return at.most(Assumed.life(s.kit()));
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            var load = new AxleLoad(s, at, motorNm);
            return Math.min(km(s, at, load, false), km(s, at, load, true));
        }

        @Override
        void write(Subject s, Working w) {
            var load = new AxleLoad(s, At.NOMINAL, motorNm(s, At.NOMINAL));
            boolean outer = km(s, At.NOMINAL, load, true) < km(s, At.NOMINAL, load, false);
            AxleLoad.write(s, w, Case.RIDING);
            load.writeBelt(s, w);
            load.writeBearing(w, outer, Case.RIDING);
            var bearing = Wheel.of(s, outer);
            Wheel.writeRating(w, "C", bearing, bearing.ratedN(), Wheel.ratedN(bearing, At.NOMINAL));
            w.given("V", "factor where the outer ring turns", OUTER_TURNS, "", "Jindal, ch. 18");
            w.line(
                    "L10",
                    "(C/(V·F_r))^3",
                    turns(s, At.NOMINAL, load, outer),
                    "",
                    "millions of turns, nine of ten last");
            w.given("D_worn", s.end().wheel().wornDiameterMm());
            w.line("L_km", "L10·π·D_worn", capacity(s, At.NOMINAL, motorNm(s, At.NOMINAL)), "km", "as far it rolls");
            w.given("L_asked", Assumed.life(s.kit()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a bearing of higher rating, a belt nearer the wheel's middle, or bearings changed sooner; turn the wheel "
                    + "by hand now and then: a rough bearing is a worn one";
        }
    }

    /// Neither bearing of a wheel is dented by a landing or a corner.
    ///
    ///     P_0 = max(F_r, 0.6·F_r + 0.5·F_a)
    static final class WheelStatic extends StrengthCheck {
        private static final Case[] CASES = {Case.LANDING, Case.TIPPED_UP, Case.TIPPED_DOWN};

        WheelStatic(String slug, String name, Scope scope, Role... about) {
            super(slug, name, "N", scope, "ISO 76, " + CATALOGUE + "; loads: common practice, no source", about);
            if (scope == Scope.DRIVE) {
                placed();
            }
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.WHEEL_BEARINGS;
        }

        @Override
        public boolean applies(Subject s) {
            return Wheel.asked(s);
        }

        private static double equivalentN(Subject s, At at, AxleLoad load, boolean outer, Case of) {
            double axial = of == Case.LANDING ? 0 : AxleLoad.sideN(s, at);
            return StaticBearing.equivalentN(load.bearingN(outer, of), axial);
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            var load = new AxleLoad(s, at, motorNm);
            double most = 0;
            for (var of : CASES) {
                most = Math.max(most, equivalentN(s, at, load, false, of));
                most = Math.max(most, equivalentN(s, at, load, true, of));
            }
            return most;
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Math.min(
                    Wheel.staticN(s.end().innerBearing(), at),
                    Wheel.staticN(s.end().outerBearing(), at));
        }

        @Override
        void write(Subject s, Working w) {
            var load = new AxleLoad(s, At.NOMINAL, motorNm(s, At.NOMINAL));
            var worst = Case.LANDING;
            boolean outer = false;
            double most = 0;
            for (var of : CASES) {
                for (boolean which : new boolean[] {false, true}) {
                    double asked = equivalentN(s, At.NOMINAL, load, which, of);
                    if (asked > most) {
                        most = asked;
                        worst = of;
                        outer = which;
                    }
                }
            }
            AxleLoad.write(s, w, worst);
            load.writeBelt(s, w);
            load.writeBearing(w, outer, worst);
            boolean axial = worst != Case.LANDING;
            w.line(
                    "P_0",
                    axial ? "max(F_r, 0.6·F_r + 0.5·F_s)" : "F_r",
                    equivalentN(s, At.NOMINAL, load, outer, worst),
                    "N",
                    axial ? "one bearing takes the side force" : "no side force as it lands");
            var inner = s.end().innerBearing();
            var other = s.end().outerBearing();
            Wheel.writeRating(w, "C0_1", inner, inner.staticN(), Wheel.staticN(inner, At.NOMINAL));
            Wheel.writeRating(w, "C0_2", other, other.staticN(), Wheel.staticN(other, At.NOMINAL));
            w.line("C_0", "min(C0_1, C0_2)", capacity(s, At.NOMINAL, 0), "N", "more leaves dents");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "bearings of a higher static rating, farther apart, or a softer wheel that lands softer";
        }
    }

    /// What both questions of a motor's front bearing share: the pulley hangs over it.
    private abstract static class OfMotor extends StrengthCheck {
        OfMotor(String slug, String name, String unit, String source) {
            super(
                    slug,
                    name,
                    unit,
                    Scope.DRIVE,
                    source,
                    Role.MOTOR,
                    Role.DRIVE_PULLEY,
                    Role.MOUNT,
                    Role.WHEEL_PULLEY,
                    Role.CONTROLLER,
                    Role.WHEEL);
            placed();
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.MOTOR_BEARING;
        }

        static double frontN(Subject s, At at, double motorNm) {
            return Tension.pullN(s, at, motorNm) * Tension.overhang(s, at);
        }

        static void writeFront(Subject s, Working w) {
            Tension.writePull(s, w);
            var motor = s.drive().motor();
            w.given("a", motor.frontBearingMm());
            w.given("l_b", motor.bearingSpanMm());
            w.given(
                    "x",
                    "mounting face to the middle of the belt",
                    s.at().driveRimMiddleMm().minus(s.at().plateInnerMm()),
                    "layout");
            w.line("k_o", "1 + (x + a)/l_b", Tension.overhang(s, At.NOMINAL), "", "the pulley hangs over");
            w.line("F_r", "k_o·P", frontN(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)), "N", "front bearing");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "the belt nearer the motor, a looser belt that still does not jump, a motor with a larger front bearing, "
                    + "or lower current limits";
        }
    }

    /// The motor's front bearing lasts as far as is asked.
    ///
    ///     km = (C/F_r)³·π·D/i
    static final class MotorLife extends OfMotor {
        MotorLife() {
            super("motor-bearing-life", "Motor's front bearing lasts", "km", "ISO 281, " + CATALOGUE + "; statics");
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return at.most(Assumed.life(s.kit()));
        }

        private static double turns(Subject s, At at, double motorNm) {
            return BearingLife.millionTurns(at.least(s.drive().motor().bearingRatedN()), frontN(s, at, motorNm));
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return StaticBearing.lifeKm(
                            turns(s, at, motorNm), at.least(s.end().wheel().wornDiameterMm()))
                    / s.drive().ratio();
        }

        @Override
        void write(Subject s, Working w) {
            writeFront(s, w);
            w.given("C", s.drive().motor().bearingRatedN());
            w.line(
                    "L10",
                    "(C/F_r)^3",
                    turns(s, At.NOMINAL, motorNm(s, At.NOMINAL)),
                    "",
                    "millions of turns, nine of ten last; the inner ring turns");
            w.given("D_worn", s.end().wheel().wornDiameterMm());
            w.given("i", "ratio, wheel teeth over motor teeth", s.drive().ratio(), "", "count");
            w.line(
                    "L_km",
                    "L10·π·D_worn/i",
                    capacity(s, At.NOMINAL, motorNm(s, At.NOMINAL)),
                    "km",
                    "as far the board rolls");
            w.given("L_asked", Assumed.life(s.kit()));
        }
    }

    /// The motor's front bearing is not dented by the pull and a jolt of the motor's own mass together.
    static final class MotorStatic extends OfMotor {
        MotorStatic() {
            super(
                    "motor-bearing-static",
                    "Motor's front bearing stands pull and jolt",
                    "N",
                    "ISO 76, " + CATALOGUE + "; statics; the whole motor's mass counted: habit");
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the motor's front bearing is dented";
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return frontN(s, at, motorNm) + Tension.joltN(s, at);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return at.least(s.drive().motor().bearingStaticN());
        }

        @Override
        void write(Subject s, Working w) {
            writeFront(s, w);
            Tension.writeJolt(s, w);
            w.line("P_0", "F_r + F_jolt", demand(s, At.NOMINAL, motorNm(s, At.NOMINAL)), "N", "on the front bearing");
            w.given("C0", s.drive().motor().bearingStaticN());
        }
    }
}
