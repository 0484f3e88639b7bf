package beltwright.app.geometry;

import java.util.ArrayList;
import java.util.List;

/// A cover as bodies: half a round around the motor axis, two straight arms towards the axle, and the face over them.
record CoverModel(DriveModel at, double radius, double wall, double reach, double depth) {
    private static final int PIECES = 16;

    static CoverModel of(DriveModel m) {
        var cover = m.drive.cover();
        return new CoverModel(
                m,
                m.draw.of(cover.radiusMm()),
                m.draw.of(cover.wallMm()),
                m.draw.of(cover.reachMm()),
                m.draw.of(cover.depthMm()));
    }

    double inside() {
        return at.plateOuter + depth;
    }

    /// {@return the round of the wall about the motor axis, on the side away from the axle, in short straight pieces}
    List<Solid> round() {
        var pieces = new ArrayList<Solid>();
        for (int i = 0; i < PIECES; i++) {
            double a = Math.PI * i / PIECES - Math.PI / 2;
            double b = Math.PI * (i + 1) / PIECES - Math.PI / 2;
            double in = radius / Math.cos(Math.PI / (2 * PIECES)); // the middle of the piece at the radius
            pieces.add(piece(around(a, in), around(b, in), around(b, radius + wall), around(a, radius + wall)));
        }
        return pieces;
    }

    private double[] around(double angle, double r) {
        return at.beside(at.centre + r * Math.cos(angle), r * Math.sin(angle));
    }

    List<Solid> arms() {
        var arms = new ArrayList<Solid>();
        for (int side : new int[] {-1, 1}) {
            double in = side * radius;
            double out = side * (radius + wall);
            arms.add(piece(
                    at.beside(at.centre, in),
                    at.beside(at.centre, out),
                    at.beside(at.centre - reach, out),
                    at.beside(at.centre - reach, in)));
        }
        return arms;
    }

    List<Solid> wholeWall() {
        var all = new ArrayList<>(round());
        all.addAll(arms());
        return all;
    }

    private Solid piece(double[]... corners) {
        return new Solid("cover's wall", Outline.corners(corners), at.plateOuter, inside());
    }

    Outline outline() {
        var around = new ArrayList<Outline.Disc>();
        for (int i = 0; i <= 5 * PIECES; i++) {
            var p = around(Math.PI * i / (5 * PIECES) - Math.PI / 2, radius + wall);
            around.add(new Outline.Disc(p[0], p[1], 0));
        }
        for (int side : new int[] {-1, 1}) {
            var p = at.beside(at.centre - reach, side * (radius + wall));
            around.add(new Outline.Disc(p[0], p[1], 0));
        }
        return new Outline.Taut(around.toArray(Outline.Disc[]::new));
    }

    Solid face() {
        return new Solid("cover's face", outline(), inside(), inside() + wall);
    }
}
