package dev.injectorplanner.app.web.frame;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * Which moment it is for the pages. In the demo it is the day its fleet was made for.
 *
 * @param source where the time comes from
 */
public record SiteClock(InstantSource source) {
    public Instant now() {
        return source.instant();
    }

    /** Today at a place. */
    public LocalDate today(ZoneId zone) {
        return LocalDate.ofInstant(source.instant(), zone);
    }
}
