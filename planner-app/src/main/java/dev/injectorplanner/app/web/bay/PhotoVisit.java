package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.photo.Photo;
import java.util.List;

/** Under which visit the photographs of a closed-out job stand: taken before it was closed, under the visit's own name. */
final class PhotoVisit {
    private PhotoVisit() {}

    static String of(CloseOut done, List<Photo> photos, TruckInBay at) {
        String week = done.week();
        if (week != null) {
            return week;
        }
        return photos.stream()
                .map(Photo::visit)
                .filter(visit -> visit.startsWith("job ") || visit.startsWith("unplanned "))
                .findFirst()
                .orElse("unplanned " + at.today());
    }
}
