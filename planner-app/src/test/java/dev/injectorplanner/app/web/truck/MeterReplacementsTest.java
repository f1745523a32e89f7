package dev.injectorplanner.app.web.truck;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** An odometer replaced at 412,300 km, worked by hand. */
class MeterReplacementsTest {
    private static Reading reading(String day, @Nullable Double km, @Nullable Double hours, boolean replaced) {
        return new Reading("T1", Instant.parse(day + "T12:00:00Z"), km, hours, replaced);
    }

    private static MeterReplacements of(Reading... readings) {
        return new MeterReplacements(List.of(readings), SiteUnits.METRIC, ZoneOffset.UTC);
    }

    @Test
    void theOldMetersLastAndTheNewOnesFirstValueAreSaid() {
        MeterReplacements meters = of(
                reading("2026-02-01", 410_000.0, 9_000.0, false),
                reading("2026-03-02", 412_300.0, 9_100.0, false),
                reading("2026-03-03", 0.0, 9_104.0, true),
                reading("2026-03-10", 1_500.0, 9_130.0, false));
        assertThat(meters.list())
                .singleElement()
                .satisfies(each -> assertThat(each.words().replace('\u00a0', ' '))
                        .isEqualTo("Odometer replaced on 3 March 2026 at 412,300 km; the new one began at 0 km"));
        assertThat(meters.countedOn())
                .extracting(MeterReplacements.Point::km)
                .containsExactly(410_000.0, 412_300.0, 412_300.0, 413_800.0);
    }

    @Test
    void anHourMeterThatWentBackIsSaidAndOneThatDidNotIsNot() {
        MeterReplacements meters =
                of(reading("2026-02-01", 410_000.0, 9_000.0, false), reading("2026-03-03", 411_000.0, 12.0, true));
        assertThat(meters.list())
                .extracting(each -> each.words().replace('\u00a0', ' '))
                .containsExactly("Hour meter replaced on 3 March 2026 at 9,000 h; the new one began at 12 h");
    }

    @Test
    void aReadingThatGoesBackWithoutAReplacementIsLeftOutOfTheLine() {
        assertThat(of(
                                reading("2026-02-01", 1_000.0, null, false),
                                reading("2026-02-02", 100.0, null, false),
                                reading("2026-02-03", 1_200.0, null, false))
                        .countedOn())
                .extracting(MeterReplacements.Point::km)
                .containsExactly(1_000.0, 1_200.0);
    }
}
