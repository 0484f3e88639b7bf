package beltwright;

import java.util.SplittableRandom;
import java.util.stream.Stream;

/// Seeded draws for laws: the same cases on every machine, each named by its seed.
public final class Seeds {
    private Seeds() {}

    /// One draw of everything that a law needs.
    public record Draw(long seed, SplittableRandom random) {
        public double between(double low, double high) {
            return random.nextDouble(low, high);
        }

        public int whole(int low, int high) {
            return random.nextInt(low, high + 1);
        }

        @Override
        public String toString() {
            return "seed " + seed;
        }
    }

    /// {@return three hundred draws}
    public static Stream<Draw> draws() {
        return Stream.iterate(1L, seed -> seed + 1).limit(300).map(seed -> new Draw(seed, new SplittableRandom(seed)));
    }
}
