package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.PieceSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Pieces of a depot that other trucks have: in a kit, or given to their visits by the plan in force. */
final class OthersPieces {
    private record Of(String truck, String part) {}

    private final String truck;
    private final Map<Of, Double> bound = new HashMap<>();
    private final Map<Of, Double> planned = new HashMap<>();
    private final Map<String, Double> onOrder = new HashMap<>();

    /** @param truck whose pieces are not counted */
    OthersPieces(String truck) {
        this.truck = truck;
    }

    void bound(StockInjector row) {
        if (row.truck() != null && !row.truck().equals(truck)) {
            bound.merge(new Of(row.truck(), row.part()), 1.0, Double::sum);
        }
    }

    void planned(List<AllocatedPieces> pieces, String depot) {
        for (AllocatedPieces each : pieces) {
            if (!each.depot().equals(depot) || each.truck().equals(truck)) {
                continue;
            }
            if (each.source() == PieceSource.SHELF) {
                planned.merge(new Of(each.truck(), each.part()), each.quantity(), Double::sum);
            } else if (each.source() == PieceSource.ORDER) {
                onOrder.merge(each.part(), each.quantity(), Double::sum);
            }
        }
    }

    /** Pieces in stock by part: those of a kit are among what the plan gives the same truck. */
    Map<String, Double> inStock() {
        Map<Of, Double> all = new HashMap<>(planned);
        bound.forEach((of, pieces) -> all.merge(of, pieces, Math::max));
        Map<String, Double> byPart = new HashMap<>();
        all.forEach((of, pieces) -> byPart.merge(of.part(), pieces, Double::sum));
        return byPart;
    }

    /** Pieces of open purchase orders by part. */
    Map<String, Double> onOrder() {
        return onOrder;
    }
}
