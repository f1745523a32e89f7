package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a visit of a schedule would cost in the weeks around its own, all other visits where they are: its own price, an
 * express shipment, overtime, the rescheduling cost of moving; and which limit prevents it.
 */
final class Moves {
    /** Weeks looked at before and after the one planned. */
    private static final int WEEKS_EARLIER = 2;

    private static final int WEEKS_LATER = 5;

    private final Draft draft;
    private final WeekStops stops;

    Moves(Draft draft) {
        this.draft = draft;
        this.stops = new WeekStops(draft);
    }

    /** A truck's reason, with the weeks around it as the schedule leaves them. */
    VisitReason reason(TruckChoices truck, PricedVisit visit) {
        List<VisitReason.OtherWeek> weeks = new ArrayList<>();
        int last = Math.min(truck.pricer().weeks() - 1, visit.week() + WEEKS_LATER);
        for (int week = Math.max(0, visit.week() - WEEKS_EARLIER); week <= last; week++) {
            if (week != visit.week()) {
                weeks.add(week(truck, visit, week));
            }
        }
        return VisitReason.of(truck.pricer(), visit, beside(weeks, visit.week() - 1), beside(weeks, visit.week() + 1))
                .withOtherWeeks(weeks);
    }

    private static VisitReason.@Nullable Move beside(List<VisitReason.OtherWeek> weeks, int week) {
        return weeks.stream()
                .filter(each -> each.week() == week)
                .findFirst()
                .map(each -> new VisitReason.Move(each.costs(), each.limit()))
                .orElse(null);
    }

    private VisitReason.OtherWeek week(TruckChoices truck, PricedVisit visit, int week) {
        PricedVisit moved = truck.pricer().price(week, visit.set(), visit.rideAlongs());
        VisitOption to = draft.builder().option(truck.priced(), moved);
        VisitOption now = draft.builder().option(truck.priced(), visit);
        double costs = to.cost() - now.cost() + draft.booked().overtimeOfMove(truck.options(), to);
        double weights = moved.weights() - visit.weights();
        String own = limit(truck, to);
        boolean inTime = own != null || draft.builder().kits().canBeComplete(truck.priced(), moved);
        return new VisitReason.OtherWeek(
                week,
                costs,
                moved.gains() + moved.rideAlongCost() - visit.gains() - visit.rideAlongCost() - weights,
                weights,
                inTime,
                own != null ? own : inTime ? draft.booked().limitBeside(truck.options(), to) : WeekStops.NO_PARTS);
    }

    /** What keeps the truck out of the week whatever its parts and the other trucks do. */
    private @Nullable String limit(TruckChoices truck, VisitOption to) {
        Integer latest = truck.options().latestWeek();
        return latest != null && to.week() > latest
                ? "safety needs it sooner"
                : stops.of(truck, to.week(), to.truckDays());
    }
}
