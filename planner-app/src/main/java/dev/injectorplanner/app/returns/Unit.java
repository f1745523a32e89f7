package dev.injectorplanner.app.returns;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.UnitReturn;
import java.time.LocalDate;

/**
 * The unit that a core or a claim is about.
 *
 * @param fittedOn of a core: day the reman unit was fitted; of a claim: day the failed one was fitted
 * @param fitting which of that cylinder's fittings of that day, from 1
 */
public record Unit(String truck, int cylinder, LocalDate fittedOn, int fitting) {
    /** The first fitting of its day. */
    public Unit(String truck, int cylinder, LocalDate fittedOn) {
        this(truck, cylinder, fittedOn, 1);
    }

    static Unit of(UnitReturn row) {
        return new Unit(row.truck(), row.cylinder(), row.fittedOn(), row.fitting());
    }

    boolean is(FittedInjector injector) {
        return injector.truck().equals(truck)
                && injector.cylinder() == cylinder
                && injector.fittedOn().equals(fittedOn)
                && injector.fitting() == fitting;
    }

    boolean is(UnitReturn.What what, UnitReturn row) {
        return row.isOf(what, truck, cylinder, fittedOn, fitting);
    }

    @Override
    public String toString() {
        return "truck " + truck + ", cylinder " + cylinder + ", fitted " + fittedOn
                + (fitting == 1 ? "" : ", fitting " + fitting + " of that day");
    }
}
