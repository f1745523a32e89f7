package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.testkit.Published;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Check digits of 49 CFR 565.15(c), characters of ISO 3779: published/vin_check_digits.md. */
class VinTest {
    @Test
    void publishedNumbers() {
        for (String[] row : Published.rows("vin_check_digits.csv")) {
            assertThat(Vin.checkDigit(row[0])).as(row[0]).isEqualTo(row[3].charAt(0));
            if (Boolean.parseBoolean(row[5])) {
                assertThat(new Vin(row[0]).text()).isEqualTo(row[0]);
            } else {
                assertThatThrownBy(() -> new Vin(row[0]))
                        .hasMessageContaining("position 9 is " + row[4])
                        .hasMessageContaining("require " + row[3]);
            }
        }
    }

    @Test
    void malformedNumbersSayWhatIsWrong() {
        assertThatThrownBy(() -> new Vin("1M8GDM9AXKP04278")).hasMessageContaining("has 16 characters");
        assertThatThrownBy(() -> new Vin("1M8GDM9AXKP0427888")).hasMessageContaining("has 18 characters");
        for (String bad : List.of("1M8GDM9AXKPI42788", "1M8GDM9AXKPO42788", "1M8GDM9AXKPQ42788", "1M8GDM9A XKP42788")) {
            assertThatThrownBy(() -> new Vin(bad)).hasMessageContaining("in position");
        }
    }

    @Test
    void smallLettersAreRead() {
        assertThat(new Vin("1m8gdm9axkp042788").text()).isEqualTo("1M8GDM9AXKP042788");
    }

    /** Outside North America position 9 need hold no check digit (ISO 3779). */
    @Test
    void otherNumbersNeedNoCheckDigit() {
        assertThat(new Vin("ZZ908TRK000000017").text()).hasSize(17);
    }
}
