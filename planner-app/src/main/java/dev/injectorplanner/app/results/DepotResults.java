package dev.injectorplanner.app.results;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.core.access.AccessModel;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.PartLife;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A depot's months, from its records: fittings, close-outs, repairs, meters, cores and claims. */
final class DepotResults {
    private final FleetIndex fleet;
    private final Depot depot;
    private final ZoneId zone;
    private final List<PartLife> lives;
    private final Map<YearMonth, Sum> sums = new TreeMap<>();

    /** What a month adds up to. */
    private static final class Sum {
        private int planned = -1;
        private int done;
        private int asPlanned;
        private int failures;
        private double plannedHours = -1;
        private double worked;
        private double unplanned;
        private double early;
        private double credited;
        private double lost;
        private double warranty;
        private double km;
        private double parts;
        private double failureMoney;
    }

    DepotResults(FleetIndex fleet, String depot, List<PartLife> lives, YearMonth first, YearMonth last) {
        this.fleet = fleet;
        this.depot = fleet.depot(depot);
        this.zone = this.depot.timeZone();
        this.lives = lives;
        for (YearMonth month = first; !month.isAfter(last); month = month.plusMonths(1)) {
            sums.put(month, new Sum());
        }
    }

    /** @param closeOuts those that hold */
    List<MonthResult> months(Map<IsoWeek, PlannedWeeks.Week> weeks, List<CloseOut> closeOuts) {
        planned(weeks);
        Map<String, CloseOut> closed = new HashMap<>();
        closeOuts.forEach(each -> closed.put(each.truck() + " " + each.doneOn(), each));
        closeOuts.forEach(this::worked);
        for (Truck truck : fleet.fleet().trucks()) {
            if (truck.depot().equals(depot.depot())) {
                fittings(truck, closed);
                distance(truck);
                repairs(truck);
            }
        }
        returns();
        List<MonthResult> months = new ArrayList<>();
        sums.forEach((month, sum) -> months.add(result(month, sum)));
        return months;
    }

    private MonthResult result(YearMonth month, Sum sum) {
        return new MonthResult(
                month,
                sum.planned,
                sum.done,
                sum.asPlanned,
                sum.failures,
                sum.plannedHours,
                sum.worked,
                sum.unplanned,
                sum.early,
                sum.credited,
                sum.lost,
                sum.warranty,
                sum.km,
                sum.parts,
                (sum.worked + sum.unplanned) * depot.labourPerHour().doubleValue(),
                sum.failureMoney);
    }

    private void planned(Map<IsoWeek, PlannedWeeks.Week> weeks) {
        weeks.forEach((week, planned) -> {
            Sum sum = sums.get(YearMonth.from(week.monday()));
            if (sum != null) {
                sum.planned = Math.max(0, sum.planned) + planned.visits();
                sum.plannedHours = Math.max(0, sum.plannedHours) + planned.hours();
            }
        });
    }

    private void worked(CloseOut each) {
        Sum sum = sums.get(YearMonth.from(each.doneOn()));
        if (sum != null) {
            sum.done++;
            if (each.week() == null) {
                sum.unplanned += each.labourHours();
            } else {
                sum.asPlanned++;
                sum.worked += each.labourHours();
            }
        }
    }

    private void fittings(Truck truck, Map<String, CloseOut> closed) {
        Map<LocalDate, List<Integer>> fitted = new TreeMap<>();
        Map<LocalDate, Boolean> failed = new TreeMap<>();
        for (FittedInjector each : fleet.injectorsOf(truck.truck())) {
            Sum in = sums.get(YearMonth.from(each.fittedOn()));
            if (in != null) {
                in.parts += fleet.findPart(each.part())
                        .map(Part::price)
                        .map(BigDecimal::doubleValue)
                        .orElse(0.0);
                fitted.computeIfAbsent(each.fittedOn(), day -> new ArrayList<>())
                        .add(each.cylinder());
            }
            LocalDate out = each.removedOn();
            Sum outOf = out == null ? null : sums.get(YearMonth.from(out));
            if (out != null && outOf != null) {
                failed.merge(out, each.found() == Found.FAILED, Boolean::logicalOr);
                if (each.found() == Found.HEALTHY) {
                    outOf.early += early(each);
                }
            }
        }
        work(truck, closed, fitted);
        failures(truck, closed, failed);
    }

    private void work(Truck truck, Map<String, CloseOut> closed, Map<LocalDate, List<Integer>> fitted) {
        EngineFamily family = fleet.family(truck.family());
        AccessModel access = new AccessModel(family, fleet.accessOf(family.family()));
        fitted.forEach((day, cylinders) -> {
            Sum sum = sums.get(YearMonth.from(day));
            if (sum != null && !closed.containsKey(truck.truck() + " " + day)) {
                sum.done++;
                sum.unplanned +=
                        access.labourHours(cylinders.stream().distinct().toList());
            }
        });
    }

    private void failures(Truck truck, Map<String, CloseOut> closed, Map<LocalDate, Boolean> failed) {
        EngineFamily family = fleet.family(truck.family());
        failed.forEach((day, any) -> {
            CloseOut by = closed.get(truck.truck() + " " + day);
            Sum sum = sums.get(YearMonth.from(day));
            if (sum != null && any && (by == null || by.week() == null)) {
                sum.failures++;
                sum.failureMoney += family.roadFailureCost().doubleValue();
            }
        });
    }

    /** Its price times the share of a mean life that it had not run; nothing where its age or life is not known. */
    private double early(FittedInjector unit) {
        Part part = fleet.findPart(unit.part()).orElse(null);
        PartLife life = lives.stream()
                .filter(each -> each.part().equals(unit.part()) && each.origin() == unit.origin())
                .findFirst()
                .orElse(null);
        if (part == null || life == null) {
            return 0;
        }
        boolean km = life.clock() == Clock.DISTANCE;
        Double from = km ? unit.odometerKm() : unit.engineHours();
        Double to = km ? unit.removedOdometerKm() : unit.removedEngineHours();
        if (from == null || to == null || to < from) {
            return 0;
        }
        double left = Math.max(0, 1 - (to - from) / life.life().meanLife());
        return part.price().doubleValue() * left;
    }

    /** Distance by months: between the last readings before each month's end, what a replaced meter jumps left out. */
    private void distance(Truck truck) {
        Double before = null;
        for (Reading reading : fleet.readingsOf(truck.truck())) {
            Double now = reading.odometerKm();
            if (now == null) {
                continue;
            }
            if (before != null && now >= before && !reading.meterReplaced()) {
                Sum sum = sums.get(YearMonth.from(LocalDate.ofInstant(reading.takenAt(), zone)));
                if (sum != null) {
                    sum.km += now - before;
                }
            }
            before = now;
        }
    }

    private void repairs(Truck truck) {
        for (Repair repair : fleet.repairsOf(truck.truck())) {
            Sum sum = sums.get(YearMonth.from(repair.doneOn()));
            Double hours = repair.hours();
            if (sum != null && hours != null) {
                sum.unplanned += hours;
            }
        }
    }

    private void returns() {
        Map<String, Truck> here = new HashMap<>();
        fleet.fleet().trucks().stream()
                .filter(truck -> truck.depot().equals(depot.depot()))
                .forEach(truck -> here.put(truck.truck(), truck));
        for (UnitReturn each : fleet.fleet().returns()) {
            LocalDate settled = each.settledOn();
            BigDecimal credit = each.credit();
            Sum sum = settled == null ? null : sums.get(YearMonth.from(settled));
            if (sum == null || credit == null || !here.containsKey(each.truck())) {
                continue;
            }
            if (each.what() == UnitReturn.What.CORE) {
                sum.credited += credit.doubleValue();
                sum.lost += Math.max(0, each.amount().subtract(credit).doubleValue());
            } else {
                sum.warranty += credit.doubleValue();
            }
        }
    }
}
