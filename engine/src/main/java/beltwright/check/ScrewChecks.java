package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Drive;
import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.Material;
import beltwright.part.Material.Property;
import beltwright.part.Screw;
import beltwright.part.StandardSizes;
import beltwright.part.Thread;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import beltwright.strength.ThreadStrip;
import beltwright.strength.Tightening;
import java.util.ArrayList;
import java.util.List;

/// Is every screw long enough for its thread to hold, and short enough to end before it meets something?
final class ScrewChecks {
    private static final String HABIT = "common practice, no source";
    private static final double SHORT_OF_MM = 0.5;
    private static final double STRIP_FACTOR = 1.5;

    private ScrewChecks() {}

    static List<Check> all() {
        var all = new ArrayList<Check>();
        for (var place : Place.values()) {
            all.add(new Threads(place));
            all.add(new Engagement(place));
            if (place != Place.IDLER) { // behind the plate there is air
                all.add(new Reach(place));
            }
        }
        all.add(new NutThread());
        return List.copyOf(all);
    }

    /// The screwed joints of a drive.
    enum Place {
        MOTOR("motor-screw", "motor screw", Role.MOTOR_SCREWS, Role.MOTOR, "the windings"),
        CLAMP("clamp-screw", "clamp screw", Role.CLAMP_SCREWS, Role.MOUNT, "the bottom of its hole"),
        HUB("hub-screw", "hub screw", Role.HUB_SCREWS, Role.DRIVE_PULLEY, "the bottom of its hole"),
        PULLEY("pulley-screw", "pulley screw", Role.PULLEY_SCREWS, Role.WHEEL_PULLEY, "the bottom of its hole"),
        FLANGE("flange-screw", "flange screw", Role.FLANGE_SCREWS, Role.HANGER, "the bottom of its hole"),
        COVER("cover-screw", "cover screw", Role.COVER_SCREWS, Role.MOUNT, "the bottom of its hole"),
        IDLER("idler-screw", "idler screw", Role.IDLER_SCREW, Role.MOUNT, "air");

        /// {@return the seats of screw, thread and everything that is clamped}
        Role[] clamped() {
            return switch (this) {
                case MOTOR -> new Role[] {seat, into, Role.MOUNT, Role.MOTOR_WASHERS};
                case CLAMP, HUB -> new Role[] {seat, into};
                case PULLEY -> new Role[] {seat, into, Role.WHEEL};
                case FLANGE -> new Role[] {seat, into, Role.MOUNT};
                case COVER -> new Role[] {seat, into, Role.COVER};
                case IDLER -> new Role[] {seat, into, Role.IDLER};
            };
        }

        private final String slug;
        private final String words;
        private final Role seat;
        private final Role into;
        private final String meets;

        Place(String slug, String words, Role seat, Role into, String meets) {
            this.slug = slug;
            this.words = words;
            this.seat = seat;
            this.into = into;
            this.meets = meets;
        }

        Screw screw(Drive d) {
            return switch (this) {
                case MOTOR -> d.motorScrew();
                case CLAMP -> d.clampScrew();
                case HUB -> d.hubScrew();
                case PULLEY -> d.pulleyScrew();
                case FLANGE -> d.flangeScrew();
                case COVER -> d.coverScrew();
                case IDLER -> d.idlerScrew();
            };
        }

        Thread thread(Subject s) {
            var d = s.drive();
            return switch (this) {
                case MOTOR -> d.motor().thread();
                case CLAMP -> d.mount().clampThread();
                case HUB -> d.drivePulley().hubScrewThread();
                case PULLEY -> d.wheelPulley().screwThread();
                case FLANGE -> s.kit().hanger().flangeThread();
                case COVER -> d.mount().coverThread();
                case IDLER -> d.idler().screwThread();
            };
        }

        Dimension depth(Subject s) {
            var d = s.drive();
            return switch (this) {
                case MOTOR -> d.motor().threadDepthMm();
                case CLAMP -> d.mount().clampThreadDepthMm();
                case HUB -> d.drivePulley().hubThreadDepthMm();
                case PULLEY -> d.wheelPulley().threadDepthMm();
                case FLANGE -> s.kit().hanger().flangeThreadDepthMm();
                case COVER -> d.mount().coverThreadDepthMm();
                case IDLER -> d.mount().plateThicknessMm();
            };
        }

        String material(Subject s) {
            var d = s.drive();
            return switch (this) {
                case MOTOR -> d.motor().threadMaterial();
                case CLAMP, COVER, IDLER -> d.mount().material();
                case HUB -> d.drivePulley().material();
                case PULLEY -> d.wheelPulley().material();
                case FLANGE -> s.kit().hanger().material();
            };
        }

        /// {@return where the material of the thread is named}
        String materialField(Subject s) {
            var d = s.drive();
            return switch (this) {
                case MOTOR -> d.motor().id() + ".threadMaterial";
                case CLAMP, COVER, IDLER -> d.mount().id() + ".material";
                case HUB -> d.drivePulley().id() + ".material";
                case PULLEY -> d.wheelPulley().id() + ".material";
                case FLANGE -> s.kit().hanger().id() + ".material";
            };
        }

        /// {@return the screw's length less everything it clamps}
        List<Term> engaged(Subject s) {
            var d = s.drive();
            var length = plus("l", screw(d).lengthMm());
            return switch (this) {
                case MOTOR ->
                    List.of(
                            length,
                            minus("t", d.mount().plateThicknessMm()),
                            minus("t_washer", d.motorWasher().thicknessMm()));
                case CLAMP -> List.of(length, minus("t_grip", d.mount().clampGripMm()));
                case HUB -> List.of(length, minus("t_grip", d.drivePulley().hubScrewGripMm()));
                case PULLEY -> List.of(length, minus("t_grip", d.end().wheel().screwGripMm()));
                case FLANGE -> List.of(length, minus("t_grip", d.mount().flangeGripMm()));
                case COVER -> List.of(length, minus("t_grip", d.cover().screwGripMm()));
                case IDLER -> List.of(length, minus("t_grip", d.idler().screwGripMm()));
            };
        }
    }

    /// {@return the standard length that engages as much as wanted and ends short of the bottom, or what is missing}
    private static String length(Subject s, Place place, double wanted) {
        double grip = place.screw(s.drive()).lengthMm().nominal()
                - Term.sum(place.engaged(s)).nominal();
        double half = place.screw(s.drive()).lengthMm().upper()
                - place.screw(s.drive()).lengthMm().nominal();
        double spread =
                Term.sum(place.engaged(s)).high() - Term.sum(place.engaged(s)).nominal();
        double best = 0;
        for (double length : StandardSizes.SCREW_LENGTHS_MM) {
            boolean ends = place == Place.IDLER
                    || length - grip + Math.max(spread, half) + SHORT_OF_MM
                            <= place.depth(s).lower();
            boolean holds = !(length - grip - Math.max(spread, half) < wanted); // not known: the longest that ends
            if (ends && holds && !(place == Place.IDLER && best > 0)) { // through an open hole the shortest will do
                best = length;
            }
        }
        if (place.depth(s).nominal() < wanted) {
            return "a thread at least " + Numbers.fixed(wanted, 1) + " mm deep, or a smaller screw class";
        }
        return best == 0
                ? "no standard length fits between thread and " + place.meets + ": change the thickness that is clamped"
                : "an " + place.screw(s.drive()).thread() + " screw " + Numbers.fixed(best, 0) + " long";
    }

    private static double wanted(Subject s, Place place, At at) {
        var screw = place.screw(s.drive());
        double force = Tension.highestN(s, at, screw.thread(), screw.strength());
        return ThreadStrip.engagementMm(
                screw.thread(),
                STRIP_FACTOR * force,
                Made.lastingShare(s, place.material(s)) * Made.of(s, place.material(s), Property.SHEAR));
    }

    /// Screw and hole have one thread.
    static final class Threads extends YesNo {
        private final Place place;

        Threads(Place place) {
            super(
                    place.slug + "-thread",
                    "Thread of the " + place.words,
                    Scope.DRIVE,
                    "ISO 261",
                    place.seat,
                    place == Place.IDLER ? Role.IDLER : place.into);
            this.place = place;
        }

        @Override
        boolean met(Subject s) {
            return place.screw(s.drive()).thread() == place.thread(s);
        }

        @Override
        String asked(Subject s) {
            return place.screw(s.drive()).thread() + " in " + place.thread(s);
        }

        @Override
        public String says(Subject s, Reading r) {
            return place.screw(s.drive()).thread() + " screw, " + place.thread(s) + " hole";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return place.thread(s) + " screws";
        }
    }

    /// Enough thread is engaged that it does not strip at the highest preload that the way of tightening makes.
    static final class Engagement extends Check {
        private final Place place;

        Engagement(Place place) {
            super(
                    place.slug + "-engagement",
                    "Thread engaged by the " + place.words,
                    "mm",
                    Scope.DRIVE,
                    "thread strip of the tapped material against the actual preload, FED-STD-H28 form and VDI 2230 (from memory); factor "
                            + STRIP_FACTOR + ", " + HABIT,
                    place.clamped());
            this.place = place;
            tasked();
        }

        private Range engaged(Subject s) {
            var reach = Term.sum(place.engaged(s));
            var depth = place.depth(s);
            return new Range(
                    Math.min(reach.low(), depth.lower()),
                    Math.min(reach.nominal(), depth.nominal()),
                    Math.min(reach.high(), depth.upper()));
        }

        private Range demanded(Subject s) {
            return new Range(wanted(s, place, At.BEST), wanted(s, place, At.NOMINAL), wanted(s, place, At.WORST));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(demanded(s), engaged(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var screw = place.screw(s.drive());
            var thread = screw.thread();
            w.chain("l_e", "mm", "how far the screw reaches", place.engaged(s));
            w.given("t_depth", place.depth(s));
            var engaged = engaged(s);
            w.line("l_t", "min(l_e, t_depth)", engaged.nominal(), "mm", "engaged thread, no more than there is");
            w.given("d", "thread " + thread + ", major diameter", thread.majorMm(), "mm", "ISO 261");
            w.given("p", "pitch", thread.pitchMm(), "mm", "ISO 261");
            w.line("d2", "d − 0.649519·p", thread.pitchDiameterMm(), "mm", "ISO 724");
            w.line("A_t", "π/4·(d − 0.938194·p)^2", thread.stressAreaMm2(), "mm²", "ISO 898-1");
            w.given(
                    "S_p",
                    "proof strength, class " + screw.strength(),
                    screw.strength().proofMpa(),
                    "MPa",
                    "ISO 898-1");
            w.given("share", "share of proof strength aimed at", Tightening.PROOF_SHARE, "", HABIT);
            w.given("s_F", Assumed.scatter(s.kit()));
            w.line(
                    "F",
                    "(1 + s_F/100)·share·S_p·A_t",
                    Tension.highestN(s, At.NOMINAL, thread, screw.strength()),
                    "N",
                    "highest preload");
            var material = place.material(s);
            if (material.isBlank()) {
                Made.given(w, "τ", s, place.materialField(s), material, Property.SHEAR);
            } else {
                quote(s, w, s.kit().reference().material(material));
            }
            w.line(
                    "A_1",
                    "π·d/p·(p/2 + 0.57735·(d − d2))",
                    ThreadStrip.areaPerMm(thread),
                    "mm²/mm",
                    "sheared area per length");
            w.given("n", "factor against stripping", STRIP_FACTOR, "", HABIT);
            boolean plastic = Made.plastic(s, material);
            if (plastic) {
                w.given("k_creep", "share of it borne for months", Made.lastingShare(s, material), "", HABIT);
            }
            var shear = plastic ? "(k_creep·τ)" : "τ";
            var demanded = demanded(s);
            w.line("l_wanted", "n·F/(A_1·" + shear + ")", demanded.nominal(), "mm", "engagement wanted");
            w.line(
                    "l_wanted_max",
                    "n·(1 + s_F_max/100)·share·S_p·A_t/(A_1·" + shear + ")",
                    demanded.high(),
                    "mm",
                    "at the most scatter");
            out.set(demanded, engaged);
        }

        private static void quote(Subject s, Working w, Material material) {
            w.given(
                    "τ",
                    "shear strength, " + material.name(),
                    material.shearMpa(),
                    "MPa",
                    material.of(Property.SHEAR).source());
            if (Double.isNaN(material.shearMpa())) {
                w.needs("shear strength of " + material.id());
            }
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm engaged; " + Numbers.fixed(r.demand(), 1) + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return length(s, place, r.demand());
        }
    }

    /// The screw ends before it meets what it must not: the windings, or the bottom of a blind hole.
    static final class Reach extends Check {
        private final Place place;

        Reach(Place place) {
            super(
                    place.slug + "-reach",
                    "End of the " + place.words + " clear of " + place.meets,
                    "mm",
                    Scope.DRIVE,
                    "worst case over screw, washer and plate; to end " + SHORT_OF_MM + " mm short, " + HABIT,
                    place.clamped());
            this.place = place;
        }

        private Range gap(Subject s) {
            return Range.of(place.depth(s)).minus(Term.sum(place.engaged(s)));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(SHORT_OF_MM, gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.chain("l_e", "mm", "how far the screw reaches", place.engaged(s));
            var gap = w.chain(
                    "g",
                    "mm",
                    "left in front of " + place.meets,
                    List.of(
                            plus("t_depth", place.depth(s)),
                            minus("l_e", "how far the screw reaches", Term.sum(place.engaged(s)))));
            out.set(w.given("g_wanted", "to end short of it", SHORT_OF_MM, "mm", HABIT), gap);
        }

        @Override
        public String says(Subject s, Reading r) {
            var reach = Term.sum(place.engaged(s));
            return "reaches " + Numbers.within(reach.nominal(), reach.low(), reach.high()) + " mm of "
                    + Numbers.within(
                            place.depth(s).nominal(),
                            place.depth(s).lower(),
                            place.depth(s).upper())
                    + "; "
                    + Numbers.fixed(SHORT_OF_MM, 1) + " to stay free, " + r.capacityText() + " left (" + r.worstText()
                    + " at worst)";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return length(s, place, wanted(s, place, At.WORST));
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            if (place != Place.MOTOR) {
                return List.of();
            }
            double x = s.at().motorXMm() - s.drive().motor().boltCircleMm().nominal() / 2;
            double face = s.at().plateInnerMm().nominal();
            double end = face - Term.sum(place.engaged(s)).nominal();
            return List.of(new DrawnDimension(
                    "screw into the motor",
                    View.PLAN,
                    s.side(),
                    x,
                    s.plan(face),
                    x,
                    s.plan(end),
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// The nut fits the axle.
    static final class NutThread extends YesNo {
        NutThread() {
            super("nut-thread", "Thread of the axle nut", Scope.END, "ISO 261", Role.AXLE_NUT, Role.HANGER);
        }

        @Override
        boolean met(Subject s) {
            return s.end().nut().thread() == s.kit().hanger().axleThread();
        }

        @Override
        String asked(Subject s) {
            return s.end().nut().thread() + " on " + s.kit().hanger().axleThread();
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.end().nut().thread() + " nut, " + s.kit().hanger().axleThread() + " axle";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return s.kit().hanger().axleThread() + " nuts";
        }
    }
}
