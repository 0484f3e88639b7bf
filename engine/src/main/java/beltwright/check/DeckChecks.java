package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.layout.Steering;
import beltwright.part.Hanger;
import beltwright.part.StandardSizes;
import beltwright.part.Thread;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Does anything touch the deck over full lean and steer, with the bushings pressed: wheel, motor, wires? And does the
/// baseplate go under it?
final class DeckChecks {
    private static final String HABIT = "common practice, no source";
    private static final double DECK_MM = 5;

    private DeckChecks() {}

    static List<Check> all() {
        return List.of(
                new Holes("deck-holes", "Baseplate holes meet the deck", Role.DECK),
                new Holes("riser-holes", "Baseplate holes meet the riser", Role.RISER),
                new ScrewLength(),
                new WheelBite(),
                new OverMotor("deck-motor", "Motor clear of the deck, full lean", false),
                new OverMotor("deck-wires", "Wires clear of the deck, full lean", true));
    }

    /// {@return the steering axis with its wedge (°)}
    private static Range axis(Subject s) {
        var axis = Range.of(s.kit().hanger().steeringAxisDeg());
        return s.filled(Role.RISER) ? axis.plus(s.kit().riser().wedgeDeg()) : axis;
    }

    /// {@return between two steering axes (mm); nothing where there is one}
    private static Range link(Subject s) {
        var hanger = s.kit().hanger();
        return hanger.kingpin() == Hanger.Kingpin.DOUBLE ? Range.of(hanger.linkMm()) : Range.ZERO;
    }

    private static Steering steering(Subject s) {
        return new Steering(
                Math.toRadians(axis(s).nominal()), s.kit().hanger().rakeMm().nominal(), link(s).nominal());
    }

    /// {@return the least distance over full lean; at worst at every corner of steering axis, rake and link (mm)}
    private static double least(Subject s, At at, Steering.Round body, Steering.Board board) {
        double lean = lean(s, at);
        if (at != At.WORST) {
            return steering(s).leastMm(body, board, lean);
        }
        double least = Double.POSITIVE_INFINITY;
        for (double axis : ends(axis(s))) {
            for (double rake : ends(Range.of(s.kit().hanger().rakeMm()))) {
                for (double link : ends(link(s))) {
                    double there = new Steering(Math.toRadians(axis), rake, link).leastMm(body, board, lean);
                    least = Math.min(least, there);
                }
            }
        }
        return least;
    }

    private static double[] ends(Range r) {
        return r.low() == r.high() ? new double[] {r.low()} : new double[] {r.low(), r.high()};
    }

    private static Steering.Board board(Subject s, At at, double well) {
        var deck = s.kit().deck();
        var hanger = s.kit().hanger();
        double riser = s.filled(Role.RISER) ? at.least(s.kit().riser().thicknessMm()) : 0;
        return new Steering.Board(
                at.least(hanger.axleDropMm()) + riser - at.most(hanger.bushingTravelMm()) + well,
                at.most(deck.widthMm()) / 2,
                at.most(deck.endMm()) - at.least(hanger.axleFromBaseMm()));
    }

    private static double lean(Subject s, At at) {
        return Math.toRadians(at.most(s.kit().hanger().fullLeanDeg()));
    }

    /// {@return a body about a line along the axle, from end to end: at worst the longest that the limits allow, for a
    ///     shorter one lies within it}
    ///
    /// @param x its middle ahead of the axle (mm)
    /// @param z its middle above the axle (mm)
    /// @param nearMm its nearer end from the hanger's end face (mm)
    /// @param farMm its farther end from there (mm)
    private static Steering.Round body(Subject s, At at, double x, double z, Range nearMm, Range farMm, double radius) {
        var half = Range.of(s.kit().hanger().widthMm()).times(0.5);
        return new Steering.Round(x, z, at.least(half.plus(nearMm)), at.most(half.plus(farMm)), radius);
    }

    /// Writes deck, riser and steering.
    private static void write(Subject s, Working w) {
        var hanger = s.kit().hanger();
        var deck = s.kit().deck();
        w.given("h_drop", hanger.axleDropMm());
        String riser = "";
        if (s.filled(Role.RISER)) {
            w.given("t_riser", s.kit().riser().thicknessMm());
            riser = " + t_riser";
        }
        w.given("h_travel", hanger.bushingTravelMm());
        w.line(
                "h_under",
                "h_drop" + riser + " − h_travel",
                board(s, At.NOMINAL, 0).underMm(),
                "mm",
                "underside of the deck above the axle, bushings pressed");
        w.given("b_deck", deck.widthMm());
        w.given("l_end", deck.endMm());
        w.given("x_base", hanger.axleFromBaseMm());
        w.line(
                "l_behind",
                "l_end − x_base",
                board(s, At.NOMINAL, 0).behindMm(),
                "mm",
                "end of the deck behind the axle");
        w.given("λ_0", hanger.steeringAxisDeg());
        if (s.filled(Role.RISER)) {
            w.given("λ_wedge", s.kit().riser().wedgeDeg());
        }
        var steering = steering(s);
        w.line(
                "λ",
                s.filled(Role.RISER) ? "(λ_0 + λ_wedge)·π/180" : "λ_0·π/180",
                steering.axisRad(),
                "rad",
                hanger.kingpin() + " kingpin, steering axis");
        w.given("r_rake", hanger.rakeMm());
        if (hanger.kingpin() == Hanger.Kingpin.DOUBLE) {
            w.given("l_link", hanger.linkMm());
        }
        w.given("θ_full", hanger.fullLeanDeg());
        double lean = lean(s, At.NOMINAL);
        w.line("ψ", "atan(tan(θ_full·π/180)/cos(λ))", steering.turnRad(lean), "rad", "hanger about its steering axis");
        w.line("σ", "atan(tan(λ)·sin(θ_full·π/180))", steering.steerRad(lean), "rad", "steering angle, for the reader");
    }

    /// The distance is not vertical, so a riser needs more than what is missing; how much more, trying tells.
    private static String raise(Subject s, Reading r) {
        var missing = Numbers.fixed(r.demand() - r.capacityWorst(), 0);
        return s.filled(Role.RISER)
                ? "a riser more than " + missing + " mm thicker"
                : "a riser of more than " + missing + " mm";
    }

    /// Baseplate holes against the holes of deck or riser.
    static final class Holes extends Check {
        private final Role role;

        Holes(String slug, String name, Role role) {
            super(
                    slug,
                    name,
                    "mm",
                    Scope.KIT,
                    "play of the screw in its hole against the mismatch of the patterns",
                    role,
                    Role.HANGER);
            this.role = role;
        }

        private boolean deck() {
            return role == Role.DECK;
        }

        private Dimension length(Subject s) {
            return deck() ? s.kit().deck().holesLengthMm() : s.kit().riser().holesLengthMm();
        }

        private Dimension width(Subject s) {
            return deck() ? s.kit().deck().holesWidthMm() : s.kit().riser().holesWidthMm();
        }

        private Dimension hole(Subject s) {
            return deck() ? s.kit().deck().holeMm() : s.kit().riser().holeMm();
        }

        /// {@return the thread of the kit's deck screws, of the usual ones where no kit has any}
        private static Thread thread(Subject s) {
            return s.filled(Role.DECK_SCREWS) ? s.kit().deckScrew().thread() : Thread.M5;
        }

        private Range mismatch(Subject s) {
            var along =
                    Range.of(length(s)).minus(s.kit().hanger().baseLengthMm()).absolute();
            var across =
                    Range.of(width(s)).minus(s.kit().hanger().baseWidthMm()).absolute();
            return new Range(
                    Math.hypot(along.low(), across.low()) / 2,
                    Math.hypot(along.nominal(), across.nominal()) / 2,
                    Math.hypot(along.high(), across.high()) / 2);
        }

        private Range play(Subject s) {
            double d = thread(s).majorMm();
            var hole = hole(s);
            return new Range(
                    HolesMeet.play(hole.lower(), d),
                    HolesMeet.play(hole.nominal(), d),
                    HolesMeet.play(hole.upper(), d));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(mismatch(s), play(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("l1", s.kit().hanger().baseLengthMm());
            w.given("b1", s.kit().hanger().baseWidthMm());
            w.given("l2", length(s));
            w.given("b2", width(s));
            w.given("d_hole", hole(s));
            var thread = thread(s);
            boolean usual = !s.filled(Role.DECK_SCREWS);
            w.given(
                    "d_screw",
                    "thread " + thread,
                    thread.majorMm(),
                    "mm",
                    usual ? "the usual deck screw, " + HABIT : "ISO 261");
            var mismatch = mismatch(s);
            w.line("m", "√((l2 − l1)^2 + (b2 − b1)^2)/2", mismatch.nominal(), "mm", "each hole off its mate");
            var play = play(s);
            w.line("play", "(d_hole − d_screw)/2", play.nominal(), "mm", "each screw in its hole");
            out.set(mismatch, play);
        }

        @Override
        public String says(Subject s, Reading r) {
            return "holes " + r.demandText() + " mm off; the screws allow " + r.capacityText();
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "holes " + mm(s.kit().hanger().baseLengthMm().nominal()) + " by "
                    + mm(s.kit().hanger().baseWidthMm().nominal()) + "; do not file a deck's holes wider";
        }
    }

    /// The screw passes deck, riser and baseplate and still stands out of its nut.
    static final class ScrewLength extends ChainGap {
        ScrewLength() {
            super(
                    "deck-screw",
                    "Deck screw through its nut",
                    Scope.KIT,
                    0,
                    "one thread past the nut, " + HABIT,
                    Role.DECK_SCREWS,
                    Role.DECK_NUTS,
                    Role.DECK,
                    Role.HANGER);
        }

        @Override
        double wanted(Subject s) {
            return s.kit().deckScrew().thread().pitchMm();
        }

        @Override
        List<Term> terms(Subject s) {
            var terms = new ArrayList<>(List.of(
                    plus("l", s.kit().deckScrew().lengthMm()),
                    minus("t_deck", s.kit().deck().thicknessMm()),
                    minus("t_base", s.kit().hanger().baseThicknessMm()),
                    minus("m_nut", s.kit().deckNut().heightMm())));
            if (s.filled(Role.RISER)) {
                terms.add(minus("t_riser", s.kit().riser().thicknessMm()));
            }
            return terms;
        }

        @Override
        public String remedy(Subject s, Reading r) {
            double wanted = s.kit().deckScrew().lengthMm().nominal() + r.demand() - r.capacityWorst();
            for (double length : StandardSizes.SCREW_LENGTHS_MM) {
                if (length >= wanted) {
                    return "deck screws " + mm(length) + " long";
                }
            }
            return s.filled(Role.RISER) ? "a thinner riser" : "longer screws than are sold: a thinner deck";
        }
    }

    /// The tyre against the deck: a wheel that bites stops at once.
    static final class WheelBite extends Check {
        WheelBite() {
            super(
                    "deck-wheel",
                    "Wheel clear of the deck, full lean",
                    "mm",
                    Scope.END,
                    "inclined hinge, least distance of the turned wheel, bushings pressed; wanted: " + HABIT,
                    Role.DECK,
                    Role.WHEEL,
                    Role.HANGER,
                    Role.INNER_BEARING,
                    Role.INNER_RING);
        }

        private static double gap(Subject s, At at) {
            double well = at.least(s.kit().deck().wheelWellMm());
            double radius = at.most(s.end().wheel().diameterMm()) / 2;
            var wheel = body(s, at, 0, 0, s.endAt().wheelInnerMm(), s.endAt().wheelOuterMm(), radius);
            return least(s, at, wheel, board(s, at, well));
        }

        private static Range gap(Subject s) {
            return new Range(gap(s, At.WORST), gap(s, At.NOMINAL), gap(s, At.BEST));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(DECK_MM, gap(s));
        }

        @Override
        public void measureDrawn(Subject drawn, Subject designed, Reading out) {
            out.set(DECK_MM, Range.exact(gap(drawn, At.NOMINAL)));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            DeckChecks.write(s, w);
            w.given("t_well", s.kit().deck().wheelWellMm());
            w.given("D_wheel", s.end().wheel().diameterMm());
            w.given("B", s.kit().hanger().widthMm());
            w.given(
                    "y_tread",
                    "inner edge of the tread from the hanger's end face",
                    s.endAt().wheelInnerMm(),
                    "layout");
            w.given(
                    "y_outer",
                    "outer edge of the tread from the hanger's end face",
                    s.endAt().wheelOuterMm(),
                    "layout");
            var gap = gap(s);
            w.given(
                    "g",
                    "least distance, level and leant to both sides",
                    gap.nominal(),
                    "mm",
                    "turned wheel against deck");
            w.given("g_worst", "the same at the worst corner of all limits", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", DECK_MM, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return DeckChecks.raise(s, r) + ", a smaller wheel, harder bushings, or wheel wells";
        }
    }

    /// Motor and plate, or the wires on them, against the deck.
    static final class OverMotor extends Check {
        private final boolean wires;

        OverMotor(String slug, String name, boolean wires) {
            super(
                    slug,
                    name,
                    "mm",
                    Scope.DRIVE,
                    "inclined hinge, least distance of the turned motor, bushings pressed; wanted: " + HABIT,
                    Role.MOTOR,
                    Role.DECK,
                    Role.HANGER,
                    Role.MOUNT,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            this.wires = wires;
            placed();
        }

        private double radius(Subject s, At at) {
            double can = at.most(s.drive().motor().canDiameterMm()) / 2;
            return wires
                    ? can + at.most(s.drive().motor().wireDiameterMm())
                    : Math.max(can, at.most(s.drive().mount().plateRadiusMm()));
        }

        private double gap(Subject s, At at) {
            double least = Double.POSITIVE_INFINITY;
            var c = s.at().centreDistanceMm();
            var angle = s.drive().placement().aboveAxleDeg();
            var plate = wires ? s.at().plateInnerMm() : s.at().plateOuterMm();
            int corners = at == At.WORST ? 4 : 1;
            for (int corner = 0; corner < corners; corner++) {
                double centre = at != At.WORST ? c.nominal() : (corner & 1) == 0 ? c.low() : c.high();
                double a = Math.toRadians(
                        at != At.WORST ? angle.nominal() : (corner & 2) == 0 ? angle.lower() : angle.upper());
                double x = s.drive().placement().motor().sign() * centre * Math.cos(a);
                var motor = body(s, at, x, centre * Math.sin(a), s.at().motorEndMm(), plate, radius(s, at));
                least = Math.min(least, least(s, at, motor, board(s, at, 0)));
            }
            return least;
        }

        private Range gap(Subject s) {
            return new Range(gap(s, At.WORST), gap(s, At.NOMINAL), gap(s, At.BEST));
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(DECK_MM, gap(s));
        }

        @Override
        public void measureDrawn(Subject drawn, Subject designed, Reading out) {
            out.set(DECK_MM, Range.exact(gap(drawn, At.NOMINAL)));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            DeckChecks.write(s, w);
            Closure.centreDistance(s.drive(), s.at(), w);
            Ground.motorPosition(s, w);
            w.given("d_can", s.drive().motor().canDiameterMm());
            if (wires) {
                w.given("d_wire", s.drive().motor().wireDiameterMm());
                w.line("r", "d_can/2 + d_wire", radius(s, At.NOMINAL), "mm", "wires laid over the can");
            } else {
                w.given("r_plate", s.drive().mount().plateRadiusMm());
                w.line("r", "max(d_can/2, r_plate)", radius(s, At.NOMINAL), "mm", "whichever stands higher");
            }
            w.given("y_end", "far end of the motor from the hanger's end face", s.at().motorEndMm(), "layout");
            w.given("B", s.kit().hanger().widthMm());
            if (wires) {
                w.given(
                        "y_plate",
                        "inner face of the plate from the hanger's end face",
                        s.at().plateInnerMm(),
                        "layout");
            } else {
                w.given(
                        "y_plate",
                        "outer face of the plate from the hanger's end face",
                        s.at().plateOuterMm(),
                        "layout");
            }
            var gap = gap(s);
            w.given(
                    "g",
                    "least distance, level and leant to both sides",
                    gap.nominal(),
                    "mm",
                    "turned motor against deck");
            w.given("g_worst", "the same at the worst corner of all limits", gap.low(), "mm", "worst case");
            out.set(w.given("g_wanted", "required clearance", DECK_MM, "mm", HABIT), gap);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return DeckChecks.raise(s, r) + ", a lower mount angle, or "
                    + (wires ? "the wires led out below the motor" : "a smaller motor");
        }
    }
}
