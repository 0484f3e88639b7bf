package beltwright.app.bench;

import beltwright.spread.Crew;
import java.util.ArrayList;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.function.IntConsumer;

/// Threads lent to the engine for one piece of long work.
public final class Hands implements Crew {
    private final int threads;

    public Hands(int threads) {
        this.threads = threads;
    }

    @Override
    public void all(int pieces, IntConsumer work) {
        if (threads == 1 || pieces < 2) {
            ALONE.all(pieces, work);
            return;
        }
        try (var pool = Executors.newFixedThreadPool(threads)) {
            var jobs = new ArrayList<Callable<Void>>();
            for (int i = 0; i < pieces; i++) {
                int piece = i;
                jobs.add(() -> {
                    work.accept(piece);
                    return null;
                });
            }
            for (var done : pool.invokeAll(jobs)) {
                done.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
