package dev.injectorplanner.app.drop;

import dev.injectorplanner.core.check.InvalidValueException;
import java.nio.file.Path;
import java.time.Duration;

/**
 * A drop folder and its patience.
 *
 * @param folder where people and programs put files
 * @param settled a file is whole when size and time have not changed for so long
 * @param deadAfter a node that has given no sign for so long is dead, and its files are taken back
 */
public record DropSettings(Path folder, Duration settled, Duration deadAfter) {
    /** Planner defaults. */
    public static final Duration SETTLED = Duration.ofSeconds(30);

    public static final Duration DEAD_AFTER = Duration.ofMinutes(10);

    public DropSettings {
        if (settled.isNegative()) {
            throw new InvalidValueException("settled", settled, "is below zero", "enter 0 or more seconds");
        }
        if (deadAfter.isNegative() || deadAfter.isZero()) {
            throw new InvalidValueException("dead_after", deadAfter, "is not above zero", "enter at least one minute");
        }
    }

    public static DropSettings standard(Path folder) {
        return new DropSettings(folder, SETTLED, DEAD_AFTER);
    }

    Path taken() {
        return folder.resolve("taken");
    }

    Path done() {
        return folder.resolve("done");
    }

    Path refused() {
        return folder.resolve("refused");
    }
}
