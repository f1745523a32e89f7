package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.Schedule.Wish;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.ArrayList;
import java.util.List;

/**
 * The options that meet a wish, at costs that make keeping wishes come first: a latest week outweighs all pins, a pin
 * outweighs all costs.
 */
final class WishOptions {
    private static final double COST_RANGE = 1_000;

    private final List<TruckOptions> asking;
    private final List<TruckOptions> weighted = new ArrayList<>();
    private final List<List<VisitOption>> originals = new ArrayList<>();
    private final double pinWorth;
    private final double latestWorth;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    WishOptions(List<TruckOptions> asking) {
        this.asking = asking;
        this.pinWorth = COST_RANGE * (asking.size() + 1);
        this.latestWorth = pinWorth * (asking.size() + 1);
        for (TruckOptions truck : asking) {
            for (VisitOption option : truck.options()) {
                least = Math.min(least, option.cost());
                most = Math.max(most, option.cost());
            }
        }
        asking.forEach(this::weigh);
    }

    private void weigh(TruckOptions truck) {
        List<VisitOption> meeting = new ArrayList<>();
        List<VisitOption> those = new ArrayList<>();
        for (VisitOption option : truck.options()) {
            double worth = (meets(truck, Wish.LATEST_WEEK, option) ? latestWorth : 0)
                    + (meets(truck, Wish.PIN, option) ? pinWorth : 0);
            if (worth > 0) {
                double cost = Math.rint(COST_RANGE * (option.cost() - least) / Math.max(1e-9, most - least));
                those.add(option);
                meeting.add(new VisitOption(
                        option.week(), option.cylinders(), option.labourHours(), option.truckDays(), cost - worth));
            }
        }
        originals.add(those);
        weighted.add(new TruckOptions(truck.truck(), truck.depot(), truck.dutyGroup(), meeting, null));
    }

    TruckOptions asking(int truck) {
        return asking.get(truck);
    }

    List<TruckOptions> trucks() {
        return weighted;
    }

    /** The option as it was asked, for one of {@link #trucks}. */
    VisitOption original(int truck, VisitOption option) {
        return originals.get(truck).get(weighted.get(truck).options().indexOf(option));
    }

    static boolean asks(TruckOptions truck, Wish wish) {
        return (wish == Wish.PIN ? truck.pinnedWeek() : truck.latestWeek()) != null;
    }

    /** Whether a wish was made and the option meets it. */
    static boolean meets(TruckOptions truck, Wish wish, VisitOption option) {
        Integer pinned = truck.pinnedWeek();
        Integer latest = truck.latestWeek();
        return wish == Wish.PIN ? pinned != null && option.week() == pinned : latest != null && option.week() <= latest;
    }
}
