package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.belt.PitchLine;
import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.part.ToothedRim;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.List;

/// Does the belt go with its pulleys, and does it close in the slot?
final class BeltChecks {
    private BeltChecks() {}

    static List<Check> all() {
        return List.of(
                new Matches(),
                new Width(),
                new TakeUp(),
                new FittingTravel(),
                new PulleysClear(),
                new Mesh(),
                new SmallPulley());
    }

    /// Pitch and profile of belt and both pulleys are one.
    static final class Matches extends YesNo {
        Matches() {
            super(
                    "belt-profile",
                    "Belt and pulleys of one profile",
                    Scope.DRIVE,
                    "ISO 13050; ISO 17396",
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
        }

        @Override
        boolean met(Subject s) {
            var belt = s.drive().belt().profile();
            return belt == s.drive().drivePulley().rim().profile()
                    && belt == s.drive().wheelPulley().rim().profile();
        }

        @Override
        String asked(Subject s) {
            return "all three of one profile";
        }

        @Override
        void before(Subject s, Working w) {
            var belt = s.drive().belt().profile();
            var drive = s.drive().drivePulley().rim().profile();
            var wheel = s.drive().wheelPulley().rim().profile();
            w.given("p", "pitch of the belt, " + belt, belt.pitchMm(), "mm", belt.standard());
            w.given("p1", "pitch of the drive pulley, " + drive, drive.pitchMm(), "mm", drive.standard());
            w.given("p2", "pitch of the wheel pulley, " + wheel, wheel.pitchMm(), "mm", wheel.standard());
        }

        @Override
        public String says(Subject s, Reading r) {
            var d = s.drive();
            return r.capacity() == 1
                    ? d.belt().profile().standard() + " throughout"
                    : "belt " + d.belt().profile() + ", drive pulley "
                            + d.drivePulley().rim().profile() + ", wheel pulley "
                            + d.wheelPulley().rim().profile();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "use belt and pulleys of one profile; mixed ones skip and wear out fast";
        }
    }

    /// The belt runs between the flanges without being pinched.
    static final class Width extends ChainGap {
        Width() {
            super(
                    "belt-width",
                    "Belt between the flanges",
                    Scope.DRIVE,
                    0.3,
                    "common practice, no source",
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
        }

        private static ToothedRim narrower(Subject s) {
            var a = s.drive().drivePulley().rim();
            var b = s.drive().wheelPulley().rim();
            return a.faceWidthMm().lower() > b.faceWidthMm().lower() ? b : a;
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("b_face", narrower(s).faceWidthMm()),
                    minus("b_belt", s.drive().belt().widthMm()));
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a face at least " + leastMm(s.drive().belt().widthMm().upper() + r.demand())
                    + " wide, or a narrower belt";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double y = s.at().driveRimMiddleMm().nominal();
            double half = s.drive().belt().widthMm().nominal() / 2;
            double from = s.plan(y - half);
            double to = s.plan(y + half);
            return List.of(new DrawnDimension(
                    "belt width",
                    View.PLAN,
                    s.side(),
                    s.at().motorXMm(),
                    from,
                    s.at().motorXMm(),
                    to,
                    Along.VERTICAL,
                    false,
                    key(s)));
        }
    }

    /// With the belt on, the motor can still be pushed outward to tighten it.
    static final class TakeUp extends ChainGap {
        TakeUp() {
            super(
                    "take-up",
                    "Take-up left in the slot",
                    Scope.DRIVE,
                    1.0,
                    "at least 1 mm beyond the belt's length tolerance, common practice, no source",
                    Role.MOUNT,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
        }

        @Override
        void before(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("C_slot", s.drive().mount().slotMaxMm()),
                    minus("C", "centre distance", s.at().centreDistanceMm()));
        }

        @Override
        public Verdict verdict(Subject s, Reading r) {
            return s.at().closed() || !Closure.known(s.drive()) ? r.verdict() : Verdict.FAILS;
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.at().closed()
                    ? r.capacityText() + " mm left at a centre distance of "
                            + Numbers.fixed(s.at().centreDistanceMm().nominal(), 2) + " mm; " + r.demandText()
                            + " wanted"
                    : s.drive().idler().blank()
                            ? "the belt is too short to go around both pulleys"
                            : "in no position of the motor is the belt taut and on its idler";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return Remedies.belt(s);
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            return List.of(new DrawnDimension(
                    "centre distance",
                    View.SIDE,
                    s.side(),
                    0,
                    0,
                    s.at().motorXMm(),
                    s.at().motorZMm(),
                    Along.POINTS,
                    false,
                    key(s)));
        }
    }

    /// The motor can be moved inward far enough to put the belt on.
    static final class FittingTravel extends ChainGap {
        private static final double OPEN_MM = 1.8;

        FittingTravel() {
            super(
                    "fitting-travel",
                    "Travel to put the belt on",
                    Scope.DRIVE,
                    OPEN_MM,
                    "1.8 mm over open pulleys from a belt maker's technical manual, table 8; none where belt and pulley "
                            + "slide on together, a flange's height more where both are closed (common practice, no source)",
                    Role.MOUNT,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
        }

        @Override
        Range demand(Subject s) {
            if (s.drive().beltSlidesOn()) {
                return Range.ZERO;
            }
            var rim = s.drive().drivePulley().rim();
            return Range.of(rim.flangeDiameterMm())
                    .plus(-rim.outsideDiameterMm())
                    .times(0.5)
                    .plus(OPEN_MM);
        }

        @Override
        void before(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("C", "centre distance", s.at().centreDistanceMm()),
                    minus("C_near", s.drive().mount().slotMinMm()));
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm towards the axle; "
                    + (s.drive().beltSlidesOn()
                            ? "belt and wheel pulley slide on together"
                            : r.demandText() + " wanted");
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return Remedies.belt(s);
        }
    }

    /// The length equation has a root even where the pulleys overlap.
    static final class PulleysClear extends ChainGap {
        PulleysClear() {
            super(
                    "pulleys-clear",
                    "Pulleys clear of each other",
                    Scope.DRIVE,
                    1.0,
                    "common practice, no source",
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY,
                    Role.BELT);
        }

        @Override
        void before(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
        }

        @Override
        List<Term> terms(Subject s) {
            return List.of(
                    plus("C", "centre distance", s.at().centreDistanceMm()),
                    minus(
                                    "D_reach",
                                    "largest diameter of the wheel pulley, flange or belt",
                                    s.drive().wheelPulley().rim().reachMm())
                            .half(),
                    minus(
                                    "d_reach",
                                    "largest diameter of the drive pulley, flange or belt",
                                    s.drive().drivePulley().rim().reachMm())
                            .half());
        }

        @Override
        public Verdict verdict(Subject s, Reading r) {
            return s.at().closed() || !Closure.known(s.drive()) ? r.verdict() : Verdict.FAILS;
        }

        @Override
        public String says(Subject s, Reading r) {
            return s.at().closed() ? super.says(s, r) : "the belt is too short to go around both pulleys";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a longer belt, smaller flanges or fewer teeth";
        }
    }

    /// Whole teeth in mesh on the drive pulley.
    static final class Mesh extends WholeTeeth {
        Mesh() {
            super(
                    "teeth-in-mesh",
                    "Teeth in mesh",
                    6,
                    5,
                    "six whole teeth for the full rating, a belt maker's technical manual, table 11; rounded down,"
                            + " never up",
                    Role.DRIVE_PULLEY,
                    Role.BELT,
                    Role.WHEEL_PULLEY);
        }

        @Override
        Range teeth(Subject s) {
            var teeth = s.at().teethInMesh();
            return new Range(Math.floor(teeth.low()), Math.floor(teeth.nominal()), Math.floor(teeth.high()));
        }

        @Override
        void write(Subject s, Working w) {
            Closure.centreDistance(s.drive(), s.at(), w);
            double centre = s.at().centreDistanceMm().nominal();
            double wrap = Closure.driveWrap(s.drive(), centre, w);
            int teeth = s.drive().drivePulley().rim().teeth();
            w.line("z_mesh", "z1·wrap/(2·π)", PitchLine.teethInMesh(teeth, wrap), "teeth", "exact arc");
            w.line("z_whole", "floor(z_mesh)", teeth(s).nominal(), "teeth", "whole teeth count");
        }

        @Override
        public String says(Subject s, Reading r) {
            return Numbers.fixed(r.capacity(), 0) + " whole ("
                    + Numbers.fixed(s.at().teethInMesh().nominal(), 2) + "); " + ofWanted(r);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a larger drive pulley, a longer belt or a smaller wheel pulley";
        }

        @Override
        public List<DrawnDimension> places(Subject s) {
            double r = s.drive().drivePulley().rim().pitchDiameterMm() / 2;
            double x = s.at().motorXMm();
            double z = s.at().motorZMm();
            return List.of(new DrawnDimension(
                    "drive pulley pitch diameter",
                    View.SIDE,
                    s.side(),
                    x - r,
                    z,
                    x + r,
                    z,
                    Along.HORIZONTAL,
                    true,
                    key(s)));
        }
    }

    /// Small pulleys bend the belt hard and load each tooth more.
    static final class SmallPulley extends WholeTeeth {
        SmallPulley() {
            super(
                    "small-pulley",
                    "Teeth of the smaller pulley",
                    15,
                    12,
                    "least 12 teeth at 5 mm pitch, ISO 13050 (transcribed); 15 for a board, common practice, no source",
                    Role.DRIVE_PULLEY);
        }

        @Override
        Range teeth(Subject s) {
            return Range.exact(Math.min(
                    s.drive().drivePulley().rim().teeth(),
                    s.drive().wheelPulley().rim().teeth()));
        }

        @Override
        void write(Subject s, Working w) {
            var drive = s.drive();
            w.given(
                    "z1",
                    drive.drivePulley().id() + ".rim.teeth",
                    drive.drivePulley().rim().teeth(),
                    "",
                    "count");
            w.given(
                    "z2",
                    drive.wheelPulley().id() + ".rim.teeth",
                    drive.wheelPulley().rim().teeth(),
                    "",
                    "count");
            w.line("z_small", "min(z1, z2)", teeth(s).nominal(), "teeth", "the smaller");
        }

        @Override
        public String says(Subject s, Reading r) {
            return Numbers.fixed(r.capacity(), 0) + " teeth; " + ofWanted(r) + ", 12 at least";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a drive pulley of 15 teeth or more";
        }
    }
}
