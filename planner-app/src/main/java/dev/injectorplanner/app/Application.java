package dev.injectorplanner.app;

import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;

/**
 * The composition root: everything that outlives one step of a command, put together by hand, without a framework. The
 * pages and jobs of {@code serve} will be put around these same objects.
 */
public record Application(Store store, Intake intake, Planning planning) implements AutoCloseable {
    public static Application open(StoreSettings settings) {
        Store store = Store.open(settings);
        return new Application(
                store, new Intake(store), new Planning(store, new Planner(new ExactScheduler(SearchLimits.USUAL))));
    }

    @Override
    public void close() {
        store.close();
    }
}
