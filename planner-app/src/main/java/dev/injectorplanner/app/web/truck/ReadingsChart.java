package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The odometer over time as a line. */
public final class ReadingsChart {
    private static final double LEFT = 84;
    private static final double RIGHT = 612;
    private static final double TOP = 16;
    private static final double FLOOR = 200;
    private static final int MOST_POINTS = 200;

    private final SiteUnits units;
    private final ZoneId zone;

    ReadingsChart(SiteUnits units, ZoneId zone) {
        this.units = units;
        this.zone = zone;
    }

    /** @param words what it shows; {@code path} is empty where there is nothing to draw */
    public record Chart(String path, List<Tick> down, List<Tick> across, String words, String unit) {}

    public record Tick(double at, String words) {}

    Chart of(List<Reading> all) {
        List<Reading> readings =
                all.stream().filter(reading -> reading.odometerKm() != null).toList();
        if (readings.size() < 2) {
            return new Chart(
                    "",
                    List.of(),
                    List.of(),
                    "Fewer than two odometer readings: load more with a file.",
                    units.distanceUnit());
        }
        Reading first = readings.get(0);
        Reading last = readings.get(readings.size() - 1);
        double least = readings.stream().mapToDouble(this::shown).min().orElse(0);
        double most = Math.max(
                least + 1, readings.stream().mapToDouble(this::shown).max().orElse(1));
        long from = first.takenAt().getEpochSecond();
        long span = Math.max(1, last.takenAt().getEpochSecond() - from);
        StringBuilder path = new StringBuilder();
        int step = Math.max(1, readings.size() / MOST_POINTS);
        for (int at = 0; at < readings.size(); at++) {
            if (at % step == 0 || at == readings.size() - 1) {
                Reading each = readings.get(at);
                double x = LEFT + (RIGHT - LEFT) * (each.takenAt().getEpochSecond() - from) / span;
                double y = FLOOR - (FLOOR - TOP) * (shown(each) - least) / (most - least);
                path.append(String.format(Locale.ROOT, "%s%.1f %.1f", at == 0 ? "M" : "L", x, y));
            }
        }
        List<Tick> down = new ArrayList<>();
        List<Tick> across = new ArrayList<>();
        for (int part = 0; part <= 4; part++) {
            down.add(new Tick(FLOOR - (FLOOR - TOP) * part / 4, Figures.whole(least + (most - least) * part / 4)));
        }
        for (int part = 0; part <= 3; part++) {
            LocalDate day = LocalDate.ofInstant(Instant.ofEpochSecond(from + span * part / 3), zone);
            across.add(new Tick(LEFT + (RIGHT - LEFT) * part / 3, DisplayFormat.shortDate(day)));
        }
        return new Chart(path.toString(), down, across, words(readings), units.distanceUnit());
    }

    private String words(List<Reading> readings) {
        Reading first = readings.get(0);
        Reading last = readings.get(readings.size() - 1);
        return Figures.count(readings.size(), "reading", "readings") + ", from " + words(first) + " on "
                + DisplayFormat.shortDate(LocalDate.ofInstant(first.takenAt(), zone)) + " to " + words(last) + " on "
                + DisplayFormat.shortDate(LocalDate.ofInstant(last.takenAt(), zone)) + ".";
    }

    private String words(Reading reading) {
        return Figures.whole(shown(reading)) + " " + units.distanceUnit();
    }

    private double shown(Reading reading) {
        Double km = reading.odometerKm();
        return km == null ? 0 : units.ofKm(km);
    }
}
