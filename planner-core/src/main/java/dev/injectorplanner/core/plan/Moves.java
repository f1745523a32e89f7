package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.schedule.VisitOption;
import org.jspecify.annotations.Nullable;

/**
 * What a visit of a schedule would cost in the week before or after, all other visits where they are: its own price, an
 * express shipment, overtime, the rescheduling cost of moving; and which limit prevents it.
 */
final class Moves {
    private final Draft draft;
    private final WeekStops stops;

    Moves(Draft draft) {
        this.draft = draft;
        this.stops = new WeekStops(draft);
    }

    /** A truck's reason, with its neighbouring weeks as the schedule leaves them. */
    VisitReason reason(TruckChoices truck, PricedVisit visit) {
        return VisitReason.of(truck.pricer(), visit, week(truck, visit, -1), week(truck, visit, 1));
    }

    private VisitReason.@Nullable Move week(TruckChoices truck, PricedVisit visit, int by) {
        int week = visit.week() + by;
        if (week < 0 || week >= truck.pricer().weeks()) {
            return null;
        }
        PricedVisit moved = truck.pricer().price(week, visit.set(), visit.rideAlongs());
        VisitOption to = draft.builder().option(truck.priced(), moved);
        VisitOption now = draft.builder().option(truck.priced(), visit);
        double costs = to.cost() - now.cost() + draft.booked().overtimeOfMove(truck.options(), to);
        boolean complete = draft.builder().kits().canBeComplete(truck.priced(), moved);
        return new VisitReason.Move(costs, complete ? limit(truck, to) : WeekStops.NO_PARTS);
    }

    private @Nullable String limit(TruckChoices truck, VisitOption to) {
        Integer latest = truck.options().latestWeek();
        if (latest != null && to.week() > latest) {
            return "safety needs it sooner";
        }
        String own = stops.of(truck, to.week(), to.truckDays());
        return own != null ? own : draft.booked().limitBeside(truck.options(), to);
    }
}
