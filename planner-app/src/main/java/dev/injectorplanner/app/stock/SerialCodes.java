package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Part;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Serials and calibration codes as people type and scan them: blanks mean nothing, small letters are capitals. */
public final class SerialCodes {
    private static final String BLANKS = "[\\s\\u00a0]+";

    private SerialCodes() {}

    public static String serial(String typed) {
        return typed.strip().replaceAll(BLANKS, " ").toUpperCase(Locale.ROOT);
    }

    /** A code of a part: as typed where its pattern wants small letters, else in capitals. */
    public static String code(@Nullable Part part, String typed) {
        String bare = typed.replaceAll(BLANKS, "");
        boolean small = part != null && part.codePattern() != null && part.acceptsCode(bare);
        return small ? bare : bare.toUpperCase(Locale.ROOT);
    }

    /**
     * Checks a serial and a code against their part.
     *
     * @param where what a sentence begins with, such as {@code "Cylinder 3, "} or nothing
     * @param field what fields begin with, such as {@code c3.}
     */
    public static void check(
            Part part, String serial, String code, String where, String field, EntryProblems problems) {
        if (serial.isEmpty()) {
            problems.add(field + "serial", where + "serial: is empty", "read it on the injector, or scan its label");
        }
        name(where, field + "serial", "serial", serial, problems);
        name(where, field + "code", "code", code, problems);
        if (code.isEmpty()) {
            if (part.codePattern() != null) {
                problems.add(
                        field + "code",
                        where + "code: is empty, but part " + part.part() + " requires a calibration code",
                        "read it on the injector, or scan its label");
            }
        } else if (!part.acceptsCode(code)) {
            problems.add(
                    field + "code",
                    where + "code \"" + code + "\": does not match the pattern of part " + part.part() + ", "
                            + part.codePattern(),
                    "read it on the injector again");
        } else if (code.equals(serial)) {
            problems.add(
                    field + "code",
                    where + "code \"" + code + "\": is the same as the serial",
                    "scan the other of the two labels");
        }
    }

    private static void name(String where, String field, String what, String value, EntryProblems problems) {
        if (value.contains(";")) {
            problems.add(
                    field,
                    where + what + " \"" + shortened(value) + "\": has a semicolon in it",
                    "scan the injector's own label, not one with several values");
        } else if (value.length() > Require.LONGEST_NAME || value.chars().anyMatch(Character::isISOControl)) {
            problems.add(
                    field,
                    where + what + " \"" + shortened(value) + "\": is no " + what + ", the maximum is "
                            + Require.LONGEST_NAME + " characters",
                    "read it on the injector again");
        }
    }

    private static String shortened(String value) {
        String plain = value.replaceAll("\\p{Cntrl}", "?");
        return plain.length() > 40 ? plain.substring(0, 40) + "..." : plain;
    }
}
