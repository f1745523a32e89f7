package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fleets at the edge of sense still get a plan whose figures are figures. */
class O01_OddFleetsTest {
    private static final LocalDate TODAY = FleetBuilder.TODAY;

    private static Plan checked(Plan plan) {
        assertThat(plan.cost().cost()).isFinite().isNotPositive();
        assertThat(plan.cost().money()).isFinite();
        assertThat(plan.risks()).allSatisfy(each -> {
            assertThat(each.defectChance()).isBetween(0.0, 1.0);
            assertThat(each.chance4()).isBetween(0.0, 1.0);
            assertThat(each.chance26()).isBetween(each.chance12(), 1.0);
        });
        return plan;
    }

    /** 300,000 km today at a steady weekly distance, no engine hours; gone on a day, or not. */
    private static FleetBuilder truck(String family, double kmAWeek, @Nullable LocalDate goneOn) {
        FleetBuilder fleet = new FleetBuilder();
        fleet.trucks.add(new Truck(
                "T1",
                new Vin("W0T00000000000001"),
                FleetBuilder.NORTH,
                family,
                null,
                LocalDate.of(2020, 1, 10),
                goneOn,
                null));
        for (int week = 60; week >= 0; week--) {
            fleet.reading("T1", TODAY.minusWeeks(week), 300_000 - kmAWeek * week, null);
        }
        return fleet;
    }

    private static void failing(FleetBuilder fleet) {
        for (int day = 1; day < 50; day += 3) {
            fleet.fault("T1", TODAY.minusDays(day), "P0201");
        }
        fleet.test("T1", 1, TODAY.minusDays(5), TestKind.BALANCE, 60, "mm3/stroke");
    }

    @Test
    void noTruckAtAll() {
        assertThat(checked(PlanOf.fleet(new FleetBuilder().build())).visits()).isEmpty();
    }

    /** Whatever a visit's access usually costs a cylinder: the truck wears nothing out and nothing fails. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 40})
    void aTruckThatStandsIsLeftAlone(double accessHours) {
        FleetBuilder fleet = truck(FleetBuilder.V8, 0, null).allInjectors("T1", 280_000);
        fleet.test("T1", 2, TODAY.minusDays(300), TestKind.BALANCE, 1, "mm3/stroke");
        Policy policy = Policy.standard().withAccessShareHours(Map.of(FleetBuilder.V8, accessHours));
        assertThat(checked(PlanOf.fleet(fleet.build(), policy)).visits()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 9})
    void aTruckThatLeavesTakesItsInjectorsAlong(int days) {
        FleetBuilder fleet = truck(FleetBuilder.V8, 2_000, TODAY.plusDays(days)).allInjectors("T1", 290_000);
        assertThat(checked(PlanOf.fleet(fleet.build())).visits())
                .allSatisfy(visit -> assertThat(visit.cylinders()).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 1_500})
    void oneCylinderThatShowsEverything(double kmAWeek) {
        FleetBuilder fleet = truck("ONE", kmAWeek, null);
        fleet.families.add(new EngineFamily(
                "ONE",
                1,
                List.of(new Bank("only", List.of(1))),
                List.of(1),
                0.4,
                10,
                50,
                FleetBuilder.INJECTOR,
                new BigDecimal("4200")));
        fleet.injector("T1", 1, LocalDate.of(2025, 12, 1), 299_000 - 13 * kmAWeek);
        failing(fleet);
        assertThat(checked(PlanOf.fleet(fleet.build())).injectors()).hasSize(1);
    }

    @Test
    void anInjectorFittedToday() {
        FleetBuilder fleet = truck(FleetBuilder.V8, 1_500, null).injector("T1", 1, TODAY, 300_000.0);
        failing(fleet);
        assertThat(checked(PlanOf.fleet(fleet.build())).visits()).isEmpty();
    }
}
