package dev.injectorplanner.core.fault;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FaultCode;
import org.junit.jupiter.api.Test;

/** Whatever a controller sends has words, a cylinder that an engine can have, and one written form. */
class EveryCodeTest {
    @Test
    void every_spn_and_fmi() {
        for (int spn = 0; spn <= SuspectParameters.MOST; spn += spn < 1_500 ? 1 : 997) {
            for (int fmi = 0; fmi <= FailureModes.MOST; fmi++) {
                CodeMeaning meaning = SuspectParameters.meaning(spn, fmi);
                assertThat(meaning.words()).isNotBlank();
                assertThat(meaning.withoutCylinder()).isNotNull();
                Integer cylinder = meaning.cylinder();
                if (cylinder != null) {
                    assertThat(cylinder).as("SPN %d", spn).isBetween(1, 24);
                }
                FaultCode code = FaultCode.of(spn, fmi);
                assertThat(code.spn()).isEqualTo(spn);
                assertThat(code.fmi()).isEqualTo(fmi);
                assertThat(code.electrical() && code.cylinder() == null).isFalse();
            }
        }
    }

    @Test
    void every_two_bytes_of_obd() {
        int circuits = 0;
        for (int bytes = 0; bytes <= 0xFFFF; bytes++) {
            String text = ObdCodes.text(bytes);
            assertThat(ObdCodes.isCode(text)).isTrue();
            CodeMeaning meaning = ObdCodes.meaning(text);
            assertThat(meaning.words()).isNotBlank();
            circuits += ObdCodes.isInjectorCircuit(text) ? 1 : 0;
            if (ObdCodes.isOfMaker(text)) {
                assertThat(meaning.cylinder()).as(text).isNull();
            }
        }
        assertThat(circuits)
                .as("twelve cylinders: the circuit, and its low and high")
                .isEqualTo(36);
    }
}
