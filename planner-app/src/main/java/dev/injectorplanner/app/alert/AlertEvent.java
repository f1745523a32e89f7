package dev.injectorplanner.app.alert;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A step of an alert's history.
 *
 * @param at when
 * @param who a person, or "plan" or "jobs" where the program did it
 * @param from state before, or null where it was raised
 * @param to state after
 * @param why what made it so
 */
public record AlertEvent(Instant at, String who, @Nullable AlertState from, AlertState to, String why) {}
