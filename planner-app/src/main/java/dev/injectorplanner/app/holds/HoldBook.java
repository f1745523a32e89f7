package dev.injectorplanner.app.holds;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.schedule.days.DayPin;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hibernate.StatelessSession;
import org.jspecify.annotations.Nullable;

/** Pins, blocked and confirmed visits, as stored. */
public final class HoldBook {
    private static final String OF_DEPOT = " (select t.truck from TruckRow t where t.depot = :depot)";

    private final Store store;
    private final PageAnswers<Asked, Holds> holds;

    private record Asked(@Nullable String depot, IsoWeek firstWeek) {}

    public HoldBook(Store store) {
        this.store = store;
        this.holds = new PageAnswers<>(store.dataSource());
    }

    /** Entities of this package's tables. */
    public static List<Class<?>> entities() {
        return List.of(HoldRow.class, ConfirmedVisitRow.class, SafetyHoldRow.class);
    }

    /**
     * Holds a truck. A pin replaces its earlier pin and its block of that week; a block replaces a pin to that week,
     * and keeping it out of all weeks every other hold.
     *
     * @throws InvalidValueException where the truck is not known
     */
    public void hold(Hold hold) {
        store.inTransaction(session -> {
            requireTruck(session, hold.truck());
            String before = words(session, hold.truck());
            switch (hold.kind()) {
                case PIN -> release(session, hold.truck(), Set.of("pin", "never", String.valueOf(hold.week())));
                case REFUSE -> releaseForBlock(session, hold);
            }
            session.insert(HoldRow.of(hold));
            note(
                    session,
                    hold.madeAt(),
                    hold.madeBy(),
                    "hold a truck",
                    hold.truck(),
                    before,
                    words(session, hold.truck()));
            return null;
        });
    }

    private static void releaseForBlock(StatelessSession session, Hold block) {
        IsoWeek week = block.week();
        if (week == null) {
            delete(session, block.truck());
            return;
        }
        release(session, block.truck(), Set.of(block.slot(), "never"));
        session.createMutationQuery(
                        "delete from HoldRow h where h.truck = :truck and h.slot = 'pin' and h.week = :week")
                .setParameter("truck", block.truck())
                .setParameter("week", week.toString())
                .executeUpdate();
    }

    /**
     * Takes back all holds of a truck.
     *
     * @return how many there were
     * @throws InvalidValueException where the truck is not known
     */
    public int release(String truck, Instant at, String by) {
        return store.inTransaction(session -> {
            requireTruck(session, truck);
            String before = words(session, truck);
            int released = delete(session, truck);
            note(session, at, by, "release a truck", truck, before, "not held");
            return released;
        });
    }

    /** What a truck is held to, in words for the audit trail. */
    private static String words(StatelessSession session, String truck) {
        return session
                .createSelectionQuery("from HoldRow h where h.truck = :truck order by h.slot", HoldRow.class)
                .setParameter("truck", truck)
                .getResultList()
                .stream()
                .map(row -> row.hold().words())
                .collect(Collectors.joining("; "));
    }

    private static void note(
            StatelessSession session, Instant at, String by, String what, String subject, String before, String after) {
        session.doWork(connection -> AuditTrail.write(connection, at, by, what, subject, before, after));
    }

    /** Every hold of a depot's trucks, or of all, by truck. */
    public List<Hold> list(@Nullable String depot) {
        return store.inTransaction(session -> holds(session, depot));
    }

    /**
     * What is held in the plan of a depot, or of all. What lies before its first week is over and left out.
     *
     * @param firstWeek the plan's first week
     */
    public Holds holds(@Nullable String depot, IsoWeek firstWeek) {
        return holds.of(new Asked(depot, firstWeek), asked -> readHolds(depot, firstWeek));
    }

    private Holds readHolds(@Nullable String depot, IsoWeek firstWeek) {
        return store.inTransaction(session -> {
            Map<String, IsoWeek> pins = new HashMap<>();
            Map<String, Set<IsoWeek>> blocked = new HashMap<>();
            Map<String, DayPin> days = new HashMap<>();
            for (Hold hold : holds(session, depot)) {
                IsoWeek week = hold.week();
                if (week == null) {
                    blocked.put(hold.truck(), Set.of());
                } else if (week.compareTo(firstWeek) >= 0) {
                    if (hold.kind() == Hold.Kind.PIN) {
                        pins.put(hold.truck(), week);
                        DayPin day = hold.day();
                        if (day != null) {
                            days.put(hold.truck(), day);
                        }
                    } else {
                        blocked.computeIfAbsent(hold.truck(), truck -> new TreeSet<>())
                                .add(week);
                    }
                }
            }
            Map<String, IsoWeek> confirmed = new HashMap<>();
            confirmed(session, depot).stream()
                    .filter(row -> row.week().compareTo(firstWeek) >= 0)
                    .forEach(row -> confirmed.put(row.truck(), row.week()));
            return new Holds(pins, blocked, confirmed, days, SafetyHolds.list(session, depot));
        });
    }

    /**
     * Notes that visits were confirmed: from then on they move only if it pays more than the rescheduling cost, and in the frozen
     * weeks not at all.
     *
     * @param visits truck and week
     * @return how many of them were not confirmed for that week before
     */
    public int confirm(Map<String, IsoWeek> visits, Instant at, String by) {
        return store.inTransaction(session -> {
            Map<String, IsoWeek> there = new HashMap<>();
            confirmed(session, null).forEach(row -> there.put(row.truck(), row.week()));
            int added = 0;
            for (Map.Entry<String, IsoWeek> visit : visits.entrySet()) {
                ConfirmedVisitRow row = new ConfirmedVisitRow(visit.getKey(), visit.getValue(), at, by);
                IsoWeek week = there.get(visit.getKey());
                if (week == null) {
                    session.insert(row);
                } else if (!week.equals(visit.getValue())) {
                    session.update(row);
                }
                added += visit.getValue().equals(week) ? 0 : 1;
            }
            if (added > 0) {
                note(
                        session,
                        Instant.now(),
                        by,
                        "confirm visits",
                        String.join(", ", new TreeSet<>(visits.keySet())),
                        told(there, visits.keySet()),
                        told(visits, visits.keySet()));
            }
            return added;
        });
    }

    /** {@code T001 for 2026-W12}, by truck. */
    private static String told(Map<String, IsoWeek> weeks, Collection<String> trucks) {
        return trucks.stream()
                .filter(weeks::containsKey)
                .sorted()
                .map(truck -> truck + " for " + weeks.get(truck))
                .collect(Collectors.joining(", "));
    }

    static void requireTruck(StatelessSession session, String truck) {
        boolean known = !session.createSelectionQuery(
                        "select t.truck from TruckRow t where t.truck = :truck", String.class)
                .setParameter("truck", truck)
                .getResultList()
                .isEmpty();
        if (!known) {
            throw new InvalidValueException("truck", truck, "is not known", "check its name");
        }
    }

    private static void release(StatelessSession session, String truck, Set<String> slots) {
        session.createMutationQuery("delete from HoldRow h where h.truck = :truck and h.slot in (:slots)")
                .setParameter("truck", truck)
                .setParameterList("slots", slots)
                .executeUpdate();
    }

    private static int delete(StatelessSession session, String truck) {
        return session.createMutationQuery("delete from HoldRow h where h.truck = :truck")
                .setParameter("truck", truck)
                .executeUpdate();
    }

    private static List<Hold> holds(StatelessSession session, @Nullable String depot) {
        String where = depot == null ? "" : " where h.truck in" + OF_DEPOT;
        var query = session.createSelectionQuery("from HoldRow h" + where + " order by h.truck, h.slot", HoldRow.class);
        if (depot != null) {
            query.setParameter("depot", depot);
        }
        return query.getResultList().stream().map(HoldRow::hold).toList();
    }

    private static List<ConfirmedVisitRow> confirmed(StatelessSession session, @Nullable String depot) {
        String where = depot == null ? "" : " where a.truck in" + OF_DEPOT;
        var query = session.createSelectionQuery("from ConfirmedVisitRow a" + where, ConfirmedVisitRow.class);
        if (depot != null) {
            query.setParameter("depot", depot);
        }
        return query.getResultList();
    }
}
