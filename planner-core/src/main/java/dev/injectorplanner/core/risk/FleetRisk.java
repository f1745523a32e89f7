package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.Condition;
import dev.injectorplanner.core.condition.ConditionFit;
import dev.injectorplanner.core.condition.ConditionModel;
import dev.injectorplanner.core.condition.FleetSigns;
import dev.injectorplanner.core.condition.TestLimit;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.history.RemainingDelay;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.usage.MeterUsage;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a fleet's records say of the chance of failure: life models by part and origin, ratios of signs, behaviour of
 * defects, and the risk of every fitted injector whose age and usage are known.
 */
public final class FleetRisk {
    private final FleetUsage usage;
    private final LifeHistory history;
    private final FleetSigns signs;
    private final Map<String, DefectEstimate> defects;
    private final LifeBook lives;
    private final ConditionModel conditions;
    private final Map<String, String> depots = new LinkedHashMap<>();
    private final Map<String, InjectorRisk> risks = new LinkedHashMap<>();
    private final Map<String, Condition> conditionOf = new LinkedHashMap<>();
    private final boolean tested;
    private int unknown;

    private FleetRisk(
            FleetIndex index,
            FleetUsage usage,
            TestLimit limits,
            LocalDate today,
            DefectDefaults otherwise,
            @Nullable FleetLives shared) {
        this.usage = usage;
        history = new LifeHistory(index, usage, today);
        signs = new FleetSigns(index, limits);
        tested = index.fleet().cylinderTests().stream().anyMatch(test -> test.test() != TestKind.CONTRIBUTION);
        if (shared != null) {
            defects = shared.defects;
            lives = shared.lives;
            conditions = shared.conditions;
        } else {
            defects = DefectHistory.of(history, signs, parts(index), otherwise);
            RemainingDelay remaining = (part, clock) -> defectsOf(part).remaining(clock);
            lives = LifeBook.of(history, parts(index), remaining);
            conditions = ConditionFit.of(history, lives, signs, remaining, today);
        }
        for (Truck truck : index.fleet().trucks()) {
            depots.put(truck.truck(), truck.depot());
        }
    }

    private static List<String> parts(FleetIndex index) {
        return Stream.concat(
                        index.fleet().engineFamilies().stream().map(EngineFamily::injectorPart),
                        index.fleet().injectors().stream().map(FittedInjector::part))
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Learns from the fleet's history and judges every fitted injector.
     *
     * @param ages the fitted injectors, as {@link FleetUsage#injectorAges} lists them
     * @param limits holds tests against their limits
     * @param today the day the usage was made for
     * @param otherwise how defects behave where there are too few records
     * @param shared lives of a fleet that has all injector parts of this one; null to learn them here
     */
    public static FleetRisk of(
            FleetIndex index,
            FleetUsage usage,
            List<InjectorAge> ages,
            TestLimit limits,
            LocalDate today,
            DefectDefaults otherwise,
            @Nullable FleetLives shared) {
        FleetRisk risk = new FleetRisk(index, usage, limits, today, otherwise, shared);
        ages.forEach(age -> risk.judge(age, today));
        return risk;
    }

    /** What was learned here, to judge parts of the fleet by. */
    public FleetLives shared() {
        return FleetLives.of(this);
    }

    private void judge(InjectorAge age, LocalDate today) {
        PartLife model = lives.of(age.part(), age.origin());
        Double now = model.clock().of(age);
        MeterUsage meter = model.clock().of(usage.of(age.truck()));
        if (now == null || !meter.known()) {
            unknown++;
            return;
        }
        Condition condition = conditions.of(signs.of(age.truck()).on(age.cylinder(), age.fittedOn(), today));
        Forecast forecast = new Forecast(lives, model, condition, UsageAhead.of(meter));
        conditionOf.put(key(age.truck(), age.cylinder()), condition);
        double chance4 = forecast.chance(now, 4);
        double chance12 = Math.max(chance4, forecast.chance(now, 12));
        risks.put(
                key(age.truck(), age.cylinder()),
                new InjectorRisk(
                        age.truck(),
                        depots.getOrDefault(age.truck(), ""),
                        age.cylinder(),
                        age.part(),
                        age.origin(),
                        model.clock(),
                        now,
                        condition.words(),
                        condition.multiplier(),
                        condition.source(),
                        chance4,
                        chance12,
                        Math.max(chance12, forecast.chance(now, 26))));
    }

    private static String key(String truck, int cylinder) {
        return truck + "\n" + cylinder;
    }

    /** Every fitted injector whose age and usage are known, by truck and cylinder. */
    public List<InjectorRisk> risks() {
        return List.copyOf(risks.values());
    }

    /** The risk of the injector in a cylinder; empty where there is none, or its age or usage is not known. */
    public Optional<InjectorRisk> find(String truck, int cylinder) {
        return Optional.ofNullable(risks.get(key(truck, cylinder)));
    }

    /** Fitted injectors whose age or usage no meter shows. */
    public int unknown() {
        return unknown;
    }

    /** Whether the fleet has any balance or return-flow test on record. */
    public boolean tested() {
        return tested;
    }

    public LifeHistory history() {
        return history;
    }

    public LifeBook lives() {
        return lives;
    }

    public ConditionModel conditions() {
        return conditions;
    }

    public FleetSigns signs() {
        return signs;
    }

    /** One a part, by part. */
    public List<DefectEstimate> defects() {
        return List.copyOf(defects.values());
    }

    /** @throws IllegalArgumentException for a part that no family and no fitted injector has */
    public DefectEstimate defectsOf(String part) {
        DefectEstimate estimate = defects.get(part);
        if (estimate == null) {
            throw new IllegalArgumentException("no injector part \"" + part + "\" in the fleet");
        }
        return estimate;
    }

    /**
     * In how many weeks an injector's chance of failing within the 12 weeks that follow reaches a limit, at its truck's
     * usual pace and its condition of today; empty if not within {@code most} weeks.
     */
    public OptionalInt weeksUntilChance(InjectorRisk risk, double limit, int most) {
        PartLife model = lives.of(risk.part(), risk.origin());
        UsageAhead ahead = UsageAhead.of(model.clock().of(usage.of(risk.truck())));
        Condition condition = conditionOf.getOrDefault(key(risk.truck(), risk.cylinder()), conditions.of(Set.of()));
        Forecast forecast = new Forecast(lives, model, condition, ahead);
        for (int week = 0; week <= most; week++) {
            double chance = week == 0 ? risk.chance12() : forecast.chance(risk.age() + week * ahead.perWeek(), 12);
            if (chance >= limit) {
                return OptionalInt.of(week);
            }
        }
        return OptionalInt.empty();
    }
}
