package dev.injectorplanner.core.warranty;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Occurrences;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.units.Figures;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Claims still to be made: injectors found failed that came out within the months and the km of their part's warranty.
 * One that was sent, as the table of returns says, is open no more; one that was not is listed until the unit is out for
 * more than {@link #CLAIM_DAYS} days. Where the km are not known, the months decide and the claim says so.
 */
public final class WarrantyClaims {
    /** A failure is listed for this many days after the unit came out. Planner default. */
    public static final int CLAIM_DAYS = 180;

    /** Faults and tests of this many days before it came out are evidence. Planner default. */
    public static final int EVIDENCE_DAYS = 90;

    private WarrantyClaims() {}

    /** Claims on a day, the oldest removal first. */
    public static List<WarrantyClaim> of(FleetIndex index, LocalDate today) {
        List<WarrantyClaim> claims = new ArrayList<>();
        for (Truck truck : index.fleet().trucks()) {
            for (FittedInjector injector : index.injectorsOf(truck.truck())) {
                LocalDate removed = injector.removedOn();
                if (injector.found() == Found.FAILED
                        && removed != null
                        && recent(removed, today)
                        && !index.isReturned(UnitReturn.What.CLAIM, injector)) {
                    index.findPart(injector.part())
                            .filter(part -> within(injector, removed, part))
                            .map(part -> claim(index, truck, injector, removed, part))
                            .ifPresent(claims::add);
                }
            }
        }
        claims.sort(WarrantyClaim.OLDEST);
        return claims;
    }

    /** The claim of one unit with its evidence, whether it was sent or not; empty where no such unit failed. */
    public static Optional<WarrantyClaim> find(
            FleetIndex index, Truck truck, int cylinder, LocalDate fittedOn, int fitting) {
        for (FittedInjector injector : index.injectorsOf(truck.truck())) {
            LocalDate removed = injector.removedOn();
            if (injector.cylinder() == cylinder
                    && injector.fittedOn().equals(fittedOn)
                    && injector.fitting() == fitting
                    && injector.found() == Found.FAILED
                    && removed != null) {
                return index.findPart(injector.part()).map(part -> claim(index, truck, injector, removed, part));
            }
        }
        return Optional.empty();
    }

    private static boolean recent(LocalDate removed, LocalDate today) {
        return !removed.isAfter(today) && !removed.isBefore(today.minusDays(CLAIM_DAYS));
    }

    private static boolean within(FittedInjector injector, LocalDate removed, Part part) {
        Double km = km(injector);
        boolean none = part.warrantyMonths() == 0 && part.warrantyKm() == 0;
        boolean inMonths = part.warrantyMonths() == 0
                || !removed.isAfter(injector.fittedOn().plusMonths(part.warrantyMonths()));
        boolean inKm = part.warrantyKm() == 0 || (km == null ? part.warrantyMonths() > 0 : km <= part.warrantyKm());
        return !none && inMonths && inKm;
    }

    /** Km between the odometers of fitting and removal, or null where one is missing or they run backwards. */
    private static @Nullable Double km(FittedInjector injector) {
        Double from = injector.odometerKm();
        Double to = injector.removedOdometerKm();
        return from == null || to == null || to < from ? null : Double.valueOf(to - from);
    }

    private static WarrantyClaim claim(
            FleetIndex index, Truck truck, FittedInjector injector, LocalDate removed, Part part) {
        ZoneId zone = index.depot(truck.depot()).timeZone();
        List<String> faults = faults(index, injector, removed, zone);
        List<String> tests = tests(index, injector, removed, zone);
        Double km = km(injector);
        return new WarrantyClaim(
                truck.depot(),
                truck.truck(),
                truck.vinText(),
                injector.cylinder(),
                injector.part(),
                part.supplier(),
                injector.serial(),
                injector.fittedOn(),
                injector.fitting(),
                removed,
                (int) ChronoUnit.MONTHS.between(injector.fittedOn(), removed),
                km,
                part.warrantyMonths(),
                part.warrantyKm(),
                faults,
                tests,
                part.price(),
                lacking(injector, km, faults, tests));
    }

    private static List<String> lacking(
            FittedInjector injector, @Nullable Double km, List<String> faults, List<String> tests) {
        List<String> lacking = new ArrayList<>();
        if (injector.serial() == null) {
            lacking.add("serial");
        }
        if (km == null) {
            lacking.add("odometers at fitting and removal");
        }
        if (faults.isEmpty()) {
            lacking.add("fault codes");
        }
        if (tests.isEmpty()) {
            lacking.add("test values");
        }
        return lacking;
    }

    private static List<String> faults(FleetIndex index, FittedInjector injector, LocalDate removed, ZoneId zone) {
        Map<String, List<Fault>> byCode = new TreeMap<>();
        for (Fault fault : index.faultsOf(injector.truck())) {
            Integer cylinder = fault.cylinder();
            if (cylinder != null
                    && cylinder == injector.cylinder()
                    && evidence(day(fault.seenAt(), zone), injector, removed)) {
                byCode.computeIfAbsent(fault.code().text(), code -> new ArrayList<>())
                        .add(fault);
            }
        }
        return byCode.entrySet().stream()
                .map(entry -> words(entry.getKey(), entry.getValue(), zone))
                .toList();
    }

    /** Rows of one code, oldest first, in words. */
    private static String words(String code, List<Fault> rows, ZoneId zone) {
        Occurrences seen = new Occurrences();
        rows.forEach(seen::add);
        LocalDate first = day(rows.get(0).seenAt(), zone);
        LocalDate last = day(rows.get(rows.size() - 1).until(), zone);
        return new FaultCode(code).inWords() + ", " + Figures.count(seen.total(), "time", "times")
                + (first.equals(last) ? " on " + first : " from " + first + " to " + last);
    }

    private static List<String> tests(FleetIndex index, FittedInjector injector, LocalDate removed, ZoneId zone) {
        List<String> words = new ArrayList<>();
        for (CylinderTest test : index.testsOf(injector.truck())) {
            LocalDate day = day(test.testedAt(), zone);
            if (test.cylinder() == injector.cylinder() && evidence(day, injector, removed)) {
                String state = test.engineState().isEmpty() ? "" : ", " + test.engineState();
                words.add(test.test().name().toLowerCase(Locale.ROOT).replace('_', ' ') + " "
                        + Require.plain(test.value()) + " " + test.unit() + " on " + day + state);
            }
        }
        return words;
    }

    private static boolean evidence(LocalDate day, FittedInjector injector, LocalDate removed) {
        return !day.isAfter(removed)
                && !day.isBefore(injector.fittedOn())
                && !day.isBefore(removed.minusDays(EVIDENCE_DAYS));
    }

    private static LocalDate day(Instant moment, ZoneId zone) {
        return moment.atZone(zone).toLocalDate();
    }
}
