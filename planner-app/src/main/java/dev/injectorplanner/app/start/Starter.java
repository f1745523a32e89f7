package dev.injectorplanner.app.start;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Truck;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Fills an empty store with examples, so that trucks, odometers and the last replacements are enough for a first plan. */
public final class Starter {
    private static final int TRUCKS_AT_ONCE = 500;

    private static final List<String> FILES =
            List.of("parts.csv", "engine_families.csv", "access.csv", "job_parts.csv", "intervals.csv");

    private final Store store;
    private final Intake intake;

    public Starter(Store store, Intake intake) {
        this.store = store;
        this.intake = intake;
    }

    /** Stores the rows of kits; rows of the same names that a person has corrected are overwritten only if {@code again}. */
    public List<FileReport> kits(List<StarterKit> kits, boolean again) {
        Set<String> known = new HashSet<>();
        try (StoreWriter writer = store.writer()) {
            writer.all(EngineFamily.class).forEach(family -> known.add(family.family()));
        }
        List<FileReport> reports = new ArrayList<>();
        for (StarterKit kit : kits) {
            if (again || !known.contains(kit.family())) {
                reports.addAll(load(kit));
            }
        }
        return reports;
    }

    private List<FileReport> load(StarterKit kit) {
        try {
            Path folder = Files.createTempDirectory("planner-kit");
            List<Path> files = new ArrayList<>();
            for (String name : FILES) {
                Path file = folder.resolve(name);
                try (InputStream in = Starter.class.getResourceAsStream("/samples/kits/" + kit.id() + "/" + name)) {
                    if (in == null) {
                        throw new IllegalStateException("the program was built without its starter kit " + kit.id());
                    }
                    Files.copy(in, file);
                }
                files.add(file);
            }
            List<FileReport> reports = intake.load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(folder);
            return reports;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot unpack the starter kit " + kit.id(), e);
        }
    }

    /** Depots with example figures; those that are stored already stay as they are. Returns how many were added. */
    public int depots(List<String> names, ZoneId zone) {
        try (StoreWriter writer = store.writer()) {
            Set<String> known =
                    writer.all(Depot.class).stream().map(Depot::depot).collect(Collectors.toSet());
            List<Depot> added = names.stream()
                    .filter(name -> !known.contains(name))
                    .map(name -> example(name, zone))
                    .toList();
            writer.merge(Depot.class, added, true);
            writer.commit();
            return added.size();
        }
    }

    private static Depot example(String name, ZoneId zone) {
        return new Depot(
                name,
                StarterKit.MARK + "figures: " + name,
                zone,
                2,
                16.0,
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                new BigDecimal("90.00"),
                new BigDecimal("135.00"),
                0.0,
                null);
    }

    /**
     * Gives each cylinder of which nothing is on record an injector from before the records began: it counts for risk by the
     * truck's meters, never for the life curve.
     *
     * @return how many were added
     */
    public int fillBeforeRecords() {
        try (StoreWriter writer = store.writer()) {
            Map<String, EngineFamily> families = writer.all(EngineFamily.class).stream()
                    .collect(Collectors.toMap(EngineFamily::family, Function.identity()));
            List<FittedInjector> added = new ArrayList<>();
            List<Truck> trucks = writer.all(Truck.class);
            Map<String, Set<Integer>> fitted = new HashMap<>();
            for (int from = 0; from < trucks.size(); from += TRUCKS_AT_ONCE) {
                List<String> some = trucks.subList(from, Math.min(trucks.size(), from + TRUCKS_AT_ONCE)).stream()
                        .map(Truck::truck)
                        .toList();
                writer.ofTrucks(FittedInjector.class, some)
                        .forEach(each -> fitted.computeIfAbsent(each.truck(), none -> new HashSet<>())
                                .add(each.cylinder()));
            }
            for (Truck truck : trucks) {
                EngineFamily family = families.get(truck.family());
                if (family != null) {
                    Set<Integer> known = fitted.getOrDefault(truck.truck(), Set.of());
                    for (int cylinder = 1; cylinder <= family.cylinders(); cylinder++) {
                        if (!known.contains(cylinder)) {
                            added.add(FittedInjector.beforeRecords(truck.truck(), cylinder, family.injectorPart()));
                        }
                    }
                }
            }
            writer.merge(FittedInjector.class, added, true);
            writer.commit();
            return added.size();
        }
    }
}
