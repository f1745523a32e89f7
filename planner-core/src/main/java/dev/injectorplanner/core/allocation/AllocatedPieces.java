package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one part that go to one visit from one place.
 *
 * @param truck the visit's truck
 * @param depot its depot
 * @param week its ISO week
 * @param part part number
 * @param quantity pieces, above 0
 * @param source where they come from
 * @param fromDepot the depot that gives them, for a transfer; else null
 * @param order the open purchase order they come with; for express and ordinary orders the one that the supplier is asked
 *     to send sooner; null where there is none
 * @param readyOn the day they are at the depot
 */
public record AllocatedPieces(
        String truck,
        String depot,
        IsoWeek week,
        String part,
        double quantity,
        PieceSource source,
        @Nullable String fromDepot,
        @Nullable String order,
        LocalDate readyOn) {
    /** By depot, week, truck, part and source. */
    public static final Comparator<AllocatedPieces> BY_VISIT = Comparator.comparing(AllocatedPieces::depot)
            .thenComparing(AllocatedPieces::week)
            .thenComparing(AllocatedPieces::truck)
            .thenComparing(AllocatedPieces::part)
            .thenComparing(AllocatedPieces::source)
            .thenComparing(AllocatedPieces::readyOn)
            .thenComparing(AllocatedPieces::order, Comparator.nullsFirst(Comparator.naturalOrder()));

    public AllocatedPieces {
        Require.positive("quantity", quantity);
    }

    /** Whether the supplier is asked to send pieces of an open order sooner than it is due. */
    public boolean sooner() {
        return order != null && (source == PieceSource.EXPRESS || source == PieceSource.ORDINARY_ORDER);
    }

    /** Whether they have to be bought. */
    public boolean bought() {
        return order == null && (source == PieceSource.EXPRESS || source == PieceSource.ORDINARY_ORDER);
    }
}
