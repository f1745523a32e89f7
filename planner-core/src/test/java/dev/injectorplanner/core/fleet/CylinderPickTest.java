package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cylinders as work orders name them, on a V8 whose left bank is 1 3 5 7. */
class CylinderPickTest {
    private static final EngineFamily V8 =
            new FleetIndex(new FleetBuilder().truck("A").build()).family(FleetBuilder.V8);

    @Test
    void numbersBanksAndAll() {
        assertThat(new CylinderPick(List.of(5, 3, 5), "").of(V8)).containsExactly(3, 5);
        assertThat(new CylinderPick(List.of(), " Left ").of(V8)).containsExactly(1, 3, 5, 7);
        assertThat(new CylinderPick(List.of(), "2").of(V8)).containsExactly(2, 4, 6, 8);
        assertThat(CylinderPick.ALL.of(V8)).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(CylinderPick.all(8).of(V8)).hasSize(8);
    }

    @Test
    void whatTheFamilyDoesNotHaveIsRefused() {
        assertThatThrownBy(() -> CylinderPick.all(6).of(V8)).hasMessageContaining("has 8 cylinders");
        assertThatThrownBy(() -> new CylinderPick(List.of(9), "").of(V8)).hasMessageContaining("enter 1 to 8");
        assertThatThrownBy(() -> new CylinderPick(List.of(), "3").of(V8)).hasMessageContaining("no such bank");
        assertThatThrownBy(() -> new CylinderPick(List.of(), "0").of(V8)).hasMessageContaining("no such bank");
        assertThatThrownBy(() -> new CylinderPick(List.of(), "rear").of(V8)).hasMessageContaining("left, right");
        assertThatThrownBy(() -> new CylinderPick(List.of(1), "left"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("name one of the two");
        assertThatThrownBy(() -> new CylinderPick(List.of(17), "")).hasMessageContaining("cylinders");
    }

    @Test
    void asAPersonWritesThem() {
        assertThat(new CylinderPick(List.of(1, 3), "")).hasToString("1 3");
        assertThat(new CylinderPick(List.of(), "left")).hasToString("left bank");
        assertThat(new CylinderPick(List.of(), "1")).hasToString("bank 1");
        assertThat(CylinderPick.ALL).hasToString("all");
        assertThat(CylinderPick.all(6)).hasToString("all 6");
    }
}
