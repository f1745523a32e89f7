package dev.injectorplanner.core.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What holds for every parts plan, tried on made-up fleets with seeded failure rates. */
class D03_PartsLawsTest {
    private static final double[] LEVELS = {0.5, 0.8, 0.95, 0.99};

    private static FleetSnapshot fleet(long seed) {
        return new FleetGenerator(DemoFleet.ofSize(40, seed)).generate().snapshot();
    }

    /** The same with empty shelves, so that there is something to order. */
    private static FleetSnapshot emptyShelves(long seed) {
        FleetSnapshot fleet = fleet(seed);
        return new FleetSnapshot(
                fleet.depots(),
                fleet.capacity(),
                fleet.engineFamilies(),
                fleet.access(),
                fleet.dutyGroups(),
                fleet.trucks(),
                fleet.injectors(),
                fleet.readings(),
                fleet.faults(),
                fleet.cylinderTests(),
                fleet.parts(),
                fleet.jobParts(),
                List.of(),
                fleet.purchaseLines(),
                fleet.away(),
                fleet.intervals(),
                fleet.rules());
    }

    private static FailureForecast forecast(FleetSnapshot fleet, long seed) {
        Random random = new Random(seed);
        FleetIndex index = new FleetIndex(fleet);
        List<FailureChance> chances = new ArrayList<>();
        fleet.trucks()
                .forEach(truck -> index.family(truck.family())
                        .allCylinders()
                        .forEach(cylinder -> chances.add(new FailureChance(
                                truck.depot(),
                                index.family(truck.family()).injectorPart(),
                                0.004 * random.nextDouble()))));
        return FailureForecast.ofRates(chances);
    }

    private static Plan plan(FleetSnapshot fleet, double level, long seed) {
        Policy policy = Policy.standard().withOrders(OrderRules.standard().withServiceLevel(level));
        return new Planner(new EarliestFit())
                .plan(
                        fleet,
                        policy,
                        FleetBuilder.TODAY,
                        dev.injectorplanner.core.plan.Holds.none(),
                        forecast(fleet, seed));
    }

    /** The plan's visits as if nobody had shared the stock out: what an order may not bring in time is told. */
    private static PartsPlan heldAgainstTheShelf(FleetSnapshot fleet, long seed) {
        return PartsPlan.of(
                new FleetIndex(fleet),
                FleetBuilder.TODAY,
                26,
                OrderRules.standard(),
                plan(fleet, 0.95, seed).visits(),
                forecast(fleet, seed));
    }

    private static Map<String, Double> quantities(Plan plan, boolean nowOnly) {
        Map<String, Double> quantities = new TreeMap<>();
        plan.parts().orders().stream()
                .filter(line -> line.now() || !nowOnly)
                .forEach(line -> quantities.merge(line.depot() + " " + line.part(), line.quantity(), Double::sum));
        return quantities;
    }

    @Test
    void raisingTheServiceLevelNeverLowersAnOrder() {
        int shelves = 0;
        for (long seed = 1; seed <= 3; seed++) {
            FleetSnapshot fleet = emptyShelves(seed);
            List<Plan> plans = Arrays.stream(LEVELS)
                    .mapToObj(level -> plan(fleet, level, 1))
                    .toList();
            for (boolean nowOnly : new boolean[] {true, false}) {
                Map<String, Double> before = Map.of();
                for (int i = 0; i < LEVELS.length; i++) {
                    double level = LEVELS[i];
                    Map<String, Double> now = quantities(plans.get(i), nowOnly);
                    before.forEach((shelf, quantity) -> assertThat(now.getOrDefault(shelf, 0.0))
                            .as(shelf + " at " + level)
                            .isGreaterThanOrEqualTo(quantity));
                    before = now;
                }
                shelves += before.size();
            }
        }
        assertThat(shelves).isGreaterThan(40);
    }

    @Test
    void theShelfNeverGoesBelowZeroWithoutALineOnTheShortList() {
        int below = 0;
        for (long seed = 1; seed <= 6; seed++) {
            PartsPlan parts = heldAgainstTheShelf(seed % 2 == 0 ? emptyShelves(seed) : fleet(seed), seed);
            for (StockWeek week : parts.stockWeeks()) {
                if (week.end() < 0) {
                    below++;
                    assertThat(parts.shortList())
                            .as("seed %d, %s", seed, week)
                            .anyMatch(line -> line.depot().equals(week.depot())
                                    && line.part().equals(week.part())
                                    && line.week().compareTo(week.week()) <= 0);
                }
            }
        }
        assertThat(below).isGreaterThan(5);
    }

    @Test
    void whatIsMissingOfAWeekIsOrderedAndMissedByItsVisits() {
        for (long seed = 1; seed <= 6; seed++) {
            PartsPlan parts = heldAgainstTheShelf(seed % 2 == 0 ? emptyShelves(seed) : fleet(seed), seed);
            for (PartNeed need : parts.needs()) {
                double missed = parts.shortList().stream()
                        .filter(line -> line.depot().equals(need.depot())
                                && line.part().equals(need.part())
                                && line.week().equals(need.week()))
                        .mapToDouble(ShortLine::missing)
                        .sum();
                assertThat(missed).as("seed %d, %s", seed, need).isIn(0.0, need.missing());
            }
            Map<String, Double> missing = new TreeMap<>();
            parts.needs().forEach(need -> missing.merge(need.depot() + " " + need.part(), need.missing(), Double::sum));
            Map<String, Double> ordered = new TreeMap<>();
            parts.orders()
                    .forEach(line -> ordered.merge(line.depot() + " " + line.part(), line.quantity(), Double::sum));
            missing.forEach((shelf, pieces) ->
                    assertThat(ordered.getOrDefault(shelf, 0.0)).as(shelf).isGreaterThanOrEqualTo(pieces));
        }
    }

    @Test
    void ordersAreWholePacksAndNoLessThanTheLeast() {
        for (long seed = 1; seed <= 4; seed++) {
            for (OrderLine line : plan(emptyShelves(seed), 0.95, seed).parts().orders()) {
                assertThat(line.quantity() % line.pack()).as("%s", line).isZero();
                assertThat(line.quantity()).as("%s", line).isGreaterThanOrEqualTo(line.minimumOrder());
                assertThat(line.placeOn()).as("%s", line).isAfterOrEqualTo(FleetBuilder.TODAY);
            }
        }
    }
}
