package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.layout.DriveLayout;
import beltwright.part.BeltProfile;
import beltwright.part.Idler;
import java.util.ArrayList;
import java.util.List;

/// The belt's way around its pulleys, constructed with their common tangents, counter-clockwise from where it runs on
/// to the wheel pulley. The wheel pulley is the first of its rounds.
record BeltPath(List<Round> rounds) {
    BeltPath {
        rounds = List.copyOf(rounds);
    }

    /// One pitch circle that the belt runs around, inside the loop or on the back of the belt.
    record Round(Point centre, double radius, boolean onBack) {
        /// {@return +1 where the belt turns left around it, −1 where it turns right}
        int turn() {
            return onBack ? -1 : 1;
        }
    }

    /// The way around two pulleys and nothing else.
    BeltPath(Point wheel, double wheelRadius, Point drive, double driveRadius) {
        this(List.of(new Round(wheel, wheelRadius, false), new Round(drive, driveRadius, false)));
    }

    /// The way around the pulleys of a drive and its idler, if the belt lies on that.
    static BeltPath of(Drive drive, DriveLayout at) {
        var wheel = new Round(Point.ORIGIN, drive.wheelPulley().rim().pitchDiameterMm() / 2, false);
        var motor = new Round(
                new Point(at.motorXMm(), at.motorZMm()),
                drive.drivePulley().rim().pitchDiameterMm() / 2,
                false);
        var pulleys = new BeltPath(List.of(wheel, motor));
        var idler = drive.idler();
        if (idler.blank()) {
            return pulleys;
        }
        var third = new Round(
                new Point(at.idlerXMm(), at.idlerZMm()),
                idler.pitchDiameterMm(drive.belt().profile()).nominal() / 2,
                idler.runs() == Idler.Runs.BACK);
        boolean left = motor.centre().cross(third.centre()) > 0;
        var guided = new BeltPath(left ? List.of(wheel, motor, third) : List.of(wheel, third, motor));
        return guided.exists() && guided.bow(third).sweep() * third.turn() < Math.PI ? guided : pulleys;
    }

    /// {@return whether there are tangents at all: no circle lies inside another or in the way}
    boolean exists() {
        for (int i = 0; i < rounds.size(); i++) {
            if (!Double.isFinite(heading(i))) {
                return false;
            }
        }
        return true;
    }

    private Round round(int i) {
        return rounds.get((i + rounds.size()) % rounds.size());
    }

    /// {@return the direction of the span from one round to the next (rad)}
    private double heading(int i) {
        var from = round(i);
        var to = round(i + 1);
        var between = to.centre().minus(from.centre());
        return between.angle() + Math.asin((from.turn() * from.radius() - to.turn() * to.radius()) / between.length());
    }

    private Segment.Bow bow(int i, double inward) {
        var round = round(i);
        double arrives = heading(i - 1);
        double turned = round.turn() * (heading(i) - arrives) % (2 * Math.PI);
        return new Segment.Bow(
                round.centre(),
                round.radius() - round.turn() * inward,
                arrives - round.turn() * Math.PI / 2,
                round.turn() * (turned < 0 ? turned + 2 * Math.PI : turned));
    }

    /// {@return the arc of the pitch line on one of the rounds}
    Segment.Bow bow(Round round) {
        return bow(rounds.indexOf(round), 0);
    }

    /// {@return arcs and spans in turn, this far inside the pitch line}
    List<Segment> stretches(double inward) {
        var stretches = new ArrayList<Segment>();
        for (int i = 0; i < rounds.size(); i++) {
            var on = bow(i, inward);
            stretches.add(on);
            stretches.add(new Segment.Straight(
                    on.to(), bow((i + 1) % rounds.size(), inward).from()));
        }
        return stretches;
    }

    private Track pitchLine() {
        return new Track(stretches(0));
    }

    double length() {
        return pitchLine().length();
    }

    /// The toothed belt: its back, and its toothed side with every tooth.
    List<Contour> belt(BeltProfile profile, int teeth) {
        double land = profile.pitchLineDifferentialMm();
        double back = land - (profile.heightMm() - profile.toothHeightMm());
        var line = pitchLine();
        var toothed = stretches(land);
        double pitch = line.length() / teeth;
        double half = ToothForm.widthMm(profile) / 2;
        var inside = new ArrayList<Segment>();
        for (int k = 0; k < teeth; k++) {
            double middle = (k + 0.5) * pitch;
            var a = at(line, middle - half, toothed);
            var b = at(line, middle + half, toothed);
            inside.addAll(ToothForm.dip(profile, a, b, b.minus(a).left().unit()));
            inside.addAll(line.between(middle + half, middle + pitch - half, toothed));
        }
        return List.of(new Contour(stretches(back)), new Contour(inside));
    }

    private static Point at(Track line, double along, List<Segment> beside) {
        double total = line.length();
        double s = (along % total + total) % total;
        return line.between(s, s + 1e-6 * total, beside).getFirst().from();
    }

    /// {@return the direction of a groove that a belt tooth lies in (rad)}
    ///
    /// @param centre of the pulley
    double groove(Point centre, int teeth) {
        for (int i = 0; i < rounds.size(); i++) {
            if (round(i).centre().equals(centre)) {
                double pitch = length() / teeth;
                double begins = pitchLine().begins(2 * i);
                double middle = (Math.ceil(begins / pitch - 0.5) + 0.5) * pitch;
                return bow(i, 0).start() + round(i).turn() * (middle - begins) / round(i).radius();
            }
        }
        return 0;
    }

    /// {@return the outline of a toothed rim with all its grooves, one of them in this direction (rad)}
    static Contour rim(Point centre, BeltProfile profile, int teeth, double groove) {
        double radius = teeth * profile.pitchMm() / Math.PI / 2 - profile.pitchLineDifferentialMm();
        double step = 2 * Math.PI / teeth;
        double half = Math.asin(ToothForm.widthMm(profile) / 2 / radius);
        var outline = new ArrayList<Segment>();
        for (int i = 0; i < teeth; i++) {
            double at = groove + i * step;
            var a = centre.plus(Point.polar(radius, at - half));
            var b = centre.plus(Point.polar(radius, at + half));
            outline.addAll(ToothForm.dip(profile, a, b, Point.polar(-1, at)));
            outline.add(new Segment.Bow(centre, radius, at + half, step - 2 * half));
        }
        return new Contour(outline);
    }
}
