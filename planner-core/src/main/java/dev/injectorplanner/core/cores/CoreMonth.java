package dev.injectorplanner.core.cores;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A month's deposits of cores: {@code opening + charged - credited - refused - lost = closing}, and what is open at the end
 * of a month is open at the beginning of the next.
 *
 * @param month the month
 * @param opening deposits at stake when it began
 * @param charged deposits of reman units fitted in it
 * @param credited what suppliers credited in it
 * @param refused what they credited less than the deposit, or refused
 * @param lost deposits whose last day passed without a shipment
 * @param closing deposits at stake when it ended
 */
public record CoreMonth(
        YearMonth month,
        BigDecimal opening,
        BigDecimal charged,
        BigDecimal credited,
        BigDecimal refused,
        BigDecimal lost,
        BigDecimal closing) {

    /** One deposit: the day it was charged, and how and when it ended, if it did. */
    private record Deposit(
            BigDecimal amount, LocalDate from, @Nullable LocalDate until, BigDecimal credit, boolean lost) {
        boolean startsIn(YearMonth month) {
            return YearMonth.from(from).equals(month);
        }

        boolean endsIn(YearMonth month) {
            return until != null && YearMonth.from(until).equals(month);
        }

        boolean openBefore(YearMonth month) {
            return YearMonth.from(from).isBefore(month)
                    && (until == null || !YearMonth.from(until).isBefore(month));
        }
    }

    /**
     * The last months, the newest last. They begin with the month of the first shipment on record: of what was sent earlier
     * nothing is known, so deposits whose last day lies before it are left out.
     *
     * @param months the most months, above 0
     */
    public static List<CoreMonth> of(FleetIndex index, LocalDate today, int months) {
        return of(index, today, months, began(index, today));
    }

    /** The month of the first shipment on record; this month where there is none. */
    public static YearMonth began(FleetIndex index, LocalDate today) {
        YearMonth now = YearMonth.from(today);
        return index.fleet().returns().stream()
                .filter(row -> row.what() == UnitReturn.What.CORE)
                .map(row -> YearMonth.from(row.sentOn()))
                .min(YearMonth::compareTo)
                .filter(month -> !month.isAfter(now))
                .orElse(now);
    }

    /**
     * The same from a month that is given, so that several fleets can be added up.
     *
     * @param began the month with which records begin
     */
    public static List<CoreMonth> of(FleetIndex index, LocalDate today, int months, YearMonth began) {
        YearMonth now = YearMonth.from(today);
        YearMonth first = now.minusMonths(months - 1L);
        if (first.isBefore(began)) {
            first = began;
        }
        List<Deposit> deposits = deposits(index, today, began.atDay(1));
        List<CoreMonth> rows = new ArrayList<>();
        for (YearMonth month = first; !month.isAfter(now); month = month.plusMonths(1)) {
            rows.add(of(month, deposits));
        }
        return rows;
    }

    private static CoreMonth of(YearMonth month, List<Deposit> deposits) {
        BigDecimal opening = BigDecimal.ZERO;
        BigDecimal charged = BigDecimal.ZERO;
        BigDecimal credited = BigDecimal.ZERO;
        BigDecimal refused = BigDecimal.ZERO;
        BigDecimal lost = BigDecimal.ZERO;
        for (Deposit each : deposits) {
            opening = each.openBefore(month) ? opening.add(each.amount()) : opening;
            charged = each.startsIn(month) ? charged.add(each.amount()) : charged;
            if (each.endsIn(month) && each.lost()) {
                lost = lost.add(each.amount());
            } else if (each.endsIn(month)) {
                credited = credited.add(each.credit());
                refused = refused.add(each.amount().subtract(each.credit()));
            }
        }
        BigDecimal closing =
                opening.add(charged).subtract(credited).subtract(refused).subtract(lost);
        return new CoreMonth(month, opening, charged, credited, refused, lost, closing);
    }

    private static List<Deposit> deposits(FleetIndex index, LocalDate today, LocalDate began) {
        List<Deposit> deposits = new ArrayList<>();
        for (Truck truck : index.fleet().trucks()) {
            for (FittedInjector injector : index.injectorsOf(truck.truck())) {
                boolean bought = injector.origin() == Origin.REMAN
                        && injector.fittedOn().isAfter(truck.inServiceOn())
                        && !injector.fittedOn().isAfter(today);
                index.findPart(injector.part())
                        .filter(part -> bought && part.coreDeposit().signum() > 0)
                        .flatMap(part -> deposit(index, injector, part, today, began))
                        .ifPresent(deposits::add);
            }
        }
        return deposits;
    }

    private static Optional<Deposit> deposit(
            FleetIndex index, FittedInjector injector, Part part, LocalDate today, LocalDate began) {
        UnitReturn sent = index.findReturn(UnitReturn.What.CORE, injector).orElse(null);
        LocalDate lastDay = injector.fittedOn().plusDays(part.coreDays());
        if (sent == null) {
            if (lastDay.isBefore(began)) {
                return Optional.empty();
            }
            boolean lost = lastDay.isBefore(today);
            return Optional.of(new Deposit(
                    part.coreDeposit(), injector.fittedOn(), lost ? lastDay.plusDays(1) : null, BigDecimal.ZERO, lost));
        }
        BigDecimal credit = sent.credit();
        return Optional.of(new Deposit(
                sent.amount(),
                injector.fittedOn(),
                sent.settledOn(),
                credit == null ? BigDecimal.ZERO : credit,
                false));
    }
}
