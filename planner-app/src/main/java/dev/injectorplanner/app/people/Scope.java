package dev.injectorplanner.app.people;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a token lets another program do. */
public enum Scope {
    READINGS_READ,
    READINGS_WRITE,
    FAULTS_READ,
    FAULTS_WRITE,
    CLOSE_OUTS_READ,
    CLOSE_OUTS_WRITE,
    ORDERS_READ,
    ORDERS_WRITE,
    RETURNS_READ,
    RETURNS_WRITE,
    STOCK_READ,
    STOCK_WRITE,
    PLAN_READ;

    /** As it is written: {@code readings:write}, {@code close-outs:read}. */
    public String text() {
        String name = name().toLowerCase(Locale.ROOT);
        int last = name.lastIndexOf('_');
        return name.substring(0, last).replace('_', '-') + ":" + name.substring(last + 1);
    }

    /** @throws InvalidValueException where there is none of that text */
    public static Scope of(String text) {
        return Arrays.stream(values())
                .filter(scope -> scope.text().equals(text.strip()))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "scope",
                        text,
                        "is not known",
                        "choose from "
                                + Arrays.stream(values()).map(Scope::text).collect(Collectors.joining(", "))));
    }
}
