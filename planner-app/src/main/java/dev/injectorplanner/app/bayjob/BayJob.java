package dev.injectorplanner.app.bayjob;

import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    private static final Pattern DIAGNOSED = Pattern.compile("diagnosed codes ([^;]*)(?:;.*)?", Pattern.DOTALL);

    /** Why a job was started that a diagnosis ended in, before what a person saw. */
    public static String why(Collection<String> codes, String seen) {
        return codes.isEmpty()
                ? seen
                : "diagnosed codes " + String.join(", ", codes) + (seen.isBlank() ? "" : "; " + seen.strip());
    }

    /** Fault codes whose diagnosis ended in this job; empty where none did. */
    public List<String> diagnosed() {
        Matcher found = DIAGNOSED.matcher(why);
        return found.matches()
                ? Arrays.stream(found.group(1).split(","))
                        .map(String::strip)
                        .filter(code -> !code.isEmpty())
                        .toList()
                : List.of();
    }

    public BayJob {
        failed = List.copyOf(failed);
        cylinders = List.copyOf(cylinders);
    }
}
