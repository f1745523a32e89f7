package dev.injectorplanner.core.due;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Something due.
 *
 * @param truck the truck
 * @param depot where it is looked after
 * @param cylinder the cylinder, or null where it concerns the whole truck
 * @param kind what made it due
 * @param task the scheduled service where {@code kind} is INTERVAL, else null
 * @param action what it asks for
 * @param evidence what was seen, in words with figures and units
 * @param limit the limit it was checked against, in words with figures and units
 * @param limitSource whose limit that is: "site rule" or "planner default"
 * @param by the day by which it should be done; in the past where it is overdue
 * @param faultCode the safety fault where {@code kind} is SAFETY, else null
 * @param chance12 chance that the injector of the cylinder fails within 12 weeks, 0 to 1; null where the due item is not of one
 *     injector, its chance is unknown, or the plan was kept before due items had it
 */
public record DueItem(
        String truck,
        String depot,
        @Nullable Integer cylinder,
        DueKind kind,
        @Nullable String task,
        DueAction action,
        String evidence,
        String limit,
        String limitSource,
        LocalDate by,
        @Nullable String faultCode,
        @Nullable Double chance12) {
    public DueItem {
        truck = Require.name("truck", truck);
        depot = Require.name("depot", depot);
        evidence = Require.text("evidence", evidence);
        limit = Require.text("limit", limit);
        if (chance12 != null && !(chance12 >= 0 && chance12 <= 1)) {
            throw new IllegalArgumentException("chance12 of " + truck + " is " + chance12 + ", not within 0 to 1");
        }
    }

    /** One without the chance of its injector. */
    public DueItem(
            String truck,
            String depot,
            @Nullable Integer cylinder,
            DueKind kind,
            @Nullable String task,
            DueAction action,
            String evidence,
            String limit,
            String limitSource,
            LocalDate by,
            @Nullable String faultCode) {
        this(truck, depot, cylinder, kind, task, action, evidence, limit, limitSource, by, faultCode, null);
    }

    /** One of no certain fault. */
    public DueItem(
            String truck,
            String depot,
            @Nullable Integer cylinder,
            DueKind kind,
            @Nullable String task,
            DueAction action,
            String evidence,
            String limit,
            String limitSource,
            LocalDate by) {
        this(truck, depot, cylinder, kind, task, action, evidence, limit, limitSource, by, null, null);
    }
}
