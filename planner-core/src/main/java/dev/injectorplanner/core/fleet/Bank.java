package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.List;

/**
 * A row of cylinders.
 *
 * @param name left, right, or the one bank of an inline engine
 * @param cylinders numbers as the engine maker counts, front to rear
 */
public record Bank(String name, List<Integer> cylinders) {
    public Bank {
        name = Require.name("banks", name);
        cylinders = List.copyOf(cylinders);
        if (cylinders.isEmpty()) {
            throw new InvalidValueException("banks", name, "has no cylinders", "list them front to rear");
        }
    }
}
