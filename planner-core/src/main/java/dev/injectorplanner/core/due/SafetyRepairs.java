package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.RepairWork;
import java.util.List;
import java.util.Locale;

/**
 * Which recorded repairs close a safety fault: one that says no fault was found, names the fault's code, or names a part of
 * the fuel system. Another repair of the truck closes nothing: new brakes do not stop a fuel leak, and what stays open in doubt
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

    private SafetyRepairs() {}

    /** The words, for people. */
    static String words() {
        return String.join(", ", WORDS);
    }

    static boolean closes(Repair repair, String faultCode) {
        if (repair.foundNothing()) {
            return true;
        }
        if (RepairWork.of(repair).filter(RepairWork::fuel).isPresent()) {
            return true;
        }
        String text = (repair.what() + " " + repair.remark()).toLowerCase(Locale.ROOT);
        boolean wiring =
                RepairWork.of(repair).isPresent(); // a harness or connector stops no leak, though it is an injector's
        return text.contains(faultCode.toLowerCase(Locale.ROOT))
                || !wiring && WORDS.stream().anyMatch(text::contains);
    }
}
