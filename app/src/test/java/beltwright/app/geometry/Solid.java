package beltwright.app.geometry;

import java.util.Collection;

/// A body that has one outline all along the axle's direction: every part of a drive is made of such bodies.
///
/// @param from the end nearer the middle of the hanger (mm, outward from the hanger's end face)
/// @param to the other end
record Solid(String name, Outline outline, double from, double to) {
    /// {@return the distance to another body (mm)}; of two that overlap, negative by the shorter way out of the
    /// outlines
    /// or along the axle
    double apart(Solid other) {
        double along = along(other);
        double across = outline.apart(other.outline);
        return along > 0 && across > 0 ? Math.sqrt(along * along + across * across) : Math.max(along, across);
    }

    /// {@return the distance along the axle (mm), negative where they lie beside each other}
    double along(Solid other) {
        return Math.max(from - other.to, other.from - to);
    }

    static double apart(Collection<Solid> some, Collection<Solid> others) {
        double least = Double.POSITIVE_INFINITY;
        for (var a : some) {
            for (var b : others) {
                if (!(a.along(b) >= least)) { // no nearer than they are along the axle
                    least = Math.min(least, a.apart(b));
                }
            }
        }
        return least;
    }

    /// {@return the same body seen from the other end of a hanger of this width}
    Solid acrossTheHanger(double widthMm) {
        return new Solid(name, outline, -widthMm - to, -widthMm - from);
    }
}
