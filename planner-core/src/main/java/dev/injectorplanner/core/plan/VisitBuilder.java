package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.RideAlongTask;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.days.DayVisit;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tells a truck's chosen way as a visit: its work, what it answers, and why. */
final class VisitBuilder {
    private final FleetRisk risk;
    private final IsoWeek firstWeek;
    private final Moves moves;

    VisitBuilder(FleetRisk risk, IsoWeek firstWeek, Moves moves) {
        this.risk = risk;
        this.moves = moves;
        this.firstWeek = firstWeek;
    }

    Visit visit(TruckChoices truck, PricedVisit chosen) {
        List<String> tasks = chosen.rideAlongs().stream()
                .map(RideAlongTask::name)
                .filter(name -> !name.equals(RideAlongTask.INSPECTION))
                .toList();
        boolean inspection = tasks.size() < chosen.rideAlongs().size();
        VisitReason reason = moves.reason(truck, chosen);
        List<DueItem> dueItems = new ArrayList<>(answered(truck, chosen, tasks, inspection));
        dueItems.addAll(worthwhile(truck, chosen, reason, dueItems));
        dueItems.sort(Comparator.comparing((DueItem item) -> item.kind() != DueKind.SAFETY)
                .thenComparing(item -> item.action() != DueAction.REPLACE)); // what is opened for, first
        return new Visit(
                truck.truck().truck(),
                truck.truck().depot(),
                truck.truck().family(),
                firstWeek.plus(chosen.week()),
                chosen.cylinders(),
                truck.sets().steps(chosen.set()),
                tasks,
                inspection,
                Figures.tidy(chosen.labourHours()),
                Figures.tidy(truck.sets().drainedLitres(chosen.set())),
                dueItems,
                why(dueItems, tasks, chosen) + " " + reason.words());
    }

    /** A visit beside the truck's main one. */
    Visit second(SecondVisit second, PricedVisit main) {
        PricedVisit visit = second.visit();
        List<String> tasks = visit.rideAlongs().stream()
                .map(RideAlongTask::name)
                .filter(name -> !name.equals(RideAlongTask.INSPECTION))
                .toList();
        boolean inspection = tasks.size() < visit.rideAlongs().size();
        Truck truck = second.truck().truck();
        String work = inspection ? "Injector test" : String.join(", ", tasks);
        boolean before = visit.week() < main.week();
        String why = work + (before ? " before" : " after") + " its visit in " + firstWeek.plus(main.week()) + ". "
                + (inspection && before && main.set() != 0 ? "A defect found now need not wait for that visit. " : "")
                + "Saves " + Figures.whole(Math.rint(-visit.cost())) + " compared with the other visit alone.";
        return new Visit(
                truck.truck(),
                truck.depot(),
                truck.family(),
                firstWeek.plus(visit.week()),
                List.of(),
                List.of(),
                tasks,
                inspection,
                Figures.tidy(visit.labourHours()),
                0,
                answered(second.truck(), visit, tasks, inspection),
                why);
    }

    /** The diagnosis visit of a truck. */
    static Visit diagnosis(Truck truck, DayVisit visit, IsoWeek week, List<DueItem> dueItems) {
        return new Visit(
                truck.truck(),
                truck.depot(),
                truck.family(),
                week,
                List.of(),
                List.of(),
                List.of(Visit.DIAGNOSIS),
                false,
                Figures.tidy(visit.labourHours()),
                0,
                dueItems,
                "Safety: bring in now. " + dueItems.get(0).evidence()
                        + ". The diagnosis finds the cause; what it asks for, and"
                        + " injectors that are due anyway, come after it.",
                true);
    }

    /** Due items of the truck that the visit answers, in their order. */
    static List<DueItem> answered(TruckChoices truck, PricedVisit chosen, List<String> tasks, boolean inspection) {
        return truck.dueItems().stream()
                .filter(item -> switch (item.action()) {
                    case REPLACE ->
                        item.cylinder() != null && chosen.cylinders().contains(item.cylinder());
                    case INSPECT -> inspection && item.kind() != DueKind.SAFETY;
                    case SERVICE -> tasks.contains(item.task());
                })
                .toList();
    }

    /** Cylinders that no rule asks for are done since leaving them would cost more. */
    private List<DueItem> worthwhile(
            TruckChoices truck, PricedVisit chosen, VisitReason reason, List<DueItem> answered) {
        List<DueItem> rows = new ArrayList<>();
        for (VisitReason.Cylinder done : reason.done()) {
            boolean asked =
                    answered.stream().anyMatch(item -> item.cylinder() != null && item.cylinder() == done.cylinder());
            if (!asked) {
                rows.add(new DueItem(
                        truck.truck().truck(),
                        truck.truck().depot(),
                        done.cylinder(),
                        DueKind.COST,
                        null,
                        DueAction.REPLACE,
                        evidence(truck.truck().truck(), done.cylinder()),
                        "leaving it out of this visit costs " + Figures.whole(done.otherWayCosts()) + " more",
                        "cost of deferring",
                        firstWeek.plus(chosen.week()).sunday(),
                        null,
                        risk.find(truck.truck().truck(), done.cylinder())
                                .map(InjectorRisk::chance12)
                                .orElse(null)));
            }
        }
        return rows;
    }

    private String evidence(String truck, int cylinder) {
        Optional<InjectorRisk> known = risk.find(truck, cylinder);
        return known.map(injector ->
                        Figures.whole(injector.age()) + " " + injector.clock().unit() + " since fitting, "
                                + Figures.whole(100 * injector.chance12()) + " % chance of failing within 12 weeks")
                .orElse("age unknown");
    }

    private static String why(List<DueItem> dueItems, List<String> tasks, PricedVisit chosen) {
        if (dueItems.isEmpty()) {
            return "Pinned to this week.";
        }
        DueItem first = dueItems.get(0);
        String subject = first.cylinder() != null
                ? "Cylinder " + first.cylinder()
                : first.task() != null ? first.task() : "The truck";
        int others = dueItems.size() - 1;
        String joins = others == 0
                ? ""
                : " " + Figures.count(others, "more due item is covered.", "more due items are covered.");
        String rides = tasks.isEmpty() || chosen.cylinders().isEmpty()
                ? ""
                : tasks.stream().collect(Collectors.joining(", ", " Also done: ", "."));
        return subject + ": " + first.evidence() + "; " + first.limit() + " (" + first.limitSource() + "), due "
                + first.by() + "." + joins + rides;
    }
}
