package dev.injectorplanner.app.store;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.CodePattern;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.LoggerFactory;

/**
 * Patterns of calibration codes that an earlier version stored and this one refuses, since they could take for ever. One of
 * them must not keep the fleet from being read: codes of that part are then still asked for, but not checked against it.
 */
final class StoredPatterns {
    private static final String ANY = ".+";
    private static final Set<String> SAID = ConcurrentHashMap.newKeySet();

    private StoredPatterns() {}

    static String usable(String part, String pattern) {
        try {
            return CodePattern.checked(pattern);
        } catch (InvalidValueException e) {
            if (SAID.add(part)) {
                LoggerFactory.getLogger(StoredPatterns.class)
                        .warn(
                                "Part {}: {} Its codes are not checked until the part is loaded with another",
                                part,
                                e.getMessage());
            }
            return ANY;
        }
    }
}
