package dev.injectorplanner.core.history;

/** How much longer an injector found worn would have run until it failed, on average. */
@FunctionalInterface
public interface RemainingDelay {
    /** Mean further life in the clock's unit, zero or more. */
    double of(String part, Clock clock);
}
