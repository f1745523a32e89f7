package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.StockLine;
import java.util.List;

/** Pieces on hand at a depot, up and down. */
public final class OnHandStock {
    private final StoreWriter writer;
    private final String depot;

    public OnHandStock(StoreWriter writer, String depot) {
        this.writer = writer;
        this.depot = depot;
    }

    double onHand(String part) {
        return writer.all(StockLine.class).stream()
                .filter(line -> line.depot().equals(depot) && line.part().equals(part))
                .mapToDouble(StockLine::onHand)
                .sum();
    }

    public void add(String part, double pieces) {
        if (pieces > 0) {
            writer.merge(StockLine.class, List.of(new StockLine(depot, part, onHand(part) + pieces)), true);
        }
    }

    /** Takes pieces, or as many as there are: what was used was used. Returns how many the table had. */
    public double take(String part, double pieces) {
        double there = onHand(part);
        double taken = Math.min(there, pieces);
        if (taken > 0) {
            writer.merge(StockLine.class, List.of(new StockLine(depot, part, there - taken)), true);
        }
        return taken;
    }
}
