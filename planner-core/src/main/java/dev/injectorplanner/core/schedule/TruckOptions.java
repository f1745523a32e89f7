package dev.injectorplanner.core.schedule;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A truck and the ways to treat it; at most one of them is chosen.
 *
 * @param truck the truck
 * @param depot where
 * @param dutyGroup its duty group, or null
 * @param options the ways, most wanted first
 * @param latestWeek week by which one of them must be chosen, or null where it need not
 * @param pinnedWeek the week the manager pinned its visit to, or null; a wish like {@code latestWeek}: where limits
 *     forbid it the schedule says so, and places the truck as if it had not been asked for
 */
public record TruckOptions(
        String truck,
        String depot,
        @Nullable String dutyGroup,
        List<VisitOption> options,
        @Nullable Integer latestWeek,
        @Nullable Integer pinnedWeek) {
    public TruckOptions {
        options = List.copyOf(options);
    }

    /** A truck without a pin. */
    public TruckOptions(
            String truck,
            String depot,
            @Nullable String dutyGroup,
            List<VisitOption> options,
            @Nullable Integer latestWeek) {
        this(truck, depot, dutyGroup, options, latestWeek, null);
    }

    /** Whether an option meets pin and latest week, where there are any. */
    public boolean meetsWish(VisitOption option) {
        return (latestWeek == null || option.week() <= latestWeek)
                && (pinnedWeek == null || option.week() == pinnedWeek);
    }

    /** Whether one of the options must be chosen. */
    public boolean hasWish() {
        return latestWeek != null || pinnedWeek != null;
    }
}
