package dev.injectorplanner.core.replay.outlook;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What lies ahead of a fleet if it is looked after as planned, and by the planner's rules of replacement once the plan ends.
 *
 * @param today day of the plan it begins with
 * @param planEnds last day of that plan's weeks
 * @param runs runs that the bands are taken from
 * @param stopped whether it was stopped before all asked for were played
 * @param rules what replaces once the plan ends, in words
 * @param leftOut trucks that are not counted, since their usage or their injector part is not known
 * @param assumedAges injectors whose age is not known and was taken from the rest of the truck or family
 * @param months figures of all depots by month
 * @param depots the same by depot and month
 * @param parts pieces by depot, part and month; of all depots too
 * @param totals all months together, of all depots and of each; bands of months do not add up, those of runs do
 * @param partTotals pieces of all months together, by depot and part
 */
public record Outlook(
        LocalDate today,
        LocalDate planEnds,
        int runs,
        boolean stopped,
        String rules,
        List<String> leftOut,
        int assumedAges,
        List<Month> months,
        List<Month> depots,
        List<PartMonth> parts,
        List<Month> totals,
        List<PartMonth> partTotals) {
    public Outlook {
        leftOut = List.copyOf(leftOut);
        months = List.copyOf(months);
        depots = List.copyOf(depots);
        parts = List.copyOf(parts);
        totals = List.copyOf(totals);
        partTotals = List.copyOf(partTotals);
    }

    /**
     * One month.
     *
     * @param month the month; the first and the last may be cut
     * @param depot the depot, or null for all
     * @param injectors injectors fitted
     * @param failures of these, after a failure in service
     * @param visits trucks in the bay
     * @param hours labour
     * @param coolantLitres coolant drained
     * @param money parts, labour, coolant, bays, downtime, tests and road failures, in the site's currency
     */
    public record Month(
            YearMonth month,
            @Nullable String depot,
            Band injectors,
            Band failures,
            Band visits,
            Band hours,
            Band coolantLitres,
            Band money) {}

    /**
     * Pieces of one part in one month.
     *
     * @param month the month
     * @param depot the depot, or null for all
     * @param part part number
     * @param pieces pieces used
     */
    public record PartMonth(YearMonth month, @Nullable String depot, String part, Band pieces) {}

    /**
     * All months together of one depot, or of all for null.
     *
     * @throws IllegalArgumentException for a depot without trucks in it
     */
    public Month totalOf(@Nullable String depot) {
        return totals.stream()
                .filter(each -> Objects.equals(depot, each.depot()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("depot " + depot + " is not in the outlook"));
    }

    /** Months of one depot, or of all for null; none where it has no trucks. */
    public List<Month> monthsOf(@Nullable String depot) {
        return depot == null
                ? months
                : depots.stream().filter(each -> depot.equals(each.depot())).toList();
    }

    /** Parts of one depot, or of all for null, by part and month. */
    public List<PartMonth> partsOf(@Nullable String depot) {
        return parts.stream()
                .filter(each -> depot == null ? each.depot() == null : depot.equals(each.depot()))
                .toList();
    }
}
