package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.fleet.FleetIndex;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Depots with their trucks, as stored. What is read is shown for a few seconds, so that a page and what it opens agree and a
 * large depot is not read at every click; what this process changes is shown at once.
 */
public final class Fleets {
    private static final Duration SHOWN_FOR = Duration.ofSeconds(15);

    private final Store store;
    private final InstantSource clock;
    private final Map<String, Read> read = new ConcurrentHashMap<>();

    private record Read(FleetIndex fleet, Instant at) {}

    public Fleets(Store store) {
        this.store = store;
        this.clock = InstantSource.system();
    }

    /** A depot's trucks with all that concerns them; empty where there is no such depot. */
    public Optional<FleetIndex> find(String depot) {
        Read there = read.get(depot);
        if (there != null && clock.instant().isBefore(there.at().plus(SHOWN_FOR))) {
            return Optional.of(there.fleet());
        }
        Optional<FleetIndex> now = store.findSnapshot(depot).map(FleetIndex::new);
        now.ifPresentOrElse(fleet -> read.put(depot, new Read(fleet, clock.instant())), () -> read.remove(depot));
        return now;
    }

    /** Something was changed: what is read next is new. */
    public void changed() {
        read.clear();
    }
}
