package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.OpenDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Orders are placed on days on which their depot works: one of a closed day goes to the open day before. What must be
 * ordered today stays today.
 */
final class OrderDays {
    private final Learned learned;
    private final CapacityCalendar calendar;

    OrderDays(Learned learned, CapacityCalendar calendar) {
        this.learned = learned;
        this.calendar = calendar;
    }

    PartsPlan of(PartsPlan parts) {
        List<OrderLine> orders =
                parts.orders().stream().map(this::of).sorted(OrderLine.BY_DAY).toList();
        return new PartsPlan(
                parts.rules(),
                parts.needs(),
                parts.shortList(),
                parts.forecastKnown(),
                parts.unplannedNeeds(),
                orders,
                parts.stockWeeks(),
                parts.allocation(),
                parts.overdue(),
                parts.shelves());
    }

    private OrderLine of(OrderLine line) {
        TreeSet<LocalDate> open = open(line.depot());
        LocalDate before = open.floor(line.placeOn());
        LocalDate day = line.now() || before == null ? line.placeOn() : before;
        LocalDate last = open.floor(line.orderBy());
        return new OrderLine(
                line.supplier(),
                line.part(),
                line.description(),
                line.depot(),
                day,
                last == null ? line.orderBy() : last,
                line.thereBy(),
                line.now(),
                line.forVisits(),
                line.forReserve(),
                line.leftOver(),
                line.quantity(),
                line.pack(),
                line.minimumOrder(),
                line.price(),
                line.coreDeposit(),
                line.firstWeek(),
                line.trucks(),
                line.express());
    }

    private TreeSet<LocalDate> open(String name) {
        TreeSet<LocalDate> days = new TreeSet<>();
        List<Depot> depots = learned.index().fleet().depots();
        for (Depot depot : depots) {
            for (int week = 0;
                    depot.depot().equals(name) && week < learned.policy().weeks();
                    week++) {
                Set<LocalDate> open = new TreeSet<>();
                calendar.openDays(depot, week).stream().map(OpenDay::date).forEach(open::add);
                days.addAll(open);
            }
        }
        return days;
    }
}
