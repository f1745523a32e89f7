package dev.injectorplanner.core.fault;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Suspect parameter numbers (SPN) of SAE J1939 in words, as far as they concern injectors and their fuel. SPN 651 to 674 are
 * the injectors of cylinders 1 to 24, 94, 95, 110, 111, 157, 164, 168, 174, 175, 190 and 1349 as in the open extract of the
 * SAE J1939 Digital Annex of 2020. From memory of the Annex: 97 water in fuel, 1239 and 1240 fuel leakage, 1322 misfire of
 * several cylinders, 1323 to 1346 misfire of cylinders 1 to 24, 1347 and 1348 fuel pump, and that 520192 to 524287 belong
 * to the maker.
 */
public final class SuspectParameters {
    /** The highest number: 19 bits. */
    public static final int MOST = (1 << 19) - 1;

    private static final int MOST_CYLINDERS = 24;
    private static final int INJECTOR = 650;
    private static final int MISFIRE = 1322;
    private static final int FIRST_OF_MAKER = 520_192;

    private record Known(FaultSubject subject, String words) {}

    private static final Map<Integer, Known> KNOWN = Map.ofEntries(
            known(91, FaultSubject.OTHER, "accelerator pedal position"),
            known(94, FaultSubject.SUPPLY_PRESSURE, "fuel delivery pressure"),
            known(95, FaultSubject.OTHER, "fuel filter differential pressure"),
            known(97, FaultSubject.WATER_IN_FUEL, "water in fuel"),
            known(100, FaultSubject.OTHER, "engine oil pressure"),
            known(110, FaultSubject.OTHER, "coolant temperature"),
            known(111, FaultSubject.OTHER, "coolant level"),
            known(157, FaultSubject.RAIL_PRESSURE, "rail pressure"),
            known(164, FaultSubject.OTHER, "injection control pressure"),
            known(168, FaultSubject.OTHER, "battery voltage"),
            known(174, FaultSubject.OTHER, "fuel temperature"),
            known(175, FaultSubject.OTHER, "engine oil temperature"),
            known(190, FaultSubject.OTHER, "engine speed"),
            known(1239, FaultSubject.FUEL_LEAK, "fuel leak"),
            known(1240, FaultSubject.FUEL_LEAK, "fuel leak"),
            known(MISFIRE, FaultSubject.MISFIRE, "misfire of several cylinders"),
            known(1347, FaultSubject.OTHER, "fuel pump 1"),
            known(1348, FaultSubject.OTHER, "fuel pump 2"),
            known(1349, FaultSubject.RAIL_PRESSURE, "rail 2 pressure"));

    private SuspectParameters() {}

    private static Map.Entry<Integer, Known> known(int spn, FaultSubject subject, String words) {
        return Map.entry(spn, new Known(subject, words));
    }

    /**
     * What a number with its failure mode says.
     *
     * @param spn 0 to {@link #MOST}
     * @param fmi 0 to 31
     * @throws IllegalArgumentException if either is out of range
     */
    public static CodeMeaning meaning(int spn, int fmi) {
        if (spn < 0 || spn > MOST || fmi < 0 || fmi > FailureModes.MOST) {
            throw new IllegalArgumentException(
                    "SPN " + spn + " FMI " + fmi + ": SPN is 0 to " + MOST + ", FMI 0 to 31");
        }
        Integer cylinder = cylinder(spn);
        if (cylinder != null) {
            boolean injector = spn < MISFIRE;
            String what = injector ? "injector of cylinder " : "misfire of cylinder ";
            return new CodeMeaning(
                    what + cylinder + tail(": ", fmi),
                    injector ? FaultSubject.INJECTOR : FaultSubject.MISFIRE,
                    FaultLevel.NOT_SAID,
                    cylinder);
        }
        Known known = KNOWN.get(spn);
        if (known == null) {
            String whose = spn >= FIRST_OF_MAKER ? "maker's own number" : "SPN " + spn;
            return new CodeMeaning(
                    whose + ": " + FailureModes.words(fmi), FaultSubject.UNTRANSLATED, FaultLevel.NOT_SAID, null);
        }
        return new CodeMeaning(words(known, fmi), known.subject(), level(known.subject(), fmi), null);
    }

    /** {@code rail pressure too low, most severe}, but {@code rail pressure: voltage above normal or shorted high}. */
    private static String words(Known known, int fmi) {
        if (known.subject() == FaultSubject.FUEL_LEAK || known.subject() == FaultSubject.WATER_IN_FUEL) {
            return known.words() + (FailureModes.level(fmi).isSaid() ? "" : tail(": ", fmi));
        }
        return known.words() + tail(FailureModes.level(fmi).isSaid() ? " " : ": ", fmi);
    }

    private static String tail(String before, int fmi) {
        return fmi == FailureModes.MOST ? "" : before + FailureModes.words(fmi);
    }

    /** A leak is one whatever the failure mode; water is there where its level or the mere condition is reported. */
    private static FaultLevel level(FaultSubject subject, int fmi) {
        if (subject == FaultSubject.FUEL_LEAK) {
            return FaultLevel.MOST;
        }
        if (subject == FaultSubject.WATER_IN_FUEL && fmi == FailureModes.MOST) {
            return FaultLevel.MODERATE;
        }
        return FailureModes.level(fmi);
    }

    private static @Nullable Integer cylinder(int spn) {
        if (spn > INJECTOR && spn <= INJECTOR + MOST_CYLINDERS) {
            return spn - INJECTOR;
        }
        return spn > MISFIRE && spn <= MISFIRE + MOST_CYLINDERS ? Integer.valueOf(spn - MISFIRE) : null;
    }
}
