package dev.injectorplanner.app.diagnosis;

import java.time.Instant;

/**
 * What was found at one step of a diagnosis.
 *
 * @param step the step's key
 * @param state how it was
 * @param found in words or with a figure, or empty
 */
public record Look(String step, State state, String found, Instant at, String by) {
    /** How a place was found. */
    public enum State {
        IN_ORDER("in order"),
        CAUSE("cause found"),
        NOT_LOOKED("not looked at");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }
}
