package dev.injectorplanner.app.command.faults;

import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.imports.bus.LogClock;
import dev.injectorplanner.imports.obd.CodeList;
import dev.injectorplanner.imports.obd.ListedCode;
import dev.injectorplanner.imports.vehicle.Episode;
import dev.injectorplanner.imports.vehicle.LogContents;
import dev.injectorplanner.imports.vehicle.TruckLog;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The answer of {@code faults} for people: episodes, not every message. */
final class FaultsText {
    private final PrintWriter out;

    FaultsText(PrintWriter out) {
        this.out = out;
    }

    void log(LogContents contents) {
        TextTable table = new TextTable("First", "Last", "Code", "Meaning", ">Times", ">Odometer km", ">ECU");
        boolean clock = contents.tally().clock() != LogClock.START_OF_LOG;
        for (TruckLog truck : contents.trucks()) {
            for (Episode episode : truck.episodes()) {
                table.row(
                        moment(episode.first(), clock),
                        moment(episode.last(), clock),
                        episode.code(),
                        episode.code().meaning().words(),
                        Figures.whole(episode.count()),
                        km(episode.odometerKm()),
                        episode.source());
            }
        }
        if (table.isEmpty()) {
            out.println("No active faults in this log.");
        } else {
            table.print(out);
        }
        contents.trucks().forEach(this::meters);
        out.println(Figures.count(contents.tally().frames(), "frame", "frames") + ", "
                + Figures.count(contents.faultMessages(), "fault message", "fault messages") + "; times are "
                + (clock ? "UTC." : "since the start of the recording."));
        if (contents.lostMessages() > 0) {
            out.println(Figures.count(contents.lostMessages(), "message", "messages")
                    + " of several packets left out because packets are missing.");
        }
        damaged(contents.tally().damaged(), contents.tally().examples());
    }

    private void meters(TruckLog truck) {
        if (truck.readings().isEmpty()) {
            return;
        }
        var last = truck.readings().get(truck.readings().size() - 1);
        Double hours = last.engineHours();
        out.println("Last meters: odometer " + km(last.odometerKm()) + " km, engine hours "
                + (hours == null ? "-" : Figures.tenths(hours)) + ".");
    }

    private static String km(@Nullable Double km) {
        return km == null ? "-" : Figures.whole(Math.round(km));
    }

    private static String moment(Instant moment, boolean clock) {
        Instant second = moment.truncatedTo(ChronoUnit.SECONDS);
        return clock
                ? second.toString().replace('T', ' ').replace("Z", "")
                : Figures.whole(second.getEpochSecond()) + " s";
    }

    void list(List<ListedCode> codes, CodeList list) {
        TextTable table = new TextTable(">Line", "Code", "Meaning", ">Times");
        codes.forEach(code -> table.row(
                code.line(), code.code(), code.code().meaning().words(), code.count() == null ? "-" : code.count()));
        table.print(out);
        damaged(list.damaged(), list.examples());
    }

    private void damaged(long count, List<String> examples) {
        if (count > 0) {
            out.println(Figures.count(count, "damaged line", "damaged lines") + " left out, such as:");
            examples.forEach(example -> out.println("  " + example));
        }
    }
}
