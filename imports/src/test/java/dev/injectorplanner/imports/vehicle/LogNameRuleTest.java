package dev.injectorplanner.imports.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class LogNameRuleTest {
    private static final List<Truck> TRUCKS = List.of(
            truck("T10", "1M8GDM9AXKP042788"), truck("T101", "1G4AH59H45G118341"), truck("T10 B", "11111111111111111"));

    private static Truck truck(String name, String vin) {
        return new Truck(name, new Vin(vin), "North", "Four", null, LocalDate.of(2024, 1, 1), null, null);
    }

    private static List<String> of(String pattern, String file) {
        return new LogNameRule(pattern)
                .trucks(file, TRUCKS).stream().map(Truck::truck).toList();
    }

    @Test
    void theNameBeginsWithTheTruck() {
        assertThat(of(LogNameRule.STANDARD, "T10_2026-03-02.log")).containsExactly("T10");
        assertThat(of(LogNameRule.STANDARD, "t101.candump")).containsExactly("T101");
        assertThat(of(LogNameRule.STANDARD, "T10 B 5.log")).containsExactly("T10 B");
        assertThat(of(LogNameRule.STANDARD, "T1011.log")).isEmpty();
        assertThat(of(LogNameRule.STANDARD, "AT10.log")).isEmpty();
    }

    @Test
    void otherRules() {
        assertThat(of("*-{truck}.log", "north-T101.log")).containsExactly("T101");
        assertThat(of("*-{truck}.log", "north-T101.txt")).isEmpty();
        assertThat(of("*{truck}*", "log of T10, March")).containsExactly("T10");
        assertThat(of("{vin}*", "1g4ah59h45g118341_7.pcapng")).containsExactly("T101");
        assertThat(of("can?{truck}", "can?T10")).containsExactly("T10");
    }

    @Test
    void aRuleNamesTheTruck() {
        for (String wrong : List.of("*.log", "{vin}-{truck}", "")) {
            assertThatThrownBy(() -> new LogNameRule(wrong))
                    .isInstanceOf(InvalidValueException.class)
                    .hasMessageContaining("must hold either {truck} or {vin}");
        }
    }
}
