package dev.injectorplanner.core.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.testkit.Published;
import java.util.Random;
import org.junit.jupiter.api.Test;

class E02_MixingTest {
    private static CoolantMixer mixer(double capacity, double drained, double now) {
        return new CoolantMixer(capacity, drained, now, false);
    }

    /** Source: published/glycol.md, drain and refill; the drain found there takes pure concentrate or pure water. */
    @Test
    void publishedDilutions() {
        for (String[] row : Published.rows("glycol_dilution.csv")) {
            double system = Double.parseDouble(row[0]);
            double now = Double.parseDouble(row[1]);
            double target = Double.parseDouble(row[3]);
            double exchange = Double.parseDouble(row[4]);
            assertThat(CoolantMixer.leastExchangeLitres(system, now, target)).isCloseTo(exchange, within(1e-9));
            CoolantMix mix = mixer(system, exchange, now).renew(target);
            boolean concentrate = Double.parseDouble(row[2]) == 100;
            assertThat(concentrate ? mix.waterLitres() : mix.concentrateLitres())
                    .isCloseTo(0, within(1e-9));
            assertThat(mix.pouredLitres()).isCloseTo(exchange, within(1e-9));
            assertThat(mix.afterPercent()).isCloseTo(target, within(1e-8));
        }
    }

    /** Published: 277.6 of 1,000 gallons at 30 % by weight, specific gravity 1.1155 (ASHRAE 1993 as quoted). */
    @Test
    void publishedShareOfVolumeAtThirtyPercentOfMass() {
        double low = 0;
        double high = 57;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (GlycolWater.massPercent(middle) < 30) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(10 * high).isCloseTo(277.6, within(1.0));
    }

    /** By hand: 50 l at 40 %, 20 l out leaves 12 l of glycol; 50 % needs 25, so 13 l of concentrate and 7 of water. */
    @Test
    void whatStaysInTheBlockCounts() {
        CoolantMix mix = mixer(50, 20, 40).renew(50);
        assertThat(mix.concentrateLitres()).isCloseTo(13, within(1e-12));
        assertThat(mix.waterLitres()).isCloseTo(7, within(1e-12));
        assertThat(mix.wasteLitres()).isEqualTo(20);
        assertThat(mix.afterPercent()).isCloseTo(50, within(1e-12));
        // 20 l at 40 % and 1.0597 kg a litre (ASHRAE density at 20 C)
        assertThat(mix.wasteKg()).isCloseTo(21.19, within(0.1));
    }

    /** By hand: of 20 l drained 1 l is lost; at the same strength half of it is concentrate. */
    @Test
    void reusedCoolantIsToppedUp() {
        CoolantMix mix = mixer(50, 20, 50).reuse(50, 0.05);
        assertThat(mix.concentrateLitres()).isCloseTo(0.5, within(1e-12));
        assertThat(mix.waterLitres()).isCloseTo(0.5, within(1e-12));
        assertThat(mix.putBackLitres()).isCloseTo(19, within(1e-12));
        assertThat(mix.wasteLitres()).isCloseTo(1, within(1e-12));
    }

    /** By hand: from 45 to 50 % 50 x 5 / 55 = 4.5455 l are exchanged for concentrate, more than the litre lost. */
    @Test
    void reusedCoolantMakesRoomForAnotherStrength() {
        CoolantMix mix = mixer(50, 20, 45).reuse(50, 0.05);
        assertThat(mix.concentrateLitres()).isCloseTo(50 * 5 / 55.0, within(1e-9));
        assertThat(mix.waterLitres()).isCloseTo(0, within(1e-9));
        assertThat(mix.putBackLitres()).isCloseTo(20 - 50 * 5 / 55.0, within(1e-9));
    }

    @Test
    void aTargetOutOfReachIsRefusedWithTheDrainThatWouldDo() {
        assertThatThrownBy(() -> mixer(40, 5, 35).renew(50))
                .isInstanceOf(InvalidValueException.class)
                .hasMessage(
                        "target_percent \"50\": cannot be reached: with 5 l of 40 l drained, 35 % becomes at most 43.1 %,"
                                + " all concentrate. Fix: drain 9.3 l or more and fill concentrate.");
        assertThatThrownBy(() -> mixer(40, 5, 60).renew(50))
                .hasMessageContaining("becomes at least 52.5 %, all water. Fix: drain 6.7 l or more and fill water");
        assertThat(mixer(40, 9.3, 35).renew(50).afterPercent()).isCloseTo(50, within(1e-9));
        assertThatThrownBy(() -> mixer(40, 5, 35).reuse(50, 0.05)).hasMessageContaining("drain 9.3 l");
    }

    /** ASTM D6210, scope: heavy-duty concentrate is made for 40 to 60 percent by volume. */
    @Test
    void outsideFortyToSixtyOnlyWhereTheSiteAllowsIt() {
        assertThatThrownBy(() -> mixer(40, 40, 35).renew(35))
                .hasMessageContaining("outside 40 to 60 % by volume")
                .hasMessageContaining("ASTM D6210");
        assertThatThrownBy(() -> mixer(40, 40, 50).renew(60.5)).hasMessageContaining("carries less heat");
        assertThat(mixer(40, 40, 50).renew(40).concentrateLitres()).isCloseTo(16, within(1e-9));
        assertThat(mixer(40, 40, 50).renew(60).concentrateLitres()).isCloseTo(24, within(1e-9));
        CoolantMix strong = new CoolantMixer(40, 40, 50, true).renew(65);
        assertThat(strong.concentrateLitres()).isCloseTo(26, within(1e-9));
        assertThat(strong.freezingPointC()).isNull();
    }

    @Test
    void aMildProtectionStillTakesFortyPercent() {
        assertThat(CoolantMixer.targetFor(-15, false)).isEqualTo(40);
        assertThat(CoolantMixer.targetFor(-15, true)).isBetween(28.0, 30.0);
        assertThat(CoolantMixer.targetFor(-36.4, false)).isCloseTo(49.6, within(1e-9));
    }

    /** 40 l at 55 % with 5 l drained: water alone makes 35 x 55 / 40 = 48.125 %, more than -30 C asks for. */
    @Test
    void coolantThatProtectsAlreadyIsNotRefused() {
        CoolantMixer mixer = mixer(40, 5, 55);
        assertThat(mixer.targetToProtect(-30, false)).isCloseTo(48.125, within(1e-12));
        CoolantMix mix = mixer.renew(mixer.targetToProtect(-30, false));
        assertThat(mix.waterLitres()).isCloseTo(5, within(1e-9));
        assertThat(mix.freezingPointC()).isLessThan(-30);
        assertThat(mixer.targetToProtect(-30, true)).isEqualTo(55);
        assertThat(mixer(40, 20, 55).targetToProtect(-30, false)).isCloseTo(GlycolWater.percentFor(-30), within(1e-12));
        assertThat(mixer(40, 40, 62).targetToProtect(-30, true)).isCloseTo(GlycolWater.percentFor(-30), within(1e-12));
        assertThat(mixer(40, 20, 40).targetToProtect(-30, true)).isCloseTo(GlycolWater.percentFor(-30), within(1e-12));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> mixer(40, 41, 50)).hasMessageContaining("is more than the system holds, 40 l");
        assertThatThrownBy(() -> mixer(0, 0, 50)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> mixer(40, -1, 50)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> mixer(40, 4, 101)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> mixer(40, 4, Double.NaN)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> mixer(40, 4, 50).renew(Double.NaN)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> mixer(40, 4, 50).reuse(50, 2)).isInstanceOf(InvalidValueException.class);
    }

    /** Litres: before + poured = after + waste. Glycol: the same, litre by litre. Refusals come with a drain that does. */
    @Test
    void litresAreConserved() {
        int mixed = 0;
        for (long seed = 1; seed <= 2_000; seed++) {
            Random random = new Random(seed);
            double capacity = 10 + 60 * random.nextDouble();
            double drained = capacity * random.nextDouble();
            double now = 30 + 35 * random.nextDouble();
            double target = 40 + 20 * random.nextDouble();
            boolean renew = random.nextBoolean();
            CoolantMixer mixer = mixer(capacity, drained, now);
            double least = CoolantMixer.leastExchangeLitres(capacity, now, target);
            if (least > drained) {
                assertThatThrownBy(() -> mixer.renew(target))
                        .as("seed %d", seed)
                        .hasMessageContaining("cannot be reached");
                continue;
            }
            mixed++;
            CoolantMix mix = renew ? mixer.renew(target) : mixer.reuse(target, 0.1 * random.nextDouble());
            double inBlock = capacity - drained + mix.putBackLitres() + mix.pouredLitres();
            assertThat(inBlock).as("seed %d", seed).isCloseTo(capacity, within(1e-9));
            assertThat(capacity + mix.pouredLitres() - mix.wasteLitres())
                    .as("seed %d", seed)
                    .isCloseTo(capacity, within(1e-9));
            double glycol = capacity * now / 100 + mix.concentrateLitres() - mix.wasteLitres() * now / 100;
            assertThat(glycol).as("seed %d", seed).isCloseTo(capacity * mix.afterPercent() / 100, within(1e-9));
            assertThat(mix.afterPercent()).as("seed %d", seed).isCloseTo(target, within(1e-7));
            assertThat(Math.min(mix.concentrateLitres(), Math.min(mix.waterLitres(), mix.putBackLitres())))
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(0);
        }
        assertThat(mixed).isBetween(500, 1_900);
    }
}
