package dev.injectorplanner.core.fault;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.testkit.Published;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Meanings of codes. Sources: published/fault_codes.md; what is from memory is said at each check. */
class CodeMeaningTest {
    @Test
    void injectorNumbersOfTheDigitalAnnex() {
        for (String[] row : Published.rows("spn_injectors.csv")) {
            CodeMeaning meaning = SuspectParameters.meaning(Integer.parseInt(row[0]), 5);
            assertThat(meaning.cylinder()).as(row[0]).isEqualTo(Integer.valueOf(row[1]));
            assertThat(meaning.subject()).isEqualTo(FaultSubject.INJECTOR);
            assertThat(meaning.words())
                    .isEqualTo("injector of cylinder " + row[1] + ": current below normal or open circuit");
        }
    }

    /** From memory of the Digital Annex: 1322 several cylinders, 1323 to 1330 cylinders 1 to 8. */
    @Test
    void misfireNumbers() {
        assertThat(new FaultCode("1322/11").cylinder()).isNull();
        assertThat(new FaultCode("1322/11").meaning().subject()).isEqualTo(FaultSubject.MISFIRE);
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            assertThat(FaultCode.of(1322 + cylinder, 31).cylinder()).isEqualTo(cylinder);
            assertThat(FaultCode.of(1322 + cylinder, 31).meaning().words())
                    .isEqualTo("misfire of cylinder " + cylinder);
        }
    }

    /** The published meanings and ours share their telling words. */
    @Test
    void everyFailureModeHasItsWords() {
        Map<String, String> telling = Map.of(
                "above normal operation", "too high",
                "above normal operating", "too high",
                "below normal operation", "too low",
                "below normal operating", "too low",
                "most severe", "most severe",
                "least severe", "least severe",
                "moderately", "moderately",
                "Voltage above", "voltage above",
                "open circuit", "open circuit",
                "Reserved", "reserved");
        List<String[]> rows = Published.rows("fmi.csv");
        assertThat(rows).hasSize(32);
        for (String[] row : rows) {
            String ours = FailureModes.words(Integer.parseInt(row[0]));
            telling.forEach((theirs, word) -> assertThat(ours.contains(word))
                    .as("FMI %s, %s: %s", row[0], row[1], ours)
                    .isEqualTo(telling.entrySet().stream()
                            .anyMatch(each -> each.getValue().equals(word) && row[1].contains(each.getKey()))));
        }
    }

    @Test
    void obdCodesAsListed() {
        Map<String, String> kinds = Map.of(
                "circuit_open", "circuit open",
                "circuit_low", "circuit low",
                "circuit_high", "circuit high",
                "contribution_balance", "contribution or balance",
                "misfire", "misfire");
        for (String[] row : Published.rows("obd_codes.csv")) {
            FaultCode code = new FaultCode(row[0]);
            assertThat(code.cylinder()).as(row[0]).isEqualTo(row[1].isEmpty() ? null : Integer.valueOf(row[1]));
            assertThat(code.meaning().subject()).as(row[0]).isNotEqualTo(FaultSubject.UNTRANSLATED);
            if (!row[2].isEmpty()) {
                assertThat(code.meaning().words()).as(row[0]).contains(kinds.get(row[2]));
            }
        }
    }

    @Test
    void twoBytesAndText() {
        for (String[] row : Published.rows("obd_two_bytes.csv")) {
            assertThat(ObdCodes.text(Integer.parseInt(row[0], 16))).isEqualTo(row[1]);
            assertThat(new FaultCode("0x" + row[0].toLowerCase()).text()).isEqualTo(row[1]);
        }
    }

    @Test
    void makersOwnCodesStayUntranslated() {
        for (String code : List.of("P1234", "P3000", "P33FF", "B1000", "U2FFF", "C1234")) {
            assertThat(new FaultCode(code).meaning().words()).as(code).isEqualTo("maker's own code");
            assertThat(new FaultCode(code).inWords()).isEqualTo(code + ", maker's own code");
        }
        for (String code : List.of("P0420", "P2000", "P3400", "B0001", "U0100")) {
            assertThat(new FaultCode(code).meaning().words()).as(code).startsWith("generic code");
        }
        assertThat(new FaultCode("520192/7").meaning().words()).startsWith("maker's own number: mechanical system");
        assertThat(new FaultCode("4334/4").meaning().words()).startsWith("SPN 4334: voltage below normal");
    }

    /** What concerns the fuel of all cylinders; sensors' electrical faults do not. */
    @Test
    void fuelEventsOfTheWholeEngine() {
        for (String code : List.of("157/18", "157/0", "94/17", "97/31", "97/0", "1239/31", "P0087", "P0093", "P2269")) {
            assertThat(new FaultCode(code).meaning().isFuelEvent()).as(code).isTrue();
            assertThat(new FaultCode(code).cylinder()).as(code).isNull();
        }
        for (String code : List.of("157/3", "94/4", "97/4", "P0190", "P0193", "110/0", "651/5", "P0201")) {
            assertThat(new FaultCode(code).meaning().isFuelEvent()).as(code).isFalse();
        }
    }
}
