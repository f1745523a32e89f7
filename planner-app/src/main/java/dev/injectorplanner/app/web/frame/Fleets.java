package dev.injectorplanner.app.web.frame;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreLane;
import dev.injectorplanner.core.fleet.FleetIndex;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Depots with their trucks, as stored. One reader at a time reads a depot; meanwhile the others are shown the copy that was
 * read last. What a person changes here is shown to everybody at once; what loads and other nodes change, soon after. Copies
 * take a share of the memory at most: what does not fit is read again.
 */
public final class Fleets {
    /** How long a copy is shown where another process may have changed the store. */
    private static final Duration SHOWN_FOR = Duration.ofSeconds(15);

    /** A long load changes the store every second; reading along would take all the time there is. */
    private static final int REST_BETWEEN_READS = 10;

    private final Store store;
    private final InstantSource clock;
    private final AtomicLong changed = new AtomicLong();
    private final LoadingCache<String, Read> copies;

    /**
     * A copy.
     *
     * @param fleet null where there is no such depot
     * @param changed changes by people before it was read
     * @param stored changes of the store before it was read
     * @param atMillis when it had been read
     * @param tookMillis how long that took
     */
    private record Read(@Nullable FleetIndex fleet, long changed, long stored, long atMillis, long tookMillis) {
        int kilobytes() {
            return fleet == null ? 1 : MemoryShare.kilobytesOf(fleet.fleet());
        }
    }

    public Fleets(Store store) {
        this(store, readers());
    }

    Fleets(Store store, Executor readers) {
        this.store = store;
        this.clock = InstantSource.system();
        this.copies = Caffeine.newBuilder()
                .maximumWeight(MemoryShare.kilobytes())
                .weigher((String depot, Read read) -> read.kilobytes())
                .executor(readers)
                .build(this::read);
    }

    private static Executor readers() {
        return Executors.newFixedThreadPool(1, work -> {
            Thread thread = new Thread(work, "fleet-reader");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** A depot's trucks with all that concerns them; empty where there is no such depot. */
    public Optional<FleetIndex> find(String depot) {
        Read read = copies.get(depot);
        while (read.changed() != changed.get()) {
            copies.asMap().remove(depot, read); // a read that began before the change may have ended after it
            read = copies.get(depot);
        }
        if (isOld(read) && read.fleet() == null) {
            copies.asMap().remove(depot, read); // nothing to show meanwhile
            read = copies.get(depot);
        } else if (isOld(read)) {
            copies.refresh(depot);
        }
        return Optional.ofNullable(read.fleet());
    }

    private boolean isOld(Read read) {
        long age = clock.millis() - read.atMillis();
        boolean outdated = read.stored() != store.changes() || store.isShared() && age > SHOWN_FOR.toMillis();
        return outdated && age > REST_BETWEEN_READS * read.tookMillis();
    }

    private Read read(String depot) {
        long before = changed.get();
        long stored = store.changes();
        long start = clock.millis();
        AtomicReference<@Nullable FleetIndex> fleet = new AtomicReference<>();
        try {
            StoreLane.<RuntimeException>reading(() ->
                    fleet.set(store.findSnapshot(depot).map(FleetIndex::new).orElse(null)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        long end = clock.millis();
        return new Read(fleet.get(), before, stored, end, end - start);
    }

    /** Something was changed: what is read next is new. */
    public void changed() {
        changed.incrementAndGet();
    }
}
