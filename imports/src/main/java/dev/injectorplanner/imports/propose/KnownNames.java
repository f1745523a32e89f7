package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.PlainNames;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Names that are stored already: trucks, depots, families, parts, duty groups, by the column that refers to them. */
public final class KnownNames {
    public static final KnownNames NONE = new KnownNames(Map.of());

    private final Map<String, List<String>> byColumn = new HashMap<>();
    private final Map<String, PlainNames> plain = new HashMap<>();

    /** @param names names by column, such as {@code truck}; any number of them */
    public KnownNames(Map<String, ? extends Collection<String>> names) {
        names.forEach((column, each) -> {
            byColumn.put(column, List.copyOf(each));
            PlainNames index = new PlainNames();
            each.forEach(index::add);
            plain.put(column, index);
        });
    }

    public boolean has(String column) {
        return !names(column).isEmpty();
    }

    public Collection<String> names(String column) {
        return byColumn.getOrDefault(column, List.of());
    }

    public boolean isKnown(String column, String name) {
        PlainNames index = plain.get(column);
        return index != null && index.has(name);
    }

    /** The name itself, or the only one that differs in case, spaces and signs alone, such as T-118 for {@code t 118}. */
    public Optional<String> alike(String column, String name) {
        PlainNames index = plain.get(column);
        return index == null ? Optional.empty() : index.find(name);
    }
}
