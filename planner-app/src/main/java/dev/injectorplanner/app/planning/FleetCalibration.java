package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.calibrate.Calibration;
import dev.injectorplanner.core.replay.calibrate.CalibrationRequest;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.replay.own.OwnFleet;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Chooses the planning figures for the loaded fleet; of a large one for its largest depot, with lives learned from all. */
public final class FleetCalibration {
    private static final int WHOLE_UP_TO = 1_000;
    private static final SearchLimits LIMITS = new SearchLimits(1, 5e-4, 1, 1);

    private final Planning planning;
    private final SiteSettings settings;

    public FleetCalibration(Planning planning, SiteSettings settings) {
        this.planning = planning;
        this.settings = settings;
    }

    /**
     * How much is played.
     *
     * @param fleets fleets of the search, 2 or more
     * @param weeks weeks of planning, 26 or more
     * @param seed the same gives the same choice
     * @param threads fleets played at once
     */
    public record Extent(int fleets, int weeks, long seed, int threads) {
        /** What a night has time for. */
        public static Extent nightly(long seed) {
            return new Extent(4, 52, seed, 1);
        }
    }

    /**
     * Plays and chooses; nothing is stored.
     *
     * @param today the day that the fleet's records are read on
     * @throws InvalidValueException where no truck has both a known usage and an injector part in the table of parts
     */
    public CalibrationResult calibrate(LocalDate today, Extent extent, ReplayWatch watch) {
        Policy policy = planning.policy();
        Planned planned = planning.plan(today, policy, depot(planning.fleet(null), today));
        CalibrationRequest request = CalibrationRequest.of(
                OwnFleet.scenario(planned.fleet(), planned.plan()),
                planned.plan(),
                policy,
                settings.setFigures(),
                extent.fleets(),
                extent.weeks(),
                extent.seed(),
                extent.threads());
        return Calibration.run(request, new Planner(new ExactScheduler(LIMITS)), watch);
    }

    private static @Nullable String depot(FleetSnapshot fleet, LocalDate today) {
        if (fleet.trucks().size() <= WHOLE_UP_TO) {
            return null;
        }
        Map<String, Long> trucks = fleet.trucks().stream()
                .filter(truck -> truck.inServiceAt(today))
                .collect(Collectors.groupingBy(Truck::depot, Collectors.counting()));
        return trucks.entrySet().stream()
                .max(Map.Entry.<String, Long>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse(null);
    }
}
