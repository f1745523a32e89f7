package dev.injectorplanner.core.cores;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cores owed: one for each reman injector fitted while its truck was in service, where its part has a deposit. One
 * that was sent, as the table of returns says, is owed no more; one that was not is shown as lost for {@link #PAST_DAYS} days.
 */
public final class CoresOwed {
    /** A core whose last day has passed is still shown for this many days. Planner default. */
    public static final int PAST_DAYS = 30;

    /** A core is to be sent now when this many days are left or fewer. Planner default. */
    public static final int REMIND_DAYS = 14;

    private CoresOwed() {}

    /** Cores owed on a day, the most urgent first. */
    public static List<CoreOwed> of(FleetIndex index, LocalDate today) {
        List<CoreOwed> cores = new ArrayList<>();
        for (Truck truck : index.fleet().trucks()) {
            for (FittedInjector injector : index.injectorsOf(truck.truck())) {
                boolean bought = injector.origin() == Origin.REMAN
                        && injector.fittedOn().isAfter(truck.inServiceOn())
                        && !injector.fittedOn().isAfter(today)
                        && !index.isReturned(UnitReturn.What.CORE, injector);
                index.findPart(injector.part())
                        .filter(part -> bought && part.coreDeposit().signum() > 0)
                        .map(part -> core(index, truck, injector, part, today))
                        .filter(core -> core.daysLeft() >= -PAST_DAYS)
                        .ifPresent(cores::add);
            }
        }
        cores.sort(CoreOwed.MOST_URGENT);
        return cores;
    }

    private static CoreOwed core(FleetIndex index, Truck truck, FittedInjector injector, Part part, LocalDate today) {
        LocalDate lastDay = injector.fittedOn().plusDays(part.coreDays());
        int left = (int) ChronoUnit.DAYS.between(today, lastDay);
        return new CoreOwed(
                truck.depot(),
                truck.truck(),
                injector.cylinder(),
                injector.part(),
                part.supplier(),
                injector.fittedOn(),
                injector.fitting(),
                oldSerial(index, injector),
                part.coreDeposit(),
                lastDay,
                left,
                left < 0 ? CoreState.PAST : left <= REMIND_DAYS ? CoreState.SEND_NOW : CoreState.OPEN);
    }

    /** Serial of the unit that came out of that cylinder last, on or before the day of fitting. */
    public static @Nullable String oldSerial(FleetIndex index, FittedInjector fitted) {
        FittedInjector before = null;
        for (FittedInjector each : index.injectorsOf(fitted.truck())) {
            LocalDate out = each.removedOn();
            boolean earlier = each.cylinder() == fitted.cylinder()
                    && each.wentInBefore(fitted)
                    && out != null
                    && !out.isAfter(fitted.fittedOn());
            before = earlier ? each : before;
        }
        return before == null ? null : before.serial();
    }
}
