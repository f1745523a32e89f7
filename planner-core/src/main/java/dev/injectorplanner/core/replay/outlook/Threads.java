package dev.injectorplanner.core.replay.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;

/** Does one thing for each number from zero to a count, several at once. */
final class Threads {
    private Threads() {}

    static void forEach(int threads, int count, IntConsumer work) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int number = i;
                futures.add(pool.submit(() -> work.accept(number)));
            }
            for (Future<?> future : futures) {
                future.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while looking ahead", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause
                    ? cause
                    : new IllegalStateException("an outlook's run failed", e);
        } finally {
            pool.shutdownNow();
        }
    }
}
