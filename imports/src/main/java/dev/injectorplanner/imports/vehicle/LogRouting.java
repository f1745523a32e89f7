package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.imports.j1939.SpnLayout;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Whose an ECU is, and how it lays out its codes.
 *
 * @param truckOfSource the truck of a source address; null leaves the ECU out
 * @param layoutOfSource its layout of SPNs
 */
public record LogRouting(IntFunction<@Nullable String> truckOfSource, IntFunction<SpnLayout> layoutOfSource) {
    /** Everything of one truck, today's layout. */
    public static LogRouting all(String truck) {
        return new LogRouting(source -> truck, source -> SpnLayout.VERSION_4);
    }
}
