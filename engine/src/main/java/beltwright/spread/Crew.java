package beltwright.spread;

import java.util.function.IntConsumer;

/// Hands that the caller lends: they do so many pieces of work, in any order, on as many threads as they like, and
/// return when all are done.
@FunctionalInterface
public interface Crew {
    Crew ALONE = (pieces, work) -> {
        for (int i = 0; i < pieces; i++) {
            work.accept(i);
        }
    };

    void all(int pieces, IntConsumer work);
}
