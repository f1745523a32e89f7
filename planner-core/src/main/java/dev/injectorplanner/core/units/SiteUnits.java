package dev.injectorplanner.core.units;

import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The units in which the people of a site read and type. Storage and engine know km, litres and degrees C alone; what was
 * typed in another unit is read back as it was typed.
 *
 * @param distance of odometers and distances
 * @param volume of coolant
 * @param temperature of freezing points
 */
public record SiteUnits(Distance distance, Volume volume, Temperature temperature) {
    /** As stored. */
    public static final SiteUnits METRIC = new SiteUnits(Distance.KM, Volume.LITRES, Temperature.CELSIUS);

    /** Decimals that a typed figure keeps: far finer than a meter, far coarser than the error of converting twice. */
    private static final int TYPED_DECIMALS = 3;

    private static final String NUMBER = "(?<![\\w.,-])(-?\\d[\\d,]*(?:\\.\\d+)?)";
    private static final Pattern KM = Pattern.compile(NUMBER + "([ \\u00a0])km\\b");
    private static final Pattern BARE_KM = Pattern.compile("\\bkm\\b");
    private static final Pattern LITRES = Pattern.compile(NUMBER + "([ \\u00a0])l\\b");
    private static final Pattern A_LITRE = Pattern.compile(NUMBER + "( a )litre\\b");
    private static final Pattern DEGREES = Pattern.compile(NUMBER + "([ \\u00a0])C\\b");

    /** Of odometers and distances. */
    public enum Distance {
        KM("km"),
        MILES("mi");

        private final String unit;

        Distance(String unit) {
            this.unit = unit;
        }
    }

    /** Of coolant. */
    public enum Volume {
        LITRES("l"),
        US_GALLONS("US gal");

        private final String unit;

        Volume(String unit) {
            this.unit = unit;
        }
    }

    /** Of freezing points. */
    public enum Temperature {
        CELSIUS("C"),
        FAHRENHEIT("F");

        private final String unit;

        Temperature(String unit) {
            this.unit = unit;
        }
    }

    public boolean isMetric() {
        return equals(METRIC);
    }

    /** {@code km} or {@code mi}. */
    public String distanceUnit() {
        return distance.unit;
    }

    /** {@code l} or {@code US gal}. */
    public String volumeUnit() {
        return volume.unit;
    }

    /** {@code C} or {@code F}. */
    public String temperatureUnit() {
        return temperature.unit;
    }

    /** Km as people of the site count them. */
    public double ofKm(double km) {
        return distance == Distance.KM ? km : Units.kmToMiles(km);
    }

    /** A typed distance in km. */
    public double toKm(double typed) {
        return distance == Distance.KM ? typed : Units.milesToKm(typed);
    }

    /** Litres in the site's unit of volume. */
    public double ofLitres(double litres) {
        return volume == Volume.LITRES ? litres : Units.litresToUsGallons(litres);
    }

    /** Litres of a figure in the site's unit of volume. */
    public double toLitres(double typed) {
        return volume == Volume.LITRES ? typed : Units.usGallonsToLitres(typed);
    }

    /** Degrees C in the site's unit of temperature. */
    public double ofCelsius(double celsius) {
        return temperature == Temperature.CELSIUS ? celsius : Units.celsiusToFahrenheit(celsius);
    }

    /** Degrees C of a figure in the site's unit of temperature. */
    public double toCelsius(double typed) {
        return temperature == Temperature.CELSIUS ? typed : Units.fahrenheitToCelsius(typed);
    }

    /** {@code 256,191 mi}. */
    public String distance(double km) {
        return Figures.whole(ofKm(km)) + " " + distance.unit;
    }

    /** A volume without its unit: litres to a tenth, gallons, four times as large, to a hundredth. */
    public String volumeFigure(double litres) {
        return volume == Volume.LITRES ? Figures.tenths(litres) : hundredths(ofLitres(litres));
    }

    private static String hundredths(double value) {
        return Figures.given(Math.rint(value * 100) / 100);
    }

    /** {@code 7.6 l}, {@code 2.01 US gal}. */
    public String volume(double litres) {
        return volumeFigure(litres) + " " + volume.unit;
    }

    /** {@code -34 C}. */
    public String temperature(double celsius) {
        return Figures.tenths(ofCelsius(celsius)) + " " + temperature.unit;
    }

    /** A figure that was typed in the site's unit, as it was typed: 156321.4 mi, stored in km, is 156321.4 again. */
    public static String asTyped(double converted) {
        return Require.plain(BigDecimal.valueOf(converted)
                .setScale(TYPED_DECIMALS, RoundingMode.HALF_EVEN)
                .doubleValue());
    }

    /**
     * A sentence of the engine in the site's units: each {@code 412,300 km}, {@code 7.6 l}, {@code 3 a litre} and
     * {@code -34 C} in it. The engine writes its sentences in km, litres and degrees C, each figure with its unit.
     */
    public String sentence(String engine) {
        String words = engine;
        if (distance == Distance.MILES) {
            words = replaced(KM, words, km -> Figures.whole(ofKm(km)), distance.unit);
            words = BARE_KM.matcher(words).replaceAll(distance.unit);
        }
        if (volume == Volume.US_GALLONS) {
            words = replaced(LITRES, words, this::volumeFigure, volume.unit);
            words = replaced(A_LITRE, words, price -> hundredths(toLitres(price)), "US gallon");
        }
        return temperature == Temperature.FAHRENHEIT
                ? replaced(DEGREES, words, celsius -> Figures.tenths(ofCelsius(celsius)), temperature.unit)
                : words;
    }

    private static String replaced(Pattern pattern, String words, DoubleFunction<String> said, String unit) {
        Matcher found = pattern.matcher(words);
        StringBuilder made = new StringBuilder();
        while (found.find()) {
            String figure = said.apply(Double.parseDouble(found.group(1).replace(",", "")));
            found.appendReplacement(made, Matcher.quoteReplacement(figure + found.group(2) + unit));
        }
        return found.appendTail(made).toString();
    }
}
