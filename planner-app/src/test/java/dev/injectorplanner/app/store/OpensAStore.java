package dev.injectorplanner.app.store;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import org.slf4j.LoggerFactory;

/** Opens a store with the log of its migrations on; made to be killed. */
final class OpensAStore {
    private OpensAStore() {}

    public static void main(String[] args) {
        System.setErr(System.out); // the log is what names the moment of the kill
        ((Logger) LoggerFactory.getLogger("org.flywaydb.core.internal.command.DbMigrate")).setLevel(Level.INFO);
        try (Store store = Store.open(new StoreSettings(args[0], args[1], args[2]))) {
            System.err.println("open " + store);
        }
    }
}
