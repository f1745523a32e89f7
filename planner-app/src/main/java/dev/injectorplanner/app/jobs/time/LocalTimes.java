package dev.injectorplanner.app.jobs.time;

import dev.injectorplanner.app.jobs.time.CronField.Part;
import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Local times at which something is due, as a crontab line (POSIX crontab: minute, hour, day of the month, month, day of
 * the week; the two days are joined by "or" where both are restricted) in a zone.
 *
 * <p>Clock changes: a line with fixed hours is due once for each time it names: a time that the clock skips is due at the
 * moment the clock jumps (02:30 of a night that goes from 02:00 to 03:00 is due at 03:00), one that comes twice is due the
 * first time. A line for every hour (hour {@code *}) follows the clock as it runs: what is skipped is not due, what comes
 * twice is due twice, so that "every quarter of an hour" stays a quarter of an hour.
 */
public final class LocalTimes {
    /** Between two leap days that a century parts lie eight years. */
    private static final int FARTHEST_DAYS = 8 * 366 + 2;

    private final String line;
    private final ZoneId zone;
    private final CronField minute;
    private final CronField hour;
    private final CronField day;
    private final CronField month;
    private final CronField weekday;

    private LocalTimes(String line, ZoneId zone, List<String> fields) {
        this.line = line;
        this.zone = zone;
        this.minute = CronField.of(Part.MINUTE, fields.get(0));
        this.hour = CronField.of(Part.HOUR, fields.get(1));
        this.day = CronField.of(Part.DAY, fields.get(2));
        this.month = CronField.of(Part.MONTH, fields.get(3));
        this.weekday = CronField.of(Part.WEEKDAY, fields.get(4));
    }

    /**
     * Reads a crontab line.
     *
     * @throws InvalidValueException where it is none, or names a day that never comes
     */
    public static LocalTimes of(String line, ZoneId zone) {
        String clean = line.strip().replaceAll("\\s+", " ");
        List<String> fields = List.of(clean.split(" ", -1));
        if (fields.size() != 5) {
            throw new InvalidValueException(
                    "times", line, "does not have five fields", "write it as 30 2 * * * for half past two every night");
        }
        LocalTimes times = new LocalTimes(clean, zone, fields);
        if (times.findAfter(Instant.EPOCH).isEmpty()) {
            throw new InvalidValueException("times", line, "names a day that never occurs", "correct day and month");
        }
        return times;
    }

    public String line() {
        return line;
    }

    public ZoneId zone() {
        return zone;
    }

    /** The first moment after {@code moment} at which it is due. */
    public Instant nextAfter(Instant moment) {
        return findAfter(moment).orElseThrow(() -> new IllegalStateException("never due again: " + this));
    }

    /** The last moment, {@code moment} itself included, at which it was due. */
    public Instant latestUntil(Instant moment) {
        LocalDate date = LocalDate.ofInstant(moment, zone).plusDays(1);
        for (int i = 0; i < FARTHEST_DAYS; i++) {
            Instant found = dueOn(date.minusDays(i)).floor(moment);
            if (found != null) {
                return found;
            }
        }
        throw new IllegalStateException("never due before: " + this);
    }

    /** How often it was due from {@code first} up to and without {@code end}, counted up to {@code most}. */
    public int countBetween(Instant first, Instant end, int most) {
        int count = 0;
        for (Instant due = first; due.isBefore(end) && count < most; due = nextAfter(due)) {
            count++;
        }
        return count;
    }

    private Optional<Instant> findAfter(Instant moment) {
        LocalDate date = LocalDate.ofInstant(moment, zone).minusDays(1);
        for (int i = 0; i < FARTHEST_DAYS; i++) {
            Instant found = dueOn(date.plusDays(i)).higher(moment);
            if (found != null) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    private NavigableSet<Instant> dueOn(LocalDate date) {
        NavigableSet<Instant> due = new TreeSet<>();
        if (isDay(date)) {
            hour.values().stream().forEach(h -> minute.values().stream().forEach(m -> add(date.atTime(h, m), due)));
        }
        return due;
    }

    private boolean isDay(LocalDate date) {
        if (!month.has(date.getMonthValue())) {
            return false;
        }
        boolean ofMonth = day.has(date.getDayOfMonth());
        boolean ofWeek = weekday.has(date.getDayOfWeek().getValue() % 7);
        return day.any() || weekday.any() ? ofMonth && ofWeek : ofMonth || ofWeek;
    }

    private void add(LocalDateTime local, NavigableSet<Instant> due) {
        ZoneRules rules = zone.getRules();
        List<ZoneOffset> offsets = rules.getValidOffsets(local);
        if (offsets.isEmpty() && !hour.any()) {
            due.add(rules.getTransition(local).getInstant());
        }
        offsets.stream().limit(hour.any() ? 2 : 1).forEach(offset -> due.add(local.toInstant(offset)));
    }

    @Override
    public String toString() {
        return line + " " + zone;
    }
}
