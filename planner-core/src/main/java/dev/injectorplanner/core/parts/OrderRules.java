package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;

/**
 * How a site buys.
 *
 * @param serviceLevel chance with which a kit and the shelf are to suffice, above 0 and below 1
 * @param reviewDays days between two looks of the buyer: what is to be ordered within them is ordered now
 * @param expediteDays days from order to receipt when expedited
 * @param expeditePrice price of an expedited shipment of one supplier, beyond the parts
 * @param movingPerWeek what it costs to move a visit by a week, where no deferral cost is at hand
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record OrderRules(
        double serviceLevel, int reviewDays, int expediteDays, BigDecimal expeditePrice, BigDecimal postponementPerWeek)
        implements OrderRulesBuilder.With {
    public OrderRules {
        if (!(serviceLevel > 0 && serviceLevel < 1)) {
            throw new InvalidValueException(
                    "service_level",
                    Require.plain(serviceLevel),
                    "must lie between 0 and 1, both left out",
                    "enter a chance such as 0.95");
        }
        Require.within("review_days", reviewDays, 0, 60);
        Require.within("expedite_days", expediteDays, 0, 60);
        expeditePrice = Require.money("expedite_price", expeditePrice);
        postponementPerWeek = Require.money("moving_per_week", postponementPerWeek);
    }

    /** 95 %, a buyer who orders twice a week, an express shipment in 2 days for 90, 250 for moving a visit a week. */
    public static OrderRules standard() {
        return new OrderRules(0.95, 4, 2, new BigDecimal("90"), new BigDecimal("250"));
    }
}
