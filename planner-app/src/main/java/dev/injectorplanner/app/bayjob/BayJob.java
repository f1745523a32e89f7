package dev.injectorplanner.app.bayjob;

import java.time.Instant;
import java.util.List;

/**
 * An unplanned job that stands open at a truck: its cylinders are done whatever the plan says of them.
 *
 * @param id its number
 * @param truck the truck
 * @param depot where it is done
 * @param failed cylinders that failed, ascending
 * @param cylinders all that are done, those that failed among them, ascending
 * @param startedAt when it was started
 * @param startedBy by whom
 * @param why what was seen, or empty
 */
public record BayJob(
        long id,
        String truck,
        String depot,
        List<Integer> failed,
        List<Integer> cylinders,
        Instant startedAt,
        String startedBy,
        String why) {
    public BayJob {
        failed = List.copyOf(failed);
        cylinders = List.copyOf(cylinders);
    }
}
