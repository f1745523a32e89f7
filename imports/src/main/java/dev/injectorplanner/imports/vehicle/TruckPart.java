package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.imports.j1939.FaultMessage;
import dev.injectorplanner.imports.obd.ObdReport;

/** One truck's share of a log while it is read. */
final class TruckPart {
    private final OdometerTrack odometer = new OdometerTrack();
    private final DailyReadings readings = new DailyReadings();
    private final EpisodeBook episodes = new EpisodeBook(odometer);
    private boolean fine;

    void faults(FaultMessage message) {
        episodes.add(message);
    }

    void faults(ObdReport report) {
        episodes.add(report);
    }

    void distance(long micros, int source, double km, boolean isFine) {
        if (odometer.add(micros, source, km, isFine)) {
            if (isFine && !fine) {
                fine = true;
                readings.forgetOdometer();
            }
            readings.odometer(micros, km);
        }
    }

    void engineHours(long micros, int source, double hours) {
        readings.hours(micros, source, hours);
    }

    TruckLog finish(String truck) {
        return new TruckLog(truck, episodes.finish(), episodes.notKept(), readings.finish());
    }
}
