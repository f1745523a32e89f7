package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Meters that somebody said were replaced, in words, and the odometer counted on across them. */
final class MeterReplacements {
    private final List<Reading> readings;
    private final SiteUnits units;
    private final ZoneId zone;

    /** @param readings of one truck, by time */
    MeterReplacements(List<Reading> readings, SiteUnits units, ZoneId zone) {
        this.readings = readings;
        this.units = units;
        this.zone = zone;
    }

    /** A meter that was replaced: {@code Odometer replaced on 3 March 2026 at 412,300 km; the new one began at 0 km}. */
    record Replaced(LocalDate day, String words) {}

    /** A reading's day and the km run since the first, counted on over replaced odometers from where the first stood. */
    record Point(double day, double km) {}

    List<Replaced> list() {
        List<Replaced> list = new ArrayList<>();
        Double km = null;
        Double hours = null;
        for (Reading each : readings) {
            if (each.meterReplaced()) {
                LocalDate day = LocalDate.ofInstant(each.takenAt(), zone);
                add(list, day, "Odometer", km, each.odometerKm(), units::distance);
                add(list, day, "Hour meter", hours, each.engineHours(), h -> Figures.whole(h) + " h");
            }
            km = each.odometerKm() == null ? km : each.odometerKm();
            hours = each.engineHours() == null ? hours : each.engineHours();
        }
        return list;
    }

    private interface Words {
        String of(double value);
    }

    /** Only a meter that went back was replaced: the mark holds for both of a reading. */
    private static void add(
            List<Replaced> list,
            LocalDate day,
            String meter,
            @Nullable Double before,
            @Nullable Double after,
            Words words) {
        if (before != null && after != null && after < before) {
            list.add(new Replaced(
                    day,
                    meter + " replaced on " + DisplayFormat.date(day) + " at " + words.of(before)
                            + "; the new one began at " + words.of(after)));
        }
    }

    /** The odometer counted on, by time; readings that go back without a replacement are left out. */
    List<Point> countedOn() {
        List<Point> points = new ArrayList<>();
        double added = 0;
        Double last = null;
        for (Reading each : readings) {
            Double km = each.odometerKm();
            if (km == null) {
                continue;
            }
            if (last != null && each.meterReplaced() && km < last) {
                added += last - km;
            } else if (last != null && km < last) {
                continue;
            }
            last = km;
            points.add(new Point(each.takenAt().getEpochSecond() / 86_400.0, km + added));
        }
        return points;
    }
}
