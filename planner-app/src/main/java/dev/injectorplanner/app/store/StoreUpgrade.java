package dev.injectorplanner.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.flywaydb.core.api.FlywayException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Makes an embedded store, or brings its schema up. The database commits DDL by itself, so all of it happens on a copy in a
 * folder beside the store's files; once the copy is whole, checked and on the disk, renames put it in place, and an opening
 * that finds them cut off carries them on. At every moment there is either the old store or the new one.
 *
 * <p>Steps, each one rename or a series that can be repeated: {@code upgrade.partial} (may be thrown away) becomes
 * {@code upgrade.ready}; the old files move into their kept folder; {@code upgrade.ready} becomes {@code upgrade.placing};
 * its files move up.
 */
final class StoreUpgrade {
    static final String PARTIAL = "upgrade.partial";
    static final String READY = "upgrade.ready";
    static final String PLACING = "upgrade.placing";
    static final String KEPT = "before-upgrade-from-";

    private static final String KEEP_AS = "keep-as.txt";
    private static final long SPARE_BYTES = 64L << 20;
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final Logger LOG = LoggerFactory.getLogger(StoreUpgrade.class);

    private final StoreSettings settings;
    private final Path folder;
    private final int newest;

    StoreUpgrade(StoreSettings settings, Path folder, int newest) {
        this.settings = settings;
        this.folder = folder;
        this.newest = newest;
    }

    /** Whether no store's file lies in the folder. */
    boolean isNew() {
        try {
            return StoreFiles.in(folder).isEmpty();
        } catch (IOException e) {
            throw StoreFailures.inWords("The store in " + settings + " cannot be opened", e);
        }
    }

    /** Carries on what a process left that was stopped in the middle: forwards once the old files began to move, else back. */
    void finishInterrupted() {
        try {
            StoreFiles.delete(folder.resolve(PARTIAL));
            Path ready = folder.resolve(READY);
            if (Files.exists(ready)) {
                Path kept = keptFolder(ready);
                if (Files.exists(kept) || isNew()) {
                    place(kept);
                } else {
                    StoreFiles.delete(ready);
                }
            }
            if (Files.exists(folder.resolve(PLACING))) {
                moveUp();
            }
        } catch (IOException e) {
            throw StoreFailures.inWords("The upgrade of the store in " + settings + " cannot be finished", e);
        }
    }

    /** Makes a new store with the newest schema. */
    void make() {
        onCopy(0, pool -> {});
    }

    /**
     * Upgrades the store, which must be shut down. A store that was cut off while it was made, by an earlier version of
     * this program, holds nothing yet and is made again.
     *
     * @param version the schema version that it has
     * @param proof looks at the upgraded copy and throws where something is wrong with it
     */
    void upgrade(int version, Consumer<DataSource> proof) {
        requireSpace();
        try {
            onCopy(version, proof);
        } catch (FlywayException e) {
            if (!isUnused()) {
                throw new StoreException(
                        "The store in " + settings + " cannot be upgraded from schema version " + version + " to "
                                + newest
                                + ": " + StoreFailures.lastMessage(e) + ". It is as it was before. Fix: go on with the"
                                + " version of the program that wrote it, or restore a backup.",
                        e);
            }
            LOG.warn(
                    "The store in {} was cut off while it was first made and holds nothing: it is created again",
                    settings);
            remake(version);
        }
    }

    /** The unfinished store is kept too: nothing is thrown away that this program did not make in this opening. */
    private void remake(int version) {
        onCopy(version, pool -> {}, false);
    }

    private void onCopy(int version, Consumer<DataSource> proof) {
        onCopy(version, proof, true);
    }

    private void onCopy(int version, Consumer<DataSource> proof, boolean withRows) {
        Path copy = folder.resolve(PARTIAL);
        try {
            StoreFiles.delete(copy);
            if (withRows) {
                StoreFiles.copy(folder, copy);
            }
            migrated(copy, proof);
            StoreFiles.delete(copy.resolve(StoreFiles.NAME + ".tmp"));
            Path kept = folder.resolve(KEPT + version + "-" + TIME.format(Instant.now()));
            Files.writeString(copy.resolve(KEEP_AS), String.valueOf(kept.getFileName()));
            StoreFiles.sync(copy);
            boolean old = !isNew();
            StoreFiles.rename(copy, folder.resolve(READY));
            place(kept);
            moveUp();
            if (old) {
                LOG.warn(
                        "The store in {} was upgraded from schema version {} to {}. As it was before it lies in {}: remove"
                                + " that once the new version has proven itself",
                        settings,
                        version,
                        newest,
                        kept);
            }
        } catch (IOException e) {
            discard(copy);
            throw StoreFailures.inWords("The store in " + settings + " cannot be made or upgraded; it is as it was", e);
        } catch (RuntimeException e) {
            discard(copy);
            throw isFull(e)
                    ? StoreFailures.inWords(
                            "The store in " + settings + " cannot be made or upgraded; it is as it was", e)
                    : e;
        }
    }

    private static boolean isFull(RuntimeException e) {
        return StoreFailures.findCause(e)
                .filter(StoreFailures.Cause.DISK_FULL::equals)
                .isPresent();
    }

    private static void discard(Path copy) {
        try {
            StoreFiles.delete(copy);
        } catch (IOException e) {
            LOG.warn("{} cannot be removed: {}. The next opening tries again", copy, e.getMessage());
        }
    }

    private void migrated(Path copy, Consumer<DataSource> proof) throws IOException {
        Files.createDirectories(copy);
        try (HikariDataSource pool = pool(copy)) {
            Schema.migrate(pool, newest);
            proof.accept(pool);
        } catch (RuntimeException e) {
            shutDownAfter(e, copy); // else this process would go on with the failed copy
            throw e;
        }
        shutDown(settings.in(copy));
    }

    private void shutDownAfter(RuntimeException failure, Path copy) {
        try {
            shutDown(settings.in(copy));
        } catch (StoreException e) {
            failure.addSuppressed(e);
        }
    }

    private boolean isUnused() {
        boolean unused;
        try (HikariDataSource pool = pool(folder)) {
            unused = Schema.isUnused(pool);
        }
        shutDown(settings);
        return unused;
    }

    private HikariDataSource pool(Path place) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("upgrade");
        config.setJdbcUrl(settings.in(place).url());
        config.setUsername(settings.user());
        config.setPassword(settings.password());
        config.setMaximumPoolSize(2); // Flyway keeps its history on a connection of its own
        return new HikariDataSource(config);
    }

    /**
     * Writes everything into the files and closes them. The pool has to be closed before: one that is open fetches itself a
     * new connection, which would open the store again behind our back.
     */
    static void shutDown(StoreSettings settings) {
        try (Connection connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                Statement statement = connection.createStatement()) {
            statement.execute("SHUTDOWN");
        } catch (SQLException e) {
            throw new StoreException("The store in " + settings + " cannot be shut down: " + e.getMessage(), e);
        }
    }

    private void requireSpace() {
        try {
            long needed = 2 * StoreFiles.bytes(folder) + SPARE_BYTES;
            long free = Files.getFileStore(folder).getUsableSpace();
            if (free < needed) {
                throw new StoreException(
                        "The disk is full: upgrading the store in " + settings + " takes " + (needed >> 20) + " MB, "
                                + (free >> 20)
                                + " MB are free. The store is as it was. Fix: free space on its disk, then"
                                + " start again.",
                        new IOException("no space"));
            }
        } catch (IOException e) {
            throw StoreFailures.inWords("The store in " + settings + " cannot be upgraded", e);
        }
    }

    private Path keptFolder(Path ready) throws IOException {
        return folder.resolve(Files.readString(ready.resolve(KEEP_AS)).strip());
    }

    private void place(Path kept) throws IOException {
        if (!isNew() || Files.exists(kept)) {
            StoreFiles.move(folder, kept);
        }
        StoreFiles.rename(folder.resolve(READY), folder.resolve(PLACING));
    }

    private void moveUp() throws IOException {
        Path placing = folder.resolve(PLACING);
        StoreFiles.move(placing, folder);
        StoreFiles.delete(placing);
    }
}
