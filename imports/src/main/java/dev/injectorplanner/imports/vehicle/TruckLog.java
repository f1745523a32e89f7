package dev.injectorplanner.imports.vehicle;

import java.util.List;

/**
 * What a log says of one truck.
 *
 * @param truck the truck
 * @param episodes its faults, the earliest first
 * @param episodesNotKept further episodes, beyond those kept
 * @param readings its meters, the last of each UTC day
 */
public record TruckLog(String truck, List<Episode> episodes, long episodesNotKept, List<MeterReading> readings) {
    public TruckLog {
        episodes = List.copyOf(episodes);
        readings = List.copyOf(readings);
    }
}
