package dev.injectorplanner.core.coolant;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 20 l of 50 l drained, glycol 50 %. */
class CoolantNeedsTest {
    private static final FleetIndex FLEET =
            new FleetIndex(new FleetBuilder().truck("T1").build());
    private static final CoolantRules RULES = CoolantRules.standard();

    private static Visit visit(int week, double drained) {
        return new Visit(
                "T1",
                NORTH,
                V8,
                new IsoWeek(2026, week),
                List.of(1),
                List.of(),
                List.of(),
                false,
                3,
                drained,
                List.of(),
                "");
    }

    private static CoolantNeed need(double drained, CoolantRules rules) {
        return CoolantNeeds.of(FLEET, List.of(visit(10, drained)), rules).get(0);
    }

    @Test
    void renewedCoolantIsHalfConcentrateAndTheOldIsWaste() {
        CoolantNeed need = need(20, RULES.withRenew(true));
        assertThat(need.concentrateLitres()).isCloseTo(10, within(1e-9));
        assertThat(need.waterLitres()).isCloseTo(10, within(1e-9));
        assertThat(need.wasteLitres()).isCloseTo(20, within(1e-9));
        assertThat(need.putBackLitres()).isZero();
        assertThat(need.remark()).isEmpty();
    }

    @Test
    void reusedCoolantIsToppedUp() {
        CoolantNeed need = need(20, RULES);
        assertThat(need.concentrateLitres() + need.waterLitres()).isCloseTo(1, within(1e-9));
        assertThat(need.wasteLitres()).isCloseTo(1, within(1e-9));
        assertThat(need.putBackLitres()).isCloseTo(19, within(1e-9));
        assertThat(need.capacityLitres()).isEqualTo(50);
    }

    @Test
    void nothingDrainedNothingDrawn() {
        assertThat(CoolantNeeds.of(FLEET, List.of(visit(10, 0)), RULES)).isEmpty();
    }

    /** -45.6 C is the row of 55.7 % in the ASHRAE table; 50 x 5.7 / 50 = 5.7 l must be exchanged. */
    @Test
    void aProtectionTemperatureChangesTheStrength() {
        CoolantNeed need = need(20, RULES.withProtectToC(-45.6));
        assertThat(need.targetPercent()).isCloseTo(55.7, within(1e-4));
        assertThat(need.concentrateLitres()).isCloseTo(5.7, within(1e-3));
        assertThat(need.remark()).isEmpty();
    }

    @Test
    void aTargetOutOfReachIsSaidAndTheStrengthKept() {
        CoolantNeed need = need(4, RULES.withRenew(true).withProtectToC(-45.6));
        assertThat(need.remark())
                .contains("cannot be reached")
                .contains("drain 5.7 l")
                .contains("is kept");
        assertThat(need.concentrateLitres()).isCloseTo(2, within(1e-9));
        CoolantMix mix = need.mix();
        assertThat(mix).isNotNull();
        assertThat(mix.afterPercent()).isEqualTo(50);
    }

    /** 50 l at 50 % protects to -37 C: for -30 C nothing need change; renewing 2 l with water makes 48 %. */
    @Test
    void whatProtectsAlreadyIsMixedWithoutARemark() {
        CoolantNeed kept = need(7, RULES.withProtectToC(-30.0));
        assertThat(kept.targetPercent()).isEqualTo(50);
        assertThat(kept.wasteLitres()).isCloseTo(0.35, within(1e-9));
        CoolantNeed thinned = need(2, RULES.withRenew(true).withProtectToC(-30.0));
        assertThat(thinned.remark()).isEmpty();
        assertThat(thinned.targetPercent()).isCloseTo(48, within(1e-9));
        assertThat(thinned.waterLitres()).isCloseTo(2, within(1e-9));
    }

    @Test
    void aStrengthThatIsNotAllowedIsNotMixed() {
        FleetBuilder fleet = new FleetBuilder().truck("T1");
        fleet.families.set(0, FleetBuilder.v8(30));
        FleetIndex index = new FleetIndex(fleet.build());
        CoolantNeed need = CoolantNeeds.of(index, List.of(visit(10, 20)), RULES).get(0);
        assertThat(need.mix()).isNull();
        assertThat(need.remark()).contains("outside 40 to 60 %").contains("No mix is calculated");
        assertThat(need.wasteLitres()).isEqualTo(20);
        assertThat(CoolantNeeds.of(index, List.of(visit(10, 20)), RULES.withAnyStrength(true))
                        .get(0)
                        .mix())
                .isNotNull();
    }

    /** 20 l + 30 l renewed at 50 %: 25 l of each, two cans of 20 l; 50 l of waste, one drum of 60 l. */
    @Test
    void containersAreWholeForEachDepotAndWeek() {
        List<CoolantNeed> needs =
                CoolantNeeds.of(FLEET, List.of(visit(10, 20), visit(10, 30), visit(11, 40)), RULES.withRenew(true));
        List<CoolantWeek> weeks = CoolantWeek.of(needs, RULES);
        assertThat(weeks).hasSize(2);
        CoolantWeek first = weeks.get(0);
        assertThat(first.visits()).isEqualTo(2);
        assertThat(first.concentrateLitres()).isCloseTo(25, within(1e-9));
        assertThat(first.concentrateContainers()).isEqualTo(2);
        assertThat(first.waterContainers()).isEqualTo(2);
        assertThat(first.wasteContainers()).isEqualTo(1);
        assertThat(weeks.get(1).concentrateContainers()).isEqualTo(1);
        assertThat(weeks.get(1).wasteContainers()).isEqualTo(1);
    }

    @Test
    void rulesRefuseNonsense() {
        assertThatThrownBy(() -> RULES.withProtectToC(-60.0)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> new CoolantRules(false, null, false, 0.05, 0, 20, 60))
                .isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> new CoolantRules(false, null, false, Double.NaN, 20, 20, 60))
                .isInstanceOf(InvalidValueException.class);
    }
}
