package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.ShopRecords;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The scenario of the demo: Lowmark Haulage, an invented firm with three depots, some sixty trucks and three engine
 * families, as it stands on Monday 2 March 2026 after three years of records. Every run gives the same figures.
 */
public final class DemoFleet {
    /** The day of the demo, a Monday. */
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    /** Trucks of the demo. */
    public static final int TRUCKS = 60;

    private static final long SEED = 17L;
    private static final int HISTORY_DAYS = 3 * 365;
    private static final List<LocalDate> CLOSED = List.of(
            LocalDate.of(2026, 4, 3), LocalDate.of(2026, 4, 6), LocalDate.of(2026, 5, 1), LocalDate.of(2026, 5, 25));

    private static final int LEFT_AT_ALDERMOOR = 5;
    private static final String HIRED = "T026";
    private static final String WITHOUT_PRESSURE = "T028";
    private static final String LEAKING = "T022";

    private DemoFleet() {}

    /** The demo's fleet with its truth. */
    public static GeneratedFleet make() {
        FleetSpec spec = new FleetSpec(catalogue(MadeUpDepots.three()), SEED, TRUCKS, TODAY, HISTORY_DAYS, 7, 0.04);
        GeneratedFleet made = new FleetGenerator(spec).generate();
        return new GeneratedFleet(withExceptions(made.snapshot()), made.truth());
    }

    /**
     * A fleet of any size from the same parts and engines: depots of some 250 trucks, readings every other day, so that
     * 10,000 trucks have about 5 million.
     *
     * @param trucks how many, 1 or more
     * @param seed the same seed gives the same fleet
     */
    public static FleetSpec ofSize(int trucks, long seed) {
        List<Depot> depots = MadeUpDepots.many(Math.max(1, (trucks + 125) / 250));
        return new FleetSpec(catalogue(depots), seed, trucks, TODAY, HISTORY_DAYS, 1.7, 0.02);
    }

    private static Catalogue catalogue(List<Depot> depots) {
        return new Catalogue(
                depots,
                MadeUpDepots.closed(depots, CLOSED),
                MadeUpEngines.families(),
                MadeUpEngines.access(),
                MadeUpParts.parts(),
                MadeUpParts.jobParts(),
                MadeUpEngines.intervals(),
                MadeUpEngines.rules(),
                MadeUpEngines.uses(),
                MadeUpParts.lives());
    }

    /**
     * One truck is on hire over the whole summer and cannot be spared, whatever is due; one lost rail pressure in the last
     * days, another leaks fuel, and neither must wait (SPN 157 FMI 18 in SAE J1939-71 and -73; P0093 in SAE J2012).
     */
    private static FleetSnapshot withExceptions(FleetSnapshot fleet) {
        List<Fault> faults = new ArrayList<>(fleet.faults());
        faults.add(seen(WITHOUT_PRESSURE, 3, "SPN 157 FMI 18"));
        faults.add(seen(WITHOUT_PRESSURE, 1, "SPN 157 FMI 18"));
        faults.add(seen(LEAKING, 2, "P0093"));
        List<AwayWindow> away = new ArrayList<>(fleet.away());
        away.removeIf(window -> window.truck().equals(HIRED));
        away.add(new AwayWindow(HIRED, TODAY.minusDays(12), LocalDate.of(2026, 9, 30), "on hire abroad, no spare"));
        return new FleetSnapshot(
                fleet.depots(),
                fleet.capacity(),
                fleet.engineFamilies(),
                fleet.access(),
                fleet.dutyGroups(),
                fleet.trucks(),
                fleet.injectors(),
                fleet.readings(),
                faults,
                fleet.cylinderTests(),
                fleet.parts(),
                fleet.jobParts(),
                stock(fleet),
                fleet.purchaseLines(),
                away,
                fleet.intervals(),
                fleet.rules(),
                new ShopRecords(
                        shifts(fleet.depots()),
                        repairs(),
                        MadeUpDepots.transfers(),
                        List.of(),
                        List.of(),
                        List.of(),
                        returns(fleet)));
    }

    /** The shelf that others are helped from is short of the six-cylinder's injectors itself. */
    private static List<StockLine> stock(FleetSnapshot fleet) {
        return fleet.stock().stream()
                .map(line -> line.depot().equals("Aldermoor") && line.part().equals("KL-6110")
                        ? new StockLine(line.depot(), line.part(), LEFT_AT_ALDERMOOR)
                        : line)
                .toList();
    }

    private static Fault seen(String truck, int daysAgo, String code) {
        Instant at = TODAY.minusDays(daysAgo).atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC);
        return new Fault(truck, at, new FaultCode(code), null, 1, null);
    }

    /** Cores of last autumn: one note a month, credited in full. */
    private static List<UnitReturn> returns(FleetSnapshot fleet) {
        Map<String, Part> parts = fleet.parts().stream().collect(Collectors.toMap(Part::part, part -> part));
        Map<String, LocalDate> inService =
                fleet.trucks().stream().collect(Collectors.toMap(Truck::truck, Truck::inServiceOn));
        List<UnitReturn> returns = new ArrayList<>();
        for (FittedInjector injector : fleet.injectors()) {
            Part part = parts.get(injector.part());
            LocalDate day = injector.fittedOn();
            boolean bought = injector.origin() == Origin.REMAN
                    && day.isAfter(inService.getOrDefault(injector.truck(), day))
                    && day.isAfter(TODAY.minusDays(150));
            if (bought
                    && part != null
                    && part.coreDeposit().signum() > 0
                    && day.isBefore(TODAY.minusDays(part.coreDays() + 30L))) {
                LocalDate shipped = YearMonth.from(day.plusDays(20)).atEndOfMonth();
                returns.add(new UnitReturn(
                                UnitReturn.What.CORE,
                                injector.truck(),
                                injector.cylinder(),
                                day,
                                "RN-" + YearMonth.from(shipped),
                                shipped,
                                "P. Aune",
                                part.coreDeposit(),
                                null,
                                null,
                                null,
                                "")
                        .settled(shipped.plusDays(19), "P. Aune", part.coreDeposit(), ""));
            }
        }
        return returns;
    }

    /** A repair of the fuel system, and one that is none. */
    private static List<Repair> repairs() {
        LocalDate filter = TODAY.minusDays(41);
        LocalDate brakes = TODAY.minusDays(12);
        return List.of(
                new Repair(
                        "T012",
                        filter,
                        null,
                        "fuel filter head replaced",
                        1.8,
                        "no leak after the test drive",
                        "M. Ott"),
                new Repair("T044", brakes, null, "brake pads, second axle", 2.4, "", "M. Ott"));
    }

    /** 7:00 to 15:30 with half an hour at noon, on each depot's working days. */
    private static List<DepotShift> shifts(List<Depot> depots) {
        List<DepotShift> shifts = new ArrayList<>();
        for (Depot depot : depots) {
            for (DayOfWeek day : depot.workDays()) {
                shifts.add(new DepotShift(
                        depot.depot(),
                        day,
                        LocalTime.of(7, 0),
                        LocalTime.of(15, 30),
                        LocalTime.NOON,
                        LocalTime.of(12, 30)));
            }
        }
        return shifts;
    }
}
