package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.Booked;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds room for second visits beside the main ones: what saves most first, each in the cheapest week that has hours, a bay and
 * the duty group's trucks left. The schedule was made as if all of them had room, so that its bound holds for both kinds of
 * visits; here its cost becomes what it really is.
 */
final class SecondVisitPlacer {
    private final Draft draft;

    SecondVisitPlacer(Draft draft) {
        this.draft = draft;
    }

    private record Wanted(TruckChoices truck, List<PricedVisit> ways) {
        double saves() {
            return ways.get(0).cost();
        }
    }

    /** Second visits that have room, by what they save. */
    List<SecondVisit> place() {
        Booked booked = new Booked(draft.request(), draft.schedule());
        List<SecondVisit> placed = new ArrayList<>();
        for (Wanted wanted : wanted()) {
            for (PricedVisit way : wanted.ways()) {
                SecondVisit second = new SecondVisit(wanted.truck(), way);
                TruckOptions asked = second.asked();
                if (booked.limitBeside(asked, second.option()) == null
                        && way.cost() + booked.overtimeOfMove(asked, second.option()) < 0) {
                    booked.add(asked, second.option());
                    placed.add(second);
                    break;
                }
            }
        }
        return placed;
    }

    private List<Wanted> wanted() {
        List<Wanted> wanted = new ArrayList<>();
        for (Schedule.Choice choice : draft.schedule().choices()) {
            TruckChoices truck = draft.choicesOf(choice.truck());
            List<PricedVisit> ways = draft.builder().seconds().of(truck.priced(), truck.visitOf(choice.option()));
            if (!ways.isEmpty()) {
                wanted.add(new Wanted(truck, ways));
            }
        }
        wanted.sort(Comparator.comparingDouble(Wanted::saves)
                .thenComparing(each -> each.truck().truck().truck()));
        return wanted;
    }

    /** A draft's request with second visits as trucks of their own. */
    static ScheduleRequest request(Draft draft, List<SecondVisit> seconds) {
        List<TruckOptions> trucks = new ArrayList<>(draft.request().trucks());
        seconds.forEach(second -> trucks.add(second.asked()));
        return new ScheduleRequest(
                draft.request().weeks(),
                trucks,
                draft.request().depots(),
                draft.request().groups());
    }

    /** Its schedule in the same form. */
    static Schedule schedule(Draft draft, List<SecondVisit> seconds) {
        Schedule main = draft.schedule();
        List<Schedule.Choice> choices = new ArrayList<>(main.choices());
        seconds.forEach(second -> choices.add(new Schedule.Choice(second.key(), second.option())));
        return new Schedule(choices, main.notPlaced(), main.cost(), main.bound(), main.brokenWishes(), main.stop());
    }

    /** The main schedule at what it costs with the second visits that have room, and not with all of them. */
    static Schedule trueCost(Draft draft, List<SecondVisit> placed) {
        Schedule main = draft.schedule();
        double promised = 0;
        for (Schedule.Choice choice : main.choices()) {
            TruckChoices truck = draft.choicesOf(choice.truck());
            promised += draft.builder().seconds().bestCost(truck.priced(), truck.visitOf(choice.option()));
        }
        Booked booked = new Booked(draft.request(), main);
        double without = booked.cost();
        double kept = 0;
        for (SecondVisit second : placed) {
            booked.add(second.asked(), second.option());
            kept += second.visit().cost();
        }
        double overtime = booked.cost() - without - kept;
        return new Schedule(
                main.choices(),
                main.notPlaced(),
                main.cost() - promised + kept + overtime,
                main.bound(),
                main.brokenWishes(),
                main.stop());
    }
}
