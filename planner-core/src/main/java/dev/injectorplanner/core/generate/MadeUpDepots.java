package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.Transfer;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Depots in towns that do not exist. */
final class MadeUpDepots {
    private static final Set<DayOfWeek> WEEKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    private static final Set<DayOfWeek> SIX_DAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.SATURDAY);
    private static final List<String> ZONES = List.of("Europe/London", "Europe/Berlin", "Europe/Helsinki");

    private MadeUpDepots() {}

    /** The three of the demo: a large one, one that is short of hours, and a small one further east. */
    static List<Depot> three() {
        return List.of(
                depot("Aldermoor", "Aldermoor yard", ZONES.get(0), 3, 20, SIX_DAYS, 8),
                depot("Brennick", "Brennick terminal", ZONES.get(1), 2, 3, WEEKDAYS, 4),
                depot("Norrvik", "Norrvik quay", ZONES.get(2), 2, 8, WEEKDAYS, 6));
    }

    /** Vans between the first two every day; the third is a long way from both. */
    static List<Transfer> transfers() {
        return List.of(
                new Transfer("Aldermoor", "Brennick", new BigDecimal("45.00"), 1),
                new Transfer("Brennick", "Aldermoor", new BigDecimal("45.00"), 1),
                new Transfer("Aldermoor", "Norrvik", new BigDecimal("140.00"), 4),
                new Transfer("Norrvik", "Aldermoor", new BigDecimal("140.00"), 4));
    }

    static List<Depot> many(int count) {
        List<Depot> depots = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            depots.add(
                    depot(String.format(Locale.ROOT, "D%03d", i), "Depot " + i, ZONES.get(i % 3), 6, 60, WEEKDAYS, 20));
        }
        return depots;
    }

    /** Closed days. */
    static List<CapacityOverride> closed(List<Depot> depots, List<LocalDate> days) {
        return depots.stream()
                .flatMap(depot -> days.stream().map(day -> new CapacityOverride(depot.depot(), day, 0, 0)))
                .toList();
    }

    private static Depot depot(
            String depot, String name, String zone, int bays, double hours, Set<DayOfWeek> days, double overtime) {
        return new Depot(
                depot,
                name,
                ZoneId.of(zone),
                bays,
                hours,
                days,
                new BigDecimal("68.00"),
                new BigDecimal("102.00"),
                overtime);
    }
}
