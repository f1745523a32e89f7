package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Needs of the planned visits by depot, week and part, held week by week against stock and open purchase lines.
 *
 * <p>A line arrives for the week whose Monday is on or after its due day; one whose day has passed is expected in
 * {@link #OVERDUE_DAYS} days. What is missing in a week is taken to be ordered for that week, so it is not missing
 * again later. The order-by day counts back the longest lead time, the cautious one.
 */
public final class PartNeeds {
    /** An open purchase line that is past its day is expected so many days from today. */
    public static final int OVERDUE_DAYS = 7;

    private static final double ROUNDING = 1e-9;

    private record Shelf(String depot, String part) {}

    private static final class Need {
        double quantity;
        final TreeSet<String> trucks = new TreeSet<>();
    }

    private final FleetIndex index;
    private final LocalDate today;
    private final Map<Shelf, Double> stock = new HashMap<>();
    private final Map<Shelf, List<PurchaseLine>> open = new HashMap<>();

    public PartNeeds(FleetIndex index, LocalDate today) {
        this.index = index;
        this.today = today;
        for (StockLine line : index.fleet().stock()) {
            stock.put(new Shelf(line.depot(), line.part()), line.onHand());
        }
        for (PurchaseLine line : index.fleet().purchaseLines()) {
            if (line.receivedOn() == null) {
                open.computeIfAbsent(new Shelf(line.depot(), line.part()), shelf -> new ArrayList<>())
                        .add(line);
            }
        }
    }

    /** Needs of visits by depot, week and part. */
    public List<PartNeed> of(List<Visit> visits) {
        Map<Shelf, NavigableMap<IsoWeek, Need>> needs = new HashMap<>();
        for (Visit visit : visits) {
            partsOf(visit).forEach((part, quantity) -> {
                Need need = needs.computeIfAbsent(new Shelf(visit.depot(), part), shelf -> new TreeMap<>())
                        .computeIfAbsent(visit.week(), week -> new Need());
                need.quantity += quantity;
                need.trucks.add(visit.truck());
            });
        }
        List<PartNeed> rows = new ArrayList<>();
        needs.forEach((shelf, weeks) -> rows.addAll(netted(shelf, weeks)));
        rows.sort(Comparator.comparing(PartNeed::depot)
                .thenComparing(PartNeed::week)
                .thenComparing(PartNeed::part));
        return rows;
    }

    /** Expected quantity of each part that one visit takes, by part number. */
    public Map<String, Double> partsOf(Visit visit) {
        Map<String, Double> parts = new TreeMap<>();
        EngineFamily family = index.family(visit.family());
        for (int cylinder : visit.cylinders()) {
            parts.merge(injectorFor(visit.truck(), family, cylinder), 1.0, Double::sum);
        }
        for (JobPart job : index.jobPartsOf(family.family())) {
            double expected = times(job, visit, family) * job.quantity() * job.chance();
            if (expected > 0) {
                parts.merge(job.part(), expected, Double::sum);
            }
        }
        return parts;
    }

    /** The family's part; the one now fitted where the family's is not among the parts and that one is. */
    private String injectorFor(String truck, EngineFamily family, int cylinder) {
        if (index.findPart(family.injectorPart()).isPresent()) {
            return family.injectorPart();
        }
        return index.injectorsOf(truck).stream()
                .filter(injector -> injector.cylinder() == cylinder && injector.fittedAt(today))
                .map(FittedInjector::part)
                .filter(part -> index.findPart(part).isPresent())
                .findFirst()
                .orElse(family.injectorPart());
    }

    private static double times(JobPart job, Visit visit, EngineFamily family) {
        boolean opened = !visit.cylinders().isEmpty();
        return switch (job.per()) {
            case CYLINDER -> visit.cylinders().size();
            case BANK ->
                visit.cylinders().stream().map(family::bankOf).distinct().count();
            case VISIT -> opened ? 1 : 0;
            case STEP -> visit.steps().contains(String.valueOf(job.step())) ? 1 : 0;
        };
    }

    private List<PartNeed> netted(Shelf shelf, NavigableMap<IsoWeek, Need> weeks) {
        List<PartNeed> rows = new ArrayList<>();
        double onHand = stock.getOrDefault(shelf, 0.0);
        LocalDate counted = LocalDate.MIN;
        for (Map.Entry<IsoWeek, Need> entry : weeks.entrySet()) {
            LocalDate monday = entry.getKey().monday();
            onHand += arriving(shelf, counted, monday);
            counted = monday;
            Need need = entry.getValue();
            double gap = need.quantity - onHand;
            double missing = gap > ROUNDING ? gap : 0;
            rows.add(new PartNeed(
                    shelf.depot,
                    entry.getKey(),
                    shelf.part,
                    need.quantity,
                    onHand,
                    arriving(shelf, monday.minusWeeks(1), monday),
                    missing,
                    missing > 0 ? orderBy(shelf.part, monday) : null,
                    List.copyOf(need.trucks)));
            onHand = Math.max(0, onHand - need.quantity);
        }
        return rows;
    }

    /** Pieces due after one day and on or before another. */
    private double arriving(Shelf shelf, LocalDate after, LocalDate until) {
        double sum = 0;
        for (PurchaseLine line : open.getOrDefault(shelf, List.of())) {
            LocalDate due = line.dueOn().isBefore(today) ? today.plusDays(OVERDUE_DAYS) : line.dueOn();
            sum += due.isAfter(after) && !due.isAfter(until) ? line.quantity() : 0;
        }
        return sum;
    }

    /** Of a part that is not in the table no lead time is known: it is ordered today. */
    private LocalDate orderBy(String part, LocalDate monday) {
        return index.findPart(part)
                .map(known -> monday.minusDays(known.leadDaysMax()))
                .orElse(today);
    }
}
