package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.imports.bus.BusLog;
import dev.injectorplanner.imports.bus.LogTally;
import dev.injectorplanner.imports.j1939.BusMessages;
import dev.injectorplanner.imports.j1939.FaultMessage;
import dev.injectorplanner.imports.j1939.J1939Decoder;
import dev.injectorplanner.imports.obd.ObdAnswers;
import dev.injectorplanner.imports.obd.ObdReport;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A vehicle's log, read once from its start to its end; memory does not grow with it. */
public final class VehicleLog {
    private VehicleLog() {}

    /**
     * Reads a log.
     *
     * @param zone what times without an offset are read in
     * @param each hears of every message about faults as it comes
     * @throws dev.injectorplanner.imports.refusal.FileRefusedException if the file cannot be read
     */
    public static LogContents read(Path file, ZoneId zone, LogRouting routing, LogListener each) {
        Collector collector = new Collector(routing, each);
        J1939Decoder decoder = new J1939Decoder(collector, routing.layoutOfSource());
        ObdAnswers answers = new ObdAnswers(collector::answers);
        LogTally tally = BusLog.read(file, zone, (micros, id, extended, data, length) -> {
            decoder.frame(micros, id, extended, data, length);
            answers.frame(micros, id, extended, data, length);
        });
        decoder.end();
        return new LogContents(
                tally,
                decoder.lostMessages(),
                collector.faultMessages,
                collector.vins,
                collector.parts.entrySet().stream()
                        .map(part -> part.getValue().finish(part.getKey()))
                        .toList());
    }

    private static final class Collector implements BusMessages {
        private final LogRouting routing;
        private final LogListener each;
        private final Map<String, TruckPart> parts = new LinkedHashMap<>();
        private final Map<Integer, String> vins = new LinkedHashMap<>();
        private long faultMessages;

        Collector(LogRouting routing, LogListener each) {
            this.routing = routing;
            this.each = each;
        }

        private @Nullable TruckPart part(int source) {
            String truck = routing.truckOfSource().apply(source);
            return truck == null ? null : parts.computeIfAbsent(truck, none -> new TruckPart());
        }

        @Override
        public void faults(FaultMessage message) {
            faultMessages++;
            each.faults(message);
            TruckPart part = part(message.source());
            if (part != null) {
                part.faults(message);
            }
        }

        void answers(ObdReport report) {
            faultMessages++;
            each.answers(report);
            TruckPart part = part(report.source());
            if (part != null) {
                part.faults(report);
            }
        }

        @Override
        public void distance(long micros, int source, double km, boolean fine) {
            TruckPart part = part(source);
            if (part != null) {
                part.distance(micros, source, km, fine);
            }
        }

        @Override
        public void engineHours(long micros, int source, double hours) {
            TruckPart part = part(source);
            if (part != null) {
                part.engineHours(micros, source, hours);
            }
        }

        @Override
        public void vin(long micros, int source, String vin) {
            vins.put(source, vin.length() <= 30 ? vin : vin.substring(0, 30));
        }
    }
}
