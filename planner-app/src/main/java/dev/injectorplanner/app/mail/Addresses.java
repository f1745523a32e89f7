package dev.injectorplanner.app.mail;

import dev.injectorplanner.core.check.InvalidValueException;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;

/** Checks addresses and header lines, so that nothing smuggles in a header of its own. */
final class Addresses {
    private static final int LONGEST = 254;

    private Addresses() {}

    /** One plain address such as {@code buyer@example.org}. */
    static String plain(String field, String address) {
        String stripped = address.strip();
        boolean odd = stripped.length() > LONGEST
                || stripped.chars().anyMatch(c -> Character.isISOControl(c) || Character.isWhitespace(c))
                || stripped.contains(",")
                || stripped.contains("<");
        try {
            if (!odd) {
                InternetAddress parsed = new InternetAddress(stripped, true);
                parsed.validate();
                if (stripped.contains("@") && stripped.equals(parsed.getAddress())) {
                    return stripped;
                }
            }
        } catch (AddressException e) {
            odd = true;
        }
        throw new InvalidValueException(
                field,
                address.replaceAll("\\p{Cntrl}", "?"),
                "is not an email address",
                "write it as name@example.org");
    }

    /** One line without control characters. */
    static String line(String field, String value, int longest) {
        if (value.isBlank() || value.length() > longest || value.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(field + " must be one line of 1 to " + longest + " characters, is \""
                    + value.replaceAll("\\p{Cntrl}", "?") + "\"");
        }
        return value;
    }
}
