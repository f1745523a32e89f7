package dev.injectorplanner.core.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.WeibullFit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class D02_LifeBookTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final RemainingDelay NONE = (part, clock) -> 0;

    /** A unit whose truck runs at its own pace: km and hours, seen from new. */
    private static UnitLife unit(Origin origin, double km, double hours, LifeEnd end) {
        return new UnitLife(
                "T",
                1,
                "P",
                origin,
                DAY.minusDays(900),
                DAY.minusDays(900),
                DAY,
                end,
                new Span(0, km),
                new Span(0, hours));
    }

    private static LifeBook book(List<UnitLife> units, RemainingDelay remaining) {
        LifeBook book = LifeBook.of(List.of("P"), units, remaining);
        assertThat(book.lives()).extracting(PartLife::origin).containsExactly(Origin.NEW, Origin.REMAN);
        return book;
    }

    /** Weibull lives in km (shape 3, scale 300,000) or hours (scale 6,000); trucks pace between 30 and 70 km a hour. */
    private static List<UnitLife> units(long seed, int count, boolean wearByHours) {
        Random random = new Random(seed);
        List<UnitLife> units = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double pace = 30 + 40 * random.nextDouble();
            double life = Math.pow(-Math.log1p(-random.nextDouble()), 1 / 3.0);
            double km = wearByHours ? 6_000 * life * pace : 300_000 * life;
            units.add(unit(Origin.NEW, km, km / pace, LifeEnd.FAILED));
        }
        return units;
    }

    @Test
    void theClockByWhichTheyWearIsFound() {
        for (long seed = 1; seed <= 5; seed++) {
            assertThat(book(units(seed, 60, false), NONE).of("P", Origin.NEW).clock())
                    .as("seed %d", seed)
                    .isEqualTo(Clock.DISTANCE);
            assertThat(book(units(seed, 60, true), NONE).of("P", Origin.NEW).clock())
                    .as("seed %d", seed)
                    .isEqualTo(Clock.HOURS);
        }
    }

    /** Where all trucks have one pace, hours are km in another unit: the Jacobian makes the likelihoods equal. */
    @Test
    void atOnePaceBothClocksAreEquallyLikely() {
        List<UnitLife> units = new ArrayList<>();
        units(3, 40, false)
                .forEach(unit ->
                        units.add(unit(Origin.NEW, unit.km().exit(), unit.km().exit() / 50, LifeEnd.FAILED)));
        assertThat(new ClockChoice("P", units, NONE).distanceOverHours()).isCloseTo(0, within(1e-6));
        assertThat(book(units, NONE).of("P", Origin.NEW).clock()).isEqualTo(Clock.DISTANCE);
    }

    @Test
    void withEnoughFailuresTheModelIsTheMaximumLikelihoodFit() {
        List<UnitLife> units = units(7, 40, false);
        PartLife life = book(units, NONE).of("P", Origin.NEW);
        double[] exits = units.stream().mapToDouble(unit -> unit.km().exit()).toArray();
        boolean[] events = new boolean[exits.length];
        java.util.Arrays.fill(events, true);
        assertThat(life.source()).isEqualTo(LifeSource.FITTED);
        assertThat(life.life())
                .isEqualTo(WeibullFit.of(LifeRecords.of(exits, events)).life());
        assertThat(life.failures()).isEqualTo(40);
    }

    @Test
    void anOriginWithoutFailuresBorrowsFromTheOther() {
        List<UnitLife> units = units(8, 60, false);
        units.add(unit(Origin.REMAN, 20_000, 400, LifeEnd.IN_SERVICE));
        LifeBook book = book(units, NONE);
        PartLife reman = book.of("P", Origin.REMAN);
        assertThat(reman.source()).isEqualTo(LifeSource.POSTERIOR);
        assertThat(reman.prior()).isEqualTo("the part's other origin");
        assertThat(reman.life().scale())
                .isCloseTo(book.of("P", Origin.NEW).life().scale(), within(20_000.0));
    }

    @Test
    void withoutRecordsThePriorAloneSpeaksAndSaysSo() {
        PartLife life = book(List.of(), NONE).of("P", Origin.NEW);
        assertThat(life.source()).isEqualTo(LifeSource.PRIOR);
        assertThat(life.prior()).isEqualTo("planner default");
        assertThat(life.life().scale()).isCloseTo(400_000, within(1.0));
        assertThat(life.life().shape()).isCloseTo(2.5, within(1e-6));
    }

    @Test
    void oneFoundWornCountsAsAFailureSomeWayLaterAndOneFoundHealthyAsAliveThen() {
        List<UnitLife> units = new ArrayList<>(units(9, 30, false));
        units.add(unit(Origin.NEW, 200_000, 4_000, LifeEnd.WORN));
        units.add(unit(Origin.NEW, 210_000, 4_200, LifeEnd.HEALTHY));
        units.add(unit(Origin.NEW, 220_000, 4_400, LifeEnd.TAKEN_OUT));
        LifeRecords records = PartFit.records(units, Clock.DISTANCE, 9_000);
        assertThat(records.exit(30)).isEqualTo(209_000);
        assertThat(records.isEvent(30)).isTrue();
        assertThat(records.exit(31)).isEqualTo(219_000);
        assertThat(records.isEvent(31)).isFalse();
        assertThat(records.exit(32)).isEqualTo(220_000);
        assertThat(book(units, NONE).of("P", Origin.NEW).worn()).isEqualTo(1);
    }
}
