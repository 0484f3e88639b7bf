package beltwright.press.drawing;

import java.util.ArrayList;
import java.util.List;

/// The lanes beside one edge of a view, in which dimension lines are stacked from the view outwards.
final class Lanes {
    private static final double ROOM = 1.5; // beside a text or an arrow, to its neighbour in the lane (mm)
    private static final double STRUCK = 1.5; // what a text struck by a witness line costs, in lanes

    private final List<List<double[]>> taken = new ArrayList<>();
    private final List<Double> witnesses = new ArrayList<>();

    /// Where one dimension stands.
    ///
    /// @param outside whether its arrows and its text stand beside it rather than between its witness lines
    /// @param textAt middle of the text, or the end of it that is nearer the arrow where it stands outside
    record Stand(int lane, boolean outside, double textAt) {}

    /// Tells of witness lines to come, so that texts can keep clear of them.
    void witness(double a, double b) {
        witnesses.add(a);
        witnesses.add(b);
    }

    /// @param text its width (mm)
    Stand stand(double a, double b, double text) {
        double low = Math.min(a, b);
        double high = Math.max(a, b);
        double arrows = 2 * DimensionFigure.ARROW;
        if (high - low >= text + arrows + 1) {
            return take(low - ROOM, high + ROOM, false, (low + high) / 2);
        }
        // a narrow one carries its text beside it, on the side where fewer witness lines strike it
        double up = lane(low - arrows - ROOM, high + arrows + text + ROOM)
                + STRUCK * struck(high + arrows, high + arrows + text);
        double down = lane(low - arrows - text - ROOM, high + arrows + ROOM)
                + STRUCK * struck(low - arrows - text, low - arrows);
        return up <= down
                ? take(low - arrows - ROOM, high + arrows + text + ROOM, true, high + arrows)
                : take(low - arrows - text - ROOM, high + arrows + ROOM, true, low - arrows);
    }

    private long struck(double from, double to) {
        return witnesses.stream().filter(w -> w > from - 0.5 && w < to + 0.5).count();
    }

    private int lane(double low, double high) {
        for (int i = 0; i < taken.size(); i++) {
            if (taken.get(i).stream().noneMatch(t -> t[0] < high && low < t[1])) {
                return i;
            }
        }
        return taken.size();
    }

    private Stand take(double low, double high, boolean outside, double textAt) {
        int lane = lane(low, high);
        if (lane == taken.size()) {
            taken.add(new ArrayList<>());
        }
        taken.get(lane).add(new double[] {low, high});
        return new Stand(lane, outside, textAt);
    }
}
