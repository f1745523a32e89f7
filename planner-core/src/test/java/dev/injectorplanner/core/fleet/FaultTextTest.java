package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults as people write them. Codes of cylinders as in {@link dev.injectorplanner.core.fault.ObdCodes}, SAE J2012. */
class FaultTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "SPN 651 FMI 7 OC 3|SPN 651 FMI 7|3|",
                "spn:651, fmi:7, oc:3|SPN 651 FMI 7|3|",
                "SPN 651 FMI 7 (occurrences 12)|SPN 651 FMI 7|12|",
                "651/7|SPN 651 FMI 7||",
                "651-07|SPN 651 FMI 7||",
                "651 7|SPN 651 FMI 7||",
                "S651 F7 OC127|SPN 651 FMI 7|127|",
                "SPN 653 FMI 5 injector cyl 3 open circuit|SPN 653 FMI 5||3",
                "P0275|P0275||",
                "P0275-00|P0275||",
                "p0275:1a|P0275||",
                "P0275 Cyl 5 Contribution|P0275||5",
                "P0275-00 Cylinder 5 contribution/balance OC 2|P0275|2|5",
                "P0087 fuel rail pressure too low|P0087||",
                "cyl 3 contribution|P0269||3",
                "Cylinder #5 contribution/balance fault|P0275||5",
                "contribution cyl. 1|P0263||1",
                "misfire cylinder 4|P0304||4",
                "Injector 2 circuit|P0202||2",
                "cyl 2 injector circuit low|P0264||2",
                "cyl 2 injector circuit high|P0265||2"
            })
    void isReadAsItsCode(String text, String code, Integer count, Integer cylinder) {
        FaultText read = FaultText.read(text);
        assertThat(read.code().text()).isEqualTo(code);
        assertThat(read.count()).isEqualTo(count);
        assertThat(read.cylinder()).isEqualTo(cylinder);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "engine light on",
                "cyl 3",
                "cyl 3 smokes",
                "P02",
                "651",
                "SPN 651",
                "cyl 14 contribution",
                "651/77"
            })
    void whatNamesNoCodeIsRefused(String text) {
        assertThatThrownBy(() -> FaultText.read(text)).isInstanceOf(InvalidValueException.class);
    }

    @Test
    void wordsThatContradictTheCodeAreRefused() {
        assertThatThrownBy(() -> FaultText.read("P0275 Cyl 6 Contribution"))
                .hasMessage("code \"P0275 Cyl 6 Contribution\": says cylinder 6, but P0275 is for cylinder 5."
                        + " Fix: correct the code or the words.");
    }
}
