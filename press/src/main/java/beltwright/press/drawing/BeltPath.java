package beltwright.press.drawing;

import beltwright.part.BeltProfile;
import beltwright.part.ToothedRim;
import java.util.ArrayList;
import java.util.List;

/// The belt's way around its two pulleys, constructed with the two outer tangents, counter-clockwise from where it
/// runs on to the wheel pulley.
///
/// @param wheelRadius of the wheel pulley's pitch circle (mm)
/// @param driveRadius of the drive pulley's pitch circle (mm)
record BeltPath(Point wheel, double wheelRadius, Point drive, double driveRadius) {

    /// {@return whether there are tangents at all: neither circle lies inside the other}
    boolean exists() {
        return wheel.distance(drive) > Math.abs(wheelRadius - driveRadius);
    }

    private double toward() {
        return drive.minus(wheel).angle();
    }

    /// The radii to the tangent points stand at this angle to the line of centres.
    private double tangent() {
        return Math.acos((wheelRadius - driveRadius) / wheel.distance(drive));
    }

    /// {@return the four stretches, this far inside the pitch line}
    List<Segment> stretches(double inward) {
        double a = tangent();
        double t = toward();
        var onWheel = new Segment.Bow(wheel, wheelRadius - inward, t + a, 2 * (Math.PI - a));
        var onDrive = new Segment.Bow(drive, driveRadius - inward, t - a, 2 * a);
        return List.of(
                onWheel,
                new Segment.Straight(onWheel.to(), onDrive.from()),
                onDrive,
                new Segment.Straight(onDrive.to(), onWheel.from()));
    }

    private double[] lengths() {
        double a = tangent();
        double span = Math.sqrt(
                Math.pow(wheel.distance(drive), 2) - (wheelRadius - driveRadius) * (wheelRadius - driveRadius));
        return new double[] {wheelRadius * 2 * (Math.PI - a), span, driveRadius * 2 * a, span};
    }

    double length() {
        double sum = 0;
        for (double l : lengths()) {
            sum += l;
        }
        return sum;
    }

    /// {@return the outline between two places along the pitch line, this far inside it}
    List<Segment> between(double start, double end, double inward) {
        var pieces = new ArrayList<Segment>();
        var lengths = lengths();
        var stretches = stretches(inward);
        double total = length();
        double begins = 0;
        for (int i = 0; i < 2 * stretches.size() && begins < end; i++) {
            double length = lengths[i % 4];
            double a = Math.max(start, begins) - begins;
            double b = Math.min(end, begins + length) - begins;
            if (b - a > 1e-9 * total) {
                pieces.add(part(stretches.get(i % 4), a / length, b / length));
            }
            begins += length;
        }
        return pieces;
    }

    private static Segment part(Segment whole, double a, double b) {
        return switch (whole) {
            case Segment.Straight s -> {
                var step = s.to().minus(s.from());
                yield new Segment.Straight(
                        s.from().plus(step.times(a)), s.from().plus(step.times(b)));
            }
            case Segment.Bow s ->
                new Segment.Bow(s.centre(), s.radius(), s.start() + a * s.sweep(), (b - a) * s.sweep());
        };
    }

    private Point at(double along, double inward) {
        double s = (along % length() + length()) % length();
        return between(s, s + 1e-6 * length(), inward).getFirst().from();
    }

    /// The toothed belt: its back, and its toothed side with every tooth.
    List<Contour> belt(BeltProfile profile, int teeth) {
        double land = profile.pitchLineDifferentialMm();
        double back = land - (profile.heightMm() - profile.toothHeightMm());
        double pitch = length() / teeth;
        double half = ToothForm.widthMm(profile) / 2;
        var inside = new ArrayList<Segment>();
        for (int k = 0; k < teeth; k++) {
            double middle = (k + 0.5) * pitch;
            var a = at(middle - half, land);
            var b = at(middle + half, land);
            inside.addAll(ToothForm.dip(profile, a, b, b.minus(a).left().unit()));
            inside.addAll(between(middle + half, middle + pitch - half, land));
        }
        return List.of(new Contour(stretches(back)), new Contour(inside));
    }

    /// {@return the direction of a groove of the wheel pulley that a belt tooth lies in (rad)}
    double wheelGroove(int teeth) {
        return toward() + tangent() + 0.5 * length() / teeth / wheelRadius;
    }

    /// {@return the direction of a groove of the drive pulley that a belt tooth lies in (rad)}
    double driveGroove(int teeth) {
        double pitch = length() / teeth;
        double begins = lengths()[0] + lengths()[1];
        double middle = (Math.ceil(begins / pitch - 0.5) + 0.5) * pitch;
        return toward() - tangent() + (middle - begins) / driveRadius;
    }

    /// {@return the outline of a toothed rim with all its grooves, one of them in this direction (rad)}
    static Contour rim(Point centre, ToothedRim rim, double groove) {
        double radius = rim.outsideDiameterMm() / 2;
        double step = 2 * Math.PI / rim.teeth();
        double half = Math.asin(ToothForm.widthMm(rim.profile()) / 2 / radius);
        var outline = new ArrayList<Segment>();
        for (int i = 0; i < rim.teeth(); i++) {
            double at = groove + i * step;
            var a = centre.plus(Point.polar(radius, at - half));
            var b = centre.plus(Point.polar(radius, at + half));
            outline.addAll(ToothForm.dip(rim.profile(), a, b, Point.polar(-1, at)));
            outline.add(new Segment.Bow(centre, radius, at + half, step - 2 * half));
        }
        return new Contour(outline);
    }
}
