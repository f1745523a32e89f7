package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.Heading;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/**
 * Names that are stored already: trucks, depots, families, parts, duty groups, by the column that refers to them.
 *
 * @param byColumn names by column, such as {@code truck}
 */
public record KnownNames(Map<String, Collection<String>> byColumn) {
    public static final KnownNames NONE = new KnownNames(Map.of());

    public boolean has(String column) {
        return !names(column).isEmpty();
    }

    public Collection<String> names(String column) {
        return byColumn.getOrDefault(column, java.util.List.of());
    }

    public boolean isKnown(String column, String name) {
        return names(column).contains(name);
    }

    /** The name that differs in case, spaces and signs only, such as T-118 for {@code t 118}. */
    public Optional<String> alike(String column, String name) {
        String plain = Heading.plain(name);
        return names(column).stream()
                .filter(each -> Heading.plain(each).equals(plain))
                .findFirst();
    }
}
