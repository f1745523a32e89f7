package dev.injectorplanner.app.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A delivery that was short, wrong or damaged.
 *
 * @param number such as {@code CL-00004}
 * @param pieces how many
 * @param words what is wrong with them
 * @param amount what is claimed; 0 where the supplier sends them again
 * @param newLine the order whose line brings them, or null where money is claimed
 * @param credit what was credited, 0 where it was refused, null while open
 * @param reason why it was refused, or empty
 */
public record DeliveryProblem(
        String number,
        OrderRef ref,
        Kind kind,
        double pieces,
        String words,
        BigDecimal amount,
        LocalDate notedOn,
        String notedBy,
        @Nullable String newLine,
        @Nullable LocalDate sentOn,
        @Nullable String sentBy,
        @Nullable LocalDate settledOn,
        @Nullable String settledBy,
        @Nullable BigDecimal credit,
        String reason) {
    /** What is wrong. */
    public enum Kind {
        SHORT,
        WRONG,
        DAMAGED;

        /** As a person reads it. */
        public String words() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** What is done about it. */
    public enum Answer {
        /** The supplier sends the pieces: a line with a new day. */
        REPLACE,
        /** Money is claimed; the pieces are no longer expected. */
        CLAIM
    }

    /** {@code to send, sent, credited, refused, to be delivered again}. */
    public String state() {
        if (newLine != null) {
            return "to be delivered again";
        }
        BigDecimal given = credit;
        if (given != null) {
            return given.signum() > 0 ? "credited" : "refused";
        }
        return sentOn == null ? "to send" : "sent";
    }
}
