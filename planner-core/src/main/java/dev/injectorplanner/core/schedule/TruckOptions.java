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
 */
public record TruckOptions(
        String truck,
        String depot,
        @Nullable String dutyGroup,
        List<VisitOption> options,
        @Nullable Integer latestWeek) {
    public TruckOptions {
        options = List.copyOf(options);
    }
}
