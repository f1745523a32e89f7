package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.ApiToken;
import dev.injectorplanner.app.people.Secrets;
import dev.injectorplanner.app.people.Who;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Close-outs that another program sends, under the very rules of the form, and those that it reads. */
public final class CloseOutIntake {
    private static final String REFUSED = "The close-out was refused";

    private final CloseOuts closeOuts;
    private final TokenTrucks trucks;
    private final InstantSource clock;

    public CloseOutIntake(Store store, InstantSource clock) {
        this.closeOuts = new CloseOuts(store);
        this.trucks = new TokenTrucks(new StoreSql(store.dataSource()));
        this.clock = clock;
    }

    /**
     * Keeps a close-out or the correction of one, whole or not at all. What was sent under the same key before is answered,
     * not kept again, however long ago that was.
     *
     * @param key the request's idempotency key
     * @return the close-out as it is kept
     * @throws ApiRefusal where it is refused; nothing is kept then
     */
    public Map<String, Object> take(String body, ApiToken token, String key) {
        SentCloseOut sent = SentCloseOut.of(body, "api " + Secrets.hash(token.id() + " " + key));
        String truck = sent.entry().truck();
        ZoneId zone = trucks.zoneOf(truck, token.depot());
        Instant now = clock.instant();
        LocalDate today = LocalDate.ofInstant(now, zone);
        try {
            Long voids = sent.voids();
            if (voids != null) {
                return CloseOutAnswer.of(voided(voids, truck, sent.why(), now, Who.shortened(token.who())));
            }
            CloseOuts.Saved saved = keep(sent, now, Who.shortened(token.who()), today);
            if (saved.again() && !sent.isOf(saved.closeOut())) {
                throw new ApiRefusal(
                        409,
                        "The idempotency key is already used",
                        "Close-out " + saved.closeOut().id()
                                + " was saved under this key, and it is a different one. Fix: use a new key.",
                        List.of());
            }
            return CloseOutAnswer.of(saved.closeOut());
        } catch (RefusedEntryException e) {
            List<EntryProblem> problems = e.problems();
            throw new ApiRefusal(
                    422,
                    REFUSED,
                    problems.size() + (problems.size() == 1 ? " thing is" : " things are")
                            + " wrong with it, so nothing was saved. Fix: see problems, correct them and send it again.",
                    problems.stream().map(sent::problem).toList());
        }
    }

    /** Voided already is voided: a program may send it again. */
    private CloseOut voided(long id, String truck, String why, Instant now, String who) {
        return closeOuts
                .find(id)
                .filter(row -> row.truck().equals(truck) && row.voided() != null)
                .orElseGet(() -> closeOuts.voidIt(id, truck, why, now, who));
    }

    private CloseOuts.Saved keep(SentCloseOut sent, Instant now, String who, LocalDate today) {
        @Nullable Long corrects = sent.corrects();
        return corrects == null
                ? closeOuts.close(sent.entry(), now, who, today)
                : closeOuts.correct(corrects, sent.entry(), sent.why(), now, who, today);
    }

    /**
     * A page of a truck's close-outs, all versions.
     *
     * @param depot the one depot that may be seen, or null for all
     * @throws ApiRefusal where the truck is not known there
     */
    public Map<String, Object> page(String truck, @Nullable String depot, Cursor cursor) {
        trucks.zoneOf(truck, depot);
        return CloseOutAnswer.page(closeOuts.ofTruck(truck), cursor);
    }
}
