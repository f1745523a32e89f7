package dev.injectorplanner.imports.j1939;

/** A lamp of a fault message. */
public enum LampState {
    OFF("off"),
    /** On and steady, or flashing as the message does not say. */
    ON("on"),
    SLOW_FLASH("slow flash"),
    FAST_FLASH("fast flash"),
    ERROR("error"),
    NOT_AVAILABLE("not available");

    private final String words;

    LampState(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** From the two bits of the state (00 off, 01 on, 10 error, 11 not available) and of the flash (00 slow, 01 fast). */
    static LampState of(int state, int flash) {
        return switch (state) {
            case 0 -> OFF;
            case 1 -> flash == 0 ? SLOW_FLASH : flash == 1 ? FAST_FLASH : ON;
            case 2 -> ERROR;
            default -> NOT_AVAILABLE;
        };
    }

    /** Whether the lamp is lit, steady or flashing. */
    public boolean isLit() {
        return this == ON || this == SLOW_FLASH || this == FAST_FLASH;
    }
}
