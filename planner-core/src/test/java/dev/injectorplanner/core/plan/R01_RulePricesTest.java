package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a rule of the site costs is the difference of two plans, one of which does not know it. */
class R01_RulePricesTest {
    private static final Planner PLANNER = new Planner(new ExactScheduler(SearchLimits.QUICK));

    private static FleetBuilder youngTruck() {
        return new FleetBuilder().truck("T1").allInjectors("T1", 60_000);
    }

    private static List<RulePrice> prices(FleetSnapshot fleet) {
        return PLANNER.priceRules(fleet, Policy.standard(), TODAY, Holds.none(), done -> {}, () -> false);
    }

    @Test
    void aRuleThatThrowsAwayGoodInjectorsCosts() {
        FleetSnapshot with = youngTruck().rule(RuleKind.DISTANCE_KM, 50_000).build();
        RulePrice price = prices(with).get(0);
        assertThat(price.injectorsWith()).isEqualTo(8);
        assertThat(price.injectorsWithout()).isZero();
        assertThat(price.price()).isGreaterThan(1_000);
        assertThat(price.moneyWithout())
                .isCloseTo(
                        PLANNER.plan(youngTruck().build(), Policy.standard(), TODAY)
                                .cost()
                                .money(),
                        within(1e-6));
        assertThat(price.moneyWith())
                .isCloseTo(PLANNER.plan(with, Policy.standard(), TODAY).cost().money(), within(1e-6));
    }

    @Test
    void aRuleThatIsFarOffCostsNothing() {
        assertThat(prices(youngTruck().rule(RuleKind.DISTANCE_KM, 900_000).build())
                        .get(0)
                        .price())
                .isZero();
    }

    @Test
    void theDearestComesFirstAndSafetyIsNotPriced() {
        List<RulePrice> prices = prices(youngTruck()
                .rule(RuleKind.DISTANCE_KM, 50_000)
                .rule(RuleKind.ENGINE_HOURS, 900_000)
                .rule(RuleKind.SAFETY, 2)
                .build());
        assertThat(prices)
                .extracting(price -> price.rule().rule())
                .containsExactly(RuleKind.DISTANCE_KM, RuleKind.ENGINE_HOURS);
    }

    @Test
    void oneThatIsStoppedHasNothingHalfDone() {
        FleetSnapshot fleet = youngTruck().rule(RuleKind.DISTANCE_KM, 50_000).build();
        assertThat(PLANNER.priceRules(fleet, Policy.standard(), TODAY, Holds.none(), done -> {}, () -> true))
                .isEmpty();
    }
}
