package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.RepairWork;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Which recorded repairs close a safety fault: one that says no fault was found (only of the codes that it looked for, where
 * it names them), names the fault's code, or names a part of the fuel system. Another repair of the truck closes nothing: new brakes do not stop a fuel leak, and what stays open in doubt
 * is the safer mistake.
 */
final class SafetyRepairs {
    private static final List<String> WORDS = List.of(
            "fuel",
            "leak",
            "rail",
            "inject",
            "high-pressure",
            "high pressure",
            "supply pressure",
            "lift pump",
            "feed pump",
            "return line");

    /** Work on another system whose words hold the fuel's: "trailer" has "rail" in it, AdBlue has injectors. */
    private static final Pattern OTHER_SYSTEM =
            Pattern.compile("\\b(?:trailer|adblue|def|urea|oil|coolant|radiator|air|a/c|turbo\\w*|steering|brakes?"
                    + "|hydraulic\\w*)\\b");

    private SafetyRepairs() {}

    /** The words, for people. */
    static String words() {
        return String.join(", ", WORDS);
    }

    /** SPN 157 FMI 18 does not name SPN 157 FMI 1. */
    private static boolean names(String text, String code) {
        return Pattern.compile("(?<!\\w)" + Pattern.quote(code) + "(?!\\w)")
                .matcher(text)
                .find();
    }

    static boolean closes(Repair repair, String faultCode) {
        if (repair.foundNothing()) {
            return repair.lookedFor().isEmpty() || repair.lookedFor(new FaultCode(faultCode));
        }
        String what = repair.what().toLowerCase(Locale.ROOT);
        String text = (repair.what() + " " + repair.remark()).toLowerCase(Locale.ROOT);
        if (names(text, faultCode.toLowerCase(Locale.ROOT))) {
            return true;
        }
        if (OTHER_SYSTEM.matcher(what).find() && !what.contains("fuel")) {
            return false;
        }
        return RepairWork.of(repair)
                .map(RepairWork::fuel) // a harness or connector stops no leak, though it is an injector's
                .orElseGet(() -> WORDS.stream().anyMatch(text::contains));
    }
}
