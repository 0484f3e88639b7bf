package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.DrivePulley;
import java.util.ArrayList;
import java.util.List;

/// Writes the chains along the axle that other workings stand on.
final class Stack {
    private Stack() {}

    /// From the hanger's end face out to the tread and back to the near side of the wheel pulley.
    static void wheelPulley(Subject s, Working w) {
        tread(s, w);
        var rim = s.drive().wheelPulley().rim();
        var terms = new ArrayList<>(List.of(
                plus("y_tread", "inner edge of the tread", s.endAt().wheelInnerMm()),
                plus("f", s.end().wheel().coreFaceInsetMm()),
                minus("q", s.drive().wheelPulley().rimStandoffMm()),
                minus("b_face", rim.faceWidthMm())));
        for (int i = 0; i < rim.flanges().count(); i++) {
            terms.add(minus("t_flange", rim.flangeThicknessMm()));
        }
        w.chain("y_rim", "mm", "near side of the wheel pulley", terms);
    }

    /// From the hanger's end face out to the inner edge of the tread.
    static void tread(Subject s, Working w) {
        w.chain(
                "y_tread",
                "mm",
                "inner edge of the tread",
                spaced(
                        s,
                        plus("t_ring", s.end().innerRing().lengthMm()),
                        plus("b_bearing", s.end().innerBearing().widthMm()),
                        plus("b_core", s.end().wheel().coreSpacingMm()).half(),
                        plus("o", s.end().wheel().coreOffsetMm()),
                        minus("b_tread", s.end().wheel().widthMm()).half()));
    }

    /// {@return the chain from the plate to the middle of the drive pulley's rim}
    static List<Term> driveRim(Subject s) {
        var pulley = s.drive().drivePulley();
        var terms = new ArrayList<Term>();
        terms.add(minus("i", s.drive().placement().plateInsetMm()));
        terms.add(plus("s_pulley", s.drive().placement().pulleyStandoffMm()));
        if (pulley.hubSide() == DrivePulley.HubSide.MOTOR) {
            terms.add(plus("l_hub", pulley.hubLengthMm()));
        }
        var flanges = pulley.rim().flanges();
        if (flanges.onMotorSide()) {
            terms.add(plus("t_flange1", pulley.rim().flangeThicknessMm()));
        }
        terms.add(plus("b_face1", pulley.rim().faceWidthMm()).half());
        return terms;
    }

    /// From the hanger's end face out to the inner face of the nut.
    static void stack(Subject s, Working w) {
        w.chain(
                "stack",
                "mm",
                "speed rings, bearings and core spacer",
                washed(
                        s,
                        plus("t_ring1", s.end().innerRing().lengthMm()),
                        plus("b1", s.end().innerBearing().widthMm()),
                        plus("l_spacer", s.end().coreSpacer().lengthMm()),
                        plus("b2", s.end().outerBearing().widthMm()),
                        plus("t_ring2", s.end().outerRing().lengthMm())));
    }

    /// The terms with the axle spacer of a kit that has one.
    private static List<Term> spaced(Subject s, Term... terms) {
        var all = new ArrayList<>(List.of(terms));
        if (s.filled(Role.AXLE_SPACER)) {
            all.add(1, plus("t_spacer", s.end().spacer().lengthMm()));
        }
        return all;
    }

    /// The terms with axle spacer and axle washer of a kit that has them.
    private static List<Term> washed(Subject s, Term... terms) {
        var all = spaced(s, terms);
        if (s.filled(Role.AXLE_WASHER)) {
            all.add(plus("t_washer", s.end().washer().thicknessMm()));
        }
        return all;
    }
}
