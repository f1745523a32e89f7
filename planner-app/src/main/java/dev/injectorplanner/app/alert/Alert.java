package dev.injectorplanner.app.alert;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A due item that somebody is told about, or a job that failed.
 *
 * @param id its number
 * @param depot whose it is; null where a job of no depot failed
 * @param truck the truck, or null where a job failed
 * @param cylinder the cylinder, or null where it concerns the whole truck
 * @param rule the rule that asks for it: a kind of due item, or JOB
 * @param subject the scheduled service, the safety fault code or the job, or null
 * @param state where it stands
 * @param action what it asks for, or null where a job failed
 * @param evidence what was seen when it was last found, in words with figures and units
 * @param limit the limit it was checked against, in words
 * @param limitSource whose limit that is
 * @param by the day by which it should be done
 * @param visitWeek week of the visit that answers it where PLANNED, else null
 * @param raisedAt when it was raised
 * @param seenAt when somebody first said that they know, or null
 * @param mutedUntil the day it comes back where MUTED, else null
 * @param mutedWhy why it is silent, with {@code mutedUntil}
 * @param clearedAt when what it was about had gone, or null
 * @param clearedWhy what happened, with {@code clearedAt}
 * @param told as what a digest last told of it (RAISED or PLANNED), or null where none has
 */
public record Alert(
        long id,
        @Nullable String depot,
        @Nullable String truck,
        @Nullable Integer cylinder,
        String rule,
        @Nullable String subject,
        AlertState state,
        @Nullable String action,
        String evidence,
        String limit,
        String limitSource,
        LocalDate by,
        @Nullable IsoWeek visitWeek,
        Instant raisedAt,
        @Nullable Instant seenAt,
        @Nullable LocalDate mutedUntil,
        @Nullable String mutedWhy,
        @Nullable Instant clearedAt,
        @Nullable String clearedWhy,
        @Nullable AlertState told) {

    /** {@code T005, cylinder 3}, or the job's name. */
    public String about() {
        if (truck == null) {
            return String.valueOf(subject);
        }
        return truck + (cylinder == null ? "" : ", cylinder " + cylinder);
    }

    /** Whether it is about a scheduled job that failed. */
    public boolean isOfJob() {
        return rule.equals(AlertKey.JOB);
    }

    /** {@code distance km}, {@code interval (oil change)}. */
    public String ruleWords() {
        String words = rule.toLowerCase(Locale.ROOT).replace('_', ' ');
        return subject == null || truck == null ? words : words + " (" + subject + ")";
    }
}
