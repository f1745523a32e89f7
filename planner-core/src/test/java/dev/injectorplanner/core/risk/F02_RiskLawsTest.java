package dev.injectorplanner.core.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.condition.Condition;
import dev.injectorplanner.core.condition.ConditionModel;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class F02_RiskLawsTest {
    private static final Forecasted DEMO = Forecasted.on(DemoFleet.make().snapshot(), DemoFleet.TODAY);
    private static final LifeBook LIVES = DEMO.risk().lives();

    private static InjectorRisk risk(double four, double twelve, double twentySix) {
        return new InjectorRisk(
                "T",
                "D",
                1,
                "P",
                Origin.NEW,
                Clock.DISTANCE,
                1_000,
                "no warning sign",
                1,
                ConditionModel.DEFAULT,
                four,
                twelve,
                twentySix);
    }

    private static Condition condition(double multiplier) {
        return new Condition("", multiplier, "", 0.7 * multiplier, 1.2 * multiplier, 0.5 + 0.1 * multiplier);
    }

    @Test
    void aGreaterMultiplierOrAgeOrTimeNeverLowersTheChance() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            PartLife model = LIVES.lives().get(random.nextInt(LIVES.lives().size()));
            UsageAhead usage = new UsageAhead(500 + 2_000 * random.nextDouble(), 400 * random.nextDouble());
            double age = 400_000 * random.nextDouble();
            double multiplier = 0.2 + 20 * random.nextDouble();
            double weeks = 1 + 30 * random.nextDouble();
            double chance = new Forecast(LIVES, model, condition(multiplier), usage).chance(age, weeks);
            assertThat(chance).isBetween(0.0, 1.0);
            assertThat(new Forecast(LIVES, model, condition(multiplier * 1.5), usage).chance(age, weeks))
                    .as("case %d, multiplier", i)
                    .isGreaterThanOrEqualTo(chance);
            assertThat(new Forecast(LIVES, model, condition(multiplier), usage).chance(age, weeks + 1))
                    .as("case %d, weeks", i)
                    .isGreaterThanOrEqualTo(chance);
            assertThat(model.life().shape()).isGreaterThan(1);
            assertThat(new Forecast(LIVES, model, condition(multiplier), usage).chance(age * 1.1, weeks))
                    .as("case %d, age", i)
                    .isGreaterThanOrEqualTo(chance);
        }
    }

    /** By hand: 4 (w m)^2 / 6 + (w m - sqrt 3 s)^2 / 6 + (w m + sqrt 3 s)^2 / 6 = (w m)^2 + s^2, the second moment. */
    @Test
    void theSpreadOfUsageIsIntegratedExactlyForASquare() {
        UsageAhead usage = new UsageAhead(1_500, 300);
        double deviation = Math.sqrt(12 * 300.0 * 300.0 + 1_800.0 * 1_800.0);
        assertThat(usage.deviation(12)).isCloseTo(deviation, within(1e-9));
        assertThat(usage.mean(12, use -> use * use))
                .isCloseTo(18_000.0 * 18_000.0 + deviation * deviation, within(1e-3));
    }

    @Test
    void chancesBetweenTheHorizonsRunOn() {
        InjectorRisk risk = risk(0.02, 0.08, 0.2);
        assertThat(risk.chanceWithin(0)).isZero();
        assertThat(risk.chanceWithin(28)).isCloseTo(0.02, within(1e-12));
        assertThat(risk.chanceWithin(84)).isCloseTo(0.08, within(1e-12));
        assertThat(risk.chanceWithin(182)).isCloseTo(0.2, within(1e-12));
        // hazard 14 weeks on at the pace of weeks 12 to 26: ln(1/0.8) + ln(0.92/0.8)
        assertThat(risk.chanceWithin(280)).isCloseTo(1 - 0.8 * 0.8 / 0.92, within(1e-12));
        double before = 0;
        for (int days = 1; days < 800; days++) {
            assertThat(risk.chanceWithin(days)).isGreaterThan(before);
            before = risk.chanceWithin(days);
        }
        assertThat(risk(0, 0, 0).chanceWithin(1_000)).isZero();
        assertThat(risk(0.5, 1, 1).chanceWithin(300)).isEqualTo(1);
    }

    /** The first week counts from today, here a Monday, so that twelve weeks of rows are twelve weeks of chances. */
    @Test
    void expectedFailuresAreTheSumOfTheChances() {
        List<InjectorRisk> risks = DEMO.risk().risks();
        double sum = risks.stream().mapToDouble(InjectorRisk::chance12).sum();
        double rows = ExpectedFailures.of(risks, DemoFleet.TODAY, 12).stream()
                .mapToDouble(ExpectedFailures::expected)
                .sum();
        assertThat(sum).isGreaterThan(1);
        assertThat(rows).isCloseTo(sum, within(1e-9));
    }

    @Test
    void conditionMovesWhatWaitingCostsButNotTheLongRunRate() {
        Map<String, Truck> trucks = new HashMap<>();
        DEMO.fleet().trucks().forEach(truck -> trucks.put(truck.truck(), truck));
        ReplacementCosts costs = new ReplacementCosts(DEMO.index(), LIVES);
        ReplacementCosts asked = new ReplacementCosts(DEMO.index(), LIVES);
        int sick = 0;
        for (InjectorRisk risk : DEMO.risk().risks()) {
            Truck truck = trucks.get(risk.truck());
            double before = costs.policyOf(truck, risk.part(), Origin.NEW).costRate();
            double cost = asked.deferralOf(truck, risk).cost(risk.age(), risk.age() + 10_000);
            double well = asked.deferralOf(truck, withMultiplier(risk, 0.5 * risk.multiplier()))
                    .cost(risk.age(), risk.age() + 10_000);
            assertThat(cost).as(risk.toString()).isGreaterThan(well);
            assertThat(asked.policyOf(truck, risk.part(), Origin.NEW).costRate())
                    .isEqualTo(before);
            sick += risk.multiplier() > 1 ? 1 : 0;
        }
        assertThat(sick).isGreaterThan(5);
    }

    private static InjectorRisk withMultiplier(InjectorRisk risk, double multiplier) {
        return new InjectorRisk(
                risk.truck(),
                risk.depot(),
                risk.cylinder(),
                risk.part(),
                risk.origin(),
                risk.clock(),
                risk.age(),
                risk.condition(),
                multiplier,
                risk.multiplierSource(),
                risk.chance4(),
                risk.chance12(),
                risk.chance26());
    }

    /**
     * By hand for the small fleet: part 480 (its deposit of 120 comes back), own labour 0.4 h, shared access 6 h for eight cylinders
     * = 0.75 h each, 60 an hour: 480 + 69 = 549 planned; 4,200 more after a failure.
     */
    @Test
    void costsOfAnInjectorByHand() {
        Forecasted small = Forecasted.on(
                new FleetBuilder().truck("T1").allInjectors("T1", 100_000).build(), FleetBuilder.TODAY);
        Truck truck = small.fleet().trucks().get(0);
        UnitCosts costs =
                new ReplacementCosts(small.index(), small.risk().lives()).costsOf(truck, FleetBuilder.INJECTOR);
        assertThat(costs.planned()).isCloseTo(549, within(1e-9));
        assertThat(costs.failure()).isCloseTo(4_749, within(1e-9));
        UnitCosts shared = new ReplacementCosts(small.index(), small.risk().lives(), Map.of(FleetBuilder.V8, 0.5))
                .costsOf(truck, FleetBuilder.INJECTOR);
        assertThat(shared.planned()).isCloseTo(534, within(1e-9));
    }

    @Test
    void withoutRecordsDefaultsHoldAndSaySo() {
        Forecasted small = Forecasted.on(
                new FleetBuilder().truck("T1").allInjectors("T1", 100_000).build(), FleetBuilder.TODAY);
        assertThat(small.risk().risks()).hasSize(8).allSatisfy(risk -> {
            assertThat(risk.multiplierSource()).isEqualTo("planner default");
            assertThat(risk.chance12()).isBetween(0.001, 0.1);
        });
        assertThat(small.risk().defects().get(0).delaySource()).isEqualTo("planner default");
        assertThat(small.risk().conditions().effects())
                .allSatisfy(effect -> assertThat(effect.source()).isEqualTo("planner default"));
    }
}
