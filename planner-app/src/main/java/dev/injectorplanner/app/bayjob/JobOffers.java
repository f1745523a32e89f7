package dev.injectorplanner.app.bayjob;

import dev.injectorplanner.app.bayjob.JobOffer.PartReady;
import dev.injectorplanner.core.access.AccessModel;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.plan.Advisor;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.OpenDay;
import dev.injectorplanner.core.schedule.days.ShiftBook;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Prices the sets of cylinders that are worth doing at a truck whose injectors failed: bill, parts, days off the road. */
public final class JobOffers {
    /** Work that takes longer than this many weeks has no day. */
    private static final int MOST_WEEKS = 52;

    private final FleetIndex index;
    private final Policy policy;
    private final LocalDate today;
    private final Map<String, Double> given;
    private final Map<String, Double> promised;

    /** @param given pieces of a part that lie on the depot's shelf for other trucks, by part */
    public JobOffers(FleetIndex index, Policy policy, LocalDate today, Map<String, Double> given) {
        this(index, policy, today, given, Map.of());
    }

    /**
     * @param given pieces of a part in stock that other trucks have, in a kit or by the plan
     * @param promised pieces of a part on open purchase orders that the plan gives to other trucks
     */
    public JobOffers(
            FleetIndex index, Policy policy, LocalDate today, Map<String, Double> given, Map<String, Double> promised) {
        this.promised = Map.copyOf(promised);
        this.index = index;
        this.policy = policy;
        this.today = today;
        this.given = Map.copyOf(given);
    }

    /** The sets, the proposed one first; where nothing is known of the other cylinders, what failed alone. */
    public List<JobOffer> of(Truck truck, List<Integer> failed) {
        List<JobOffer> offers = new ArrayList<>();
        try {
            Advisor.Advice advice = Advisor.advise(index.fleet(), policy, today, truck.truck(), failed, List.of());
            for (Advisor.Option option : advice.options()) {
                offers.add(offer(
                        truck,
                        option.name(),
                        option.cylinders(),
                        option.cylinders().equals(advice.best()),
                        option.cost(),
                        option.chanceLeft()));
            }
        } catch (InvalidValueException nothingKnown) {
            offers.add(
                    offer(truck, failed.size() == 1 ? "that one" : "only the failed ones", failed, true, null, null));
        }
        return offers;
    }

    private JobOffer offer(
            Truck truck,
            String name,
            List<Integer> cylinders,
            boolean best,
            @Nullable Double more,
            @Nullable Double chanceLeft) {
        Visit visit = visit(index, truck, cylinders, today);
        List<PartReady> parts = parts(visit);
        BigDecimal labour =
                index.depot(truck.depot()).labourPerHour().multiply(BigDecimal.valueOf(visit.labourHours()));
        BigDecimal bill = labour;
        BigDecimal deposits = BigDecimal.ZERO;
        @Nullable LocalDate ready = today;
        for (PartReady each : parts) {
            BigDecimal pieces = BigDecimal.valueOf(each.pieces());
            Part part = index.findPart(each.part()).orElse(null);
            bill = part == null ? bill : bill.add(part.price().multiply(pieces));
            deposits = part == null ? deposits : deposits.add(part.coreDeposit().multiply(pieces));
            ready = later(ready, each.readyOn());
        }
        LocalDate finished = ready == null ? null : finished(truck, visit.labourHours(), ready);
        return new JobOffer(
                name,
                cylinders,
                best,
                visit.labourHours(),
                bill.setScale(2, RoundingMode.HALF_UP),
                deposits.setScale(2, RoundingMode.HALF_UP),
                more,
                chanceLeft,
                visit.drainedLitres(),
                parts,
                ready,
                finished,
                finished == null ? null : (int) ChronoUnit.DAYS.between(today, finished) + 1);
    }

    /** Not known where one of them is not. */
    private static @Nullable LocalDate later(@Nullable LocalDate one, @Nullable LocalDate other) {
        return one == null || other == null ? null : other.isAfter(one) ? other : one;
    }

    /** A job on a set of cylinders as a visit of this week. */
    public static Visit visit(FleetIndex index, Truck truck, List<Integer> cylinders, LocalDate today) {
        EngineFamily family = index.family(truck.family());
        AccessModel access = new AccessModel(family, index.accessOf(family.family()));
        return new Visit(
                truck.truck(),
                truck.depot(),
                family.family(),
                IsoWeek.of(today),
                cylinders,
                access.stepsFor(cylinders).stream().map(AccessStep::step).toList(),
                List.of(),
                false,
                access.labourHours(cylinders),
                access.drainedLitres(cylinders),
                List.of(),
                "");
    }

    private List<PartReady> parts(Visit visit) {
        List<PartReady> parts = new ArrayList<>();
        new PartNeeds(index, today, policy.orders())
                .kitOf(visit)
                .forEach((number, kit) -> parts.add(part(visit.depot(), number, kit.pieces())));
        parts.sort(Comparator.comparing((PartReady part) -> index.findPart(part.part())
                        .map(Part::kind)
                        .filter(kind -> kind == PartKind.INJECTOR)
                        .isEmpty())
                .thenComparing(PartReady::part));
        return parts;
    }

    private PartReady part(String depot, String number, double pieces) {
        double onHand = index.fleet().stock().stream()
                .filter(line -> line.depot().equals(depot) && line.part().equals(number))
                .mapToDouble(StockLine::onHand)
                .sum();
        double free = Math.max(0, onHand - given.getOrDefault(number, 0.0));
        return new PartReady(
                number,
                index.findPart(number).map(Part::description).orElse(""),
                pieces,
                free,
                readyOn(depot, number, pieces - free));
    }

    /** From open purchase lines that others leave, else ordered today and as late as its supplier ever is; else not known. */
    private @Nullable LocalDate readyOn(String depot, String number, double missing) {
        if (missing <= 1e-9) {
            return today;
        }
        double left = missing + promised.getOrDefault(number, 0.0);
        LocalDate ordered = index.findPart(number)
                .map(part -> today.plusDays(part.leadDaysMax()))
                .orElse(null);
        List<PurchaseLine> lines = index.fleet().purchaseLines().stream()
                .filter(line -> line.depot().equals(depot) && line.part().equals(number))
                .filter(line -> line.openQuantity() > 0 && !line.overdue(today))
                .sorted(Comparator.comparing(PurchaseLine::expectedOn))
                .toList();
        for (PurchaseLine line : lines) {
            left -= line.openQuantity();
            if (left <= 1e-9 && (ordered == null || line.expectedOn().isBefore(ordered))) {
                return line.expectedOn();
            }
        }
        return ordered;
    }

    /** Worked through the depot's open days, from the day on which the parts are there. */
    private LocalDate finished(Truck truck, double hours, LocalDate from) {
        Depot depot = index.depot(truck.depot());
        double left = hours;
        double perDay = new ShiftBook(index, policy.bayHoursPerDay()).bayHoursPerDay(depot);
        CapacityCalendar calendar = new CapacityCalendar(index, today, MOST_WEEKS);
        for (int week = 0; week < MOST_WEEKS; week++) {
            for (OpenDay open : calendar.openDays(depot, week)) {
                if (!open.date().isBefore(from)) {
                    left -= perDay;
                    if (left <= 1e-9) {
                        return open.date();
                    }
                }
            }
        }
        return from.plusWeeks(MOST_WEEKS);
    }
}
