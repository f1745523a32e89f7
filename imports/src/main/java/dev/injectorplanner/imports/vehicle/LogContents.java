package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.imports.bus.LogTally;
import java.util.List;
import java.util.Map;

/**
 * What a log holds.
 *
 * @param tally frames, damaged lines, clock
 * @param lostMessages messages of several packets that never became whole
 * @param faultMessages fault messages, with faults or without
 * @param vins VIN as it was sent, by source address
 * @param trucks what it says of each truck
 */
public record LogContents(
        LogTally tally, long lostMessages, long faultMessages, Map<Integer, String> vins, List<TruckLog> trucks) {
    public LogContents {
        vins = Map.copyOf(vins);
        trucks = List.copyOf(trucks);
    }
}
