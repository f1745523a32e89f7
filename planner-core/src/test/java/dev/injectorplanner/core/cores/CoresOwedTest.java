package dev.injectorplanner.core.cores;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The injector's core: deposit 120, 60 days. T1 has been in service since 2020-01-10. */
class CoresOwedTest {
    private final FleetBuilder fleet = new FleetBuilder().truck("T1");

    private void fitted(int cylinder, Origin origin, LocalDate on, LocalDate removed, String serial) {
        Found found = removed == null ? null : Found.WORN;
        fleet.injectors.add(new FittedInjector(
                "T1", cylinder, INJECTOR, serial, null, origin, on, null, null, removed, null, null, found));
    }

    private List<CoreOwed> cores() {
        return CoresOwed.of(new FleetIndex(fleet.build()), TODAY);
    }

    @Test
    void eachRemanFittedOwesTheUnitThatCameOut() {
        LocalDate day = TODAY.minusDays(20);
        fitted(3, Origin.NEW, LocalDate.of(2020, 1, 10), day, "OLD-1");
        fitted(3, Origin.REMAN, day, null, "R-1");
        assertThat(cores()).singleElement().satisfies(core -> {
            assertThat(core.cylinder()).isEqualTo(3);
            assertThat(core.oldSerial()).isEqualTo("OLD-1");
            assertThat(core.deposit()).isEqualByComparingTo("120");
            assertThat(core.lastDay()).isEqualTo(day.plusDays(60));
            assertThat(core.daysLeft()).isEqualTo(40);
            assertThat(core.state()).isEqualTo(CoreState.OPEN);
        });
    }

    @Test
    void newOnesAndThoseTheTruckCameWithOweNothing() {
        fitted(1, Origin.NEW, TODAY.minusDays(5), null, null);
        fleet.trucks.clear();
        fleet.readings.clear();
        fleet.truck("T1");
        fitted(2, Origin.REMAN, LocalDate.of(2020, 1, 10), null, null);
        fitted(4, Origin.REMAN, TODAY.plusDays(1), null, null);
        assertThat(cores()).isEmpty();
    }

    @Test
    void remindedInTimeAndShownForAMonthAfter() {
        fitted(1, Origin.REMAN, TODAY.minusDays(60 - 15), null, null);
        fitted(2, Origin.REMAN, TODAY.minusDays(60 - 14), null, null);
        fitted(3, Origin.REMAN, TODAY.minusDays(60), null, null);
        fitted(4, Origin.REMAN, TODAY.minusDays(61), null, null);
        fitted(5, Origin.REMAN, TODAY.minusDays(90), null, null);
        fitted(6, Origin.REMAN, TODAY.minusDays(91), null, null);
        assertThat(cores()).extracting(CoreOwed::cylinder).containsExactly(5, 4, 3, 2, 1);
        assertThat(cores())
                .extracting(CoreOwed::state)
                .containsExactly(
                        CoreState.PAST, CoreState.PAST, CoreState.SEND_NOW, CoreState.SEND_NOW, CoreState.OPEN);
    }

    private static UnitReturn sent(int cylinder, LocalDate fittedOn, LocalDate sentOn) {
        return new UnitReturn(
                UnitReturn.What.CORE,
                "T1",
                cylinder,
                fittedOn,
                "RN-1",
                sentOn,
                "Kim",
                new BigDecimal("120"),
                null,
                null,
                null,
                "");
    }

    @Test
    void whatWasSentIsOwedNoMore() {
        LocalDate day = TODAY.minusDays(20);
        fitted(1, Origin.REMAN, day, null, null);
        fitted(2, Origin.REMAN, day, null, null);
        fleet.returns.add(sent(2, day, TODAY));
        assertThat(cores()).extracting(CoreOwed::cylinder).containsExactly(1);
    }

    /**
     * By hand, today Monday 2 March 2026. Fitted 5 January: cylinder 1, sent, 120 credited in February; cylinder 2, sent,
     * 70 of 120 credited in February; cylinder 3, never sent, lost on 7 March, so still open; cylinder 4, fitted
     * 10 December, never sent, last day 8 February, lost on the 9th. January: opening 120 (cylinder 4), charged 360,
     * closing 480. February: credited 190, refused 50, lost 120, closing 120 (cylinder 3).
     */
    @Test
    void aMonthOfDepositsAddsUp() {
        assertThat(TODAY).isEqualTo(LocalDate.of(2026, 3, 2));
        LocalDate january = LocalDate.of(2026, 1, 5);
        for (int cylinder = 1; cylinder <= 3; cylinder++) {
            fitted(cylinder, Origin.REMAN, january, null, null);
        }
        fitted(4, Origin.REMAN, LocalDate.of(2025, 12, 10), null, null);
        LocalDate answered = LocalDate.of(2026, 2, 20);
        fleet.returns.add(
                sent(1, january, LocalDate.of(2026, 1, 20)).settled(answered, "Lee", new BigDecimal("120"), ""));
        fleet.returns.add(
                sent(2, january, LocalDate.of(2026, 1, 20)).settled(answered, "Lee", new BigDecimal("70"), "worn"));
        List<CoreMonth> months = CoreMonth.of(new FleetIndex(fleet.build()), TODAY, 12);
        assertThat(months)
                .extracting(month -> month.month() + " "
                        + Stream.of(
                                        month.opening(),
                                        month.charged(),
                                        month.credited(),
                                        month.refused(),
                                        month.lost(),
                                        month.closing())
                                .map(amount -> String.valueOf(amount.intValueExact()))
                                .collect(Collectors.joining(" ")))
                .containsExactly(
                        "2026-01 120 360 0 0 0 480", "2026-02 480 0 190 50 120 120", "2026-03 120 0 0 0 0 120");
    }

    /** Random fleets: each month closes with what the next opens with, and the last with all that is open today. */
    @Test
    void closingIsTheNextOpening() {
        for (int seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            fleet.injectors.clear();
            fleet.returns.clear();
            BigDecimal open = BigDecimal.ZERO;
            for (int cylinder = 1; cylinder <= 4; cylinder++) {
                LocalDate day = TODAY.minusDays(300);
                while (day.isBefore(TODAY)) {
                    LocalDate next = day.plusDays(20 + random.nextInt(90));
                    boolean last = !next.isBefore(TODAY);
                    fitted(cylinder, Origin.REMAN, day, last ? null : next, null);
                    UnitReturn row = sent(cylinder, day, day.plusDays(random.nextInt(20)));
                    int fate = row.sentOn().isAfter(TODAY) ? 0 : random.nextInt(3);
                    if (fate == 1) {
                        fleet.returns.add(row);
                        open = open.add(row.amount());
                    } else if (fate == 2 && row.sentOn().plusDays(9).isBefore(TODAY)) {
                        fleet.returns.add(row.settled(
                                row.sentOn().plusDays(9), "Lee", BigDecimal.valueOf(random.nextInt(121)), "as agreed"));
                    } else if (!day.plusDays(60).isBefore(TODAY)) {
                        open = open.add(row.amount());
                    }
                    day = next;
                }
            }
            List<CoreMonth> months = CoreMonth.of(new FleetIndex(fleet.build()), TODAY, 12);
            for (int m = 1; m < months.size(); m++) {
                assertThat(months.get(m).opening())
                        .as("seed %d, %s", seed, months.get(m).month())
                        .isEqualByComparingTo(months.get(m - 1).closing());
            }
            assertThat(months.get(months.size() - 1).closing())
                    .as("seed %d", seed)
                    .isEqualByComparingTo(open);
        }
    }
}
