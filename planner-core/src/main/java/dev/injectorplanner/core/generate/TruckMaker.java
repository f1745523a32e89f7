package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import dev.injectorplanner.core.truth.Draws;
import dev.injectorplanner.core.truth.TruckClock;
import dev.injectorplanner.core.truth.UsagePath;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Makes up one truck: its row, its story, and what the tables tell of it. */
final class TruckMaker {
    private static final double OLDEST_DAYS = 7.5 * 365.25;
    private static final double YOUNGEST_DAYS = 200;
    private static final double READING_MISSED = 0.08;
    private static final double METER_NOT_NOTED = 0.06;
    private static final double AWAY_SHARE = 0.12;
    private static final List<String> AWAY_REASONS =
            List.of("harvest contract", "abnormal load booked", "on hire to a customer", "driver training");

    private final FleetSpec spec;
    private final Depot depot;
    private final EngineUse use;
    private final EngineFamily family;
    private final String name;
    private final int number;
    private final Draws draws;

    TruckMaker(FleetSpec spec, Depot depot, EngineUse use, String name, int number) {
        this.spec = spec;
        this.depot = depot;
        this.use = use;
        this.family = spec.catalogue().family(use.family());
        this.name = name;
        this.number = number;
        this.draws = Draws.of(spec.seed(), number);
    }

    TruckHistory make() {
        LocalDate start = spec.today().minusDays((long) draws.between(YOUNGEST_DAYS, OLDEST_DAYS));
        LocalDate from = start.isAfter(spec.historyStart()) ? start : spec.historyStart();
        UsagePath path = new UsagePath(draws, use.kmPerWeek(), use.kmPerHour(), start, spec.today());
        boolean replaced = draws.chance(spec.replacedMeterShare());
        LocalDate replacedOn = replaced
                ? from.plusDays((long) (draws.between(0.3, 0.8) * (spec.today().toEpochDay() - from.toEpochDay())))
                : LocalDate.MAX;
        TruckClock clock = new TruckClock(name, depot.timeZone(), path, replacedOn);
        List<Unit> units = new EngineStory(draws, spec.catalogue(), use, path, start, spec.today()).tell();
        Symptoms symptoms = new Symptoms(draws, use, path, clock, units, from, spec.today());
        return new TruckHistory(
                truck(start),
                units.stream()
                        .filter(unit -> unit.removedOn.isAfter(spec.historyStart()))
                        .map(unit -> injector(unit, clock))
                        .toList(),
                readings(clock, from),
                symptoms.faults(),
                symptoms.tests(),
                away(),
                units.stream().map(unit -> unit.truth(name)).toList());
    }

    private Truck truck(LocalDate start) {
        LocalDate warranty = start.plusYears(2);
        return new Truck(
                name,
                new Vin(String.format(Locale.ROOT, "ZZ9%02dTRK0%08d", family.cylinders(), number)),
                depot.depot(),
                family.family(),
                FleetGenerator.groupName(depot, use),
                start,
                null,
                warranty.isBefore(spec.historyStart()) ? null : warranty);
    }

    private FittedInjector injector(Unit unit, TruckClock clock) {
        boolean out = unit.end != InjectorTruth.End.RUNNING;
        boolean told = !unit.factory || draws.chance(0.7);
        String serial = serial();
        String code = code();
        boolean noted = !draws.chance(METER_NOT_NOTED);
        return new FittedInjector(
                name,
                unit.cylinder,
                unit.part,
                told ? serial : null,
                told ? code : null,
                unit.origin,
                unit.fittedOn,
                noted ? clock.odometerOn(unit.fittedOn) : null,
                noted ? clock.hoursOn(unit.fittedOn) : null,
                out ? unit.removedOn : null,
                out ? removedAt(unit, clock.odometerOn(unit.removedOn)) : null,
                out ? removedAt(unit, clock.hoursOn(unit.removedOn)) : null,
                out ? found(unit) : null);
    }

    private @Nullable Double removedAt(Unit unit, double meter) {
        return unit.end == InjectorTruth.End.ALONGSIDE && draws.chance(METER_NOT_NOTED) ? null : meter;
    }

    private Found found(Unit unit) {
        return switch (unit.end) {
            case FAILED -> Found.FAILED;
            case FOUND -> Found.WORN;
            case PLANNED, ALONGSIDE, RUNNING ->
                unit.endKm > unit.defectKm ? Found.WORN : draws.chance(0.1) ? Found.UNKNOWN : Found.HEALTHY;
        };
    }

    private String serial() {
        return "S" + family.cylinders() + draws.text("0123456789", 9);
    }

    /** Codes follow the form of the family's part: letters and digits, as many as it asks for. */
    private String code() {
        return draws.text(
                "ABCDEFGHJKLMNPRSTUVWXYZ23456789",
                CodeForm.lengthOf(spec.catalogue().part(family.injectorPart())));
    }

    private List<Reading> readings(TruckClock clock, LocalDate from) {
        List<Reading> readings = new ArrayList<>();
        double day = draws.between(0, spec.readingEveryDays());
        boolean toldOfReplacement = from.isAfter(clock.replacedOn());
        LocalDate last = from.minusDays(1);
        while (true) {
            LocalDate date = from.plusDays((long) day);
            if (!date.isBefore(spec.today())) {
                return readings;
            }
            day += Math.max(1, spec.readingEveryDays() * draws.between(0.7, 1.3));
            if (draws.chance(READING_MISSED) || !date.isAfter(last)) {
                continue;
            }
            last = date;
            boolean first = !toldOfReplacement && !date.isBefore(clock.replacedOn());
            toldOfReplacement |= first;
            readings.add(new Reading(
                    name,
                    clock.moment(date, draws.between(11.5 * 3_600, 12.5 * 3_600)),
                    clock.odometerOn(date),
                    draws.chance(0.04) ? null : Double.valueOf(clock.hoursOn(date)),
                    first));
        }
    }

    private List<AwayWindow> away() {
        if (!draws.chance(AWAY_SHARE)) {
            return List.of();
        }
        LocalDate start = spec.today().plusDays(draws.whole(-7, 90));
        return List.of(new AwayWindow(name, start, start.plusDays(draws.whole(4, 20)), draws.pick(AWAY_REASONS)));
    }
}
