package dev.injectorplanner.core.truth;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * What a truck's meters show and what time it is there.
 *
 * @param truck the truck
 * @param zone its depot's
 * @param path its true km and hours
 * @param replacedOn day its odometer was replaced by one that began at 0; far ahead where it was not
 */
public record TruckClock(String truck, ZoneId zone, UsagePath path, LocalDate replacedOn) {
    /** What the odometer shows at noon, whole km. */
    public double odometerOn(LocalDate day) {
        double km = path.kmOn(day);
        return Math.rint(day.isBefore(replacedOn) ? km : km - path.kmOn(replacedOn));
    }

    /** What the engine hour meter shows at noon, tenths of an hour. */
    public double hoursOn(LocalDate day) {
        return Math.rint(path.hoursAt(path.kmOn(day)) * 10) / 10;
    }

    /** A moment of a day by the clock of its depot, UTC. */
    public Instant moment(LocalDate day, double secondsAfterMidnight) {
        return day.atStartOfDay(zone).toInstant().plusSeconds((long) secondsAfterMidnight);
    }
}
