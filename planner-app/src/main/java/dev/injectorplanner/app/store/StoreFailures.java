package dev.injectorplanner.app.store;

import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;

/** What an operator can fix about the store's place, told apart from faults of the program. */
public final class StoreFailures {
    private static final String NO_SPACE = "no space left on device";
    private static final String QUOTA = "quota exceeded";

    /** Class 08 of the SQL standard, and PostgreSQL's operator intervention. */
    private static final String[] UNREACHABLE = {"08", "57P"};

    private StoreFailures() {}

    /** What is wrong with the store's place. */
    public enum Cause {
        DISK_FULL("The disk is full", "free space on the store's disk, then try again"),
        AWAY("The database does not answer", "start the database, or try again once it is back");

        private final String what;
        private final String fix;

        Cause(String what, String fix) {
            this.what = what;
            this.fix = fix;
        }

        /** For whoever sent something. */
        public String sentence() {
            return what + ": what was sent has not been stored. Fix: " + fix + ".";
        }

        /** For the operator. */
        public String logLine() {
            return what + ". Fix: " + fix + ".";
        }
    }

    /** The cause that an operator can fix, where there is one. */
    public static Optional<Cause> findCause(Throwable thrown) {
        Throwable t = thrown;
        for (int depth = 0; t != null && depth < 30; depth++) {
            if (isFull(t)) {
                return Optional.of(Cause.DISK_FULL);
            }
            if (isAway(t)) {
                return Optional.of(Cause.AWAY);
            }
            t = t.getCause();
        }
        return Optional.empty();
    }

    private static boolean isFull(Throwable t) {
        String text = String.valueOf(t.getMessage()).toLowerCase(Locale.ROOT);
        return text.contains(NO_SPACE)
                || text.contains(QUOTA)
                || t instanceof SQLException sql && "53100".equals(sql.getSQLState());
    }

    private static boolean isAway(Throwable t) {
        if (t instanceof java.sql.SQLTransientConnectionException
                || t instanceof java.sql.SQLNonTransientConnectionException) {
            return true;
        }
        if (!(t instanceof SQLException sql) || sql.getSQLState() == null) {
            return false;
        }
        for (String state : UNREACHABLE) {
            if (sql.getSQLState().startsWith(state)) {
                return true;
            }
        }
        return false;
    }

    /** A failure at the store's place, as a sentence for who has to fix it. */
    static StoreException inWords(String what, Throwable e) {
        if (findCause(e).filter(Cause.DISK_FULL::equals).isPresent()) {
            return new StoreException(
                    "The disk is full: " + what + ". Fix: free space on the store's disk, then try again.", e);
        }
        return new StoreException(
                what + ": " + lastMessage(e) + ". Fix: check the folder's permissions and its disk.", e);
    }

    static String lastMessage(Throwable e) {
        Throwable last = e;
        while (last.getCause() != null) {
            last = last.getCause();
        }
        return last.getMessage() == null ? last.getClass().getSimpleName() : String.valueOf(last.getMessage());
    }
}
