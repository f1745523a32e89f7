package dev.injectorplanner.core.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.history.RemainingDelay;
import dev.injectorplanner.core.history.UnitLife;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Injectors that fail sooner than those before them are noticed, and a fleet in which nothing changes is left in peace. */
class F04_ChangeWatchTest {
    private static final RemainingDelay DELAY = (part, clock) -> 7_000;
    private static final LocalDate NEVER = LocalDate.MAX;
    private static final LocalDate CHANGE = LocalDate.of(2025, 1, 1);

    private static List<LifeChange> found(List<UnitLife> lives, LocalDate today) {
        LifeBook all = LifeBook.of(List.of(MadeLives.PART), lives, DELAY);
        return new ChangeWatch(DELAY, today, part -> "Calder Diesel Supply").find(lives, all);
    }

    @Test
    void aHalvedLifeUnderTheSamePartNumberIsNoticedWithinTwoQuarters() {
        LocalDate today = CHANGE.plusMonths(6);
        int noticed = 0;
        for (int seed = 1; seed <= 10; seed++) {
            List<LifeChange> changes = found(new MadeLives(seed, 1_600, CHANGE, 0.5, 0).until(today), today);
            noticed += changes.stream().anyMatch(F04_ChangeWatchTest::isThatChange) ? 1 : 0;
        }
        assertThat(noticed).as("fleets of 10 whose change was noticed").isGreaterThanOrEqualTo(8);
    }

    private static boolean isThatChange(LifeChange change) {
        return change.origin() == Origin.NEW
                && !change.fittedFrom().isBefore(CHANGE.minusMonths(3))
                && change.failures() > 2 * change.expected()
                && change.supplier().equals("Calder Diesel Supply");
    }

    @Test
    void aSmallFleetTakesAYear() {
        LocalDate today = CHANGE.plusMonths(15);
        int noticed = 0;
        for (int seed = 1; seed <= 20; seed++) {
            noticed += found(new MadeLives(seed, 320, CHANGE, 0.5, 0).until(today), today)
                            .isEmpty()
                    ? 0
                    : 1;
        }
        assertThat(noticed).as("fleets of 20 whose change was noticed").isGreaterThanOrEqualTo(16);
    }

    @Test
    void whereNothingChangesTheAlarmIsRare() {
        int alarms = 0;
        for (int seed = 1; seed <= 30; seed++) {
            for (double early : new double[] {0, 0.08}) {
                LocalDate today = LocalDate.of(2026, 1, 1).plusDays(11L * seed);
                alarms += found(new MadeLives(1_000 + seed, 320, NEVER, 1, early).until(today), today)
                        .size();
            }
        }
        assertThat(alarms).as("alarms in 60 fleets of four years").isLessThanOrEqualTo(3);
    }

    @Test
    void whatIsFittedSinceHasALifeOfItsOwn() {
        LocalDate today = CHANGE.plusMonths(18);
        List<UnitLife> lives = new MadeLives(5, 1_600, CHANGE, 0.5, 0).until(today);
        LifeChange change = found(lives, today).get(0);
        LifeBook book = LifeBook.of(List.of(MadeLives.PART), lives, DELAY, List.of(change));
        assertThat(book.before(change).life().scale()).isCloseTo(420_000, within(40_000.0));
        assertThat(book.since(change).life().scale()).isCloseTo(210_000, within(30_000.0));
        assertThat(book.of(MadeLives.PART, Origin.NEW)).isEqualTo(book.since(change));
        assertThat(book.of(MadeLives.PART, Origin.NEW, CHANGE.minusYears(1))).isEqualTo(book.before(change));
    }

    /**
     * Steiner, Cook, Farewell and Treasure (2000): a patient's weight is log of the odds ratio after an event less the log
     * of its mean, which for small chances is failures x log(ratio) - (ratio - 1) x chance; the sum is held at 0.
     */
    @Test
    void theScoreIsTheirsForSmallChances() {
        FailureCusum sum = new FailureCusum(2);
        double theirs = 0;
        double chance = 0.001;
        for (int patient = 1; patient <= 5_000; patient++) {
            boolean event = patient % 600 == 0;
            theirs = Math.max(0, theirs + (event ? Math.log(2) : 0) - Math.log(1 - chance + 2 * chance));
            assertThat(sum.add(event ? 1 : 0, chance)).isCloseTo(theirs, within(0.02));
        }
        assertThat(sum.score()).isGreaterThan(0);
    }
}
