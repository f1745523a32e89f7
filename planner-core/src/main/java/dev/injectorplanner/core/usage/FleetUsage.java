package dev.injectorplanner.core.usage;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Usage of every truck in service, and the ages of its injectors. */
public final class FleetUsage {
    private final FleetIndex index;
    private final LocalDate today;
    private final Map<String, TruckUsage> trucks = new LinkedHashMap<>();
    private final Map<String, TruckUsage> gone = new LinkedHashMap<>();

    /**
     * @param windowDays readings of that many days back tell the usage
     * @param today readings after this day, by the clock of the truck's depot, are left alone
     */
    public FleetUsage(FleetIndex index, int windowDays, LocalDate today) {
        this.index = index;
        this.today = today;
        for (Truck truck : index.fleet().trucks()) {
            Map<String, TruckUsage> group = truck.inServiceAt(today) ? trucks : gone;
            group.put(truck.truck(), usageOf(truck, windowDays));
        }
    }

    private TruckUsage usageOf(Truck truck, int windowDays) {
        Instant until = today.plusDays(1)
                .atStartOfDay(index.depot(truck.depot()).timeZone())
                .toInstant();
        return new TruckUsage(
                truck.truck(),
                usageOf(Meter.ODOMETER, truck, until, windowDays),
                usageOf(Meter.ENGINE_HOURS, truck, until, windowDays));
    }

    private MeterUsage usageOf(Meter meter, Truck truck, Instant until, int windowDays) {
        MeterTrack track = new MeterTrackBuilder(meter, index.readingsOf(truck.truck()), until).build();
        return UsageEstimate.of(track, windowDays, today);
    }

    /** @throws IllegalArgumentException where the truck is not in service */
    public TruckUsage of(String truck) {
        TruckUsage usage = trucks.get(truck);
        if (usage == null) {
            throw new IllegalArgumentException("truck \"" + truck + "\" is not in service on " + today);
        }
        return usage;
    }

    /** Usage of a truck of the fleet, in service or gone: what its injectors lived through counts either way. */
    public Optional<TruckUsage> find(String truck) {
        return Optional.ofNullable(trucks.getOrDefault(truck, gone.get(truck)));
    }

    /** Every injector in an engine today, by truck and cylinder. */
    public List<InjectorAge> injectorAges() {
        List<InjectorAge> ages = new ArrayList<>();
        for (TruckUsage usage : trucks.values()) {
            for (FittedInjector injector : index.injectorsOf(usage.truck())) {
                if (injector.fittedAt(today)) {
                    ages.add(ageOf(injector, usage));
                }
            }
        }
        return ages;
    }

    private InjectorAge ageOf(FittedInjector injector, TruckUsage usage) {
        if (!injector.fittingKnown()) {
            return unknownAge(injector, usage);
        }
        LocalDate fittedOn = injector.fittedOn();
        return new InjectorAge(
                injector.truck(),
                injector.cylinder(),
                injector.part(),
                injector.origin(),
                injector.serial(),
                fittedOn,
                (int) ChronoUnit.MONTHS.between(fittedOn, today),
                usage.odometer().since(fittedOn, injector.odometerKm(), today),
                usage.engineHours().since(fittedOn, injector.engineHours(), today),
                usage.odometer().perWeek(),
                usage.engineHours().perWeek(),
                false,
                null);
    }

    private InjectorAge unknownAge(FittedInjector injector, TruckUsage usage) {
        LocalDate from = recordsFrom(usage.truck());
        LocalDate since = from == null || from.isAfter(today) ? today : from;
        UnknownAge km = usage.odometer().unknownAge(since, today, UnknownAge.USUAL_SCALE_KM);
        UnknownAge hours = usage.engineHours().unknownAge(since, today, UnknownAge.USUAL_SCALE_HOURS);
        return new InjectorAge(
                injector.truck(),
                injector.cylinder(),
                injector.part(),
                injector.origin(),
                injector.serial(),
                since,
                (int) ChronoUnit.MONTHS.between(since, today),
                km == null ? null : Double.valueOf(km.expected()),
                hours == null ? null : Double.valueOf(hours.expected()),
                usage.odometer().perWeek(),
                usage.engineHours().perWeek(),
                true,
                km == null ? null : Double.valueOf(km.least()));
    }

    /**
     * The first day of a truck's records: of its first readings, or that which the truck or its depot names where that is
     * later; null without readings.
     */
    public @Nullable LocalDate recordsFrom(String truck) {
        TruckUsage meters = find(truck).orElse(null);
        if (meters == null) {
            return null;
        }
        LocalDate km = meters.odometer().track().firstDay();
        LocalDate hours = meters.engineHours().track().firstDay();
        LocalDate first = km == null ? hours : hours == null || km.isAfter(hours) ? km : hours;
        LocalDate named = index.recordsSince(truck);
        return first == null || named == null || first.isAfter(named) ? first : named;
    }

    /** Day of a truck's last good reading of either meter; null without one. */
    public @Nullable LocalDate lastReading(String truck) {
        TruckUsage meters = find(truck).orElse(null);
        if (meters == null) {
            return null;
        }
        LocalDate km = meters.odometer().track().lastDay();
        LocalDate hours = meters.engineHours().track().lastDay();
        return km == null ? hours : hours == null || km.isAfter(hours) ? km : hours;
    }

    /** Readings left out of the usage, by truck and time. */
    public List<MeterFlag> flags() {
        return trucks.values().stream()
                .flatMap(usage -> Stream.concat(
                        usage.odometer().track().flags().stream(), usage.engineHours().track().flags().stream()))
                .toList();
    }

    /** Fitted injectors whose odometer noted at fitting is above today's and is not believed: truck and cylinder in words. */
    public List<String> disbelievedOdometers() {
        List<String> names = new ArrayList<>();
        for (TruckUsage usage : trucks.values()) {
            for (FittedInjector injector : index.injectorsOf(usage.truck())) {
                Double noted = injector.odometerKm();
                if (injector.fittedAt(today)
                        && noted != null
                        && usage.odometer().disbelieves(injector.fittedOn(), noted, today)) {
                    names.add("truck " + usage.truck() + " cylinder " + injector.cylinder());
                }
            }
        }
        return names;
    }

    /** Trucks in service whose km a week no readings tell, in order. */
    public List<String> trucksWithoutUsage() {
        return trucks.values().stream()
                .filter(usage -> !usage.odometer().known())
                .map(TruckUsage::truck)
                .toList();
    }
}
