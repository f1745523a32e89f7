package dev.injectorplanner.app.intake;

import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.imports.j1939.SpnLayout;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.vehicle.LogNameRule;
import dev.injectorplanner.imports.vehicle.LogRouting;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which truck a vehicle log belongs to: what table log_sources says goes first, then the file name by the site's rule, then the
 * VIN in the log. Name and VIN that disagree are refused: a fault on the wrong truck is worse than none.
 */
final class LogOwners {
    private final Path file;
    private final String name;
    private final List<LogSource> rows;
    private final Collection<Truck> trucks;
    private final @Nullable String claimed;
    private final List<String> remarks = new ArrayList<>();
    private @Nullable String whole;

    private LogOwners(Path file, Collection<LogSource> all, Collection<Truck> trucks, LogClaim claim) {
        this.file = file;
        this.name = FileRefusedException.nameOf(file);
        this.trucks = claim.depot() == null
                ? trucks
                : trucks.stream()
                        .filter(truck -> truck.depot().equals(claim.depot()))
                        .toList();
        this.claimed = claim.truck();
        this.rows = all.stream()
                .filter(row -> row.isOf(name) && (row.truck() == null || isKnown(row.truck())))
                .toList();
    }

    /**
     * Finds the owners.
     *
     * @param vins VIN by source address, as the log has them
     * @throws FileRefusedException where nothing tells the truck, or what tells it disagrees
     */
    static LogOwners of(
            Path file,
            Map<Integer, String> vins,
            Collection<LogSource> all,
            Collection<Truck> trucks,
            LogNameRule rule,
            LogClaim claim) {
        LogOwners owners = new LogOwners(file, all, trucks, claim);
        owners.whole = owners.find(vins, rule);
        return owners;
    }

    private @Nullable String find(Map<Integer, String> vins, LogNameRule rule) {
        Optional<Truck> byVin = byVin(vins);
        String stated = claimed == null ? truckOf(null) : claimed;
        if (stated != null) {
            requireKnown(stated);
            if (byVin.isPresent() && !byVin.get().truck().equals(stated)) {
                remarks.add("the VIN in it is that of truck " + byVin.get().truck() + ", but "
                        + (claimed == null ? "table log_sources" : "its sender") + " gives it to " + stated);
            }
            return stated;
        }
        List<Truck> byName = rule.trucks(name, trucks);
        if (byName.size() > 1) {
            throw refused("may be a log of " + names(byName));
        }
        if (byName.size() == 1 && byVin.isPresent() && !byName.get(0).equals(byVin.get())) {
            throw refused("is a log of truck " + byName.get(0).truck() + " by its name, but of truck "
                    + byVin.get().truck() + " by the VIN in it");
        }
        Truck found = byName.isEmpty() ? byVin.orElse(null) : byName.get(0);
        if (found != null) {
            remarks.add("truck " + found.truck() + " by " + (byName.isEmpty() ? "the VIN in it" : "its file name"));
            return found.truck();
        }
        if (rows.stream().anyMatch(row -> row.truck() != null)) {
            return null; // only the sources that the table names
        }
        String seen = vins.isEmpty() ? "no VIN in it" : "VIN " + String.join(", ", vins.values()) + " is not in trucks";
        throw refused("cannot be given to a truck: its name does not follow \"" + rule.pattern() + "\", and " + seen);
    }

    private boolean isKnown(String truck) {
        return trucks.stream().anyMatch(each -> each.truck().equals(truck));
    }

    /** A truck of another depot is answered like one that is not there: who may not see it learns nothing. */
    private void requireKnown(String truck) {
        if (!isKnown(truck)) {
            throw new FileRefusedException(
                    file,
                    "is given to truck " + truck + ", which is not known",
                    "load the truck first or correct its name");
        }
    }

    private FileRefusedException refused(String reason) {
        return new FileRefusedException(
                file, reason, "name it after its truck, such as T009_2026-03-02.log, or add it to table log_sources");
    }

    private static String names(List<Truck> trucks) {
        return String.join(" or ", trucks.stream().map(Truck::truck).sorted().toList());
    }

    /** The truck of the VINs in the log, where they name one truck of the fleet and no other. */
    private Optional<Truck> byVin(Map<Integer, String> vins) {
        List<String> sent =
                vins.values().stream().map(vin -> vin.toUpperCase(Locale.ROOT)).toList();
        List<Truck> found =
                trucks.stream().filter(truck -> sent.contains(truck.vinText())).toList();
        if (found.size() > 1) {
            throw refused("holds VINs of several trucks, " + names(found));
        }
        return found.stream().findFirst();
    }

    /** What the table says of one source, or of the whole log; the longest pattern counts. */
    private @Nullable String truckOf(@Nullable Integer source) {
        return rows.stream()
                .filter(row -> row.truck() != null && Objects.equals(row.sourceAddress(), source))
                .max(Comparator.comparingInt(row -> row.log().length()))
                .map(LogSource::truck)
                .orElse(null);
    }

    /** A row of the source goes before one of all sources, then the longest pattern. */
    private SpnLayout layoutOf(int source) {
        LogSource best = rows.stream()
                .filter(row -> row.spnLayout() != null)
                .filter(row -> row.sourceAddress() == null || row.sourceAddress() == source)
                .max(Comparator.<LogSource, Boolean>comparing(row -> row.sourceAddress() != null)
                        .thenComparingInt(row -> row.log().length()))
                .orElse(null);
        Integer layout = best == null ? null : best.spnLayout();
        return layout == null ? SpnLayout.VERSION_4 : SpnLayout.of(layout);
    }

    LogRouting routing() {
        String[] owners = new String[256];
        SpnLayout[] layouts = new SpnLayout[256];
        for (int source = 0; source < owners.length; source++) {
            String own = truckOf(source);
            owners[source] = own == null ? whole : own;
            layouts[source] = layoutOf(source);
        }
        return new LogRouting(source -> owners[source & 0xFF], source -> layouts[source & 0xFF]);
    }

    /** A truck whose depot's clock the log goes by where its times have no offset. */
    @Nullable
    String anyTruck() {
        return whole != null
                ? whole
                : rows.stream()
                        .map(LogSource::truck)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
    }

    List<String> remarks() {
        return remarks;
    }
}
