package beltwright.app.geometry;

import java.util.function.DoubleUnaryOperator;

/// A belt pulled taut, found without any formula of a belt: a string around discs is as long as its reach in all
/// directions added up (Cauchy), and it lies on a disc in those directions in which that disc reaches furthest.
///
/// @param wheel pitch radius of the wheel pulley, at the origin (mm)
/// @param drive pitch radius of the drive pulley, on the line ahead (mm)
/// @param along idler along that line (mm), NaN without an idler
/// @param aside idler beside that line (mm)
/// @param idler pitch radius of the idler (mm)
/// @param onBack whether the idler presses on the back of the belt
record TautBelt(double wheel, double drive, double along, double aside, double idler, boolean onBack) {
    private static final int DIRECTIONS = 3600;
    private static final double STEP = 2 * Math.PI / DIRECTIONS;
    private static final double SCAN_MM = 5;
    private static final double[] COS = new double[DIRECTIONS];
    private static final double[] SIN = new double[DIRECTIONS];

    static {
        for (int i = 0; i < DIRECTIONS; i++) {
            COS[i] = Math.cos(i * STEP);
            SIN[i] = Math.sin(i * STEP);
        }
    }

    /// What a taut belt does at one centre distance: its length (mm), and the angle it lies on a disc (rad).
    record Lying(double lengthMm, double onDrive, double onIdler) {}

    private boolean idling() {
        return !Double.isNaN(along);
    }

    Lying at(double centre) {
        return idling() && onBack ? pressedIn(centre) : around(centre);
    }

    private Lying around(double centre) {
        double length = 0;
        double onDrive = 0;
        double onIdler = 0;
        for (int i = 0; i < DIRECTIONS; i++) {
            double w = wheel;
            double d = centre * COS[i] + drive;
            double e = idling() ? along * COS[i] + aside * SIN[i] + idler : Double.NEGATIVE_INFINITY;
            length += Math.max(w, Math.max(d, e)) * STEP;
            onDrive += d > Math.max(w, e) ? STEP : 0;
            onIdler += e > Math.max(w, d) ? STEP : 0;
        }
        return new Lying(length, onDrive, onIdler);
    }

    /// The idler presses one span inward. The span's two halves are found by turning a line until it touches both
    /// discs.
    private Lying pressedIn(double centre) {
        double up = Math.abs(aside);
        double toWheel = Math.atan2(up, along);
        double toDrive = Math.atan2(up, along - centre);
        double one = root(a -> along * Math.cos(a) + up * Math.sin(a) - wheel - idler, toWheel, toWheel + Math.PI);
        double two = root(
                a -> (along - centre) * Math.cos(a) + up * Math.sin(a) - drive - idler, toDrive, toDrive - Math.PI);
        double under = root(a -> centre * Math.cos(a) + drive - wheel, 0, -Math.PI);
        double first = Math.hypot(along - (wheel + idler) * Math.cos(one), up - (wheel + idler) * Math.sin(one));
        double second =
                Math.hypot(along - centre - (drive + idler) * Math.cos(two), up - (drive + idler) * Math.sin(two));
        double below = Math.hypot(centre + (drive - wheel) * Math.cos(under), (drive - wheel) * Math.sin(under));
        double onIdler = two - one;
        double length =
                wheel * (2 * Math.PI + under - one) + first + idler * onIdler + second + drive * (two - under) + below;
        return new Lying(onIdler > 0 ? length : Double.NaN, two - under, onIdler);
    }

    /// {@return the centre distance at which the belt is this long (mm), NaN where there is none}
    double centreMm(double lengthMm) {
        DoubleUnaryOperator over = c -> at(c).lengthMm() - lengthMm;
        double least = Math.abs(wheel - drive);
        double before = Double.NaN;
        for (double c = least + 1e-6; c < lengthMm; c += SCAN_MM) {
            double here = over.applyAsDouble(c);
            if (before <= 0 && here > 0) {
                double at = root(over, c, c - SCAN_MM);
                return idling() && at(at).onIdler() < 1e-3 ? Double.NaN : at;
            }
            if (Double.isNaN(before) && here > 0) { // taut only just beyond where the discs let the belt through
                double touching = firstDefined(over, c - SCAN_MM, c);
                if (over.applyAsDouble(touching) <= 0) {
                    return root(over, c, touching);
                }
            }
            before = here;
        }
        return Double.NaN;
    }

    private static double firstDefined(DoubleUnaryOperator f, double without, double with) {
        double no = without;
        double yes = with;
        while (yes - no > 1e-7) {
            double middle = (no + yes) / 2;
            if (Double.isNaN(f.applyAsDouble(middle))) {
                no = middle;
            } else {
                yes = middle;
            }
        }
        return yes;
    }

    /// {@return where a function that is positive at one end and not at the other passes zero, NaN where it is neither}
    static double root(DoubleUnaryOperator f, double positive, double negative) {
        if (!(f.applyAsDouble(positive) > 0) || f.applyAsDouble(negative) > 0) {
            return Double.NaN;
        }
        double p = positive;
        double n = negative;
        while (Math.abs(p - n) > 1e-6) {
            double middle = (p + n) / 2;
            if (f.applyAsDouble(middle) > 0) {
                p = middle;
            } else {
                n = middle;
            }
        }
        return (p + n) / 2;
    }
}
