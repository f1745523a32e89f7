package dev.injectorplanner.core.usage;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.testkit.Published;
import org.junit.jupiter.api.Test;

class MeterRulesTest {
    /** Pairs and verdicts: published/odometer_pairs.md. */
    @Test
    void publishedPairs() {
        for (String[] row : Published.rows("odometer_pairs.csv")) {
            MeterVerdict verdict = MeterRules.odometer(
                    Double.parseDouble(row[0]),
                    Double.parseDouble(row[1]),
                    Double.parseDouble(row[2]),
                    Boolean.parseBoolean(row[3]));
            assertThat(verdict).as(String.join(", ", row)).isEqualTo(MeterVerdict.valueOf(row[4]));
        }
    }

    /** A meter replaced at 412,300 km by one that shows 12 km: offset 412,288 km; when it shows 2,512 km, 414,800 km. */
    @Test
    void theOffsetCarriesOn() {
        double offset = MeterRules.offset(412_300, 12);
        assertThat(offset).isEqualTo(412_288);
        assertThat(2_512 + offset).isEqualTo(414_800);
    }

    @Test
    void anHourMeterCannotRunFasterThanTheClock() {
        assertThat(MeterRules.engineHours(1_000, 1_240, 10, false)).isEqualTo(MeterVerdict.ACCEPTED);
        assertThat(MeterRules.engineHours(1_000, 1_241, 10, false)).isEqualTo(MeterVerdict.IMPLAUSIBLE);
        assertThat(MeterRules.engineHours(1_000, 1_000, 10, false)).isEqualTo(MeterVerdict.NO_USE);
        assertThat(MeterRules.engineHours(1_000, 999, 10, false)).isEqualTo(MeterVerdict.ROLL_BACK);
    }

    /** A new odometer need not mean a new hour meter: hours that go on are taken as they are. */
    @Test
    void hoursThatGoOnOutliveANewOdometer() {
        assertThat(MeterRules.engineHours(1_000, 1_040, 7, true)).isEqualTo(MeterVerdict.ACCEPTED);
        assertThat(MeterRules.engineHours(1_000, 4, 7, true)).isEqualTo(MeterVerdict.REPLACED);
    }
}
