package beltwright.spread;

/// Even random numbers by address: the same seed, input and kit give the same number whoever asks and in whatever
/// order. So threads do not matter, and narrower limits of one dimension leave all other draws as they were.
///
/// - Source: Steele, Lea and Flood, _Fast splittable pseudorandom number generators_, OOPSLA 2014 (SplitMix64, from
///   memory): the state of a stream is its start plus a multiple of one odd number. Names are hashed by FNV-1a.
final class Draws {
    private static final long STEP = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1p-53;

    private Draws() {}

    /// {@return where the stream of an input starts}
    static long stream(long seed, String name) {
        long hash = 0xCBF29CE484222325L;
        for (int i = 0; i < name.length(); i++) {
            hash = (hash ^ name.charAt(i)) * 0x100000001B3L;
        }
        return mixed(mixed(seed) + hash);
    }

    /// {@return a number above 0 and below 1}
    static double even(long stream, int kit) {
        return ((mixed(stream + (kit + 1) * STEP) >>> 11) + 0.5) * UNIT;
    }

    private static long mixed(long z) {
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
