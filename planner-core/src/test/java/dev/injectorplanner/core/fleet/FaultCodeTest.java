package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Cylinders in codes. Source: SAE J2012 / ISO 15031-6 numbering: injector circuit P0200+n, low P0(261+3(n-1)), high
 * P0(262+3(n-1)), contribution or balance P0(263+3(n-1)), misfire P0300+n, n from 1 to 12; SAE J1939 Digital Annex: SPN
 * 651 is the injector of cylinder 1, and so on.
 */
class FaultCodeTest {
    @Test
    void everyCylinderOfSaeJ2012() {
        for (int n = 1; n <= 12; n++) {
            List<Integer> numbers = List.of(200 + n, 261 + 3 * (n - 1), 262 + 3 * (n - 1), 263 + 3 * (n - 1), 300 + n);
            for (int number : numbers) {
                assertThat(new FaultCode("P0" + number).cylinder())
                        .as("P0%d", number)
                        .isEqualTo(n);
            }
        }
    }

    @Test
    void neighboursOfTheRangesNameNoCylinder() {
        for (String code :
                List.of("P0200", "P0213", "P0260", "P0297", "P0300", "P0313", "P0087", "P0611", "P1201", "U0100")) {
            assertThat(new FaultCode(code).cylinder()).as(code).isNull();
        }
    }

    @Test
    void injectorsOfSaeJ1939() {
        assertThat(new FaultCode("SPN 651 FMI 5").cylinder()).isEqualTo(1);
        assertThat(new FaultCode("658/7").cylinder()).isEqualTo(8);
        assertThat(new FaultCode("650/7").cylinder()).isNull();
        assertThat(new FaultCode("157/18").cylinder()).isNull();
    }

    @Test
    void oneWrittenForm() {
        for (String given : List.of("651/5", "SPN651 FMI5", "spn 651 fmi 5", "651-5", "SPN: 651 FMI: 5")) {
            assertThat(new FaultCode(given).text()).as(given).isEqualTo("SPN 651 FMI 5");
        }
        assertThatThrownBy(() -> new FaultCode("banana")).hasMessageContaining("write it as SPN 651 FMI 5");
    }
}
