package beltwright.app.geometry;

import beltwright.kit.Task;

/// A round body beside a rolling wheel, over ground of two straight pieces, followed step by step.
///
/// @param away centre of the body fore or aft of the axle, towards what is met (mm)
/// @param above centre of the body above the axle (mm)
/// @param radius of the body (mm)
/// @param wheel radius of the wheel (mm)
record GroundModel(double away, double above, double radius, double wheel) {
    private static final int STEPS = 100;

    static GroundModel of(DriveModel m) {
        double can = m.draw.of(m.drive.motor().canDiameterMm()) / 2;
        double plate = m.draw.of(m.drive.mount().plateRadiusMm());
        return new GroundModel(Math.abs(m.x), m.z, Math.max(can, plate), m.end.wornRadius);
    }

    double overFlat() {
        return wheel + above - radius;
    }

    /// {@return the least distance while the wheel rolls up to a kerb, touches its edge and climbs over it}
    double overKerb(double kerb) {
        double least = Double.POSITIVE_INFINITY;
        double touching = Math.acos((wheel - kerb) / wheel);
        for (int i = 0; i <= STEPS; i++) {
            double at = touching * (1 - (double) i / STEPS);
            double edge = wheel * Math.sin(at);
            double top = -wheel * Math.cos(at);
            least = Math.min(least, toStep(edge, top));
        }
        return least;
    }

    /// {@return the distance to everything ahead of an edge and below its top}
    private double toStep(double edge, double top) {
        boolean in = away > edge && above < top;
        double toTop = Math.hypot(Math.max(edge - away, 0), above - top);
        double toSide = Math.hypot(away - edge, Math.max(above - top, 0));
        double nearest = Math.min(toTop, toSide);
        return (in ? -nearest : nearest) - radius;
    }

    /// {@return the least distance to the ground while both axles pass a crest, the body between them}
    double overCrest(Task task, Draw draw) {
        double turn = Math.toRadians(draw.of(task.crestDeg()));
        double base = draw.of(task.wheelbaseMm());
        double step = base / STEPS;
        double at = -base;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= STEPS; i++) {
            double here = onCrest(-i * step, base, turn);
            if (here < least) {
                least = here;
                at = -i * step;
            }
        }
        for (; step > 0.001; step /= 2) {
            for (double near : new double[] {at - step / 2, at + step / 2}) {
                double here = onCrest(Math.min(near, 0), base, turn);
                if (here < least) {
                    least = here;
                    at = near;
                }
            }
        }
        return least;
    }

    /// {@return the distance while the near wheel stands on the level before the crest and the far one on the slope}
    private double onCrest(double near, double base, double turn) {
        double down = farther(near, base, turn);
        double farX = down * Math.cos(turn) + wheel * Math.sin(turn);
        double farZ = -down * Math.sin(turn) + wheel * Math.cos(turn);
        double along = (farX - near) / base;
        double rise = (farZ - wheel) / base;
        double x = near + away * along - above * rise;
        double z = wheel + away * rise + above * along;
        double least = Math.max(z, x * Math.sin(turn) + z * Math.cos(turn)) - radius;
        return Double.isNaN(least) ? Double.POSITIVE_INFINITY : least;
    }

    /// {@return how far down the slope the far wheel stands, NaN where it has not reached it}
    private double farther(double near, double base, double turn) {
        return TautBelt.root(
                s -> Math.hypot(
                                s * Math.cos(turn) + wheel * Math.sin(turn) - near,
                                -s * Math.sin(turn) + wheel * Math.cos(turn) - wheel)
                        - base,
                2 * base,
                0);
    }
}
