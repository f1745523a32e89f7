package dev.injectorplanner.imports.j1939;

/**
 * One trouble code of a fault message.
 *
 * @param spn what is at fault, 0 to 524287
 * @param fmi how, 0 to 31
 * @param count how often it has come, cumulative, 0 to 126; {@value #NO_COUNT} where the ECU does not count
 * @param conversionBit the conversion-method bit: 1 may mean an early layout of the SPN
 */
public record TroubleCode(int spn, int fmi, int count, int conversionBit) {
    /** The count of an ECU that does not count. */
    public static final int NO_COUNT = 127;

    /** From its four bytes. */
    public static TroubleCode of(byte[] data, int at, SpnLayout layout) {
        int third = data[at + 2] & 0xFF;
        int fourth = data[at + 3] & 0xFF;
        return new TroubleCode(
                layout.spn(data[at] & 0xFF, data[at + 1] & 0xFF, third), third & 31, fourth & 127, fourth >> 7);
    }

    public boolean hasCount() {
        return count != NO_COUNT;
    }
}
