package dev.injectorplanner.core.fault;

import org.jspecify.annotations.Nullable;

/**
 * What a fault code says.
 *
 * @param words in words, such as {@code injector of cylinder 3: current below normal or open circuit}
 * @param subject what it speaks of
 * @param level how far the value is off
 * @param cylinder the cylinder it names, from 1, or null
 */
public record CodeMeaning(
        String words,
        FaultSubject subject,
        FaultLevel level,
        @Nullable Integer cylinder) {
    /** In words that leave out the cylinder, for where it is said already. */
    public String withoutCylinder() {
        return cylinder == null
                ? words
                : words.replace("injector of cylinder " + cylinder + ": ", "").replace(" of cylinder " + cylinder, "");
    }

    /**
     * Whether it says that the fuel of the whole engine was off: rail or supply pressure out of range, a leak, water in the
     * fuel. Electrical faults of the sensors are left out.
     */
    public boolean isFuelEvent() {
        return subject.ofWholeFuelSystem() && level.isSaid();
    }
}
