package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.Arrays;

/**
 * One position that fails again and again, watched from age 0 to {@code endAge}.
 *
 * @param unit name of the truck or position
 * @param endAge age when last seen, above 0
 * @param eventAges ages of its failures, above 0 and not beyond the end; kept in ascending order
 */
@SuppressWarnings("ArrayRecordComponent") // compared nowhere; copied on the way in and out
public record RepeatHistory(String unit, double endAge, double[] eventAges) {
    public RepeatHistory {
        unit = Require.name("unit", unit);
        Require.positive("end of unit " + unit, endAge);
        eventAges = eventAges.clone();
        Arrays.sort(eventAges);
        for (double age : eventAges) {
            if (!(age > 0 && age <= endAge)) {
                throw new InvalidValueException(
                        "age of unit " + unit,
                        age,
                        "an event must lie above zero and not beyond the unit's end at " + Require.plain(endAge),
                        "correct the age of the event or of the end");
            }
        }
    }

    @Override
    public double[] eventAges() {
        return eventAges.clone();
    }
}
