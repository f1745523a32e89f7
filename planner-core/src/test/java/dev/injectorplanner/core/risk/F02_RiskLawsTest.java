package dev.injectorplanner.core.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.PlanWeeks;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.defect.DefectModel;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.life.PredictiveLife;
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
                SignEffect.DEFAULT,
                0.01,
                four,
                twelve,
                twentySix);
    }

    @Test
    void aGreaterChanceOfADefectOrMoreAgeOrTimeNeverLowersTheChance() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            PartLife model = LIVES.lives().get(random.nextInt(LIVES.lives().size()));
            PredictiveLife life = LIVES.predictive(model);
            DefectModel defects = DEMO.risk().defectModelOf(model.part()).model();
            UsageAhead usage = new UsageAhead(500 + 2_000 * random.nextDouble(), 400 * random.nextDouble());
            double age = 400_000 * random.nextDouble();
            double defective = 0.5 * random.nextDouble();
            double[] chances = new Chances(defects, life, age, usage).within(defective);
            double[] worse = new Chances(defects, life, age, usage).within(defective + 0.1);
            double[] older = new Chances(defects, life, age * 1.1, usage).within(defective);
            assertThat(chances[0]).isBetween(0.0, chances[1]);
            assertThat(chances[1]).isLessThanOrEqualTo(chances[2]);
            for (int horizon = 0; horizon < 3; horizon++) {
                assertThat(worse[horizon]).as("case %d, defect", i).isGreaterThan(chances[horizon]);
                if (model.early().share() == 0) { // a new injector outlives its early failures
                    assertThat(older[horizon]).as("case %d, age", i).isGreaterThanOrEqualTo(chances[horizon] - 1e-9);
                }
            }
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

    /** A stand-in for what visits cost: 60 a cylinder in a typical visit, 500 for one alone, 120 for a test. */
    static final VisitCosts VISITS = new VisitCosts() {
        @Override
        public double share(Truck truck) {
            return 60;
        }

        @Override
        public double alone(Truck truck) {
            return 500;
        }

        @Override
        public double test(Truck truck) {
            return 120;
        }
    };

    @Test
    void aLikelierDefectMakesWaitingDearerAndLeavesTheLongRunRate() {
        Map<String, Truck> trucks = new HashMap<>();
        DEMO.fleet().trucks().forEach(truck -> trucks.put(truck.truck(), truck));
        PlanWeeks weeks = new PlanWeeks(DemoFleet.TODAY, 26);
        ReplacementCosts costs = new ReplacementCosts(DEMO.index(), DEMO.risk(), VISITS, 1);
        Deferrals known = new Deferrals(costs, DEMO.usage(), weeks);
        Deferrals sicker = new Deferrals(costs, DEMO.usage(), weeks);
        for (InjectorRisk risk : DEMO.risk().risks()) {
            Truck truck = trucks.get(risk.truck());
            double before = costs.policyOf(truck, risk.part(), Origin.NEW).costRate();
            double cost = known.of(truck, risk).later();
            InjectorRisk worse = withDefectChance(risk, 0.5 + 0.5 * risk.defectChance());
            if (worse.defectChance() > risk.defectChance()) { // certain already, to the last digit
                assertThat(sicker.of(truck, worse).later()).as(risk.toString()).isGreaterThan(cost);
            }
            assertThat(costs.policyOf(truck, risk.part(), Origin.NEW).costRate())
                    .isEqualTo(before);
        }
    }

    private static InjectorRisk withDefectChance(InjectorRisk risk, double chance) {
        return new InjectorRisk(
                risk.truck(),
                risk.depot(),
                risk.cylinder(),
                risk.part(),
                risk.origin(),
                risk.clock(),
                risk.age(),
                risk.condition(),
                risk.multiplier(),
                risk.multiplierSource(),
                chance,
                risk.chance4(),
                risk.chance12(),
                risk.chance26());
    }

    /**
     * By hand for the small fleet: part 480 (its deposit of 120 comes back), own labour 0.4 h at 60 an hour = 24; 60 of a
     * typical visit, 500 of one alone: 564 planned, 1,004 alone; 4,200 more after a failure.
     */
    @Test
    void costsOfAnInjectorByHand() {
        Forecasted small = Forecasted.on(
                new FleetBuilder().truck("T1").allInjectors("T1", 100_000).build(), FleetBuilder.TODAY);
        Truck truck = small.fleet().trucks().get(0);
        UnitCosts costs =
                new ReplacementCosts(small.index(), small.risk(), VISITS, 1).costsOf(truck, FleetBuilder.INJECTOR);
        assertThat(costs.planned()).isCloseTo(564, within(1e-9));
        assertThat(costs.alone()).isCloseTo(1_004, within(1e-9));
        assertThat(costs.failure()).isCloseTo(5_204, within(1e-9));
    }

    /** Priced at nothing, it would be replaced at every chance. */
    @Test
    void aPartThatThePartsTableLacksIsRefusedNotPricedAtNothing() {
        Forecasted small = Forecasted.on(
                new FleetBuilder().truck("T1").allInjectors("T1", 100_000).build(), FleetBuilder.TODAY);
        ReplacementCosts costs = new ReplacementCosts(small.index(), small.risk(), VISITS, 1);
        Truck truck = small.fleet().trucks().get(0);
        assertThatThrownBy(() -> costs.costsOf(truck, "UNKNOWN"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("UNKNOWN")
                .hasMessageContaining("parts table");
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
        assertThat(small.risk().signEffects())
                .allSatisfy(effect -> assertThat(effect.source()).isEqualTo("planner default"));
    }
}
