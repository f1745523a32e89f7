package dev.injectorplanner.core.usage;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What one meter of a truck tells: its track, and how much it moves in a week.
 *
 * @param track the good readings
 * @param known whether two or more readings told of the usage
 * @param perWeek usage a week, parked time counted, 0 or more; 0 where not known
 * @param spreadPerWeek standard deviation of a week's use, from the median absolute deviation of the weekly increments
 *     within the window (times 1.4826, which is right for normal ones); 0 where fewer than three weeks tell
 * @param silentDays days from the last reading until the day it was made for, 0 or more
 */
public record MeterUsage(MeterTrack track, boolean known, double perWeek, double spreadPerWeek, int silentDays) {
    private static final double NOON = 0.5;

    /** A meter noted at a fitting may be this far from the readings around it: the day is often noted late. */
    private static final double SLACK_WEEKS = 4;

    /** Read on the day it was made for. */
    public MeterUsage(MeterTrack track, boolean known, double perWeek, double spreadPerWeek) {
        this(track, known, perWeek, spreadPerWeek, 0);
    }

    /** The cumulative meter at noon of a day, beyond the last reading at the usage found; null before the first. */
    public @Nullable Double meterOn(LocalDate day) {
        return track.at(day.toEpochDay() + NOON, perWeek / 7);
    }

    /**
     * Whether a meter noted at fitting cannot be right: above today's, or far below the reading before it, as after a
     * meter was replaced and nobody told.
     */
    boolean disbelieves(LocalDate fittedOn, double noted, LocalDate today) {
        Double now = meterOn(today);
        Double then = notedOn(fittedOn, noted);
        return now != null
                && then != null
                && (then > now || track.isBelow(fittedOn.toEpochDay() + NOON, then, SLACK_WEEKS * perWeek));
    }

    /** Age of an injector that was in before {@code since}; null where the readings cannot say. */
    @Nullable
    UnknownAge unknownAge(LocalDate since, LocalDate today, double scale) {
        Double now = meterOn(today);
        Double then = meterAt(since, null, today);
        return now == null || then == null ? null : UnknownAge.of(track.total(now), now - then, scale);
    }

    private @Nullable Double notedOn(LocalDate day, double noted) {
        return track.cumulativeOf(noted, day.toEpochDay() + NOON);
    }

    /**
     * Use from a day of fitting until {@code today}; null where {@link #meterAt} cannot tell the meter at fitting.
     */
    public @Nullable Double since(LocalDate fittedOn, @Nullable Double noted, LocalDate today) {
        Double now = meterOn(today);
        Double then = meterAt(fittedOn, noted, today);
        return now == null || then == null ? null : Double.valueOf(Math.max(0, now - then));
    }

    /**
     * The cumulative meter when an injector went in or came out: by the meter noted then; else by the readings around
     * that day; else, before the first reading, back from it at the usage found; else null. A noted meter that
     * cannot be right is not believed.
     */
    public @Nullable Double meterAt(LocalDate day, @Nullable Double noted, LocalDate today) {
        Double then = noted == null || disbelieves(day, noted, today) ? null : notedOn(day, noted);
        if (then == null) {
            then = meterOn(day);
        }
        if (then == null && known) {
            then = track.before(day.toEpochDay() + NOON, perWeek / 7);
        }
        return then;
    }
}
