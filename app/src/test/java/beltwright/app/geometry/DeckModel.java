package beltwright.app.geometry;

import beltwright.kit.Kit;
import beltwright.part.Hanger;

/// The deck over a hanger that turns under it as the rider leans: every point of a wheel or a motor is turned about the
/// steering axis, by as much as keeps the axle level with the ground, and held against the deck.
record DeckModel(double axis, double rake, double link, double under, double half, double behind, double lean) {
    private static final int AROUND = 180;
    private static final int LEANS = 3;

    static DeckModel of(Kit kit, Draw draw) {
        var hanger = kit.hanger();
        boolean risen = !kit.riser().blank();
        return new DeckModel(
                Math.toRadians(draw.of(hanger.steeringAxisDeg())
                        + (risen ? draw.of(kit.riser().wedgeDeg()) : 0)),
                draw.of(hanger.rakeMm()),
                hanger.kingpin() == Hanger.Kingpin.DOUBLE ? draw.of(hanger.linkMm()) : 0,
                draw.of(hanger.axleDropMm())
                        + (risen ? draw.of(kit.riser().thicknessMm()) : 0)
                        - draw.of(hanger.bushingTravelMm()),
                draw.of(kit.deck().widthMm()) / 2,
                draw.of(kit.deck().endMm()) - draw.of(hanger.axleFromBaseMm()),
                Math.toRadians(draw.of(hanger.fullLeanDeg())));
    }

    /// {@return the least distance of a cylinder along the axle from the deck, over all leans}
    ///
    /// @param from its nearer end, outward from the middle of the hanger
    /// @param well how deep the deck is hollowed over it
    double least(double x, double z, double radius, double from, double to, double well) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = -LEANS; k <= LEANS; k++) {
            var turned = turned(lean * k / LEANS);
            for (int i = 0; i < AROUND; i++) {
                double a = 2 * Math.PI * i / AROUND;
                double px = x + radius * Math.cos(a);
                double pz = z + radius * Math.sin(a);
                least = Math.min(least, along(turned, px, pz, from, to, well));
                for (double share = 0; share < 1; share += 0.2) {
                    double qx = x + share * (px - x);
                    double qz = z + share * (pz - z);
                    least = Math.min(least, toDeck(turned.at(qx, from, qz), well));
                    least = Math.min(least, toDeck(turned.at(qx, to, qz), well));
                }
            }
        }
        return least;
    }

    /// {@return the least distance of a line along the body; the deck is convex, so thirds close in on it}
    private double along(Turned turned, double x, double z, double from, double to, double well) {
        double a = from;
        double b = to;
        while (b - a > 0.01) {
            double third = (b - a) / 3;
            if (toDeck(turned.at(x, a + third, z), well) < toDeck(turned.at(x, b - third, z), well)) {
                b -= third;
            } else {
                a += third;
            }
        }
        return toDeck(turned.at(x, (a + b) / 2, z), well);
    }

    private double toDeck(double[] p, double well) {
        double below = under + well - p[2];
        double beside = Math.abs(p[1]) - half;
        double beyond = -behind - p[0];
        double outside = Math.sqrt(square(below) + square(beside) + square(beyond));
        return outside > 0 ? outside : Math.max(below, Math.max(beside, beyond));
    }

    private static double square(double a) {
        return a > 0 ? a * a : 0;
    }

    /// A turn about a line: three rows that give the turned point's coordinates, and where the line stands.
    private record Turn(double[][] rows, double[] through) {
        double[] at(double x, double y, double z) {
            var p = new double[3];
            for (int i = 0; i < 3; i++) {
                p[i] = through[i]
                        + rows[i][0] * (x - through[0])
                        + rows[i][1] * (y - through[1])
                        + rows[i][2] * (z - through[2]);
            }
            return p;
        }
    }

    private record Turned(Turn first, Turn second) {
        double[] at(double x, double y, double z) {
            var p = first.at(x, y, z);
            return second.at(p[0], p[1], p[2]);
        }
    }

    private Turned turned(double leant) {
        // the turn that brings the axle's direction level with ground that lies at this angle under the deck
        double turn = TautBelt.root(t -> level(t, leant), Math.PI / 2, -Math.PI / 2);
        double[] up = {Math.sin(axis), 0, Math.cos(axis)};
        double[] first = {-rake * up[0], 0, -rake * up[2]};
        double[] second = {(link - rake) * up[0], 0, (link - rake) * up[2]};
        return link == 0
                ? new Turned(about(turn, first), about(0, first))
                : new Turned(about(turn / 2, first), about(turn / 2, second));
    }

    private double level(double turn, double leant) {
        var axle = about(turn, new double[3]).at(0, 1, 0);
        return -(axle[1] * Math.sin(leant) + axle[2] * Math.cos(leant));
    }

    /// {@return the turn about the steering axis, as reflections in two planes through it half the angle apart}
    private Turn about(double turn, double[] through) {
        double[] forward = {Math.sin(axis), 0, Math.cos(axis)};
        double[] left = {0, 1, 0};
        var mirror = mirror(forward, left, 0);
        var other = mirror(forward, left, turn / 2);
        var rows = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    rows[i][j] += other[i][k] * mirror[k][j];
                }
            }
        }
        return new Turn(rows, through);
    }

    private static double[][] mirror(double[] one, double[] two, double angle) {
        var n = new double[3];
        for (int i = 0; i < 3; i++) {
            n[i] = one[i] * Math.cos(angle) + two[i] * Math.sin(angle);
        }
        var rows = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                rows[i][j] = (i == j ? 1 : 0) - 2 * n[i] * n[j];
            }
        }
        return rows;
    }
}
