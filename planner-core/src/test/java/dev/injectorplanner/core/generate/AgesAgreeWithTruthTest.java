package dev.injectorplanner.core.generate;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the engine makes of the meters of a made-up fleet against the true km of its injectors, replaced meters included. */
class AgesAgreeWithTruthTest {
    @Test
    void mostWithinAWeeksDrivingAndNoneFarOff() {
        GeneratedFleet fleet = new FleetGenerator(
                        new FleetSpec(DemoFleet.ofSize(150, 3).catalogue(), 3, 150, DemoFleet.TODAY, 1_095, 7, 0.3))
                .generate();
        Map<String, InjectorTruth> truth = new HashMap<>();
        fleet.truth().injectors().stream()
                .filter(unit -> unit.end() == InjectorTruth.End.RUNNING)
                .forEach(unit -> truth.put(unit.truck() + "/" + unit.cylinder(), unit));
        List<Double> errors = new ArrayList<>();
        for (InjectorAge age : new FleetUsage(new FleetIndex(fleet.snapshot()), 365, DemoFleet.TODAY).injectorAges()) {
            InjectorTruth unit = truth.get(age.truck() + "/" + age.cylinder());
            assertThat(age.fittedOn()).isEqualTo(unit.fittedOn());
            Double km = age.km();
            assertThat(km).as(age.toString()).isNotNull();
            errors.add(Math.abs(km - unit.endKm()));
        }
        errors.sort(null);
        assertThat(errors).hasSizeGreaterThan(800);
        assertThat(errors.get(errors.size() * 9 / 10)).as("nine of ten, km").isLessThan(1_000);
        assertThat(errors.get(errors.size() * 98 / 100)).as("98 of 100, km").isLessThan(2_500);
        assertThat(errors.get(errors.size() - 1)).as("the worst, km").isLessThan(10_000);
    }
}
