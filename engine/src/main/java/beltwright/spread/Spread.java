package beltwright.spread;

import java.util.List;

/// What came of drawing a kit many times.
///
/// @param kits how many were drawn
/// @param inputs how many numbers were drawn for each
/// @param together kits in which no counted finding fails
/// @param counted keys of the findings that decide whether a kit goes together
/// @param untold keys of those among them that cannot be told, and so are not counted
/// @param odds of every finding, the least sure first, those that cannot be told last
public record Spread(
        String kit,
        int kits,
        long seed,
        int inputs,
        int together,
        List<String> counted,
        List<String> untold,
        List<Odds> odds) {
    public Spread {
        counted = List.copyOf(counted);
        untold = List.copyOf(untold);
        odds = List.copyOf(odds);
    }

    /// {@return findings that fail in some kit, or do not hold at the worst limits}
    public List<Odds> unsure() {
        return odds.stream().filter(o -> o.told() && !o.sure()).toList();
    }

    /// {@return findings that hold at the worst limits and in every kit}
    public List<Odds> sure() {
        return odds.stream().filter(Odds::sure).toList();
    }

    public List<Odds> cannotTell() {
        return odds.stream().filter(o -> !o.told()).toList();
    }

    public Share goesTogether() {
        return new Share(together, kits);
    }

    /// So many of so many draws.
    ///
    /// - Source: standard error of a proportion, √(p·(1 − p)/n), and the score interval of Wilson, J. American
    ///   Statistical Association 22 (1927), which is not empty where all or none held.
    public record Share(int of, int draws) {
        private static final double Z95 = 1.959963984540054;

        public double value() {
            return (double) of / draws;
        }

        public double standardError() {
            return Math.sqrt(value() * (1 - value()) / draws);
        }

        /// {@return the lower end of the interval that covers the true share 19 times in 20}
        public double least() {
            return of == 0 ? 0 : middle() - half();
        }

        public double most() {
            return of == draws ? 1 : middle() + half();
        }

        private double middle() {
            return (value() + Z95 * Z95 / (2 * draws)) / (1 + Z95 * Z95 / draws);
        }

        private double half() {
            return Z95
                    * Math.sqrt(value() * (1 - value()) / draws + Z95 * Z95 / (4.0 * draws * draws))
                    / (1 + Z95 * Z95 / draws);
        }
    }
}
