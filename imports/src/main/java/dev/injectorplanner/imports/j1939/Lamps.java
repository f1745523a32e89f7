package dev.injectorplanner.imports.j1939;

import java.util.ArrayList;
import java.util.List;

/**
 * The four lamps of a fault message, SAE J1939-73: malfunction indicator bits 8-7, red stop 6-5, amber warning 4-3, protect
 * 2-1 of the first byte; the same bits of the second byte say how they flash.
 *
 * @param malfunction emission-related fault
 * @param redStop stop the vehicle
 * @param amberWarning no need to stop
 * @param protect a system beside the electronics, such as a coolant temperature
 */
public record Lamps(LampState malfunction, LampState redStop, LampState amberWarning, LampState protect) {
    static Lamps of(int states, int flashes) {
        return new Lamps(
                lamp(states, flashes, 6), lamp(states, flashes, 4), lamp(states, flashes, 2), lamp(states, flashes, 0));
    }

    private static LampState lamp(int states, int flashes, int shift) {
        return LampState.of(states >> shift & 3, flashes >> shift & 3);
    }

    /** The lamps that are lit, in words; empty where none is. */
    public String words() {
        List<String> lit = new ArrayList<>();
        add(lit, "red stop", redStop);
        add(lit, "amber warning", amberWarning);
        add(lit, "malfunction", malfunction);
        add(lit, "protect", protect);
        return String.join(", ", lit);
    }

    private static void add(List<String> lit, String lamp, LampState state) {
        if (state.isLit()) {
            lit.add(state == LampState.ON ? lamp : lamp + " (" + state.words() + ")");
        }
    }
}
