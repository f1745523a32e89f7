package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fault.CodeMeaning;
import dev.injectorplanner.core.fault.FaultLevel;
import dev.injectorplanner.core.fault.FaultSubject;
import dev.injectorplanner.core.fleet.FaultCode;
import java.util.Optional;

/**
 * Faults that make a truck unsafe to leave running: fuel leaks, and rail or delivery pressure far off, most or moderately
 * severe. The least severe levels and faults of the sensor itself ask for no such haste. Which codes these are, and their
 * sources, stands in {@code core.fault}. Bringing these in at once is common practice; the engine maker's manual takes
 * precedence.
 */
final class SafetyCodes {
    private SafetyCodes() {}

    private static boolean isSafety(CodeMeaning meaning) {
        FaultSubject subject = meaning.subject();
        boolean pressure = subject == FaultSubject.RAIL_PRESSURE || subject == FaultSubject.SUPPLY_PRESSURE;
        return subject == FaultSubject.FUEL_LEAK
                || pressure && (meaning.level() == FaultLevel.MOST || meaning.level() == FaultLevel.MODERATE);
    }

    /** A safety code in words. */
    static Optional<String> find(FaultCode code) {
        CodeMeaning meaning = code.meaning();
        return isSafety(meaning) ? Optional.of(meaning.words()) : Optional.empty();
    }

    /** The same of a code's text; the text itself where it may wait. */
    static String words(String code) {
        return find(new FaultCode(code)).orElse(code);
    }
}
