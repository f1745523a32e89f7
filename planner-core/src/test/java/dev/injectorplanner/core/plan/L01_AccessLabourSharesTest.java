package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** V8 with steps of 0.5 h and 2.5 h for all, 3 h for cylinders 7 and 8: the full set's share is 6 / 8 = 0.75 h. */
class L01_AccessLabourSharesTest {
    private final FleetSnapshot fleet =
            new FleetBuilder().truck("T1").allInjectors("T1", 210_000).build();

    private static Visit visit(List<Integer> cylinders, List<String> steps) {
        return new Visit(
                "T1", "North", "V8", IsoWeek.of(TODAY), cylinders, steps, List.of(), true, 1, 0, List.of(), "");
    }

    /** (3 + 6) / (1 + 3) = 2.25 h a cylinder; a test alone opens nothing and counts nothing. */
    @Test
    void theMeanOfWhatVisitsPaid() {
        Map<String, Double> shares = AccessLabourShares.of(
                fleet,
                List.of(
                        visit(List.of(1), List.of("covers off", "intake off")),
                        visit(List.of(2, 7, 8), List.of("covers off", "intake off", "cab mounts down")),
                        visit(List.of(), List.of())));
        assertThat(shares).containsExactly(entry("V8", 2.25));
    }

    @Test
    void noVisitTellsNothing() {
        assertThat(AccessLabourShares.of(fleet, List.of())).isEmpty();
    }

    /** An injector that bears more access labour costs more to replace, so that its best age is later and waiting costs less. */
    @Test
    void aShareThatIsGivenIsUsed() {
        TruckPricing usual = Learned.of(fleet, Policy.standard(), TODAY).pricing();
        TruckPricing dear = Learned.of(fleet, Policy.standard().withAccessShareHours(Map.of("V8", 2.25)), TODAY)
                .pricing();
        double share = usual.pricesOf(fleet.trucks().get(0), List.of()).get(0).share();
        // half of 0.75 h of the full set at 60 an hour and of its coolant and bay, and its standing
        assertThat(share).isGreaterThan(0.5 * 0.75 * 60);
        assertThat(dear.pricesOf(fleet.trucks().get(0), List.of()).get(0).share())
                .isCloseTo(share + 0.5 * 1.5 * 60, within(1e-9));
    }
}
