package dev.injectorplanner.core.plan;

import static java.util.Comparator.comparing;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.schedule.days.DayVisit;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A schedule told in visits, trucks without one, and hours of depots. */
final class Outcome {
    private final Draft draft;
    private final IsoWeek firstWeek;
    private final Map<String, TruckChoices> cases;
    private final ScheduleRequest request;
    private final Schedule schedule;
    private final Moves moves;
    private final VisitBuilder visitBuilder;
    private final WeekStops stops;
    private final Map<String, TruckOptions> options = new LinkedHashMap<>();
    private final List<Visit> visits;

    Outcome(Draft draft) {
        this.draft = draft;
        this.firstWeek = draft.learned().firstWeek();
        this.cases = draft.cases();
        this.request = draft.request();
        this.schedule = draft.schedule();
        this.moves = new Moves(draft);
        this.visitBuilder = new VisitBuilder(draft.learned().risk(), firstWeek, moves);
        this.stops = new WeekStops(draft);
        request.trucks().forEach(truck -> options.put(truck.truck(), truck));
        this.visits = told();
    }

    private TruckChoices choicesOf(String truck) {
        return draft.choicesOf(truck);
    }

    List<Visit> visits() {
        return visits;
    }

    private List<Visit> told() {
        Stream<Visit> ordinary = schedule.choices().stream().map(choice -> {
            TruckChoices truck = choicesOf(choice.truck());
            return visitBuilder.visit(truck, truck.visitOf(choice.option()));
        });
        Stream<Visit> diagnoses = draft.safety().all().stream()
                .map(visit -> VisitBuilder.diagnosis(
                        choicesOf(visit.truck()).truck(),
                        visit,
                        firstWeek.plus(visit.week()),
                        draft.safety().openOf(visit.truck())));
        Stream<Visit> seconds = draft.seconds().stream().map(this::told);
        return Stream.concat(Stream.concat(ordinary, seconds), diagnoses)
                .sorted(comparing(Visit::depot)
                        .thenComparing(Visit::week)
                        .thenComparing(Visit::truck)
                        .thenComparing(visit -> !visit.diagnosis()))
                .toList();
    }

    private Visit told(SecondVisit second) {
        String truck = second.truck().truck().truck();
        PricedVisit main = schedule.choices().stream()
                .filter(choice -> choice.truck().equals(truck))
                .map(choice -> second.truck().visitOf(choice.option()))
                .findFirst()
                .orElseThrow();
        return visitBuilder.second(second, main);
    }

    /** By truck: what is due of trucks not placed, and what the visits of the others leave for later. */
    List<Unplanned> unplanned() {
        Map<String, List<Visit>> byTruck = new LinkedHashMap<>();
        visits.forEach(visit -> byTruck.computeIfAbsent(visit.truck(), none -> new ArrayList<>())
                .add(visit));
        Map<String, String> reasons = new LinkedHashMap<>();
        schedule.notPlaced().forEach(truck -> reasons.put(truck.truck(), reason(truck)));
        List<Unplanned> rows = new ArrayList<>();
        for (TruckChoices truck : cases.values()) {
            String name = truck.truck().truck();
            List<Visit> its = byTruck.getOrDefault(name, List.of());
            List<DueItem> open = truck.dueItems().stream()
                    .filter(item ->
                            its.stream().noneMatch(visit -> visit.dueItems().contains(item)))
                    .toList();
            Optional<Visit> visit =
                    its.stream().filter(each -> !each.diagnosis()).findFirst();
            if (!open.isEmpty()) {
                String reason = visit.isPresent()
                        ? "its visit in " + visit.get().week()
                                + " leaves it out: deferring costs less, and a later plan will place it"
                        : reasons.getOrDefault(name, nothingPays(truck));
                rows.add(new Unplanned(name, truck.truck().depot(), open, reason));
            }
        }
        rows.sort(comparing(Unplanned::truck));
        return rows;
    }

    /** An answer for every truck in service, by truck. */
    List<TruckReason> reasons() {
        Map<String, PricedVisit> chosen = new LinkedHashMap<>();
        for (Schedule.Choice choice : schedule.choices()) {
            chosen.put(choice.truck(), choicesOf(choice.truck()).visitOf(choice.option()));
        }
        Map<String, String> notPlaced = new LinkedHashMap<>();
        schedule.notPlaced().forEach(truck -> notPlaced.put(truck.truck(), reason(truck)));
        return cases.values().stream()
                .map(truck -> reasonOf(truck, chosen.get(truck.truck().truck()), notPlaced))
                .sorted(comparing(TruckReason::truck))
                .toList();
    }

    private TruckReason reasonOf(TruckChoices truck, @Nullable PricedVisit visit, Map<String, String> notPlaced) {
        String name = truck.truck().truck();
        if (visit != null) {
            VisitReason reason = moves.reason(truck, visit);
            return new TruckReason(name, firstWeek.plus(visit.week()), reason, reason.words());
        }
        String words = notPlaced.get(name);
        return new TruckReason(name, null, null, words != null ? words : nothingPays(truck));
    }

    private String nothingPays(TruckChoices truck) {
        if (!truck.pricer().worthwhile(1).isEmpty()) {
            return reason(new Schedule.NotPlaced(truck.truck().truck(), ""));
        }
        return truck.pricer()
                .leastOf()
                .map(visit -> "deferring costs less than any visit: the cheapest, cylinders "
                        + visit.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" ")) + " in "
                        + firstWeek.plus(visit.week()) + ", would cost " + Figures.whole(visit.cost()) + " more")
                .orElse("too little is known about its injectors to price a visit");
    }

    private String reason(Schedule.NotPlaced truck) {
        TruckOptions asked = options.get(truck.truck());
        if (asked != null && !asked.options().isEmpty()) {
            return truck.reason();
        }
        TruckChoices own = choicesOf(truck.truck());
        if (refusedAlways(own)) {
            return "it is blocked in every week it could come in";
        }
        String waits = stops.waits(own);
        if (waits != null) {
            return waits;
        }
        if (lacksParts(own)) {
            return WeekStops.NO_PARTS + " in any week of the plan";
        }
        String away = stops.away(own.truck(), firstWeek.monday(), LocalDate.MAX);
        return away.isEmpty()
                ? "its visit takes more days than its depot works in any week, or than it stays in the fleet"
                : "the truck cannot be spared long enough in any week: " + away;
    }

    /** Whether it could come for its days and every time only its parts are missing. */
    private boolean lacksParts(TruckChoices truck) {
        KitPrices kits = draft.builder().kits();
        List<PricedVisit> spared = truck.priced().visits().stream()
                .filter(visit -> kits.lastStart(truck.priced(), visit) != null)
                .toList();
        return !spared.isEmpty() && spared.stream().noneMatch(visit -> kits.canBeComplete(truck.priced(), visit));
    }

    private boolean refusedAlways(TruckChoices truck) {
        List<PricedVisit> visits = truck.priced().visits();
        return !visits.isEmpty()
                && visits.stream()
                        .noneMatch(visit -> draft.holds().allows(truck.truck().truck(), firstWeek.plus(visit.week())));
    }

    List<WeekLoad> loads() {
        Map<String, double[]> booked = new LinkedHashMap<>();
        for (Schedule.Choice choice : schedule.choices()) {
            VisitOption option = choice.option();
            double[] sums = booked.computeIfAbsent(
                    choicesOf(choice.truck()).truck().depot() + "\n" + option.week(), cell -> new double[3]);
            sums[0]++;
            sums[1] += option.labourHours();
            sums[2] += option.truckDays();
        }
        for (SecondVisit second : draft.seconds()) {
            PricedVisit visit = second.visit();
            double[] sums =
                    booked.computeIfAbsent(second.truck().truck().depot() + "\n" + visit.week(), cell -> new double[3]);
            sums[0]++;
            sums[1] += visit.labourHours();
            sums[2] += visit.truckDays();
        }
        for (DayVisit visit : draft.safety().all()) {
            Truck truck = choicesOf(visit.truck()).truck();
            double[] sums = booked.computeIfAbsent(truck.depot() + "\n" + visit.week(), cell -> new double[3]);
            sums[0]++;
            sums[1] += visit.labourHours();
            sums[2] += visit.labourHours()
                    / draft.learned()
                            .shifts()
                            .bayHoursPerDay(draft.learned().index().depot(truck.depot()));
        }
        return draft.calendar().depotCapacity().stream()
                .map(row -> load(row, booked))
                .toList();
    }

    private WeekLoad load(WeekCapacity row, Map<String, double[]> booked) {
        double[] sums = booked.getOrDefault(row.depot() + "\n" + row.week(), new double[3]);
        return new WeekLoad(
                row.depot(),
                firstWeek.plus(row.week()),
                (int) sums[0],
                Figures.tidy(sums[1]),
                Figures.tidy(row.labourHours()),
                Figures.tidy(Math.max(0, sums[1] - row.labourHours())),
                Figures.tidy(sums[2]),
                row.bayDays());
    }
}
