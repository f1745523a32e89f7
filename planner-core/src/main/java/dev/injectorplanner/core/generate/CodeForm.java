package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Part;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The one form of calibration code that made-up parts have: capital letters and digits, as many as the part says. */
final class CodeForm {
    private static final Pattern FORM = Pattern.compile("\\[A-Z0-9\\]\\{(\\d{1,2})\\}");

    private CodeForm() {}

    static String pattern(int length) {
        return "[A-Z0-9]{" + length + "}";
    }

    /** @throws InvalidValueException where the part's pattern is of another form */
    static int lengthOf(Part part) {
        Matcher matcher = FORM.matcher(String.valueOf(part.codePattern()));
        if (!matcher.matches()) {
            throw new InvalidValueException(
                    "code_pattern",
                    part.codePattern() + "",
                    "is not a code form that the generator can write",
                    "use " + pattern(16));
        }
        return Integer.parseInt(matcher.group(1));
    }
}
