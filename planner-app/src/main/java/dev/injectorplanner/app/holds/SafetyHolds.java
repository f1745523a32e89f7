package dev.injectorplanner.app.holds;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.HeldOff;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import org.hibernate.StatelessSession;
import org.jspecify.annotations.Nullable;

/** Diagnoses that somebody holds off, each with a reason and a name. */
public final class SafetyHolds {
    private final Store store;

    public SafetyHolds(Store store) {
        this.store = store;
    }

    /** By truck, of a depot or of all. */
    static Map<String, HeldOff> list(StatelessSession session, @Nullable String depot) {
        String where = depot == null ? "" : " where h.truck in (select t.truck from TruckRow t where t.depot = :depot)";
        var query = session.createSelectionQuery("from SafetyHoldRow h" + where, SafetyHoldRow.class);
        if (depot != null) {
            query.setParameter("depot", depot);
        }
        Map<String, HeldOff> held = new TreeMap<>();
        query.getResultList().forEach(row -> held.put(row.truck(), row.held()));
        return held;
    }

    /**
     * Holds a truck's diagnosis off.
     *
     * @param confirmed whether the person was told what may happen and said so a second time
     * @throws InvalidValueException where that is missing
     */
    public void holdOff(String truck, HeldOff held, boolean confirmed, Instant at) {
        if (!confirmed) {
            throw new InvalidValueException(
                    "confirm",
                    "",
                    "is not ticked",
                    "read what may happen, and tick that you answer for it; or leave the diagnosis where it is");
        }
        store.inTransaction(session -> {
            HoldBook.requireTruck(session, truck);
            String before = words(session, truck);
            delete(session, truck);
            session.insert(new SafetyHoldRow(truck, held));
            note(session, at, held.by(), "hold off a diagnosis", truck, before, words(session, truck));
            return null;
        });
    }

    /** Lets the diagnosis be planned again. */
    public void resume(String truck, Instant at, String by) {
        store.inTransaction(session -> {
            HoldBook.requireTruck(session, truck);
            String before = words(session, truck);
            delete(session, truck);
            note(session, at, by, "plan a diagnosis again", truck, before, "not held off");
            return null;
        });
    }

    private static void delete(StatelessSession session, String truck) {
        session.createMutationQuery("delete from SafetyHoldRow h where h.truck = :truck")
                .setParameter("truck", truck)
                .executeUpdate();
    }

    private static String words(StatelessSession session, String truck) {
        HeldOff held = list(session, null).get(truck);
        return held == null
                ? "not held off"
                : "held off by " + held.by() + " since " + held.since() + ": " + held.reason() + " ("
                        + String.join(", ", held.codes()) + ")";
    }

    private static void note(
            StatelessSession session, Instant at, String by, String what, String truck, String before, String after) {
        session.doWork(connection -> AuditTrail.write(connection, at, by, what, truck, before, after));
    }
}
