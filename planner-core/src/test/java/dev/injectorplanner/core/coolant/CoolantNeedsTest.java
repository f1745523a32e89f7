package dev.injectorplanner.core.coolant;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 20 l of 50 l drained, glycol 50 %. */
class CoolantNeedsTest {
    private static final FleetIndex FLEET =
            new FleetIndex(new FleetBuilder().truck("T1").build());

    private static List<CoolantNeed> needs(double drained, boolean renew) {
        Visit visit = new Visit(
                "T1",
                NORTH,
                V8,
                new IsoWeek(2026, 10),
                List.of(1),
                List.of(),
                List.of(),
                false,
                3,
                drained,
                List.of(),
                "");
        return CoolantNeeds.of(FLEET, List.of(visit), renew);
    }

    @Test
    void renewedCoolantIsHalfConcentrateAndTheOldIsWaste() {
        CoolantNeed need = needs(20, true).get(0);
        assertThat(need.concentrateLitres()).isCloseTo(10, within(1e-9));
        assertThat(need.waterLitres()).isCloseTo(10, within(1e-9));
        assertThat(need.wasteLitres()).isCloseTo(20, within(1e-9));
        assertThat(need.reused()).isFalse();
    }

    @Test
    void reusedCoolantIsToppedUp() {
        CoolantNeed need = needs(20, false).get(0);
        assertThat(need.concentrateLitres() + need.waterLitres()).isCloseTo(1, within(1e-9));
        assertThat(need.wasteLitres()).isZero();
        assertThat(need.capacityLitres()).isEqualTo(50);
    }

    @Test
    void nothingDrainedNothingDrawn() {
        assertThat(needs(0, true)).isEmpty();
    }
}
