package beltwright.check;

import beltwright.belt.BeltRating;
import beltwright.kit.Role;
import beltwright.part.BeltGrade;
import beltwright.power.Pulls;
import beltwright.power.RoadLoad;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does the belt carry the worst pull and the daily one, and is there a tension that is tight enough for it and not too
/// tight for the rest?
final class BeltStrengthChecks {
    private static final String MANUAL = "a belt maker's technical manual for rubber timing belt drives";
    private static final Role[] PULLED = {
        Role.BELT, Role.DRIVE_PULLEY, Role.WHEEL_PULLEY, Role.MOTOR, Role.CONTROLLER, Role.WHEEL
    };

    private BeltStrengthChecks() {}

    static List<Check> all() {
        return List.of(new Peak(), new Life(), new Band(), new Set());
    }

    /// What the belt of a drive carries by its grade's table.
    static final class Rated {
        private Rated() {}

        static boolean graded(Subject s) {
            return !s.drive().belt().grade().isBlank();
        }

        static BeltGrade grade(Subject s) {
            return s.kit().reference().grade(s.drive().belt().grade());
        }

        private static int smallTeeth(Subject s) {
            return Math.min(
                    s.drive().drivePulley().rim().teeth(),
                    s.drive().wheelPulley().rim().teeth());
        }

        /// {@return pull (N) that the belt carries with its smaller pulley at this speed; NaN where no table tells}
        static double pullN(Subject s, At at, double rpm) {
            if (!graded(s)) {
                return Double.NaN;
            }
            var belt = s.drive().belt();
            var grade = grade(s);
            double width = at == At.BEST && BeltRating.holdsWidth(belt.widthMm().nominal())
                    ? BeltRating.upTo(belt.widthMm().upper())
                    : at.least(belt.widthMm());
            if (belt.profile().pitchMm() != grade.pitchMm() || !BeltRating.holdsWidth(width)) {
                return Double.NaN;
            }
            return BeltRating.tablePullN(grade, smallTeeth(s), rpm)
                    * BeltRating.widthFactor(width)
                    / BeltRating.widthFactor(grade.widthMm())
                    * BeltRating.lengthFactor(belt.teeth() * belt.profile().pitchMm())
                    * BeltRating.meshFactor(at.least(s.at().teethInMesh()));
        }

        /// {@return the least pull (N) over these speeds, at best the most: at their ends, or at a printed speed
        ///     between, since the table's power runs straight from one printed speed to the next}
        static double extremeN(Subject s, At at, Range rpm) {
            double low = pullN(s, at, rpm.low());
            double high = pullN(s, at, rpm.high());
            double pull = at == At.BEST ? Math.max(low, high) : Math.min(low, high);
            if (!Double.isNaN(pull) && rpm.high() > rpm.low()) {
                for (double printed : grade(s).rpm()) {
                    if (printed > rpm.low() && printed < rpm.high()) {
                        double there = pullN(s, at, printed);
                        pull = at == At.BEST ? Math.max(pull, there) : Math.min(pull, there);
                    }
                }
            }
            return pull;
        }

        /// Writes the lines up to the pull F_rated at this speed.
        static void write(Subject s, Working w, double rpm, String rpmWords) {
            if (!graded(s)) {
                w.needs(s.drive().belt().id() + ".grade");
                w.given("F_rated", "no grade is known", Double.NaN, "N", "a table of the belt's maker");
                return;
            }
            var belt = s.drive().belt();
            var grade = grade(s);
            int teeth = smallTeeth(s);
            w.given("z_small", "teeth of the smaller pulley", teeth, "", "count");
            w.given("n_small", rpmWords, rpm, "rpm", "the table's slowest speed is taken for any below");
            double table = w.given(
                    "F_table",
                    "pull of a belt " + Numbers.plain(grade.widthMm()) + " mm wide, " + grade.name(),
                    BeltRating.tablePullN(grade, teeth, rpm),
                    "N",
                    grade.source());
            w.given("b_b", belt.widthMm());
            if (Double.isNaN(table)
                    || belt.profile().pitchMm() != grade.pitchMm()
                    || !BeltRating.holdsWidth(belt.widthMm().nominal())) {
                w.needs("a table of grade " + grade.id() + " for this pitch, width, speed and these teeth");
                w.given("F_rated", "the table does not reach so far", Double.NaN, "N", grade.source());
                return;
            }
            w.given(
                    "k_b",
                    "factor of width",
                    BeltRating.widthFactor(belt.widthMm().nominal()) / BeltRating.widthFactor(grade.widthMm()),
                    "",
                    MANUAL);
            w.given(
                    "k_l",
                    "factor of length",
                    BeltRating.lengthFactor(belt.teeth() * belt.profile().pitchMm()),
                    "",
                    MANUAL + ", table 10");
            w.given(
                    "z_m",
                    "teeth in mesh on the drive pulley",
                    s.at().teethInMesh().nominal(),
                    "",
                    "layout");
            w.line(
                    "k_z",
                    "max(0, min(1, 1 − 0.2·(6 − floor(z_m))))",
                    BeltRating.meshFactor(s.at().teethInMesh().nominal()),
                    "",
                    MANUAL + ", table 11");
            w.line(
                    "F_rated",
                    "F_table·k_b·k_l·k_z",
                    pullN(s, At.NOMINAL, rpm),
                    "N",
                    "pull that the belt carries for its life");
        }
    }

    /// The worst pull against what the belt carries when it turns slowly: starts, stops and jolts happen there.
    static final class Peak extends StrengthCheck {
        Peak() {
            super(
                    "belt-peak",
                    "Belt carries the worst pull",
                    "N",
                    Scope.DRIVE,
                    MANUAL + ", power table at its slowest speed; peak service factor: common practice, no source",
                    PULLED);
        }

        @Override
        boolean torqued() {
            return true;
        }

        @Override
        String gives() {
            return "the belt's teeth or cords";
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return at.most(Assumed.peak(s.kit())) * DrivePull.effectiveN(s, motorNm);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return Rated.pullN(s, at, 0);
        }

        @Override
        void write(Subject s, Working w) {
            DrivePull.writeTension(s, w);
            w.given("k_peak", Assumed.peak(s.kit()));
            w.line("F_peak", "k_peak·Te", demand(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)), "N", "demanded");
            Rated.write(s, w, 0, "speed at the start and before rest");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a wider belt, a reinforced grade, more teeth on the drive pulley, or lower current limits";
        }
    }

    /// The daily pull, as if the hill of the task never ended, against what the belt carries at that speed.
    static final class Life extends StrengthCheck {
        /// Load factor of a lightly jolting drive for medium load (1.6) in occasional use (−0.2).
        private static final double LOAD = 1.4;

        Life() {
            super(
                    "belt-life",
                    "Belt carries the hill for its life",
                    "N",
                    Scope.DRIVE,
                    MANUAL + ", tables 5, 7 and the power table; medium load, occasional use",
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.WHEEL);
        }

        private static double rpm(Subject s, double cruiseKmh, double wheelMm) {
            double round = Math.PI * wheelMm / 1000;
            return cruiseKmh / 3.6 / round * 60 * s.drive().ratio();
        }

        private static Range rpm(Subject s) {
            var cruise = s.kit().task().cruiseKmh();
            var wheel = s.end().wheel().diameterMm();
            return new Range(
                    rpm(s, cruise.lower(), wheel.upper()),
                    rpm(s, cruise.nominal(), wheel.nominal()),
                    rpm(s, cruise.upper(), wheel.lower()));
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            var task = s.kit().task();
            double slope = Math.atan(at.most(task.gradePercent()) / 100);
            double rolling = at.most(task.rollingPercent()) / 100;
            double push = at.most(task.allUpMassKg())
                    * RoadLoad.G
                    * (Math.sin(slope) + rolling * Math.cos(slope))
                    / s.kit().drives().size();
            double wheelNm = push * at.most(s.end().wheel().diameterMm()) / 2000;
            return LOAD
                    * Pulls.effectiveN(wheelNm, s.drive().wheelPulley().rim().pitchDiameterMm());
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            var rpm = rpm(s);
            if (!rpm.known()) {
                return Double.NaN;
            }
            return at == At.NOMINAL ? Rated.pullN(s, at, rpm.nominal()) : Rated.extremeN(s, at, rpm);
        }

        @Override
        void write(Subject s, Working w) {
            var task = s.kit().task();
            w.given("s", task.gradePercent());
            w.given("c", task.rollingPercent());
            w.given("m", task.allUpMassKg());
            w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
            w.given("n", "drives", s.kit().drives().size(), "", "count");
            w.given("D_wheel", s.end().wheel().diameterMm());
            var rim = s.drive().wheelPulley().rim();
            w.given(
                    "p",
                    "belt pitch",
                    rim.profile().pitchMm(),
                    "mm",
                    rim.profile().standard());
            w.given("z2", s.drive().wheelPulley().id() + ".rim.teeth", rim.teeth(), "", "count");
            w.line("D", "z2·p/π", rim.pitchDiameterMm(), "mm", "pitch diameter of the wheel pulley");
            w.given("k_load", "load factor, medium load, occasional use", LOAD, "", MANUAL + ", tables 5 and 7");
            w.line(
                    "F_life",
                    "k_load·(m·g/n·(sin(atan(s/100)) + c/100·cos(atan(s/100))))·(D_wheel/2000)·2/(D/1000)",
                    demand(s, At.NOMINAL, 0),
                    "N",
                    "pull on the hill, air neglected");
            w.given("v", task.cruiseKmh());
            double rpm = rpm(s).nominal();
            if (Double.isNaN(rpm)) {
                w.given("F_rated", "no speed to judge it at", Double.NaN, "N", "task.cruiseKmh");
            } else {
                Rated.write(s, w, rpm, "its speed at cruise");
            }
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a wider belt, a reinforced grade, larger pulleys, or a gentler hill";
        }
    }

    /// Is there a tension that keeps teeth from jumping and that all stand on which the belt pulls?
    static final class Band extends StrengthCheck {
        Band() {
            super(
                    "tension-band",
                    "A belt tension that suits all",
                    "N",
                    Scope.DRIVE,
                    "least: a belt maker's manual, or the workshop's jump tests; most: the first of slots, bearings, shaft,"
                            + " plate and axle to end",
                    Role.MOUNT,
                    Role.MOTOR_SCREWS,
                    Role.MOTOR_WASHERS,
                    Role.MOTOR,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.CONTROLLER,
                    Role.WHEEL,
                    Role.HANGER,
                    Role.INNER_RING,
                    Role.INNER_BEARING,
                    Role.CORE_SPACER,
                    Role.OUTER_BEARING);
            placed();
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return Tension.leastN(s, motorNm);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return TensionLimit.of(s, at, motorNm).tensionN();
        }

        @Override
        void write(Subject s, Working w) {
            Tension.writeLeast(s, w);
            Tension.writeSlots(s, w);
            Tension.writeJolt(s, w);
            w.line(
                    "T_slots",
                    "(F_hold − F_jolt)/2",
                    Tension.bySlotsN(s, At.NOMINAL),
                    "N",
                    "more than that and the motor slides in its slots");
            var ends = new StringBuilder("T_slots");
            for (var limit : TensionLimit.each(s, At.NOMINAL)) {
                var asked = limit.asked();
                if (limit.by() == TensionLimit.Bearer.SLOTS || Double.isNaN(limit.tensionN())) {
                    continue; // what is not known sets no end
                }
                w.given(
                        limit.by().symbol(),
                        "most for " + limit.by(),
                        limit.tensionN(),
                        "N",
                        limit.tensionN() < TensionLimit.HIGHEST_N
                                ? "solved: where '" + asked.name() + "' ends"
                                : "so much or more");
                var working = Working.untold();
                asked.write(s, working);
                w.rests(working.estimates());
                ends.append(", ").append(limit.by().symbol());
            }
            w.line(
                    "T_most",
                    ends.length() > "T_slots".length() ? "min(" + ends + ")" : ends.toString(),
                    capacity(s, At.NOMINAL, DrivePull.worstNm(s, At.NOMINAL)),
                    "N",
                    "whichever ends first");
        }

        private static String upperEnd(Subject s, At at) {
            return TensionLimit.of(s, at).by().toString();
        }

        @Override
        public String says(Subject s, Reading r) {
            if (r.capacity() < r.demand()) {
                return "no band: " + Numbers.atMost(r.capacity(), 0) + " N is the most, by " + upperEnd(s, At.NOMINAL)
                        + "; " + Numbers.atLeast(r.demand(), 0) + " N is the least";
            }
            var nominal = Ends.of(r.demand(), r.capacity(), 0) + " N at nominal";
            return r.verdict() == Verdict.HOLDS
                    ? Ends.of(r.demandWorst, r.capacityWorst, 0) + " N at the worse limits, " + nominal
                            + "; the upper end by " + upperEnd(s, At.WORST)
                    : nominal + " only; the upper end by " + upperEnd(s, At.NOMINAL);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return switch (TensionLimit.of(s, r.capacity() < r.demand() ? At.NOMINAL : At.WORST)
                    .by()) {
                case SLOTS, MOTOR_SCREWS ->
                    "larger or more motor screws, serrated washers, a tension screw, or lower current limits";
                case MOTOR_BEARING, MOTOR_SHAFT ->
                    "the belt nearer the motor, a motor with a larger front bearing and shaft, larger pulleys, or lower current"
                            + " limits";
                case PLATE -> "a thicker or wider plate, the pulley nearer to it, or lower current limits";
                case WHEEL_BEARINGS ->
                    "larger wheel bearings, the belt nearer the wheel's middle, larger pulleys, or lower current limits";
                case AXLE -> "a thicker axle, the belt nearer the hanger, larger pulleys, or lower current limits";
            };
        }
    }

    /// A tension that was chosen keeps teeth from jumping; that it is not too much is asked of slots and bearing.
    static final class Set extends StrengthCheck {
        Set() {
            super(
                    "tension-set",
                    "The set tension keeps teeth in",
                    "N",
                    Scope.DRIVE,
                    "a belt maker's manual, or the workshop's jump tests; habit",
                    Role.DRIVE_PULLEY,
                    Role.MOTOR,
                    Role.WHEEL_PULLEY,
                    Role.CONTROLLER,
                    Role.WHEEL);
            placed();
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().placement().tensionN().known();
        }

        @Override
        double demand(Subject s, At at, double motorNm) {
            return Tension.leastN(s, motorNm);
        }

        @Override
        double capacity(Subject s, At at, double motorNm) {
            return at.least(s.drive().placement().tensionN());
        }

        @Override
        void write(Subject s, Working w) {
            Tension.writeLeast(s, w);
            w.given("T", s.drive().placement().tensionN());
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " N; " + Numbers.atLeast(r.demandWorst, 0) + " wanted at the worse limits, "
                    + Numbers.atLeast(r.demand(), 0) + " at nominal";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "set " + Numbers.fixed(Math.ceil(r.demandWorst), 0) + " N or more";
        }
    }
}
