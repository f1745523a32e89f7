package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

/** What a code's counter says, worked by hand; the counter (occurrence count) is that of SAE J1939-73, cumulative. */
class OccurrencesTest {
    private static final Instant START = Instant.parse("2026-03-01T06:00:00Z");

    @Test
    void aReportWithoutACounterIsOneReportAndLeavesTheCounterAlone() {
        Occurrences occurrences = new Occurrences();
        occurrences.add(counted(0, 40));
        occurrences.add(uncounted(1));
        occurrences.add(counted(2, 41));
        assertThat(occurrences.total()).isEqualTo(3); // three reports; the counter rose by one
    }

    @Test
    void theCounterRisesOverAReportWithoutOne() {
        Occurrences occurrences = new Occurrences();
        occurrences.add(counted(0, 40));
        occurrences.add(uncounted(1));
        occurrences.add(counted(2, 47));
        assertThat(occurrences.total()).isEqualTo(7);
    }

    @Test
    void reportsWithoutCountersAreCountedOneByOne() {
        Occurrences occurrences = new Occurrences();
        occurrences.before(uncounted(0));
        occurrences.add(uncounted(1));
        occurrences.add(uncounted(2));
        assertThat(occurrences.total()).isEqualTo(2);
    }

    private static Fault counted(int day, int count) {
        return new Fault("T1", START.plusSeconds(day * 86_400L), FaultCode.of(651, 5), null, count, null);
    }

    private static Fault uncounted(int day) {
        return Fault.uncounted("T1", START.plusSeconds(day * 86_400L), FaultCode.of(651, 5), null, null);
    }
}
