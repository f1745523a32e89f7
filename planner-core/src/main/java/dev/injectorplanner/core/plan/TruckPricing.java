package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.PlanWeeks;
import dev.injectorplanner.core.defect.CostOfDeferring;
import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.due.DueRule;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderPrice;
import dev.injectorplanner.core.option.CylinderSets;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.Rates;
import dev.injectorplanner.core.option.RideAlongTask;
import dev.injectorplanner.core.risk.Deferrals;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.risk.ReplacementCosts;
import dev.injectorplanner.core.risk.TestPlan;
import dev.injectorplanner.core.risk.TestPlans;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.TruckUsage;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
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
    private final Deferrals deferrals;
    private final TestPlans tests;
    private final TruckRates rates;
    private final PlanWeeks weeks;

    TruckPricing(Learned learned) {
        this.index = learned.index();
        this.policy = learned.policy();
        this.usage = learned.usage();
        this.risk = learned.risk();
        this.costs = learned.costs();
        this.deferrals = learned.deferrals();
        this.tests = learned.tests();
        this.rates = learned.rates();
        this.weeks = learned.weeks();
    }

    CylinderSets setsOf(Truck truck) {
        return rates.setsOf(truck);
    }

    Rates ratesOf(Truck truck) {
        return rates.of(truck);
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
            List<DueItem> due = dueItems.stream()
                    .filter(item -> item.action() == DueAction.REPLACE)
                    .filter(item -> item.cylinder() != null && item.cylinder() == cylinder)
                    .toList();
            Optional<InjectorRisk> known = risk.find(truck.truck(), cylinder);
            double[] late = new double[policy.weeks()];
            due.stream()
                    .filter(item -> known.isEmpty() || isSites(item))
                    .map(DueItem::by)
                    .min(LocalDate::compareTo)
                    .ifPresent(by -> addLate(late, by, policy.visits().latePerDay()));
            if (known.isPresent()) {
                prices.add(priceOf(truck, known.get(), late));
            } else if (!due.isEmpty()) {
                prices.add(new CylinderPrice(cylinder, new double[policy.weeks()], 0, 0, late));
            }
        }
        return prices;
    }

    /** The planner's own limits are priced by what the injector's signs and age really say; the site's are kept. */
    private static boolean isSites(DueItem item) {
        return item.limitSource().equals(DueRule.SITE);
    }

    private CylinderPrice priceOf(Truck truck, InjectorRisk injector, double[] late) {
        CostOfDeferring deferring = deferrals.of(truck, injector);
        return new CylinderPrice(
                injector.cylinder(),
                deferring.until(),
                deferring.later(),
                costs.costsOf(truck, injector.part()).share(),
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
        return weeks.dayOf(week);
    }

    private static double daysAfter(LocalDate by, LocalDate day) {
        return Math.max(0, ChronoUnit.DAYS.between(by, day));
    }

    private List<RideAlongTask> rideAlongsOf(Truck truck, List<DueItem> dueItems) {
        List<RideAlongTask> rideAlongs = new ArrayList<>();
        for (DueItem item : dueItems) {
            if (item.action() == DueAction.SERVICE) {
                index.intervalsOf(truck.family()).stream()
                        .filter(task -> task.task().equals(item.task()))
                        .forEach(task -> rideAlongs.add(rideAlong(truck, task, item.by())));
            }
        }
        test(truck, dueItems).ifPresent(rideAlongs::add);
        return rideAlongs;
    }

    /** A test of the truck's injectors: worth what its result would change, and what is due of it by limits and warranty. */
    private Optional<RideAlongTask> test(Truck truck, List<DueItem> dueItems) {
        List<InjectorRisk> known = tests.listKnown(truck);
        Optional<TestPlan> plan = tests.of(truck);
        double[] cost = plan.map(TestPlan::cost).orElseGet(() -> new double[policy.weeks()]);
        double[] weights = new double[policy.weeks()];
        boolean asked = plan.isPresent();
        for (DueItem item : dueItems) {
            if (item.action() == DueAction.INSPECT && item.kind() != DueKind.SAFETY) {
                asked = true;
                addDue(cost, weights, truck, item, known);
            }
        }
        for (int week = 0; week < cost.length; week++) {
            cost[week] += weights[week];
        }
        return asked
                ? Optional.of(new RideAlongTask(
                        RideAlongTask.INSPECTION,
                        policy.inspectionHours(),
                        cost,
                        weights,
                        plan.map(TestPlan::worth).orElse(Map.of()),
                        true,
                        false))
                : Optional.empty();
    }

    private void addDue(double[] cost, double[] weights, Truck truck, DueItem item, List<InjectorRisk> known) {
        if (item.kind() == DueKind.WARRANTY) {
            addWarranty(cost, item, claimable(truck, item, known));
            addWarranty(weights, item, policy.visits().warrantyTestWorth());
        } else if (isSites(item)) {
            addLate(weights, item.by(), policy.visits().taskLatePerDay());
        }
    }

    private void addWarranty(double[] cost, DueItem item, double worth) {
        for (int week = 0; week < cost.length; week++) {
            LocalDate day = dayOf(week);
            boolean counts =
                    !day.isAfter(item.by()) && !day.plusWeeks(TEST_WEEKS).isBefore(item.by());
            cost[week] -= counts ? worth : 0;
        }
    }

    /** What a test may let the site claim: chance of a defect that it finds, at the part's price. */
    private double claimable(Truck truck, DueItem item, List<InjectorRisk> known) {
        double sum = 0;
        for (InjectorRisk injector : known) {
            if (item.cylinder() == null || item.cylinder() == injector.cylinder()) {
                double found = risk.defectModelOf(injector.part()).model().sensitivity() * injector.defectChance();
                sum += found * costs.priceOf(truck, injector.part());
            }
        }
        return sum;
    }

    private RideAlongTask rideAlong(Truck truck, IntervalTask task, LocalDate by) {
        double[] weights = new double[policy.weeks()];
        addLate(weights, by, policy.visits().taskLatePerDay());
        double[] cost = weights.clone();
        double worth = task.hours() * ratesOf(truck).labourPerHour();
        double interval = intervalDays(truck, task);
        for (int week = 0; week < cost.length; week++) {
            double early = Math.max(0, ChronoUnit.DAYS.between(dayOf(week), by));
            cost[week] += worth * Math.min(1, early / interval);
        }
        return new RideAlongTask(task.task(), task.hours(), cost, weights, Map.of(), task.rides(), false);
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
