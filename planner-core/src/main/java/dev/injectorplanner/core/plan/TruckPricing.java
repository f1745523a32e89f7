package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderPrice;
import dev.injectorplanner.core.option.CylinderSets;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.Rates;
import dev.injectorplanner.core.option.RideAlongTask;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.replace.DeferralCost;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.risk.ReplacementCosts;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.TruckUsage;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Prices the weeks of every cylinder and task of a truck. Leaving an injector alone costs its deferral cost; being past a
 * limit of the rules costs this much a day, counted to the end of the horizon where nothing is done; a task costs its share
 * of an interval that is lost when it is early, and this much a day when it is late.
 */
final class TruckPricing {
    /** A test this many weeks before a warranty ends still counts for it. */
    private static final int TEST_WEEKS = 8;

    private static final double DAYS_A_MONTH = 365.25 / 12;

    private final FleetIndex index;
    private final Policy policy;
    private final FleetUsage usage;
    private final FleetRisk risk;
    private final ReplacementCosts costs;
    private final LocalDate today;
    private final Map<String, CylinderSets> sets = new HashMap<>();
    private final Map<String, Double> downtime = new HashMap<>();

    TruckPricing(
            FleetIndex index,
            Policy policy,
            FleetUsage usage,
            FleetRisk risk,
            ReplacementCosts costs,
            LocalDate today) {
        this.index = index;
        this.policy = policy;
        this.usage = usage;
        this.risk = risk;
        this.costs = costs;
        this.today = today;
        for (DutyGroup group : index.fleet().dutyGroups()) {
            downtime.put(group.dutyGroup(), group.downtimePerDay().doubleValue());
        }
    }

    CylinderSets setsOf(Truck truck) {
        return sets.computeIfAbsent(
                truck.family(), family -> new CylinderSets(index.family(family), index.accessOf(family)));
    }

    Rates ratesOf(Truck truck) {
        VisitRules rules = policy.visits();
        String group = truck.dutyGroup();
        return new Rates(
                index.depot(truck.depot()).labourPerHour().doubleValue(),
                rules.coolantPerLitre(),
                rules.bayPerVisit(),
                group == null ? rules.downtimePerDay() : downtime.getOrDefault(group, rules.downtimePerDay()),
                policy.bayHoursPerDay());
    }

    /** Prices the visits of a truck. */
    OptionPricer pricerOf(Truck truck, List<DueItem> dueItems) {
        return new OptionPricer(
                setsOf(truck),
                ratesOf(truck),
                pricesOf(truck, dueItems),
                rideAlongsOf(truck, dueItems),
                policy.weeks());
    }

    /** A price for every cylinder whose injector is known, or that a rule names. */
    List<CylinderPrice> pricesOf(Truck truck, List<DueItem> dueItems) {
        EngineFamily family = index.family(truck.family());
        List<CylinderPrice> prices = new ArrayList<>();
        for (int cylinder : family.allCylinders()) {
            Optional<LocalDate> limit = dueItems.stream()
                    .filter(item -> item.action() == DueAction.REPLACE)
                    .filter(item -> item.cylinder() != null && item.cylinder() == cylinder)
                    .map(DueItem::by)
                    .min(LocalDate::compareTo);
            double[] late = new double[policy.weeks()];
            limit.ifPresent(by -> addLate(late, by, policy.visits().latePerDay()));
            Optional<InjectorRisk> known = risk.find(truck.truck(), cylinder);
            if (known.isPresent()) {
                prices.add(priceOf(truck, known.get(), late));
            } else if (limit.isPresent()) {
                prices.add(new CylinderPrice(cylinder, new double[policy.weeks()], 0, 0, late));
            }
        }
        return prices;
    }

    private CylinderPrice priceOf(Truck truck, InjectorRisk injector, double[] late) {
        DeferralCost deferral = costs.deferralOf(truck, injector);
        double perWeek = injector.clock().of(usage.of(truck.truck())).perWeek();
        double[] until = new double[policy.weeks()];
        for (int week = 0; week < until.length; week++) {
            until[week] = injector.age() + week * perWeek;
        }
        double end = injector.age() + policy.weeks() * perWeek;
        double share = costs.accessShareHours(truck.family()) * ratesOf(truck).labourPerHour();
        return new CylinderPrice(
                injector.cylinder(),
                deferral.costs(injector.age(), until),
                deferral.bestMoment(injector.age(), end).cost(),
                share,
                late);
    }

    /** Adds what days late cost in each week against never within the horizon. */
    private void addLate(double[] cost, LocalDate by, double perDay) {
        double never = daysAfter(by, dayOf(policy.weeks()));
        for (int week = 0; week < cost.length; week++) {
            cost[week] += perDay * (daysAfter(by, dayOf(week)) - never);
        }
    }

    private LocalDate dayOf(int week) {
        return week == 0 ? today : IsoWeek.of(today).plus(week).monday();
    }

    private static double daysAfter(LocalDate by, LocalDate day) {
        return Math.max(0, ChronoUnit.DAYS.between(by, day));
    }

    private List<RideAlongTask> rideAlongsOf(Truck truck, List<DueItem> dueItems) {
        List<RideAlongTask> rideAlongs = new ArrayList<>();
        double[] test = new double[policy.weeks()];
        boolean tested = false;
        boolean must = false;
        for (DueItem item : dueItems) {
            if (item.action() == DueAction.INSPECT) {
                tested = true;
                boolean safety = item.kind() == DueKind.SAFETY;
                if (!safety || !must) { // of several codes the earliest counts, and once: they may be one leak
                    addTest(test, item);
                }
                must |= safety;
            } else if (item.action() == DueAction.SERVICE) {
                index.intervalsOf(truck.family()).stream()
                        .filter(task -> task.task().equals(item.task()))
                        .forEach(task -> rideAlongs.add(rideAlong(truck, task, item.by())));
            }
        }
        if (tested) {
            rideAlongs.add(new RideAlongTask(RideAlongTask.INSPECTION, policy.inspectionHours(), test, true, must));
        }
        return rideAlongs;
    }

    private void addTest(double[] cost, DueItem item) {
        if (item.kind() != DueKind.WARRANTY) {
            boolean safety = item.kind() == DueKind.SAFETY;
            addLate(
                    cost,
                    item.by(),
                    safety ? policy.safety().latePerDay() : policy.visits().taskLatePerDay());
            return;
        }
        for (int week = 0; week < cost.length; week++) {
            LocalDate day = dayOf(week);
            boolean counts =
                    !day.isAfter(item.by()) && !day.plusWeeks(TEST_WEEKS).isBefore(item.by());
            cost[week] -= counts ? policy.visits().warrantyTestWorth() : 0;
        }
    }

    private RideAlongTask rideAlong(Truck truck, IntervalTask task, LocalDate by) {
        double[] cost = new double[policy.weeks()];
        addLate(cost, by, policy.visits().taskLatePerDay());
        double worth = task.hours() * ratesOf(truck).labourPerHour();
        double interval = intervalDays(truck, task);
        for (int week = 0; week < cost.length; week++) {
            double early = Math.max(0, ChronoUnit.DAYS.between(dayOf(week), by));
            cost[week] += worth * Math.min(1, early / interval);
        }
        return new RideAlongTask(task.task(), task.hours(), cost, task.rides());
    }

    private double intervalDays(Truck truck, IntervalTask task) {
        double days = Double.POSITIVE_INFINITY;
        Integer months = task.everyMonths();
        if (months != null) {
            days = months * DAYS_A_MONTH;
        }
        Optional<TruckUsage> known = usage.find(truck.truck());
        if (known.isPresent()) {
            days = Math.min(
                    days, 7 * perWeeks(task.everyKm(), known.get().odometer().perWeek()));
            days = Math.min(
                    days,
                    7 * perWeeks(task.everyHours(), known.get().engineHours().perWeek()));
        }
        return days;
    }

    private static double perWeeks(@Nullable Double every, double perWeek) {
        return every == null || !(perWeek > 0) ? Double.POSITIVE_INFINITY : every / perWeek;
    }
}
