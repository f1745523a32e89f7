package dev.injectorplanner.imports.cell;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Names that are found again however their case, spaces and signs are written; any number of them. */
public final class PlainNames {
    private static final String SEVERAL = "";

    private final Set<String> exact = new HashSet<>();
    private final Map<String, String> byPlain = new HashMap<>();

    public void add(String name) {
        if (exact.add(name)) {
            byPlain.merge(Heading.plain(name), name, (one, other) -> SEVERAL);
        }
    }

    /** Whether a name is written just so. */
    public boolean has(String name) {
        return exact.contains(name);
    }

    /** The name itself, or the only one that differs in case, spaces and signs alone, such as T-118 for {@code t 118}. */
    public Optional<String> find(String name) {
        return has(name)
                ? Optional.of(name)
                : Optional.ofNullable(byPlain.get(Heading.plain(name))).filter(found -> !found.equals(SEVERAL));
    }
}
