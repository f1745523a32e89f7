package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.units.Figures;
import java.util.HashMap;
import java.util.Map;

/** Pieces that an allocation asks to be bought, by shelf and week of the visits. */
final class NewPieces {
    private final Map<String, Double> ordinary = new HashMap<>();
    private final Map<String, Double> express = new HashMap<>();

    NewPieces(Allocation allocation) {
        for (AllocatedPieces each : allocation.pieces()) {
            String cell = cell(new DepotPartKey(each.depot(), each.part()), each.week());
            if (each.bought()) {
                (each.source() == PieceSource.EXPRESS ? express : ordinary).merge(cell, each.quantity(), Double::sum);
            }
        }
    }

    private static String cell(DepotPartKey shelf, IsoWeek week) {
        return shelf.depot() + "\n" + shelf.part() + "\n" + week;
    }

    /** Of those, pieces that must come by express. */
    double express(DepotPartKey shelf, IsoWeek week) {
        return Figures.tidy(express.getOrDefault(cell(shelf, week), 0.0));
    }

    double all(DepotPartKey shelf, IsoWeek week) {
        return Figures.tidy(ordinary.getOrDefault(cell(shelf, week), 0.0) + express(shelf, week));
    }
}
