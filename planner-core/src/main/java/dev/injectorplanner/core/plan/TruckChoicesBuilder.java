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
    private final CapacityCalendar calendar;
    private final KitPrices kits;
    private final VisitRules rules;
    private final Holds holds;
    private final SafetyPlan safety;
    private final SecondVisits seconds;
    private final Learned learned;
    private final IsoWeek firstWeek;
    private final LocalDate today;

    TruckChoicesBuilder(Learned learned, CapacityCalendar calendar, Holds holds, SafetyPlan safety, KitPrices kits) {
        this(
                calendar,
                kits,
                learned.policy().visits(),
                holds,
                safety,
                new SecondVisits(learned, calendar, holds, safety),
                learned);
    }

    private TruckChoicesBuilder(
            CapacityCalendar calendar,
            KitPrices kits,
            VisitRules rules,
            Holds holds,
            SafetyPlan safety,
            SecondVisits seconds,
            Learned learned) {
        this.calendar = calendar;
        this.kits = kits;
        this.rules = rules;
        this.holds = holds;
        this.safety = safety;
        this.seconds = seconds;
        this.learned = learned;
        this.firstWeek = learned.firstWeek();
        this.today = learned.today();
    }

    /** The same with kits at other prices. */
    TruckChoicesBuilder with(KitPrices other) {
        return new TruckChoicesBuilder(calendar, other, rules, holds, safety, seconds, learned);
    }

    /** Second visits beside the ways. */
    SecondVisits seconds() {
        return seconds;
    }

    KitPrices kits() {
        return kits;
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
                || visit.truckDays() > calendar.daysFree(truck, visit.week(), after)
                || !kits.canBeComplete(priced, visit));
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

    /** A visit as an option: with the shipments and the rescheduling cost that its week brings. */
    VisitOption option(PricedTruck priced, PricedVisit visit, @Nullable IsoWeek confirmed) {
        return option(priced, visit, kits.of(priced, visit), confirmed);
    }

    /**
     * The same with shipments at a given price; where its kit cannot be complete, which is no option, at none. What the best
     * second visit beside it saves is in its price, and taken out again where there is no room for that one.
     */
    VisitOption option(PricedTruck priced, PricedVisit visit, double shipments, @Nullable IsoWeek confirmed) {
        double cost = visit.cost()
                + (Double.isInfinite(shipments) ? 0 : shipments)
                + seconds.bestCost(priced, visit)
                - stays(visit, confirmed);
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
