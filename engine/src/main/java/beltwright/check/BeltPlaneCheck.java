package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DrawnDimension.Along;
import beltwright.layout.DrawnDimension.View;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Both rims lie in one plane, within a quarter of a degree over the centre distance: at nominal
/// as drawn. What the limits of all parts add is taken up when the pulley is aligned, as far as it
/// can slide on its shaft.
final class BeltPlaneCheck extends Check {
    private static final String HABIT = "common practice, no source";
    private static final double ALLOWED_DEG = 0.25;

    BeltPlaneCheck() {
        super(
                "belt-plane",
                "Pulleys in one plane",
                "mm",
                Scope.DRIVE,
                "a quarter of a degree in all, a belt maker's technical manual",
                Role.DRIVE_PULLEY,
                Role.WHEEL_PULLEY,
                Role.BELT,
                Role.INNER_BEARING,
                Role.INNER_RING,
                Role.WHEEL,
                Role.MOTOR,
                Role.MOUNT);
        placed();
    }

    static double allowed(double centreDistance) {
        return Math.tan(Math.toRadians(ALLOWED_DEG)) * centreDistance;
    }

    private static final double FROM_PLATE_MM = 0.5;

    private static Range offset(Subject s) {
        return s.at().driveRimMiddleMm().minus(s.at().wheelRimMiddleMm());
    }

    private static Range inward(Subject s) {
        return Range.of(s.drive().placement().pulleyStandoffMm()).plus(-FROM_PLATE_MM);
    }

    private static Range outward(Subject s) {
        return ShaftChecks.Reach.reach(s).minus(ShaftChecks.Reach.length(s).times(ShaftChecks.Reach.SHARE));
    }

    private static Range travel(Subject s) {
        var inward = inward(s);
        var outward = outward(s);
        return new Range(
                travel(inward.low(), outward.low()),
                travel(inward.nominal(), outward.nominal()),
                travel(inward.high(), outward.high()));
    }

    static double travel(double inward, double outward) {
        return Math.max(0, Math.min(inward, outward));
    }

    private static Range allowed(Subject s) {
        var c = s.at().centreDistanceMm();
        return new Range(allowed(c.low()), allowed(c.nominal()), allowed(c.high()));
    }

    static double left(double nominal, double highest, double travel) {
        return Math.max(nominal, highest - travel);
    }

    private static Range left(Subject s) {
        var offset = offset(s).absolute();
        return new Range(
                offset.low(),
                offset.nominal(),
                left(offset.nominal(), offset.high(), travel(s).low()));
    }

    @Override
    public void measure(Subject s, Reading out) {
        out.set(left(s), allowed(s));
    }

    @Override
    public void measureDrawn(Subject drawn, Subject designed, Reading out) {
        double travel = travel(drawn).nominal();
        double kept = offset(designed).absolute().nominal();
        out.set(
                Range.exact(left(kept, offset(drawn).absolute().nominal(), travel)),
                Range.exact(allowed(drawn).nominal()));
    }

    @Override
    public void explain(Subject s, Working w, Reading out) {
        w.chain("y_drive", "mm", "middle of the drive pulley's rim", Stack.driveRim(s));
        Stack.tread(s, w);
        var rim = s.drive().wheelPulley().rim();
        var terms = new ArrayList<>(List.of(
                plus("y_tread", "inner edge of the tread", s.endAt().wheelInnerMm()),
                plus("f", s.end().wheel().coreFaceInsetMm()),
                minus("q", s.drive().wheelPulley().rimStandoffMm())));
        if (rim.flanges().onWheelSide()) {
            terms.add(minus("t_flange2", rim.flangeThicknessMm()));
        }
        terms.add(minus("b_face2", rim.faceWidthMm()).half());
        w.chain("y_wheel", "mm", "middle of the wheel pulley's rim", terms);
        var offset = offset(s);
        w.chain(
                "o_belt",
                "mm",
                "offset of the belt planes",
                List.of(
                        plus("y_drive", "middle of the drive pulley's rim", s.at().driveRimMiddleMm()),
                        minus("y_wheel", "middle of the wheel pulley's rim", s.at().wheelRimMiddleMm())));
        w.given("s_pulley", s.drive().placement().pulleyStandoffMm());
        w.given("s_least", "least gap from the plate", FROM_PLATE_MM, "mm", HABIT);
        w.line("a_in", "s_pulley − s_least", inward(s).nominal(), "mm", "the pulley can slide inward");
        w.chain("l_reach", "mm", "shaft beyond the near end of the pulley", ShaftChecks.Reach.reachTerms(s));
        w.given(
                "l_pulley",
                "length of the drive pulley, hub and rim",
                ShaftChecks.Reach.length(s).nominal(),
                "mm",
                "layout");
        w.given("share", "share of it that the shaft must fill", ShaftChecks.Reach.SHARE, "", HABIT);
        w.line("a_out", "l_reach − share·l_pulley", outward(s).nominal(), "mm", "the pulley can slide outward");
        w.line("travel", "max(0, min(a_in, a_out))", travel(s).nominal(), "mm", "either way, when it is aligned");
        w.given(
                "travel_min",
                "the same at the worse limits of shaft, plate, gap and pulley",
                travel(s).low(),
                "mm",
                "worst case");
        w.given(
                "o_most_limits",
                "offset at the limits of all parts",
                offset.absolute().high(),
                "mm",
                "worst case");
        w.line(
                "o_left",
                "max(abs(o_belt), o_most_limits − travel_min)",
                left(s).high(),
                "mm",
                "left after aligning, at worst");
        w.given("C", "centre distance", s.at().centreDistanceMm(), "layout");
        w.given("δ", "allowed in all", ALLOWED_DEG, "°", source());
        var allowed = allowed(s);
        w.line("o_most", "tan(δ·π/180)·C", allowed.nominal(), "mm", "allowed offset");
        if (allowed.high() > allowed.low()) {
            w.line("o_most_min", "tan(δ·π/180)·C_min", allowed.low(), "mm", "at the shortest centre distance");
        }
        out.set(left(s), allowed);
    }

    @Override
    public String says(Subject s, Reading r) {
        return "offset " + Numbers.fixed(r.demand, 1) + " mm as drawn, up to "
                + Numbers.fixed(offset(s).absolute().high(), 1) + " by the limits, of which aligning takes "
                + Numbers.fixed(travel(s).low(), 1) + "; " + r.capacityText() + " allowed";
    }

    @Override
    public String remedy(Subject s, Reading r) {
        double stand =
                s.drive().placement().pulleyStandoffMm().nominal() - offset(s).nominal();
        return "set the drive pulley by a straightedge across both rims, about " + mm(stand) + " from the plate";
    }

    @Override
    public List<DrawnDimension> places(Subject s) {
        double x = s.at().motorXMm();
        return List.of(new DrawnDimension(
                "plate to drive pulley",
                View.PLAN,
                s.side(),
                x,
                s.plan(s.at().plateOuterMm().nominal()),
                x,
                s.plan(s.at().drivePulleyNearMm().nominal()),
                Along.VERTICAL,
                false,
                key(s)));
    }
}
