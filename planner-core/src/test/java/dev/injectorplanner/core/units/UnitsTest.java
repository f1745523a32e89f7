package dev.injectorplanner.core.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Exact definitions: international mile, US and imperial gallon, pound-force per square inch (NIST SP 811, from memory). */
class UnitsTest {
    private static final Percentage TWELVE_DIGITS = Percentage.withPercentage(1e-10);

    @Test
    void definitions() {
        assertThat(Units.KM_PER_MILE).isEqualTo(1.609344);
        assertThat(Units.LITRES_PER_US_GALLON).isEqualTo(3.785411784);
        assertThat(Units.LITRES_PER_IMPERIAL_GALLON).isEqualTo(4.54609);
        assertThat(Units.KPA_PER_PSI).isEqualTo(6.894757293168361);
    }

    /** Worked values, computed from the definitions with another program. */
    @Test
    void examples() {
        assertThat(Units.milesToKm(250_000)).isCloseTo(402_336.0, TWELVE_DIGITS);
        assertThat(Units.kmToMiles(500_000)).isCloseTo(310_685.596118667, TWELVE_DIGITS);
        assertThat(Units.fahrenheitToCelsius(-34)).isCloseTo(-36.666666666666664, TWELVE_DIGITS);
        assertThat(Units.celsiusToFahrenheit(-37)).isCloseTo(-34.6, within(1e-12));
        assertThat(Units.psiToKpa(26_000) / 1_000).isCloseTo(179.2636896223774, TWELVE_DIGITS);
    }

    @Test
    void figuresInWords() {
        assertThat(Figures.km(412_300.4)).isEqualTo("412,300 km");
        assertThat(Figures.hours(6.5)).isEqualTo("6.5 h");
        assertThat(Figures.hours(12)).isEqualTo("12 h");
        assertThat(Figures.litres(18.24)).isEqualTo("18.2 l");
        assertThat(Figures.count(1, "fault", "faults")).isEqualTo("1 fault");
        assertThat(Figures.tidy(0.1 + 0.2)).isEqualTo(0.3);
        assertThat(Figures.count(12_000, "fault", "faults")).isEqualTo("12,000 faults");
    }

    /** Java's own format strings write figures too, slowly. */
    @Test
    void figures_by_hand_are_those_of_format_strings() {
        Random random = new Random(12);
        for (int i = 0; i < 20_000; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(18) - 3);
            double tenth = Math.rint(value * 10) / 10 + 0.0;
            assertThat(Figures.whole(value)).isEqualTo(String.format(Locale.ROOT, "%,d", Math.round(value)));
            assertThat(Figures.oneDecimal(value)).as("%s", value).isEqualTo(String.format(Locale.ROOT, "%,.1f", tenth));
        }
        assertThat(Figures.whole(-999)).isEqualTo("-999");
        assertThat(Figures.whole(-1_000)).isEqualTo("-1,000");
        assertThat(Figures.oneDecimal(-0.04)).isEqualTo("0.0");
        assertThat(Figures.oneDecimal(Double.NaN)).isEqualTo("NaN");
        assertThat(Figures.tenths(1_234.56)).isEqualTo("1,234.6");
    }
}
