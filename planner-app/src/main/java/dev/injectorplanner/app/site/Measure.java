package dev.injectorplanner.app.site;

import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.units.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What a setting is counted in; money is in the site's one currency. Kept are km, litres, degrees C and shares of one; people type and read the site's units and percent. */
public enum Measure {
    MONEY("", false),
    MONEY_A_DAY("a day", false),
    MONEY_A_WEEK("a week", false),
    MONEY_A_LITRE("", false),
    WEEKS("weeks", true),
    DAYS("days", true),
    HOURS("hours", false),
    PERCENT("%", false),
    DISTANCE("", false),
    VOLUME("", false),
    TEMPERATURE("", false),
    CHOICE("", false),
    TEXT("", false);

    private static final int DECIMALS = 9;

    private final String words;
    private final boolean whole;

    Measure(String words, boolean whole) {
        this.words = words;
        this.whole = whole;
    }

    /** Whether only whole numbers will do. */
    boolean isWhole() {
        return whole;
    }

    /** Whether it is a figure, and neither chosen nor words. */
    public boolean isFigure() {
        return this != CHOICE && this != TEXT;
    }

    /** The unit in which a person types it; empty for words. */
    String unit(SiteUnits units) {
        return switch (this) {
            case MONEY_A_LITRE -> metric(units) ? "a litre" : "a US gallon";
            case DISTANCE -> units.distanceUnit();
            case VOLUME -> units.volumeUnit();
            case TEMPERATURE -> "degrees " + units.temperatureUnit();
            default -> words;
        };
    }

    private static boolean metric(SiteUnits units) {
        return units.volume() == SiteUnits.Volume.LITRES;
    }

    /** A kept figure as it is typed; the last of its decimals are those of the conversion and left out. */
    String shown(double kept, SiteUnits units) {
        double value = switch (this) {
            case PERCENT -> BigDecimal.valueOf(kept).movePointRight(2).doubleValue();
            case MONEY_A_LITRE -> metric(units) ? kept : kept * Units.LITRES_PER_US_GALLON;
            case DISTANCE -> units.ofKm(kept);
            case VOLUME -> units.ofLitres(kept);
            case TEMPERATURE -> units.ofCelsius(kept);
            default -> kept;
        };
        return SiteUnits.asTyped(value);
    }

    /** A kept figure as people read it, with its unit: {@code 1 week}, {@code 1,000,000 km}. */
    String words(double kept, SiteUnits units) {
        String figure = shown(kept, units);
        String unit = unit(units);
        boolean one = figure.equals("1") && unit.endsWith("s");
        return thousands(figure) + (unit.isEmpty() ? "" : " " + (one ? unit.substring(0, unit.length() - 1) : unit));
    }

    /** Thousands apart. */
    static String thousands(String figure) {
        return figure.replaceAll("(?<!\\.\\d{0,9})(?<=\\d)(?=(\\d{3})+(?!\\d))", ",");
    }

    /** A typed figure as it is kept. */
    double kept(BigDecimal typed, SiteUnits units) {
        double value = typed.doubleValue();
        return switch (this) {
            case PERCENT ->
                typed.movePointLeft(2)
                        .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                        .doubleValue();
            case MONEY_A_LITRE -> metric(units) ? value : value / Units.LITRES_PER_US_GALLON;
            case DISTANCE -> units.toKm(value);
            case VOLUME -> units.toLitres(value);
            case TEMPERATURE -> units.toCelsius(value);
            default -> value;
        };
    }
}
