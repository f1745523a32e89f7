package dev.injectorplanner.core.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FaultCode;
import org.junit.jupiter.api.Test;

/** Which diagnosis a code asks for; SPN and FMI as SAE J1939-73 and J1939DA name them, from memory. */
class DiagnosisKindTest {
    @Test
    void leakPressureCircuitOrNone() {
        assertThat(DiagnosisKind.of(FaultCode.of(1239, 31))).contains(DiagnosisKind.LEAK);
        assertThat(DiagnosisKind.of(FaultCode.of(157, 18))).contains(DiagnosisKind.PRESSURE);
        assertThat(DiagnosisKind.of(FaultCode.of(94, 18))).contains(DiagnosisKind.PRESSURE);
        assertThat(DiagnosisKind.of(FaultCode.of(651, 5))).contains(DiagnosisKind.CIRCUIT);
        assertThat(DiagnosisKind.of(FaultCode.of(651, 7))).isEmpty();
    }

    @Test
    void eachIsFoundByItsNameInAddresses() {
        for (DiagnosisKind kind : DiagnosisKind.values()) {
            assertThat(DiagnosisKind.find(kind.key())).contains(kind);
            assertThat(kind.steps()).isNotEmpty();
        }
        assertThat(DiagnosisKind.find("LEAK")).isEmpty();
    }
}
