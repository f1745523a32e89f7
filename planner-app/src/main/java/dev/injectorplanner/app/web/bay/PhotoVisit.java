package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.photo.Photo;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/**
 * Under which visit a truck's photographs stand. Those of a closed-out job were taken before it was closed, under the visit's
 * own name: its week, its unplanned job, or a day between that of the work and that of the entry.
 */
final class PhotoVisit {
    private static final String UNPLANNED = "unplanned ";

    private final BayJobs jobs;

    PhotoVisit(BayJobs jobs) {
        this.jobs = jobs;
    }

    String of(TruckInBay at, List<Photo> photos) {
        CloseOut done = at.done();
        if (done == null) {
            return at.visitKey();
        }
        String week = done.week();
        return week != null
                ? week
                : jobs.findClosedBy(done.id()).map(job -> "job " + job.id()).orElseGet(() -> day(at, done, photos));
    }

    private static String day(TruckInBay at, CloseOut done, List<Photo> photos) {
        ZoneId zone = at.depot().timeZone();
        LocalDate entered = done.closedAt().atZone(zone).toLocalDate();
        LocalDate last = entered.isBefore(done.doneOn()) ? done.doneOn() : entered;
        return photos.stream()
                .map(Photo::visit)
                .filter(visit -> day(visit)
                        .filter(day -> !day.isBefore(done.doneOn()) && !day.isAfter(last))
                        .isPresent())
                .findFirst()
                .orElse(UNPLANNED + done.doneOn());
    }

    private static Optional<LocalDate> day(String visit) {
        try {
            return visit.startsWith(UNPLANNED)
                    ? Optional.of(LocalDate.parse(visit.substring(UNPLANNED.length())))
                    : Optional.empty();
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
