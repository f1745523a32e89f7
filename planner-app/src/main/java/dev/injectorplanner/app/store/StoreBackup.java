package dev.injectorplanner.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;

/**
 * Copies of an embedded store in one file: its files, the checksum of each, and how many rows each table has. A copy counts
 * as made once it was opened and counted, and as restored once it was unpacked, checked, opened and counted again.
 */
public final class StoreBackup {
    private static final String CONTENTS = "contents.txt";
    private static final String SUM = "sha256 ";
    private static final String ROWS = "rows ";
    private static final Pattern QUOTE = Pattern.compile("['\\p{Cntrl}]");

    private StoreBackup() {}

    /**
     * Copies a store while it is in use.
     *
     * @param source the store's connections
     * @param zip where the copy goes; there whole or not at all
     * @return rows in all tables
     * @throws StoreException where it cannot be made, in words
     */
    public static long make(DataSource source, Path zip) {
        Path files = zip.resolveSibling(zip.getFileName() + ".files");
        Path packed = zip.resolveSibling(zip.getFileName() + ".partial");
        try {
            StoreFiles.delete(files);
            Files.createDirectories(files);
            copy(source, files);
            Map<String, Long> rows = counted(files);
            pack(files, rows, packed);
            StoreFiles.sync(Objects.requireNonNull(packed.toAbsolutePath().getParent()), packed);
            StoreFiles.rename(packed, zip);
            return rows.values().stream().mapToLong(Long::longValue).sum();
        } catch (IOException | SQLException e) {
            throw StoreFailures.inWords("The store cannot be copied to " + zip, e);
        } finally {
            clear(files, packed);
        }
    }

    private static void clear(Path files, Path packed) {
        try {
            StoreFiles.delete(files);
            Files.deleteIfExists(packed);
        } catch (IOException e) {
            throw StoreFailures.inWords("The remains of a backup cannot be removed: " + files, e);
        }
    }

    private static void copy(DataSource source, Path files) throws SQLException {
        String folder = files.toAbsolutePath().normalize().toString();
        if (QUOTE.matcher(folder).find()) {
            throw new SQLException("the folder has a quote in its name");
        }
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("backup database to '" + folder + "/' not blocking as files");
        }
    }

    /**
     * Restores a copy into a folder that holds no store.
     *
     * @return rows in all tables
     * @throws StoreException where the copy is damaged or the folder is not free, in words; the folder is then as it was
     */
    public static long restore(Path zip, Path folder) {
        Path partial = folder.resolve("restore.partial");
        try {
            Files.createDirectories(folder);
            if (!StoreFiles.in(folder).isEmpty()) {
                throw new StoreException(
                        folder + " already holds a store. Fix: name an empty folder with --data.",
                        new IOException("not empty"));
            }
            StoreFiles.delete(partial);
            Files.createDirectories(partial);
            Map<String, String> contents = unpack(zip, partial);
            requireSums(zip, partial, contents);
            Map<String, Long> rows = counted(partial);
            requireRows(zip, rows, contents);
            StoreFiles.sync(partial);
            StoreFiles.move(partial, folder);
            return rows.values().stream().mapToLong(Long::longValue).sum();
        } catch (IOException | SQLException e) {
            throw StoreFailures.inWords(zip + " cannot be restored", e);
        } finally {
            clear(partial, folder.resolve("restore.none"));
        }
    }

    private static void requireSums(Path zip, Path partial, Map<String, String> contents) throws IOException {
        for (Path file : StoreFiles.in(partial)) {
            String expected = contents.get(SUM + file.getFileName());
            if (expected != null && !expected.equals(sum(file))) {
                throw new IOException(file.getFileName() + " in " + zip
                        + " differs from what was backed up: its checksum does not match");
            }
        }
    }

    private static void requireRows(Path zip, Map<String, Long> rows, Map<String, String> contents) throws IOException {
        for (Map.Entry<String, Long> table : rows.entrySet()) {
            String expected = contents.get(ROWS + table.getKey());
            if (expected != null && !expected.equals(String.valueOf(table.getValue()))) {
                throw new IOException("table " + table.getKey() + " in " + zip + " has " + table.getValue() + " rows, "
                        + expected + " were copied");
            }
        }
    }

    /** Opens the copy, which takes in what its log still holds, and counts its tables. */
    private static Map<String, Long> counted(Path files) throws SQLException {
        StoreSettings settings = StoreSettings.embedded(files);
        Map<String, Long> rows = new TreeMap<>();
        try (Connection connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                Statement statement = connection.createStatement()) {
            try (ResultSet tables = connection.getMetaData().getTables(null, "PUBLIC", "%", new String[] {"TABLE"})) {
                while (tables.next()) {
                    rows.put(tables.getString("TABLE_NAME"), 0L);
                }
            }
            for (String table : rows.keySet()) {
                try (ResultSet count = statement.executeQuery("select count(*) from \"" + table + "\"")) {
                    count.next();
                    rows.put(table, count.getLong(1));
                }
            }
            statement.execute("SHUTDOWN");
        }
        return rows;
    }

    private static void pack(Path files, Map<String, Long> rows, Path target) throws IOException {
        StringBuilder contents = new StringBuilder();
        rows.forEach((table, count) ->
                contents.append(ROWS).append(table).append('=').append(count).append('\n'));
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(target))) {
            for (Path file : StoreFiles.in(files)) {
                contents.append(SUM)
                        .append(file.getFileName())
                        .append('=')
                        .append(sum(file))
                        .append('\n');
                zip.putNextEntry(new ZipEntry(String.valueOf(file.getFileName())));
                Files.copy(file, zip);
                zip.closeEntry();
            }
            zip.putNextEntry(new ZipEntry(CONTENTS));
            zip.write(contents.toString().getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
    }

    /** What the copy says of itself; nothing where an earlier version made it. */
    private static Map<String, String> unpack(Path zip, Path target) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (InputStream in = Files.newInputStream(zip);
                ZipInputStream packed = new ZipInputStream(in)) {
            for (ZipEntry entry = packed.getNextEntry(); entry != null; entry = packed.getNextEntry()) {
                String name = entry.getName();
                if (name.equals(CONTENTS)) {
                    new String(packed.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .map(line -> line.split("=", 2))
                            .filter(line -> line.length == 2)
                            .forEach(line -> contents.put(line[0], line[1]));
                } else if (name.startsWith(StoreFiles.NAME + ".") && !name.contains("/") && !name.contains("\\")) {
                    Files.copy(packed, target.resolve(name), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        if (StoreFiles.in(target).isEmpty()) {
            throw new IOException("it does not hold the files of a store");
        }
        return contents;
    }

    private static String sum(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                DigestInputStream digest = new DigestInputStream(in, MessageDigest.getInstance("SHA-256"))) {
            digest.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(digest.getMessageDigest().digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
