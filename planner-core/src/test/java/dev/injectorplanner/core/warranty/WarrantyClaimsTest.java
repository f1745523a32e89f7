package dev.injectorplanner.core.warranty;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Warranty 12 months or 100,000 km, whichever comes first. */
class WarrantyClaimsTest {
    private static final LocalDate OUT = TODAY.minusDays(10);

    private final FleetBuilder fleet = new FleetBuilder().truck("T1");

    private void injector(int months, double km, LocalDate fitted, Double from, Double to, Found found, String serial) {
        fleet.parts.set(0, FleetBuilder.part(INJECTOR, months, km));
        fleet.injectors.add(new FittedInjector(
                "T1", 5, INJECTOR, serial, null, Origin.NEW, fitted, from, null, OUT, to, null, found));
    }

    private List<WarrantyClaim> claims() {
        return WarrantyClaims.of(new FleetIndex(fleet.build()), TODAY);
    }

    @Test
    void aFailureInsideTheWarrantyWithItsEvidence() {
        injector(12, 100_000, OUT.minusMonths(12), 200_000.0, 300_000.0, Found.FAILED, "S-77");
        fleet.fault("T1", OUT.minusDays(3), "SPN 655 FMI 5")
                .fault("T1", OUT.minusDays(2), "SPN 651 FMI 5")
                .fault("T1", OUT.minusDays(91), "P0205")
                .fault("T1", OUT.minusDays(8), "P0205")
                .fault("T1", OUT.minusDays(1), "P0205")
                .test("T1", 5, OUT.minusDays(1), TestKind.BALANCE, 4.5, "mm3/stroke");
        assertThat(claims()).singleElement().satisfies(claim -> {
            assertThat(claim.serial()).isEqualTo("S-77");
            assertThat(claim.months()).isEqualTo(12);
            assertThat(claim.km()).isEqualTo(100_000);
            assertThat(claim.faultCodes())
                    .containsExactly(
                            "P0205, injector of cylinder 5: circuit open, 2 times from " + OUT.minusDays(8) + " to "
                                    + OUT.minusDays(1),
                            "SPN 655 FMI 5, injector of cylinder 5: current below normal or open circuit, 1 time on "
                                    + OUT.minusDays(3));
            assertThat(claim.tests()).containsExactly("balance 4.5 mm3/stroke on " + OUT.minusDays(1) + ", warm idle");
            assertThat(claim.lacking()).isEmpty();
            assertThat(claim.value()).isEqualByComparingTo("480");
        });
    }

    @Test
    void oneDayOrOneKmTooLateIsNoClaim() {
        injector(12, 100_000, OUT.minusMonths(12).minusDays(1), 200_000.0, 210_000.0, Found.FAILED, "S");
        assertThat(claims()).isEmpty();
        fleet.injectors.clear();
        injector(12, 100_000, OUT.minusMonths(2), 200_000.0, 300_001.0, Found.FAILED, "S");
        assertThat(claims()).isEmpty();
    }

    @Test
    void onlyFailuresAndOnlyPartsWithAWarranty() {
        injector(12, 100_000, OUT.minusMonths(2), 1.0, 2.0, Found.WORN, "S");
        assertThat(claims()).isEmpty();
        fleet.injectors.clear();
        injector(0, 0, OUT.minusMonths(2), 1.0, 2.0, Found.FAILED, "S");
        assertThat(claims()).isEmpty();
    }

    @Test
    void whatASupplierWillAskForAndIsNotThereIsNamed() {
        injector(12, 100_000, OUT.minusMonths(2), null, null, Found.FAILED, null);
        assertThat(claims()).singleElement().satisfies(claim -> {
            assertThat(claim.km()).isNull();
            assertThat(claim.lacking())
                    .containsExactly("serial", "odometers at fitting and removal", "fault codes", "test values");
        });
    }

    @Test
    void withoutKmAWarrantyByKmAloneCannotBeShown() {
        injector(0, 100_000, OUT.minusMonths(2), null, null, Found.FAILED, null);
        assertThat(claims()).isEmpty();
    }

    @Test
    void listedForHalfAYear() {
        injector(12, 0, OUT.minusMonths(2), null, null, Found.FAILED, "S");
        FleetIndex index = new FleetIndex(fleet.build());
        assertThat(WarrantyClaims.of(index, OUT.plusDays(180))).hasSize(1);
        assertThat(WarrantyClaims.of(index, OUT.plusDays(181))).isEmpty();
        assertThat(WarrantyClaims.of(index, OUT.minusDays(1))).isEmpty();
    }
}
