package dev.injectorplanner.core.condition;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class E01_SignsTest {
    private static final LocalDate FITTED = TODAY.minusYears(2);

    private final FleetBuilder fleet = new FleetBuilder().truck("T1").rule(RuleKind.BALANCE, 4);

    private TruckSigns signs() {
        FleetSnapshot snapshot = fleet.build();
        FleetIndex index = new FleetIndex(snapshot);
        return new TruckSigns(index, snapshot.trucks().get(0), new RuleBook(snapshot)::ratio);
    }

    private Set<Sign> of(int cylinder) {
        return signs().on(cylinder, FITTED, TODAY);
    }

    @Test
    void aFaultOnOneDayIsLessThanFaultsOnTwo() {
        fleet.fault("T1", TODAY.minusDays(9), "SPN 653 FMI 7");
        assertThat(of(3)).containsExactly(Sign.ONE_FAULT);
        fleet.fault("T1", TODAY.minusDays(5), "SPN 653 FMI 7");
        assertThat(of(3)).containsExactly(Sign.FAULTS);
        assertThat(of(4)).isEmpty();
    }

    @Test
    void faultsAgeAndBelongToTheInjectorThatWasIn() {
        fleet.fault("T1", TODAY.minusDays(59), "SPN 653 FMI 7");
        assertThat(of(3)).containsExactly(Sign.ONE_FAULT);
        assertThat(signs().on(3, FITTED, TODAY.plusDays(1))).isEmpty();
        assertThat(signs().on(3, TODAY.minusDays(58), TODAY)).isEmpty();
    }

    @Test
    void theLatestTestOfAKindSpeaks() {
        fleet.test("T1", 2, TODAY.minusDays(50), TestKind.BALANCE, -4.5, "mm3/stroke");
        assertThat(of(2)).containsExactly(Sign.TEST);
        fleet.test("T1", 2, TODAY.minusDays(20), TestKind.BALANCE, 1.0, "mm3/stroke");
        assertThat(of(2)).isEmpty();
        fleet.test("T1", 2, TODAY.minusDays(10), TestKind.RETURN_FLOW, 61, "ml/min");
        assertThat(of(2)).containsExactly(Sign.TEST);
    }

    @Test
    void aTestInAnotherUnitSaysNothing() {
        fleet.test("T1", 2, TODAY.minusDays(50), TestKind.BALANCE, 90, "%");
        assertThat(of(2)).isEmpty();
    }

    /** P0087 rail pressure too low (SAE J2012); SPN 157 with FMI 18 below normal, FMI 4 a short (SAE J1939-73). */
    @Test
    void railPressureSpeaksAgainstTheWholeEngine() {
        fleet.fault("T1", TODAY.minusDays(3), "SPN 157 FMI 4");
        assertThat(of(1)).isEmpty();
        fleet.fault("T1", TODAY.minusDays(2), "SPN 157 FMI 18");
        assertThat(of(1)).containsExactly(Sign.RAIL);
        assertThat(of(8)).containsExactly(Sign.RAIL);
    }

    /** SPN 97 water in fuel (from memory of the SAE J1939 Digital Annex), SPN 94 delivery pressure; FMI 4 is a short. */
    @Test
    void waterAndSupplyPressureSpeakAgainstTheWholeEngine() {
        fleet.fault("T1", TODAY.minusDays(3), "SPN 94 FMI 4");
        assertThat(of(1)).isEmpty();
        fleet.fault("T1", TODAY.minusDays(2), "SPN 97 FMI 31");
        assertThat(of(5)).containsExactly(Sign.RAIL);
    }

    /** An episode over midnight is seen on two days. */
    @Test
    void anEpisodeIsSeenOnEachOfItsDays() {
        Instant noon = FleetBuilder.noon(TODAY.minusDays(3));
        FaultCode code = new FaultCode("SPN 653 FMI 7");
        fleet.faults.add(new Fault("T1", noon, code, null, 1, null, noon.plusSeconds(3_600)));
        assertThat(of(3)).containsExactly(Sign.ONE_FAULT);
        fleet.faults.set(0, new Fault("T1", noon, code, null, 1, null, noon.plusSeconds(20 * 3_600)));
        assertThat(of(3)).containsExactly(Sign.FAULTS);
    }

    /** Weeks run from the day after fitting: what was seen on the day itself belongs to the injector before. */
    @Test
    void aTrackBeginsTheDayAfterFitting() {
        fleet.fault("T1", FITTED, "SPN 653 FMI 7");
        fleet.fault("T1", FITTED.plusDays(1), "SPN 653 FMI 7");
        fleet.fault("T1", FITTED.plusDays(7), "SPN 653 FMI 7");
        fleet.fault("T1", FITTED.plusDays(8), "SPN 653 FMI 7");
        SignTrack track = signs().track(3, FITTED, TODAY, 4);
        assertThat(track.weeks()).isEqualTo(4);
        assertThat(track.faultDays(0)).isEqualTo(2);
        assertThat(track.faultDays(1)).isEqualTo(1);
        assertThat(track.faultDays(2)).isZero();
        assertThat(signs().on(3, FITTED, FITTED)).isEmpty();
    }

    @Test
    void signsAreSaidInWords() {
        assertThat(Sign.words(EnumSet.noneOf(Sign.class))).isEqualTo("no warning sign");
        assertThat(Sign.words(EnumSet.of(Sign.FAULTS, Sign.RAIL)))
                .isEqualTo("faults on several days, fuel pressure, leak or water fault of the engine");
    }

    /** A contact that comes and goes reports on many days and says one thing. */
    @Test
    void circuitFaultsOfManyDaysAreOneSign() {
        for (int day = 2; day < 12; day++) {
            fleet.fault("T1", TODAY.minusDays(day), "P0203");
        }
        assertThat(of(3)).containsExactly(Sign.CIRCUIT);
        SignTrack track = signs().track(3, TODAY.minusDays(40), TODAY, 6);
        int begun = 0;
        for (int week = 0; week < track.weeks(); week++) {
            assertThat(track.faultDays(week)).isZero();
            begun += track.circuit(week) ? 1 : 0;
        }
        assertThat(begun).isEqualTo(1);
        fleet.fault("T1", TODAY.minusDays(20), "P0303");
        assertThat(of(3)).containsExactlyInAnyOrder(Sign.ONE_FAULT, Sign.CIRCUIT);
    }
}
