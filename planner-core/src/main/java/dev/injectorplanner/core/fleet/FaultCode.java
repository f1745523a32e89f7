package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A fault code in its one written form: {@code SPN 651 FMI 5} (SAE J1939-73) or {@code P0201} (SAE J2012 / ISO 15031-6).
 *
 * <p>Cylinders are read from the code where the standards number them: SPN 651 to 666 are the injectors of cylinders 1
 * to 16 (SAE J1939 Digital Annex); P0200+n is the circuit, P0261+3(n-1) to P0263+3(n-1) low, high and balance, P0300+n
 * a misfire of cylinder n, n from 1 to 12 (SAE J2012).
 *
 * @param text the written form
 */
public record FaultCode(String text) {
    private static final Pattern SPN_FMI =
            Pattern.compile("(?:SPN)?\\s*[:=]?\\s*(\\d{1,6})\\s*(?:[/\\-. ]|FMI)\\s*(?:FMI)?\\s*[:=]?\\s*(\\d{1,2})");
    private static final Pattern OBD = Pattern.compile("[PCBU][0-3][0-9A-F]{3}");
    private static final int MOST_SPN = (1 << 19) - 1;
    private static final int FIRST_INJECTOR_SPN = 651;
    private static final int MOST_OBD_CYLINDERS = 12;

    public FaultCode {
        text = canonical(text);
    }

    private static String canonical(String given) {
        String code = given.strip().toUpperCase(Locale.ROOT);
        if (OBD.matcher(code).matches()) {
            return code;
        }
        Matcher matcher = SPN_FMI.matcher(code);
        if (!matcher.matches()) {
            throw new InvalidValueException(
                    "code",
                    given,
                    "is neither an SPN with its FMI nor a code such as P0201",
                    "write it as SPN 651 FMI 5, 651/5 or P0201");
        }
        int spn = Integer.parseInt(matcher.group(1));
        int fmi = Integer.parseInt(matcher.group(2));
        Require.within("code", spn, 0, MOST_SPN);
        Require.within("code", fmi, 0, 31);
        return "SPN " + spn + " FMI " + fmi;
    }

    /** The cylinder whose injector or combustion the code speaks of, or null where it names none. */
    public @Nullable Integer cylinder() {
        int cylinder = text.startsWith("SPN ") ? cylinderOfSpn() : cylinderOfObd();
        return cylinder == 0 ? null : Integer.valueOf(cylinder);
    }

    /**
     * Whether it speaks of an injector's circuit: SPN 651 to 666 with FMI 3 to 6 (voltage above or below normal, current below
     * or above normal; SAE J1939-73, from memory), P0200+n and the low and high of P0261+3(n-1) (SAE J2012, from memory).
     */
    public boolean electrical() {
        if (cylinder() == null) {
            return false;
        }
        if (text.startsWith("SPN ")) {
            int fmi = Integer.parseInt(text.substring(text.lastIndexOf(' ') + 1));
            return fmi >= 3 && fmi <= 6;
        }
        int number = Integer.parseInt(text.substring(1));
        return number <= 200 + MOST_OBD_CYLINDERS || number >= 261 && number < 300 && (number - 261) % 3 != 2;
    }

    private int cylinderOfSpn() {
        int spn = Integer.parseInt(text.substring(4, text.indexOf(' ', 4)));
        int cylinder = spn - FIRST_INJECTOR_SPN + 1;
        return cylinder >= 1 && cylinder <= EngineFamily.MOST_CYLINDERS ? cylinder : 0;
    }

    private int cylinderOfObd() {
        if (!text.matches("P0[0-9]{3}")) {
            return 0;
        }
        int number = Integer.parseInt(text.substring(1));
        if (number > 200 && number <= 200 + MOST_OBD_CYLINDERS) {
            return number - 200;
        }
        if (number >= 261 && number < 261 + 3 * MOST_OBD_CYLINDERS) {
            return (number - 261) / 3 + 1;
        }
        return number > 300 && number <= 300 + MOST_OBD_CYLINDERS ? number - 300 : 0;
    }

    @Override
    public String toString() {
        return text;
    }
}
