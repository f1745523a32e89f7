package dev.injectorplanner.app.web.imports;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UploadsTest {
    @ParameterizedTest
    @CsvSource({
        "../../etc/depots.csv, depots.csv",
        "C:\\files\\trucks.xlsx, trucks.xlsx",
        "..\\..\\x.csv, x.csv",
        ".., file.csv",
        "a:b|c.csv, a-b-c.csv",
        "fleet 2026.xlsx, fleet 2026.xlsx"
    })
    void a_name_leads_nowhere(String given, String name) {
        assertThat(Uploads.name(given)).isEqualTo(name);
    }
}
