package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.AllocationChecker;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.ExtraCapacity;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleChecker;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.VisitScheduler;
import dev.injectorplanner.core.schedule.days.DayPlan;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A fleet learned and priced once, which is the slow part: from here on a plan within other holds, or with hours and bays
 * added, costs only its schedule. Trying out changes nothing, and one of these may serve many threads.
 */
public final class PreparedFleet {
    /** What moving a visit that need not move must save, in the site's currency: planner default. */
    private static final double WORTH_OF_STAYING = 20;

    /** Depot-weeks whose days are remembered for the next trial. */
    private static final int MOST_KNOWN = 1_000;

    private final Learned learned;
    private final FleetPricing pricing;
    private final List<PricedTruck> trucks;
    private final Map<DayLayout.Input, DayPlan> knownDays = new ConcurrentHashMap<>();

    PreparedFleet(Learned learned) {
        this.learned = learned;
        this.pricing = new FleetPricing(learned);
        this.trucks = List.copyOf(pricing.trucks());
    }

    /** What was learned of its lives. */
    FleetLives lives() {
        return learned.risk().shared();
    }

    /** A schedule that was tried out, to be compared or told as a plan. */
    public static final class Trial {
        final Draft draft;

        Trial(Draft draft) {
            this.draft = draft;
        }

        /** What it costs against doing nothing in the horizon. */
        public PlanCost cost() {
            return PlanCost.of(draft);
        }
    }

    /**
     * Schedules within holds.
     *
     * @param extra hours and bays on top; several rows of a week add up
     * @throws InvalidValueException where {@code extra} names a depot that is not there, or a week outside the plan or
     *     without a working day
     * @throws IllegalStateException if the scheduler breaks a limit, with each in words
     */
    public Trial tryOut(VisitScheduler scheduler, Holds holds, List<ExtraCapacity> extra) {
        return tryOut(scheduler, holds, extra, null);
    }

    /**
     * As above, near another trial of this fleet: visits that need not move stay, so that the change between the two shows
     * what was asked and not another schedule as good.
     */
    public Trial tryOut(VisitScheduler scheduler, Holds holds, List<ExtraCapacity> extra, @Nullable Trial near) {
        CapacityCalendar whole = new CapacityCalendar(
                learned.index(), learned.today(), learned.policy().weeks(), extra);
        extra.forEach(row -> check(whole, row));
        SafetyPlan safety = new SafetyPlan(learned, whole, holds);
        CapacityCalendar calendar = whole.withOffRoad(safety.offRoadUntil());
        KitPrices alone = KitPrices.alone(pricing, calendar, learned.firstWeek());
        TruckChoicesBuilder builder = new TruckChoicesBuilder(learned, calendar, holds, safety, alone);
        Map<String, TruckChoices> cases = builder.choicesOf(trucks);
        ScheduleRequest request = request(learned, calendar, safety, cases);
        Schedule schedule = checked(
                request, near == null ? scheduler.schedule(request) : near(scheduler, request, near.draft.schedule()));
        StockRounds rounds = new StockRounds(pricing, trucks, scheduler);
        if (knownDays.size() > MOST_KNOWN) {
            knownDays.clear();
        }
        Draft draft = new StockAndDays(rounds, knownDays)
                .settle(new Draft(learned, calendar, holds, builder, cases, request, schedule, safety));
        checked(SecondVisitPlacer.request(draft, draft.seconds()), SecondVisitPlacer.schedule(draft, draft.seconds()));
        return new Trial(checked(draft));
    }

    static ScheduleRequest request(
            Learned learned, CapacityCalendar calendar, SafetyPlan safety, Map<String, TruckChoices> cases) {
        return new ScheduleRequest(
                learned.policy().weeks(),
                cases.values().stream()
                        .filter(each ->
                                each.options().hasWish() || !each.visits().isEmpty())
                        .map(TruckChoices::options)
                        .toList(),
                safety.left(calendar.depotCapacity()),
                calendar.groupCapacity());
    }

    private static Draft checked(Draft draft) {
        List<String> violations = AllocationChecker.listViolations(
                draft.learned().index().fleet(),
                draft.learned().today(),
                draft.learned().policy().orders().expediteDays(),
                draft.kits(),
                draft.allocation(),
                StockAndDays.starts(draft));
        if (!violations.isEmpty()) {
            throw new IllegalStateException("the allocation breaks its limits: " + String.join("; ", violations));
        }
        return draft;
    }

    /**
     * Twice: once for the bound and the least cost, once with visits favoured that stay. The second is taken where what it
     * lets stay is worth its cost, which is always so unless its search ended early.
     */
    private static Schedule near(VisitScheduler scheduler, ScheduleRequest request, Schedule near) {
        Schedule proven = scheduler.schedule(request, near);
        StayNear stay = new StayNear(request, near, WORTH_OF_STAYING);
        Schedule staying = stay.trueCosts(scheduler.schedule(stay.favouring(), near), proven);
        boolean keepsAsMuch =
                staying.brokenWishes().size() <= proven.brokenWishes().size();
        return keepsAsMuch && stay.isWorthIt(staying, proven) ? staying : proven;
    }

    /** What changes from one trial to another, both of this fleet. */
    public PlanChange change(Trial before, Trial after) {
        return DraftChange.of(before.draft, after.draft);
    }

    private void check(CapacityCalendar calendar, ExtraCapacity row) {
        List<Depot> depots = learned.index().fleet().depots();
        Depot depot = depots.stream()
                .filter(each -> each.depot().equals(row.depot()))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "depot",
                        row.depot(),
                        "is not in this plan",
                        "choose one of " + depots.stream().map(Depot::depot).collect(Collectors.joining(", "))));
        IsoWeek first = learned.firstWeek();
        int week = first.weeksUntil(row.week());
        if (week < 0 || week >= learned.policy().weeks()) {
            throw new InvalidValueException(
                    "week",
                    row.week(),
                    "is outside the plan, " + first + " to "
                            + first.plus(learned.policy().weeks() - 1),
                    "add capacity in a week of the plan, or plan more weeks");
        }
        if (calendar.openDays(depot, week).isEmpty()) {
            throw new InvalidValueException(
                    "week",
                    row.week(),
                    "has no working day of depot " + row.depot() + " left",
                    "enter its days in the capacity table, or choose another week");
        }
    }

    private static Schedule checked(ScheduleRequest request, Schedule schedule) {
        List<String> violations = ScheduleChecker.listViolations(request, schedule);
        if (!violations.isEmpty()) {
            throw new IllegalStateException("the schedule breaks its limits: " + String.join("; ", violations));
        }
        return schedule;
    }
}
