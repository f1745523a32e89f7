package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.generate.DemoFleet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/** The demo's fleet in a store, and entries for it. */
final class DemoStore {
    static final LocalDate TODAY = DemoFleet.TODAY;
    static final Instant NOW = Instant.parse("2026-03-02T14:00:00Z");
    static final String PART = "KV-8140";

    private DemoStore() {}

    static Application load(StoreSettings settings, Path files) throws IOException {
        Application application = Application.open(settings);
        application
                .intake()
                .load(
                        SampleFiles.copyTo(Files.createDirectories(files)),
                        LoadSettings.of(Mode.GOOD_ROWS),
                        new LoadListener() {});
        return application;
    }

    /** Trucks with eight cylinders, all of them with an injector that went in before today. */
    static List<String> trucksWithEight(FleetSnapshot fleet) {
        return fleet.trucks().stream()
                .filter(truck -> truck.family().equals("V8-140"))
                .map(truck -> truck.truck())
                .filter(truck -> open(fleet, truck).size() == 8)
                .toList();
    }

    static List<FittedInjector> open(FleetSnapshot fleet, String truck) {
        return fleet.injectors().stream()
                .filter(row -> row.truck().equals(truck) && row.removedOn() == null)
                .sorted(java.util.Comparator.comparing(FittedInjector::cylinder))
                .toList();
    }

    static String serial(String truck, int cylinder) {
        return "NEW-" + truck + "-" + cylinder;
    }

    /** Sixteen signs, as the part's pattern asks. */
    static String code(String truck, int cylinder) {
        return String.format("C%sX%02d", truck, cylinder) + "ZZZZZZZZZZZZZZZZ".substring(0, 12 - truck.length());
    }

    static CloseOutEntry.Cylinder fitted(String truck, int cylinder, Found found) {
        String code = code(truck, cylinder);
        return new CloseOutEntry.Cylinder(
                cylinder, true, found, serial(truck, cylinder), code, Origin.REMAN, true, code, false, "");
    }

    static CloseOutEntry allEight(String key, String truck) {
        return entry(
                key,
                truck,
                IntStream.rangeClosed(1, 8)
                        .mapToObj(cylinder -> fitted(truck, cylinder, Found.WORN))
                        .toList());
    }

    static CloseOutEntry entry(String key, String truck, List<CloseOutEntry.Cylinder> cylinders) {
        return new CloseOutEntry(
                key,
                truck,
                "2026-W10",
                TODAY,
                6.5,
                null,
                null,
                false,
                "one clip renewed",
                List.of("valve clearances"),
                TODAY.plusDays(14),
                cylinders,
                List.of(new CloseOutEntry.Used("KX-1001", cylinders.size())),
                List.of(),
                null);
    }
}
