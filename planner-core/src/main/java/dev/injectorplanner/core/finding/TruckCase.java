package dev.injectorplanner.core.finding;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.usage.TruckUsage;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One truck held against the rules: what the rules may ask, and the findings so far. */
final class TruckCase {
    private static final double LONGEST_WAIT_DAYS = 36_500;

    final Truck truck;
    final FleetIndex index;
    final TruckUsage usage;
    final LocalDate today;
    final LocalDate until;
    private final RuleBook rules;
    private final Depot depot;
    private final List<DueFinding> findings = new ArrayList<>();

    /** @param until last day of the horizon, or the truck's last day in the fleet where that is earlier */
    TruckCase(Truck truck, FleetIndex index, RuleBook rules, TruckUsage usage, LocalDate today, LocalDate until) {
        this.truck = truck;
        this.index = index;
        this.rules = rules;
        this.usage = usage;
        this.today = today;
        this.until = until;
        this.depot = index.depot(truck.depot());
    }

    Optional<DueRule> rule(RuleKind kind) {
        return rules.find(truck.family(), kind);
    }

    /** The day at the truck's depot. */
    LocalDate dayOf(Instant moment) {
        return moment.atZone(depot.timeZone()).toLocalDate();
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

    /** Notes a finding where its day lies within the horizon. */
    void due(
            @Nullable Integer cylinder,
            FindingKind kind,
            @Nullable String task,
            Action action,
            String evidence,
            String limit,
            String limitSource,
            LocalDate by) {
        if (!by.isAfter(until)) {
            findings.add(new DueFinding(
                    truck.truck(), truck.depot(), cylinder, kind, task, action, evidence, limit, limitSource, by));
        }
    }

    List<DueFinding> findings() {
        return findings;
    }
}
