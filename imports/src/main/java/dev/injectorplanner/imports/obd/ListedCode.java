package dev.injectorplanner.imports.obd;

import dev.injectorplanner.core.fleet.FaultCode;
import org.jspecify.annotations.Nullable;

/**
 * A code of a list.
 *
 * @param line where it stands, from 1
 * @param code the code
 * @param at when it was seen, as the list says it; empty where it does not
 * @param count occurrences; null where the list does not say
 */
public record ListedCode(
        long line, FaultCode code, String at, @Nullable Integer count) {}
