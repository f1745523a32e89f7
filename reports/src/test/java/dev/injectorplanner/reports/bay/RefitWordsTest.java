package dev.injectorplanner.reports.bay;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Putting back in the words of putting back: the demo's own steps, and names as shops have them (common practice). */
class RefitWordsTest {
    @ParameterizedTest
    @CsvSource({
        "batteries off, 'Batteries connected, earth last'",
        "coolant drained below the intake, Coolant refilled",
        "coolant down, Coolant refilled",
        "coolant header pipe off, Coolant header pipe on",
        "charge pipes and intake off, Charge pipes and intake on",
        "left rocker cover and fuel pipes off, Left rocker cover and fuel pipes on",
        "rear cab mounts down, 'Rear cab mounts up, bolts tightened'",
        "injector harness unplugged, Injector harness plugged in",
        "cab tilted, Cab lowered and locked",
        "heat shield removed, Heat shield refitted",
        "offset bracket, Refit: offset bracket"
    })
    void a_step_taken_off_is_put_back(String off, String on) {
        assertThat(RefitWords.of(off)).isEqualTo(on);
    }
}
