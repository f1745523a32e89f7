package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOut.ReadBack;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import org.jspecify.annotations.Nullable;

/**
 * What goes into a cylinder, checked, and what comes out.
 *
 * @param cylinder the cylinder
 * @param found what the old one was found to be
 * @param old the old one, or null where none was recorded
 * @param part the new one's part
 * @param serial its serial
 * @param code its code, empty where its part has none
 * @param origin new or reman
 * @param readBack how the code was read back
 * @param shelf where it lay, or null where it was not received
 * @param fitting its order among those that went into the cylinder that day
 * @param failedFirst one that was fitted before it and failed at once, or null
 */
record NewInjector(
        int cylinder,
        Found found,
        @Nullable FittedInjector old,
        Part part,
        String serial,
        String code,
        Origin origin,
        ReadBack readBack,
        @Nullable StockInjector shelf,
        int fitting,
        @Nullable FailedFirst failedFirst) {
    /** A new injector that failed at once: its serial, and where it lay. */
    record FailedFirst(String serial, @Nullable StockInjector shelf) {}
}
