package dev.injectorplanner.app.web.office;

import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.store.StoreLane;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Reads plans in force and their fleets before somebody asks for them: at the start of the server, and when a plan was kept, on
 * whichever node. Whoever opens the first page of the morning would wait for it otherwise.
 */
public final class ReadAhead implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(ReadAhead.class);

    /** How often it looks for new plans, s; a look is answered from memory while nothing was stored. */
    private static final int EVERY = 5;

    private final Office office;
    private final KeptPlans plans;
    private final Map<String, Long> read = new HashMap<>();
    private final ScheduledExecutorService reader = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "plan-reader");
        thread.setDaemon(true);
        return thread;
    });

    public ReadAhead(Office office, KeptPlans plans) {
        this.office = office;
        this.plans = plans;
        reader.scheduleWithFixedDelay(this::look, 0, EVERY, TimeUnit.SECONDS);
    }

    /** Reads what is new; what fails is left to the page that asks, which says why. */
    private void look() {
        try {
            StoreLane.<RuntimeException>reading(this::lookNow);
        } catch (IOException | RuntimeException e) {
            LOG.debug("Reading ahead failed; pages read for themselves.", e);
        }
    }

    /** Reads each plan in force that was not read yet. */
    void lookNow() {
        for (String depot : office.depots()) {
            Optional<Long> inForce = plans.findInForceId(depot);
            if (inForce.isPresent() && !inForce.get().equals(read.put(depot, inForce.get()))) {
                readNow(depot);
            }
        }
    }

    /** One that cannot be read keeps no other from being read. */
    private void readNow(String depot) {
        try {
            office.find(depot).ifPresent(DepotPlan::visits);
        } catch (RuntimeException e) {
            LOG.debug("The plan of {} could not be read ahead; its page says why.", depot, e);
        }
    }

    @Override
    public void close() {
        reader.shutdownNow();
    }
}
