package dev.injectorplanner.app.growth;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.generate.FleetSpec;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.reports.work.UpcomingWorkbook;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a fleet of each size costs, in seconds of CPU, through the store: intake of its files, then for every depot its snapshot, plan
 * and sheets. The growth exponent is the slope between two sizes on logarithmic scales; 1 is in proportion to the trucks.
 * {@code -Dgrowth.trucks=1000,4000,16000}; readings once a fortnight over three years.
 */
@Tag("benchmark")
class GrowthBenchmark {
    private static final String SIZES = System.getProperty("growth.trucks", "500,1000,2000");
    private static final double READING_EVERY_DAYS = 14;
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    @TempDir
    private Path folder;

    private interface Work {
        void run() throws Exception;
    }

    private static double cpu(Work work) throws Exception {
        long before = SYSTEM.getProcessCpuTime();
        work.run();
        return (SYSTEM.getProcessCpuTime() - before) / 1e9;
    }

    @Test
    void intakePlansAndSheetsGrowInProportion() throws Exception {
        measured(250); // compiles what is measured
        Map<Integer, Map<String, Double>> all = new LinkedHashMap<>();
        for (String size : SIZES.split(",", -1)) {
            all.put(Integer.valueOf(size.strip()), measured(Integer.parseInt(size.strip())));
            print(all); // a larger one may take an hour
        }
    }

    private Map<String, Double> measured(int trucks) throws Exception {
        FleetSnapshot made = made(trucks);
        Path place = Files.createDirectories(folder.resolve("fleet" + trucks));
        List<Path> files = FleetFiles.write(made, Files.createDirectories(place.resolve("files")));
        Map<String, Double> figures = new LinkedHashMap<>();
        try (Application application = Application.open(StoreSettings.embedded(place.resolve("data")))) {
            figures.put(
                    "intake",
                    cpu(() -> application
                            .intake()
                            .load(files, LoadSettings.of(LoadSettings.Mode.GOOD_ROWS), LoadListener.SILENT)));
            Store store = application.store();
            List<String> depots =
                    made.depots().stream().map(depot -> depot.depot()).toList();
            figures.put(
                    "snapshots",
                    cpu(() -> depots.forEach(
                            depot -> assertThat(store.findSnapshot(depot)).isPresent())));
            List<Planned> plans = new ArrayList<>();
            long statements = store.statements();
            figures.put(
                    "plans",
                    cpu(() -> depots.forEach(depot -> plans.add(application
                            .planning()
                            .planAndKeep("growth " + depot, NOW, DemoFleet.TODAY, Policy.standard(), depot)))));
            figures.put("statements a depot's plan", (store.statements() - statements) / (double) depots.size());
            figures.put("sheets", cpu(() -> {
                for (Planned planned : plans) {
                    new UpcomingWorkbook(planned.fleet(), planned.plan()).write(OutputStream.nullOutputStream());
                }
            }));
        }
        return figures;
    }

    private static FleetSnapshot made(int trucks) {
        FleetSpec spec = DemoFleet.ofSize(trucks, 3);
        return new FleetGenerator(new FleetSpec(
                        spec.catalogue(),
                        spec.seed(),
                        trucks,
                        spec.today(),
                        spec.historyDays(),
                        READING_EVERY_DAYS,
                        spec.replacedMeterShare()))
                .generate()
                .snapshot();
    }

    private static void print(Map<Integer, Map<String, Double>> all) {
        List<Integer> sizes = List.copyOf(all.keySet());
        StringBuilder table = new StringBuilder("| what, s of CPU |");
        sizes.forEach(size -> table.append(String.format(Locale.ROOT, " %,d trucks |", size)));
        table.append(" growth exponent |\n|---|")
                .append("---|".repeat(sizes.size() + 1))
                .append('\n');
        for (String what : all.get(sizes.get(0)).keySet()) {
            table.append("| ").append(what).append(" |");
            sizes.forEach(size -> table.append(
                    String.format(Locale.ROOT, " %.1f |", all.get(size).get(what))));
            int first = sizes.get(0);
            int last = sizes.get(sizes.size() - 1);
            double slope =
                    Math.log(all.get(last).get(what) / all.get(first).get(what)) / Math.log(last / (double) first);
            table.append(String.format(Locale.ROOT, " %.2f |%n", slope));
        }
        System.out.printf("%sload average %.1f%n", table, SYSTEM.getSystemLoadAverage());
    }
}
