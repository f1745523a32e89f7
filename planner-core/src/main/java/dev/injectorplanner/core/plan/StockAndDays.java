package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.days.DayPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Brings stock and days together: a visit is laid no earlier than its kit is there, and one that its days move has its
 * pieces shared out again. After some turns, visits for which the two do not come together are left out, which ends it.
 */
final class StockAndDays {
    private static final int TURNS = 3;

    private final StockRounds rounds;
    private final Map<DayLayout.Input, DayPlan> known;

    /** @param known weeks laid out before */
    StockAndDays(StockRounds rounds, Map<DayLayout.Input, DayPlan> known) {
        this.rounds = rounds;
        this.known = known;
    }

    /** @param alone a schedule priced as if each visit had all stock for itself */
    Draft settle(Draft alone) {
        return withSeconds(settled(alone));
    }

    private Draft settled(Draft alone) {
        StockRounds.Shared shared = rounds.settle(alone);
        for (int turn = 0; ; turn++) {
            Draft draft = rounds.withAllKits(shared);
            DayLayout layout = layout(draft);
            LaidSchedule laid = new LaidSchedule(draft.request(), draft.cases(), draft.schedule(), layout);
            if (laid.schedule().choices().equals(draft.schedule().choices())) {
                return draft.with(laid.schedule())
                        .with(draft.allocation(), draft.kits())
                        .withDays(laid.days());
            }
            StockRounds.Shared again = rounds.share(alone, draft.with(laid.schedule()));
            Draft kept = rounds.withAllKits(again).withDays(laid.days());
            Set<String> apart = new HashSet<>(again.movedTrucks());
            apart.addAll(startsTooSoon(kept));
            if (apart.isEmpty()) {
                return kept;
            }
            shared = turn < TURNS ? again : rounds.share(alone, draft.with(without(laid.schedule(), apart)));
        }
    }

    private DayLayout layout(Draft draft) {
        return new DayLayout(
                draft.learned(), draft.calendar(), draft.holds(), draft.safety(), partsThere(draft), known);
    }

    /** Second visits come into what the others leave of weeks and days; one that no day can hold is left out. */
    private Draft withSeconds(Draft settled) {
        List<SecondVisit> seconds = new ArrayList<>(new SecondVisitPlacer(settled).place());
        Draft draft = rounds.withKitsOf(settled, seconds);
        DayLayout layout = layout(draft);
        while (!seconds.isEmpty()) {
            List<DayLayout.Chosen> all = new ArrayList<>();
            draft.schedule()
                    .choices()
                    .forEach(choice -> all.add(chosen(draft.choicesOf(choice.truck()), choice.option())));
            seconds.forEach(second -> all.add(new DayLayout.Chosen(second.truck(), second.visit())));
            List<DepotDays> days = layout.of(all);
            int asked = seconds.size();
            if (!crowdedOut(days, seconds)) {
                return rounds.withKitsOf(settled, seconds).with(seconds, days);
            }
            if (seconds.size() == asked) {
                break; // a main visit that has no place without them either
            }
        }
        return settled.with(List.of(), settled.days());
    }

    private static DayLayout.Chosen chosen(TruckChoices truck, VisitOption option) {
        return new DayLayout.Chosen(truck, truck.visitOf(option));
    }

    /** Takes out what the days cannot hold: the second visits left out, or all of a week in which a main visit is. */
    private static boolean crowdedOut(List<DepotDays> days, List<SecondVisit> seconds) {
        boolean full = false;
        for (DepotDays depot : days) {
            for (DayPlan.NotLaid left : depot.days().notLaid()) {
                full = true;
                boolean own = seconds.removeIf(
                        second -> second.truck().truck().truck().equals(left.truck())
                                && second.visit().week() == left.week());
                if (!own) {
                    seconds.removeIf(second -> second.truck().truck().depot().equals(depot.depot())
                            && second.visit().week() == left.week());
                }
            }
        }
        return full;
    }

    /** As promised where the visit has its kit, else as early as it could have it beside the others. */
    private static DayLayout.PartsThere partsThere(Draft draft) {
        LocalDate today = draft.learned().today();
        Map<String, LocalDate> ready = draft.allocation().readyDays(today);
        Map<String, PricedVisit> chosen = new HashMap<>();
        draft.schedule()
                .choices()
                .forEach(choice -> chosen.put(
                        choice.truck(), draft.choicesOf(choice.truck()).visitOf(choice.option())));
        return (truck, visit) -> {
            String name = truck.truck().truck();
            if (visit.equals(chosen.get(name))) {
                return ready.getOrDefault(
                        Allocation.visit(name, draft.learned().firstWeek().plus(visit.week())), today);
            }
            return draft.builder().kits().readyOn(truck.priced(), visit, today);
        };
    }

    private static Set<String> startsTooSoon(Draft draft) {
        Map<String, LocalDate> ready =
                draft.allocation().readyDays(draft.learned().today());
        Set<String> soon = new HashSet<>();
        starts(draft).forEach((visit, start) -> {
            if (start.isBefore(ready.getOrDefault(visit, start))) {
                soon.add(visit.substring(0, visit.lastIndexOf(' ')));
            }
        });
        return soon;
    }

    /** First day of each visit that has one, as {@link Allocation#visit} names it; diagnoses need no parts. */
    static Map<String, LocalDate> starts(Draft draft) {
        Map<String, LocalDate> starts = new HashMap<>();
        draft.days()
                .forEach(depot -> depot.days().laid().stream()
                        .filter(laid -> !laid.diagnosis())
                        .forEach(laid -> starts.put(
                                Allocation.visit(
                                        laid.truck(), IsoWeek.of(laid.start().toLocalDate())),
                                laid.start().toLocalDate())));
        return starts;
    }

    private static Schedule without(Schedule schedule, Set<String> trucks) {
        List<Schedule.NotPlaced> notPlaced = new ArrayList<>(schedule.notPlaced());
        List<Schedule.Choice> choices = new ArrayList<>();
        for (Schedule.Choice choice : schedule.choices()) {
            if (trucks.contains(choice.truck())) {
                notPlaced.add(new Schedule.NotPlaced(choice.truck(), KitMoves.NO_KIT));
            } else {
                choices.add(choice);
            }
        }
        return new Schedule(choices, notPlaced, schedule.cost(), null, schedule.brokenWishes(), schedule.stop());
    }
}
