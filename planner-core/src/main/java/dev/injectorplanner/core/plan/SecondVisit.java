package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.List;

/**
 * A visit beside a truck's main one, in another week.
 *
 * @param truck the truck
 * @param visit work without cylinders
 */
record SecondVisit(TruckChoices truck, PricedVisit visit) {
    private static final String SECOND = "\nsecond visit";

    /** A name of its own beside the truck's, for where a truck may stand once. */
    String key() {
        return truck.truck().truck() + SECOND;
    }

    /** The truck of such a name, or of its own. */
    static String truckOf(String key) {
        return key.replace(SECOND, "");
    }

    /** As the scheduler sees it: a truck with one way. */
    TruckOptions asked() {
        return new TruckOptions(key(), truck.truck().depot(), truck.truck().dutyGroup(), List.of(option()), null);
    }

    VisitOption option() {
        return new VisitOption(visit.week(), List.of(), visit.labourHours(), visit.truckDays(), visit.cost());
    }
}
