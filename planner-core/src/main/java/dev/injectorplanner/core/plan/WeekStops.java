package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What keeps a truck out of a week whatever the other trucks do, in words: the manager, its work, or its depot's days. */
final class WeekStops {
    /** Said where no source brings a visit's parts in time. */
    static final String NO_PARTS = "its parts cannot be there in time";

    private final Draft draft;

    WeekStops(Draft draft) {
        this.draft = draft;
    }

    /** Null where the truck itself could come for this many days. */
    @Nullable
    String of(TruckChoices truck, int week, double truckDays) {
        IsoWeek asked = draft.learned().firstWeek().plus(week);
        if (!draft.holds().allows(truck.truck().truck(), asked)) {
            return "it is blocked";
        }
        String waits = waits(truck);
        if (waits != null) {
            return waits;
        }
        int free = draft.calendar().daysFree(truck.truck(), week);
        return truckDays <= free ? null : days(truck.truck(), asked, truckDays, free);
    }

    /** Null where no pin keeps the truck out of all weeks. */
    @Nullable
    String waits(TruckChoices truck) {
        String name = truck.truck().truck();
        IsoWeek lastWeek = draft.learned().firstWeek().plus(draft.request().weeks() - 1);
        return truck.options().latestWeek() == null && draft.holds().isPinnedAfter(name, lastWeek)
                ? "it is pinned to " + draft.holds().pins().get(name) + ", after this plan's last week"
                : null;
    }

    private String days(Truck truck, IsoWeek week, double truckDays, int free) {
        LocalDate out = truck.outOfServiceOn();
        if (out != null && !out.isAfter(week.sunday())) {
            return "it leaves the fleet on " + out;
        }
        String away = away(truck, week.monday(), week.sunday());
        if (!away.isEmpty()) {
            return away;
        }
        return "it takes " + Figures.tenths(truckDays) + " days, the depot works " + Figures.count(free, "day", "days")
                + " then";
    }

    /** Windows in which a truck cannot be spared, that touch some days; empty where there are none. */
    String away(Truck truck, LocalDate from, LocalDate to) {
        List<String> windows = draft.learned().index().awayOf(truck.truck()).stream()
                .filter(window -> window.touches(from, to))
                .map(window -> "away " + window.from() + " to " + window.to() + " (" + window.reason() + ")")
                .toList();
        return windows.stream().collect(Collectors.joining(", "));
    }
}
