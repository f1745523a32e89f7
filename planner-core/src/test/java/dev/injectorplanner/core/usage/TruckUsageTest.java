package dev.injectorplanner.core.usage;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.noon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Trucks whose meters are told by hand. The ordinary one runs 1,400 km and 20 h a week, 300,000 km today. */
class TruckUsageTest {
    private final FleetBuilder fleet = new FleetBuilder();

    private FleetUsage usage() {
        return new FleetUsage(new FleetIndex(fleet.build()), 365, TODAY);
    }

    private MeterUsage odometer() {
        return usage().of("T1").odometer();
    }

    private void readings(double... kmByWeek) {
        fleet.truck("T1");
        fleet.readings.clear();
        for (int i = 0; i < kmByWeek.length; i++) {
            fleet.reading("T1", TODAY.minusWeeks(kmByWeek.length - 1L - i), kmByWeek[i], null);
        }
    }

    private void replacedMeter(LocalDate day, double km) {
        fleet.readings.add(new Reading("T1", noon(day), km, null, true));
    }

    @Test
    void steadyUse() {
        fleet.truck("T1");
        assertThat(odometer().perWeek()).isCloseTo(1_400, within(1e-6));
        assertThat(odometer().spreadPerWeek()).isCloseTo(0, within(1e-6));
        assertThat(usage().of("T1").engineHours().perWeek()).isCloseTo(20, within(1e-6));
    }

    @Test
    void aWordlessStepBackIsFlaggedAndLeftOut() {
        readings(1_000, 2_000, 3_000, 1_500, 5_000, 6_000);
        assertThat(odometer().perWeek()).isCloseTo(1_000, within(1e-6));
        assertThat(usage().flags())
                .singleElement()
                .satisfies(flag -> assertThat(flag.verdict()).isEqualTo(MeterVerdict.ROLL_BACK))
                .satisfies(flag -> assertThat(flag.words())
                        .isEqualTo("truck T1, 2026-02-16T12:00:00Z: odometer 1,500 km is below an earlier reading; set"
                                + " meter_replaced if the meter was replaced"));
    }

    @Test
    void aPeakAgainstTheReadingsAroundItIsTheOneLeftOut() {
        readings(1_000, 2_000, 9_000, 4_000, 5_000, 6_000);
        assertThat(odometer().perWeek()).isCloseTo(1_000, within(1e-6));
        assertThat(usage().flags()).extracting(MeterFlag::value).containsExactly(9_000.0);
        assertThat(odometer().track().size()).isEqualTo(5);
    }

    @Test
    void afterAStepBackNothingIsGuessedUntilToldOfTheNewMeter() {
        readings(400_000, 401_000, 402_000, 100, 1_100, 2_100, 3_100);
        assertThat(usage().flags()).hasSize(4);
        assertThat(odometer().meterOn(TODAY)).isCloseTo(402_000 + 4 * 1_000, within(1e-6));
    }

    @Test
    void aMeterNotedOffAnUntoldNewOdometerMakesNoInjectorAMillionKmOld() {
        readings(400_000, 401_000, 402_000, 100, 1_100, 2_100, 3_100);
        LocalDate fitted = TODAY.minusWeeks(2);
        fleet.injector("T1", 3, fitted, 1_100.0);
        fleet.injector("T1", 4, TODAY.minusWeeks(5), 401_000.0);
        assertThat(usage().injectorAges())
                .extracting(InjectorAge::km)
                .satisfiesExactly(
                        km -> assertThat(km)
                                .as("by the readings around its fitting, not 404,900")
                                .isCloseTo(2_000, within(1e-6)),
                        km -> assertThat(km).isCloseTo(5_000, within(1e-6)));
    }

    @Test
    void aReplacedMeterGoesOnWhereTheOldOneStopped() {
        readings(400_000, 401_000, 402_000);
        replacedMeter(TODAY.plusWeeks(-1).plusDays(3), 200);
        fleet.readings.removeIf(reading -> reading.takenAt().equals(noon(TODAY)));
        fleet.reading("T1", TODAY, 772.0, null);
        assertThat(usage().flags()).isEmpty();
        MeterUsage usage = odometer();
        assertThat(usage.track().size()).isEqualTo(4);
        assertThat(usage.meterOn(TODAY)).isCloseTo(401_000 + 3_000 / 7.0 + 572, within(1e-6));
    }

    @Test
    void ageCountsAcrossAReplacedMeter() {
        readings(400_000, 401_000, 402_000, 403_000);
        fleet.readings.removeIf(reading -> reading.odometerKm() == 403_000);
        replacedMeter(TODAY, 0);
        fleet.injector("T1", 1, TODAY.minusWeeks(2), 401_000.0);
        assertThat(usage().injectorAges().get(0).km()).isCloseTo(2_000, within(1e-6));
    }

    @Test
    void aSixDigitMeterRollsOver() {
        readings(997_000, 998_500, 0, 1_500, 3_000);
        assertThat(usage().flags()).isEmpty();
        assertThat(odometer().perWeek()).isCloseTo(1_500, within(1e-6));
        assertThat(odometer().meterOn(TODAY)).isCloseTo(1_003_000, within(1e-6));
    }

    @Test
    void parkedTimeCounts() {
        readings(0, 1_000, 2_000, 2_000, 2_000, 2_000, 2_000, 2_000, 2_000);
        assertThat(odometer().perWeek()).isLessThan(400);
    }

    @Test
    void spreadIsTheScatterOfTheWeeks() {
        readings(0, 900, 2_000, 2_900, 4_000, 4_900, 6_000, 6_900, 8_000);
        assertThat(odometer().perWeek()).isCloseTo(1_000, within(1e-6));
        assertThat(odometer().spreadPerWeek()).isCloseTo(1.4826 * 100, within(1e-6));
    }

    @Test
    void ageByTheReadingsAroundWhereTheOdometerWasNotNoted() {
        fleet.truck("T1").injector("T1", 1, TODAY.minusDays(10 * 7 + 3), null);
        assertThat(usage().injectorAges().get(0).km()).isCloseTo(10 * 1_400 + 600, within(1e-6));
    }

    @Test
    void ageByUsageWhereItWentInBeforeTheFirstReading() {
        fleet.truck("T1").injector("T1", 1, TODAY.minusWeeks(100), null);
        assertThat(usage().injectorAges().get(0).km()).isCloseTo(140_000, within(1e-6));
        assertThat(usage().injectorAges().get(0).hours()).isCloseTo(2_000, within(1e-6));
    }

    @Test
    void anOdometerAboveTodaysIsNotBelieved() {
        fleet.truck("T1").injector("T1", 1, TODAY.minusWeeks(10), 900_000.0);
        assertThat(usage().injectorAges().get(0).km()).isCloseTo(14_000, within(1e-6));
        assertThat(usage().disbelievedOdometers()).containsExactly("truck T1 cylinder 1");
    }

    @Test
    void ageIsNotKnownWithoutAnyReading() {
        fleet.truck("T1").injector("T1", 1, TODAY.minusWeeks(10), 900_000.0);
        fleet.readings.clear();
        assertThat(usage().injectorAges().get(0).km()).isNull();
        assertThat(usage().trucksWithoutUsage()).containsExactly("T1");
    }

    @Test
    void readingsAfterTodayAreLeftAlone() {
        fleet.truck("T1").reading("T1", TODAY.plusWeeks(1), 900_000.0, null);
        assertThat(odometer().meterOn(TODAY)).isCloseTo(300_000, within(1e-6));
    }

    @Test
    void weeksAheadAddUsage() {
        fleet.truck("T1").injector("T1", 1, TODAY.minusWeeks(10), 286_000.0);
        InjectorAge age = usage().injectorAges().get(0);
        assertThat(age.km()).isCloseTo(14_000, within(1e-6));
        assertThat(age.kmIn(4)).isCloseTo(19_600, within(1e-6));
    }

    @Test
    void longHistoriesAreThinnedWithoutLosingTheSlope() {
        fleet.truck("T1");
        fleet.readings.clear();
        for (int hour = 0; hour < 24 * 80; hour++) {
            double km = 100_000 + 10.0 * hour;
            fleet.readings.add(new Reading("T1", noon(TODAY).minusSeconds(3_600L * (24 * 80 - hour)), km, null, false));
        }
        assertThat(odometer().perWeek()).isCloseTo(1_680, within(1e-6));
    }
}
