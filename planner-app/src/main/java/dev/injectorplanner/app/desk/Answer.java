package dev.injectorplanner.app.desk;

import dev.injectorplanner.app.order.NewLine;
import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What a question's answer does when it is given. */
public sealed interface Answer {
    /** Its kind, as it is noted. */
    Decision.Kind kind();

    /**
     * Orders parts from one supplier.
     *
     * @param note what the supplier is told, or empty
     * @param day the day at the depot
     */
    record Order(String supplier, List<NewLine> lines, String note, LocalDate day) implements Answer {
        public Order {
            lines = List.copyOf(lines);
        }

        @Override
        public Decision.Kind kind() {
            return Decision.Kind.ORDER;
        }
    }

    /** Has parts sent by other depots, a shipment a truck. */
    record Transfer(List<Sent> shipments, LocalDate day) implements Answer {
        public Transfer {
            shipments = List.copyOf(shipments);
        }

        @Override
        public Decision.Kind kind() {
            return Decision.Kind.TRANSFER;
        }
    }

    /** One shipment between depots. */
    record Sent(String truck, String from, Map<String, Double> pieces, LocalDate arrives) {
        public Sent {
            pieces = Map.copyOf(pieces);
        }
    }

    /** Pins trucks to weeks. */
    record Move(Map<String, IsoWeek> weeks) implements Answer {
        public Move {
            weeks = Map.copyOf(weeks);
        }

        @Override
        public Decision.Kind kind() {
            return Decision.Kind.MOVE;
        }
    }

    /** Takes back what holds trucks. */
    record Release(List<String> trucks) implements Answer {
        public Release {
            trucks = List.copyOf(trucks);
        }

        @Override
        public Decision.Kind kind() {
            return Decision.Kind.RELEASE;
        }
    }

    /** Changes nothing, and asks no more until the question is another. */
    record Leave() implements Answer {
        @Override
        public Decision.Kind kind() {
            return Decision.Kind.LEAVE;
        }
    }

    /** Several of these at once: each truck by the way that is cheapest for it. */
    record Several(List<Answer> parts) implements Answer {
        public Several {
            parts = List.copyOf(parts);
        }

        @Override
        public Decision.Kind kind() {
            return Decision.Kind.SEVERAL;
        }
    }
}
