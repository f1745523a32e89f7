package dev.injectorplanner.reports.bay;

/**
 * An injector from stock that is allocated to a cylinder.
 *
 * @param serial its serial
 * @param calibrationCode its calibration code, empty where the part has none
 */
public record CodedInjector(String serial, String calibrationCode) {
    private static final int GROUP = 4;

    /** The code in groups of four, as people read it aloud. */
    public String grouped() {
        return grouped(calibrationCode);
    }

    /** A calibration code in groups of four; as it is where it already has spaces or dashes. */
    public static String grouped(String code) {
        if (code.isEmpty() || !code.chars().allMatch(Character::isLetterOrDigit)) {
            return code;
        }
        StringBuilder grouped = new StringBuilder();
        for (int i = 0; i < code.length(); i++) {
            if (i > 0 && i % GROUP == 0) {
                grouped.append('\u00a0');
            }
            grouped.append(code.charAt(i));
        }
        return grouped.toString();
    }
}
