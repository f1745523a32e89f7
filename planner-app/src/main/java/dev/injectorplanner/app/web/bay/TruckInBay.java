package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.bayjob.BayJob;
import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.AnsweredFaults;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.bay.BaySheet;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A truck as it stands before a mechanic.
 *
 * @param truck the truck
 * @param depot its depot
 * @param family its engine
 * @param fleet its depot's fleet
 * @param planDay day of the plan in force, or null where there is none
 * @param today the later of that day and the depot's own
 * @param visit its visit in that plan, or null
 * @param sheet the visit's sheet, or null
 * @param kit injectors meant for its cylinders
 * @param done its close-out since that plan, or null
 * @param finished day and hour at which the work was finished, as far as the plan and the clock can guess
 * @param units in which people of the site read and type
 * @param job the unplanned job that is open at it, or null
 * @param due what is due at it by the plan in force
 */
record TruckInBay(
        Truck truck,
        Depot depot,
        EngineFamily family,
        FleetIndex fleet,
        @Nullable LocalDate planDay,
        LocalDate today,
        @Nullable Visit visit,
        @Nullable BaySheet sheet,
        Map<Integer, StockInjector> kit,
        @Nullable CloseOut done,
        Finished finished,
        SiteUnits units,
        @Nullable BayJob job,
        List<DueItem> due) {
    /** When work was finished; the hour is null where nothing tells it. */
    record Finished(LocalDate day, @Nullable LocalTime hour) {}

    /** Cylinders that the plan wants done. */
    List<Integer> planned() {
        return visit == null ? List.of() : visit.cylinders();
    }

    /** Week of the visit in the plan, or null where nobody planned the work. */
    @Nullable
    IsoWeek week() {
        return visit == null || job != null ? null : visit.week();
    }

    /** The visit that photographs and looks belong to. */
    String visitKey() {
        return job != null
                ? "job " + job.id()
                : visit == null ? "unplanned " + today : visit.week().toString();
    }

    /** Faults on record that no repair has answered. */
    List<Fault> openFaults() {
        AnsweredFaults answered = new AnsweredFaults(fleet.repairsOf(truck.truck()));
        return fleet.faultsOf(truck.truck()).stream()
                .filter(fault -> !answered.covers(
                        fault, fault.until().atZone(depot.timeZone()).toLocalDate()))
                .toList();
    }

    /** Day of the plan in force, or today where there is none. */
    LocalDate day() {
        return planDay == null ? today : planDay;
    }

    Optional<FittedInjector> fittedIn(int cylinder) {
        return fleet.injectorsOf(truck.truck()).stream()
                .filter(row -> row.cylinder() == cylinder && row.removedOn() == null)
                .findFirst();
    }
}
