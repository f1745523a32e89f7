package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A truck with an active fuel leak or a fault of its fuel pressure comes in by a date. Codes: SAE J2012 / ISO 15031-6
 * (P0087, P0088, P008A, P008B, P0093, P0094) and SAE J1939-71 / -73 (SPN 94, 157, 1239, 1240; FMI 0, 1, 16, 18), from memory.
 * Three days and a window of thirty are common practice.
 */
class H01_FuelLeakMustNotWaitTest {
    private static final IsoWeek THIS_WEEK = new IsoWeek(2026, 10);

    private final FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 10_000);

    private List<DueItem> safety(Plan plan) {
        return plan.dueItems().stream()
                .filter(item -> item.kind() == DueKind.SAFETY)
                .toList();
    }

    @Test
    void aLeakSeenYesterdayBringsTheTruckInThisWeek() {
        Plan plan = PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(1), "P0093").build());
        DueItem leak = plan.dueItems().get(0);
        assertThat(leak.kind()).isEqualTo(DueKind.SAFETY);
        assertThat(leak.by()).isEqualTo(TODAY.plusDays(2));
        assertThat(leak.evidence())
                .isEqualTo("large fuel leak (P0093) reported on 2026-03-01, no repair recorded since");
        assertThat(leak.limit()).startsWith("safety: in the bay within 3 days");
        assertThat(leak.limitSource()).isEqualTo("planner default");
        Visit visit = plan.visits().get(0);
        assertThat(visit.week()).isEqualTo(THIS_WEEK);
        assertThat(visit.diagnosis()).isTrue();
        assertThat(visit.tasks()).containsExactly(Visit.DIAGNOSIS);
        assertThat(visit.labourHours()).isEqualTo(1.5);
        assertThat(DepotDays.find(plan.days(), visit).orElseThrow().start()).isEqualTo(TODAY.atTime(7, 0));
        assertThat(visit.dueItems().get(0)).isEqualTo(leak);
        assertThat(plan.cost().brokenWishes()).isEmpty();
    }

    @Test
    void aRuleOfTheSiteSaysHowSoonForItsFamily() {
        Plan plan = PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(1), "P0093")
                .rule(RuleKind.SAFETY, 1)
                .build());
        DueItem leak = safety(plan).get(0);
        assertThat(leak.by()).isEqualTo(TODAY);
        assertThat(leak.limit()).startsWith("safety: in the bay within 1 day of");
        assertThat(leak.limitSource()).isEqualTo("site rule");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "P0087",
                "P0088",
                "P008A",
                "P008B",
                "P0093",
                "P0094",
                "SPN 157 FMI 0",
                "SPN 157 FMI 1",
                "SPN 157 FMI 16",
                "SPN 157 FMI 18",
                "SPN 94 FMI 1",
                "SPN 94 FMI 18",
                "SPN 1239 FMI 31",
                "SPN 1240 FMI 0"
            })
    void codesThatMustNotWait(String code) {
        assertThat(safety(
                        PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(2), code).build())))
                .hasSize(1);
    }

    /** Least severe levels, the sensor's own faults and an injector's circuit ask for no such haste. */
    @ParameterizedTest
    @ValueSource(
            strings = {"SPN 157 FMI 15", "SPN 157 FMI 17", "SPN 157 FMI 3", "P0191", "P0193", "P0201", "SPN 651 FMI 5"})
    void codesThatMayWait(String code) {
        assertThat(safety(
                        PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(2), code).build())))
                .isEmpty();
    }

    /** A leak that a log shows before a repair and still after it has not been cured. */
    @Test
    void anEpisodeThatOutlastsTheRepairStaysOpen() {
        Instant at = FleetBuilder.noon(TODAY.minusDays(3));
        FaultCode code = new FaultCode("SPN 1239 FMI 31");
        fleet.repair("T1", TODAY.minusDays(2), "return line replaced", "Kim");
        fleet.faults.add(new Fault("T1", at, code, null, 1, null, at.plusSeconds(86_400)));
        assertThat(safety(PlanOf.fleet(fleet.build()))).isEmpty();
        fleet.faults.set(0, new Fault("T1", at, code, null, 1, null, at.plusSeconds(2 * 86_400)));
        assertThat(safety(PlanOf.fleet(fleet.build()))).hasSize(1);
    }

    @Test
    void anInjectorFittedOnALaterDayIsTheCure() {
        fleet.fault("T1", TODAY.minusDays(9), "P0093");
        fleet.injectors.removeIf(row -> row.cylinder() == 3);
        fleet.injector("T1", 3, TODAY.minusDays(8), 298_500.0);
        assertThat(safety(PlanOf.fleet(fleet.build()))).isEmpty();
    }

    @Test
    void aSightingOnTheDayOfFittingOrAfterItIsActive() {
        fleet.injectors.removeIf(row -> row.cylinder() == 3);
        fleet.injector("T1", 3, TODAY.minusDays(8), 298_500.0);
        fleet.fault("T1", TODAY.minusDays(9), "P0093").fault("T1", TODAY.minusDays(8), "P0094");
        assertThat(safety(PlanOf.fleet(fleet.build())))
                .singleElement()
                .satisfies(leak -> assertThat(leak.evidence()).startsWith("small fuel leak (P0094)"));
    }

    /** Silence closes nothing: neither thirty days nor four hundred without another report. */
    @Test
    void silenceDoesNotCloseIt() {
        for (int days : new int[] {29, 30, 31, 400}) {
            FleetBuilder one = new FleetBuilder().truck("T1").allInjectors("T1", 10_000);
            assertThat(safety(PlanOf.fleet(
                            one.fault("T1", TODAY.minusDays(days), "P0093").build())))
                    .as("%d days", days)
                    .hasSize(1);
        }
    }

    @Test
    void aRecordedRepairOfTheFuelSystemClosesIt() {
        fleet.fault("T1", TODAY.minusDays(9), "P0093");
        assertThat(safety(PlanOf.fleet(fleet.repair("T1", TODAY.minusDays(9), "return line replaced", "Kim")
                        .build())))
                .isEmpty();
        fleet.fault("T1", TODAY.minusDays(8), "P0093");
        assertThat(safety(PlanOf.fleet(fleet.build()))).as("reported again").hasSize(1);
    }

    @Test
    void noFaultFoundWithANameClosesIt() {
        fleet.fault("T1", TODAY.minusDays(9), "SPN 157 FMI 18");
        assertThat(safety(PlanOf.fleet(fleet.repair("T1", TODAY.minusDays(3), "No fault found", "Kim")
                        .build())))
                .isEmpty();
    }

    /** New brakes stop no leak, nor does a repair before it or one that is still to come. */
    @Test
    void anotherRepairClosesNothing() {
        fleet.fault("T1", TODAY.minusDays(9), "P0093");
        fleet.repair("T1", TODAY.minusDays(8), "brake pads, rear axle", "Kim")
                .repair("T1", TODAY.minusDays(10), "fuel line replaced", "Kim")
                .repair("T1", TODAY.plusDays(1), "fuel line replaced", "Kim");
        assertThat(safety(PlanOf.fleet(fleet.build()))).hasSize(1);
    }

    /** Seen every few days for longer than the window, it is due from the first report of that run, however it goes on. */
    @Test
    void aLeakSeenAgainAndAgainIsDueFromItsFirstSighting() {
        fleet.rule(RuleKind.SAFETY, 45).fault("T1", TODAY.minusDays(200), "P0094");
        for (int day = 60; day > 0; day -= 5) {
            fleet.fault("T1", TODAY.minusDays(day), "P0094");
        }
        assertThat(safety(PlanOf.fleet(fleet.build()))).singleElement().satisfies(leak -> {
            assertThat(leak.by()).isEqualTo(TODAY.minusDays(60).plusDays(45));
            assertThat(leak.evidence())
                    .startsWith("small fuel leak (P0094) reported from " + TODAY.minusDays(200) + " to "
                            + TODAY.minusDays(5));
        });
    }

    /** 9.5 h a week and one bay, all of it asked for by a truck that saves far more: the diagnosis takes the first day. */
    @Test
    void itComesBeforeOthersThatSaveMore() {
        FleetBuilder busy =
                new FleetBuilder().withDepot(1, 1.9, 0).onShelf(8).truck("T1").truck("T2");
        busy.allInjectors("T1", 10_000).allInjectors("T2", 260_000).rule(RuleKind.DISTANCE_KM, 200_000);
        Plan without = PlanOf.fleet(busy.build());
        assertThat(without.visits().get(0).truck()).isEqualTo("T2");
        assertThat(without.visits().get(0).week()).isEqualTo(THIS_WEEK);
        Plan plan = PlanOf.fleet(
                busy.fault("T1", TODAY.minusDays(1), "SPN 157 FMI 18").build());
        assertThat(diagnosisDay(plan)).isEqualTo(TODAY);
        assertThat(plan.visits()).anyMatch(visit -> visit.truck().equals("T2"));
    }

    private static LocalDate diagnosisDay(Plan plan) {
        return plan.safety().get(0).start().toLocalDate();
    }

    /** Nothing but the truck's own absence holds it back, and that is told on top. */
    @Test
    void awayItComesOnTheFirstDayBackAndTheReasonIsTold() {
        fleet.away.add(new AwayWindow("T1", TODAY.minusDays(3), TODAY.plusDays(9), "harvest"));
        Plan plan = PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(1), "P0088").build());
        assertThat(diagnosisDay(plan)).isEqualTo(TODAY.plusDays(10));
        assertThat(plan.safety().get(0).words())
                .contains("the truck is away 2026-02-27 to 2026-03-11 (harvest)")
                .endsWith("Do not drive it before then.");
    }

    @Test
    void blocksPinsDutyGroupsAndPartsDoNotHoldItBack() {
        FleetBuilder grouped = new FleetBuilder().truck("T1", "line").allInjectors("T1", 10_000);
        grouped.dutyGroups.add(new DutyGroup("line", 1, new BigDecimal("100")));
        grouped.fault("T1", TODAY.minusDays(1), "P0088");
        Holds blocked = new Holds(Map.of(), Map.of("T1", Set.of()), Map.of());
        Holds pinned = new Holds(Map.of("T1", THIS_WEEK.plus(4)), Map.of(), Map.of());
        Holds beyond = new Holds(Map.of("T1", THIS_WEEK.plus(40)), Map.of(), Map.of());
        for (Holds holds : List.of(Holds.none(), blocked, pinned, beyond)) {
            assertThat(diagnosisDay(PlanOf.held(grouped.build(), holds))).isEqualTo(TODAY);
        }
    }

    /** A Saturday: the first open day is Monday. */
    @Test
    void aClosedDayIsNotProposed() {
        fleet.fault("T1", TODAY.plusDays(4), "P0088");
        Plan plan = PlanOf.planner().plan(fleet.build(), Policy.standard(), TODAY.plusDays(5));
        assertThat(diagnosisDay(plan)).isEqualTo(TODAY.plusDays(7));
    }

    @Test
    void heldOffItIsToldOnTopWithTheName() {
        fleet.fault("T1", TODAY.minusDays(1), "P0088");
        HeldOff held = new HeldOff("parked behind the hall, key with me", "dana", TODAY, Set.of("P0088"));
        Plan plan = PlanOf.held(fleet.build(), Holds.none().withHeldOff(Map.of("T1", held)));
        assertThat(plan.visits()).noneMatch(Visit::diagnosis);
        assertThat(plan.safety().get(0).words())
                .contains("HELD OFF by dana since 2026-03-02: parked behind the hall, key with me")
                .contains(SafetyCase.WARNING);
        fleet.fault("T1", TODAY.minusDays(1), "P0093");
        assertThat(diagnosisDay(PlanOf.held(fleet.build(), Holds.none().withHeldOff(Map.of("T1", held)))))
                .as("another code that nobody spoke of")
                .isEqualTo(TODAY);
    }

    /** What is due anyway comes in a second visit, after the day of the diagnosis. */
    @Test
    void injectorsThatAreDueFollowTheDiagnosis() {
        FleetBuilder due = new FleetBuilder().onShelf(8).truck("T1").allInjectors("T1", 260_000);
        due.rule(RuleKind.DISTANCE_KM, 200_000).fault("T1", TODAY.minusDays(1), "P0093");
        Plan plan = PlanOf.fleet(due.build());
        assertThat(plan.visits()).extracting(Visit::diagnosis).containsExactly(true, false);
        Visit second = plan.visits().get(1);
        assertThat(second.cylinders()).hasSize(8);
        assertThat(DepotDays.find(plan.days(), second).orElseThrow().start())
                .isAfter(TODAY.plusDays(1).atStartOfDay());
    }

    /** One who knows of a small leak is still told of a large one. */
    @Test
    void eachCodeIsAFindingOfItsOwn() {
        fleet.fault("T1", TODAY.minusDays(2), "P0094").fault("T1", TODAY.minusDays(1), "P0093");
        assertThat(safety(PlanOf.fleet(fleet.build())))
                .extracting(DueItem::faultCode)
                .containsExactly("P0094", "P0093");
    }
}
