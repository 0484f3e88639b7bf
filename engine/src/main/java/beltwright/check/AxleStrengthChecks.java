package beltwright.check;

import beltwright.check.AxleLoad.Case;
import beltwright.kit.Role;
import beltwright.part.Hanger;
import beltwright.part.Material.Property;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import beltwright.strength.Axle;
import beltwright.strength.Fatigue;
import beltwright.strength.ShaftStress;
import beltwright.strength.ShoulderFillet;
import java.util.List;

/// Does the axle stand a landing and a corner, and does it last on rough road? The axle stands
/// still: its bending swells and fades, it does not reverse.
final class AxleStrengthChecks {
    private static final String HABIT = "common practice, no source";
    private static final Role[] WITH_BELT = {
        Role.HANGER,
        Role.WHEEL,
        Role.INNER_RING,
        Role.INNER_BEARING,
        Role.CORE_SPACER,
        Role.OUTER_BEARING,
        Role.WHEEL_PULLEY,
        Role.DRIVE_PULLEY,
        Role.MOTOR,
        Role.CONTROLLER
    };
    private static final Role[] WHEEL_ALONE = {
        Role.HANGER, Role.WHEEL, Role.INNER_RING, Role.INNER_BEARING, Role.CORE_SPACER, Role.OUTER_BEARING
    };

    private AxleStrengthChecks() {}

    static List<Check> all() {
        return List.of(
                new Yield("axle-yield", "Axle stands a landing and a corner", Scope.END, WHEEL_ALONE),
                new Yield("belted-axle-yield", "Axle stands them under the belt's pull", Scope.DRIVE, WITH_BELT),
                new Lasts("axle-fatigue", "Axle lasts on rough road", Scope.END, WHEEL_ALONE),
                new Lasts("belted-axle-fatigue", "Axle lasts under the belt's pull", Scope.DRIVE, WITH_BELT));
    }

    /// Where an axle breaks.
    private enum Section {
        STEP("step at the end face"),
        BEARING("inner bearing"),
        THREAD("root of the thread");

        private final String words;

        Section(String words) {
            this.words = words;
        }

        Range atMm(Subject s) {
            return switch (this) {
                case STEP -> Range.ZERO;
                case BEARING -> AxleLoad.inner(s);
                case THREAD -> s.endAt().threadBeginsMm();
            };
        }

        double bendingNm(Subject s, AxleLoad load, Case of) {
            return this == BEARING ? load.bendingAtBearingNm(of) : load.bendingNm(atMm(s), of);
        }

        double diameterMm(Subject s, At at) {
            var hanger = s.kit().hanger();
            return this == THREAD
                    ? Axle.rootMm(
                            hanger.axleThread().majorMm(), hanger.axleThread().pitchMm())
                    : at.least(hanger.axleDiameterMm());
        }

        /// Writes the lines of its station y and its diameter d.
        void write(Subject s, Working w) {
            var hanger = s.kit().hanger();
            w.given("y", words + ", from the end face", atMm(s), "layout");
            if (this == THREAD) {
                w.line("d_a", "d_s − 1.226869·p_s", diameterMm(s, At.NOMINAL), "mm", "ISO 724");
            } else {
                w.given("d_a", hanger.axleDiameterMm());
            }
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// A case in which the axle is worst off.
    private record Worst(Section section, Case load) {}

    /// Asked of every end with its wheel alone, for a belt can be slack or off, and of every drive with its belt.
    private abstract static class AxleCheck extends StrengthCheck {
        AxleCheck(String slug, String name, Scope scope, String source, Role... about) {
            super(slug, name, "MPa", scope, source, about);
            if (scope == Scope.DRIVE) {
                placed();
            }
        }

        @Override
        TensionLimit.Bearer bearer() {
            return TensionLimit.Bearer.AXLE;
        }

        @Override
        boolean torqued() {
            return scope() == Scope.DRIVE;
        }

        @Override
        String gives() {
            return this instanceof Yield ? "the axle bends in a landing or a corner" : "the axle tires on rough road";
        }

        /// {@return stress (MPa) that a section is asked for in one case}
        abstract double stressMpa(Subject s, At at, AxleLoad load, Section section, Case of);

        abstract Section[] sections();

        abstract Case[] cases();

        @Override
        final double demand(Subject s, At at, double motorNm) {
            var load = new AxleLoad(s, at, motorNm);
            double most = 0;
            for (var section : sections()) {
                for (var of : cases()) {
                    most = Math.max(most, stressMpa(s, at, load, section, of));
                }
            }
            return most;
        }

        /// {@return the case that decides at nominal; the first that cannot be told}
        final Worst worst(Subject s) {
            var load = new AxleLoad(s, At.NOMINAL, motorNm(s, At.NOMINAL));
            var worst = new Worst(sections()[0], cases()[0]);
            double most = 0;
            for (var section : sections()) {
                for (var of : cases()) {
                    double stress = stressMpa(s, At.NOMINAL, load, section, of);
                    if (Double.isNaN(stress)) {
                        return new Worst(section, of);
                    }
                    if (stress > most) {
                        most = stress;
                        worst = new Worst(section, of);
                    }
                }
            }
            return worst;
        }

        @Override
        public String says(Subject s, Reading r) {
            var worst = worst(s);
            return r.demandText() + " MPa at the " + worst.section + ", " + worst.load + "; it stands "
                    + r.capacityText();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a thicker axle, a stronger axle steel, a larger fillet, or the wheel nearer the hanger; an axle that "
                    + "breaks loses its wheel, so look for bends and cracks before riding";
        }
    }

    /// The axle does not bend for good.
    static final class Yield extends AxleCheck {
        /// Factor against yielding, with loads at their worse limits. Habit.
        private static final double FACTOR = 1.1;

        private static final Section[] SECTIONS = Section.values();
        private static final Case[] CASES = {Case.LANDING, Case.TIPPED_UP, Case.TIPPED_DOWN};

        Yield(String slug, String name, Scope scope, Role... about) {
            super(
                    slug,
                    name,
                    scope,
                    "statics and elastic beam; loads, nut torque and factor: common practice, no source",
                    about);
        }

        @Override
        Section[] sections() {
            return SECTIONS;
        }

        @Override
        Case[] cases() {
            return CASES;
        }

        @Override
        double stressMpa(Subject s, At at, AxleLoad load, Section section, Case of) {
            double d = section.diameterMm(s, at);
            return ShaftStress.bendingMpa(section.bendingNm(s, load, of), d) + Axle.axialMpa(AxleLoad.nutN(s, at), d);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Made.of(s, Made.axle(s.kit().hanger()), Property.YIELD) / FACTOR;
        }

        @Override
        void write(Subject s, Working w) {
            var worst = worst(s);
            double torque = motorNm(s, At.NOMINAL);
            var load = new AxleLoad(s, At.NOMINAL, torque);
            AxleLoad.write(s, w, worst.load);
            load.writeBelt(s, w);
            AxleLoad.writeNut(s, w);
            worst.section.write(s, w);
            load.writeBending(w, worst.section.atMm(s).nominal(), worst.load);
            w.line(
                    "σ",
                    "32000·M_x/(π·d_a^3) + 4·F_n/(π·d_a^2)",
                    stressMpa(s, At.NOMINAL, load, worst.section, worst.load),
                    "MPa",
                    "bending and tension, worst of all cases: " + worst.load);
            Made.given(
                    w,
                    "R_p",
                    s,
                    s.kit().hanger().id() + ".axleMaterial",
                    Made.axle(s.kit().hanger()),
                    Property.YIELD);
            w.given("k_y", "factor against yielding", FACTOR, "", HABIT);
            w.line("σ_most", "R_p/k_y", capacity(s, At.NOMINAL, torque), "MPa", "it stands");
        }
    }

    /// The axle does not tire on rough road: the load goes up and down around the weight while nut and belt pull
    /// steadily.
    ///
    ///     σ_a = Kf·σ(jolts)     σ_m = Kf·σ(weight, belt) + σ(nut)     σ_a + σ_m·S_e/S_ut against S_e
    static final class Lasts extends AxleCheck {
        private static final Section[] SECTIONS = {Section.STEP, Section.THREAD};
        private static final Case[] CASES = {Case.RIDING};

        Lasts(String slug, String name, Scope scope, Role... about) {
            super(
                    slug,
                    name,
                    scope,
                    "Goodman line and factors of Shigley, Mechanical Engineering Design, ch. 6, fillet by Norton's "
                            + "lines; jolts: common practice, no source",
                    about);
        }

        @Override
        Section[] sections() {
            return SECTIONS;
        }

        @Override
        Case[] cases() {
            return CASES;
        }

        private static double notch(Subject s, At at, Section section) {
            if (section == Section.THREAD) {
                return Fatigue.CUT_THREAD;
            }
            double radius = radiusMm(s, at);
            return Fatigue.notchFactor(form(s, at), sensitivity(s, radius));
        }

        /// A fillet larger than the chart's counts as its largest.
        private static double radiusMm(Subject s, At at) {
            var hanger = s.kit().hanger();
            return Math.min(
                    at.least(hanger.axleFilletMm()),
                    ShoulderFillet.MOST_RADIUS * hanger.axleDiameterMm().nominal());
        }

        private static double form(Subject s, At at) {
            var hanger = s.kit().hanger();
            return ShoulderFillet.bending(
                    hanger.sectionHeightMm().nominal(), hanger.axleDiameterMm().nominal(), radiusMm(s, at));
        }

        /// Steel feels less of a small notch; of other metals that is not known here, so they feel all of it.
        private static double sensitivity(Subject s, double radiusMm) {
            var material = Made.axle(s.kit().hanger());
            return Made.steel(s, material)
                    ? Fatigue.notchSensitivity(Made.of(s, material, Property.TENSILE), radiusMm)
                    : 1;
        }

        private static double limitMpa(Subject s, Section section) {
            var material = Made.axle(s.kit().hanger());
            return Fatigue.surfaceFactor(Made.of(s, material, Property.TENSILE))
                    * Fatigue.standingSizeFactor(section.diameterMm(s, At.NOMINAL))
                    * Fatigue.RELIABLE_99
                    * Made.of(s, material, Property.FATIGUE);
        }

        private static double amplitudeMpa(Subject s, At at, AxleLoad load, Section section) {
            double jolt = at.most(Assumed.road(s.kit())) - 1;
            return notch(s, at, section)
                    * jolt
                    * ShaftStress.bendingMpa(load.wheelNm(section.atMm(s), Case.RIDING), section.diameterMm(s, at));
        }

        private static double meanMpa(Subject s, At at, AxleLoad load, Section section) {
            double d = section.diameterMm(s, at);
            return notch(s, at, section) * ShaftStress.bendingMpa(section.bendingNm(s, load, Case.RIDING), d)
                    + Axle.axialMpa(AxleLoad.nutN(s, at), d);
        }

        @Override
        double stressMpa(Subject s, At at, AxleLoad load, Section section, Case of) {
            double tensile = Made.of(s, Made.axle(s.kit().hanger()), Property.TENSILE);
            return amplitudeMpa(s, at, load, section) + meanMpa(s, at, load, section) * limitMpa(s, section) / tensile;
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return limitMpa(s, Section.STEP);
        }

        @Override
        void write(Subject s, Working w) {
            var worst = worst(s);
            var hanger = s.kit().hanger();
            var material = Made.axle(hanger);
            var load = new AxleLoad(s, At.NOMINAL, motorNm(s, At.NOMINAL));
            AxleLoad.write(s, w, Case.RIDING);
            load.writeBelt(s, w);
            AxleLoad.writeNut(s, w);
            worst.section.write(s, w);
            load.writeBending(w, worst.section.atMm(s).nominal(), Case.RIDING);
            double tensile = Made.given(w, "S_ut", s, hanger.id() + ".axleMaterial", material, Property.TENSILE);
            writeNotch(s, w, worst.section, tensile);
            w.given("k_road", Assumed.road(s.kit()));
            w.line(
                    "σ_a",
                    "K_f·(k_road − 1)·32000·abs(M_up)/(π·d_a^3)",
                    amplitudeMpa(s, At.NOMINAL, load, worst.section),
                    "MPa",
                    "amplitude, by the jolts of the wheel");
            w.line(
                    "σ_m",
                    "K_f·32000·M_x/(π·d_a^3) + 4·F_n/(π·d_a^2)",
                    meanMpa(s, At.NOMINAL, load, worst.section),
                    "MPa",
                    "mean, and the nut, whose pull no notch raises");
            writeLimit(s, w, worst.section, material, hanger);
            w.line(
                    "σ_ar",
                    "σ_a + σ_m·S_e/S_ut",
                    stressMpa(s, At.NOMINAL, load, worst.section, worst.load),
                    "MPa",
                    "amplitude without a mean that tires it as much, Goodman");
        }

        private static void writeNotch(Subject s, Working w, Section section, double tensile) {
            var hanger = s.kit().hanger();
            if (section == Section.THREAD) {
                w.given(
                        "K_f",
                        "notch factor of a cut thread",
                        Fatigue.CUT_THREAD,
                        "",
                        "Shigley, table 8-16, from memory");
                return;
            }
            w.given("r_f", hanger.axleFilletMm());
            w.given("D_h", hanger.sectionHeightMm());
            double r = w.line(
                    "r_k",
                    "min(r_f, " + Numbers.plain(ShoulderFillet.MOST_RADIUS) + "·d_a)",
                    radiusMm(s, At.NOMINAL),
                    "mm",
                    "no larger fillet is in the chart");
            double form = w.given(
                    "K_t",
                    "form factor of the step at D_h/d_a and r_k/d_a",
                    form(s, At.NOMINAL),
                    "",
                    "fitted lines to Peterson's charts, Norton; finite elements read 3 to 7 % above");
            if (Double.isNaN(form)
                    && hanger.axleFilletMm().known()
                    && hanger.sectionHeightMm().known()) {
                w.needs("a fillet of " + Numbers.plain(ShoulderFillet.LEAST_RADIUS)
                        + " times the axle's diameter or more: no chart holds a sharper one");
            }
            w.given(
                    "q_k",
                    Made.steel(s, Made.axle(hanger))
                            ? "how much of a notch this steel feels"
                            : "no steel: it is taken to feel all of a notch",
                    sensitivity(s, r),
                    "",
                    "Shigley, eq. 6-35a");
            w.line("K_f", "1 + q_k·(K_t − 1)", notch(s, At.NOMINAL, section), "", "notch factor");
        }

        private static void writeLimit(Subject s, Working w, Section section, String material, Hanger hanger) {
            w.line(
                    "k_a",
                    "2.70·(S_ut/6.894757)^(−0.265)",
                    Fatigue.surfaceFactor(Made.of(s, material, Property.TENSILE)),
                    "",
                    "surface, machined");
            w.line(
                    "k_size",
                    "min(1, 0.879·(0.370·d_a/25.4)^(−0.107))",
                    Fatigue.standingSizeFactor(section.diameterMm(s, At.NOMINAL)),
                    "",
                    "size, of an axle that stands still");
            w.given("k_e", "99 of 100 last", Fatigue.RELIABLE_99, "", "Shigley, ch. 6");
            Made.given(w, "S_bar", s, hanger.id() + ".axleMaterial", material, Property.FATIGUE);
            w.line("S_e", "k_a·k_size·k_e·S_bar", limitMpa(s, section), "MPa", "endurance limit of the axle");
        }
    }
}
