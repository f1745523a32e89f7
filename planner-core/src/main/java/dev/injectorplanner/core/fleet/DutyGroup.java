package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;

/**
 * Trucks that can replace one another.
 *
 * @param dutyGroup its name in the tables
 * @param minimumOnRoad trucks that must stay on the road
 * @param downtimePerDay what a truck of the group costs a day while it stands
 */
public record DutyGroup(String dutyGroup, int minimumOnRoad, BigDecimal downtimePerDay) {
    public DutyGroup {
        dutyGroup = Require.name("duty_group", dutyGroup);
        Require.within("minimum_on_road", minimumOnRoad, 0, 1_000_000);
        downtimePerDay = Require.money("downtime_per_day", downtimePerDay);
    }
}
