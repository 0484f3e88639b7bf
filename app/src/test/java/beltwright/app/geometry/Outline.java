package beltwright.app.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// An outline seen along the axle, known only by samples: points around its edge, and how far any point lies outside.
interface Outline {
    /// {@return how far a point lies outside (mm), negative inside}
    double outside(double x, double z);

    /// {@return the same, or any number from `most` to it where it is no less than `most`}
    default double outside(double x, double z, double most) {
        return outside(x, z);
    }

    /// {@return points around the edge, close together}
    List<double[]> edge();

    /// {@return the distance to another outline (mm), negative by how deep one stands in the other}
    default double apart(Outline other) {
        return Math.min(nearest(edge(), other), nearest(other.edge(), this));
    }

    /// {@return how near these points come to an outline: every tenth first, then all beside the nearest of those}
    private static double nearest(List<double[]> points, Outline to) {
        int coarse = 10;
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points.size(); i += coarse) {
            double here = to.outside(points.get(i)[0], points.get(i)[1], least);
            if (here < least) {
                least = here;
                best = i;
            }
        }
        for (int i = best - coarse; i <= best + coarse; i++) {
            var p = points.get(Math.floorMod(i, points.size()));
            least = Math.min(least, to.outside(p[0], p[1], least));
        }
        return least;
    }

    /// {@return z of the lowest point of the edge (mm)}
    default double lowest() {
        return edge().stream().mapToDouble(p -> p[1]).min().orElseThrow();
    }

    static Outline circle(double x, double z, double radius) {
        return new Taut(new Disc(x, z, radius));
    }

    static Outline corners(double[]... points) {
        return new Taut(Arrays.stream(points).map(p -> new Disc(p[0], p[1], 0)).toArray(Disc[]::new));
    }

    /// A disc, or a point where its radius is nothing.
    record Disc(double x, double z, double radius) {}

    /// A string pulled taut around discs: known by how far it reaches in every direction.
    final class Taut implements Outline {
        static final int DIRECTIONS = 360;
        private static final double STEP_MM = 0.2;
        private static final double[] COS = new double[DIRECTIONS];
        private static final double[] SIN = new double[DIRECTIONS];

        static {
            for (int i = 0; i < DIRECTIONS; i++) {
                COS[i] = Math.cos(2 * Math.PI * i / DIRECTIONS);
                SIN[i] = Math.sin(2 * Math.PI * i / DIRECTIONS);
            }
        }

        private final Disc[] around;
        private final double[] reach = new double[DIRECTIONS];
        private final List<double[]> edge = new ArrayList<>();
        private int furthest; // the direction that parted the last point, most likely the next one's too

        Taut(Disc... around) {
            this.around = around.clone();
            if (around.length > 1) {
                reaching();
            }
        }

        private void reaching() {
            for (int i = 0; i < DIRECTIONS; i++) {
                reach[i] = Double.NEGATIVE_INFINITY;
                for (var disc : around) {
                    reach[i] = Math.max(reach[i], disc.x() * COS[i] + disc.z() * SIN[i] + disc.radius());
                }
            }
        }

        private void sampled() {
            var corners = new ArrayList<double[]>();
            for (int i = 0; i < DIRECTIONS; i++) {
                double most = Double.NEGATIVE_INFINITY;
                var touched = around[0];
                for (var disc : around) {
                    double here = disc.x() * COS[i] + disc.z() * SIN[i] + disc.radius();
                    if (here > most) {
                        most = here;
                        touched = disc;
                    }
                }
                corners.add(
                        new double[] {touched.x() + touched.radius() * COS[i], touched.z() + touched.radius() * SIN[i]
                        });
            }
            for (int i = 0; i < DIRECTIONS; i++) {
                var from = corners.get(i);
                var to = corners.get((i + 1) % DIRECTIONS);
                int steps = 1 + (int) (Math.hypot(to[0] - from[0], to[1] - from[1]) / STEP_MM);
                for (int k = 0; k < steps; k++) {
                    double share = (double) k / steps;
                    edge.add(new double[] {from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])});
                }
            }
        }

        @Override
        public double outside(double x, double z) {
            return outside(x, z, Double.POSITIVE_INFINITY);
        }

        @Override
        public double outside(double x, double z, double enough) {
            if (around.length == 1) {
                double dx = x - around[0].x();
                double dz = z - around[0].z();
                return Math.sqrt(dx * dx + dz * dz) - around[0].radius();
            }
            double parted = x * COS[furthest] + z * SIN[furthest] - reach[furthest];
            if (parted >= enough) {
                return parted;
            }
            int best = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < DIRECTIONS; i++) {
                double here = x * COS[i] + z * SIN[i] - reach[i];
                if (here > most) {
                    most = here;
                    best = i;
                }
            }
            furthest = best;
            return most >= enough || most + STEP_MM < 0 ? most : nearer(x, z, 2 * Math.PI * best / DIRECTIONS);
        }

        /// {@return the same in the best direction near this one}
        private double nearer(double x, double z, double direction) {
            double step = Math.PI / DIRECTIONS;
            double at = direction;
            double most = beyond(x, z, at);
            for (int i = 0; i < 10; i++) {
                double left = beyond(x, z, at - step);
                double right = beyond(x, z, at + step);
                if (Math.max(left, right) > most) {
                    at += left > right ? -step : step;
                    most = Math.max(left, right);
                }
                step /= 2;
            }
            return most;
        }

        private double beyond(double x, double z, double direction) {
            double cos = Math.cos(direction);
            double sin = Math.sin(direction);
            double reaches = Double.NEGATIVE_INFINITY;
            for (var disc : around) {
                reaches = Math.max(reaches, disc.x() * cos + disc.z() * sin + disc.radius());
            }
            return x * cos + z * sin - reaches;
        }

        @Override
        public List<double[]> edge() {
            if (edge.isEmpty()) {
                sampled();
            }
            return edge;
        }
    }

    /// An outline with another cut out of it.
    record Holed(Outline whole, Outline hole) implements Outline {
        @Override
        public double outside(double x, double z) {
            return Math.max(whole.outside(x, z), -hole.outside(x, z));
        }

        @Override
        public double outside(double x, double z, double most) {
            double outer = whole.outside(x, z, most);
            return outer >= most ? outer : Math.max(outer, -hole.outside(x, z));
        }

        @Override
        public List<double[]> edge() {
            var both = new ArrayList<>(whole.edge());
            both.addAll(hole.edge());
            return both;
        }
    }

    static Outline ring(double x, double z, double radius, double hole) {
        return new Holed(circle(x, z, radius), circle(x, z, hole));
    }
}
