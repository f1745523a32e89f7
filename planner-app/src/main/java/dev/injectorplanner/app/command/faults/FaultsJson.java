package dev.injectorplanner.app.command.faults;

import dev.injectorplanner.core.fault.CodeMeaning;
import dev.injectorplanner.core.fault.ObdCodes;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.imports.j1939.FaultMessage;
import dev.injectorplanner.imports.j1939.LampState;
import dev.injectorplanner.imports.j1939.Lamps;
import dev.injectorplanner.imports.j1939.TroubleCode;
import dev.injectorplanner.imports.obd.CodeList;
import dev.injectorplanner.imports.obd.ListedCode;
import dev.injectorplanner.imports.obd.ObdReport;
import dev.injectorplanner.imports.vehicle.Episode;
import dev.injectorplanner.imports.vehicle.LogContents;
import dev.injectorplanner.imports.vehicle.LogListener;
import dev.injectorplanner.imports.vehicle.MeterReading;
import dev.injectorplanner.imports.vehicle.Moments;
import dev.injectorplanner.imports.vehicle.TruckLog;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;

/** The answer of {@code faults} as one JSON object, written as the log is read: rows are not kept. */
final class FaultsJson implements AutoCloseable {
    private final JsonGenerator out;

    FaultsJson(PrintWriter to) {
        out = JsonFactory.builder()
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build()
                .createGenerator(ObjectWriteContext.empty(), to);
        out.writeStartObject();
    }

    void beginRows() {
        out.writeArrayPropertyStart("rows");
    }

    void endRows() {
        out.writeEndArray();
    }

    LogListener listener() {
        return new LogListener() {
            @Override
            public void faults(FaultMessage message) {
                for (TroubleCode code : message.codes()) {
                    row(message, code);
                }
            }

            @Override
            public void answers(ObdReport report) {
                for (int code : report.codes()) {
                    begin(
                            Moments.of(report.micros()).toString(),
                            report.source(),
                            report.kind().word());
                    code(new FaultCode(ObdCodes.text(code)), null);
                    out.writeNullProperty("lamps");
                    out.writeEndObject();
                }
            }
        };
    }

    private void row(FaultMessage message, TroubleCode code) {
        begin(
                Moments.of(message.micros()).toString(),
                message.source(),
                message.kind().word());
        code(FaultCode.of(code.spn(), code.fmi()), code.hasCount() ? code.count() : null);
        lamps(message.lamps());
        out.writeNumberProperty("conversionBit", code.conversionBit());
        out.writeEndObject();
    }

    /** A code of a list. */
    void row(ListedCode listed) {
        begin(listed.at().isEmpty() ? null : listed.at(), null, "listed");
        code(listed.code(), listed.count());
        out.writeNullProperty("lamps");
        out.writeNumberProperty("line", listed.line());
        out.writeEndObject();
    }

    private void begin(@Nullable String at, @Nullable Integer source, String kind) {
        out.writeStartObject();
        text("at", at);
        number("source", source);
        out.writeStringProperty("kind", kind);
    }

    private void code(FaultCode code, @Nullable Integer count) {
        CodeMeaning meaning = code.meaning();
        out.writeStringProperty("code", code.text());
        number("spn", code.spn());
        number("fmi", code.fmi());
        number("count", count);
        number("cylinder", meaning.cylinder());
        out.writeStringProperty("words", meaning.words());
    }

    private void lamps(Lamps lamps) {
        out.writeObjectPropertyStart("lamps");
        lamp("malfunction", lamps.malfunction());
        lamp("redStop", lamps.redStop());
        lamp("amberWarning", lamps.amberWarning());
        lamp("protect", lamps.protect());
        out.writeEndObject();
    }

    private void lamp(String name, LampState state) {
        out.writeStringProperty(name, state.words());
    }

    void contents(LogContents contents) {
        for (TruckLog truck : contents.trucks()) {
            out.writeArrayPropertyStart("episodes");
            truck.episodes().forEach(this::episode);
            out.writeEndArray();
            out.writeNumberProperty("episodesNotKept", truck.episodesNotKept());
            out.writeArrayPropertyStart("readings");
            truck.readings().forEach(this::reading);
            out.writeEndArray();
        }
        if (contents.trucks().isEmpty()) {
            out.writeArrayPropertyStart("episodes");
            out.writeEndArray();
            out.writeArrayPropertyStart("readings");
            out.writeEndArray();
        }
        out.writeArrayPropertyStart("vins");
        contents.vins().values().stream().distinct().sorted().forEach(out::writeString);
        out.writeEndArray();
        out.writeStringProperty("clock", contents.tally().clock().name().toLowerCase(Locale.ROOT));
        out.writeNumberProperty("frames", contents.tally().frames());
        out.writeNumberProperty("faultMessages", contents.faultMessages());
        out.writeNumberProperty("lostMessages", contents.lostMessages());
        damaged(contents.tally().damaged(), contents.tally().examples());
    }

    void list(CodeList list) {
        damaged(list.damaged(), list.examples());
    }

    private void damaged(long count, List<String> examples) {
        out.writeNumberProperty("damagedLines", count);
        out.writeArrayPropertyStart("damaged");
        examples.forEach(out::writeString);
        out.writeEndArray();
    }

    private void episode(Episode episode) {
        out.writeStartObject();
        out.writeStringProperty("first", episode.first().toString());
        out.writeStringProperty("last", episode.last().toString());
        number("source", episode.source());
        code(episode.code(), episode.count());
        out.writeNumberProperty("reports", episode.reports());
        number("odometerKm", episode.odometerKm());
        out.writeEndObject();
    }

    private void reading(MeterReading reading) {
        out.writeStartObject();
        out.writeStringProperty("takenAt", reading.takenAt().toString());
        number("odometerKm", reading.odometerKm());
        number("engineHours", reading.engineHours());
        out.writeEndObject();
    }

    private void text(String name, @Nullable String value) {
        if (value == null) {
            out.writeNullProperty(name);
        } else {
            out.writeStringProperty(name, value);
        }
    }

    private void number(String name, @Nullable Number value) {
        if (value == null) {
            out.writeNullProperty(name);
        } else if (value instanceof Integer whole) {
            out.writeNumberProperty(name, whole);
        } else {
            out.writeNumberProperty(name, value.doubleValue());
        }
    }

    @Override
    public void close() {
        out.writeEndObject();
        out.close();
    }
}
