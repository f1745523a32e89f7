package dev.injectorplanner.app.web.imports;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadState;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Loads that go on while their page is left; a restart ends them, and what was stored by then stays. */
final class LoadRuns implements AutoCloseable {
    private static final int MOST = 50;

    private final SecureRandom random = new SecureRandom();
    private final Map<String, Run> runs = new LinkedHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "load of files");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * What became of a load.
     *
     * @param source whose match the file was read by and is kept, or empty
     */
    record Outcome(List<FileReport> reports, boolean checked, List<Uploads.Refused> refused, String source) {}

    /** One load. */
    static final class Run {
        private final String owner;
        private final LoadState state = new LoadState(Clock.systemUTC());
        private volatile @Nullable Outcome outcome;
        private volatile @Nullable RuntimeException failure;

        Run(String owner) {
            this.owner = owner;
        }

        String owner() {
            return owner;
        }

        /** How far it is. */
        LoadState state() {
            return state;
        }

        boolean ended() {
            return outcome != null || failure != null;
        }

        Optional<Outcome> outcome() {
            RuntimeException thrown = failure;
            if (thrown != null) {
                throw thrown;
            }
            return Optional.ofNullable(outcome);
        }
    }

    /** Starts a load and waits a moment for it: most are short. Returns its key. */
    String start(String owner, Function<LoadListener, Outcome> load, Consumer<Outcome> after) {
        Run run = new Run(owner);
        byte[] bytes = new byte[16];
        random.nextBytes(bytes);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        synchronized (runs) {
            runs.put(key, run);
            while (runs.size() > MOST) {
                runs.remove(runs.keySet().iterator().next());
            }
        }
        var future = worker.submit(() -> {
            try {
                Outcome outcome = load.apply(run.state);
                after.accept(outcome);
                run.outcome = outcome;
            } catch (RuntimeException e) {
                run.failure = e;
            }
        });
        try {
            future.get(3, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (java.util.concurrent.ExecutionException | java.util.concurrent.TimeoutException e) {
            return key; // it goes on, or its failure is told on its page
        }
        return key;
    }

    Optional<Run> find(String key, String owner) {
        synchronized (runs) {
            return Optional.ofNullable(runs.get(key)).filter(run -> run.owner().equals(owner));
        }
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
