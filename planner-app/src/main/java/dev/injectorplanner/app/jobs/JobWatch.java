package dev.injectorplanner.app.jobs;

import java.sql.Connection;
import java.sql.SQLException;

/** Told how runs ended, in the transaction that ends them: no run ends well or has failed for good without its being told. */
@FunctionalInterface
public interface JobWatch {
    /** A run has failed for good; someone has to look. Neither commits nor closes the connection. */
    void givenUp(Connection connection, FailedJob failed) throws SQLException;

    /** A run ended well. Neither commits nor closes the connection. */
    default void wentWell(Connection connection, RunKey key) throws SQLException {}
}
