package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.Office;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which plans in force were made before something was changed that plans are made of. */
public final class OutdatedPlans {
    private final Office office;
    private final SiteSettings settings;

    public OutdatedPlans(Office office, SiteSettings settings) {
        this.office = office;
        this.settings = settings;
    }

    /** One depot for each such plan that a person sees; replanning it renews the plan. */
    List<String> depots(Viewer viewer) {
        Map<Long, String> depots = new LinkedHashMap<>();
        for (DepotPlan plan : office.choose(viewer, "").plans()) {
            if (settings.isBeforeChange(plan.kept().id())) {
                depots.putIfAbsent(plan.kept().id(), plan.depot());
            }
        }
        return List.copyOf(depots.values());
    }
}
