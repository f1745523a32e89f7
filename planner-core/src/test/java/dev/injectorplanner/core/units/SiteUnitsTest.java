package dev.injectorplanner.core.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.units.SiteUnits.Distance;
import dev.injectorplanner.core.units.SiteUnits.Temperature;
import dev.injectorplanner.core.units.SiteUnits.Volume;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Units of a site. Sources, figures from memory: the mile of the international yard and pound agreement of 1959, 1.609344 km
 * exactly; US gallon 3.785411784 l, and degrees F = 1.8 degrees C + 32 (both NIST SP 811, appendix B).
 */
class SiteUnitsTest {
    private static final SiteUnits AMERICAN = new SiteUnits(Distance.MILES, Volume.US_GALLONS, Temperature.FAHRENHEIT);

    @Test
    void definitions_are_exact() {
        assertThat(AMERICAN.toKm(1)).isEqualTo(1.609344);
        assertThat(AMERICAN.toKm(5_280 / 5_280.0)).isCloseTo(5_280 * 0.3048 / 1_000, within(1e-15));
        assertThat(AMERICAN.toLitres(1)).isEqualTo(3.785411784);
        assertThat(AMERICAN.toLitres(1)).isCloseTo(231 * 2.54 * 2.54 * 2.54 / 1_000, within(1e-14));
    }

    /** Fixed points of the two scales: ice, steam, and where both are the same. */
    @Test
    void degrees_meet_at_their_fixed_points() {
        assertThat(AMERICAN.ofCelsius(0)).isEqualTo(32);
        assertThat(AMERICAN.ofCelsius(100)).isEqualTo(212);
        assertThat(AMERICAN.ofCelsius(-40)).isEqualTo(-40);
        assertThat(AMERICAN.toCelsius(-34)).isCloseTo(-36.667, within(0.001));
    }

    @Test
    void a_metric_site_reads_what_is_stored() {
        assertThat(SiteUnits.METRIC.ofKm(412_300.4)).isEqualTo(412_300.4);
        assertThat(SiteUnits.METRIC.distance(412_300.4)).isEqualTo("412,300 km");
        assertThat(SiteUnits.METRIC.volume(7.57)).isEqualTo("7.6 l");
        String words = "351,397 km since fitting, 1,648 km a week; coolant 3 a litre; to -34 C";
        assertThat(SiteUnits.METRIC.sentence(words)).isEqualTo(words);
    }

    /** Whatever is typed in miles, gallons or degrees F, to a thousandth, is read back as typed. */
    @Test
    void what_was_typed_is_read_back() {
        long seed = 20_260_302;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            String typed = SiteUnits.asTyped(random.nextInt(2_000_000_000) / 1_000.0);
            double value = Double.parseDouble(typed);
            assertThat(SiteUnits.asTyped(AMERICAN.ofKm(AMERICAN.toKm(value))))
                    .as("seed " + seed)
                    .isEqualTo(typed);
            assertThat(SiteUnits.asTyped(AMERICAN.ofLitres(AMERICAN.toLitres(value))))
                    .as("seed " + seed)
                    .isEqualTo(typed);
            assertThat(SiteUnits.asTyped(AMERICAN.ofCelsius(AMERICAN.toCelsius(value))))
                    .as("seed " + seed)
                    .isEqualTo(typed);
        }
    }

    /** 351,397 / 1.609344 = 218,348.0; 1,648 / 1.609344 = 1,024.0; 7.6 / 3.785412 = 2.008; 40 / 3.785412 = 10.567; 3 x 3.785412 = 11.36; 4,542.4941 / 3.785412 = 1,200; by calculator. */
    @Test
    void sentences_of_the_engine_speak_the_sites_units() {
        assertThat(
                        AMERICAN.sentence(
                                "351,397 km since fitting on 2022-01-24, 1,648 km a week; 4 % chance of failing within 12 weeks"))
                .isEqualTo(
                        "218,348 mi since fitting on 2022-01-24, 1,024 mi a week; 4 % chance of failing within 12 weeks");
        assertThat(AMERICAN.sentence("with 7.6 l of 40 l drained"))
                .isEqualTo("with 2.01 US gal of 10.57 US gal drained");
        assertThat(AMERICAN.sentence("coolant 3 a litre")).isEqualTo("coolant 11.36 a US gallon");
        assertThat(AMERICAN.sentence("coolant 0.2642 a litre")).isEqualTo("coolant 1 a US gallon");
        assertThat(AMERICAN.volume(4_542.4941)).isEqualTo("1,200 US gal");
        assertThat(AMERICAN.sentence("to protect to -34 C; 10 % a week"))
                .isEqualTo("to protect to -29.2 F; 10 % a week");
        assertThat(AMERICAN.sentence("km and hours a week")).isEqualTo("mi and hours a week");
    }

    @Test
    void codes_names_and_other_units_stay() {
        String words = "rail pressure (SPN 157 FMI 18), part KL-11 C, 42 ml/min, balance 4.5 mm3/stroke, 2.5 h";
        assertThat(AMERICAN.sentence(words)).isEqualTo(words);
        assertThat(AMERICAN.sentence(AMERICAN.sentence("12,000 km ago"))).isEqualTo("7,456 mi ago");
    }
}
