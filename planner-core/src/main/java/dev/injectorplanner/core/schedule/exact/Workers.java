package dev.injectorplanner.core.schedule.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/** A few threads that share numbered tasks. Tasks must not depend on which thread does them, nor on each other. */
final class Workers implements AutoCloseable {
    /** One task. */
    interface Task {
        /**
         * @param task 0 and up
         * @param worker number of the thread that does it, below {@link #count}
         */
        void run(int task, int worker);
    }

    /** The calling thread alone. */
    static final Workers NONE = new Workers(1);

    private final int count;
    private final ExecutorService helpers;

    Workers(int count) {
        this.count = count;
        this.helpers = Executors.newFixedThreadPool(Math.max(1, count - 1), work -> {
            Thread thread = new Thread(work, "schedule");
            thread.setDaemon(true);
            return thread;
        });
    }

    int count() {
        return count;
    }

    /** Does tasks 0 to {@code tasks - 1} and waits for all of them. */
    void forEach(int tasks, Task task) {
        AtomicInteger next = new AtomicInteger();
        List<Future<?>> running = new ArrayList<>();
        for (int helper = 1; helper < Math.min(count, tasks); helper++) {
            int worker = helper;
            running.add(helpers.submit(() -> drain(next, tasks, task, worker)));
        }
        drain(next, tasks, task, 0);
        for (Future<?> done : running) {
            await(done);
        }
    }

    private static void drain(AtomicInteger next, int tasks, Task task, int worker) {
        for (int i = next.getAndIncrement(); i < tasks; i = next.getAndIncrement()) {
            task.run(i, worker);
        }
    }

    private static void await(Future<?> done) {
        try {
            done.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while scheduling", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a part of the schedule failed: " + e.getCause(), e);
        }
    }

    @Override
    public void close() {
        helpers.shutdownNow();
    }
}
