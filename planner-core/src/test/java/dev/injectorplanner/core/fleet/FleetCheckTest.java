package dev.injectorplanner.core.fleet;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class FleetCheckTest {
    private final FleetBuilder fleet = new FleetBuilder().truck("T1");

    private void refused(String words) {
        assertThatThrownBy(fleet::build)
                .isInstanceOf(InvalidFleetException.class)
                .hasMessageContaining(words)
                .hasMessageContaining("Fix:");
    }

    @Test
    void aFleetThatFitsTogetherIsTaken() {
        assertThat(fleet.build().trucks()).hasSize(1);
        assertThat(FleetSnapshot.empty().trucks()).isEmpty();
    }

    @Test
    void aTruckOfAnUnknownDepot() {
        fleet.depots.clear();
        refused("trucks: depot \"North\" is not known. Known: none yet.");
    }

    @Test
    void readingsOfAnUnknownTruck() {
        fleet.reading("T9", TODAY, 5.0, null);
        refused("readings: truck \"T9\" is not known. Known: T1.");
    }

    @Test
    void aCylinderTheEngineHasNot() {
        fleet.injector("T1", 9, TODAY, null);
        refused("injectors: truck T1 names cylinder 9, but its engine has 8.");
    }

    @Test
    void aFaultCodeOfACylinderTheEngineHasNot() {
        fleet.fault("T1", TODAY, "P0209");
        refused("faults: truck T1 names cylinder 9, but its engine has 8.");
    }

    @Test
    void anAccessStepToACylinderTheEngineHasNot() {
        fleet.access.add(new AccessStep(V8, "far off", 9, 1, List.of(12), 0, ""));
        refused("access: family V8, step far off names cylinder 12, but its engine has 8.");
    }

    @Test
    void aJobPartOfAnUnknownStep() {
        fleet.jobParts.add(new JobPart(V8, Per.STEP, "roof off", FleetBuilder.INJECTOR, 1, 1));
        refused("job_parts: step \"V8: roof off\" is not known.");
    }

    @Test
    void twoInjectorsInOneCylinderAtOnce() {
        fleet.injector("T1", 3, LocalDate.of(2023, 1, 1), null).injector("T1", 3, LocalDate.of(2024, 1, 1), null);
        refused("truck T1, cylinder 3: one was fitted on 2024-01-01 while that of 2023-01-01 was still fitted.");
    }

    @Test
    void oneKeyTwice() {
        fleet.rule(RuleKind.DISTANCE_KM, 1_000).rule(RuleKind.DISTANCE_KM, 2_000);
        refused("rules: duplicate key");
    }

    @Test
    void tenAreListedAndTheRestCounted() {
        for (int cylinder = 9; cylinder <= 16; cylinder++) {
            fleet.injector("T1", cylinder, TODAY, null);
            fleet.injector("T1", cylinder, TODAY.minusDays(1), null);
        }
        InvalidFleetException refused = catchThrowableOfType(InvalidFleetException.class, fleet::build);
        assertThat(refused.count()).isEqualTo(24);
        assertThat(refused.problems()).hasSize(10);
        assertThat(refused).hasMessageEndingWith("and 14 more, 24 in all.");
    }
}
