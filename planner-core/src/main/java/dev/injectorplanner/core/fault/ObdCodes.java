package dev.injectorplanner.core.fault;

import java.util.Map;
import java.util.regex.Pattern;

/**
 * Generic trouble codes of SAE J2012 / ISO 15031-6, in text and in the two bytes of ISO 15031-5: top two bits P, C, B, U, two
 * bits the first digit, then three hexadecimal digits. Injector circuit P0200+n, circuit low, high and contribution P0261,
 * P0262 and P0263 + 3(n-1), misfire P0300+n, n from 1 to 12; names as in the open library python-OBD. From memory: P008A,
 * P008B, P2269, and which ranges belong to the makers.
 */
public final class ObdCodes {
    private static final Pattern TEXT = Pattern.compile("[PCBU][0-3][0-9A-F]{3}");
    private static final String SYSTEMS = "PCBU";
    private static final int MOST_CYLINDERS = 12;
    private static final Map<String, CodeMeaning> KNOWN = Map.ofEntries(
            known("P0087", FaultSubject.RAIL_PRESSURE, FaultLevel.MOST, "rail pressure too low"),
            known("P0088", FaultSubject.RAIL_PRESSURE, FaultLevel.MOST, "rail pressure too high"),
            known("P0089", FaultSubject.OTHER, FaultLevel.NOT_SAID, "fuel pressure regulator 1: performance"),
            known("P008A", FaultSubject.SUPPLY_PRESSURE, FaultLevel.MOST, "fuel delivery pressure too low"),
            known("P008B", FaultSubject.SUPPLY_PRESSURE, FaultLevel.MOST, "fuel delivery pressure too high"),
            known("P0093", FaultSubject.FUEL_LEAK, FaultLevel.MOST, "large fuel leak"),
            known("P0094", FaultSubject.FUEL_LEAK, FaultLevel.MOST, "small fuel leak"),
            known("P0190", FaultSubject.RAIL_PRESSURE, FaultLevel.NOT_SAID, "rail pressure sensor: circuit"),
            known("P0191", FaultSubject.RAIL_PRESSURE, FaultLevel.LEAST, "rail pressure out of range"),
            known("P0192", FaultSubject.RAIL_PRESSURE, FaultLevel.NOT_SAID, "rail pressure sensor: circuit low"),
            known("P0193", FaultSubject.RAIL_PRESSURE, FaultLevel.NOT_SAID, "rail pressure sensor: circuit high"),
            known("P0194", FaultSubject.RAIL_PRESSURE, FaultLevel.NOT_SAID, "rail pressure sensor: intermittent"),
            known("P0200", FaultSubject.INJECTOR, FaultLevel.NOT_SAID, "injector circuit, no cylinder named"),
            known("P0300", FaultSubject.MISFIRE, FaultLevel.NOT_SAID, "misfire of several cylinders"),
            known("P0611", FaultSubject.OTHER, FaultLevel.NOT_SAID, "injector control module: performance"),
            known("P2269", FaultSubject.WATER_IN_FUEL, FaultLevel.MODERATE, "water in fuel"));

    private ObdCodes() {}

    private static Map.Entry<String, CodeMeaning> known(
            String code, FaultSubject subject, FaultLevel level, String words) {
        return Map.entry(code, new CodeMeaning(words, subject, level, null));
    }

    /** Whether a text is a code, in capital letters. */
    public static boolean isCode(String text) {
        return text.length() == 5 && TEXT.matcher(text).matches();
    }

    /**
     * The text of a code's two bytes.
     *
     * @param twoBytes 0 to 0xFFFF, the first byte the more significant
     */
    public static String text(int twoBytes) {
        return new StringBuilder(5)
                .append(SYSTEMS.charAt(twoBytes >> 14 & 3))
                .append(twoBytes >> 12 & 3)
                .append(digit(twoBytes >> 8))
                .append(digit(twoBytes >> 4))
                .append(digit(twoBytes))
                .toString();
    }

    private static char digit(int bits) {
        return Character.toUpperCase(Character.forDigit(bits & 0xF, 16));
    }

    /**
     * Whether a code's number belongs to the vehicle's maker: P1xxx and P30xx to P33xx, and the first digits 1 and 2 of the
     * other systems.
     */
    public static boolean isOfMaker(String code) {
        char first = code.charAt(1);
        if (code.charAt(0) != 'P') {
            return first == '1' || first == '2';
        }
        return first == '1' || first == '3' && code.charAt(2) <= '3';
    }

    /** Whether a code of an injector speaks of its circuit, open, low or high, and not of its contribution. */
    public static boolean isInjectorCircuit(String code) {
        if (meaning(code).cylinder() == null || meaning(code).subject() != FaultSubject.INJECTOR) {
            return false;
        }
        int number = Integer.parseInt(code.substring(1));
        return number < 261 || (number - 261) % 3 != 2;
    }

    /**
     * What a code says.
     *
     * @param code its text, as {@link #isCode} has it
     */
    public static CodeMeaning meaning(String code) {
        CodeMeaning known = KNOWN.get(code);
        if (known != null) {
            return known;
        }
        if (isOfMaker(code)) {
            return untranslated("maker's own code");
        }
        return code.matches("P0[23][0-9]{2}") ? ofCylinder(Integer.parseInt(code.substring(1))) : other();
    }

    private static CodeMeaning ofCylinder(int number) {
        if (number > 200 && number <= 200 + MOST_CYLINDERS) {
            return injector(number - 200, "circuit open");
        }
        if (number >= 261 && number < 261 + 3 * MOST_CYLINDERS) {
            String what = switch ((number - 261) % 3) {
                case 0 -> "circuit low";
                case 1 -> "circuit high";
                default -> "contribution or balance";
            };
            return injector((number - 261) / 3 + 1, what);
        }
        if (number > 300 && number <= 300 + MOST_CYLINDERS) {
            int cylinder = number - 300;
            return new CodeMeaning(
                    "misfire of cylinder " + cylinder, FaultSubject.MISFIRE, FaultLevel.NOT_SAID, cylinder);
        }
        return other();
    }

    private static CodeMeaning injector(int cylinder, String what) {
        return new CodeMeaning(
                "injector of cylinder " + cylinder + ": " + what, FaultSubject.INJECTOR, FaultLevel.NOT_SAID, cylinder);
    }

    private static CodeMeaning other() {
        return untranslated("generic code, see the maker's list");
    }

    private static CodeMeaning untranslated(String words) {
        return new CodeMeaning(words, FaultSubject.UNTRANSLATED, FaultLevel.NOT_SAID, null);
    }
}
