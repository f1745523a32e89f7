package dev.injectorplanner.core.generate;

import java.util.List;

/**
 * What is true of a made-up fleet.
 *
 * @param lives shape and scale of each part and origin
 * @param injectors every injector that ever was in, also those that came out before the history told
 */
public record FleetTruth(List<TrueLife> lives, List<InjectorTruth> injectors) {
    public FleetTruth {
        lives = List.copyOf(lives);
        injectors = List.copyOf(injectors);
    }
}
