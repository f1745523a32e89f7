package dev.injectorplanner.app.assembly;

import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.holds.SafetyHolds;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.planning.VisitConfirmation;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.util.ArrayList;
import java.util.List;

/**
 * The composition root: everything that outlives one step of a command, put together by hand, without a framework. The
 * pages and jobs of {@code serve} will be put around these same objects.
 */
public record Application(
        Store store, Intake intake, KeptPlans plans, HoldBook holds, Planning planning, VisitConfirmation confirmation)
        implements AutoCloseable {
    public static Application open(StoreSettings settings) {
        Store store = Store.open(settings, entities());
        KeptPlans plans = new KeptPlans(store);
        HoldBook holds = new HoldBook(store);
        Planner planner = new Planner(new ExactScheduler(SearchLimits.USUAL));
        return new Application(
                store,
                new Intake(store, new SiteSettings(store.dataSource())::logNames),
                plans,
                holds,
                new Planning(store, planner, holds, plans),
                new VisitConfirmation(plans, holds));
    }

    /** Diagnoses that are held off. */
    public SafetyHolds safetyHolds() {
        return new SafetyHolds(store);
    }

    /** Where every change is noted. */
    public AuditTrail audit() {
        return new AuditTrail(store.dataSource());
    }

    /** What the site has set for itself. */
    public SiteSettings settings() {
        return new SiteSettings(store.dataSource());
    }

    private static List<Class<?>> entities() {
        List<Class<?>> entities = new ArrayList<>(KeptPlans.entities());
        entities.addAll(HoldBook.entities());
        return entities;
    }

    @Override
    public void close() {
        store.close();
    }
}
