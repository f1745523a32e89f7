package dev.injectorplanner.core.parts;

import java.util.Comparator;

/** One part at one depot. */
record Shelf(String depot, String part) implements Comparable<Shelf> {
    @Override
    public int compareTo(Shelf other) {
        return Comparator.comparing(Shelf::depot).thenComparing(Shelf::part).compare(this, other);
    }
}
