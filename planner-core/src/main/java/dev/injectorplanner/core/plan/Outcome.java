package dev.injectorplanner.core.plan;

import static java.util.Comparator.comparing;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.LeftOut;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.visit.VisitWork;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A schedule told in visits, trucks without one, and hours of depots. */
final class Outcome {
    private final FleetIndex index;
    private final IsoWeek firstWeek;
    private final Map<String, VisitWork> works;
    private final ScheduleRequest request;
    private final Schedule schedule;
    private final Map<String, TruckOptions> options = new LinkedHashMap<>();

    Outcome(
            FleetIndex index,
            IsoWeek firstWeek,
            Map<String, VisitWork> works,
            ScheduleRequest request,
            Schedule schedule) {
        this.index = index;
        this.firstWeek = firstWeek;
        this.works = works;
        this.request = request;
        this.schedule = schedule;
        request.trucks().forEach(truck -> options.put(truck.truck(), truck));
    }

    private VisitWork workOf(String truck) {
        VisitWork work = works.get(truck);
        if (work == null) {
            throw new IllegalStateException("truck " + truck + " was scheduled and has no work");
        }
        return work;
    }

    List<Visit> visits() {
        return schedule.choices().stream()
                .map(choice ->
                        workOf(choice.truck()).in(firstWeek.plus(choice.option().week()), whyWeek(choice)))
                .sorted(comparing(Visit::depot).thenComparing(Visit::week).thenComparing(Visit::truck))
                .toList();
    }

    private String whyWeek(Schedule.Choice choice) {
        TruckOptions truck = options.get(choice.truck());
        int earliest = truck == null
                ? choice.option().week()
                : truck.options().stream()
                        .mapToInt(VisitOption::week)
                        .min()
                        .orElse(choice.option().week());
        IsoWeek week = firstWeek.plus(choice.option().week());
        return choice.option().week() == earliest
                ? "Week " + week + " is the earliest it can come in."
                : "Week " + week + " is the first that fits; it could come in from " + firstWeek.plus(earliest) + ".";
    }

    /** By truck: the trucks not placed, and what the visits of the others leave for later. */
    List<Unplanned> unplanned() {
        List<Unplanned> rows = new ArrayList<>();
        for (Schedule.NotPlaced truck : schedule.notPlaced()) {
            VisitWork work = workOf(truck.truck());
            rows.add(new Unplanned(truck.truck(), work.truck().depot(), work.findings(), reason(truck)));
        }
        for (VisitWork work : works.values()) {
            Map<String, List<DueFinding>> byReason = new LinkedHashMap<>();
            for (LeftOut left : work.leftOut()) {
                byReason.computeIfAbsent(left.reason(), reason -> new ArrayList<>())
                        .add(left.finding());
            }
            byReason.forEach((reason, findings) ->
                    rows.add(new Unplanned(work.truck().truck(), work.truck().depot(), findings, reason)));
        }
        rows.sort(comparing(Unplanned::truck));
        return rows;
    }

    private String reason(Schedule.NotPlaced truck) {
        TruckOptions asked = options.get(truck.truck());
        if (asked != null && !asked.options().isEmpty()) {
            return truck.reason();
        }
        List<String> windows = index.awayOf(truck.truck()).stream()
                .filter(window -> !window.to().isBefore(firstWeek.monday()))
                .map(window -> "away " + window.from() + " to " + window.to() + " (" + window.reason() + ")")
                .toList();
        return windows.isEmpty()
                ? "its visit takes more days than its depot works, or than it stays in the fleet, in any week"
                : "cannot be spared long enough in any week it could come in: " + String.join(", ", windows);
    }

    List<WeekLoad> loads() {
        Map<String, double[]> booked = new LinkedHashMap<>();
        for (Schedule.Choice choice : schedule.choices()) {
            VisitOption option = choice.option();
            double[] sums = booked.computeIfAbsent(
                    workOf(choice.truck()).truck().depot() + "\n" + option.week(), cell -> new double[3]);
            sums[0]++;
            sums[1] += option.labourHours();
            sums[2] += option.truckDays();
        }
        return request.depots().stream().map(row -> load(row, booked)).toList();
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
