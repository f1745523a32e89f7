package dev.injectorplanner.core.truth;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Random draws from a seed. Only whole 64-bit numbers are taken from the generator and only {@link StrictMath} is used,
 * so that a seed gives the same fleet on every machine.
 */
public final class Draws {
    private static final double UNIT = 0x1.0p-53;

    private final SplittableRandom random;

    public Draws(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Draws for one thing of many, the same whatever the others draw. */
    public static Draws of(long seed, long which) {
        return new Draws(seed * 0x9E3779B97F4A7C15L + which * 0xD1B54A32D192ED03L);
    }

    /**
     * Draws for one thing that several numbers name, such as a truck, a cylinder and a day: the same whatever was drawn
     * for other things before.
     */
    public static Draws keyed(long seed, long... names) {
        long key = seed;
        for (long name : names) {
            key = mixed(key ^ (name + 0x9E3779B97F4A7C15L));
        }
        return new Draws(key);
    }

    /** The finisher of Steele, Lea and Flood (2014), Fast splittable pseudorandom number generators. */
    private static long mixed(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** From 0, included, to 1, not included. */
    public double uniform() {
        return (random.nextLong() >>> 11) * UNIT;
    }

    /** From {@code least}, included, to {@code most}, not included. */
    public double between(double least, double most) {
        return least + uniform() * (most - least);
    }

    /** From {@code least} to {@code most}, both included. */
    public int whole(int least, int most) {
        return least + (int) (uniform() * (most - least + 1));
    }

    /** True with a chance of 0 to 1. */
    public boolean chance(double chance) {
        return uniform() < chance;
    }

    public <R> R pick(List<R> rows) {
        return rows.get((int) (uniform() * rows.size()));
    }

    /** By Box and Muller (1958). */
    public double normal(double mean, double deviation) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
        return mean + deviation * radius * StrictMath.cos(2 * StrictMath.PI * uniform());
    }

    /** By inverse transform; {@code mean} is above 0. */
    public double exponential(double mean) {
        return -mean * StrictMath.log(1 - uniform());
    }

    /** By inverse transform: scale (-ln(1 - u))^(1/shape). */
    public double weibull(double shape, double scale) {
        return scale * StrictMath.pow(-StrictMath.log(1 - uniform()), 1 / shape);
    }

    /** Characters of an alphabet, {@code length} of them. */
    public String text(String alphabet, int length) {
        StringBuilder text = new StringBuilder(length);
        for (int i = 0; i < length; i++) {
            text.append(alphabet.charAt((int) (uniform() * alphabet.length())));
        }
        return text.toString();
    }
}
