package dev.injectorplanner.app.output;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Who a sheet is for. */
public enum Reader {
    MANAGER,
    BUYER,
    STOREMAN,
    MECHANIC;

    public static Set<Reader> all() {
        return EnumSet.allOf(Reader.class);
    }

    /** {@code manager, buyer, storeman, mechanic}. */
    public static String names() {
        return Arrays.stream(values())
                .map(reader -> reader.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }
}
