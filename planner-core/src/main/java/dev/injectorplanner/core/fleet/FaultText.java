package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fault.FailureModes;
import dev.injectorplanner.core.fault.SuspectParameters;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A fault as people and scan tools write it: the code with its occurrence count, with the failure type of SAE J2012-DA behind
 * it ({@code P0275-00}), with words, or words alone where they name a cylinder and what was wrong with it. Words alone become
 * the generic code of SAE J2012 / ISO 15031-6 that says the same: contribution P0263 + 3(n-1), misfire P0300+n, injector
 * circuit P0200+n.
 *
 * @param code the code
 * @param count what the occurrence counter of the ECU said, or null
 * @param cylinder the cylinder that the words name, or null
 */
public record FaultText(
        FaultCode code, @Nullable Integer count, @Nullable Integer cylinder) {
    private static final Pattern COUNT =
            Pattern.compile("[\\s,;(/]*\\b(?:OC|OCC|OCCURRENCES?|COUNT)[\\s:=]*([0-9]{1,7})\\)?");
    private static final Pattern SPN_FMI = Pattern.compile(
            "(?:SPN|S)?\\s*[:=#]?\\s*([0-9]{1,6})\\s*(?:[/\\-., ;]|FMI|F)\\s*(?:FMI|F)?\\s*[:=#]?\\s*([0-9]{1,2})(?![0-9])(.*)");
    private static final Pattern OBD = Pattern.compile("([PCBU][0-3][0-9A-F]{3})(?:[-:][0-9A-F]{2})?(?![0-9A-Z])(.*)");
    private static final Pattern CYLINDER =
            Pattern.compile("\\b(?:CYLINDER|CYL|INJECTOR|INJ)S?\\.?\\s*(?:NO\\.?|NUMBER)?\\s*[#:]?\\s*([0-9]{1,2})\\b");
    private static final Pattern BARE = Pattern.compile("[\\s,;:()\\-]*");

    /** @throws InvalidValueException if it names no code, and no cylinder with what was wrong there */
    public static FaultText read(String given) {
        String text = given.strip().toUpperCase(Locale.ROOT).replace('\u00a0', ' ');
        Matcher count = COUNT.matcher(text);
        Integer counted = null;
        if (count.find()) {
            counted = Math.max(1, Integer.parseInt(count.group(1)));
            text = (text.substring(0, count.start()) + text.substring(count.end())).strip();
        }
        Matcher obd = OBD.matcher(text);
        if (obd.matches()) {
            return of(given, new FaultCode(obd.group(1)), counted, obd.group(2));
        }
        Matcher spn = SPN_FMI.matcher(text);
        if (spn.matches() && !CYLINDER.matcher(text).lookingAt()) {
            return of(given, code(spn), counted, spn.group(3));
        }
        Integer cylinder = cylinder(text);
        if (cylinder != null) {
            return new FaultText(byWords(given, text, cylinder), counted, cylinder);
        }
        return new FaultText(new FaultCode(given), counted, null);
    }

    private static FaultCode code(Matcher spn) {
        int number = Integer.parseInt(spn.group(1));
        int mode = Integer.parseInt(spn.group(2));
        Require.within("code", number, 0, SuspectParameters.MOST);
        Require.within("code", mode, 0, FailureModes.MOST);
        return FaultCode.of(number, mode);
    }

    private static FaultText of(String given, FaultCode code, @Nullable Integer count, String words) {
        Integer named = BARE.matcher(words).matches() ? null : cylinder(words);
        Integer meant = code.cylinder();
        if (named != null && meant != null && !named.equals(meant)) {
            throw new InvalidValueException(
                    "code",
                    given,
                    "says cylinder " + named + ", but " + code + " is for cylinder " + meant,
                    "correct the code or the words");
        }
        return new FaultText(code, count, named);
    }

    private static @Nullable Integer cylinder(String text) {
        Matcher cylinder = CYLINDER.matcher(text);
        return cylinder.find() ? Integer.valueOf(cylinder.group(1)) : null;
    }

    private static FaultCode byWords(String given, String text, int cylinder) {
        Require.within("code", cylinder, 1, 12);
        if (text.contains("CONTRIBUTION") || text.contains("BALANCE")) {
            return new FaultCode(String.format(Locale.ROOT, "P%04d", 263 + 3 * (cylinder - 1)));
        }
        if (text.contains("MISFIR")) {
            return new FaultCode(String.format(Locale.ROOT, "P%04d", 300 + cylinder));
        }
        if (text.contains("CIRCUIT")) {
            String low = text.contains(" LOW") ? "0" : text.contains(" HIGH") ? "1" : "";
            int number = low.isEmpty() ? 200 + cylinder : 261 + 3 * (cylinder - 1) + Integer.parseInt(low);
            return new FaultCode(String.format(Locale.ROOT, "P%04d", number));
        }
        throw new InvalidValueException(
                "code",
                given,
                "names cylinder " + cylinder + " but no code, and neither contribution, misfire nor injector circuit",
                "enter the code, such as P0263 or SPN 651 FMI 5");
    }
}
