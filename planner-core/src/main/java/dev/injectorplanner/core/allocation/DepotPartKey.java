package dev.injectorplanner.core.allocation;

import java.util.Comparator;

/** One part at one depot. */
public record DepotPartKey(String depot, String part) implements Comparable<DepotPartKey> {
    @Override
    public int compareTo(DepotPartKey other) {
        return Comparator.comparing(DepotPartKey::depot)
                .thenComparing(DepotPartKey::part)
                .compare(this, other);
    }
}
