package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What an order placed today may not bring in time, visit by visit: of a week's pieces the most pressing visits take
 * first. The advice weighs the whole visit: waiting costs the moving, times the chance that the pieces are needed, times
 * the chance that the supplier is late (any day from the usual to the longest lead time being as likely as the others);
 * expediting costs a shipment for each supplier. An expedited part is in time until Wednesday of the visit's week.
 */
final class ShortList {
    private static final int EXPEDITED_UNTIL_DAY = 2;
    private static final double LIKELY = 0.5;

    private final FleetIndex index;
    private final LocalDate today;
    private final OrderRules rules;
    private final PostponementCost postponementCost;
    private final Supply supply;
    private final Map<Visit, List<Missing>> byVisit = new LinkedHashMap<>();

    private record Missing(
            String part,
            double pieces,
            double chance,
            double chanceLate,
            @Nullable Shipment shipment) {}

    ShortList(FleetIndex index, LocalDate today, OrderRules rules, PostponementCost postponementCost, Supply supply) {
        this.index = index;
        this.today = today;
        this.rules = rules;
        this.postponementCost = postponementCost;
        this.supply = supply;
    }

    /** Takes a week of a shelf, with its visits in the order in which they are served. */
    void add(PartNeed need, List<PartNeeds.Step> steps) {
        LocalDate ready = supply.readyDay(need.week());
        if (need.missing() <= 0 || !supply.latestArrival(need.part()).isAfter(ready)) {
            return;
        }
        double before = 0;
        for (PartNeeds.Step step : steps) {
            double pieces = Figures.tidy(step.uncovered() - before);
            before = Math.max(before, step.uncovered());
            if (pieces > 0) {
                byVisit.computeIfAbsent(step.visit(), visit -> new ArrayList<>())
                        .add(new Missing(need.part(), pieces, step.chance(), chanceLate(need.part(), ready), null));
            }
        }
    }

    /** Takes a visit's shipment: what it brings would not be there in time otherwise. */
    void add(Visit visit, Shipment shipment) {
        LocalDate ready = supply.readyDay(visit.week());
        shipment.pieces()
                .forEach((part, pieces) -> byVisit.computeIfAbsent(visit, none -> new ArrayList<>())
                        .add(new Missing(part, Figures.tidy(pieces), 1, chanceLate(part, ready), shipment)));
    }

    private double chanceLate(String part, LocalDate ready) {
        long days = ChronoUnit.DAYS.between(today, ready);
        return index.findPart(part)
                .map(known -> {
                    double spread = known.leadDaysMax() - known.leadDays() + 1.0;
                    return Math.max(0, Math.min(1, (known.leadDaysMax() - days) / spread));
                })
                .orElse(0.0);
    }

    List<ShortLine> lines() {
        List<ShortLine> lines = new ArrayList<>();
        byVisit.forEach((visit, missing) -> lines.addAll(lines(visit, missing)));
        lines.sort(ShortLine.BY_WEEK);
        return lines;
    }

    private List<ShortLine> lines(Visit visit, List<Missing> missing) {
        LocalDate latest = missing.stream()
                .map(each -> supply.latestArrival(each.part))
                .max(Comparator.naturalOrder())
                .orElse(today);
        IsoWeek moveTo = weekBy(latest);
        double moving = Math.max(0, postponementCost.of(visit, moveTo));
        double risk = missing.stream()
                .mapToDouble(each -> each.chance * each.chanceLate)
                .max()
                .orElse(0);
        double expediting = expediting(missing);
        ShortAdvice advice = advice(visit, missing, risk * moving, expediting);
        return missing.stream()
                .map(each -> new ShortLine(
                        visit.depot(),
                        each.part,
                        visit.week(),
                        visit.truck(),
                        each.pieces,
                        each.chance,
                        today.plusDays(
                                index.findPart(each.part).map(Part::leadDays).orElse(0)),
                        supply.latestArrival(each.part),
                        each.shipment == null ? advice : adviceOf(each.shipment),
                        moveTo,
                        money(moving),
                        money(risk * moving),
                        money(expediting),
                        each.shipment == null || each.shipment.source() != PieceSource.TRANSFER
                                ? null
                                : each.shipment.from()))
                .toList();
    }

    /** What the shipments found for the pieces cost; where none was, an express shipment a supplier. */
    private double expediting(List<Missing> missing) {
        long shipments = missing.stream()
                .map(each -> index.findPart(each.part).map(Part::supplier).orElse(""))
                .distinct()
                .count();
        double shipped = missing.stream()
                .map(Missing::shipment)
                .filter(Objects::nonNull)
                .distinct()
                .mapToDouble(Shipment::cost)
                .sum();
        return shipped > 0 ? shipped : rules.expeditePrice().doubleValue() * shipments;
    }

    private static ShortAdvice adviceOf(Shipment shipment) {
        return shipment.source() == PieceSource.TRANSFER ? ShortAdvice.TRANSFER : ShortAdvice.EXPEDITE;
    }

    private ShortAdvice advice(Visit visit, List<Missing> missing, double waiting, double expediting) {
        LocalDate expedited = today.plusDays(rules.expediteDays());
        LocalDate latest = supply.readyDay(visit.week()).plusDays(EXPEDITED_UNTIL_DAY);
        LocalDate end = latest.isAfter(visit.week().sunday()) ? visit.week().sunday() : latest;
        if (!expedited.isAfter(end) && expediting < waiting) {
            return ShortAdvice.EXPEDITE;
        }
        boolean late = missing.stream().anyMatch(each -> each.chanceLate >= LIKELY && each.chance >= LIKELY);
        if (late) {
            return ShortAdvice.MOVE;
        }
        boolean perhapsLate = missing.stream().anyMatch(each -> each.chanceLate >= LIKELY);
        return perhapsLate ? ShortAdvice.GO_AHEAD : ShortAdvice.ORDER_TODAY;
    }

    /** The first week whose Monday is on or after a day. */
    private static IsoWeek weekBy(LocalDate day) {
        IsoWeek week = IsoWeek.of(day);
        return week.monday().isBefore(day) ? week.plus(1) : week;
    }

    private static BigDecimal money(double amount) {
        return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP);
    }
}
