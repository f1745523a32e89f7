package dev.injectorplanner.core.units;

/**
 * Exact conversions. Source: international mile 1,609.344 m and US gallon 231 cubic inches (NIST SP 811, appendix B).
 */
public final class Units {
    /** Kilometres in one international mile. */
    public static final double KM_PER_MILE = 1.609344;

    /** Litres in one US gallon. */
    public static final double LITRES_PER_US_GALLON = 3.785411784;

    /** Litres in one imperial gallon. */
    public static final double LITRES_PER_IMPERIAL_GALLON = 4.54609;

    /** Kilopascals in one pound-force per square inch. */
    public static final double KPA_PER_PSI = 6.894757293168361;

    private Units() {}

    public static double milesToKm(double miles) {
        return miles * KM_PER_MILE;
    }

    public static double kmToMiles(double km) {
        return km / KM_PER_MILE;
    }

    public static double usGallonsToLitres(double gallons) {
        return gallons * LITRES_PER_US_GALLON;
    }

    public static double litresToUsGallons(double litres) {
        return litres / LITRES_PER_US_GALLON;
    }

    public static double fahrenheitToCelsius(double fahrenheit) {
        return (fahrenheit - 32) * 5 / 9;
    }

    public static double celsiusToFahrenheit(double celsius) {
        return celsius * 9 / 5 + 32;
    }

    public static double psiToKpa(double psi) {
        return psi * KPA_PER_PSI;
    }
}
