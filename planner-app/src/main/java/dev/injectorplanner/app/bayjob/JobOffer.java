package dev.injectorplanner.app.bayjob;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One answer to "that one, the bank, or all?" for a truck that stands in the bay.
 *
 * @param name what a person calls it
 * @param cylinders all that would be done, ascending
 * @param best whether it is the one proposed
 * @param hours labour of the whole job
 * @param bill labour and parts, in the site's currency, core deposits left out
 * @param deposits core deposits on top, which come back with the old units
 * @param more expected cost against doing only what failed; below zero it saves; null where it cannot be told
 * @param chanceLeft chance that a cylinder left in fails within 12 weeks, 0 to 1; null where it cannot be told
 * @param coolantLitres coolant that comes out
 * @param parts each part, the injectors first
 * @param readyOn the day on which all parts are there, or null where nobody knows it
 * @param finishedOn the day on which the work is done, or null
 * @param daysOffRoad days from today to that day, both counted, or null
 */
public record JobOffer(
        String name,
        List<Integer> cylinders,
        boolean best,
        double hours,
        BigDecimal bill,
        BigDecimal deposits,
        @Nullable Double more,
        @Nullable Double chanceLeft,
        double coolantLitres,
        List<PartReady> parts,
        @Nullable LocalDate readyOn,
        @Nullable LocalDate finishedOn,
        @Nullable Integer daysOffRoad) {
    public JobOffer {
        cylinders = List.copyOf(cylinders);
        parts = List.copyOf(parts);
    }

    /**
     * A part of the job.
     *
     * @param pieces how many the kit has
     * @param free pieces on the shelf that nobody else was given
     * @param readyOn the day on which all of them are there, or null where nobody knows it
     */
    public record PartReady(
            String part,
            String description,
            double pieces,
            double free,
            @Nullable LocalDate readyOn) {
        /** Whether all pieces are on the shelf. */
        public boolean onShelf() {
            return free >= pieces - 1e-9;
        }
    }

    /** Parts that are not all on the shelf. */
    public List<PartReady> waiting() {
        return parts.stream().filter(part -> !part.onShelf()).toList();
    }
}
