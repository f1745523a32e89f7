package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Occurrences;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/** Faults of the injectors that are fitted now, seen within the last 30 days. */
public final class OpenFaults {
    /** How long a fault counts as open, days. */
    public static final int DAYS = 30;

    private final DepotPlan plan;
    private final ZoneId zone;

    public OpenFaults(DepotPlan plan) {
        this.plan = plan;
        this.zone = plan.site().timeZone();
    }

    /** Of all cylinders of a truck. */
    public long of(String truck) {
        List<Fault> faults = plan.fleet().faultsOf(truck);
        if (faults.stream().noneMatch(fault -> fault.cylinder() != null)) {
            return 0;
        }
        return faults.stream()
                .map(Fault::cylinder)
                .filter(cylinder -> cylinder != null)
                .distinct()
                .mapToLong(cylinder -> of(truck, cylinder))
                .sum();
    }

    /** Of one cylinder: what rose since the day its injector went in. */
    public long of(String truck, int cylinder) {
        LocalDate from = plan.today().minusDays(DAYS);
        LocalDate since = plan.fleet().injectorsOf(truck).stream()
                .filter(each -> each.cylinder() == cylinder && each.fittedAt(plan.today()))
                .map(FittedInjector::fittedOn)
                .findFirst()
                .filter(from::isBefore)
                .orElse(from);
        Occurrences seen = new Occurrences();
        for (Fault fault : plan.fleet().faultsOf(truck)) {
            if (fault.cylinder() != null && fault.cylinder() == cylinder) {
                if (LocalDate.ofInstant(fault.until(), zone).isBefore(since)) {
                    seen.before(fault);
                } else {
                    seen.add(fault);
                }
            }
        }
        return seen.total();
    }
}
