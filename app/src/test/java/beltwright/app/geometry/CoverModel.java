package beltwright.app.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/// A cover as bodies: half a round around the middle of the slot, two arms along the spans of the belt, and the face
/// over them.
record CoverModel(DriveModel at, double middle, double slope, double radius, double wall, double reach, double depth) {
    private static final int PIECES = 16;

    static CoverModel of(DriveModel m) {
        var cover = m.drive.cover();
        return new CoverModel(
                m,
                (m.draw.of(m.drive.mount().slotMinMm())
                                + m.draw.of(m.drive.mount().slotMaxMm()))
                        / 2,
                m.spanAngle(),
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

    /// {@return points along the inside of the round}
    List<double[]> inner() {
        return IntStream.rangeClosed(0, 20 * PIECES)
                .mapToObj(i -> around(Math.PI * i / (20 * PIECES) - Math.PI / 2, radius))
                .toList();
    }

    private double[] around(double angle, double r) {
        return at.beside(middle + r * Math.cos(angle), r * Math.sin(angle));
    }

    /// {@return how far an arm that runs along a span lies beside the centre line}
    private double beside(double r, double towardsAxle) {
        return (r + towardsAxle * Math.sin(slope)) / Math.cos(slope);
    }

    List<Solid> arms() {
        var arms = new ArrayList<Solid>();
        for (int side : new int[] {-1, 1}) {
            arms.add(piece(
                    at.beside(middle, side * beside(radius, 0)),
                    at.beside(middle, side * beside(radius + wall, 0)),
                    at.beside(middle - reach, side * beside(radius + wall, reach)),
                    at.beside(middle - reach, side * beside(radius, reach))));
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
            var p = at.beside(middle - reach, side * beside(radius + wall, reach));
            around.add(new Outline.Disc(p[0], p[1], 0));
        }
        return new Outline.Taut(around.toArray(Outline.Disc[]::new));
    }

    Solid face() {
        return new Solid("cover's face", outline(), inside(), inside() + wall);
    }
}
