package dev.injectorplanner.app.mail;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Whom mail is for. */
public enum Addressee {
    MANAGER,
    BUYER,
    MECHANIC,
    ADMINISTRATOR;

    /** As a person writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @throws InvalidValueException naming those there are */
    public static Addressee of(String word) {
        return Arrays.stream(values())
                .filter(each -> each.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "for",
                        word,
                        "is not a mail role",
                        "choose from "
                                + Arrays.stream(values()).map(Addressee::word).collect(Collectors.joining(", "))));
    }
}
