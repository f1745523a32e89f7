package dev.injectorplanner.app.start;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** An engine family with plausible example figures, so that a first plan can be made; a person corrects them. */
public enum StarterKit {
    V8("v8", "Example V8", "a generic V8: two banks, 8 cylinders"),
    INLINE_SIX("inline-six", "Example inline six", "a generic inline six");

    /** How the names of all examples begin, wherever they are shown. */
    public static final String MARK = "Example ";

    private final String id;
    private final String family;
    private final String words;

    StarterKit(String id, String family, String words) {
        this.id = id;
        this.family = family;
        this.words = words;
    }

    /** Its folder among the program's files, and its name in commands. */
    public String id() {
        return id;
    }

    public String family() {
        return family;
    }

    public String words() {
        return words;
    }

    /** @throws InvalidValueException if no kit has that name */
    public static StarterKit of(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(kit -> kit.id.equals(wanted))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "kit",
                        name,
                        "is not a starter kit",
                        "choose from "
                                + Arrays.stream(values()).map(StarterKit::id).collect(Collectors.joining(", "))));
    }
}
