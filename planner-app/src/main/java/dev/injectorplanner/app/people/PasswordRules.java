package dev.injectorplanner.app.people;

import dev.injectorplanner.core.check.InvalidValueException;
import java.text.Normalizer;
import java.util.Locale;

/**
 * What a password must be: long. No rules of composition, no expiry, spaces and all letters allowed, as NIST SP 800-63B
 * (section 5.1.1, "memorized secrets") advises; the least length is ours.
 */
public final class PasswordRules {
    /** Characters at least. */
    public static final int LEAST = 12;

    /** Characters at most. */
    public static final int MOST = 128;

    private static final int DIFFERENT = 5;

    private PasswordRules() {}

    /**
     * Checks a new password.
     *
     * @param name whose it will be
     * @throws InvalidValueException which never says the password itself
     */
    public static void check(String name, CharSequence password) {
        int length = (int) password.chars().count();
        if (length < LEAST) {
            throw refused("is too short", "use at least " + LEAST + " characters, such as four words");
        }
        if (length > MOST) {
            throw refused("is too long", "use at most " + MOST + " characters");
        }
        if (plain(password).contains(plain(name))) {
            throw refused("contains the name", "choose one that does not");
        }
        if (password.chars().distinct().count() < DIFFERENT) {
            throw refused(
                    "uses too few different characters",
                    "choose one with at least " + DIFFERENT + " different ones, such as four words");
        }
    }

    private static String plain(CharSequence text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    }

    private static InvalidValueException refused(String reason, String fix) {
        return new InvalidValueException("password", "…", reason, fix);
    }
}
