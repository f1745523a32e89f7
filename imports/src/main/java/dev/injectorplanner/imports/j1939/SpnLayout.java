package dev.injectorplanner.imports.j1939;

/**
 * How the 19 bits of an SPN lie in the first three bytes of a trouble code. Version 4 is today's; engines made before 2006
 * may send one of three earlier ones, and the conversion-method bit does not say which (some send version 1 with the bit at
 * 0), so that it is set by source. Source: SAE J1939-73 5.7.1, as quoted in public.
 */
public enum SpnLayout {
    /** Most significant byte first. */
    VERSION_1,
    /** The first two bytes swapped. */
    VERSION_2,
    /** As version 4, but the conversion-method bit is 1. */
    VERSION_3,
    /** Least significant byte first, the top three bits beside the FMI. */
    VERSION_4;

    /** By its number, 1 to 4. */
    public static SpnLayout of(int version) {
        if (version < 1 || version > values().length) {
            throw new IllegalArgumentException("layout " + version + " of SPN is not 1 to 4");
        }
        return values()[version - 1];
    }

    int spn(int first, int second, int third) {
        return switch (this) {
            case VERSION_1 -> first << 11 | second << 3 | third >> 5;
            case VERSION_2 -> second << 11 | first << 3 | third >> 5;
            case VERSION_3, VERSION_4 -> third >> 5 << 16 | second << 8 | first;
        };
    }
}
