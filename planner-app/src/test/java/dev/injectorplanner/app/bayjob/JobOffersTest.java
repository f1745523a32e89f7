package dev.injectorplanner.app.bayjob;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.plan.Policy;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * "That one, the bank, or all?" with its bill. By hand, cylinder 6 of a V8 alone: batteries 0.2, coolant 0.5, charge pipes 1.7,
 * right rocker cover 0.9, its own 0.6: 3.9 h at 68.00 are 265.20. Injector 612.00, seal kit 14.50, two clamp bolts 6.40, a pipe
 * 46.00, two clips 1.70, rocker gasket 31.00, intake gaskets 58.00, two filters 44.00, cleaner 9.40: 823.00. Together 1,088.20.
 */
class JobOffersTest {
    private static FleetIndex index;
    private static Truck truck;

    @BeforeAll
    static void fleet() {
        FleetSnapshot fleet =
                new FleetGenerator(DemoFleet.ofSize(40, 3)).generate().snapshot();
        index = new FleetIndex(fleet);
        truck = fleet.trucks().stream()
                .filter(each -> each.family().equals("V8-140"))
                .findFirst()
                .orElseThrow();
    }

    private static List<JobOffer> offers(Map<String, Double> given) {
        return new JobOffers(index, Policy.standard(), DemoFleet.TODAY, given).of(truck, List.of(6));
    }

    private static JobOffer alone(Map<String, Double> given) {
        return offers(given).stream()
                .filter(each -> each.cylinders().equals(List.of(6)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_bill_of_one_cylinder_is_as_by_hand() {
        JobOffer alone = alone(Map.of());
        assertThat(alone.hours()).isEqualTo(3.9);
        assertThat(alone.bill()).isEqualByComparingTo("1088.20");
        assertThat(alone.deposits()).isEqualByComparingTo("180.00");
        assertThat(alone.parts().get(0).part()).isEqualTo("KV-8140");
    }

    @Test
    void that_one_the_bank_and_all_are_there_and_one_is_proposed() {
        List<JobOffer> offers = offers(Map.of());
        assertThat(offers).extracting(JobOffer::cylinders).contains(List.of(6), List.of(2, 4, 6, 8));
        assertThat(offers).anyMatch(each -> each.cylinders().size() == 8);
        assertThat(offers).filteredOn(JobOffer::best).hasSize(1);
        assertThat(offers).allMatch(each -> each.cylinders().contains(6));
    }

    /** Injectors that were given to other trucks are not free: the job waits for a delivery, or for 24 days of ordering. */
    @Test
    void a_part_that_others_were_given_makes_the_truck_wait() {
        JobOffer free = alone(Map.of());
        JobOffer short1 = alone(Map.of("KV-8140", 1e6));
        assertThat(short1.waiting()).extracting(JobOffer.PartReady::part).containsExactly("KV-8140");
        assertThat(short1.readyOn()).isAfter(DemoFleet.TODAY).isBeforeOrEqualTo(DemoFleet.TODAY.plusDays(24));
        assertThat(short1.daysOffRoad()).isGreaterThan(free.daysOffRoad());
    }
}
