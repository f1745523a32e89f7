package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.Change;
import java.util.Collection;

/** Rows of one table in one file, every one counted: {@code read = added + changed + unchanged + refused}. */
public final class TableCount {
    private final String table;
    private long added;
    private long changed;
    private long unchanged;
    private long refused;

    TableCount(String table) {
        this.table = table;
    }

    void count(Collection<Change> changes) {
        for (Change change : changes) {
            switch (change) {
                case ADDED -> added++;
                case CHANGED -> changed++;
                case UNCHANGED -> unchanged++;
            }
        }
    }

    void refuse() {
        refused++;
    }

    public String table() {
        return table;
    }

    public long read() {
        return added + changed + unchanged + refused;
    }

    public long added() {
        return added;
    }

    public long changed() {
        return changed;
    }

    public long unchanged() {
        return unchanged;
    }

    public long refused() {
        return refused;
    }
}
