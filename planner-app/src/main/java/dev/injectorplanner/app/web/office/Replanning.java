package dev.injectorplanner.app.web.office;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.core.fleet.Depot;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** Plans again and keeps the plan, so that it is in force with what was changed; alerts are updated from it. */
public final class Replanning {
    private final Application application;
    private final Office office;
    private final SiteClock clock;

    public Replanning(Application application, Office office, SiteClock clock) {
        this.application = application;
        this.office = office;
        this.clock = clock;
    }

    /**
     * Plans what the plan in force of a depot plans, or the depot where there is none. Who sees one depot plans that alone.
     *
     * @param runKey names the request: asked for twice, it is done once
     */
    public Planned plan(Viewer viewer, String depot, String runKey) {
        DepotPlan inForce = office.find(depot).orElse(null);
        return inForce == null
                ? keep(viewer, depot, runKey, clock.today(zone(depot)))
                : keep(
                        viewer,
                        scope(viewer, inForce),
                        runKey,
                        day(inForce.kept(), inForce.site().timeZone()));
    }

    /** The depot to plan, or null for all: what the plan in force plans, but never a depot that the person does not see. */
    public static @Nullable String scope(Viewer viewer, DepotPlan inForce) {
        return viewer.depot() == null ? inForce.kept().depot() : inForce.depot();
    }

    /**
     * The day to plan for: today; but a plan that was made for another day than it was kept on, such as the demo's, keeps
     * its day.
     */
    public LocalDate day(KeptPlan kept, ZoneId zone) {
        boolean madeForItsDay =
                LocalDate.ofInstant(kept.keptAt(), zone).equals(kept.plan().today());
        return madeForItsDay ? clock.today(zone) : kept.plan().today();
    }

    private ZoneId zone(String depot) {
        return application.planning().fleet(depot).depots().stream()
                .filter(each -> each.depot().equals(depot))
                .map(Depot::timeZone)
                .findFirst()
                .orElseThrow();
    }

    private Planned keep(Viewer viewer, @Nullable String depot, String runKey, LocalDate day) {
        Instant now = clock.now();
        Planned planned = application
                .planning()
                .planAndKeep(runKey, now, day, application.planning().policy(), depot, viewer.name());
        new Alerts(application.store().dataSource()).update(planned, now, viewer.name());
        office.changed();
        return planned;
    }
}
