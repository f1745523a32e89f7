package dev.injectorplanner.app.command.faults;

import dev.injectorplanner.imports.bus.BusLog;
import dev.injectorplanner.imports.j1939.SpnLayout;
import dev.injectorplanner.imports.obd.CodeList;
import dev.injectorplanner.imports.obd.ListedCode;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.vehicle.LogContents;
import dev.injectorplanner.imports.vehicle.LogListener;
import dev.injectorplanner.imports.vehicle.LogRouting;
import dev.injectorplanner.imports.vehicle.VehicleLog;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code faults}. Exit codes: 0 decoded, 1 a file that is refused, 2 wrong use. */
@Command(
        name = "faults",
        mixinStandardHelpOptions = true,
        description = {
            "Decodes the faults in a log of a vehicle's bus, or in a list of codes.",
            "Logs: candump -L lines, timestamped hex tables, pcapng or pcap of SocketCAN. Messages: DM1 and DM2 of SAE"
                    + " J1939, in one frame or several, and answers of OBD services 03, 07 and 0A.",
            "Lists: SPN and FMI as 651/5, or codes such as P0201, one a line or in a column named code.",
            "A fault code says what an ECU saw, not what is broken: the engine maker's manual takes precedence."
        })
public final class FaultsCommand implements Callable<Integer> {
    private static final int REFUSED = 1;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the log or the list")
    private Path file;

    @Option(
            names = "--spn-layout",
            defaultValue = "4",
            description = "layout of SPNs in trouble codes, 1 to 4; engines made before 2006 may need 1 (default: 4)")
    private int layout;

    @Option(
            names = "--time-zone",
            defaultValue = "UTC",
            description = "zone of times without an offset, such as Europe/Berlin (default: UTC)")
    private String zone;

    @Option(names = "--json", description = "print one JSON object and nothing else")
    private boolean json;

    @Option(names = "--episodes", description = "leave the row for each message out of the JSON")
    private boolean episodesOnly;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try {
            if (layout < 1 || layout > 4) {
                throw new ParameterException(spec.commandLine(), "--spn-layout is 1 to 4, not " + layout + ".");
            }
            if (!Files.isRegularFile(file)) {
                throw new FileRefusedException(file, "is not there", "check the name and the folder");
            }
            if (BusLog.isLog(file)) {
                log(out, zone());
            } else {
                list(out);
            }
            out.flush();
            return 0;
        } catch (FileRefusedException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return REFUSED;
        }
    }

    private ZoneId zone() {
        try {
            return ZoneId.of(zone);
        } catch (DateTimeException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--time-zone " + zone + ": is not a time zone. Fix: write it as Europe/Berlin.",
                    e);
        }
    }

    private void log(PrintWriter out, ZoneId in) {
        LogRouting routing = new LogRouting(source -> "", source -> SpnLayout.of(layout));
        if (!json) {
            new FaultsText(out).log(VehicleLog.read(file, in, routing, LogListener.SILENT));
            return;
        }
        try (FaultsJson answer = new FaultsJson(out)) {
            answer.beginRows();
            LogContents contents =
                    VehicleLog.read(file, in, routing, episodesOnly ? LogListener.SILENT : answer.listener());
            answer.endRows();
            answer.contents(contents);
        }
        out.println();
    }

    private void list(PrintWriter out) {
        List<ListedCode> codes = new ArrayList<>();
        CodeList list = CodeList.read(file, codes::add);
        if (!json) {
            new FaultsText(out).list(codes, list);
            return;
        }
        try (FaultsJson answer = new FaultsJson(out)) {
            answer.beginRows();
            codes.forEach(answer::row);
            answer.endRows();
            answer.list(list);
        }
        out.println();
    }
}
