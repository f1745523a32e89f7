package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A core that was sent back for its deposit, or a warranty claim that was sent: with its day, its amount and who did it.
 *
 * @param what a core or a claim
 * @param truck the truck
 * @param cylinder the cylinder, from 1
 * @param fittedOn of a core: the day the reman unit was fitted for which the old one is owed; of a claim: the day the unit
 *     was fitted that failed
 * @param fitting which of that cylinder's fittings of that day, from 1
 * @param document number of the return note or of the claim
 * @param sentOn day it was sent
 * @param sentBy who sent it
 * @param amount what is asked for, at least 0: the deposit, or the value claimed
 * @param settledOn day of the supplier's answer, or null while it is open
 * @param settledBy who recorded the answer, or null while it is open
 * @param credit what the supplier credited, 0 where it refused; null while it is open
 * @param reason why it was refused, or a remark; not empty where it was refused
 */
public record UnitReturn(
        What what,
        String truck,
        int cylinder,
        LocalDate fittedOn,
        int fitting,
        String document,
        LocalDate sentOn,
        String sentBy,
        BigDecimal amount,
        @Nullable LocalDate settledOn,
        @Nullable String settledBy,
        @Nullable BigDecimal credit,
        String reason) {
    /** What is sent back or asked for. */
    public enum What {
        CORE,
        CLAIM
    }

    /** How far it is. */
    public enum State {
        SENT,
        CREDITED,
        REFUSED
    }

    public UnitReturn {
        truck = Require.name("truck", truck);
        Require.within("cylinder", cylinder, 1, EngineFamily.MOST_CYLINDERS);
        Require.within("fitting", fitting, 1, FittedInjector.MOST_A_DAY);
        document = Require.name("document", document);
        sentBy = Require.name("sent_by", sentBy);
        amount = Require.money("amount", amount);
        reason = Require.text("reason", reason);
        boolean open = settledOn == null;
        if (open != (credit == null) || open != (settledBy == null)) {
            throw new InvalidValueException(
                    "settled_on",
                    String.valueOf(settledOn),
                    "does not go with settled_by and credit",
                    "enter all three, with 0 as the credit of what was refused, or none of them");
        }
        if (settledOn != null && settledOn.isBefore(sentOn)) {
            throw new InvalidValueException(
                    "settled_on", settledOn, "is before sent_on, " + sentOn, "correct whichever is wrong");
        }
        if (credit != null) {
            credit = Require.money("credit", credit);
            settledBy = Require.name("settled_by", String.valueOf(settledBy));
            if (credit.signum() == 0 && reason.isEmpty()) {
                throw new InvalidValueException(
                        "reason", "", "is empty, but nothing was credited", "enter why the supplier refused");
            }
        }
    }

    /** Of the first fitting of its day. */
    public UnitReturn(
            What what,
            String truck,
            int cylinder,
            LocalDate fittedOn,
            String document,
            LocalDate sentOn,
            String sentBy,
            BigDecimal amount,
            @Nullable LocalDate settledOn,
            @Nullable String settledBy,
            @Nullable BigDecimal credit,
            String reason) {
        this(
                what, truck, cylinder, fittedOn, 1, document, sentOn, sentBy, amount, settledOn, settledBy, credit,
                reason);
    }

    public State state() {
        return credit == null ? State.SENT : credit.signum() > 0 ? State.CREDITED : State.REFUSED;
    }

    /** Whether it is of a unit. */
    public boolean isOf(What other, String ofTruck, int ofCylinder, LocalDate ofFittedOn, int ofFitting) {
        return what == other
                && truck.equals(ofTruck)
                && cylinder == ofCylinder
                && fittedOn.equals(ofFittedOn)
                && fitting == ofFitting;
    }

    /** The same with the supplier's answer. */
    public UnitReturn settled(LocalDate day, String by, BigDecimal credited, String why) {
        return new UnitReturn(
                what, truck, cylinder, fittedOn, fitting, document, sentOn, sentBy, amount, day, by, credited, why);
    }
}
