package dev.injectorplanner.imports.vehicle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The last odometer and engine hours of each UTC day of a log; both in one reading where they are close in time. */
final class DailyReadings {
    static final int MOST_DAYS = 4_000;

    private static final long DAY = 86_400_000_000L;
    private static final long CLOSE = 900_000_000L;
    private static final int ENGINE = 0;
    private static final int NONE = -1;

    private record Shown(long micros, double value) {}

    private final Map<Long, Shown> odometers = new TreeMap<>();
    private final Map<Long, Shown> hours = new TreeMap<>();
    private int hoursSource = NONE;

    void odometer(long micros, double km) {
        put(odometers, micros, km);
    }

    /** The odometer is read from another ECU from now on. */
    void forgetOdometer() {
        odometers.clear();
    }

    void hours(long micros, int source, double value) {
        if (hoursSource == NONE || source == ENGINE && hoursSource != ENGINE) {
            hoursSource = source;
            hours.clear();
        }
        if (source == hoursSource) {
            put(hours, micros, value);
        }
    }

    private static void put(Map<Long, Shown> days, long micros, double value) {
        Long day = Math.floorDiv(micros, DAY);
        if (days.size() < MOST_DAYS || days.containsKey(day)) {
            days.put(day, new Shown(micros, value));
        }
    }

    List<MeterReading> finish() {
        List<MeterReading> readings = new ArrayList<>();
        Map<Long, Shown> rest = new TreeMap<>(hours);
        odometers.forEach((day, odometer) -> {
            Shown engine = rest.get(day);
            boolean close = engine != null && Math.abs(engine.micros - odometer.micros) <= CLOSE;
            if (close) {
                rest.remove(day);
            }
            readings.add(new MeterReading(
                    second(odometer.micros), tenth(odometer.value), close && engine != null ? engine.value : null));
        });
        rest.values().forEach(engine -> readings.add(new MeterReading(second(engine.micros), null, engine.value)));
        readings.sort(Comparator.comparing(MeterReading::takenAt));
        return List.copyOf(readings);
    }

    private static Instant second(long micros) {
        return Instant.ofEpochSecond(Math.floorDiv(micros, 1_000_000L));
    }

    /** High resolution is 5 m: a metre is more than an office needs, and less than a double's noise. */
    private static Double tenth(double km) {
        return Math.rint(km * 1_000) / 1_000;
    }
}
