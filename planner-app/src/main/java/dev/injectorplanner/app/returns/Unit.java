package dev.injectorplanner.app.returns;

import java.time.LocalDate;

/**
 * The unit that a core or a claim is about.
 *
 * @param fittedOn of a core: day the reman unit was fitted; of a claim: day the failed one was fitted
 */
public record Unit(String truck, int cylinder, LocalDate fittedOn) {
    @Override
    public String toString() {
        return "truck " + truck + ", cylinder " + cylinder + ", fitted " + fittedOn;
    }
}
