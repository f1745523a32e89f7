package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.math.BigInteger;
import java.util.List;

/**
 * The unit hours are counted in: the longest number of hundredths of an hour that divides every visit's hours. Where
 * hours are finer than hundredths, it is a hundredth, and {@link #down} and {@link #up} differ by one.
 */
record HourUnits(double hoursPerUnit) {
    private static final double HUNDREDTHS = 100;
    private static final double ROUNDING = 1e-7;

    static HourUnits of(List<TruckOptions> trucks, BayCells bays) {
        BigInteger common = BigInteger.ZERO;
        for (TruckOptions truck : trucks) {
            for (VisitOption option : truck.options()) {
                double hundredths = bays.weight(truck.depot(), option) * HUNDREDTHS;
                long whole = Math.round(hundredths);
                if (Math.abs(hundredths - whole) > ROUNDING) {
                    return new HourUnits(1 / HUNDREDTHS);
                }
                common = common.gcd(BigInteger.valueOf(whole));
            }
        }
        return new HourUnits(common.signum() == 0 ? 1 : common.longValue() / HUNDREDTHS);
    }

    int down(double hours) {
        return (int) Math.min(Integer.MAX_VALUE / 4, Math.floor(hours / hoursPerUnit + ROUNDING));
    }

    int up(double hours) {
        return (int) Math.min(Integer.MAX_VALUE / 4, Math.ceil(hours / hoursPerUnit - ROUNDING));
    }
}
