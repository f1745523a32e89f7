package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.KitNeed;
import dev.injectorplanner.core.allocation.SharedStock;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the shipments of a visit's kit cost, and whether it can be complete in that week at all. Seen alone a visit has all
 * stock for itself and only pieces that are used for certain count, so that nothing is dearer than it can come to be; the
 * schedule's bound is proven with these prices. Beside others it has what they leave, and what it holds itself.
 */
final class KitPrices {
    private final FleetPricing pricing;
    private final CapacityCalendar calendar;
    private final IsoWeek firstWeek;
    private final SharedStock stock;
    private final @Nullable Map<String, PricedVisit> chosen;

    private KitPrices(
            FleetPricing pricing,
            CapacityCalendar calendar,
            IsoWeek firstWeek,
            SharedStock stock,
            @Nullable Map<String, PricedVisit> chosen) {
        this.pricing = pricing;
        this.calendar = calendar;
        this.firstWeek = firstWeek;
        this.stock = stock;
        this.chosen = chosen;
    }

    static KitPrices alone(FleetPricing pricing, CapacityCalendar calendar, IsoWeek firstWeek) {
        return new KitPrices(pricing, calendar, firstWeek, pricing.kits().share(List.of()), null);
    }

    /**
     * Beside what a schedule's visits hold.
     *
     * @param chosen the schedule's visits by truck
     */
    KitPrices beside(SharedStock shared, Map<String, PricedVisit> chosenVisits) {
        return new KitPrices(pricing, calendar, firstWeek, shared, chosenVisits);
    }

    /** Cost of a visit's shipments, 0 or more; infinite where its kit cannot be complete in its week. */
    double of(PricedTruck truck, PricedVisit visit) {
        if (needsNothing(truck, visit)) {
            return 0;
        }
        String name = truck.truck().truck();
        PricedVisit held = chosen == null ? null : chosen.get(name);
        if (held != null
                && held.week() == visit.week()
                && held.set() == visit.set()
                && pricing.kitOf(truck, held).equals(pricing.kitOf(truck, visit))) {
            return stock.costOf(name, firstWeek.plus(visit.week()));
        }
        LocalDate by = lastStart(truck, visit);
        if (by == null) {
            return Double.POSITIVE_INFINITY;
        }
        return stock.without(name, () -> stock.price(truck.truck().depot(), by, pieces(truck, visit)));
    }

    private boolean needsNothing(PricedTruck truck, PricedVisit visit) {
        return pricing.kitOf(truck, visit).whole().isEmpty();
    }

    private Map<String, Double> pieces(PricedTruck truck, PricedVisit visit) {
        return chosen == null
                ? pricing.kitOf(truck, visit).certain()
                : pricing.kitOf(truck, visit).whole();
    }

    /** The same for a whole kit beside another allocation, in which the truck holds nothing. */
    double ofWhole(SharedStock shared, PricedTruck truck, PricedVisit visit) {
        LocalDate by = lastStart(truck, visit);
        if (needsNothing(truck, visit)) {
            return 0;
        }
        return by == null
                ? Double.POSITIVE_INFINITY
                : shared.price(
                        truck.truck().depot(), by, pricing.kitOf(truck, visit).whole());
    }

    /** The first day from today on which a visit's kit can be complete beside the others; its last start where none is. */
    LocalDate readyOn(PricedTruck truck, PricedVisit visit, LocalDate today) {
        LocalDate last = lastStart(truck, visit);
        if (needsNothing(truck, visit) || last == null) {
            return today;
        }
        return stock.without(truck.truck().truck(), () -> {
            for (LocalDate day = today; day.isBefore(last); day = day.plusDays(1)) {
                if (stock.price(truck.truck().depot(), day, pieces(truck, visit)) < Double.POSITIVE_INFINITY) {
                    return day;
                }
            }
            return last;
        });
    }

    boolean canBeComplete(PricedTruck truck, PricedVisit visit) {
        return of(truck, visit) < Double.POSITIVE_INFINITY;
    }

    /** The last day on which a visit can start in its week; null where the week is too short for it. */
    @Nullable
    LocalDate lastStart(PricedTruck truck, PricedVisit visit) {
        return calendar.lastStart(truck.truck(), visit.week(), visit.truckDays());
    }

    /** A visit's kit, seen alone. */
    KitNeed need(PricedTruck truck, PricedVisit visit, boolean asked) {
        LocalDate by = lastStart(truck, visit);
        IsoWeek week = firstWeek.plus(visit.week());
        return new KitNeed(
                truck.truck().truck(),
                truck.truck().depot(),
                week,
                by == null ? week.sunday() : by,
                asked,
                pricing.kitOf(truck, visit).whole());
    }
}
