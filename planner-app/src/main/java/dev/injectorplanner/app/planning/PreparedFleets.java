package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.PreparedFleet;
import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The fleets that were learned and priced last, so that the next change to be tried out costs only its schedule. One is
 * dropped when anything in the store changed; on a shared database, where others change it too, after a while; and whenever
 * memory runs short.
 */
final class PreparedFleets {
    private static final int MOST = 3;
    private static final long SHARED_NANOS = 15_000_000_000L;

    private final Store store;
    private final Map<String, SoftReference<Kept>> kept = new LinkedHashMap<>();

    PreparedFleets(Store store) {
        this.store = store;
    }

    /** A fleet as it was read, learned and priced, and the last schedule with nothing tried. */
    static final class Kept {
        private final long stored;
        private final long readAt;
        private final LocalDate today;
        private final Policy policy;
        final FleetSnapshot fleet;
        final PreparedFleet prepared;
        private @Nullable Holds baseHolds;
        private PreparedFleet.@Nullable Trial base;

        private Kept(long stored, LocalDate today, Policy policy, FleetSnapshot fleet, PreparedFleet prepared) {
            this.stored = stored;
            this.readAt = System.nanoTime();
            this.today = today;
            this.policy = policy;
            this.fleet = fleet;
            this.prepared = prepared;
        }

        /** The schedule with nothing tried, made once for the same holds. */
        synchronized PreparedFleet.Trial base(Holds holds, Function<Holds, PreparedFleet.Trial> maker) {
            PreparedFleet.Trial there = base;
            if (there == null || !holds.equals(baseHolds)) {
                there = maker.apply(holds);
                base = there;
                baseHolds = holds;
            }
            return there;
        }
    }

    /** The fleet of a depot, or of all; read, learned and priced where there is none that still holds. */
    Kept get(
            @Nullable String depot,
            LocalDate today,
            Policy policy,
            Supplier<FleetSnapshot> reader,
            Function<FleetSnapshot, PreparedFleet> maker) {
        String key = depot == null ? "" : depot;
        Kept found = find(key);
        if (found != null && isCurrent(found, today, policy)) {
            return found;
        }
        long stored = store.changes();
        FleetSnapshot fleet = reader.get();
        Kept made = new Kept(stored, today, policy, fleet, maker.apply(fleet));
        put(key, made);
        return made;
    }

    private boolean isCurrent(Kept found, LocalDate today, Policy policy) {
        boolean tooOld = store.isShared() && System.nanoTime() - found.readAt > SHARED_NANOS;
        return !tooOld && found.stored == store.changes() && found.today.equals(today) && found.policy.equals(policy);
    }

    private synchronized @Nullable Kept find(String key) {
        SoftReference<Kept> reference = kept.get(key);
        return reference == null ? null : reference.get();
    }

    private synchronized void put(String key, Kept made) {
        kept.remove(key);
        kept.put(key, new SoftReference<>(made));
        if (kept.size() > MOST) {
            kept.remove(kept.keySet().iterator().next());
        }
    }
}
