package dev.injectorplanner.app.store;

import java.nio.file.Path;

/**
 * Where the store is.
 *
 * @param url JDBC address, {@code jdbc:hsqldb:file:...} or {@code jdbc:postgresql:...}
 * @param user database user
 * @param password its password; never printed
 */
public record StoreSettings(String url, String user, String password) {
    /** An embedded store in {@code folder}: cached tables, durable on every commit. */
    public static StoreSettings embedded(Path folder) {
        return new StoreSettings(
                "jdbc:hsqldb:file:" + folder.toAbsolutePath().resolve(StoreFiles.NAME)
                        + ";hsqldb.tx=mvcc;hsqldb.write_delay=false;hsqldb.default_table_type=cached",
                "SA",
                "");
    }

    boolean isPostgres() {
        return url.startsWith("jdbc:postgresql:");
    }

    boolean isEmbedded() {
        return url.startsWith("jdbc:hsqldb:file:");
    }

    /** Whether its files have the names that {@link #embedded} gives them. */
    boolean hasOurFiles() {
        return isEmbedded() && Path.of(place()).endsWith(StoreFiles.NAME);
    }

    /** The same kind of embedded store in another folder. */
    StoreSettings in(Path folder) {
        return new StoreSettings(
                url.replace(
                        place(),
                        folder.toAbsolutePath().resolve(StoreFiles.NAME).toString()),
                user,
                password);
    }

    /** The place without its options, for messages. */
    String place() {
        String place = url.startsWith("jdbc:hsqldb:file:") ? url.substring("jdbc:hsqldb:file:".length()) : url;
        return place.split("[;?]", 2)[0];
    }

    @Override
    public String toString() {
        return place();
    }
}
