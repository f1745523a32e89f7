package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Optional;

/**
 * A label for an injector that is allocated to one cylinder of one truck.
 *
 * @param truck the truck
 * @param cylinder the cylinder
 * @param bank its bank
 * @param part the injector part
 * @param serial the injector's serial
 * @param calibrationCode its calibration code, empty where the part has none
 * @param when day or week of the visit, and depot, in words
 */
public record CylinderLabel(
        String truck, int cylinder, String bank, String part, String serial, String calibrationCode, String when) {
    private static final String SEPARATOR = ";";
    private static final int FIELDS = 4;

    public CylinderLabel {
        for (String field : new String[] {truck, serial, calibrationCode}) {
            if (field.contains(SEPARATOR) || field.chars().anyMatch(Character::isISOControl)) {
                throw new InvalidValueException(
                        "label", field, "cannot be written into a label", "use names without semicolons");
            }
        }
    }

    /** What the square code says: {@code truck;cylinder;serial;code}. One line, so that a wedge scanner types it whole. */
    public String payload() {
        return String.join(SEPARATOR, truck, String.valueOf(cylinder), serial, calibrationCode);
    }

    /** The code in groups of four. */
    public String grouped() {
        return CodedInjector.grouped(calibrationCode);
    }

    /** The square code as SVG. */
    public String square() {
        return SquareCode.of(payload());
    }

    /** What a scanner read from a label. */
    public record Scanned(String truck, int cylinder, String serial, String calibrationCode) {}

    /** Reads a label's payload; empty where the text is none, such as a code that was typed. */
    public static Optional<Scanned> read(String text) {
        String[] fields = text.strip().split(SEPARATOR, -1);
        if (fields.length != FIELDS || !fields[1].matches("\\d{1,2}")) {
            return Optional.empty();
        }
        return Optional.of(new Scanned(fields[0], Integer.parseInt(fields[1]), fields[2], fields[3]));
    }
}
