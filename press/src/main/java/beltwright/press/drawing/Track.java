package beltwright.press.drawing;

import java.util.ArrayList;
import java.util.List;

/// A line of pieces, each beginning where the one before ends, followed by the distance from its first point.
record Track(List<Segment> pieces) {
    Track {
        pieces = List.copyOf(pieces);
    }

    double length() {
        double sum = 0;
        for (var piece : pieces) {
            sum += piece.length();
        }
        return sum;
    }

    /// {@return where a piece begins}
    double begins(int index) {
        return new Track(pieces.subList(0, index)).length();
    }

    /// {@return what lies between two places, taken from a line beside this one; past the end it goes around again}
    ///
    /// @param beside as many pieces as this has, each parallel to the one here
    List<Segment> between(double start, double end, List<Segment> beside) {
        var cut = new ArrayList<Segment>();
        double total = length();
        double begins = 0;
        for (int i = 0; i < 2 * pieces.size() && begins < end; i++) {
            double length = pieces.get(i % pieces.size()).length();
            double a = Math.max(start, begins) - begins;
            double b = Math.min(end, begins + length) - begins;
            if (b - a > 1e-9 * total) {
                cut.add(part(beside.get(i % pieces.size()), a / length, b / length));
            }
            begins += length;
        }
        return cut;
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
}
