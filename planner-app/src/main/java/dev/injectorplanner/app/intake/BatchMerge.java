package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.intake.Batch.Placed;
import dev.injectorplanner.app.store.Change;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Replacement;
import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.table.Tables;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A batch against the store: what refers to nothing or finds its place taken is refused, the rest is merged. */
final class BatchMerge<R> {
    private final Batch<R> batch;
    private final Destination destination;
    private final List<Refused<R>> refused = new ArrayList<>();

    /**
     * A row that was refused.
     *
     * @param mayPass whether rows that come later in the file may make room for it
     * @param root what refused the thing that it refers to, or null
     */
    record Refused<R>(
            Placed<R> placed,
            Complaint complaint,
            boolean mayPass,
            @Nullable CauseCount root) {}

    BatchMerge(Batch<R> batch, Destination destination) {
        this.batch = batch;
        this.destination = destination;
    }

    /** What the good rows meant for the store. */
    List<Change> run() {
        List<Placed<R>> good = withPlace(withReferences());
        List<R> rows = good.stream().map(Placed::row).toList();
        if (batch.table() == Tables.REPLACEMENTS) {
            return replacements(good);
        }
        destination.meters().prepare(only(rows, Reading.class));
        List<Change> changes = destination.writer().merge(batch.table().rowType(), rows, destination.writes());
        rows.forEach(destination.references()::add);
        destination.places().add(only(rows, FittedInjector.class));
        List<R> added = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            if (changes.get(i) == Change.ADDED) {
                added.add(rows.get(i));
            }
        }
        destination.meters().take(only(added, Reading.class));
        return changes;
    }

    private List<Change> replacements(List<Placed<R>> rows) {
        ReplacementMerge merge = new ReplacementMerge(destination);
        List<Change> changes = new ArrayList<>();
        for (Placed<R> placed : rows) {
            try {
                changes.add(merge.take((Replacement) placed.row()));
            } catch (InvalidValueException e) {
                refused.add(new Refused<>(placed, placed.place().complaint(e), false, null));
            }
        }
        merge.finish();
        return changes;
    }

    List<Refused<R>> refused() {
        return refused;
    }

    private List<Placed<R>> withReferences() {
        List<Placed<R>> good = new ArrayList<>();
        for (Placed<R> placed : batch.rows()) {
            try {
                destination.check().check(placed.row());
                good.add(placed);
            } catch (UnknownNameException e) {
                refused.add(unknown(placed, e));
            } catch (InvalidValueException e) {
                refused.add(new Refused<>(placed, placed.place().complaint(e), false, null));
            }
        }
        return good;
    }

    private Refused<R> unknown(Placed<R> placed, UnknownNameException unknown) {
        CauseCount root = destination.causes().rootOf(unknown);
        Complaint complaint = root == null
                ? placed.place().complaint(unknown)
                : placed.place()
                        .complaint(
                                unknown.field(),
                                "was refused itself (" + root.where() + ")",
                                "correct it there, then load this row again");
        return new Refused<>(placed, complaint, false, root);
    }

    private List<Placed<R>> withPlace(List<Placed<R>> rows) {
        List<FittedInjector> given = only(rows.stream().map(Placed::row).toList(), FittedInjector.class);
        if (given.isEmpty()) {
            return rows;
        }
        List<FittedInjector> injectors = destination.places().completed(given);
        List<Placed<R>> completed = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            completed.add(
                    new Placed<>(rows.get(i).place(), batch.table().rowType().cast(injectors.get(i))));
        }
        Map<FittedInjector, FittedInjector> conflicts = new HashMap<>();
        displace(withoutConflicts(injectors, conflicts));
        List<Placed<R>> good = new ArrayList<>();
        for (Placed<R> placed : completed) {
            FittedInjector other = placed.row() instanceof FittedInjector injector ? conflicts.get(injector) : null;
            if (other == null) {
                good.add(placed);
            } else {
                refused.add(new Refused<>(placed, taken(placed, other), true, null));
            }
        }
        return good;
    }

    /** Takes the rows that find their cylinder taken; gives what the others displace, since a refused row moves nothing. */
    private List<FittedInjector> withoutConflicts(
            List<FittedInjector> injectors, Map<FittedInjector, FittedInjector> conflicts) {
        List<FittedInjector> displaced;
        Map<FittedInjector, FittedInjector> more;
        do {
            List<FittedInjector> passing = injectors.stream()
                    .filter(row -> !conflicts.containsKey(row))
                    .toList();
            displaced = destination.places().displaced(passing);
            more = destination.places().conflicts(passing, displaced);
            conflicts.putAll(more);
        } while (!more.isEmpty());
        return displaced;
    }

    private void displace(List<FittedInjector> displaced) {
        if (!displaced.isEmpty()) {
            destination.writer().merge(FittedInjector.class, displaced, destination.writes());
            destination.places().add(displaced);
        }
    }

    private Complaint taken(Placed<R> placed, FittedInjector other) {
        String until = other.removedOn() == null ? "and has no removed_on" : "until " + other.removedOn();
        return placed.place()
                .complaint(
                        "fitted_on",
                        "cylinder " + other.cylinder() + " of truck " + other.truck()
                                + " already holds the injector fitted "
                                + (other.fittingKnown() ? "on " : "") + other.fittedWords() + " " + until,
                        "enter removed_on for that one, or correct the dates in this row; a second one of the same day has fitting 2");
    }

    private static <T> List<T> only(List<?> rows, Class<T> type) {
        return rows.isEmpty() || !type.isInstance(rows.get(0))
                ? List.of()
                : rows.stream().map(type::cast).toList();
    }
}
