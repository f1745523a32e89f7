package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.Truck;
import java.util.Map;

/** Is told of work while planning is played. */
public interface Journal {
    /** Tells nobody. */
    Journal NONE = work -> {};

    /** A visit or a repair was done. */
    void work(Work work);

    /**
     * One visit or repair.
     *
     * @param truck the truck
     * @param day its day, of the epoch
     * @param pieces pieces by part number, those of uncertain need by their chance
     * @param injectors injectors replaced
     * @param failed of these, failed in service
     * @param hours labour
     * @param litres coolant drained
     * @param cost what it cost, road failures and downtime counted
     */
    record Work(
            Truck truck,
            int day,
            Map<String, Double> pieces,
            int injectors,
            int failed,
            double hours,
            double litres,
            double cost) {}
}
