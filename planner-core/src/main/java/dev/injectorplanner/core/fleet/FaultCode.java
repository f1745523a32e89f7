package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fault.CodeMeaning;
import dev.injectorplanner.core.fault.FailureModes;
import dev.injectorplanner.core.fault.FaultSubject;
import dev.injectorplanner.core.fault.ObdCodes;
import dev.injectorplanner.core.fault.SuspectParameters;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A fault code in its one written form: {@code SPN 651 FMI 5} (SAE J1939-73) or {@code P0201} (SAE J2012 / ISO 15031-6). The
 * two bytes of ISO 15031-5 are accepted as {@code 0x0201}. What it means, and which cylinder it names, is the standards' and
 * stands in {@link SuspectParameters} and {@link ObdCodes}.
 *
 * @param text the written form
 */
public record FaultCode(String text) {
    private static final Pattern SPN_FMI =
            Pattern.compile("(?:SPN)?\\s*[:=]?\\s*(\\d{1,6})\\s*(?:[/\\-. ]|FMI)\\s*(?:FMI)?\\s*[:=]?\\s*(\\d{1,2})");
    private static final Pattern TWO_BYTES = Pattern.compile("0X[0-9A-F]{4}");

    public FaultCode {
        text = canonical(text);
    }

    /** A code of SAE J1939-73. */
    public static FaultCode of(int spn, int fmi) {
        return new FaultCode("SPN " + spn + " FMI " + fmi);
    }

    private static String canonical(String given) {
        String code = given.strip().toUpperCase(Locale.ROOT);
        if (ObdCodes.isCode(code)) {
            return code;
        }
        if (TWO_BYTES.matcher(code).matches()) {
            return ObdCodes.text(Integer.parseInt(code.substring(2), 16));
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
        Require.within("code", spn, 0, SuspectParameters.MOST);
        Require.within("code", fmi, 0, FailureModes.MOST);
        return "SPN " + spn + " FMI " + fmi;
    }

    /** Its SPN, or null for a code of SAE J2012. */
    public @Nullable Integer spn() {
        return text.startsWith("SPN ") ? Integer.valueOf(text.substring(4, text.indexOf(' ', 4))) : null;
    }

    /** Its FMI, or null for a code of SAE J2012. */
    public @Nullable Integer fmi() {
        return text.startsWith("SPN ") ? Integer.valueOf(text.substring(text.lastIndexOf(' ') + 1)) : null;
    }

    /** What it means. */
    public CodeMeaning meaning() {
        Integer spn = spn();
        Integer fmi = fmi();
        return spn == null || fmi == null ? ObdCodes.meaning(text) : SuspectParameters.meaning(spn, fmi);
    }

    /** The code with its meaning, {@code P0201, injector of cylinder 1: circuit open}. */
    public String inWords() {
        return text + ", " + meaning().words();
    }

    /** The cylinder whose injector or combustion the code speaks of, or null where it names none. */
    public @Nullable Integer cylinder() {
        Integer cylinder = meaning().cylinder();
        return cylinder == null || cylinder > EngineFamily.MOST_CYLINDERS ? null : cylinder;
    }

    /**
     * Whether it speaks of an injector's circuit: SPN 651 to 666 with FMI 3 to 6 (voltage above or below normal, current below
     * or above normal; SAE J1939-73, from memory), P0200+n and the low and high of P0261+3(n-1) (SAE J2012, from memory).
     */
    public boolean electrical() {
        if (cylinder() == null || meaning().subject() != FaultSubject.INJECTOR) {
            return false;
        }
        Integer fmi = fmi();
        return fmi == null ? ObdCodes.isInjectorCircuit(text) : fmi >= 3 && fmi <= 6;
    }

    @Override
    public String toString() {
        return text;
    }
}
