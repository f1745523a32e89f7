package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;

/**
 * How parts go from one depot to another. A way back has a row of its own.
 *
 * @param from depot that gives
 * @param to depot that takes
 * @param cost of one trip, whatever it carries, in the site's currency, 0 or more
 * @param days from the decision to the parts being there, 0 to 60
 */
public record Transfer(String from, String to, BigDecimal cost, int days) {
    public Transfer {
        from = Require.name("from", from);
        to = Require.name("to", to);
        if (from.equals(to)) {
            throw new InvalidValueException("to", to, "is the depot that gives", "name two different depots");
        }
        cost = Require.money("cost", cost);
        Require.within("days", days, 0, 60);
    }
}
