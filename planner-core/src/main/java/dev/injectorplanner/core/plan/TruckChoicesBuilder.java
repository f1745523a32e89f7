package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The ways of every truck within what the manager holds, and in weeks in which it can be spared. */
final class TruckChoicesBuilder {
    private final FleetPricing pricing;
    private final CapacityCalendar calendar;
    private final VisitRules rules;
    private final Holds holds;
    private final SafetyPlan safety;
    private final IsoWeek firstWeek;
    private final LocalDate today;
    private final double expedite;

    TruckChoicesBuilder(
            Learned learned, FleetPricing pricing, CapacityCalendar calendar, Holds holds, SafetyPlan safety) {
        this.safety = safety;
        this.pricing = pricing;
        this.calendar = calendar;
        this.rules = learned.policy().visits();
        this.holds = holds;
        this.firstWeek = learned.firstWeek();
        this.today = learned.today();
        this.expedite = learned.policy().orders().expeditePrice().doubleValue();
    }

    /** Cases by truck, in the order given. */
    Map<String, TruckChoices> choicesOf(List<PricedTruck> trucks) {
        Map<String, TruckChoices> cases = new LinkedHashMap<>();
        trucks.forEach(each -> cases.put(each.truck().truck(), choicesOf(each)));
        return cases;
    }

    private TruckChoices choicesOf(PricedTruck priced) {
        Truck truck = priced.truck();
        IsoWeek confirmed = holds.confirmed().get(truck.truck());
        boolean waits = holds.isPinnedAfter(
                truck.truck(), firstWeek.plus(priced.pricer().weeks() - 1));
        LocalDate diagnosed = safety.dayOf(truck.truck());
        LocalDate after = diagnosed == null ? LocalDate.MIN : diagnosed;
        Integer pinned = waits ? null : pinnedWeek(truck, confirmed);
        List<PricedVisit> visits = new ArrayList<>(priced.visits());
        if (pinned != null) {
            offer(priced, pinned, visits);
        }
        if (confirmed != null) {
            offer(priced, firstWeek.weeksUntil(confirmed), visits);
        }
        visits.removeIf(visit -> waits
                || !holds.allows(truck.truck(), firstWeek.plus(visit.week()))
                || visit.truckDays() > calendar.daysFree(truck, visit.week(), after));
        List<VisitOption> options =
                visits.stream().map(visit -> option(priced, visit, confirmed)).toList();
        return new TruckChoices(
                priced,
                visits,
                new TruckOptions(truck.truck(), truck.depot(), truck.dutyGroup(), options, null, pinned));
    }

    /** A week that is held gets a visit even where none pays by itself. */
    private static void offer(PricedTruck priced, int week, List<PricedVisit> visits) {
        boolean within = week >= 0 && week < priced.pricer().weeks();
        if (within
                && !priced.pricer().pricedCylinders().isEmpty()
                && visits.stream().noneMatch(visit -> visit.week() == week)) {
            visits.add(priced.pricer().best(week));
        }
    }

    /** A visit as an option: with the express shipment and the rescheduling cost that its week brings. */
    VisitOption option(PricedTruck priced, PricedVisit visit, @Nullable IsoWeek confirmed) {
        double cost = visit.cost() + waiting(priced, visit) - stays(visit, confirmed);
        return new VisitOption(visit.week(), visit.cylinders(), visit.labourHours(), visit.truckDays(), cost);
    }

    /** Of an option's cost, what is a weight and no money. */
    double weights(TruckChoices truck, VisitOption option) {
        PricedVisit visit = truck.visitOf(option);
        return visit.weights()
                - stays(visit, holds.confirmed().get(truck.truck().truck()));
    }

    /** The same for the week that was confirmed, if any. */
    VisitOption option(PricedTruck priced, PricedVisit visit) {
        return option(priced, visit, holds.confirmed().get(priced.truck().truck()));
    }

    /** Expediting, where the kit of the visit's cylinders is not there by the week's Monday, or by today in this week. */
    private double waiting(PricedTruck priced, PricedVisit visit) {
        if (visit.set() == 0) {
            return 0;
        }
        LocalDate known = priced.kitOn().get(visit.set());
        LocalDate day = known != null ? known : pricing.kitOn(priced.truck(), priced.sets(), visit.set());
        LocalDate monday = firstWeek.plus(visit.week()).monday();
        LocalDate begins = monday.isBefore(today) ? today : monday;
        return day.isAfter(begins) ? expedite : 0;
    }

    /** What a visit that stays in its confirmed week is worth more than one that moves. */
    private double stays(PricedVisit visit, @Nullable IsoWeek confirmed) {
        return confirmed != null && confirmed.equals(firstWeek.plus(visit.week())) ? rules.reschedulingCost() : 0;
    }

    /** The week pinned; an confirmed visit of the frozen weeks is pinned too. */
    private @Nullable Integer pinnedWeek(Truck truck, @Nullable IsoWeek confirmed) {
        IsoWeek pin = holds.pinnedWeek(truck.truck());
        boolean over = holds.days().containsKey(truck.truck())
                && holds.days().get(truck.truck()).day().isBefore(today);
        if (pin != null && !over) {
            return Math.max(0, firstWeek.weeksUntil(pin));
        }
        if (confirmed == null || !holds.allows(truck.truck(), confirmed)) {
            return null;
        }
        int week = firstWeek.weeksUntil(confirmed);
        return week >= 0 && week < rules.frozenWeeks() ? Integer.valueOf(week) : null;
    }
}
