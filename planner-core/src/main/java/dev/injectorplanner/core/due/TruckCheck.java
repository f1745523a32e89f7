package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.AnsweredFaults;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.TruckUsage;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One truck checked against the rules: what the rules may ask, and the due items so far. */
final class TruckCheck {
    private static final double LONGEST_WAIT_DAYS = 36_500;

    final Truck truck;
    final FleetIndex index;
    final TruckUsage usage;
    final LocalDate today;
    final LocalDate until;
    /** Tests with their day at the depot, by cylinder, oldest first. */
    final List<Dated<CylinderTest>> tests;

    /** Faults with their day at the depot, oldest first; those that a repair has answered too, since counts go on from them. */
    final List<Dated<Fault>> faults;

    private final AnsweredFaults answered;

    private final RuleBook rules;
    private final @Nullable FleetRisk risk;
    private final List<DueItem> dueItems = new ArrayList<>();

    /** @param until last day of the horizon, or the truck's last day in the fleet where that is earlier */
    TruckCheck(
            Truck truck,
            FleetIndex index,
            RuleBook rules,
            TruckUsage usage,
            LocalDate today,
            LocalDate until,
            @Nullable FleetRisk risk) {
        this.truck = truck;
        this.index = index;
        this.rules = rules;
        this.usage = usage;
        this.today = today;
        this.until = until;
        this.risk = risk;
        ZoneId zone = index.depot(truck.depot()).timeZone();
        tests = dated(index.testsOf(truck.truck()), CylinderTest::testedAt, zone);
        answered = new AnsweredFaults(index.repairsOf(truck.truck()));
        faults = index.faultsOf(truck.truck()).stream()
                .map(fault -> new Dated<>(
                        fault,
                        fault.seenAt().atZone(zone).toLocalDate(),
                        fault.until().atZone(zone).toLocalDate()))
                .toList();
    }

    /** Whether a recorded repair has answered a fault: it counts against the injector no more. */
    boolean isAnswered(Dated<Fault> fault) {
        return answered.covers(fault.row(), fault.lastDay());
    }

    Optional<DueRule> rule(RuleKind kind) {
        return rules.find(truck.family(), kind);
    }

    /** A row with its day by the clock of the truck's depot, and the last day of what lasts longer. */
    record Dated<R>(R row, LocalDate day, LocalDate lastDay) {}

    private static <R> List<Dated<R>> dated(List<R> rows, Function<R, Instant> moment, ZoneId zone) {
        return rows.stream()
                .map(row -> {
                    LocalDate day = moment.apply(row).atZone(zone).toLocalDate();
                    return new Dated<>(row, day, day);
                })
                .toList();
    }

    /** Whether a day lies within the window that ends today. */
    boolean within(LocalDate day, int windowDays) {
        return !day.isAfter(today) && day.isAfter(today.minusDays(windowDays));
    }

    /**
     * The day on which something that stands at {@code now} and grows by {@code perWeek} reaches a limit; in the past
     * where it is beyond it; null where it never will.
     */
    @Nullable
    LocalDate dayAt(double limit, double now, double perWeek) {
        if (perWeek <= 0) {
            return now >= limit ? today : null;
        }
        double days = Math.ceil((limit - now) / perWeek * 7);
        return Math.abs(days) > LONGEST_WAIT_DAYS ? (days < 0 ? today : null) : today.plusDays((long) days);
    }

    /** Whether a day lies within the horizon; asked first where telling the evidence takes time. */
    boolean inHorizon(LocalDate day) {
        return !day.isAfter(until);
    }

    /** Notes a due item where its day lies within the horizon. */
    void due(
            @Nullable Integer cylinder,
            DueKind kind,
            @Nullable String task,
            DueAction action,
            String evidence,
            String limit,
            String limitSource,
            LocalDate by) {
        if (inHorizon(by)) {
            Double chance12 = chance12(cylinder);
            dueItems.add(new DueItem(
                    truck.truck(),
                    truck.depot(),
                    cylinder,
                    kind,
                    task,
                    action,
                    evidence + chance(chance12),
                    limit,
                    limitSource,
                    by,
                    null,
                    chance12));
        }
    }

    /** Notes a safety fault of the whole truck, whatever its day. */
    void mustNotWait(String faultCode, String evidence, String limit, String limitSource, LocalDate by) {
        dueItems.add(new DueItem(
                truck.truck(),
                truck.depot(),
                null,
                DueKind.SAFETY,
                null,
                DueAction.INSPECT,
                evidence,
                limit,
                limitSource,
                by,
                faultCode));
    }

    /** The injector's chance of failing within 12 weeks, 0 to 1; null where it is unknown. */
    private @Nullable Double chance12(@Nullable Integer cylinder) {
        return cylinder == null || risk == null
                ? null
                : risk.find(truck.truck(), cylinder).map(InjectorRisk::chance12).orElse(null);
    }

    /** In words to follow the evidence. */
    private static String chance(@Nullable Double chance12) {
        return chance12 == null ? "" : "; " + Figures.percent(chance12) + " chance of failing within 12 weeks";
    }

    List<DueItem> dueItems() {
        return dueItems;
    }
}
