package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import dev.injectorplanner.core.schedule.Schedule.Wish;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Pins and safety dates that could not be met, each with the limit that forbids it, in the words and weeks of people. */
final class BrokenWishes {
    private static final int SHOWN = 4;

    private final Draft draft;
    private final WeekStops stops;

    BrokenWishes(Draft draft) {
        this.draft = draft;
        this.stops = new WeekStops(draft);
    }

    List<BrokenWish> list() {
        return draft.schedule().brokenWishes().stream().map(this::told).toList();
    }

    private BrokenWish told(BrokenWish wish) {
        TruckChoices truck = draft.choicesOf(wish.truck());
        return new BrokenWish(wish.truck(), wish.wish(), wish.week(), words(truck, wish));
    }

    private String words(TruckChoices truck, BrokenWish wish) {
        IsoWeek week = weekOf(wish.week());
        if (wish.wish() == Wish.LATEST_WEEK) {
            return "safety needs it in by " + week + ": " + untilLatest(truck, wish);
        }
        Integer latest = truck.options().latestWeek();
        if (latest != null && wish.week() > latest) {
            return "pinned to " + week + ": safety needs it in by " + weekOf(latest);
        }
        return "pinned to " + week + ": " + in(truck, wish.week()).orElse(wish.reason());
    }

    private String untilLatest(TruckChoices truck, BrokenWish wish) {
        List<String> weeks = new ArrayList<>();
        int last = Math.min(wish.week(), draft.request().weeks() - 1);
        for (int week = 0; week <= last && weeks.size() < SHOWN; week++) {
            int at = week;
            in(truck, week).ifPresent(reason -> weeks.add(last == 0 ? reason : weekOf(at) + ", " + reason));
        }
        return weeks.isEmpty() ? wish.reason() : String.join("; ", weeks);
    }

    private IsoWeek weekOf(int week) {
        return draft.learned().firstWeek().plus(week);
    }

    /** The limit that keeps a truck out of a week; empty where this finds none. */
    private Optional<String> in(TruckChoices truck, int week) {
        if (week >= draft.request().weeks()) {
            return Optional.of("it is after the plan's last week");
        }
        Optional<VisitOption> shortest = truck.options().options().stream()
                .filter(option -> option.week() == week)
                .min(Comparator.comparingDouble(VisitOption::labourHours));
        return shortest.isEmpty()
                ? Optional.ofNullable(notOffered(truck, week))
                : Optional.ofNullable(noRoom(truck, shortest.get()));
    }

    private @Nullable String notOffered(TruckChoices truck, int week) {
        if (truck.pricer().pricedCylinders().isEmpty()
                && truck.priced().visits().stream().noneMatch(visit -> visit.week() == week)) {
            return "too little is known about its injectors to plan a visit in that week";
        }
        double days = truck.priced().visits().stream()
                .filter(visit -> visit.week() == week)
                .mapToDouble(PricedVisit::truckDays)
                .min()
                .orElseGet(() -> truck.pricer().best(week).truckDays());
        String stop = stops.of(truck, week, days);
        return stop != null || kitInTime(truck, week) ? stop : WeekStops.NO_PARTS;
    }

    private boolean kitInTime(TruckChoices truck, int week) {
        KitPrices kits = draft.builder().kits();
        List<PricedVisit> there = truck.priced().visits().stream()
                .filter(visit -> visit.week() == week)
                .toList();
        return there.isEmpty()
                ? kits.canBeComplete(truck.priced(), truck.pricer().best(week))
                : there.stream().anyMatch(visit -> kits.canBeComplete(truck.priced(), visit));
    }

    private @Nullable String noRoom(TruckChoices truck, VisitOption option) {
        TruckOptions asked = truck.options();
        String alone = draft.booked().limitAlone(asked, option);
        if (alone != null) {
            return alone;
        }
        String beside = draft.booked().limitBeside(asked, option);
        if (beside == null) {
            return null;
        }
        List<String> held = draft.booked().trucksOf(asked.depot(), option.week()).stream()
                .filter(name -> draft.choicesOf(name).options().hasWish())
                .limit(SHOWN)
                .toList();
        return held.isEmpty() ? beside : beside + " (" + String.join(", ", held) + " also held)";
    }
}
