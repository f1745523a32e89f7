package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.KitNeed;
import dev.injectorplanner.core.allocation.SharedStock;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.Booked;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Moves visits whose kit cannot be complete: one after the other, each to its cheapest other way with room and with parts
 * beside what is held, or out of the plan where none is worth it.
 */
final class KitMoves {
    /** Why a truck without a kit has no visit. */
    static final String NO_KIT =
            "the parts in stock and on order go to other visits, and no week with room has its kit complete in time";

    private static final double ROUNDING = 1e-6;

    private final Draft at;
    private final Set<String> moved = new LinkedHashSet<>();
    private final Map<String, Schedule.BrokenWish> broken = new TreeMap<>();

    private record Way(PricedVisit visit, VisitOption option, boolean meetsWish, double cost) {}

    KitMoves(Draft at) {
        this.at = at;
    }

    /**
     * The visits that stay and those that moved, by truck.
     *
     * @param place whether visits may move; else they are left out
     */
    Map<String, PricedVisit> settle(SharedStock stock, Map<String, PricedVisit> chosen, boolean place) {
        Map<String, PricedVisit> now = new LinkedHashMap<>(chosen);
        for (KitNeed need : stock.unmet()) {
            now.remove(need.truck());
            moved.add(need.truck());
        }
        for (KitNeed need : stock.unmet()) {
            TruckChoices truck = at.choicesOf(need.truck());
            PricedVisit visit = place ? place(stock, truck, now) : null;
            if (visit != null) {
                now.put(need.truck(), visit);
            }
            if (truck.options().hasWish()) {
                wish(truck, visit);
            }
        }
        return now;
    }

    Set<String> movedTrucks() {
        return moved;
    }

    /** Pins and safety dates that were kept before and are not now. */
    List<Schedule.BrokenWish> brokenWishes() {
        return List.copyOf(broken.values());
    }

    private @Nullable PricedVisit place(SharedStock stock, TruckChoices truck, Map<String, PricedVisit> now) {
        Booked booked = new Booked(at.request(), scheduleOf(now));
        for (Way way : ways(stock, truck, booked)) {
            KitNeed need = at.builder()
                    .kits()
                    .need(truck.priced(), way.visit(), truck.options().hasWish());
            if (need.pieces().isEmpty() || stock.admit(need)) {
                return way.visit();
            }
        }
        return null;
    }

    private Schedule scheduleOf(Map<String, PricedVisit> now) {
        List<Schedule.Choice> choices = new ArrayList<>();
        now.forEach((name, visit) -> {
            TruckChoices truck = at.choicesOf(name);
            choices.add(new Schedule.Choice(
                    name, truck.options().options().get(truck.visits().indexOf(visit))));
        });
        return new Schedule(choices, List.of(), 0, null);
    }

    private List<Way> ways(SharedStock stock, TruckChoices truck, Booked booked) {
        List<Way> ways = new ArrayList<>();
        for (int i = 0; i < truck.visits().size(); i++) {
            PricedVisit visit = truck.visits().get(i);
            VisitOption option = truck.options().options().get(i);
            double shipments = at.builder().kits().ofWhole(stock, truck.priced(), visit);
            double cost = option.cost()
                    - at.builder().kits().of(truck.priced(), visit)
                    + shipments
                    + booked.overtimeOfMove(truck.options(), option);
            boolean wanted = cost < -ROUNDING || truck.options().hasWish();
            if (wanted && shipments < Double.POSITIVE_INFINITY && booked.limitBeside(truck.options(), option) == null) {
                ways.add(new Way(visit, option, truck.options().meetsWish(option), cost));
            }
        }
        ways.sort(Comparator.comparing((Way way) -> !way.meetsWish())
                .thenComparingDouble(Way::cost)
                .thenComparingInt(way -> way.visit().week())
                .thenComparingInt(way -> way.visit().set()));
        return ways;
    }

    /** Whether a pin or safety date that was kept before is kept still. */
    private void wish(TruckChoices truck, @Nullable PricedVisit visit) {
        Integer latest = truck.options().latestWeek();
        Integer pinned = truck.options().pinnedWeek();
        String name = truck.truck().truck();
        broken.remove(name);
        boolean kept = visit != null
                && truck.options()
                        .meetsWish(truck.options().options().get(truck.visits().indexOf(visit)));
        boolean told = at.schedule().brokenWishes().stream()
                .anyMatch(wish -> wish.truck().equals(name));
        if (kept || told) {
            return;
        }
        if (latest != null && (visit == null || visit.week() > latest)) {
            broken.put(name, new Schedule.BrokenWish(name, Schedule.Wish.LATEST_WEEK, latest, NO_KIT));
        } else if (pinned != null) {
            broken.put(name, new Schedule.BrokenWish(name, Schedule.Wish.PIN, pinned, NO_KIT));
        }
    }
}
