package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What planned visits of one depot and week need of one part, against what there will be.
 *
 * @param depot the depot
 * @param week the ISO week of the visits
 * @param part part number
 * @param needed pieces used on average
 * @param required pieces to have for that week, so that all visits up to it are covered with the service level
 * @param onHandBefore pieces in stock before that week's visits: stock, less what earlier weeks require, plus what
 *     arrived by then or was ordered for them
 * @param arriving pieces on open purchase lines due within the week's Monday and the one before
 * @param missing pieces to buy for that week, 0 or more
 * @param orderBy the last day to order what is missing so that it is there on the week's Monday, or null where nothing is
 * @param trucks trucks of the visits, in order
 * @param express pieces of those missing that must come by express
 */
public record PartNeed(
        String depot,
        IsoWeek week,
        String part,
        double needed,
        double required,
        double onHandBefore,
        double arriving,
        double missing,
        @Nullable LocalDate orderBy,
        List<String> trucks,
        double express) {
    public PartNeed {
        Require.notNegative("needed", needed);
        Require.notNegative("required", required);
        Require.notNegative("missing", missing);
        trucks = List.copyOf(trucks);
    }
}
